//! Heading data: dates, times, places and the like, in the forms in which people write them.

use rectrix::built_in;
use rectrix::entries::dates::{date_at, time_at};
use rectrix::entries::heading::{Reading, heading_of, heading_of_name};
use rectrix::entries::{DateOrder, Labels};
use std::sync::LazyLock;

static LABELS: LazyLock<Labels> = LazyLock::new(|| Labels::of(&built_in::knowledge().lexicon));

fn date(text: &str) -> Option<(String, usize)> {
    date_at(text, &LABELS, DateOrder::DayFirst).map(|(d, n)| (d.to_string(), n))
}

#[test]
fn reads_the_usual_forms() {
    for (text, wanted) in [
        ("2026-05-12", "2026-05-12"),
        ("2026/5/12", "2026-05-12"),
        ("20260512", "2026-05-12"),
        ("12/5/26", "2026-05-12"),
        ("12.05.2026", "2026-05-12"),
        ("5/13/2026", "2026-05-13"),
        ("12 May 2026", "2026-05-12"),
        ("12th May, 2026", "2026-05-12"),
        ("12 of May 2026", "2026-05-12"),
        ("Tues. 12th May 2026", "2026-05-12"),
        ("Tuesday, May 12, 2026", "2026-05-12"),
        ("May 12th 2026", "2026-05-12"),
        ("12-May-26", "2026-05-12"),
        ("12 May '26", "2026-05-12"),
        ("12 May", "--05-12"),
        ("May 12", "--05-12"),
        ("SEPT 3 1998", "1998-09-03"),
        ("May 2026", "2026-05"),
        ("2026-05", "2026-05"),
        ("25/3", "--03-25"),
        ("the third of May", "--05-03"),
        ("third of may twenty twenty six", "2026-05-03"),
        ("May third, twenty twenty-six", "2026-05-03"),
        ("on the 14th of June two thousand and twenty six", "2026-06-14"),
        ("Today is the twenty first of May", "--05-21"),
        ("Monday the fifth of May", "--05-05"),
        ("may the thirty-first twenty twenty six", "2026-05-31"),
        ("12 May twenty twenty six", "2026-05-12"),
        ("may third nineteen ninety eight", "1998-05-03"),
        ("third of May 2026", "2026-05-03"),
        ("4 may 26", "2026-05-04"),
    ] {
        assert_eq!(date(text), Some((wanted.to_owned(), text.len())), "{text}");
    }
}

#[test]
fn what_follows_a_day_is_not_its_year() {
    assert_eq!(date("Tues 7 Jan. 10 of us"), Some(("--01-07".to_owned(), 10)));
    assert_eq!(date("the third of may twenty five birds"), Some(("--05-03".to_owned(), 16)));
    assert_eq!(date("12 May two thousand starlings"), Some(("--05-12".to_owned(), 6)));
    assert_eq!(date("the first of June, two birds"), Some(("--06-01".to_owned(), 17)));
}

#[test]
fn leaves_alone_what_is_no_date() {
    for text in [
        "12 birds",
        "3 may be two",
        "May have been",
        "31/2/2026",
        "32 May 2026",
        "5/6 of them",
        "3.5 inches",
        "Tuesday group",
        "2 marsh birds",
        "1234",
        "9 inches long",
        "may two of them be young",
        "the third bird",
        "second may be a female",
        "the first of many",
        "it is the fifth in a row",
        "on the tail",
        "the thirty second of May",
    ] {
        assert_eq!(date(text), None, "{text}");
    }
}

#[test]
fn reads_times() {
    for (text, wanted) in [
        ("07:15", "07:15"),
        ("7.15am", "07:15"),
        ("7 pm", "19:00"),
        ("0715h", "07:15"),
        ("0715 hrs", "07:15"),
        ("07:15-08:30", "07:15/08:30"),
        ("7-8.30pm", "19:00/20:30"),
        ("6-7.30 am", "06:00/07:30"),
        ("6.00 – 7.30 a.m.", "06:00/07:30"),
        ("11-1pm", "11:00/13:00"),
        ("6 to 7.30 am", "06:00/07:30"),
        ("6-7:30", "06:00/07:30"),
        ("6am-7.30", "06:00/07:30"),
        ("0600-0730", "06:00/07:30"),
        ("0600 to 0730", "06:00/07:30"),
        ("1745-1830h", "17:45/18:30"),
        ("7:05:30", "07:05:30"),
    ] {
        let found = time_at(text, true);
        assert_eq!(found, Some((wanted.to_owned(), text.len())), "{text}");
    }
    for text in [
        "2-3 birds",
        "2-3 hours of rain",
        "6-7 inches",
        "2010-2015",
        "5-10",
        "1200-1500 birds seen",
    ] {
        assert_eq!(time_at(text, true), None, "{text}");
    }
    for (text, wanted) in
        [("0600-0730", "06:00/07:30"), ("6.30-7.45", "06:30/07:45"), ("2010-2055", "20:10/20:55")]
    {
        assert_eq!(time_at(text, false), Some((wanted.to_owned(), text.len())), "{text}");
    }
    for text in ["7 birds", "3.5 inches", "8:1", "25:00", "0715", "7 a bird", "12.30"] {
        assert_eq!(time_at(text, true), None, "{text}");
    }
    assert_eq!(time_at("0715", false).map(|t| t.0), Some("07:15".to_owned()));
}

