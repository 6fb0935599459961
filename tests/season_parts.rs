//! Parting notebooks: every byte of any file is accounted for, places are true, formats read.

use encoding_rs::Encoding;
use proptest::prelude::*;
use rectrix::built_in;
use rectrix::entries::{
    Broken, DateOrder, Entry, Format, Guess, Heading, Labels, Lines, Plan, Remark, Sink, Trouble,
    Use, part,
};
use std::sync::LazyLock;

static LABELS: LazyLock<Labels> = LazyLock::new(|| Labels::of(&built_in::knowledge().lexicon));

#[derive(Default)]
struct Seen {
    uses: Vec<(Use, u64, u64)>,
    entries: Vec<Entry>,
    remarks: Vec<Remark>,
    columns: String,
}

impl Sink for Seen {
    fn bytes(&mut self, used: Use, start: u64, end: u64) {
        self.uses.push((used, start, end));
    }
    fn entry(&mut self, entry: Entry) -> bool {
        self.entries.push(entry);
        true
    }
    fn remark(&mut self, remark: Remark) {
        self.remarks.push(remark);
    }
    fn columns(&mut self, told: String) {
        self.columns = told;
    }
}

fn parted(bytes: &[u8], format: Format) -> (Seen, Result<(), Broken>) {
    let mut guess = Guess::default();
    guess.push(bytes);
    let encoding = guess.finish().unwrap_or(encoding_rs::UTF_8);
    parted_in(bytes, format, encoding)
}

fn parted_in(
    bytes: &[u8],
    format: Format,
    encoding: &'static Encoding,
) -> (Seen, Result<(), Broken>) {
    let mut seen = Seen::default();
    let mut lines = Lines::new(bytes, encoding).unwrap();
    let plan = Plan {
        labels: &LABELS,
        format,
        order: DateOrder::DayFirst,
        columns: &[],
        pause: 1.5,
        heading: Heading::default(),
    };
    let done = part(&plan, &mut lines, &mut seen);
    (seen, done)
}

/// Every byte once, in order.
fn accounted(seen: &Seen, length: usize) {
    let mut at = 0;
    for (used, start, end) in &seen.uses {
        assert_eq!(*start, at, "{used:?} {start}..{end} in {:?}", seen.uses);
        assert!(start <= end);
        at = *end;
    }
    assert_eq!(at, length as u64, "{:?}", seen.uses);
}

/// The line of each byte: lines end in LF, CR LF, CR CR LF or CR alone.
fn lines_of(file: &str) -> Vec<u64> {
    let bytes = file.as_bytes();
    let mut line = 1;
    let mut out = Vec::with_capacity(bytes.len());
    for at in 0..bytes.len() {
        out.push(line);
        let rest = &bytes[at..];
        let ends = match rest[0] {
            b'\n' => true,
            b'\r' => !rest.starts_with(b"\r\n") && !rest.starts_with(b"\r\r\n"),
            _ => false,
        };
        line += u64::from(ends);
    }
    out
}

/// Each character of a note is found in the file where the map says.
fn places_are_true(seen: &Seen, file: &str) {
    let lines = lines_of(file);
    for entry in &seen.entries {
        for (at, sign) in entry.text.char_indices().filter(|(_, c)| c.is_alphanumeric()) {
            let (byte, line) = entry.map.place(&entry.text, at);
            let byte = usize::try_from(byte).unwrap();
            let here = file.get(byte..).unwrap_or("");
            assert!(
                here.starts_with(sign) || here.starts_with('\\'),
                "{sign} of {:?} at {byte}: {here:?}",
                entry.text
            );
            assert_eq!(line, lines[byte], "line of {sign} in {:?}", entry.text);
        }
    }
}

fn texts(seen: &Seen) -> Vec<&str> {
    seen.entries.iter().map(|e| e.text.as_str()).collect()
}

fn check(file: &str, format: Format) -> Seen {
    let (seen, done) = parted(file.as_bytes(), format);
    assert!(done.is_ok(), "{done:?}");
    accounted(&seen, file.len());
    places_are_true(&seen, file);
    seen
}

