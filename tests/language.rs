//! What notes of every kind must be read as: one table for each thing that language does.
//!
//! Each case is a note and all the traits it gives, as rule examples write them; `unplaced:` lists the
//! words that must be reported, if any.

use rectrix::built_in::knowledge;
use rectrix::proof::stated_all;
use rectrix::rules::examples::expected_trait;
use rstest::rstest;

fn check(region: &str, note: &str, expected: &str) {
    let knowledge = knowledge();
    let reader = knowledge.reader(region);
    let reading = reader.read(note);
    let (expected, unplaced) = expected.split_once("unplaced:").unwrap_or((expected, ""));
    let mut wanted: Vec<_> = expected
        .split(';')
        .map(str::trim)
        .filter(|t| !t.is_empty())
        .map(|t| expected_trait(&t.split_whitespace().collect()).unwrap())
        .collect();
    wanted.sort();
    assert_eq!(stated_all(&reader, &reading), wanted, "{note}");
    let lost: Vec<&str> = reading.unplaced().map(|span| span.of(note)).collect();
    let wanted: Vec<&str> = unplaced.split(',').map(str::trim).filter(|w| !w.is_empty()).collect();
    assert_eq!(lost, wanted, "unplaced in {note}");
}

#[rstest]
#[case(
    "robin-sized, orange below, black hood, bobs tail",
    "bird size about-american-robin; underparts colour orange; crown colour black; nape colour black; face colour black; throat colour black; tail behaviour bob"
)]
#[case(
    "black head, nape and upper breast",
    "head colour black; nape colour black; breast colour black"
)]
#[case("black and white head", "head colour black; head colour white")]
#[case("black, nape and crown", "bird colour black")]
#[case(
    "brown wings, back and tail with white edges",
    "wing colour brown; back colour brown; tail colour brown; outer-tail colour white"
)]
fn coordination(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case(
    "the wings are brown with two white bars",
    "wing colour brown; wing-bar colour white; wing-bar count 2"
)]
#[case("wings that are brown", "wing colour brown")]
#[case("tail is long and notched", "tail length long; tail shape notched")]
#[case("it has a yellow belly", "belly colour yellow")]
#[case("yellow on the belly", "belly colour yellow")]
#[case("belly is yellow", "belly colour yellow")]
#[case("yellow-bellied", "belly colour yellow")]
#[case("white-tipped tail", "tail-tip colour white")]
#[case("with a splash of yellow at the bend of the wing", "carpal colour yellow")]
fn predicates(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case(
    "red from forecrown over the crown to the nape",
    "forehead colour red; crown colour red; nape colour red"
)]
#[case("rusty from the throat down the flanks", "throat colour rusty; flanks colour rusty")]
#[case("black around the bill and eye", "bill-base colour black; eye-ring colour black")]
#[case("white between eye and bill", "lores colour white")]
fn paths_and_limits(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case("otherwise brown", "bird colour brown")]
#[case("rest of head grey", "head colour grey")]
#[case("all blue above", "upperparts colour blue")]
#[case("uniformly black", "bird colour black")]
#[case("mostly white except for black wingtips", "bird colour white; primary-tips colour black")]
fn rest_and_all(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case(
    "black streaks on a white breast",
    "breast pattern streaked; breast colour black; breast colour white"
)]
#[case("streaked breast", "breast pattern streaked")]
#[case("barred black and white back", "back pattern barred; back colour black; back colour white")]
#[case("heavily spotted below", "underparts pattern spotted")]
#[case("finely vermiculated", "bird pattern vermiculated")]
fn pattern_on_ground(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case("bill as long as the head", "bill length as-long-as-head")]
#[case("bill longer than the head", "bill length longer-than-head")]
#[case("legs long for its size", "legs length long")]
#[case("small-headed", "head size small")]
#[case("wings reach past the tail tip", "wing length longer-than-tail")]
#[case("slightly downcurved bill", "bill shape decurved")]
#[case("upper mandible curved", "upper-mandible shape curved")]
fn relative_structure(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case("tail bobbing", "tail behaviour bob")]
#[case("cocks its tail", "tail behaviour cock")]
#[case("fanning its tail", "tail behaviour fan")]
#[case("wing flicking", "wing behaviour flick")]
#[case("creeping up a trunk", "bird behaviour climb-up-trunk")]
#[case("went down the trunk head first", "bird behaviour climb-down-head-first")]
#[case("hovering", "bird behaviour hover")]
#[case("diving", "bird behaviour dive")]
#[case("wading", "bird behaviour wade")]
#[case("hopping, never walking", "bird behaviour hop; bird behaviour walk absent")]
#[case("in a flock", "bird behaviour flock")]
#[case("undulating flight", "bird flight undulating")]
fn behaviour(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case("no wing bars or eye-ring", "wing-bar mark shown absent; eye-ring mark shown absent")]
#[case("neither wing bars nor eye-ring", "wing-bar mark shown absent; eye-ring mark shown absent")]
#[case("without any white in the tail", "tail colour white absent")]
#[case("lacked an eye-ring", "eye-ring mark shown absent")]
#[case("plain wings", "wing pattern plain; wing-bar mark shown absent")]
#[case("didn't see the bill or the legs", "bill mark shown unseen; legs mark shown unseen")]
#[case("couldn't see the legs", "legs mark shown unseen")]
#[case("bill hidden", "bill mark shown unseen")]
#[case("no doubt a white rump", "rump colour white")]
#[case("not only a white rump but a black tail", "rump colour white; tail colour black")]
#[case("maybe a yellow belly", "belly colour yellow hedged")]
#[case("brownish back", "back colour brown hedged")]
#[case("I think the legs were pink", "legs colour pink hedged")]
#[case("legs pink?", "legs colour pink hedged")]
#[case("grey or brown back", "back colour grey hedged; back colour brown hedged")]
fn negation_hedging_unseen(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case("yellow, no wait, orange below", "underparts colour orange")]
#[case("black bib, scratch that, black throat", "throat colour black")]
fn correction(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case(
    "like a song thrush but bigger and colder",
    "bird size bigger-than-song-thrush; bird colour cold"
)]
#[case("think it was a wheatear", "")]
#[case(
    "between a sparrow and a robin",
    "bird size bigger-than-sparrow-of-europe; bird size smaller-than-european-robin"
)]
#[case("half the size of a crow", "bird size half-the-size-of-carrion-crow")]
#[case("nine inches long", "bird size 23-cm")]
#[case("about 25cm", "bird size 25-cm")]
fn comparison_and_identification(#[case] note: &str, #[case] expected: &str) {
    check("europe", note, expected);
}

