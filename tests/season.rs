//! `rectrix season` as a person or another program meets it.

use assert_cmd::Command;
use serde_json::Value;
use std::fs;
use std::path::Path;

const DEMO: &str = "corpus-synthetic/season";

fn season(args: &[&str]) -> Command {
    let mut command = Command::cargo_bin("rectrix").unwrap();
    command.args(["--no-own-words", "season"]).args(args);
    command
}

fn output(command: &mut Command) -> (Vec<u8>, String, i32) {
    let out = command.output().unwrap();
    (out.stdout, String::from_utf8(out.stderr).unwrap(), out.status.code().unwrap())
}

fn lines(bytes: &[u8]) -> Vec<Value> {
    bytes
        .split(|b| *b == b'\n')
        .filter(|l| !l.is_empty())
        .map(|l| serde_json::from_slice(l).unwrap())
        .collect()
}

fn name(path: &Path) -> &str {
    path.to_str().unwrap()
}

#[test]
fn the_demo_season_is_read_with_nothing_lost() {
    let folder = tempfile::tempdir().unwrap();
    let account = folder.path().join("account.json");
    let (rows, stderr, code) =
        output(&mut season(&[DEMO, "--format", "jsonl", "--account", name(&account)]));
    assert_eq!(code, 0, "{stderr}");
    let rows = lines(&rows);
    assert!(rows.len() >= 300, "{} entries", rows.len());
    assert!(stderr.contains("windows-1252") && stderr.contains("UTF-16LE"), "{stderr}");
    assert!(stderr.contains("all accounted for"), "{stderr}");
    assert!(stderr.contains("note: log"), "{stderr}");
    let account: Value = serde_json::from_slice(&fs::read(account).unwrap()).unwrap();
    assert_eq!(account["entries"], rows.len());
    let size: u64 = fs::read_dir(DEMO).unwrap().map(|e| e.unwrap().metadata().unwrap().len()).sum();
    assert_eq!(account["bytes"]["in"], size);
    let used = account["bytes"]["used"].as_object().unwrap();
    assert_eq!(used.values().map(|v| v.as_u64().unwrap()).sum::<u64>(), size);
    let silent = rows.iter().filter(|r| r["birds"].as_array().unwrap().is_empty()).count();
    assert_eq!(account["no_mark"]["count"], silent);
    assert!(stderr.contains("gave no mark:\n  corpus-synthetic/season/"), "{stderr}");
    // Days are read in their many forms: of a year of entries hardly one is without.
    let dated = rows.iter().filter(|r| r["date"].is_string()).count();
    assert!(dated * 100 > rows.len() * 85, "{dated} dated");
}

#[test]
fn every_row_fits_the_published_schema() {
    let mut command = Command::cargo_bin("rectrix").unwrap();
    let (schema, _, code) = output(command.args(["schema", "season"]));
    assert_eq!(code, 0);
    let schema: Value = serde_json::from_slice(&schema).unwrap();
    let validator = jsonschema::validator_for(&schema).unwrap();
    let (rows, _, _) = output(&mut season(&[DEMO, "--quiet"]));
    for row in lines(&rows) {
        let wrong: Vec<String> = validator.iter_errors(&row).map(|e| e.to_string()).collect();
        assert!(wrong.is_empty(), "{row}: {wrong:?}");
        // What is written is told of: nothing is published by the way.
        for name in row.as_object().unwrap().keys() {
            assert!(schema["properties"][name].is_object(), "{name}");
        }
    }
    let mut row = lines(&rows).remove(0);
    row["birds"][0]["traits"][0]["polarity"] = "perhaps".into();
    assert!(!validator.is_valid(&row));
}