#[test]
fn plain_text_is_parted_at_dates_and_empty_lines() {
    let seen = check(
        "Observer: warden\n\n12 May 2026, Boathouse hide, 07:15\nsmall brown bird,\nstreaked below\n\n\
         another, tail cocked\n\n13/5/26 East sluice: black hood\n07:40 two on the mud, long bills\n",
        Format::Plain,
    );
    assert_eq!(
        texts(&seen),
        [
            "small brown bird,\nstreaked below",
            "another, tail cocked",
            "black hood",
            "two on the mud, long bills"
        ]
    );
    let heading = |n: usize| &seen.entries[n].heading;
    assert_eq!(heading(0).date.unwrap().to_string(), "2026-05-12");
    assert_eq!(heading(1).place.as_deref(), Some("Boathouse hide"));
    assert_eq!(heading(2).date.unwrap().to_string(), "2026-05-13");
    assert_eq!(heading(2).place.as_deref(), Some("East sluice"));
    assert_eq!(heading(3).time.as_deref(), Some("07:40"));
    assert!(seen.entries.iter().all(|e| e.heading.observer.as_deref() == Some("warden")));
}

#[test]
fn markdown_headings_reach_as_far_as_their_rank() {
    let seen = check(
        "# Quillmere Fen, 2026\n\n## 12 May, **Boathouse**\nWeather: dull\n- small brown bird, *streaked*\n\
         - bill: short\n- black hood\n\n## 2 June\n\nHabitat: reedbed\n\n> white rump\n",
        Format::Markdown,
    );
    assert_eq!(
        texts(&seen),
        ["small brown bird, streaked\nbill: short", "black hood", "white rump"]
    );
    assert_eq!(seen.entries[1].heading.weather.as_deref(), Some("dull"));
    assert_eq!(seen.entries[0].heading.place.as_deref(), Some("Boathouse"));
    assert_eq!(seen.entries[2].heading.date.unwrap().to_string(), "2026-06-02");
    assert_eq!(seen.entries[2].heading.weather, None);
    assert_eq!(seen.entries[2].heading.habitat.as_deref(), Some("reedbed"));
}

#[test]
fn tables_find_their_columns() {
    let file = "when,where,log,n\r\n03/01/2026 21:40,Long Bank,\"white \"\"front\"\", buff above\",1\r\n,,\"two\nlines, black crown\",\r\n";
    let seen = check(file, Format::Comma);
    assert_eq!(texts(&seen), ["white \"front\", buff above", "two\nlines, black crown"]);
    assert_eq!(seen.entries[0].heading.time.as_deref(), Some("21:40"));
    assert!(seen.columns.contains("note: log"), "{}", seen.columns);
    assert!(seen.columns.contains("kept as they are: n"), "{}", seen.columns);
    assert_eq!(seen.entries[0].heading.other, [("n".to_owned(), "1".to_owned())]);
}

fn remarks(seen: &Seen) -> Vec<(u64, Trouble)> {
    seen.remarks.iter().map(|r| (r.line, r.what.clone())).collect()
}

#[test]
fn a_quotation_mark_left_open_takes_its_own_line_alone() {
    // To the file's end, with a comma in the note, and over an empty line.
    let file = "date,note\n1,fine\n2,\"open, black cap\nand on, white rump\n\n3,more\n4,";
    let seen = check(file, Format::Comma);
    assert_eq!(texts(&seen), ["fine", "\"open, black cap", " white rump", "more"]);
    assert_eq!(remarks(&seen), [(3, Trouble::Unclosed), (7, Trouble::NoNote)]);
    // A field that is quoted over lines behind it closes it, and is read as it should be.
    let file =
        "date,note\n1,\"black cap\n2,white rump\n3,\"red\nbill\"\n4,\"say \"\"so\"\"\nloud\"\n";
    let seen = check(file, Format::Comma);
    assert_eq!(texts(&seen), ["\"black cap", "white rump", "red\nbill", "say \"so\"\nloud"]);
    assert_eq!(remarks(&seen), [(2, Trouble::Unclosed)]);
}