#[rstest]
#[case(
    "two birds, one had a red cap, the other a black one",
    "crown colour red; 2: crown colour black"
)]
#[case(
    "male black with a white rump, female browner",
    "bird sex-age male; bird colour black; rump colour white; 2: bird sex-age female; 2: bird colour brown"
)]
#[case("grey back; a second bird with a brown back", "back colour grey; 2: back colour brown")]
#[case(
    "one all black, the other streaked, both with yellow legs",
    "bird colour black; legs colour yellow; 2: bird pattern streaked; 2: legs colour yellow"
)]
#[case("one wing drooping", "wing behaviour droop")]
fn several_birds(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case(
    "black cap comma white belly full stop short tail",
    "crown colour black; belly colour white; tail length short"
)]
#[case("twenty three centimetres long", "bird size 23-cm")]
#[case("um er a white rump you know", "rump colour white")]
#[case("a with a with a red cap", "crown colour red")]
#[case("morning dove size", "bird size about-mourning-dove")]
#[case("a read cap", "crown colour red")]
#[case("long tale", "tail length long")]
#[case("mail comma blue above", "bird sex-age male; upperparts colour blue")]
#[case("long yellow build", "bill length long; bill colour yellow")]
#[case("white romp", "rump colour white")]
#[case("black laws", "lores colour black")]
#[case("buff rest", "breast colour buff")]
#[case("white wing bar", "wing-bar colour white")]
#[case("white wingbar", "wing-bar colour white")]
#[case("tail withwhite edges", "outer-tail colour white")]
#[case("chest nut back", "back colour chestnut")]
fn dictation(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case("I read the tale to the end and had a rest", "")]
#[case("sat by the plane trees in the morning", "")]
#[case("the mail came late", "")]
fn sound_alikes_that_mean_what_they_say(#[case] note: &str, #[case] expected: &str) {
    let knowledge = knowledge();
    let reading = knowledge.reader("north-america").read(note);
    let found: Vec<_> = reading.repairs.iter().map(|r| r.span.of(note)).collect();
    assert!(found.is_empty(), "{note}: {found:?}");
    assert_eq!(expected, "");
}

