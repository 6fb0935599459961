//! The command line's words.

use clap::{Parser, Subcommand, ValueEnum};
use std::path::PathBuf;

/// Reads free field notes about birds into field marks in standard terms: where on the bird, what was
/// seen there, how sure; says what the note leaves out; ranks the species that fit, with reasons.
#[derive(Debug, Parser)]
#[command(
    version,
    max_term_width = 100,
    after_help = "Exit codes: 0 done; 1 done, but something needs a look; 2 bad usage or input.\n\
                  Identifications are suggestions for a person to judge. Keep your distance from nests \
                  and roosts, follow local law, and send rare records to your local records committee."
)]
pub struct Args {
    /// Your own lexicon files or folders (.lex, .rules, .acc); they override the built-in ones
    #[arg(long, global = true, value_name = "PATH")]
    pub lexicon: Vec<PathBuf>,
    /// Leave aside the words of your own that `lexicon add` keeps
    #[arg(long, global = true)]
    pub no_own_words: bool,
    /// Colour in the output
    #[arg(long, global = true, value_enum, default_value_t = Color::Auto, value_name = "WHEN")]
    pub color: Color,
    /// What to do
    #[command(subcommand)]
    pub command: Command,
}

/// When to use colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum Color {
    /// On a terminal that can, unless NO_COLOR is set
    Auto,
    /// Always
    Always,
    /// Never
    Never,
}

/// The commands.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Read notes: marks, what is left out, species that fit
    #[command(after_help = "Examples:\n  \
        rectrix read \"robin-sized, orange below, black hood, bobs tail\"\n  \
        rectrix read --region europe --among fen-list.txt - < note.txt\n  \
        rectrix read --each-line --format jsonl - < notes.txt")]
    Read(ReadArgs),
    /// Show which marks of a full description a note records and which it leaves out
    Gaps(NoteArgs),
    /// Show how each mark came about: rules, phrases, words
    Explain(NoteArgs),
    /// Set look-alikes side by side: every mark in which they differ, and their measures
    #[command(after_help = "Examples:\n  \
        rectrix compare \"Downy Woodpecker\" \"Hairy Woodpecker\"\n  \
        rectrix compare --note \"long bill, plain white outer tail\" \"Downy Woodpecker\" \"Hairy Woodpecker\"")]
    Compare(CompareArgs),
    /// Clean a season of notebooks into tables, with nothing lost
    #[command(after_help = "Examples:\n  \
        rectrix season notebooks/ --out season.csv --report season.html\n  \
        rectrix season fen.md memo.srt --out season.parquet --out season.zip --site \"Quillmere Fen\"\n  \
        rectrix season log.csv --column note=log --column place=reach --rows bird --format csv")]
    Season(Box<super::season::args::SeasonArgs>),
    /// Print the JSON Schema of what `read --format json` or `season` writes
    Schema {
        /// Of which output
        #[arg(value_enum, default_value_t = SchemaOf::Read, value_name = "COMMAND")]
        of: SchemaOf,
    },
    /// Look into the vocabulary, rules and accounts
    Lexicon {
        /// What to do
        #[command(subcommand)]
        command: LexiconCommand,
    },
}

/// A note and its region.
#[derive(Debug, clap::Args)]
pub struct NoteArgs {
    /// The note; `-` or nothing reads standard input
    #[arg(value_name = "TEXT")]
    pub text: Vec<String>,
    /// Region of yardstick birds and species: north-america or europe
    #[arg(long, value_name = "REGION")]
    pub region: Option<String>,
}