#[test]
fn rows_with_too_many_or_too_few_cells_lose_nothing() {
    let file = "date,note\n2026-05-12,black cap, white rump,,\nred bill\n2026-05-13\n";
    let seen = check(file, Format::Comma);
    assert_eq!(texts(&seen), ["black cap, white rump", "red bill"]);
    assert_eq!(seen.entries[0].heading.date.unwrap().to_string(), "2026-05-12");
    assert_eq!(seen.entries[1].heading.date, None);
    let fields = |n| Trouble::Fields(n, 2);
    let wanted = [(2, fields(5)), (3, fields(1)), (4, fields(1)), (4, Trouble::NoNote)];
    assert_eq!(remarks(&seen), wanted);
    let seen = check("note,date\nblack cap,2026-05-12,white rump\n", Format::Comma);
    assert_eq!(texts(&seen), ["black cap"]);
    let rest = ("column 3".to_owned(), "white rump".to_owned());
    assert_eq!(seen.entries[0].heading.other, [rest]);
}

#[test]
fn a_line_without_end_is_parted_and_the_rest_is_read() {
    let long = "black cap ".repeat(500_000);
    for (format, file) in [
        (Format::Comma, format!("date,note\n1,{long}\n2,white rump\n")),
        (Format::Comma, format!("date,note\n1,\"{long}\n2,white rump\n")),
        (Format::Objects, format!("\n{{\"note\": \"{long}\"}}\n{{\"note\": \"white rump\"}}\n")),
    ] {
        let (seen, done) = parted(file.as_bytes(), format);
        done.unwrap();
        accounted(&seen, file.len());
        assert_eq!(texts(&seen).last(), Some(&"white rump"));
        let kept: usize = seen.entries.iter().map(|e| e.text.matches("cap").count()).sum();
        assert_eq!(kept, 500_000);
        assert!(seen.remarks.iter().all(|r| r.line == 2), "{:?}", seen.remarks);
    }
}

#[test]
fn a_line_that_is_no_object_is_kept_and_told() {
    let file = "{\"note\": \"black cap\", \n{\"note\": \"white rump\"}\n[1, 2]\n  red bill \n\
                {\"note\": \"grey back\"}\n{\"note\": \"pink legs\", \"note\": \"long tail\"}\n";
    let seen = check(file, Format::Objects);
    let wanted =
        ["{\"note\": \"black cap\",", "white rump", "[1, 2]", "red bill", "grey back", "pink legs"];
    assert_eq!(texts(&seen), wanted);
    let lines: Vec<u64> = seen.remarks.iter().map(|r| r.line).collect();
    assert_eq!(lines, [1, 3, 4]);
    assert!(seen.remarks.iter().all(|r| matches!(r.what, Trouble::NoObject(_))));
    let twice = ("note (2)".to_owned(), "long tail".to_owned());
    assert_eq!(seen.entries[5].heading.other, [twice]);
    // Not one object: the file is something else.
    let (_, done) = parted(b"black cap\n\nwhite rump\n", Format::Objects);
    assert!(matches!(done, Err(Broken::At(1, 0, _, _))), "{done:?}");
}

#[test]
fn marks_of_inches_are_no_quotation_marks() {
    let seen = check("date,note\n1,9\" long tail\n2,black crown\n", Format::Comma);
    assert_eq!(texts(&seen), ["9\" long tail", "black crown"]);
}

#[test]
fn byte_order_marks_between_joined_tables_are_no_cells() {
    let file = "date,note\n1,black hood\n\u{feff}2,white rump\n\u{feff}";
    let seen = check(file, Format::Comma);
    assert_eq!(texts(&seen), ["black hood", "white rump"]);
}

#[test]
fn objects_keep_their_places() {
    let file = "{\"t\":\"2026-05-12T07:15\",\"log\":\"a \\\"hood\\\", black \\u00e9\\n white belly\",\"n\":2}\n\n{\"log\":\"two birds here\"}\n";
    let (seen, done) = parted(file.as_bytes(), Format::Objects);
    assert!(done.is_ok());
    accounted(&seen, file.len());
    assert_eq!(texts(&seen), ["a \"hood\", black é\n white belly", "two birds here"]);
    let entry = &seen.entries[0];
    let at = entry.text.find("belly").unwrap();
    let (byte, line) = entry.map.place(&entry.text, at);
    assert!(file[usize::try_from(byte).unwrap()..].starts_with("belly"));
    assert_eq!(line, 1);
    assert_eq!(entry.heading.date.unwrap().to_string(), "2026-05-12");
}

