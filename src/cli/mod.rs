//! Commands, their input and their output.

mod args;
mod compare;
mod failure;
mod files;
mod lexicon_commands;
mod note_commands;
mod own_words;
mod season;

use anstream::ColorChoice;
use args::{Args, Color, Command, LexiconCommand};
use clap::Parser;
use failure::Failure;
use std::process::ExitCode;

/// Runs the program and gives its exit code: 0 done, 1 something needs a look, 2 bad usage or input.
pub fn run() -> ExitCode {
    let mut args = Args::parse();
    own_words::take(&mut args);
    let args = args;
    match args.color {
        Color::Auto => {}
        Color::Always => ColorChoice::Always.write_global(),
        Color::Never => ColorChoice::Never.write_global(),
    }
    let done = match &args.command {
        Command::Read(read) => note_commands::read(&args, read),
        Command::Gaps(note) => note_commands::gaps(&args, note),
        Command::Explain(note) => note_commands::explain(&args, note),
        Command::Compare(wanted) => compare::compare(&args, wanted),
        Command::Season(season) => season::season(&args, season),
        Command::Schema { of } => note_commands::schema(*of),
        Command::Lexicon { command } => match command {
            LexiconCommand::Check(check) => lexicon_commands::check(&args, check),
            LexiconCommand::Find(find) => lexicon_commands::find(&args, find),
            LexiconCommand::Add(add) => own_words::add(&args, add),
        },
    };
    match done {
        Ok(code) => code,
        Err(failure) => failure.report(),
    }
}

impl Failure {
    /// Says on standard error what went wrong. A reader that went away is no failure.
    fn report(&self) -> ExitCode {
        if let Self::Write(error) = self
            && error.kind() == std::io::ErrorKind::BrokenPipe
        {
            return ExitCode::SUCCESS;
        }
        anstream::eprintln!("{self}");
        ExitCode::from(2)
    }
}
