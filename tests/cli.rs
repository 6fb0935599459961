//! The program as a person or another program meets it.

use assert_cmd::Command;
use serde_json::Value;
use std::fs;

fn rectrix(args: &[&str]) -> Command {
    let mut command = Command::cargo_bin("rectrix").unwrap();
    command.args(args).env_remove("NO_COLOR").env("COLUMNS", "80");
    command
}

fn output(command: &mut Command) -> (String, String, i32) {
    let out = command.output().unwrap();
    (
        String::from_utf8(out.stdout).unwrap(),
        String::from_utf8(out.stderr).unwrap(),
        out.status.code().unwrap(),
    )
}

fn json(args: &[&str]) -> Value {
    let (stdout, stderr, code) = output(&mut rectrix(args));
    assert_eq!(code, 0, "{stderr}");
    serde_json::from_str(&stdout).unwrap()
}

/// `area aspect value polarity certainty` of every trait.
fn marks(reading: &Value) -> Vec<String> {
    reading["birds"][0]["traits"]
        .as_array()
        .unwrap()
        .iter()
        .map(|t| {
            let text = |key: &str| t[key].as_str().unwrap().to_owned();
            [text("area"), text("aspect"), text("value"), text("polarity"), text("certainty")]
                .join(" ")
        })
        .collect()
}

#[test]
fn reads_the_first_example() {
    let note = "robin-sized, orange below, black hood, bobs tail";
    let reading = json(&["read", "--format", "json", note]);
    let found = marks(&reading);
    for expected in [
        "bird size about-american-robin present sure",
        "underparts colour orange present sure",
        "crown colour black present sure",
        "nape colour black present sure",
        "face colour black present sure",
        "throat colour black present sure",
        "tail behaviour bob present sure",
    ] {
        assert!(found.iter().any(|f| f == expected), "{expected} in {found:?}");
    }
    assert_eq!(found.len(), 7);
    assert_eq!(reading["unplaced"].as_array().unwrap().len(), 0);
    assert_eq!(reading["yardsticks"][0]["taken"], "American Robin");
    let left_out = reading["birds"][0]["gaps"].as_array().unwrap();
    let first = left_out.iter().find(|g| g["state"] == "left-out").unwrap();
    assert_eq!(first["mark"], "bill-shape");
    let candidates = reading["birds"][0]["candidates"].as_array().unwrap();
    assert_eq!(candidates.len(), 5);
    assert!(candidates.iter().all(|c| !c["fits"].as_array().unwrap().is_empty()));
    assert!(!reading["birds"][0]["look_next"].as_array().unwrap().is_empty());
}

#[test]
fn tells_absent_unseen_and_hedged_apart() {
    let note = "Small brownish bird, heavily streaked below, no wing bars, couldn't see the legs. \
                Bill short & conical - maybe pinkish?";
    let reading = json(&["read", "--format", "json", "--top", "10", note]);
    let found = marks(&reading);
    for expected in [
        "wing-bar mark shown absent sure",
        "legs mark shown unseen sure",
        "bill colour pink present hedged",
        "bill shape conical present sure",
        "underparts pattern streaked present sure",
        "bird colour brown present hedged",
    ] {
        assert!(found.iter().any(|f| f == expected), "{expected} in {found:?}");
    }
    let sparrows = reading["birds"][0]["candidates"]
        .as_array()
        .unwrap()
        .iter()
        .filter(|c| c["species"].as_str().unwrap().contains("Sparrow"))
        .count();
    assert!(sparrows >= 5, "{sparrows} sparrows among ten");
}

#[test]
fn reports_exactly_the_nonsense() {
    let reading =
        json(&["read", "--format", "json", "a glorby crown, red flumpish breast and zanted tail"]);
    let unplaced: Vec<&str> = reading["unplaced"]
        .as_array()
        .unwrap()
        .iter()
        .map(|u| u["text"].as_str().unwrap())
        .collect();
    assert_eq!(unplaced, ["glorby", "flumpish", "zanted"]);
    assert!(reading["unplaced"][0]["nearest"].as_array().unwrap().len() <= 3);
}

