//! Every example and counter-example in the rule files holds.

use rectrix::knowledge::Knowledge;
use rectrix::proof::check;
use rectrix::reading::Reader;

#[test]
fn every_example_holds() {
    let (lexicon, rules) = Knowledge::read_language(&rectrix::built_in::layers()).unwrap();
    let wrong = check(&Reader::new(&lexicon, &rules, "north-america"));
    assert!(wrong.0.is_empty(), "{} examples fail:\n{wrong}", wrong.0.len());
    assert!(rules.rules.iter().filter(|r| !r.is_phrase).count() >= 10);
}