fn read(line: &str, marked: bool) -> (Vec<String>, String) {
    let reading = Reading { labels: &LABELS, order: DateOrder::DayFirst, marked };
    let found = heading_of(line, reading);
    let fields = found.fields.iter().map(|(f, v)| format!("{}={v}", f.name())).collect();
    (fields, line[found.used..].to_owned())
}

#[test]
fn parts_heading_and_note() {
    for (line, fields, note) in [
        (
            "12 May 2026, 07:15, Boathouse hide",
            &["date=12 May 2026", "time=07:15", "place=Boathouse hide"][..],
            "",
        ),
        (
            "12/5/26 6.40am Boathouse: small brown bird, streaked",
            &["date=12/5/26", "time=06:40", "place=Boathouse"],
            "small brown bird, streaked",
        ),
        ("07:15 two on the mud", &["time=07:15"], "two on the mud"),
        (
            "12 May 2026, 0600-0730, Boathouse hide",
            &["date=12 May 2026", "time=06:00/07:30", "place=Boathouse hide"],
            "",
        ),
        ("6-7.30 am, Boathouse hide", &["time=06:00/07:30", "place=Boathouse hide"], ""),
        (
            "12 May 2026, six to half past seven, Boathouse hide",
            &["date=12 May 2026", "time=06:00/07:30", "place=Boathouse hide"],
            "",
        ),
        ("0600-0730 black cap", &["time=06:00/07:30"], "black cap"),
        (
            "10 May 2026 6:30am Pump House (warden) black cap",
            &["date=10 May 2026", "time=06:30", "place=Pump House", "observer=warden"],
            "black cap",
        ),
        (
            "Place: Boathouse hide; Weather: dull, SW 3",
            &["place=Boathouse hide", "weather=dull, SW 3"],
            "",
        ),
        ("Observer: warden, Weather: dull", &["observer=warden", "weather=dull"], ""),
        (
            "12 May 2026, east sluice, Tuesday group, overcast, light SW",
            &[
                "date=12 May 2026",
                "place=east sluice",
                "observer=Tuesday group",
                "weather=overcast, light SW",
            ],
            "",
        ),
        (
            "Reserve walk, 20 May 2026, Sluice Pool, child 1",
            &["title=Reserve walk", "date=20 May 2026", "place=Sluice Pool", "observer=child 1"],
            "",
        ),
        ("same morning, East Carr", &["place=East Carr"], ""),
        (
            "January 28th. Main Mere 9.45. Drakes with red-brown head",
            &["date=January 28th", "place=Main Mere", "time=09:45"],
            "Drakes with red-brown head",
        ),
        ("3 May: small brown bird", &["date=3 May"], "small brown bird"),
        (
            "12 May 2026. Heard singing from the reeds, then dropped down.",
            &["date=12 May 2026"],
            "Heard singing from the reeds, then dropped down.",
        ),
        ("small brown bird, streaked", &[], "small brown bird, streaked"),
        ("Bill: short and thick", &[], "Bill: short and thick"),
        ("Boathouse hide", &[], "Boathouse hide"),
        ("Place: Boathouse. Small brown bird.", &["place=Boathouse"], "Small brown bird."),
    ] {
        let (found, rest) = read(line, false);
        assert_eq!(found, fields, "{line}");
        assert_eq!(rest, note, "{line}");
    }
}

#[test]
fn marked_headings_need_no_date() {
    assert_eq!(read("Boathouse hide", true).0, ["place=Boathouse hide"]);
    let (fields, note) = read("small streaked bird by the sluice", true);
    assert!(fields.is_empty());
    assert_eq!(note, "small streaked bird by the sluice");
}

