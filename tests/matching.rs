//! Matching: common practice in the field, the numbers of the model, and that keeping rows changes nothing.

use rectrix::built_in;
use rectrix::diagnostic::Source;
use rectrix::gold::notes;
use rectrix::knowledge::Knowledge;
use rectrix::lexicon::Layers;
use rectrix::lexicon::names::Name;
use rectrix::matching::mention::Feature;
use rectrix::matching::weights::Weights;
use rectrix::matching::{About, Candidate, Checklist, LookNext, Matcher, checklist};
use rectrix::traits::Trait;
use std::fs::{read_dir, read_to_string};
use std::sync::LazyLock;

static KNOWLEDGE: LazyLock<Knowledge> = LazyLock::new(built_in::knowledge);
static MATCHER: LazyLock<Matcher<'static>> = LazyLock::new(|| Matcher::new(&KNOWLEDGE).unwrap());

fn read(note: &str) -> Vec<Trait> {
    KNOWLEDGE.reader("north-america").read(note).traits
}

fn rank(note: &str, list: &Checklist) -> Vec<Candidate> {
    MATCHER.rank(&read(note), list, KNOWLEDGE.accounts.len()).candidates
}

fn english(candidate: &Candidate) -> &'static str {
    &KNOWLEDGE.accounts[candidate.account].english
}

fn everywhere() -> Checklist {
    Checklist::all(&KNOWLEDGE.accounts)
}

fn north_america() -> Checklist {
    let region = KNOWLEDGE.lexicon.names.find("north-america");
    everywhere().in_region(&KNOWLEDGE.accounts, region, MATCHER.weights().other_region)
}

/// What the traits of an area and an aspect say of a species, for and against.
fn says(
    candidates: &[Candidate],
    traits: &[Trait],
    species: &str,
    area: &str,
    aspect: &str,
) -> f32 {
    let one = candidates.iter().find(|c| english(c) == species).expect(species);
    let names = &KNOWLEDGE.lexicon.names;
    one.fits
        .iter()
        .chain(&one.conflicts)
        .filter(|r| {
            let About::Trait(at) = r.about else { return false };
            let about = &traits[at];
            names.text(about.area) == area && names.text(about.aspect) == aspect
        })
        .map(|r| r.weight)
        .sum()
}

/// The bird comes first for the note, and the mark parts it from the look-alike.
fn parted(note: &str, bird: &str, look_alike: &str, area: &str, aspect: &str) {
    let traits = read(note);
    let candidates = rank(note, &north_america());
    let first: Vec<&str> = candidates.iter().take(4).map(english).collect();
    assert_eq!(first[0], bird, "{note}: {first:?}");
    let own = says(&candidates, &traits, bird, area, aspect);
    let other = says(&candidates, &traits, look_alike, area, aspect);
    assert!(own > other + 0.25, "{area} {aspect}: {bird} {own:.2}, {look_alike} {other:.2}");
}

// Common practice: nuthatches go down trunks head first.
#[test]
fn a_nuthatch_goes_down_head_first() {
    let note = "Creeping down a trunk head first, short tail.\n\
                Blue-grey above, white face and breast, black cap.";
    parted(note, "White-breasted Nuthatch", "Brown Creeper", "bird", "behaviour");
    parted(note, "White-breasted Nuthatch", "Black-capped Chickadee", "bird", "behaviour");
}

// Common practice: a hairy woodpecker's bill is much longer for its head than a downy's.
#[test]
fn a_hairy_woodpecker_has_the_longer_bill() {
    let hairy = "Black and white woodpecker on a trunk, white back, plain white outer tail.\n\
                 Long bill, as long as the head.";
    parted(hairy, "Hairy Woodpecker", "Downy Woodpecker", "bill", "length");
    let downy = "Small, black and white, on a trunk; white back, white spots on black wings.\n\
                 Bill much shorter than the head.";
    parted(downy, "Downy Woodpecker", "Hairy Woodpecker", "bill", "length");
}

