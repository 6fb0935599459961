//! The accounts: every word placed, every main area said, measures as published.

use rectrix::accounts::Account;
use rectrix::built_in;
use rectrix::knowledge::Knowledge;
use rectrix::lexicon::shelf::{Shelf, Shelved};
use rectrix::matching::Matcher;
use rectrix::traits::{Polarity, Trait};
use std::collections::BTreeSet;
use std::sync::LazyLock;

static KNOWLEDGE: LazyLock<Knowledge> = LazyLock::new(built_in::knowledge);

fn account(english: &str) -> &'static Account {
    KNOWLEDGE.accounts.iter().find(|a| a.english == english).unwrap_or_else(|| panic!("{english}"))
}

fn traits(account: &'static Account) -> Vec<&'static Trait> {
    account.forms.iter().flat_map(|f| KNOWLEDGE.accounts.traits_of(account, f)).collect()
}

fn shows(english: &str, area: &str, aspect: &str, value: &str) -> bool {
    let lexicon = &KNOWLEDGE.lexicon;
    traits(account(english)).iter().any(|t| {
        lexicon.names.text(t.area) == area
            && lexicon.names.text(t.aspect) == aspect
            && t.value.text(lexicon) == value
            && t.polarity == Polarity::Present
    })
}

#[test]
fn built_tables_equal_the_parsed_files() {
    let mut parsed = Knowledge::read(&built_in::layers()).unwrap();
    let stored = postcard::to_allocvec(&parsed).unwrap();
    let mut layout = Matcher::new(&parsed).unwrap().chances().layout();
    let mut shelf = Shelf::of(&mut parsed).unwrap();
    layout.shelve(&mut shelf).unwrap();
    let built = built_in::shelf();
    let same = stored == built_in::tables()
        && shelf.numbers == built.numbers
        && shelf.texts == built.texts;
    assert!(same, "the tables differ from the files; build again");
}

#[test]
fn every_word_of_every_account_is_placed() {
    let (_, wrong) = Knowledge::read_with_remarks(&built_in::layers()).unwrap();
    assert!(wrong.0.is_empty(), "{} remarks:\n{wrong}", wrong.0.len());
}

#[test]
fn accounts_spread_over_families_and_both_regions() {
    let families: BTreeSet<&str> = KNOWLEDGE.accounts.iter().map(|a| a.family.as_str()).collect();
    assert!(KNOWLEDGE.accounts.len() >= 80);
    assert!(families.len() >= 40, "{} families", families.len());
    for region in ["north-america", "europe"] {
        let region = KNOWLEDGE.lexicon.names.find(region);
        let count = KNOWLEDGE.accounts.iter().filter(|a| a.regions.contains(&region)).count();
        assert!(count >= 100, "{count}");
    }
}

#[test]
fn every_account_says_bill_size_and_main_areas() {
    let lexicon = &KNOWLEDGE.lexicon;
    let mut missing = Vec::new();
    for account in KNOWLEDGE.accounts.iter() {
        let shown = traits(account);
        let mut need = |what: &str, has: bool| {
            if !has {
                missing.push(format!("{}: {what}", account.english));
            }
        };
        need("mass", account.mass.is_some());
        for area in ["bill", "head", "upperparts", "underparts", "wing", "tail", "legs"] {
            let name = lexicon.names.find(area);
            let covered = shown.iter().any(|t| {
                lexicon.topography.covers(name, t.area)
                    || lexicon.topography.covers(t.area, name) && area != "bill"
            });
            let feet = area == "legs" && shown.iter().any(|t| lexicon.names.text(t.area) == "feet");
            need(area, covered || feet);
        }
        for aspect in ["behaviour", "habitat", "voice"] {
            let said = shown.iter().any(|t| lexicon.names.text(t.aspect) == aspect);
            need(aspect, said || aspect == "voice");
        }
    }
    assert!(missing.is_empty(), "{}", missing.join("\n"));
}

/// AVONET (Tobias et al. 2022, Ecology Letters 25:581-597), CC BY 4.0: mean body mass in grams.
#[test]
fn masses_stand_in_the_published_order() {
    let order = [
        ("Ruby-throated Hummingbird", 3.1),
        ("Goldcrest", 5.5),
        ("Eurasian Wren", 9.7),
        ("Eurasian Blue Tit", 11.1),
        ("European Robin", 17.7),
        ("House Sparrow", 26.5),
        ("Song Thrush", 67.7),
        ("American Robin", 78.5),
        ("Common Blackbird", 102.7),
        ("Mourning Dove", 118.9),
        ("Rock Pigeon", 354.2),
        ("American Crow", 448.8),
        ("Common Buzzard", 759.1),
        ("Mallard", 843.4),
        ("Great Blue Heron", 2523.4),
        ("Canada Goose", 2811.7),
        ("Mute Swan", 10682.0),
    ];
    for (english, published) in order {
        let mass = account(english).mass.unwrap();
        assert!((mass - published).abs() < 0.05, "{english}: {mass}, published {published}");
    }
    assert!(order.is_sorted_by(|a, b| a.1 < b.1));
}

/// AVONET, as above: bill length from tip to skull against the cube root of mass.
#[test]
fn bill_proportions_follow_the_published_measures() {
    let proportion = |english: &str| {
        let account = account(english);
        account.measure("bill").unwrap() / account.mass.unwrap().cbrt()
    };
    for (longer, shorter) in [
        ("Hairy Woodpecker", "Downy Woodpecker"),
        ("Eurasian Curlew", "Common Redshank"),
        ("Common Snipe", "Dunlin"),
        ("Brown Creeper", "Golden-crowned Kinglet"),
        ("Carolina Wren", "House Sparrow"),
    ] {
        assert!(proportion(longer) > proportion(shorter), "{longer} against {shorter}");
    }
    // Bill depth at the nostril, in millimetres.
    let depth = |english: &str| account(english).measure("bill-depth").unwrap();
    for (stouter, finer) in [
        ("Red-eyed Vireo", "Tennessee Warbler"),
        ("Warbling Vireo", "Yellow Warbler"),
        ("House Sparrow", "Dunnock"),
        ("Northern Cardinal", "American Goldfinch"),
    ] {
        assert!(depth(stouter) > depth(finer), "{stouter} against {finer}");
    }
}

/// Common practice in the field, as every watcher is taught it.
#[test]
fn common_practice_is_in_the_accounts() {
    for nuthatch in ["White-breasted Nuthatch", "Red-breasted Nuthatch", "Eurasian Nuthatch"] {
        let down = traits(account(nuthatch)).iter().any(|t| {
            let value = t.value.text(&KNOWLEDGE.lexicon);
            value.contains("head-first") || value.contains("down")
        });
        assert!(down, "{nuthatch} goes down trunks head first");
    }
    assert!(shows("Mourning Dove", "head", "size", "small"), "a mourning dove is small-headed");
    assert!(shows("Mourning Dove", "tail", "length", "long"), "and long-tailed");
    let moves = |english: &str, wanted: &[&str]| {
        wanted.iter().any(|v| shows(english, "tail", "behaviour", v))
    };
    assert!(moves("Eastern Phoebe", &["dip", "pump", "wag", "bob"]), "a phoebe dips its tail");
    assert!(moves("American Redstart", &["fan", "spread"]), "an American redstart fans its tail");
    assert!(moves("White Wagtail", &["wag", "pump", "bob"]), "a wagtail wags its tail");
    assert!(shows("Eastern Meadowlark", "tail", "length", "short"), "a meadowlark is short-tailed");
    assert!(shows("Eastern Meadowlark", "bill", "shape", "pointed"), "and sharp-billed");
    assert!(
        ["notched", "forked"].iter().any(|v| shows("American Goldfinch", "tail", "shape", v)),
        "a goldfinch's tail is notched"
    );
}
