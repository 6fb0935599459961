//! The words of `season`.

use crate::cli::failure::Failure;
use clap::ValueEnum;
use std::path::{Path, PathBuf};

/// What `season` takes.
#[derive(Debug, clap::Args)]
pub struct SeasonArgs {
    /// Notebooks and folders of them: plain text, Markdown, CSV, TSV, JSON Lines, SRT, WebVTT; `-`
    /// reads standard input
    #[arg(value_name = "PATH", required = true)]
    pub paths: Vec<PathBuf>,
    /// Where to write; may be given more than once. The ending says how: .jsonl, .csv, .tsv,
    /// .parquet, .zip (Darwin Core Archive). Without it rows go to standard output
    #[arg(long, short, value_name = "FILE")]
    pub out: Vec<PathBuf>,
    /// How to write to standard output, or to files whose ending does not say it
    #[arg(long, value_enum, value_name = "FORMAT")]
    pub format: Option<TableFormat>,
    /// What a row stands for, with CSV, TSV and Parquet: a mark if left out
    #[arg(long, value_enum, value_name = "WHAT")]
    pub rows: Option<RowsOf>,
    /// Write a report of the season: .html or .md; may be given more than once
    #[arg(long, value_name = "FILE")]
    pub report: Vec<PathBuf>,
    /// Write the account as JSON
    #[arg(long, value_name = "FILE")]
    pub account: Option<PathBuf>,
    /// Only part the notebooks into entries, to be read elsewhere: with JSON Lines, one object an
    /// entry
    #[arg(long)]
    pub split: bool,
    /// Region of yardstick birds and species: north-america or europe
    #[arg(long, value_name = "REGION")]
    pub region: Option<String>,
    /// How many threads read; all cores if left out
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u16).range(1..=512))]
    pub threads: Option<u16>,
    /// Read all inputs as this format instead of going by their names
    #[arg(long, value_enum, value_name = "FORMAT")]
    pub from: Option<InputFormat>,
    /// Read all inputs in this encoding instead of finding it out
    #[arg(long, value_name = "NAME")]
    pub encoding: Option<String>,
    /// Which column (or member) is which field, such as note=log or place=reach; fields are note,
    /// date, time, place, observer, count, weather, habitat, identification
    #[arg(long, value_name = "FIELD=NAME")]
    pub column: Vec<String>,
    /// Whether 5/6/2026 is 5 June or 6 May; for entries of --split, give it when they are parted
    #[arg(long, value_enum, value_name = "ORDER")]
    pub dates: Option<DatesOrder>,
    /// The year of dates without one
    #[arg(long, value_name = "YEAR", value_parser = clap::value_parser!(i16).range(1700..=2200))]
    pub year: Option<i16>,
    /// The observer of entries that name none
    #[arg(long, value_name = "NAME")]
    pub observer: Option<String>,
    /// The place of entries that name none
    #[arg(long, value_name = "NAME")]
    pub place: Option<String>,
    /// Seconds of silence that part two dictated notes, in SRT and WebVTT [default: 1.5]
    #[arg(long, value_name = "SECONDS", value_parser = pause)]
    pub pause: Option<f64>,
    /// The wide place given instead of a sensitive kind's exact one, with archives (.zip)
    #[arg(long, value_name = "NAME")]
    pub site: Option<String>,
    /// Give exact places whatever the kind, with archives (.zip)
    #[arg(long)]
    pub exact_places: bool,
    /// The title, with reports and archives [default: Season of field notes]
    #[arg(long, value_name = "TEXT")]
    pub title: Option<String>,
    /// Who gives it out, with archives (.zip)
    #[arg(long, value_name = "NAME")]
    pub publisher: Option<String>,
    /// No remarks and no account on standard error
    #[arg(long, short)]
    pub quiet: bool,
}

fn pause(text: &str) -> Result<f64, String> {
    let seconds = text.parse::<f64>().ok().filter(|n| n.is_finite() && *n >= 0.0);
    seconds.ok_or_else(|| "write seconds, such as 1.5".to_owned())
}

/// How to write tables.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum TableFormat {
    /// One JSON object an entry
    Jsonl,
    /// Rows with commas
    Csv,
    /// Rows with tabs
    Tsv,
    /// Columns for analysis
    Parquet,
    /// Darwin Core Archive
    Dwca,
}