// Common practice: a vireo's bill is stouter than a warbler's.
#[test]
fn a_vireo_has_the_stouter_bill() {
    let note = "Olive back, yellow throat and breast, white belly, moving slowly through the treetops.\n\
                Yellow spectacles, two white wing bars, stout bill.";
    parted(note, "Yellow-throated Vireo", "Pine Warbler", "bill", "shape");
    parted(note, "Yellow-throated Vireo", "Blue-winged Warbler", "bill", "shape");
}

// Common practice: a mourning dove is small-headed and long-tailed.
#[test]
fn a_mourning_dove_is_small_headed_and_long_tailed() {
    let note = "Small-headed, long-tailed, grey-brown bird on a wire, short legs.\n\
                Black spots on the wings, tail pointed with white edges.";
    parted(note, "Mourning Dove", "Rock Pigeon", "tail", "length");
    parted(note, "Mourning Dove", "American Kestrel", "head", "size");
}

// Common practice: a phoebe dips its tail.
#[test]
fn a_phoebe_dips_its_tail() {
    let note = "Grey-brown above with a darker head, whitish below, no wing bars, black bill.\n\
                Dips its tail over and over, catches insects in the air from a low perch.";
    parted(note, "Eastern Phoebe", "Eastern Wood-Pewee", "tail", "behaviour");
    parted(note, "Eastern Phoebe", "Least Flycatcher", "tail", "behaviour");
}

// Common practice: an American redstart fans its tail.
#[test]
fn a_redstart_fans_its_tail() {
    let note = "Small black bird with orange patches on wings and tail, white belly.\n\
                Restless among the leaves, fans its tail.";
    parted(note, "American Redstart", "Orchard Oriole", "tail", "behaviour");
}

// Common practice: a meadowlark is chunky, short-tailed, sharp-billed. Which of the two kinds it is, its
// voice tells; here either comes first.
#[test]
fn a_meadowlark_is_chunky_short_tailed_and_sharp_billed() {
    let note = "Chunky, short-tailed bird of grassland with a long sharp pointed bill.\n\
                Yellow below with a black V on the breast, streaked brown above, white outer tail.";
    let first = english(&rank(note, &north_america())[0]);
    assert!(["Eastern Meadowlark", "Western Meadowlark"].contains(&first), "{first}");
    parted(note, first, "Dickcissel", "tail", "length");
    parted(note, first, "Dickcissel", "bill", "length");
    parted(note, first, "Horned Lark", "bird", "build");
}

// Common practice: a goldfinch's tail is notched.
#[test]
fn a_goldfinch_has_a_notched_tail() {
    let note = "Small yellow bird with black cap and black wings, white wing bars.\n\
                Conical pink bill, notched tail.";
    parted(note, "American Goldfinch", "Yellow Warbler", "tail", "shape");
}

#[test]
fn long_bills_of_long_billed_birds_speak_for_them() {
    let note = "All white, long bill, long black legs";
    let candidates = rank(note, &everywhere());
    let traits = read(note);
    assert!(says(&candidates, &traits, "Great Egret", "bill", "length") > 0.3);
    assert!(says(&candidates, &traits, "Great Egret", "legs", "length") > 0.3);
    assert!(says(&candidates, &traits, "Snow Goose", "legs", "length") < 0.0);
}

#[test]
fn compared_lengths_of_notes_meet_those_of_accounts() {
    let note = "bill longer than the head";
    let candidates = rank(note, &everywhere());
    let traits = read(note);
    assert!(says(&candidates, &traits, "Long-billed Curlew", "bill", "length") > 0.5);
    assert!(says(&candidates, &traits, "House Finch", "bill", "length") < -0.5);
}

#[test]
fn shares_add_up_and_nothing_said_says_nothing() {
    let ranking = MATCHER.rank(&read("red crown, streaked breast"), &everywhere(), 600);
    let all: f32 = ranking.candidates.iter().map(|c| c.share).sum::<f32>() + ranking.none_of_these;
    assert!((all - 1.0).abs() < 1e-3, "{all}");
    let nothing = MATCHER.rank(&[], &everywhere(), 600);
    let shares: Vec<f32> = nothing.candidates.iter().map(|c| c.share).collect();
    assert!(shares.iter().all(|s| (s - shares[0]).abs() < 1e-5));
    assert!((nothing.none_of_these - MATCHER.weights().none_of_these).abs() < 1e-3);
}