#[test]
fn every_output_fits_the_published_schema() {
    let (schema, _, code) = output(&mut rectrix(&["schema"]));
    assert_eq!(code, 0);
    let validator = jsonschema::validator_for(&serde_json::from_str(&schema).unwrap()).unwrap();
    for note in [
        "robin-sized, orange below, black hood, bobs tail",
        "nothing of note",
        "nine inches long, otherwise brown, glorp",
        "two wing bars, no crest, couldn't see the legs",
        "🐦",
    ] {
        let reading = json(&["read", "--format", "json", note]);
        let wrong: Vec<String> = validator.iter_errors(&reading).map(|e| e.to_string()).collect();
        assert!(wrong.is_empty(), "{note}: {wrong:?}");
    }
}

#[test]
fn each_line_gives_one_line_in_order() {
    let input = "black crown\n\nred bill\r\n   \nno wing bars";
    let (stdout, _, code) = output(
        rectrix(&["read", "--each-line", "--format", "jsonl", "--top", "0", "-"])
            .write_stdin(input),
    );
    assert_eq!(code, 0);
    let lines: Vec<Value> = stdout.lines().map(|l| serde_json::from_str(l).unwrap()).collect();
    let texts: Vec<&str> = lines.iter().map(|l| l["note"]["text"].as_str().unwrap()).collect();
    assert_eq!(texts, ["black crown", "", "red bill", "   ", "no wing bars"]);
    assert_eq!(lines[0]["birds"][0]["traits"][0]["area"], "crown");
    assert!(lines[0]["birds"][0]["candidates"].as_array().unwrap().is_empty());
}

#[test]
fn csv_has_one_row_a_mark() {
    let (stdout, _, code) =
        output(&mut rectrix(&["read", "--format", "csv", "black \"hood\", two, white wing bars"]));
    assert_eq!(code, 0);
    let mut rows = csv::Reader::from_reader(stdout.as_bytes());
    assert_eq!(rows.headers().unwrap().len(), 16);
    assert!(rows.records().map(Result::unwrap).count() >= 5);
}

#[test]
fn regions_change_the_yardstick() {
    let note = "robin-sized with a brown tail";
    let reading = json(&["read", "--format", "json", "--region", "europe", note]);
    assert_eq!(reading["yardsticks"][0]["taken"], "European Robin");
    let (_, stderr, code) = output(&mut rectrix(&["read", "--region", "mars", note]));
    assert_eq!(code, 2);
    assert!(stderr.contains("no region `mars`") && stderr.contains("europe"), "{stderr}");
}

#[test]
fn a_checklist_limits_and_weighs() {
    let folder = tempfile::tempdir().unwrap();
    let list = folder.path().join("fen.txt");
    fs::write(&list, "# Quillmere Fen\nBearded Reedling; ; common\nEurasian Wren\nPasser domesticus\nFen Wyvern\n")
        .unwrap();
    let args = [
        "read",
        "--format",
        "json",
        "--among",
        list.to_str().unwrap(),
        "small brown bird, tail cocked",
    ];
    let (stdout, stderr, code) = output(&mut rectrix(&args));
    assert_eq!(code, 0);
    assert!(stderr.contains("Fen Wyvern") && stderr.contains("no account"), "{stderr}");
    let reading: Value = serde_json::from_str(&stdout).unwrap();
    let candidates = reading["birds"][0]["candidates"].as_array().unwrap();
    assert_eq!(candidates.len(), 3);
    assert_eq!(candidates[0]["species"], "Eurasian Wren");
}