#[rstest]
#[case("white retrices", "tail colour white")]
#[case("white supercillary", "supercilium colour white")]
#[case("pink tarsuses", "legs colour pink")]
#[case("brown plummage", "bird colour brown")]
#[case("yellow beek", "bill colour yellow")]
#[case("stripped breast", "breast pattern striped")]
#[case("yellow beck", "bill colour yellow")]
#[case("white bellow", "belly colour white")]
#[case("GRAY BACK, GREY BELLY", "back colour grey; belly colour grey")]
#[case(
    "the bird\u{2019}s rump was white \u{1f426}\r\nlegs red",
    "rump colour white; legs colour red"
)]
fn spelling_and_signs(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case(
    "pink legs, thick yellow bill, no wait legs yellow",
    "legs colour yellow; bill shape thick; bill colour yellow"
)]
#[case("black wings, no wait they were more dark brown", "wing colour brown")]
#[case("grey belly no wait the breast was grey", "breast colour grey")]
#[case("long bill no wait tail", "tail length long")]
fn put_right(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case("white body, head and tail", "bird colour white; head colour white; tail colour white")]
#[case(
    "this bird has a white body, head and tail",
    "bird colour white; head colour white; tail colour white"
)]
#[case("red feathered chest", "breast colour red")]
#[case("red-feathered, long tail", "bird colour red; tail length long")]
#[case("longish bill", "bill length long hedged")]
#[case("black under and around the beak", "chin colour black; bill-base colour black")]
#[case("the top of the bird's head is black", "crown colour black")]
#[case("white over most of the rest of its body", "bird colour white")]
#[case(
    "white below with brown streaks",
    "underparts colour white; underparts pattern streaked; underparts colour brown"
)]
#[case("a brown body, especially on its back", "bird colour brown; back colour brown")]
#[case("a white crescent behind the eye", "eye-crescent colour white")]
fn lists_and_places(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case(
    "yellow with black stripes head",
    "head colour yellow; head pattern striped; head colour black"
)]
#[case(
    "a bird with white with black spots breast",
    "breast colour white; breast pattern spotted; breast colour black"
)]
#[case(
    "a black and white stripe bird",
    "bird colour black; bird colour white; bird pattern striped"
)]
#[case("a large white flying bird", "bird size large; bird colour white")]
#[case(
    "feathers of black and white on its wings and face",
    "wing colour black; wing colour white; face colour black; face colour white"
)]
#[case(
    "two stripes across its head of yellow and grey",
    "head pattern striped; head colour yellow; head colour grey"
)]
#[case("darker spots of brown", "bird pattern spotted; bird colour brown")]
#[case("a bird with long feathers on its head", "crest mark shown")]
#[case("the bird is brown with a small open bill", "bird colour brown; bill size small")]
#[case(
    "with a pale, small, textured beak",
    "bill colour pale; bill size small; unplaced: textured"
)]
#[case(
    "a grey bird with a long, pointy, bill.",
    "bird colour grey; bill length long; bill shape pointed"
)]
#[case("the nape is very fresh and white", "nape colour white; unplaced: fresh")]
#[case("belly with a hint of yellow", "belly colour yellow")]
#[case("grey wings with a touch of white", "wing colour grey; wing colour white")]
#[case("a brown bird with a hint of yellow on its rump", "bird colour brown; rump colour yellow")]
#[case("the back is grey, as is the crown", "back colour grey; crown colour grey")]
#[case("its tail is long for its body", "tail length long")]
#[case("a tail that sticks straight out", "tail behaviour hold-out")]
#[case("very small black spots mostly on the wings", "wing pattern spotted; wing colour black")]
#[case("the belly is a stunning yellow color", "belly colour yellow")]
#[case("the beak is awkwardly big", "bill size large; unplaced: awkwardly")]
#[case("wing with a green color", "wing colour green")]
#[case("has a beak that is also blue", "bill colour blue")]
#[case("a shorter neck and a longer tail", "neck length short; tail length long")]
#[case("a tail about the same length as its body", "tail length as-long-as-bird")]
#[case(
    "brown and white striped bird",
    "bird colour brown; bird colour white; bird pattern striped"
)]
fn constructions_of_many_people(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case("brown all over, head to tail", "bird colour brown; head colour brown; tail colour brown")]
#[case("red fur on top of the head", "crown colour red")]
#[case(
    "a yellow spot of feathers on top of its head",
    "crown pattern spotted; crown colour yellow"
)]
#[case("the beak of this brown bird is short", "bill length short; bird colour brown")]
#[case("the wings of this small bird have shades of green", "wing colour green; bird size small")]
#[case("a small point bill", "bill size small; bill shape pointed")]
#[case("eyes framed with yellow feathers", "eye-ring colour yellow")]
#[case("white covering its head and neck", "head colour white; neck colour white")]
#[case("bill short, head to one side", "bill length short")]
#[case(
    "grey all over, especially on its nape and back",
    "bird colour grey; nape colour grey; back colour grey"
)]
#[case(
    "the bird is brown all over its body including its wings",
    "bird colour brown; wing colour brown"
)]
#[case("black plumage atop its head", "crown colour black")]
#[case("pink coloring under its wings", "underwing colour pink")]
#[case("white spots on most of the back", "back pattern spotted; back colour white")]
#[case("a few white feathers scattered around its eyes", "eye-ring colour white")]
#[case("grey ruffled feathers on its neck", "neck colour grey")]
#[case(
    "yellow feathers going down from its throat to the belly",
    "throat colour yellow; breast colour yellow; belly colour yellow"
)]
#[case(
    "greenish both on its crown and nape",
    "crown colour green hedged; nape colour green hedged"
)]
#[case("the flanks and belly are buff on the bird", "flanks colour buff; belly colour buff")]
fn placed_as_people_place(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case("wings that are brown and have spots on them", "wing colour brown; wing pattern spotted")]
#[case(
    "brown wings and head with a pointy grey beak",
    "wing colour brown; head colour brown; bill shape pointed; bill colour grey"
)]
#[case(
    "a large head which has black and white feathers",
    "head size large; head colour black; head colour white"
)]
#[case("tail with horizontal black stripes", "tail pattern striped; tail colour black")]
#[case("wings brown then tail black", "wing colour brown; tail colour black")]
fn marks_of_the_part_just_named(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case("buff eye brow", "supercilium colour buff")]
#[case("hanging legs pink", "legs behaviour droop; legs colour pink")]
#[case("bobs tail, brown above", "tail behaviour bob; upperparts colour brown")]
fn words_that_belong_together(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

#[rstest]
#[case("the belly was not white but cream", "belly colour white absent; belly colour cream")]
#[case("legs not black more dark brown", "legs colour black absent; legs colour brown")]
#[case("a bird not dark more of a slate grey", "bird colour dark absent; bird colour slate-grey")]
#[case("a lighter, more orange beak", "bill colour orange; bill colour pale")]
#[case("a black n white bird", "bird colour black; bird colour white")]
#[case("mebbe a red rump", "rump colour red hedged")]
#[case("a pale rump, feet i never clocked", "rump colour pale")]
#[case("bill thin i think not thick", "bill shape thin hedged; bill shape thick absent")]
#[case(
    "dark back white belly black eye mask no crest",
    "back colour dark; belly colour white; lores colour black; ear-coverts colour black; crest mark shown absent"
)]
#[case("yellow cap no crown", "crown colour yellow")]
#[case("orange legs, not red", "legs colour orange; legs colour red absent")]
#[case("orange legs, no red", "legs colour orange; bird colour red absent")]
fn denied_and_set_right(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

/// A part is gone on with behind a comma, where what follows is of parts only.
#[rstest]
#[case(
    "long straight bill, twice the length of the head, pink at the base",
    "bill length long; bill shape straight; bill length much-longer-than-head; bill-base colour pink"
)]
#[case("bill one and a half times as long as its head", "bill length longer-than-head")]
#[case("legs half the length of the body", "legs length shorter-than-bird")]
#[case("bill two times the length of the head", "bill length much-longer-than-head")]
#[case("brown bird, white at the tip of the tail", "bird colour brown; tail-tip colour white")]
#[case("brown, white at the edges", "bird colour brown; bird colour white")]
#[case("its tail kept flicking", "tail behaviour flick")]
#[case("tail kept flickin", "tail behaviour flick")]
#[case("black line thru the eye", "eyestripe colour black")]
#[case("pink legs, no streaks on the flanks", "legs colour pink; flanks pattern streaked absent")]
#[case(
    "black band down the middle of the yellow belly",
    "belly colour black; belly pattern banded; belly colour yellow"
)]
#[case(
    "pale eye ring, bill slightly decurved, darker on top than underneath",
    "eye-ring colour pale; bill shape decurved; upper-mandible colour dark"
)]
#[case(
    "bill heavy and hooked, yellow skin",
    "bill shape heavy; bill shape hooked unplaced: yellow, skin"
)]
#[case("yellow feet, bill black too", "feet colour yellow; bill colour black")]
#[case("no contrast between the back and the rump", "")]
#[case("white eyebrow that goes past the eye", "supercilium colour white unplaced: goes past")]
#[case("black necklace of streaks", "collar colour black; collar pattern streaked")]
#[case("throat white outlined in black", "throat colour white; collar colour black")]
#[case(
    "orange flanks, underparts with black scallops",
    "flanks colour orange; underparts pattern scalloped; underparts colour black"
)]
#[case(
    "grey above whitish below darker wings",
    "upperparts colour grey; underparts colour white hedged; wing colour dark"
)]
#[case("back: olive. belly: same.", "back colour olive; belly colour olive")]
#[case("a robin hopping, red breast", "bird behaviour hop; breast colour red")]
fn what_is_said_further_of_a_part(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}