#[test]
fn memos_are_parted_at_silences() {
    let srt = "1\n00:00:01,000 --> 00:00:04,000\nsmall brown bird\n\n2\n00:00:04,500 --> 00:00:06,000\nstreaked below\n\n\
               3\n00:00:20,000 --> 00:00:24,000\nblack hood\n";
    let seen = check(srt, Format::Subtitles);
    assert_eq!(texts(&seen), ["small brown bird streaked below", "black hood"]);
    assert_eq!(seen.entries[0].heading.other[0].1, "00:00:01.000 - 00:00:06.000");
    let vtt = "WEBVTT\n\nNOTE\nmade by hand\n\n00:01.000 --> 00:04.000 align:start\n<v warden>black <b>hood</b>\n";
    let seen = check(vtt, Format::Subtitles);
    assert_eq!(texts(&seen), ["black hood"]);
    assert_eq!(seen.entries[0].heading.observer.as_deref(), Some("warden"));
    assert!(parted(b"no times here\n", Format::Subtitles).1.is_err());
}

#[test]
fn rows_of_tables_in_markdown_are_entries() {
    let book = "# Fen\n\n## 3 May 2026, North Hide\n\n| time | what was seen | ring |\n|---|---|---|\n\
                | 08:15 | **black** head | AB |\n| 09:20 | red bill |\n| 10:00 | | |\n\nwhite rump\n\n\
                | 11:15 | long tail |\n| 11:30 | short tail |\n";
    let seen = check(book, Format::Markdown);
    assert_eq!(texts(&seen)[..3], ["black head", "red bill", "white rump"]);
    let times: Vec<_> = seen.entries.iter().map(|e| e.heading.time.as_deref()).collect();
    assert_eq!(times, [Some("08:15"), Some("09:20"), None, Some("11:15"), Some("11:30")]);
    assert_eq!(seen.entries[0].heading.other, [("ring".to_owned(), "AB".to_owned())]);
    assert!(texts(&seen)[3].starts_with("long tail"));
    assert_eq!(seen.entries[4].heading.date.unwrap().to_string(), "2026-05-03");
}

#[test]
fn a_day_said_in_a_memo_holds_until_the_next() {
    let vtt = "WEBVTT\n\n00:01.000 --> 00:03.000\nthe third of May\n\n00:03.500 --> 00:05.000\n\
               twenty twenty six black cap\n\n00:20.000 --> 00:22.000\nred bill\n\n\
               00:40.000 --> 00:42.000\non the fourth of May\n\n00:50.000 --> 00:52.000\nwhite rump\n";
    let seen = check(vtt, Format::Subtitles);
    assert_eq!(texts(&seen), ["black cap", "red bill", "white rump"]);
    let days: Vec<String> =
        seen.entries.iter().map(|e| e.heading.date.unwrap().to_string()).collect();
    assert_eq!(days, ["2026-05-03", "2026-05-03", "2026-05-04"]);
    let heading: u64 = seen.uses.iter().filter(|u| u.0 == Use::Heading).map(|u| u.2 - u.1).sum();
    assert!(heading as usize > "the third of May twenty twenty six on the fourth of May".len());
}

#[test]
fn an_object_may_have_its_note_in_a_member_of_another_name() {
    let lines = "{\"note\":\"black cap\",\"n\":1}\n{\"text\":\"red bill\",\"n\":2}\n{\"n\":3}\n";
    let seen = check(lines, Format::Objects);
    assert_eq!(texts(&seen), ["black cap", "red bill"]);
    assert_eq!(seen.entries[1].heading.other, [("n".to_owned(), "2".to_owned())]);
    assert_eq!(seen.remarks.len(), 1);
    assert_eq!((seen.remarks[0].line, &seen.remarks[0].what), (3, &Trouble::NoNote));
}

#[test]
fn damaged_lines_are_kept_and_told() {
    let (seen, done) =
        parted_in(b"black crown\nred \xff bill \xc3\xa9\n", Format::Plain, encoding_rs::UTF_8);
    assert!(done.is_ok());
    accounted(&seen, 26);
    assert_eq!(texts(&seen), ["black crown\nred \u{fffd} bill é"]);
    assert_eq!((seen.remarks[0].line, seen.remarks[0].byte), (2, 16));
    let undecodable: u64 =
        seen.uses.iter().filter(|u| u.0 == Use::Undecodable).map(|u| u.2 - u.1).sum();
    assert_eq!(undecodable, 1);
    let text = &seen.entries[0].text;
    assert_eq!(seen.entries[0].map.place(text, text.find("bill").unwrap()), (18, 2));
}