#[test]
fn what_was_not_there_counts_against_and_unseen_for_nothing() {
    let share = |note: &str, species: &str| {
        rank(note, &everywhere()).iter().find(|c| english(c) == species).unwrap().share
    };
    let plain = share("brown back, streaked breast", "Northern Cardinal");
    let crest = share("brown back, streaked breast, no crest", "Northern Cardinal");
    assert!(crest < plain, "{crest} {plain}");
    let seen = "brown back, streaked breast";
    let unseen = "brown back, streaked breast, couldn't see the bill";
    let (a, b) = (share(seen, "Song Sparrow"), share(unseen, "Song Sparrow"));
    assert!((a - b).abs() < 1e-4, "{a} {b}");
}

#[test]
fn a_doubted_mark_counts_less() {
    let weight = |note: &str| {
        let candidates = rank(note, &everywhere());
        says(&candidates, &read(note), "Northern Cardinal", "bird", "colour")
    };
    let (sure, doubted) = (weight("red bird"), weight("maybe a red bird"));
    assert!(sure > doubted && doubted > 0.2, "{sure} {doubted}");
}

#[test]
fn names_of_a_colour_add_up_to_one() {
    let chances = MATCHER.chances();
    let lexicon = &KNOWLEDGE.lexicon;
    let spoken: Vec<_> = lexicon
        .others("spoken")
        .flat_map(|e| e.items("shares"))
        .map(|i| lexicon.names.find(i.rsplit_once(' ').unwrap().0))
        .collect();
    let columns: Vec<Vec<f32>> = spoken.iter().map(|&n| chances.names_of(n)).collect();
    for (at, hue) in chances.forms.palette.iter().enumerate() {
        let sum: f32 = columns.iter().map(|c| c[at]).sum();
        // Names that are listed for a colour without being common add to it.
        assert!((0.9..1.001).contains(&sum), "{}: {sum}", lexicon.names.text(hue.colour));
    }
}

#[test]
fn a_missing_number_is_refused_with_its_name() {
    let mut knowledge = KNOWLEDGE.clone();
    let others = &mut knowledge.lexicon.others;
    *others = others.iter().filter(|e| e.id != "temper").cloned().collect();
    let wrong = Weights::of(&knowledge.lexicon).unwrap_err();
    assert!(wrong.to_string().contains("`temper`"), "{wrong}");
    assert!(Matcher::new(&knowledge).is_err());
}

#[test]
fn a_number_that_is_none_is_refused_where_it_stands() {
    let own = vec![Source::new("own.lex", "weight temper\n  value much\n  means wrong\n")];
    let (lexicon, _) =
        Knowledge::read_language(&Layers { own, base: built_in::sources() }).unwrap();
    let wrong = Weights::of(&lexicon).unwrap_err();
    assert!(wrong.to_string().contains("own.lex:1"), "{wrong}");
}

fn invented_notes() -> Vec<String> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/corpus-synthetic/gold");
    let mut files: Vec<_> = read_dir(folder).unwrap().map(|e| e.unwrap().path()).collect();
    files.sort();
    let texts = files.iter().map(|f| Source::new("notes", read_to_string(f).unwrap()));
    texts.flat_map(|s| notes(&s).unwrap().into_iter().map(|n| n.text)).collect()
}

/// Rows are kept from note to note; a matcher that has seen nothing before must say the same.
#[test]
fn keeping_rows_changes_nothing() {
    let list = everywhere();
    for text in invented_notes().iter().step_by(20) {
        let traits = read(text);
        let fresh = Matcher::new(&KNOWLEDGE).unwrap().rank(&traits, &list, 10);
        assert_eq!(MATCHER.rank(&traits, &list, 10), fresh, "{text}");
        assert_eq!(MATCHER.rank(&traits, &list, 10), fresh, "{text}");
    }
}

