//! `season`: notebooks in, tables and reports out.

mod account;
pub mod args;
mod inputs;
mod outputs;
mod pipeline;
mod progress;

use super::args::Args;
use super::failure::Failure;
use super::files::knowledge;
use super::note_commands::region;
use args::{DatesOrder, SeasonArgs};
use outputs::{Output, Whole};
use pipeline::{FileAccount, Work};
use rectrix::entries::{Date, DateOrder, Field, Format, Heading, Labels, Plan};
use rectrix::knowledge::Knowledge;
use rectrix::season::archive::About;
use rectrix::season::report::{Form, report};
use rectrix::season::tally::Keep;
use rectrix::season::{Desk, Tally};
use std::path::Path;
use std::process::ExitCode;
use std::thread::available_parallelism;

/// The exit code after an interruption, as shells have it.
const INTERRUPTED: u8 = 130;

/// Seconds of silence between two dictated notes, where nothing else is said.
const PAUSE: f64 = 1.5;

/// Reads a season.
pub fn season(args: &Args, season: &SeasonArgs) -> Result<ExitCode, Failure> {
    // Where no handler can be set, an interruption ends the process, and no file is in its place yet.
    let _ = ctrlc::set_handler(pipeline::stop);
    season.check()?;
    let knowledge = knowledge(&args.lexicon)?;
    let region = region(&knowledge, season.region.as_deref())?;
    let labels = Labels::of(&knowledge.lexicon);
    let columns = columns(season)?;
    for path in &season.report {
        form_of(path)?;
    }
    let (inputs, left_alone) = inputs::inputs(season, &outputs::targets(season)?)?;
    let work = Work {
        args: season,
        knowledge: &knowledge,
        plan: Plan {
            labels: &labels,
            format: Format::Plain,
            order: order(season, &knowledge, &region),
            columns: &columns,
            pause: season.pause.unwrap_or(PAUSE),
            heading: heading(season),
        },
        region,
        inputs,
        threads: threads(season),
        keep: Keep {
            descriptions: !season.report.is_empty(),
            words: !season.report.is_empty() || season.account.is_some(),
        },
    };
    let mut outputs = outputs::open(season, &knowledge.lexicon)?;
    let progress = progress::Progress::new(&work.inputs, season.quiet);
    let done = pipeline::run(&work, &mut outputs, &progress);
    progress.finish();
    let (tally, files) = done?;
    if pipeline::stopped() {
        return Ok(interrupted(&tally));
    }
    for (_, name) in &columns {
        if !files.iter().any(|f| f.named_columns.contains(name)) {
            return Err(Failure::Bad(
                format!("no notebook has a column or member named `{name}`"),
                columns_there(&files),
            ));
        }
    }
    if season.pause.is_some()
        && !files.iter().any(|f| f.format == Format::Subtitles)
        && !season.quiet
    {
        anstream::eprintln!(
            "--pause goes with SRT and WebVTT, and none was read: it had no effect"
        );
    }
    if tally.entries == 0 {
        let names: Vec<&str> = work.inputs.iter().map(|i| i.name.as_str()).collect();
        return Err(Failure::Bad(
            format!("there is no entry in {}", names.join(", ")),
            "a notebook holds one note or more, parted by dates, titles or empty lines".to_owned(),
        ));
    }
    let placed = finish(outputs, &work, &tally, &files)?;
    if !season.quiet {
        anstream::eprint!(
            "{}",
            account::text(&tally, &files, &left_alone, &placed, work.plan.order)
        );
    }
    let damaged = files.iter().any(|f| f.damaged + f.broken > 0);
    // The process ends here; taking the tables apart piece by piece would only cost time.
    std::mem::forget(knowledge);
    Ok(if damaged { ExitCode::from(2) } else { ExitCode::SUCCESS })
}

/// Which columns were found, for a person who named others.
fn columns_there(files: &[FileAccount]) -> String {
    let told: Vec<String> = files
        .iter()
        .filter_map(|f| Some(format!("{} ({})", f.name, f.columns.as_ref()?)))
        .take(5)
        .collect();
    match told.as_slice() {
        [] => "only tables and JSON Lines have columns, and none was read".to_owned(),
        told => format!("name one that is there: {}", told.join("; ")),
    }
}

