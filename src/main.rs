//! The command line: a thin program over the library. All file and terminal access is here.

mod cli;

use std::process::ExitCode;

fn main() -> ExitCode {
    cli::run()
}