impl TableFormat {
    /// By the ending of a file's name.
    fn of_ending(path: &Path) -> Option<Self> {
        let ending = path.extension()?.to_string_lossy().to_ascii_lowercase();
        Some(match ending.as_str() {
            "jsonl" | "ndjson" => Self::Jsonl,
            "csv" => Self::Csv,
            "tsv" | "tab" => Self::Tsv,
            "parquet" => Self::Parquet,
            "zip" => Self::Dwca,
            _ => return None,
        })
    }
}

/// What a row stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum RowsOf {
    /// A mark
    Mark,
    /// A bird, with a column for each area
    Bird,
}

/// Formats of notebooks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum InputFormat {
    /// Plain text
    Text,
    /// Markdown
    Markdown,
    /// A table with commas (or semicolons)
    Csv,
    /// A table with tabs
    Tsv,
    /// One JSON object a line
    Jsonl,
    /// SRT or WebVTT
    Subtitles,
}

/// Which number of a date is the day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum DatesOrder {
    /// 5/6/2026 is 5 June
    DayFirst,
    /// 5/6/2026 is 6 May
    MonthFirst,
}

impl SeasonArgs {
    /// The title of reports and archives.
    pub fn title(&self) -> &str {
        self.title.as_deref().unwrap_or("Season of field notes")
    }

    /// How every output is written, in the order of `--out`; without files, how standard output is. None where
    /// only a report or an account is asked for.
    pub fn formats(&self) -> Result<Vec<TableFormat>, Failure> {
        let files: Vec<TableFormat> =
            self.out.iter().map(|path| self.format_of(path)).collect::<Result<_, _>>()?;
        let for_people = !self.report.is_empty() || self.account.is_some();
        if files.is_empty() && (!for_people || self.format.is_some() || self.split) {
            return Ok(vec![self.format.unwrap_or(TableFormat::Jsonl)]);
        }
        Ok(files)
    }

    fn format_of(&self, path: &Path) -> Result<TableFormat, Failure> {
        TableFormat::of_ending(path).or(self.format).ok_or_else(|| {
            Failure::Bad(
                format!("the ending of {} does not say how to write it", path.display()),
                "end it in .jsonl, .csv, .tsv, .parquet or .zip, or add --format".to_owned(),
            )
        })
    }

    /// Refuses what would have no effect on what is written.
    pub fn check(&self) -> Result<(), Failure> {
        use TableFormat::{Csv, Dwca, Jsonl, Parquet, Tsv};
        let formats = self.formats()?;
        let any = |wanted: &[TableFormat]| formats.iter().any(|f| wanted.contains(f));
        let report = !self.report.is_empty();
        let archive = "add --out FILE.zip, or leave it out";
        let idle = |flag: &str, goes_with: &str, help: &str| {
            let what = format!("{flag} goes with {goes_with}, and none is written here");
            Err(Failure::Bad(what, help.to_owned()))
        };
        if self.rows.is_some() && !any(&[Csv, Tsv, Parquet]) {
            let help = "add --format csv, or --out FILE.csv, or leave it out";
            return idle("--rows", "CSV, TSV and Parquet", help);
        }
        let only_archives = [
            ("--site", self.site.is_some()),
            ("--exact-places", self.exact_places),
            ("--publisher", self.publisher.is_some()),
        ];
        let given = only_archives.iter().find(|(_, given)| *given);
        if let Some((flag, _)) = given.filter(|_| !any(&[Dwca])) {
            return idle(flag, "archives", archive);
        }
        if self.title.is_some() && !report && !any(&[Dwca]) {
            let help = "add --report FILE.html or --out FILE.zip, or leave it out";
            return idle("--title", "reports and archives", help);
        }
        let told = |path: &PathBuf| TableFormat::of_ending(path).is_some();
        if self.format.is_some() && !self.out.is_empty() && self.out.iter().all(told) {
            return Err(Failure::Bad(
                "--format has no effect here: the endings of all outputs say how to write them"
                    .to_owned(),
                "leave it out, or name an output without such an ending".to_owned(),
            ));
        }
        if self.split && (report || formats.iter().any(|f| *f != Jsonl)) {
            return Err(Failure::Bad(
                "--split only parts notebooks, and writes JSON Lines".to_owned(),
                "end the output in .jsonl; reports and tables come when its entries are read"
                    .to_owned(),
            ));
        }
        Ok(())
    }
}