/// What `read` takes.
#[derive(Debug, clap::Args)]
pub struct ReadArgs {
    /// The note
    #[command(flatten)]
    pub note: NoteArgs,
    /// One note a line of standard input; each line gives exactly one line (or, as text, one view)
    #[arg(long)]
    pub each_line: bool,
    /// How to print
    #[arg(long, value_enum, default_value_t = Format::Text, value_name = "FORMAT")]
    pub format: Format,
    /// Species to choose among: a file with one English or scientific name a line; after semicolons
    /// months (4-9) and how common (abundant, common, frequent, scarce, rare)
    #[arg(long, value_name = "CHECKLIST")]
    pub among: Option<PathBuf>,
    /// The month, from 1 to 12, for the months in the checklist
    #[arg(long, value_name = "MONTH", value_parser = clap::value_parser!(u8).range(1..=12), requires = "among")]
    pub month: Option<u8>,
    /// How many candidates to print; 0 reads without matching
    #[arg(long, value_name = "N", default_value_t = 5)]
    pub top: usize,
}

/// What `compare` takes.
#[derive(Debug, clap::Args)]
pub struct CompareArgs {
    /// Two or more species, by their English or scientific names; names of several words in quotes
    #[arg(value_name = "SPECIES", required = true, num_args = 2..)]
    pub species: Vec<String>,
    /// A note: tells which of the marks it records, and to whom they point
    #[arg(long, value_name = "TEXT")]
    pub note: Option<String>,
    /// The form to compare, by a word of its label, such as female or juvenile; else the first of each
    #[arg(long, value_name = "WORD")]
    pub form: Option<String>,
    /// Region of the yardstick birds of the note
    #[arg(long, value_name = "REGION")]
    pub region: Option<String>,
    /// How to print
    #[arg(long, value_enum, default_value_t = CompareFormat::Text, value_name = "FORMAT")]
    pub format: CompareFormat,
}

/// How to print a comparison.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum CompareFormat {
    /// For people, in the terminal
    Text,
    /// One indented JSON object
    Json,
}

/// Whose output a schema is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum SchemaOf {
    /// One note, as `read --format json` writes it
    Read,
    /// One line of the JSON Lines of `season`
    Season,
}

/// How to print.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum Format {
    /// For people, in the terminal
    Text,
    /// One indented JSON object a note
    Json,
    /// One JSON object a line
    Jsonl,
    /// One row a mark
    Csv,
}

/// What to do with the lexicon.
#[derive(Debug, Subcommand)]
pub enum LexiconCommand {
    /// Check vocabulary, rules and accounts: every example holds, every word of an account is placed
    Check(CheckArgs),
    /// Find terms by their forms, ids or meanings
    Find(FindArgs),
    /// Add words of your own, for every command to know
    #[command(after_help = "Examples:\n  \
        rectrix lexicon add bibb --as throat\n  \
        rectrix lexicon add clinker --as bearded-reedling --kind species\n  \
        rectrix lexicon add staithe \"reed mere\"        # set aside: says nothing of a bird")]
    Add(AddArgs),
}

/// What `lexicon add` takes.
#[derive(Debug, clap::Args)]
pub struct AddArgs {
    /// Words or phrases; without --as they are set aside
    #[arg(value_name = "WORD", required = true)]
    pub words: Vec<String>,
    /// The term they stand for: its id or one of its words
    #[arg(long = "as", value_name = "TERM")]
    pub term: Option<String>,
    /// The kind of the term, where a word is of several
    #[arg(long, value_name = "KIND", requires = "term")]
    pub kind: Option<String>,
    /// Keep them in this file instead of the usual one
    #[arg(long, value_name = "FILE")]
    pub file: Option<PathBuf>,
}

/// What `lexicon check` takes.
#[derive(Debug, clap::Args)]
pub struct CheckArgs {
    /// List the kinds of words, slots and phrases that rules can use
    #[arg(long)]
    pub kinds: bool,
    /// Exit with 1 if anything needs a look
    #[arg(long)]
    pub strict: bool,
}

/// What `lexicon find` takes.
#[derive(Debug, clap::Args)]
pub struct FindArgs {
    /// A word, or a regular expression over forms and ids; all terms if it is left out
    #[arg(value_name = "PATTERN", default_value = "")]
    pub pattern: String,
    /// Only terms of this kind
    #[arg(long, value_name = "KIND")]
    pub kind: Option<String>,
}