fn fen_list(text: &str, month: Option<u8>) -> (Checklist, String) {
    let source = Source::new("fen-list.txt", text);
    let (list, wrong) = checklist(&KNOWLEDGE.lexicon, &KNOWLEDGE.accounts, &source, month);
    (list, wrong.to_string())
}

#[test]
fn months_and_how_common_a_bird_is_count_before_the_note() {
    let text = "Barn Swallow; 4-9; common\nTree Swallow; 3-10; rare\n";
    let note = "blue above, white below, forked tail";
    let (summer, wrong) = fen_list(text, Some(6));
    assert_eq!(wrong, "");
    let (winter, _) = fen_list(text, Some(3));
    let share = |list: &Checklist| {
        rank(note, list).iter().find(|c| english(c) == "Barn Swallow").unwrap().share
    };
    assert!(share(&summer) > share(&winter), "{} {}", share(&summer), share(&winter));
    assert_eq!(rank(note, &summer).len(), 2);
}

#[test]
fn an_unknown_name_is_a_warning_with_the_nearest() {
    let (list, wrong) = fen_list("Barn Swalow\nBarn Swallow\n", None);
    assert_eq!(list.len(), 1);
    assert!(wrong.contains("fen-list.txt:1:1") && wrong.contains("Barn Swallow"), "{wrong}");
}

/// The candidates and the questions for a note.
fn look_next(note: &str, list: &Checklist) -> (Vec<Candidate>, Vec<LookNext>) {
    let traits = read(note);
    let ranking = MATCHER.rank(&traits, list, 10);
    let questions = MATCHER.look_next(&KNOWLEDGE.lexicon, &ranking.candidates, &traits, 4);
    (ranking.candidates, questions)
}

#[test]
fn questions_part_the_leaders_by_what_can_be_seen_and_was_not_noted() {
    let topography = &KNOWLEDGE.lexicon.topography;
    let notes = [
        "black and white woodpecker with a white back",
        "small brown streaked bird with a pink bill",
        "yellow below, olive above, white wing bars",
        "large grey and white bird with black wing tips and a yellow bill",
    ];
    for note in notes {
        let (candidates, questions) = look_next(note, &everywhere());
        assert!(!questions.is_empty(), "{note}");
        assert!(questions.windows(2).all(|w| w[0].gain >= w[1].gain));
        for question in &questions {
            assert!(topography.get(question.area).unwrap().in_field);
            assert!(question.question.ends_with('?'));
            assert!(question.answers.len() >= 2, "{note}: {}", question.question);
            let mut favoured: Vec<usize> =
                question.answers.iter().flat_map(|a| a.favours.clone()).collect();
            assert!(favoured.iter().all(|f| candidates.iter().any(|c| c.account == *f)));
            let count = favoured.len();
            favoured.sort_unstable();
            favoured.dedup();
            assert_eq!(favoured.len(), count, "{note}: one answer for each bird");
            assert!(question.gain > 0.0 && question.gain < 3.0);
        }
        let noted = read(note);
        assert!(
            !questions
                .iter()
                .any(|q| { noted.iter().any(|n| n.area == q.area && n.aspect == q.aspect) })
        );
    }
}

#[test]
fn two_look_alikes_are_parted_by_a_mark_that_parts_them() {
    let (list, _) = fen_list("Downy Woodpecker\nHairy Woodpecker\n", None);
    let (_, questions) = look_next("black and white woodpecker with a white back", &list);
    let lexicon = &KNOWLEDGE.lexicon;
    let asked: Vec<String> = questions
        .iter()
        .map(|q| format!("{} {}", lexicon.names.text(q.area), lexicon.names.text(q.aspect)))
        .collect();
    assert!(asked.iter().any(|a| a == "bill length" || a == "outer-tail pattern"), "{asked:?}");
}

