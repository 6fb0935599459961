//! Loose kinds of bird that a note names, as evidence.

use rectrix::built_in;
use rectrix::knowledge::Knowledge;
use rectrix::matching::groups::{Groups, Standing};
use rectrix::matching::{About, Candidate, Checklist, Matcher};
use rectrix::reading::Reading;
use rectrix::traits::{Certainty, Polarity};
use rstest::rstest;
use std::collections::BTreeMap;
use std::sync::LazyLock;

static KNOWLEDGE: LazyLock<Knowledge> = LazyLock::new(built_in::knowledge);
static MATCHER: LazyLock<Matcher<'static>> = LazyLock::new(|| Matcher::new(&KNOWLEDGE).unwrap());
static GROUPS: LazyLock<Groups> =
    LazyLock::new(|| Groups::of(&KNOWLEDGE.lexicon, &KNOWLEDGE.accounts));

fn read(note: &str) -> Reading {
    KNOWLEDGE.reader("north-america").read(note)
}

fn rank(note: &str) -> Vec<Candidate> {
    let reading = read(note);
    let list = Checklist::all(&KNOWLEDGE.accounts);
    let all = KNOWLEDGE.accounts.len();
    MATCHER.rank_named(&reading.traits, &reading.named, &list, all).candidates
}

fn account(species: &str) -> usize {
    KNOWLEDGE.accounts.iter().position(|a| a.english == species).expect(species)
}

/// The share of all species whose family or English name is given.
fn share(note: &str, of: &str) -> f32 {
    let accounts = &KNOWLEDGE.accounts;
    let is = |c: &&Candidate| {
        let account = &accounts[c.account];
        account.family == of || account.english == of || account.english.ends_with(of)
    };
    rank(note).iter().filter(is).map(|c| c.share).sum()
}

/// What the named kinds say of a species.
fn by_name(note: &str, species: &str) -> f32 {
    let wanted = account(species);
    let candidates = rank(note);
    let one = candidates.iter().find(|c| c.account == wanted).unwrap();
    let reasons = one.fits.iter().chain(&one.conflicts);
    reasons.filter(|r| matches!(r.about, About::Named(_))).map(|r| r.weight).sum()
}

#[rstest]
#[case("some kind of gull", "gull", Polarity::Present, Certainty::Sure, false)]
#[case("duck", "duck", Polarity::Present, Certainty::Sure, false)]
#[case("looked like a sparrow", "sparrow", Polarity::Present, Certainty::Sure, true)]
#[case("a small wren-like bird", "wren", Polarity::Present, Certainty::Sure, true)]
#[case("maybe a finch", "finch", Polarity::Present, Certainty::Hedged, false)]
#[case("hawk?", "hawk", Polarity::Present, Certainty::Hedged, false)]
#[case("not a gull", "gull", Polarity::Absent, Certainty::Sure, false)]
fn a_name_is_read_with_how_sure_it_is(
    #[case] note: &str,
    #[case] kind: &str,
    #[case] polarity: Polarity,
    #[case] certainty: Certainty,
    #[case] likeness: bool,
) {
    let reading = read(note);
    let [one] = reading.named.as_slice() else { panic!("{note}: {:?}", reading.named) };
    assert_eq!(KNOWLEDGE.lexicon.names.text(one.bird), kind);
    assert_eq!((one.polarity, one.certainty, one.likeness), (polarity, certainty, likeness));
}

#[rstest]
#[case("tail like a wren's, brown")]
#[case("duck-like bill")]
#[case("a bill like a duck")]
#[case("sounded like a crow")]
#[case("brown, flight like a swallow")]
fn what_a_part_is_like_names_no_bird(#[case] note: &str) {
    assert_eq!(read(note).named, []);
}

#[rstest]
#[case("gull", "Herring Gull", Standing::Member)]
#[case("gull", "Black-legged Kittiwake", Standing::Member)]
#[case("gull", "Common Tern", Standing::Cousin)]
#[case("gull", "Northern Fulmar", Standing::TakenFor)]
#[case("gull", "House Finch", Standing::Stranger)]
#[case("duck", "Mallard", Standing::Member)]
#[case("duck", "Black Scoter", Standing::Member)]
#[case("duck", "Canada Goose", Standing::Cousin)]
#[case("duck", "Pied-billed Grebe", Standing::TakenFor)]
#[case("duck", "American Coot", Standing::TakenFor)]
#[case("goose", "Brant", Standing::Member)]
#[case("goose", "Mallard", Standing::Cousin)]
#[case("sparrow", "Song Sparrow", Standing::Member)]
#[case("sparrow", "House Finch", Standing::TakenFor)]
#[case("sparrow", "Eastern Towhee", Standing::Cousin)]
#[case("thrush", "American Robin", Standing::Member)]
#[case("thrush", "Northern Waterthrush", Standing::TakenFor)]
#[case("warbler", "Ovenbird", Standing::Member)]
#[case("warbler", "Northern Waterthrush", Standing::Member)]
#[case("waterfowl", "Blue-winged Teal", Standing::Member)]
#[case("hawk", "Osprey", Standing::TakenFor)]
#[case("crow", "Blue Jay", Standing::Cousin)]
fn who_is_called_so(#[case] kind: &str, #[case] species: &str, #[case] standing: Standing) {
    let standings = GROUPS.standings(KNOWLEDGE.lexicon.names.find(kind));
    assert_eq!(standings[account(species)], standing);
}