#[test]
fn outputs_do_not_hang_on_threads_or_on_the_day() {
    let folder = tempfile::tempdir().unwrap();
    let mut before: Option<Vec<Vec<u8>>> = None;
    for threads in ["1", "2", "2", "7"] {
        let names = ["a.jsonl", "a.csv", "a.parquet", "a.zip", "a.html", "a.md"];
        let paths: Vec<_> = names.iter().map(|n| folder.path().join(n)).collect();
        let mut args = vec![DEMO, "--quiet", "--threads", threads];
        for (n, path) in paths.iter().enumerate() {
            args.extend([if n < 4 { "--out" } else { "--report" }, name(path)]);
        }
        let (_, stderr, code) = output(&mut season(&args));
        assert_eq!((code, stderr.as_str()), (0, ""));
        let now: Vec<Vec<u8>> = paths.iter().map(|p| fs::read(p).unwrap()).collect();
        if let Some(before) = &before {
            for (n, name) in names.iter().enumerate() {
                assert!(before[n] == now[n], "{name} differs with {threads} threads");
            }
        }
        before = Some(now);
    }
}

#[test]
fn parted_elsewhere_the_rows_are_the_same() {
    let (single, _, _) = output(&mut season(&[DEMO, "--quiet"]));
    let (parted, _, code) = output(&mut season(&[DEMO, "--quiet", "--split"]));
    assert_eq!(code, 0);
    let (rows, stderr, code) =
        output(season(&["-", "--quiet", "--from", "jsonl"]).write_stdin(parted));
    assert_eq!(code, 0, "{stderr}");
    assert!(rows == single);
}

#[test]
fn a_row_a_bird_has_a_column_an_area() {
    let (table, _, code) = output(
        season(&["-", "--rows", "bird", "--format", "csv", "--quiet"])
            .write_stdin("12 May 2026, Boathouse: black crown, no wing bars\n\nnothing about\n"),
    );
    assert_eq!(code, 0);
    let mut rows = csv::Reader::from_reader(table.as_slice());
    let heads = rows.headers().unwrap().clone();
    let at = |name: &str| heads.iter().position(|h| h == name).unwrap();
    let rows: Vec<_> = rows.records().map(Result::unwrap).collect();
    assert_eq!(rows.len(), 2, "an entry without a mark keeps its row");
    assert_eq!(&rows[0][at("crown")], "black");
    assert_eq!(&rows[0][at("wing_bar")], "no shown");
    assert_eq!(&rows[0][at("place")], "Boathouse");
    assert_eq!(&rows[1][at("note")], "nothing about");
}

#[test]
fn bad_input_is_told_with_its_place_and_changes_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let old = folder.path().join("old.csv");
    fs::write(&old, "old").unwrap();
    for (file, bytes, wanted) in [
        ("a.txt", &b""[..], "no entry"),
        ("a.txt", b"black\0crown", "zero byte at byte 5"),
        ("a.csv", b"a,b\n1,2\n", "no column holds the notes"),
        ("a.jsonl", b"no object\n", "line 1"),
        ("a.srt", b"no cues\n", "no cue"),
    ] {
        let path = folder.path().join(file);
        fs::write(&path, bytes).unwrap();
        let (_, stderr, code) = output(&mut season(&[name(&path), "--out", name(&old)]));
        assert_eq!(code, 2, "{file}: {stderr}");
        assert!(stderr.contains(wanted) && stderr.contains("help: "), "{wanted} in {stderr}");
        assert_eq!(fs::read(&old).unwrap(), b"old");
        fs::remove_file(path).unwrap();
    }
    let left: Vec<_> = fs::read_dir(folder.path()).unwrap().collect();
    assert_eq!(left.len(), 1, "nothing is left behind: {left:?}");
    let (_, stderr, code) = output(&mut season(&["no-such-file"]));
    assert!(code == 2 && stderr.contains("no-such-file"), "{stderr}");
    let (_, stderr, code) = output(&mut season(&[DEMO, "--out", "here.doc"]));
    assert!(code == 2 && stderr.contains("ending"), "{stderr}");
    let (_, stderr, code) = output(&mut season(&[DEMO, "--column", "note=nowhere"]));
    assert!(code == 2 && stderr.contains("named `nowhere`"), "{stderr}");
    assert!(stderr.contains("night-shift.csv (date: when"), "{stderr}");
    let (_, stderr, code) = output(&mut season(&[DEMO, "--column", "colour=x"]));
    assert!(code == 2 && stderr.contains("FIELD=NAME"), "{stderr}");
}

