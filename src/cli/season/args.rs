//! The words of `season`.

use clap::ValueEnum;
use std::path::PathBuf;

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
    /// How to write, where the ending does not say
    #[arg(long, value_enum, value_name = "FORMAT")]
    pub format: Option<TableFormat>,
    /// What a row of CSV, TSV or Parquet stands for
    #[arg(long, value_enum, default_value_t = RowsOf::Mark, value_name = "WHAT")]
    pub rows: RowsOf,
    /// Write a report of the season: .html or .md; may be given more than once
    #[arg(long, value_name = "FILE")]
    pub report: Vec<PathBuf>,
    /// Write the account as JSON
    #[arg(long, value_name = "FILE")]
    pub account: Option<PathBuf>,
    /// Only part the notebooks into entries, one JSON object each, to be read elsewhere
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
    /// Whether 5/6/2026 is 5 June or 6 May
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
    /// Seconds of silence that part two dictated notes
    #[arg(long, value_name = "SECONDS", default_value_t = 1.5)]
    pub pause: f64,
    /// The wide place given in an archive instead of a sensitive kind's exact one
    #[arg(long, value_name = "NAME", default_value = "")]
    pub site: String,
    /// Give exact places in an archive, whatever the kind
    #[arg(long)]
    pub exact_places: bool,
    /// The title of reports and archives
    #[arg(long, value_name = "TEXT", default_value = "Season of field notes")]
    pub title: String,
    /// Who gives out an archive
    #[arg(long, value_name = "NAME", default_value = "not said")]
    pub publisher: String,
    /// No remarks and no account on standard error
    #[arg(long, short)]
    pub quiet: bool,
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