#[test]
fn other_encodings_keep_their_own_places() {
    let (seen, _) = parted_in(b"caf\xe9, black crown", Format::Plain, encoding_rs::WINDOWS_1252);
    let text = &seen.entries[0].text;
    assert_eq!(seen.entries[0].map.place(text, text.find("black").unwrap()).0, 6);
    let utf16: Vec<u8> = [0xFF, 0xFE]
        .into_iter()
        .chain("é black\n\nred".encode_utf16().flat_map(u16::to_le_bytes))
        .collect();
    let (seen, _) = parted(&utf16, Format::Plain);
    accounted(&seen, utf16.len());
    assert_eq!(texts(&seen), ["é black", "red"]);
    assert_eq!(seen.entries[1].span, [20, 26]);
}

#[test]
fn a_note_without_end_is_parted() {
    let file = "black crown and red bill ".repeat(20_000);
    let seen = check(&file, Format::Plain);
    assert!(seen.entries.len() > 5);
    assert!(seen.entries.iter().all(|e| e.text.len() <= 64 * 1024));
    let kept: usize = seen.entries.iter().map(|e| e.text.matches("crown").count()).sum();
    assert_eq!(kept, 20_000);
}

/// Pieces of notebooks of any kind, and bytes of no kind.
fn file() -> impl Strategy<Value = Vec<u8>> {
    let piece = prop_oneof![
        6 => prop::sample::select(vec![
            "12 May 2026", "2026-05-12", "12/5/26", "07:15", "Place: Boathouse", "Weather: dull, SW 3", "# ",
            "## ", "- ", "* ", "> ", "**", "_", "---", "===", "small brown bird", "black crown", "bill: short",
            "Boathouse hide", "x3", ",", ";", "\"", "\"\"", "\t", ":", "date,note", "note\tplace",
            "{\"note\":\"black \\u00e9 crown\"}", "{", "}", "00:00:01,000 --> 00:00:02,000", "WEBVTT", "NOTE",
            "<v warden>", "<b>", "1", "é", "\u{feff}", "🐦", " ", "  ", "\r", "same day",
        ]).prop_map(|s| s.as_bytes().to_vec()),
        3 => Just(b"\n".to_vec()),
        1 => Just(b"\r\n".to_vec()),
        1 => Just(b"\n\n".to_vec()),
        1 => prop::collection::vec(any::<u8>(), 1..4),
    ];
    prop::collection::vec(piece, 0..60).prop_map(|pieces| pieces.concat())
}

const FORMATS: [Format; 7] = [
    Format::Plain,
    Format::Markdown,
    Format::Comma,
    Format::Semicolon,
    Format::Tab,
    Format::Objects,
    Format::Subtitles,
];

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(600) })]

    #[test]
    fn every_byte_is_accounted_for(bytes in file(), which in 0..FORMATS.len(), encoding in 0..4usize) {
        let encoding = [
            encoding_rs::UTF_8, encoding_rs::UTF_16LE, encoding_rs::WINDOWS_1252, encoding_rs::SHIFT_JIS,
        ][encoding];
        let (seen, done) = parted_in(&bytes, FORMATS[which], encoding);
        if done.is_ok() {
            accounted(&seen, bytes.len());
        }
        for entry in &seen.entries {
            prop_assert!(entry.span[0] <= entry.span[1]);
            prop_assert!(entry.span[1] <= bytes.len() as u64);
        }
    }

    #[test]
    fn words_of_plain_text_are_where_they_are_said_to_be(bytes in file(), markdown in any::<bool>()) {
        let text = String::from_utf8_lossy(&bytes).replace('\u{fffd}', "?");
        let format = if markdown { Format::Markdown } else { Format::Plain };
        let (seen, done) = parted_in(text.as_bytes(), format, encoding_rs::UTF_8);
        prop_assert!(done.is_ok());
        accounted(&seen, text.len());
        places_are_true(&seen, &text);
    }

    #[test]
    fn words_of_tables_are_where_they_are_said_to_be(rows in prop::collection::vec("[a-z\", \né]{0,20}", 0..8)) {
        let mut text = "date,note\n".to_owned();
        for row in &rows {
            text.push_str(&format!("1,\"{}\"\n", row.replace('"', "\"\"")));
        }
        let (seen, done) = parted_in(text.as_bytes(), Format::Comma, encoding_rs::UTF_8);
        prop_assert!(done.is_ok());
        accounted(&seen, text.len());
        places_are_true(&seen, &text);
        let wanted: Vec<&str> = rows.iter().map(|r| r.trim_end()).filter(|r| !r.trim().is_empty()).collect();
        prop_assert_eq!(texts(&seen), wanted);
    }
}

