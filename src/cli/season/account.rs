//! The account of a season, in words and as JSON.

use super::inputs::LeftAlone;
use super::pipeline::FileAccount;
use rectrix::entries::{DateOrder, Trouble};
use rectrix::season::Tally;
use serde_json::{Value, json};
use std::fmt::Write;

/// How many places are listed in the terminal.
const SHOWN: usize = 20;

const USES: [&str; 5] = ["notes", "headings", "blanks", "signs of the format", "undecodable"];
/// The same with a number before them.
const USES_SAID: [&str; 5] =
    ["in notes", "in headings", "in blanks", "in signs of the format", "undecodable"];

fn sums(files: &[FileAccount]) -> ([u64; 5], u64) {
    files.iter().fold(([0; 5], 0), |(mut uses, bytes), file| {
        for (sum, more) in uses.iter_mut().zip(file.uses) {
            *sum += more;
        }
        (uses, bytes + file.bytes)
    })
}

/// A number with commas between thousands.
pub fn number(number: u64) -> String {
    let digits = number.to_string();
    let mut out = String::new();
    for (n, digit) in digits.chars().enumerate() {
        if n > 0 && (digits.len() - n).is_multiple_of(3) {
            out.push(',');
        }
        out.push(digit);
    }
    out
}

fn counted(count: u64, one: &str, many: &str) -> String {
    format!("{} {}", number(count), if count == 1 { one } else { many })
}

/// The account in words.
pub fn text(
    tally: &Tally,
    files: &[FileAccount],
    left_alone: &[LeftAlone],
    placed: &[String],
    order: DateOrder,
) -> String {
    let mut out = String::new();
    for file in files {
        about_file(&mut out, file);
    }
    for (path, why) in left_alone {
        let _ = writeln!(out, "{}: left alone, {why}", path.display());
    }
    let _ = writeln!(
        out,
        "read {} from {}: {}, {}",
        counted(tally.entries, "entry", "entries"),
        counted(files.len() as u64, "file", "files"),
        counted(tally.birds, "bird", "birds"),
        counted(tally.marks, "mark", "marks"),
    );
    let _ = writeln!(
        out,
        "words: {} placed, {} set aside, {} could not be placed",
        number(tally.placed),
        number(tally.aside),
        number(tally.unplaced)
    );
    let (uses, bytes) = sums(files);
    let parts: Vec<String> = USES_SAID
        .iter()
        .zip(uses)
        .filter(|(_, n)| *n > 0)
        .map(|(name, n)| format!("{} {name}", number(n)))
        .collect();
    let told: u64 = uses.iter().sum();
    let verdict = if told == bytes {
        "all accounted for".to_owned()
    } else {
        format!("{} NOT accounted for: please report this", number(bytes.abs_diff(told)))
    };
    let _ = writeln!(out, "bytes: {} read: {}; {verdict}", number(bytes), parts.join(", "));
    if tally.either > 0 {
        let (taken, other) = match order {
            DateOrder::DayFirst => ("day", "month-first"),
            DateOrder::MonthFirst => ("month", "day-first"),
        };
        let _ = writeln!(
            out,
            "dates: in {} such as 5/6 the first number was taken as the {taken}; else add --dates {other}",
            counted(tally.either, "entry with a date", "entries with dates")
        );
    }
    if tally.undated > 0 {
        let _ = writeln!(out, "dates: {} without one", counted(tally.undated, "entry", "entries"));
    }
    if tally.silent.count > 0 {
        let _ = writeln!(out, "{} gave no mark:", counted(tally.silent.count, "entry", "entries"));
        for place in tally.silent.first.iter().take(SHOWN) {
            let _ = writeln!(out, "  {}:{}", place.file, place.line);
        }
        if tally.silent.count > SHOWN as u64 {
            let rest = number(tally.silent.count - SHOWN as u64);
            let _ = writeln!(out, "  and {rest} more; --account FILE lists them");
        }
    }
    for path in placed {
        let _ = writeln!(out, "wrote {path}");
    }
    out
}