#[test]
fn bad_input_is_refused_with_its_place() {
    let (_, stderr, code) = output(rectrix(&["read", "-"]).write_stdin(&b"black\nwh\xffite"[..]));
    assert_eq!(code, 2);
    assert!(stderr.contains("not UTF-8: line 2, byte 3"), "{stderr}");
    let (_, stderr, code) = output(rectrix(&["read", "-"]).write_stdin("  \n"));
    assert_eq!(code, 2);
    assert!(stderr.contains("the note is empty"), "{stderr}");
    let (_, stderr, code) = output(rectrix(&["read", "-"]).write_stdin("black\0crown"));
    assert_eq!(code, 2);
    assert!(stderr.contains("zero byte"), "{stderr}");
    let (_, stderr, code) =
        output(&mut rectrix(&["read", "--among", "no-such-file", "black crown"]));
    assert_eq!(code, 2);
    assert!(stderr.contains("no-such-file"), "{stderr}");
    assert_eq!(output(&mut rectrix(&["reed"])).2, 2);
    assert_eq!(output(rectrix(&["read", "--each-line", "a note"]).write_stdin("")).2, 2);
}

#[test]
fn lines_before_a_bad_line_are_not_lost() {
    let (stdout, stderr, code) = output(
        rectrix(&["read", "--each-line", "--format", "jsonl", "--top", "0"])
            .write_stdin(&b"black crown\nred \xff bill\n"[..]),
    );
    assert_eq!(code, 2);
    assert_eq!(stdout.lines().count(), 1);
    assert!(stderr.contains("line 2"), "{stderr}");
}

#[test]
fn a_broken_lexicon_file_is_shown_with_place_reason_and_hint() {
    let folder = tempfile::tempdir().unwrap();
    for (name, text, wanted) in [
        (
            "own.lex",
            "colour quillish\n  lab 50 x 3\n  means ours\n",
            ["own.lex:2", "expects 3 number", "plain numbers"],
        ),
        (
            "own.lex",
            "color quillish\n  means ours\n",
            ["own.lex:1", "no kind `color`", "did you mean `colour`"],
        ),
        (
            "own.rules",
            "rule ours\n  means x\n  | $q:colour $a:area > $a\n  => \"black crown\" : crown colour black\n  =/ \"x\"\n",
            ["own.rules:3", "expected `->`", "pattern -> yield"],
        ),
        (
            "own.rules",
            "rule ours\n  means x\n  | $q:colour $a:area -> $a * $q\n  => \"black crown\" : crown colour black\n",
            ["own.rules:1", "no counter-example", "=/"],
        ),
        ("own.acc", "Quill Finch\n", ["own.acc:1", "label: text", "such as"]),
    ] {
        let path = folder.path().join(name);
        fs::write(&path, text).unwrap();
        let args = ["--lexicon", path.to_str().unwrap(), "read", "black crown"];
        let (stdout, stderr, code) = output(&mut rectrix(&args));
        assert_eq!(code, 2, "{name}: {stderr}");
        assert!(stdout.is_empty());
        for part in wanted {
            assert!(stderr.contains(part), "`{part}` in {stderr}");
        }
        fs::remove_file(path).unwrap();
    }
}

#[test]
fn of_very_many_diagnostics_the_first_are_shown_and_the_rest_counted() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("own.lex");
    let own = path.to_str().unwrap();
    for (entries, rest) in [(20, None), (21, Some("and 1 more;")), (300, Some("and 280 more;"))] {
        let text: String =
            (0..entries).map(|n| format!("color quillish{n}\n  means ours\n\n")).collect();
        fs::write(&path, text).unwrap();
        for args in [&["--lexicon", own, "read", "x"][..], &["--lexicon", own, "lexicon", "check"]]
        {
            let (_, stderr, code) = output(&mut rectrix(args));
            assert_eq!(code, 2);
            assert_eq!(stderr.matches("no kind `color`").count(), entries.min(20), "{stderr}");
            match rest {
                Some(rest) => assert!(stderr.contains(rest) && stderr.contains("run it again")),
                None => assert!(!stderr.contains("more;"), "{stderr}"),
            }
        }
    }
}

