//! What the accounts say of size and proportion, against the measures published for the same species
//! (AVONET: Tobias et al. 2022, Ecology Letters 25:581-597), as the accounts carry them.

use rectrix::accounts::Account;
use rectrix::built_in;
use rectrix::knowledge::Knowledge;
use rectrix::traits::Polarity;
use std::sync::LazyLock;

static KNOWLEDGE: LazyLock<Knowledge> = LazyLock::new(built_in::knowledge);

fn says(account: &Account, area: &str, aspect: &str, values: &[&str]) -> bool {
    let lexicon = &KNOWLEDGE.lexicon;
    let name = |n| lexicon.names.text(n);
    account.forms.iter().any(|form| {
        KNOWLEDGE.accounts.traits_of(account, form).any(|t| {
            name(t.area) == area
                && name(t.aspect) == aspect
                && t.polarity == Polarity::Present
                && values.contains(&t.value.text(lexicon))
        })
    })
}

/// A measure against the body: the logarithm of its ratio to the cube root of the mass.
fn proportion(account: &Account, measure: &str) -> Option<f32> {
    Some((account.measure(measure)? / account.mass?.cbrt()).ln())
}

/// How long a bill is for its depth.
fn thinness(account: &Account) -> Option<f32> {
    Some(account.measure("bill")? / account.measure("bill-depth")?)
}

fn account(english: &str) -> &'static Account {
    KNOWLEDGE.accounts.iter().find(|a| a.english == english).unwrap_or_else(|| panic!("{english}"))
}

fn of(
    area: &str,
    aspect: &str,
    values: &[&str],
    measure: impl Fn(&Account) -> Option<f32>,
) -> Vec<f32> {
    let said = KNOWLEDGE.accounts.iter().filter(|a| says(a, area, aspect, values));
    said.filter_map(measure).collect()
}

/// Of all pairs, the share in which the second is the greater.
fn in_order(low: &[f32], high: &[f32]) -> f64 {
    assert!(low.len() >= 3 && high.len() >= 3, "{} and {} accounts", low.len(), high.len());
    let right = low.iter().flat_map(|l| high.iter().filter(move |h| *h > l)).count();
    right as f64 / (low.len() * high.len()) as f64
}

fn median(mut list: Vec<f32>) -> f32 {
    assert!(!list.is_empty());
    list.sort_by(f32::total_cmp);
    list[list.len() / 2]
}

#[test]
fn words_for_size_are_in_the_order_of_the_masses() {
    let mass = |word: &str| of("bird", "size", &[word], |a| a.mass);
    let medians: Vec<f32> =
        ["tiny", "small", "medium", "large", "huge"].map(|w| median(mass(w))).to_vec();
    assert!(medians.windows(2).all(|w| w[0] < w[1]), "{medians:?}");
}

#[test]
fn words_for_bills_are_in_the_order_of_their_proportions() {
    let bill = |words: &[&str]| of("bill", "length", words, |a| proportion(a, "bill"));
    // Geese and swans have small heads for their mass, hummingbirds large ones.
    let share = in_order(&bill(&["short"]), &bill(&["long"]));
    assert!(share > 0.9, "short against long: {share:.3}");
    let steps = [
        vec!["much-shorter-than-head", "shorter-than-head", "short"],
        vec!["as-long-as-head"],
        vec!["longer-than-head"],
        vec!["much-longer-than-head"],
    ];
    let medians: Vec<f32> = steps.iter().map(|s| median(bill(s))).collect();
    assert!(medians.windows(2).all(|w| w[0] < w[1]), "{medians:?}");
}

#[test]
fn words_for_the_depth_of_bills_are_in_the_order_of_their_proportions() {
    let bill = |words: &[&str]| of("bill", "shape", words, thinness);
    let share = in_order(&bill(&["conical"]), &bill(&["thin", "slender"]));
    assert!(share > 0.97, "conical against thin: {share:.3}");
    let share = in_order(&bill(&["thick", "stout"]), &bill(&["thin", "slender"]));
    assert!(share > 0.8, "thick against thin: {share:.3}");
}

#[test]
fn words_for_tails_legs_and_wings_are_in_the_order_of_their_proportions() {
    for (area, measure, least) in
        [("tail", "tail", 0.8), ("legs", "tarsus", 0.95), ("wing", "wing", 0.9)]
    {
        let part = |word: &str| of(area, "length", &[word], |a| proportion(a, measure));
        let share = in_order(&part("short"), &part("long"));
        assert!(share > least, "{area}: {share:.3}");
    }
}

// Common practice, here against the measures.
#[test]
fn well_known_proportions_are_as_measured() {
    let bill = |name| proportion(account(name), "bill").unwrap();
    assert!(bill("Hairy Woodpecker") > bill("Downy Woodpecker") + 0.2);
    let family = |family: &str| {
        let members = KNOWLEDGE.accounts.iter().filter(|a| a.family == family);
        median(members.filter_map(thinness).collect())
    };
    assert!(family("Vireonidae") < family("Parulidae"));
    let tail = |name| proportion(account(name), "tail").unwrap();
    assert!(tail("Mourning Dove") > tail("Rock Pigeon") + 0.2);
    assert!(tail("Eastern Meadowlark") < tail("Common Grackle") - 0.2);
}