#[test]
fn undecodable_bytes_are_kept_told_and_end_with_2() {
    let bytes = "é ü ö black crown\n\nred ".as_bytes();
    let bytes = [bytes, b"\xff bill\n"].concat();
    let (rows, stderr, code) = output(season(&["-"]).write_stdin(bytes));
    assert_eq!(code, 2);
    assert!(stderr.contains("line 3"), "{stderr}");
    let rows = lines(&rows);
    assert_eq!(rows.len(), 2);
    assert_eq!(rows[1]["note"], "red \u{fffd} bill");
}

#[test]
fn broken_lines_are_kept_told_counted_and_end_with_2() {
    let folder = tempfile::tempdir().unwrap();
    let account = folder.path().join("account.json");
    for (file, text) in [
        (
            "a.jsonl",
            "{\"note\":\"black cap\"}\n{\"note\":\"white rump\"\n{\"note\":\"red bill\"}\n",
        ),
        ("a.csv", "date,note\n1,\"black cap\n2,white rump\n3,red bill\n"),
    ] {
        let path = folder.path().join(file);
        fs::write(&path, text).unwrap();
        let (rows, stderr, code) =
            output(&mut season(&[name(&path), "--account", name(&account), "--format", "jsonl"]));
        assert_eq!(code, 2, "{stderr}");
        assert!(stderr.contains("line 2 (byte") && stderr.contains("kept"), "{stderr}");
        assert!(stderr.contains("all accounted for"), "{stderr}");
        let marks = |r: &Value| r["birds"][0]["traits"].as_array().map_or(0, Vec::len);
        assert_eq!(lines(&rows).iter().map(marks).collect::<Vec<_>>(), [1, 1, 1]);
        let account: Value = serde_json::from_slice(&fs::read(&account).unwrap()).unwrap();
        assert_eq!(account["files"][0]["broken_lines"], 1);
        assert_eq!(account["files"][0]["remarks"][0]["line"], 2);
    }
}

#[test]
fn an_option_without_effect_is_refused() {
    for (args, wanted) in [
        (&["--rows", "bird", "--format", "jsonl"][..], "--rows goes with CSV, TSV and Parquet"),
        (&["--rows", "bird"], "--rows goes with"),
        (&["--rows", "mark", "--out", "a.zip"], "--rows goes with"),
        (&["--site", "Fen", "--format", "csv"], "--site goes with archives"),
        (&["--exact-places"], "--exact-places goes with archives"),
        (&["--publisher", "us", "--report", "a.html"], "--publisher goes with archives"),
        (&["--title", "Fen"], "--title goes with reports and archives"),
        (&["--format", "csv", "--out", "a.jsonl"], "--format has no effect"),
        (&["--split", "--format", "csv"], "--split only parts"),
        (&["--split", "--report", "a.html"], "--split only parts"),
        (&["--pause", "nan"], "--pause"),
    ] {
        let (out, stderr, code) = output(&mut season(&[&[DEMO, "--quiet"], args].concat()));
        assert_eq!((code, out.len()), (2, 0), "{args:?}: {stderr}");
        assert!(stderr.contains(wanted), "{wanted} in {stderr}");
    }
    assert!(!Path::new("a.zip").exists() && !Path::new("a.html").exists());
    let folder = tempfile::tempdir().unwrap();
    let (csv, jsonl) = (folder.path().join("a.csv"), folder.path().join("a.jsonl"));
    let args = ["--rows", "bird", "--out", name(&csv), "--out", name(&jsonl), "--quiet"];
    let (_, stderr, code) = output(&mut season(&[&[DEMO], &args[..]].concat()));
    assert_eq!((code, stderr.as_str()), (0, ""), "one of the outputs takes it");
}