#[test]
fn own_words_and_accounts_override() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(
        folder.path().join("own.lex"),
        "colour fen-gold\n  also  quillgold\n  lab 70 8 60\n  means the colour of the reeds in March\n",
    )
    .unwrap();
    fs::write(
        folder.path().join("own.acc"),
        "# Quill Finch · Exempla exempla\nregion: europe\nmass: 21 g\nmale: Quillgold crown, throat and breast. \
         Brown above. Two white wing bars.\nbill: short, thick, conical\n",
    )
    .unwrap();
    let own = folder.path().to_str().unwrap().to_owned();
    let reading = json(&[
        "--lexicon",
        &own,
        "read",
        "--format",
        "json",
        "quillgold crown and throat, two white wing bars",
    ]);
    assert_eq!(reading["unplaced"].as_array().unwrap().len(), 0);
    assert!(marks(&reading).contains(&"crown colour fen-gold present sure".to_owned()));
    assert_eq!(reading["birds"][0]["candidates"][0]["species"], "Quill Finch");
    let (stdout, stderr, code) =
        output(&mut rectrix(&["--lexicon", &own, "lexicon", "check", "--strict"]));
    assert_eq!(code, 0, "{stderr}");
    assert!(stdout.contains("all well"), "{stdout}");
}

/// What is like a word that could not be placed is sought among all forms, however long somebody's own are.
#[test]
fn own_words_may_be_longer_than_any_word() {
    let folder = tempfile::tempdir().unwrap();
    let long = "zxq".repeat(100);
    let own =
        format!("colour fen-gold\n  also  {long}\n  lab 70 8 60\n  means a colour of reeds\n");
    fs::write(folder.path().join("own.lex"), own).unwrap();
    let path = folder.path().to_str().unwrap();
    let read = |note: &str| json(&["--lexicon", path, "read", "--format", "json", note]);
    let reading = read(&format!("{long} crown, zxqzx rump"));
    assert!(marks(&reading).contains(&"crown colour fen-gold present sure".to_owned()));
    assert_eq!(reading["unplaced"][0]["text"], "zxqzx");
}

#[test]
fn finds_terms() {
    let (stdout, _, code) = output(&mut rectrix(&["lexicon", "find", "^eyebrow$"]));
    assert_eq!(code, 0);
    assert!(stdout.starts_with("area supercilium"), "{stdout}");
    assert_eq!(output(&mut rectrix(&["lexicon", "find", "qqqqq"])).2, 1);
    assert_eq!(output(&mut rectrix(&["lexicon", "find", "("])).2, 2);
}

#[test]
fn colour_only_where_it_is_wanted() {
    let note = "black crown";
    let (plain, _, _) = output(&mut rectrix(&["read", note]));
    assert!(!plain.contains('\u{1b}'), "a pipe gets no colour");
    let (always, _, _) = output(&mut rectrix(&["--color", "always", "read", note]));
    assert!(always.contains('\u{1b}'));
    let (never, _, _) = output(&mut rectrix(&["--color", "never", "read", note]));
    assert_eq!(plain, never);
}

#[test]
fn the_view_fits_eighty_columns() {
    let note = "Small brownish bird with a very long sentence about its heavily streaked underparts and its short, \
                conical, pinkish bill, seen on the boardwalk at Quillmere Fen, no wing bars, couldn't see the legs";
    let (stdout, _, _) = output(&mut rectrix(&["read", note]));
    for line in stdout.lines() {
        assert!(line.chars().count() <= 80, "{line}");
    }
}

#[cfg(unix)]
#[test]
fn a_reader_that_goes_away_is_no_error() {
    use std::io::Write;
    use std::process::{Command, Stdio};
    let mut child = Command::new(env!("CARGO_BIN_EXE_rectrix"))
        .args(["read", "--each-line", "--format", "jsonl", "--top", "0"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    let mut input = child.stdin.take().unwrap();
    for _ in 0..5_000 {
        if input.write_all(b"black crown\n").is_err() {
            break;
        }
    }
    drop(input);
    let out = child.wait_with_output().unwrap();
    assert_eq!(out.status.code(), Some(0));
    assert!(out.stderr.is_empty(), "{}", String::from_utf8_lossy(&out.stderr));
}

#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_is_an_error() {
    use std::process::{Command, Stdio};
    let full = fs::OpenOptions::new().write(true).open("/dev/full").unwrap();
    let out = Command::new(env!("CARGO_BIN_EXE_rectrix"))
        .args(["read", "black crown"])
        .stdout(Stdio::from(full))
        .output()
        .unwrap();
    assert_eq!(out.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&out.stderr).contains("can't write"));
}