#[test]
fn old_line_ends_part_as_new_ones_do() {
    for (format, text) in [
        (
            Format::Plain,
            "12 May 2026, Long Bank\n\nblack cap\nwhite rump\n\n13 May 2026\n\nyellow legs",
        ),
        (Format::Markdown, "# Fen\n\n## 12 May 2026\n\n- **black** cap\n- white rump\n"),
        (Format::Comma, "date,note\n2026-05-12,black cap\n2026-05-13,\"white\nrump\"\n"),
        (Format::Objects, "{\"note\": \"black cap\"}\n{\"note\": \"white rump\"}\n"),
        (
            Format::Subtitles,
            "1\n00:00:01,000 --> 00:00:04,000\nblack cap\n\n2\n00:00:20,000 --> 00:00:24,000\nrump\n",
        ),
    ] {
        let new = check(text, format);
        let (old, done) = parted(text.replace('\n', "\r").as_bytes(), format);
        done.unwrap();
        accounted(&old, text.len());
        assert_eq!(old.entries, new.entries, "{text}");
        assert_eq!(old.uses, new.uses, "{text}");
    }
}

#[test]
fn words_under_times_that_cannot_be_read_are_kept() {
    let text = "1\n00:00:01,000 --> 00:00:04,000\nblack cap\n\n2\n00:00:xx,000 --> 00:00:09,000\nwhite rump\n\n\
                3\n00:00:20,000 -> 00:00:30,000\nyellow legs\n\nred bill\nlong tail\n\n4\n\nname\n\
                00:00:40,000 --> 00:00:41,000\ngrey back\n";
    let seen = check(text, Format::Subtitles);
    let wanted = ["black cap", "white rump", "yellow legs", "red bill long tail", "grey back"];
    assert_eq!(texts(&seen), wanted);
    let remarks: Vec<_> = seen.remarks.iter().map(|r| (r.line, r.what.clone())).collect();
    assert_eq!(remarks, [(6, Trouble::NoTimes), (10, Trouble::NoTimes), (13, Trouble::Stray)]);
}

#[test]
fn a_time_said_in_a_memo_holds_for_its_entry() {
    let text = "1\n00:00:01,000 --> 00:00:04,000\nthe twelfth of may twenty twenty six half past seven \
                small bird black cap\n\n2\n00:00:20,000 --> 00:00:24,000\nquarter to nine white rump\n\n\
                3\n00:00:40,000 --> 00:00:44,000\nten past the hide yellow legs\n\n\
                4\n00:01:40,000 --> 00:01:44,000\nsix thirty birds with black caps\n";
    let seen = check(text, Format::Subtitles);
    let times: Vec<_> = seen.entries.iter().map(|e| e.heading.time.as_deref()).collect();
    assert_eq!(times, [Some("07:30"), Some("08:45"), None, None]);
    assert_eq!(texts(&seen)[1], "white rump");
    assert!(seen.entries.iter().all(|e| e.heading.date.is_some()));
}

#[test]
fn a_byte_order_mark_between_joined_notebooks_is_none_of_their_text() {
    let seen =
        check("12 May 2026\n\nblack cap\n\n\u{feff}13 May 2026\n\nwhite rump\n", Format::Plain);
    assert_eq!(texts(&seen), ["black cap", "white rump"]);
    assert_eq!(seen.entries[1].heading.date.unwrap().day, Some(13));
}