#[test]
fn what_is_said_of_all_entries_fills_those_parted_before() {
    let run = |args: &[&str], text: &[u8]| {
        let (rows, stderr, code) =
            output(season(&[&["-", "--quiet"], args].concat()).write_stdin(text));
        assert_eq!(code, 0, "{stderr}");
        rows
    };
    let notes = "3 May\n\nblack cap\n\nPlace: Long Bank\n\nwhite rump\n".as_bytes();
    let more = ["--year", "2026", "--observer", "warden", "--place", "Fen"];
    let parted = run(&["--split"], notes);
    assert_eq!(run(&[&["--from", "jsonl"], &more[..]].concat(), &parted), run(&more, notes));
}

#[test]
fn sensitive_kinds_lose_their_place_in_archives_only() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.zip");
    let table = folder.path().join("a.csv");
    let note = "2026-05-12, Boathouse hide: brown, streaked below, long wings. Osprey.\n\n\
                2026-05-13, Boathouse hide: white below, grey above. Common Gull.\n";
    let run = |more: &[&str]| {
        let args = [
            "-",
            "--site",
            "Quillmere Fen",
            "--quiet",
            "--out",
            name(&path),
            "--out",
            name(&table),
        ];
        let (_, stderr, code) = output(season(&[&args, more].concat()).write_stdin(note));
        assert_eq!(code, 0, "{stderr}");
        let mut zip = zip::ZipArchive::new(fs::File::open(&path).unwrap()).unwrap();
        std::io::read_to_string(zip.by_name("occurrence.txt").unwrap()).unwrap()
    };
    let rows = run(&[]);
    let rows: Vec<&str> = rows.lines().collect();
    assert!(rows[1].contains("Quillmere Fen") && !rows[1].contains("Boathouse"), "{}", rows[1]);
    assert!(rows[2].contains("Boathouse"), "{}", rows[2]);
    assert!(run(&["--exact-places"]).lines().all(|l| !l.contains("Place left out")));
    assert!(fs::read_to_string(table).unwrap().contains("Boathouse"));
}

#[test]
fn own_words_are_kept_and_taken() {
    let folder = tempfile::tempdir().unwrap();
    let words = folder.path().join("inner/words.lex");
    let run = |args: &[&str]| {
        let mut command = Command::cargo_bin("rectrix").unwrap();
        output(command.args(args).env("RECTRIX_WORDS", &words))
    };
    let note = ["read", "--top", "0", "--format", "json", "a zanted glorb, staithe"];
    let unplaced = |args: &[&str]| {
        let (out, stderr, code) = run(args);
        assert_eq!(code, 0, "{stderr}");
        let read: Value = serde_json::from_slice(&out).unwrap();
        read["unplaced"].as_array().unwrap().len()
    };
    assert_eq!(unplaced(&note), 3);
    for args in [
        &["lexicon", "add", "glorb", "--as", "throat", "--kind", "area"][..],
        &["lexicon", "add", "zanted", "--as", "streaked"],
        &["lexicon", "add", "staithe", "reed mere"],
        &["lexicon", "add", "glorbo", "--as", "throat", "--kind", "area"],
    ] {
        let (out, stderr, code) = run(args);
        assert_eq!(code, 0, "{args:?}: {stderr}");
        assert!(String::from_utf8(out).unwrap().contains("words.lex"));
    }
    assert_eq!(unplaced(&note), 0);
    assert_eq!(unplaced(&[&["--no-own-words"], &note[..]].concat()), 3);
    // What is named on the command line goes before.
    let other = folder.path().join("other.lex");
    fs::write(&other, "ordinary own-words\n  hidden yes\n  also quabby\n  means ours\n").unwrap();
    assert_eq!(unplaced(&[&["--lexicon", name(&other)], &note[..]].concat()), 1);
    let (_, stderr, code) = run(&["lexicon", "add", "glorb", "--as", "qqqqqqq"]);
    assert!(code == 2 && stderr.contains("no term"), "{stderr}");
    let before = fs::read(&words).unwrap();
    let (_, stderr, code) = run(&["lexicon", "add", "crown", "--as", "throat", "--kind", "area"]);
    assert!(code == 2 && stderr.contains("already a form"), "{stderr}");
    assert_eq!(fs::read(&words).unwrap(), before);
}