fn interrupted(tally: &Tally) -> ExitCode {
    anstream::eprintln!("stopped after {} entries; no file was changed", tally.entries);
    ExitCode::from(INTERRUPTED)
}

/// Ends every output, then moves all of them into place.
fn finish(
    outputs: Vec<Output>,
    work: &Work<'_>,
    tally: &Tally,
    files: &[FileAccount],
) -> Result<Vec<String>, Failure> {
    let args = work.args;
    let about = About {
        title: args.title().to_owned(),
        publisher: args.publisher.clone().unwrap_or_else(|| "not said".to_owned()),
        days: tally.days.map(|(first, last)| (first.to_string(), last.to_string())),
        site: args.site.clone().unwrap_or_default(),
        care: "Places of kinds listed as sensitive are left out; local codes go before that list."
            .to_owned(),
    };
    let mut whole: Vec<Whole> = Vec::new();
    for output in outputs {
        whole.extend(output.finish(&about)?);
    }
    if let Some(path) = &args.account {
        whole.push(Whole::of(path, account::json(tally, files).as_bytes())?);
    }
    for path in &args.report {
        let form = form_of(path)?;
        let desk = Desk::new(work.knowledge, &work.region);
        let text = report(&desk, tally, args.title(), form)
            .map_err(|error| Failure::Write(std::io::Error::other(error)))?;
        whole.push(Whole::of(path, text.as_bytes())?);
    }
    whole.into_iter().map(|w| w.place().map(|p| p.display().to_string())).collect()
}

/// How a report is written, by the ending of its name.
fn form_of(path: &Path) -> Result<Form, Failure> {
    let ending = path.extension().map(|e| e.to_string_lossy().to_ascii_lowercase());
    match ending.as_deref() {
        Some("md" | "markdown") => Ok(Form::Markdown),
        Some("html" | "htm") => Ok(Form::Html),
        // A device has no ending.
        None => Ok(Form::Html),
        Some(_) => Err(Failure::Bad(
            format!("the ending of {} does not say how to write a report", path.display()),
            "end it in .html or .md".to_owned(),
        )),
    }
}

fn threads(args: &SeasonArgs) -> usize {
    match args.threads {
        Some(threads) => usize::from(threads),
        None => available_parallelism().map_or(1, usize::from),
    }
}

fn order(args: &SeasonArgs, knowledge: &Knowledge, region: &str) -> DateOrder {
    match args.dates {
        Some(DatesOrder::DayFirst) => DateOrder::DayFirst,
        Some(DatesOrder::MonthFirst) => DateOrder::MonthFirst,
        None => {
            // Only a region that is named tells how its people write dates.
            let entry =
                knowledge.lexicon.others("note").find(|e| e.get("role") == Some("month-first"));
            let named = args.region.is_some();
            let first = entry.is_some_and(|e| e.items("regions").any(|r| r == region));
            if named && first { DateOrder::MonthFirst } else { DateOrder::DayFirst }
        }
    }
}

fn heading(args: &SeasonArgs) -> Heading {
    Heading {
        date: args.year.map(|year| Date {
            year: Some(year),
            month: None,
            day: None,
            either: false,
        }),
        place: args.place.clone(),
        observer: args.observer.clone(),
        ..Heading::default()
    }
}

fn columns(args: &SeasonArgs) -> Result<Vec<(Field, String)>, Failure> {
    args.column
        .iter()
        .map(|text| {
            let (field, name) = text.split_once('=').unwrap_or((text, ""));
            match Field::find(field.trim()) {
                Some(field) if !name.trim().is_empty() => Ok((field, name.trim().to_owned())),
                _ => Err(Failure::Bad(
                    format!("`{text}` names no field and column"),
                    format!(
                        "write --column FIELD=NAME with a field of: {}",
                        Field::ALL.map(Field::name).join(", ")
                    ),
                )),
            }
        })
        .collect()
}