/// Kinds of which no account tells: birds of other lands, seas and cages.
const EMPTY: [&str; 13] = [
    "bustard",
    "cockatoo",
    "munia",
    "myna",
    "ostrich",
    "penguin",
    "petrel",
    "roller",
    "sandgrouse",
    "seriema",
    "shearwater",
    "tropical-songbird",
    "weaverbird",
];

#[test]
fn every_kind_has_its_species() {
    let lexicon = &KNOWLEDGE.lexicon;
    let group = lexicon.kind_set("group");
    let kinds = lexicon.vocabulary.terms.iter().filter(|t| t.kind.bit() & group != 0);
    let mut empty = Vec::new();
    for kind in kinds {
        assert!(GROUPS.knows(kind.id));
        if !GROUPS.standings(kind.id).contains(&Standing::Member) {
            empty.push(lexicon.names.text(kind.id));
        }
    }
    empty.sort_unstable();
    assert_eq!(empty, EMPTY);
}

/// Every kind, family and species that an entry names is one.
#[test]
fn what_kinds_cover_is_known() {
    let accounts = &KNOWLEDGE.accounts;
    let mut families: BTreeMap<&str, usize> = BTreeMap::new();
    for one in accounts.iter() {
        *families.entry(&one.family).or_default() += 1;
    }
    let ends = |word: &str| {
        let plain = |name: &str| name.to_lowercase().replace('-', " ");
        accounts.iter().any(|a| plain(&a.english).ends_with(&plain(word)))
    };
    for entry in KNOWLEDGE.lexicon.others("covers") {
        let kinds = entry.items("within").chain(entry.items("except")).chain([entry.id.as_str()]);
        for kind in kinds {
            assert!(GROUPS.knows(KNOWLEDGE.lexicon.names.find(kind)), "{}: {kind}", entry.id);
        }
        for family in entry.items("families").chain(entry.items("taken-for")) {
            assert!(families.contains_key(family), "{}: {family}", entry.id);
        }
        for member in entry.items("members") {
            assert!(ends(member), "{}: {member}", entry.id);
        }
    }
}

#[rstest]
#[case("gull, grey back", "grey back", "Gull")]
#[case("some kind of gull, grey back", "grey back", "Gull")]
#[case("a finch with a red head", "a bird with a red head", "Fringillidae")]
#[case("brown bird, looked like a sparrow", "brown bird", "Sparrow")]
#[case("a small wren-like bird", "a small bird", "Troglodytidae")]
#[case("gull or tern, white", "white", "Laridae")]
fn a_named_kind_speaks_for_its_species(#[case] named: &str, #[case] bare: &str, #[case] of: &str) {
    assert!(share(named, of) > 1.5 * share(bare, of), "{} {}", share(named, of), share(bare, of));
}

#[test]
fn the_surer_a_name_the_more_it_says() {
    let weight = |note: &str| by_name(note, "House Wren");
    let (sure, doubted, likened) = (weight("wren"), weight("maybe a wren"), weight("wren-like"));
    assert!(sure > doubted && doubted > likened && likened > 0.5, "{sure} {doubted} {likened}");
    assert!(weight("not a wren") < 0.0);
    assert!(sure <= MATCHER.weights().most_for);
}

#[test]
fn who_errs_is_not_lost() {
    let grebe = by_name("duck", "Pied-billed Grebe");
    let finch = by_name("duck", "House Finch");
    let duck = by_name("duck", "Mallard");
    assert!(duck > grebe && grebe > finch + 1.0, "{duck} {grebe} {finch}");
}

#[test]
fn a_kind_named_twice_counts_once() {
    assert_eq!(by_name("gull, a gull", "Herring Gull"), by_name("gull", "Herring Gull"));
}

#[test]
fn a_size_beside_a_kind_is_judged_among_it() {
    let part = |note: &str| share(note, "Laughing Gull") / share(note, "Great Black-backed Gull");
    assert!(part("a small gull") > 1.5 * part("gull"));
    assert!(part("a huge gull") < part("gull"));
}

/// The words of reference works for lands are a hint at where the kind lives.
#[rstest]
#[case("small brown bird of North America", "Song Sparrow", "Dunnock")]
#[case("small European bird, brown", "Dunnock", "Song Sparrow")]
fn lands_are_a_hint(#[case] note: &str, #[case] there: &str, #[case] elsewhere: &str) {
    let reading = read(note);
    let list = Checklist::all(&KNOWLEDGE.accounts);
    let told = MATCHER.where_told(&reading.tokens, &list);
    let factor = told.prior(account(elsewhere)) / told.prior(account(there));
    assert!((factor - MATCHER.weights().told_region).abs() < 1e-4, "{factor}");
    let plain = MATCHER.where_told(&read("small brown bird").tokens, &list).into_owned();
    assert_eq!(plain, list);
}

/// The observer's own identification is kept apart from the evidence.
#[rstest]
#[case("red bird with a crest, a northern cardinal", "red bird with a crest")]
#[case("think it was a song sparrow, streaked breast", "streaked breast")]
fn a_species_that_is_named_counts_for_nothing(#[case] named: &str, #[case] bare: &str) {
    assert_eq!(rank(named), rank(bare));
}