#[test]
fn the_report_stands_by_itself() {
    let folder = tempfile::tempdir().unwrap();
    let (html, md) = (folder.path().join("r.html"), folder.path().join("r.md"));
    let (_, stderr, code) = output(&mut season(&[
        DEMO,
        "--title",
        "Fen <2025>",
        "--report",
        name(&html),
        "--report",
        name(&md),
    ]));
    assert_eq!(code, 0, "{stderr}");
    let html = fs::read_to_string(html).unwrap();
    assert!(html.contains("Fen &lt;2025&gt;") && html.contains("<svg"));
    assert!(!html.contains("src=") && !html.contains("<link") && !html.contains("@import"));
    assert!(html.contains("rectrix lexicon add "));
    let md = fs::read_to_string(md).unwrap();
    assert!(md.contains("| warden |") && md.contains("## Words not placed"));
    // A table is one block: its head, its rule, its rows.
    let mut tables = 0;
    for block in md.split("\n\n").filter(|b| b.trim_start().starts_with('|')) {
        let lines: Vec<&str> = block.trim().lines().collect();
        assert!(lines.len() > 2 && lines[1].starts_with("|---"), "{block}");
        let cells = |line: &str| line.replace("\\|", "").matches('|').count();
        assert!(lines.iter().all(|l| l.starts_with('|') && cells(l) == cells(lines[0])), "{block}");
        tables += 1;
    }
    assert!(tables >= 6, "{tables} tables");
}

#[test]
fn no_output_takes_the_place_of_a_notebook_or_is_read_as_one() {
    let folder = tempfile::tempdir().unwrap();
    let (log, out) = (folder.path().join("log.csv"), folder.path().join("out.csv"));
    fs::write(&log, "date,note\n2026-05-12,black crown\n").unwrap();
    let (_, stderr, code) = output(&mut season(&[name(&log), "--out", name(&log)]));
    assert!(code == 2 && stderr.contains("written over"), "{stderr}");
    let (_, stderr, code) =
        output(&mut season(&[name(&log), "--out", name(&out), "--out", name(&out)]));
    assert!(code == 2 && stderr.contains("twice"), "{stderr}");
    let mut before = None;
    for _ in 0..2 {
        let (_, stderr, code) = output(&mut season(&[name(folder.path()), "--out", name(&out)]));
        assert_eq!(code, 0, "{stderr}");
        let now = fs::read(&out).unwrap();
        assert!(before.is_none_or(|b| b == now), "the second run read the output of the first");
        before = Some(now);
    }
    assert!(fs::read_to_string(&log).unwrap().contains("black crown"));
}

#[cfg(unix)]
#[test]
fn links_in_a_circle_and_files_named_twice_are_read_once() {
    let folder = tempfile::tempdir().unwrap();
    let inner = folder.path().join("inner");
    fs::create_dir(&inner).unwrap();
    fs::write(inner.join("a.txt"), "black crown\n").unwrap();
    std::os::unix::fs::symlink(&inner, inner.join("again")).unwrap();
    std::os::unix::fs::symlink(inner.join("a.txt"), inner.join("b.txt")).unwrap();
    let twice = inner.join("a.txt");
    let (rows, stderr, code) =
        output(&mut season(&[name(folder.path()), name(&twice), "--format", "jsonl"]));
    assert_eq!(code, 0, "{stderr}");
    assert_eq!(lines(&rows).len(), 1);
    assert_eq!(stderr.matches("read already").count(), 2, "{stderr}");
}

