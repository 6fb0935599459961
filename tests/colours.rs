//! The order of colours against published values.

use palette::color_difference::Ciede2000;
use palette::{IntoColor, Lab, Srgb};
use rectrix::built_in;
use rstest::rstest;

fn distance(a: &str, b: &str) -> f32 {
    let knowledge = built_in::knowledge();
    let names = &knowledge.lexicon.names;
    let found = knowledge.lexicon.colours.distance(names.find(a), names.find(b));
    found.unwrap_or_else(|| panic!("{a} or {b} has no place"))
}

/// Common practice: which of two colours a third is taken for.
#[rstest]
#[case("rusty", "orange", "blue")]
#[case("rufous", "brown", "green")]
#[case("chestnut", "brown", "black")]
#[case("buff", "yellow-brown", "blue")]
#[case("olive", "green", "pink")]
#[case("slate", "grey", "orange")]
#[case("sooty", "black", "white")]
#[case("crimson", "red", "yellow")]
#[case("lemon", "yellow", "brown")]
#[case("cream", "white", "black")]
#[case("tawny", "brown", "blue")]
#[case("vinaceous", "pink", "green")]
#[case("blue-grey", "grey", "red")]
fn near_and_far(#[case] colour: &str, #[case] near: &str, #[case] far: &str) {
    let (near_by, far_off) = (distance(colour, near), distance(colour, far));
    assert!(near_by < far_off, "{colour}: {near} at {near_by}, {far} at {far_off}");
}

/// CSS Color Module Level 4 (W3C), named colours, as sRGB.
#[rstest]
#[case("white", 255, 255, 255)]
#[case("black", 0, 0, 0)]
#[case("yellow", 255, 255, 0)]
#[case("red", 255, 0, 0)]
#[case("orange", 255, 165, 0)]
#[case("pink", 255, 192, 203)]
#[case("tan", 210, 180, 140)]
#[case("gold", 255, 215, 0)]
#[case("salmon", 250, 128, 114)]
#[case("turquoise", 64, 224, 208)]
fn places_are_near_the_published_ones(
    #[case] name: &str,
    #[case] r: u8,
    #[case] g: u8,
    #[case] b: u8,
) {
    let knowledge = built_in::knowledge();
    let ours = knowledge.lexicon.colours.place(knowledge.lexicon.names.find(name)).unwrap();
    let published: Lab = Srgb::new(r, g, b).into_format::<f32>().into_color();
    let far = ours.difference(published);
    assert!(far < 12.0, "{name}: {ours:?}, published {published:?}, {far} apart");
}
