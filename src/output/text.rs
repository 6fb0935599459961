//! The terminal view of a note.

use super::model::{Bird, CandidateOut, GapOut, LookNextOut, Mark, NoteReading, TraitOut};
use super::note_view::{ASIDE, LOST, PLACED, note_view};
use crate::gaps::State;
use crate::traits::{Certainty, Polarity};
use anstyle::Style;
use comfy_table::{ContentArrangement, Table, presets};
use std::fmt::Write;

const HEAD: Style = Style::new().bold();
const INDENT: &str = "  ";

/// How the view is laid out.
#[derive(Clone, Copy, Debug)]
pub struct Layout {
    /// Columns to lay out for.
    pub width: usize,
    /// Whether the reader of the view named a region; if not, the view says which was taken.
    pub region_named: bool,
}

/// The whole view of a note, with styles as ANSI codes.
pub fn view(reading: &NoteReading<'_>, layout: Layout) -> String {
    let mut out = String::new();
    heading(&mut out, "Note", "= placed   ? not placed   (blank) set aside");
    out.push_str(&note_view(reading, layout.width, INDENT));
    for bird in &reading.birds {
        if reading.birds.len() > 1 {
            heading(&mut out, &format!("Bird {}", bird.bird), "");
        }
        marks(&mut out, bird, layout.width);
        left_out(&mut out, &bird.gaps, layout.width);
        candidates(&mut out, bird, layout.width);
        questions(&mut out, &bird.look_next, layout.width);
    }
    remarks(&mut out, reading, layout);
    out
}

/// The view of what a note leaves out, alone.
pub fn gaps_view(reading: &NoteReading<'_>, layout: Layout) -> String {
    let mut out = String::new();
    heading(&mut out, "Note", "");
    out.push_str(&note_view(reading, layout.width, INDENT));
    for bird in &reading.birds {
        if reading.birds.len() > 1 {
            heading(&mut out, &format!("Bird {}", bird.bird), "");
        }
        heading(&mut out, "Marks of a full description", "");
        for gap in &bird.gaps {
            let style = match gap.state {
                State::Recorded => PLACED,
                State::Absent => Style::new(),
                State::Unseen => ASIDE,
                State::LeftOut => LOST,
            };
            let _ = writeln!(out, "{INDENT}{:<14} {style}{}{style:#}", gap.title, gap.state.text());
            if gap.state == State::LeftOut || gap.state == State::Unseen {
                wrapped(&mut out, gap.why, layout.width, 17);
                wrapped(&mut out, &format!("look: {}", gap.look), layout.width, 17);
            }
        }
    }
    out
}

pub(super) fn heading(out: &mut String, title: &str, note: &str) {
    if !out.is_empty() {
        out.push('\n');
    }
    let _ = write!(out, "{HEAD}{title}{HEAD:#}");
    if !note.is_empty() {
        let _ = write!(out, "  {ASIDE}{note}{ASIDE:#}");
    }
    out.push('\n');
}

fn marks(out: &mut String, bird: &Bird<'_>, width: usize) {
    heading(out, "Marks", "");
    if bird.traits.is_empty() {
        let _ = writeln!(out, "{INDENT}none: say a part and what was seen there, such as");
        let _ = writeln!(out, "{INDENT}  streaked breast, short conical bill, no wing bars");
        return;
    }
    let mut table = Table::new();
    table
        .load_style(presets::NOTHING)
        .set_content_arrangement(ContentArrangement::Dynamic)
        .set_width(u16::try_from(width.min(120)).unwrap_or(80));
    for group in grouped(&bird.traits) {
        let first = &group[0].mark;
        let areas: Vec<String> = group.iter().map(|t| t.mark.area.replace('-', " ")).collect();
        table.add_row([areas.join(", "), seen(first), quoted(&first.as_written)]);
    }
    for line in table.lines() {
        let _ = writeln!(out, " {}", line.trim_end());
    }
}

/// Traits that differ only in their area, because one word stands for several, are told together.
fn grouped<'t, 'a>(traits: &'t [TraitOut<'a>]) -> Vec<Vec<&'t TraitOut<'a>>> {
    let mut out: Vec<Vec<&'t TraitOut<'a>>> = Vec::new();
    for one in traits {
        let same = |group: &&mut Vec<&TraitOut<'_>>| {
            let (first, mark) = (&group[0].mark, &one.mark);
            first.written_area == mark.written_area
                && mark.written_area.is_some()
                && group[0].parts == one.parts
                && first.aspect == mark.aspect
                && first.value == mark.value
        };
        match out.iter_mut().find(same) {
            Some(group) => group.push(one),
            None => out.push(vec![one]),
        }
    }
    out
}

