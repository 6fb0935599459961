//! What people see, as snapshots to be read.

use rectrix::built_in;
use rectrix::knowledge::Knowledge;
use rectrix::matching::Checklist;
use rectrix::output::explain::explain;
use rectrix::output::text::{Layout, gaps_view, view};
use rectrix::output::{Analyst, NoteReading, Options};
use std::sync::LazyLock;

static KNOWLEDGE: LazyLock<Knowledge> = LazyLock::new(built_in::knowledge);
const NARROW: Layout = Layout { width: 80, region_named: false };

static ANALYST: LazyLock<Analyst<'static>> = LazyLock::new(|| {
    let options = Options { top: 0, checklist: Checklist::all(&KNOWLEDGE.accounts) };
    Analyst::new(&KNOWLEDGE, "north-america", options).unwrap()
});

fn read(note: &str) -> NoteReading<'_> {
    ANALYST.analyse("1", note)
}

fn plain(text: &str) -> String {
    anstream::adapter::strip_str(text).to_string()
}

#[test]
fn the_view_of_a_note() {
    let reading = read("Robin-sized, orange below, black hood, bobs tail. Bill glorby?");
    insta::assert_snapshot!(plain(&view(&reading, NARROW)));
}

#[test]
fn the_view_of_what_is_left_out() {
    let reading = read("streaked breast, no wing bars, couldn't see the legs");
    insta::assert_snapshot!(plain(&gaps_view(&reading, NARROW)));
}

#[test]
fn the_derivation() {
    let note = "no wing bars, black hood";
    let knowledge = Knowledge::read(&built_in::layers()).unwrap();
    let reader = knowledge.reader("north-america").with_trace();
    // The line of a rule in its file changes with every word of that file.
    insta::with_settings!({filters => vec![(r"\.rules:\d+\)", ".rules:[line])")]}, {
        insta::assert_snapshot!(explain(&reader, note, &reader.read(note)));
    });
}

#[test]
fn the_json_of_a_mark() {
    let reading = read("dark brown upper breast");
    insta::assert_snapshot!(serde_json::to_string_pretty(&reading.birds[0].traits).unwrap());
}

#[test]
fn a_note_without_a_mark_says_what_to_write() {
    let reading = read("went for a walk with my neighbour");
    insta::assert_snapshot!(plain(&view(&reading, NARROW)));
}