#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_and_a_closed_pipe() {
    use std::process::{Command, Stdio};
    let run = || {
        let mut command = Command::new(env!("CARGO_BIN_EXE_rectrix"));
        command.args(["--no-own-words", "season", DEMO, "--quiet"]);
        command
    };
    for out in ["a.jsonl", "a.csv", "a.parquet", "a.zip"] {
        let format = out.rsplit('.').next().unwrap();
        let format = if format == "zip" { "dwca" } else { format };
        let full = run().args(["--format", format, "--out", "/dev/full"]).output().unwrap();
        assert_eq!(full.status.code(), Some(2));
        let stderr = String::from_utf8_lossy(&full.stderr).into_owned();
        assert!(stderr.contains("/dev/full") && stderr.contains("room"), "{stderr}");
        assert!(stderr.starts_with("error:") && stderr.lines().count() == 2, "{stderr}");
    }
    let full = fs::File::options().write(true).open("/dev/full").unwrap();
    let full = run().stdout(full).output().unwrap();
    assert_eq!(full.status.code(), Some(2));
    let stderr = String::from_utf8_lossy(&full.stderr).into_owned();
    assert!(stderr.contains("make room"), "{stderr}");
    let mut child = run().stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
    drop(child.stdout.take());
    let out = child.wait_with_output().unwrap();
    assert_eq!(out.status.code(), Some(0));
    assert!(out.stderr.is_empty());
}

#[cfg(target_os = "linux")]
#[test]
fn an_interruption_ends_even_a_wait_for_input() {
    use std::process::{Command, Stdio};
    let folder = tempfile::tempdir().unwrap();
    let old = folder.path().join("old.csv");
    fs::write(&old, "old").unwrap();
    let mut child = Command::new(env!("CARGO_BIN_EXE_rectrix"))
        .args(["--no-own-words", "season", "-", "--out", name(&old)])
        .stdin(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .unwrap();
    // Waiting for the program would close its input, and an empty input ends it by itself.
    let _input = child.stdin.take();
    std::thread::sleep(std::time::Duration::from_millis(700));
    let id = child.id().to_string();
    assert!(Command::new("kill").args(["-INT", &id]).status().unwrap().success());
    assert_eq!(child.wait().unwrap().code(), Some(130));
    assert_eq!(fs::read(&old).unwrap(), b"old");
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
}

#[test]
fn a_folder_that_is_not_there_is_told_before_anything_is_read() {
    let folder = tempfile::tempdir().unwrap();
    let old = folder.path().join("old.csv");
    fs::write(&old, "old").unwrap();
    for (kind, file) in [("--out", "a.csv"), ("--report", "a.html"), ("--account", "a.json")] {
        let lost = folder.path().join("lost").join(file);
        let (_, stderr, code) =
            output(&mut season(&[DEMO, "--out", name(&old), kind, name(&lost)]));
        assert_eq!(code, 2);
        assert!(stderr.contains("lost") && stderr.contains("make its folder"), "{stderr}");
        assert!(!stderr.contains(".part"), "{stderr}");
    }
    let (_, stderr, code) =
        output(&mut season(&[DEMO, "--out", name(&old), "--report", "report.txt"]));
    assert!(code == 2 && stderr.contains("end it in .html or .md"), "{stderr}");
    assert_eq!(fs::read(&old).unwrap(), b"old");
}

#[cfg(target_os = "linux")]
#[test]
fn a_notebook_that_vanishes_before_it_is_read_changes_nothing() {
    use std::io::Write;
    use std::process::{Command, Stdio};
    let folder = tempfile::tempdir().unwrap();
    let (notes, old) = (folder.path().join("notes.txt"), folder.path().join("old.csv"));
    fs::write(&notes, "black cap").unwrap();
    fs::write(&old, "old").unwrap();
    let mut child = Command::new(env!("CARGO_BIN_EXE_rectrix"))
        .args(["--no-own-words", "season", "-", name(&notes), "--out", name(&old)])
        .stdin(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    // Standard input comes first, so the notebook is found by now and not yet read.
    std::thread::sleep(std::time::Duration::from_millis(700));
    fs::remove_file(&notes).unwrap();
    child.stdin.take().unwrap().write_all(b"white rump").unwrap();
    let out = child.wait_with_output().unwrap();
    let stderr = String::from_utf8_lossy(&out.stderr).into_owned();
    assert!(stderr.contains("notes.txt") && stderr.contains("not there"), "{stderr}");
    assert_eq!(out.status.code(), Some(2));
    assert_eq!(fs::read(&old).unwrap(), b"old");
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
}