/// An account with "conical, pointed" excludes a thin bill, though pointed ones mostly are thin; and where
/// measures (AVONET) and a loose word of the account disagree, the bird is on neither side.
#[test]
fn an_answer_favours_no_bird_whose_account_or_measures_speak_against_it() {
    let note = "streaky brown bird, size of a sparrow, red on head and breast, pale wing bars";
    let (_, questions) = look_next(note, &everywhere());
    let name = |q: &LookNext| KNOWLEDGE.lexicon.names.text(q.aspect).to_owned();
    let bill = questions.iter().find(|q| name(q) == "shape" && q.question.contains("bill"));
    let thin = bill.and_then(|q| q.answers.iter().find(|a| a.value == "thin"));
    let favoured: Vec<&str> = thin
        .iter()
        .flat_map(|a| &a.favours)
        .map(|at| KNOWLEDGE.accounts[*at].english.as_str())
        .collect();
    for finch in ["Cassin's Finch", "White-winged Crossbill", "Common Redpoll"] {
        assert!(!favoured.contains(&finch), "{favoured:?}");
    }
}

#[test]
fn marks_not_noted_are_told_once() {
    let (candidates, _) = look_next("red bird with crossed bill and wing bars", &everywhere());
    for one in candidates {
        let account = &KNOWLEDGE.accounts[one.account];
        let shown: Vec<&Trait> =
            KNOWLEDGE.accounts.traits_of(account, &account.forms[one.form]).collect();
        let told: Vec<&Trait> = one.unrecorded.iter().map(|&at| shown[at]).collect();
        for (n, mark) in told.iter().enumerate() {
            assert!(!told[..n].iter().any(|before| before.says_same(mark)), "{}", account.english);
        }
    }
}

/// What watchers call by one name is one answer: nobody tells brown legs from grey-brown ones.
#[test]
fn answers_to_one_question_are_colours_that_people_tell_apart() {
    for note in ["grey back, white face, black cap", "brown bird with a streaked breast"] {
        let (_, questions) = look_next(note, &everywhere());
        for question in questions {
            let values: Vec<&str> = question.answers.iter().map(|a| a.value.as_str()).collect();
            assert!(
                !(values.contains(&"brown") && values.contains(&"grey-brown")),
                "{}: {values:?}",
                question.question
            );
        }
    }
}

/// The tables stored with the program are those worked out of the lexicon.
#[test]
fn the_stored_layout_is_that_of_the_files() {
    let mut anew = KNOWLEDGE.clone();
    anew.layout = None;
    let layout = Matcher::new(&anew).unwrap().chances().layout();
    assert!(layout == MATCHER.chances().layout());
}

/// The share of "none of these" for a note, with some species taken off the list, or out of all accounts.
/// How readily a part's property is spoken of, of the adult forms of a species on average.
fn readily(species: &str, area: &str, aspect: &str) -> f32 {
    let (chances, names) = (MATCHER.chances(), &KNOWLEDGE.lexicon.names);
    let area = chances.areas.index(names.find(area)).unwrap();
    let of_species =
        |form: usize| KNOWLEDGE.accounts[chances.forms.list[form].account()].english == species;
    let all = chances.mentions().readily(area, names.find(aspect), Name::NONE).enumerate();
    let found: Vec<f32> = all.filter(|(form, _)| of_species(*form)).map(|(_, r)| r).collect();
    assert!(!found.is_empty(), "{species}, {area}");
    found.iter().sum::<f32>() / found.len() as f32
}

#[test]
fn what_stands_out_is_spoken_of_more_readily() {
    let pairs = [
        ("belly", "colour", "Eastern Phoebe", "Common Raven"),
        ("breast", "colour", "American Robin", "American Crow"),
        ("bill", "colour", "Atlantic Puffin", "Acadian Flycatcher"),
        ("tail", "colour", "Scissor-tailed Flycatcher", "Least Sandpiper"),
    ];
    for (area, aspect, more, less) in pairs {
        let (more_so, less_so) = (readily(more, area, aspect), readily(less, area, aspect));
        assert!(more_so > less_so, "{area}: {more} {more_so}, {less} {less_so}");
    }
}