#[test]
fn names_of_files_carry_dates() {
    let found = heading_of_name("memo_20260512_0715", &LABELS, DateOrder::DayFirst);
    assert_eq!(found.0.map(|d| d.to_string()).as_deref(), Some("2026-05-12"));
    assert_eq!(found.1.as_deref(), Some("07:15"));
    assert_eq!(heading_of_name("notes-3", &LABELS, DateOrder::DayFirst), (None, None));
}

#[test]
fn reads_times_that_are_said() {
    use rectrix::entries::clock;
    for (text, wanted, sure) in [
        ("half past seven", "07:30", true),
        ("Quarter to nine", "08:45", true),
        ("a quarter to one", "12:45", true),
        ("twenty past six in the evening", "18:20", true),
        ("twenty five past six this morning", "06:25", true),
        ("oh six thirty", "06:30", true),
        ("oh six hundred hours", "06:00", true),
        ("seventeen hundred hours", "17:00", true),
        ("about seven a.m.", "07:00", true),
        ("about 7 in the morning", "07:00", true),
        ("just after seven o'clock", "07:00", true),
        ("eleven at night", "23:00", true),
        ("twelve minutes past four", "04:12", true),
        ("half 8 in the evening", "20:30", true),
        ("six oh five", "06:05", true),
        ("twelve thirty p.m.", "12:30", true),
        ("half past seven to quarter past eight", "07:30/08:15", true),
        ("six to half past seven", "06:00/07:30", true),
        ("about six till half past seven in the evening", "18:00/19:30", true),
        ("seven to nine a.m.", "07:00/09:00", true),
        ("half past six to seven", "06:30/07:00", true),
        ("six o'clock until half past seven in the evening", "18:00/19:30", true),
        ("six thirty", "06:30", false),
        ("twenty one fifteen", "21:15", false),
        ("five to ten", "09:55", false),
        ("half seven", "07:30", false),
    ] {
        let found = clock::time_at(text, &LABELS);
        let found = found.map(|f| (f.time, f.used, f.sure));
        assert_eq!(found, Some((wanted.to_owned(), text.len(), sure)), "{text}");
    }
    for text in [
        "seven",
        "seven birds",
        "six to seven birds",
        "two to six thirty",
        "half white tail",
        "quarter moon on the wing",
        "two hundred birds",
        "a black cap",
        "about robin sized",
        "ten past birds",
        "oh six",
        "at the mere",
    ] {
        assert_eq!(clock::time_at(text, &LABELS), None, "{text}");
    }
}

#[test]
fn a_time_that_is_said_is_taken_from_headings_alone() {
    let read = |text: &str| {
        let reading = Reading { labels: &LABELS, order: DateOrder::DayFirst, marked: false };
        let found = heading_of(text, reading);
        let fields: Vec<_> =
            found.fields.iter().map(|(f, v)| format!("{}={v}", f.name())).collect();
        (fields.join(" "), text[found.used..].to_owned())
    };
    for (text, fields, note) in [
        ("half past seven", "time=07:30", ""),
        ("Half past seven, Boathouse hide", "time=07:30 place=Boathouse hide", ""),
        ("quarter to nine: yellow legs", "time=08:45", "yellow legs"),
        ("About seven a.m. - two brown birds", "time=07:00", "two brown birds"),
        ("About seven a.m.", "time=07:00", ""),
        ("six thirty, North Hide", "time=06:30 place=North Hide", ""),
        ("three thirty: black cap", "time=03:30", "black cap"),
        ("13 May 2026, five to ten, Long Bank", "date=13 May 2026 time=09:55 place=Long Bank", ""),
        (
            "third of May half past six in the morning small brown bird",
            "date=third of May time=06:30",
            "small brown bird",
        ),
        ("Time: half past seven", "time=half past seven", ""),
        ("five to ten inches long, black cap", "", "five to ten inches long, black cap"),
        ("five to ten", "", "five to ten"),
        ("half past seven of them had gone", "", "half past seven of them had gone"),
        ("ten to twelve, black caps", "", "ten to twelve, black caps"),
        ("three thirty gulls", "", "three thirty gulls"),
        ("5-10: black caps", "", "5-10: black caps"),
        ("two, maybe three", "", "two, maybe three"),
        ("a half hour of rain", "", "a half hour of rain"),
        ("about six birds, black caps", "", "about six birds, black caps"),
    ] {
        assert_eq!(read(text), (fields.to_owned(), note.to_owned()), "{text}");
    }
}