/// Notes kept as a form: what is named, and then what was seen of it.
#[rstest]
#[case(
    "Size: robin. Bill: short, conical.",
    "bird size about-american-robin; bill length short; bill shape conical"
)]
#[case("head shape: rounded, tail shape forked", "head shape rounded; tail shape forked")]
#[case("bill length: as long as head", "bill length as-long-as-head")]
#[case("back pattern streaked", "back pattern streaked")]
#[case("tail shape rounded rather than forked", "tail shape rounded; tail shape forked absent")]
#[case("Eye: dark with a pale ring", "iris colour dark; eye-ring colour pale; iris pattern ringed")]
#[case(
    "crown black nape black back grey legs orange",
    "crown colour black; nape colour black; back colour grey; legs colour orange"
)]
#[case(
    "white crown black back grey belly",
    "crown colour white; back colour black; belly colour grey"
)]
#[case("no red on the wing, tail not forked", "wing colour red absent; tail shape forked absent")]
#[case("streaks confined to the sides", "flanks pattern streaked")]
#[case(
    "it lacks wing bars and the face is plain",
    "wing-bar mark shown absent; face pattern plain"
)]
#[case("tail otherwise dark", "tail colour dark")]
#[case("wing bars faint, almost absent", "wing-bar mark shown")]
fn notes_kept_as_a_form(#[case] note: &str, #[case] expected: &str) {
    check("north-america", note, expected);
}