#[test]
fn compare_sets_look_alikes_side_by_side() {
    let note = "long bill, plain white outer tail";
    let args = ["compare", "--note", note, "Downy Woodpecker", "dryobates villosus"];
    let (stdout, stderr, code) = output(&mut rectrix(&args));
    assert_eq!((code, stderr.as_str()), (0, ""));
    assert!(stdout.lines().all(|l| l.chars().count() <= 80), "{stdout}");
    assert!(!stdout.contains('\u{1b}'), "a pipe gets no colour");
    assert!(stdout.contains("bill: length") && stdout.contains("points to Hairy Woodpecker"));
    let found = json(&["compare", "--format", "json", "--note", note, args[3], args[4]]);
    assert_eq!(found["species"][1]["species"], "Hairy Woodpecker");
    let marks = found["differences"].as_array().unwrap();
    let bill = marks.iter().find(|m| m["areas"][0] == "bill" && m["aspect"] == "length").unwrap();
    assert_eq!(bill["noted"], "long bill");
    assert_eq!(bill["favours"], serde_json::json!(["Hairy Woodpecker"]));
    let mass = &found["measures"][0];
    assert_eq!((&mass["name"], &mass["unit"]), (&"mass".into(), &"g".into()));
    assert!(mass["values"][1].as_f64() > mass["values"][0].as_f64());
}

#[test]
fn a_noted_mark_points_to_the_one_that_shows_it() {
    let note = "streaked breast, yellow lores, no crest";
    let names = ["Song Sparrow", "Savannah Sparrow", "Lincoln's Sparrow"];
    let args = ["compare", "--format", "json", "--note", note, names[0], names[1], names[2]];
    let found = json(&args);
    let marks = found["differences"].as_array().unwrap();
    let lores = marks.iter().find(|m| m["areas"][0] == "lores").unwrap();
    assert_eq!(lores["favours"], serde_json::json!(["Savannah Sparrow"]));
}

#[test]
fn compare_takes_the_form_asked_for() {
    let names = ["Northern Cardinal", "Pyrrhuloxia"];
    let args = ["compare", "--format", "json", "--form", "female", names[0], names[1]];
    let found = json(&args);
    assert!(found["species"][0]["form"].as_str().unwrap().contains("female"));
    let marks = found["differences"].as_array().unwrap();
    assert!(!marks.is_empty());
    assert!(marks.iter().all(|m| m["noted"].is_null()));
}

#[test]
fn compare_refuses_what_it_cannot_set_side_by_side() {
    let (stdout, stderr, code) =
        output(&mut rectrix(&["compare", "Downy Woodpeker", "Hairy Woodpecker"]));
    assert_eq!((code, stdout.as_str()), (2, ""));
    assert!(stderr.contains("`Downy Woodpeker`") && stderr.contains("Downy Woodpecker,"));
    let (_, stderr, code) =
        output(&mut rectrix(&["compare", "Hairy Woodpecker", "Dryobates villosus"]));
    assert_eq!(code, 2);
    assert!(stderr.contains("two different species"), "{stderr}");
}

#[test]
fn a_number_of_the_model_that_is_none_is_refused() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("own.lex");
    fs::write(&path, "weight hit\n  value often\n  means wrong\n").unwrap();
    let own = path.to_str().unwrap();
    let (_, stderr, code) = output(&mut rectrix(&["--lexicon", own, "read", "red crown"]));
    assert_eq!(code, 2);
    assert!(stderr.contains("weight hit"), "{stderr}");
}