fn about_file(out: &mut String, file: &FileAccount) {
    let _ = write!(out, "{}: {}", file.name, file.what);
    if let Some(columns) = &file.columns {
        let _ = write!(out, "; {columns}");
    }
    let _ = writeln!(out, "; {}", counted(file.entries, "entry", "entries"));
    let (noteless, first) = file.noteless;
    if noteless > 0 {
        let rows = counted(noteless, "row without a note gives", "rows without a note give");
        let _ = writeln!(out, "  {rows} no entry; the first is in line {first}");
    }
    for remark in file.remarks.iter().take(SHOWN) {
        let _ =
            writeln!(out, "  line {} (byte {}): {}", remark.line, remark.byte, say(&remark.what));
    }
    let rest = file.remark_count.saturating_sub(SHOWN as u64);
    if rest > 0 {
        let _ = writeln!(out, "  and {} more such lines", number(rest));
    }
}

fn say(what: &Trouble) -> String {
    match what {
        Trouble::Undecodable => {
            "bytes that are no text in this encoding; the line was kept, with \u{fffd} for them; \
             if many are wrong, add --encoding NAME"
                .to_owned()
        }
        Trouble::NoNote => "there is no note in it".to_owned(),
        Trouble::NoTimes => {
            "times that can't be read; the words below them were kept as a note of their own"
                .to_owned()
        }
        Trouble::Stray => {
            "words without times above them; they were kept as a note of their own".to_owned()
        }
        Trouble::Parted => "an entry longer than 64 KB was parted here".to_owned(),
        Trouble::Fields(found, expected) => {
            let plural = if *found == 1 { "" } else { "s" };
            format!("the row has {found} field{plural} and not {expected}; it was kept")
        }
        Trouble::Unclosed => {
            "a quotation mark is opened and not closed, or the row is longer than 4 MB; the line was \
             kept as a row of its own; write two quotation marks for one within a field"
                .to_owned()
        }
        Trouble::NoObject(why) => {
            format!("no JSON object ({why}); the line was kept as a note as it stands")
        }
    }
}

/// The account as JSON.
pub fn json(tally: &Tally, files: &[FileAccount]) -> String {
    let (uses, bytes) = sums(files);
    let named = |uses: [u64; 5]| -> Value {
        USES.iter()
            .map(|u| u.replace(' ', "_"))
            .zip(uses.map(Value::from))
            .collect::<serde_json::Map<_, _>>()
            .into()
    };
    let unplaced: Vec<Value> = tally
        .ranked()
        .into_iter()
        .take(1_000)
        .map(|(word, lost)| {
            json!({"word": word, "count": lost.count, "first": lost.place, "around": lost.around})
        })
        .collect();
    let account = json!({
        "entries": tally.entries,
        "birds": tally.birds,
        "marks": tally.marks,
        "words": {"placed": tally.placed, "set_aside": tally.aside, "unplaced": tally.unplaced},
        "bytes": {"in": bytes, "used": named(uses), "all_accounted_for": uses.iter().sum::<u64>() == bytes},
        "undated": tally.undated,
        "dates_either_way": tally.either,
        "first_day": tally.days.map(|d| d.0),
        "last_day": tally.days.map(|d| d.1),
        "no_mark": tally.silent,
        "unplaced_words": unplaced,
        "files": files.iter().map(|f| json!({
            "file": f.name,
            "what": f.what,
            "columns": f.columns,
            "entries": f.entries,
            "bytes": f.bytes,
            "used": named(f.uses),
            "remark_count": f.remark_count,
            "undecodable_lines": f.damaged,
            "broken_lines": f.broken,
            "rows_without_a_note": f.noteless.0,
            "remarks": f.remarks.iter().map(|r| json!({
                "line": r.line, "byte": r.byte, "what": say(&r.what),
            })).collect::<Vec<_>>(),
        })).collect::<Vec<_>>(),
    });
    // An object made here always has a text.
    serde_json::to_string_pretty(&account).unwrap_or_default() + "\n"
}