#[test]
fn every_feature_of_a_mention_is_known() {
    let (chances, names) = (MATCHER.chances(), &KNOWLEDGE.lexicon.names);
    let index = |text: &str| chances.areas.index(names.find(text));
    let measured = |name: &str| KNOWLEDGE.accounts.iter().any(|a| a.measure(name).is_some());
    let mut entries = 0;
    for entry in KNOWLEDGE.lexicon.others("mention") {
        let own = index(entry.get("area").unwrap()).unwrap();
        assert!(names.find(entry.get("aspect").unwrap()).is_some(), "{}", entry.id);
        let value = entry.get("value").map_or(Name::NONE, |value| names.find(value));
        for item in entry.items("by") {
            let (text, weight) = item.rsplit_once(' ').unwrap();
            assert!(weight.parse::<f32>().is_ok(), "{}: {item}", entry.id);
            match Feature::parse(text, own, value, index) {
                Some(Feature::Measure(name)) => assert!(measured(&name), "{}: {item}", entry.id),
                found => assert!(found.is_some(), "{}: {item}", entry.id),
            }
        }
        entries += 1;
    }
    assert!(entries > 20);
}

fn none_without(note: &str, species: &str, hide: bool) -> f32 {
    let at = KNOWLEDGE.accounts.iter().position(|a| a.english == species).expect(species);
    let list = if hide { everywhere().hiding(at) } else { everywhere().without(at) };
    MATCHER.rank(&read(note), &list, 5).none_of_these
}

#[test]
fn none_of_these_rises_where_nothing_fits() {
    let note = "Grey-blue above, white cheeks, black cap and eyestripe, rusty belly, short tail.\n\
                Creeping down a trunk head first, thin straight bill.";
    let with = MATCHER.rank(&read(note), &everywhere(), 5).none_of_these;
    let off = none_without(note, "Red-breasted Nuthatch", false);
    let unknown = none_without(note, "Red-breasted Nuthatch", true);
    assert!(unknown > with && off > 2.0 * with, "{with} {unknown} {off}");
    let odd = "blue head, red wings, green tail, hooked yellow bill, long pink legs, \
               white belly, black back";
    let odd = MATCHER.rank(&read(odd), &everywhere(), 5).none_of_these;
    assert!(odd > 2.0 * MATCHER.weights().none_of_these, "{odd}");
}

#[test]
fn a_gull_is_not_on_a_list_of_finches() {
    let (list, _) = fen_list("House Finch\nPine Siskin\nCommon Redpoll\nBrambling\n", None);
    let note = "Large, grey back, white head, black wing tips, long yellow bill, pink legs";
    let ranking = MATCHER.rank(&read(note), &list, 5);
    assert!(ranking.none_of_these > 0.5, "{}", ranking.none_of_these);
}

/// Parts that only experts name are asked for after those that everybody sees.
#[test]
fn questions_are_about_what_people_look_at() {
    let mut asked: Vec<String> = Vec::new();
    for note in [
        "large bird with a banded tail, soaring",
        "small brown streaked bird",
        "yellow below, olive above",
        "brown bird on the pond",
        "black bird with a long tail",
        "white bird, long black legs",
    ] {
        let (_, questions) = look_next(note, &everywhere());
        let names = &KNOWLEDGE.lexicon.names;
        asked.extend(questions.iter().map(|q| names.text(q.area).to_owned()));
    }
    let seldom = ["scapulars", "tertials", "axillaries", "claws", "primaries", "uppertail-coverts"];
    let dull: Vec<&String> = asked.iter().filter(|a| seldom.contains(&a.as_str())).collect();
    assert!(asked.len() >= 18 && dull.len() <= 1, "{asked:?}");
}

/// A bird whose account tells of no pattern on a part that it describes is plain there.
#[test]
fn plain_against_streaked_is_asked() {
    let note = "small grey bird flitting in a willow, wing bars";
    let (_, questions) = look_next(note, &everywhere());
    let values = |q: &LookNext| q.answers.iter().map(|a| a.value.clone()).collect::<Vec<_>>();
    let plain = questions.iter().map(values).any(|v| v.contains(&"plain".to_owned()));
    assert!(plain, "{questions:?}");
}