/// What was seen, in words: `dark brown, in patches (not sure)`.
pub fn seen(one: &Mark<'_>) -> String {
    let mut out = String::new();
    let value = one.value.replace('-', " ");
    if let Some(tone) = one.tone.filter(|t| *t != one.value) {
        out.push_str(tone);
        out.push(' ');
    }
    match one.aspect {
        "mark" => {}
        "colour" | "pattern" | "shape" | "length" | "size" | "build" | "behaviour" => {
            out.push_str(&value);
        }
        "count" => {
            let _ = write!(out, "{value} of them");
        }
        aspect => {
            let _ = write!(out, "{}: {value}", aspect.replace('-', " "));
        }
    }
    if let Some([low, high]) = one.mass_g {
        let _ = write!(out, " ({low:.0}-{high:.0} g)");
    }
    for more in [one.position, one.extent].into_iter().flatten() {
        let _ = write!(out, ", {}", more.replace('-', " "));
    }
    match one.polarity {
        Polarity::Present if one.aspect == "mark" => out.insert_str(0, "shown"),
        Polarity::Present => {}
        Polarity::Absent if one.aspect == "mark" => out.insert_str(0, "looked for, not there"),
        Polarity::Absent => out.insert_str(0, "not "),
        Polarity::Unseen => out = "could not be seen".to_owned(),
    }
    if one.certainty == Certainty::Hedged {
        out.push_str(" (not sure)");
    }
    out
}

fn quoted(text: &str) -> String {
    format!("\"{}\"", text.split_whitespace().collect::<Vec<_>>().join(" "))
}

fn left_out(out: &mut String, gaps: &[GapOut<'_>], width: usize) {
    let missing: Vec<&GapOut<'_>> =
        gaps.iter().filter(|g| matches!(g.state, State::LeftOut | State::Unseen)).collect();
    if missing.is_empty() {
        return;
    }
    heading(out, "Left out", "");
    for gap in missing {
        let head = format!("{INDENT}{:<13} ", gap.title);
        let columns = head.len().max(16);
        let _ = write!(out, "{LOST}{head}{LOST:#}");
        let state = if gap.state == State::Unseen { "not seen; " } else { "" };
        let text = format!("{state}{}", gap.why);
        let text = textwrap::fill(&text, width.saturating_sub(columns).max(20));
        let _ = writeln!(out, "{}", text.replace('\n', &format!("\n{}", " ".repeat(columns))));
    }
}

fn candidates(out: &mut String, bird: &Bird<'_>, width: usize) {
    let Some(none) = bird.none_of_these else {
        return;
    };
    heading(out, "May be", "suggestions; you are the judge");
    for (i, one) in bird.candidates.iter().enumerate() {
        candidate(out, i + 1, one, width);
    }
    let _ = writeln!(out, "{INDENT}{:>2}  none of these  {}", "-", percent(none));
}

fn candidate(out: &mut String, place: usize, one: &CandidateOut<'_>, width: usize) {
    let _ = writeln!(
        out,
        "{INDENT}{place:>2}  {HEAD}{}{HEAD:#}  {}  {ASIDE}{}, {}{ASIDE:#}",
        one.species,
        percent(one.share),
        one.scientific,
        one.form
    );
    let listed = |reasons: &[super::model::ReasonOut]| {
        reasons.iter().take(5).map(|r| r.text.as_str()).collect::<Vec<_>>().join("; ")
    };
    for (name, text) in [
        ("for", listed(&one.fits)),
        ("against", listed(&one.conflicts)),
        ("not noted", one.unrecorded.iter().take(4).cloned().collect::<Vec<_>>().join("; ")),
    ] {
        if !text.is_empty() {
            let head = format!("{name:<10}");
            let _ = write!(out, "{}{ASIDE}{head}{ASIDE:#}", " ".repeat(6));
            let text = textwrap::fill(&text, width.saturating_sub(16).max(20));
            let _ = writeln!(out, "{}", text.replace('\n', &format!("\n{}", " ".repeat(16))));
        }
    }
}

fn percent(share: f32) -> String {
    let digits = usize::from(share < 0.0095);
    format!("{:.digits$}%", share * 100.0)
}

fn questions(out: &mut String, questions: &[LookNextOut<'_>], width: usize) {
    if questions.is_empty() {
        return;
    }
    heading(out, "Look next", "");
    for question in questions {
        let _ = writeln!(out, "{INDENT}{}", question.question);
        for answer in question.answers.iter().take(4) {
            let line = format!("{}: {}", answer.value.replace('-', " "), answer.favours.join(", "));
            wrapped(out, &line, width, 6);
        }
    }
}

pub(super) fn wrapped(out: &mut String, text: &str, width: usize, indent: usize) {
    let pad = " ".repeat(indent);
    let options = textwrap::Options::new(width.max(30)).initial_indent(&pad);
    let more = format!("{pad}  ");
    let options = options.subsequent_indent(&more);
    let _ = writeln!(out, "{}", textwrap::fill(text, options));
}

fn remarks(out: &mut String, reading: &NoteReading<'_>, layout: Layout) {
    let mut lines = Vec::new();
    for one in &reading.unplaced {
        lines.push(match one.nearest.as_slice() {
            [] => format!("\"{}\" could not be placed.", one.text),
            near => format!("\"{}\" could not be placed; nearest: {}.", one.text, near.join(", ")),
        });
    }
    for one in &reading.repairs {
        lines.push(format!("\"{}\" was read as \"{}\".", one.written, one.read_as));
    }
    for one in &reading.yardsticks {
        let mut line =
            format!("\"{}\" was taken as {} ({} g).", one.written, one.taken, one.mass_g);
        if !layout.region_named {
            let _ =
                write!(line, " Region: {}; choose another with --region.", reading.region_title);
        }
        lines.push(line);
    }
    if lines.is_empty() {
        return;
    }
    heading(out, "Remarks", "");
    for line in lines {
        wrapped(out, &line, layout.width, INDENT.len());
    }
}
