//! How far the season is, on a terminal; nothing in a pipe.

use super::account::number;
use super::inputs::Input;
use super::pipeline::Watch;
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use std::io::IsTerminal;

/// The bar.
pub struct Progress {
    bar: ProgressBar,
}

impl Progress {
    /// A bar over all bytes of the inputs, or, where their lengths are not known, a count.
    pub fn new(inputs: &[Input], quiet: bool) -> Self {
        let total: Option<u64> = inputs.iter().map(|i| i.length).sum();
        let shown = !quiet && std::io::stderr().is_terminal();
        let target =
            if shown { ProgressDrawTarget::stderr() } else { ProgressDrawTarget::hidden() };
        let bar = ProgressBar::with_draw_target(total, target);
        // The bar takes what the words leave, so that all of it stays on one line.
        let known = "{percent:>3}% {wide_bar} {msg}  {eta} left";
        let unknown = "{spinner} {bytes}  {msg}";
        if let Ok(style) =
            ProgressStyle::with_template(if total.is_some() { known } else { unknown })
        {
            bar.set_style(style);
        }
        Self { bar }
    }

    /// Takes the bar away.
    pub fn finish(&self) {
        self.bar.finish_and_clear();
    }
}

impl Watch for Progress {
    fn at(&self, bytes: u64, entries: u64) {
        if !self.bar.is_hidden() {
            self.bar.set_position(bytes);
            self.bar.set_message(format!("{} entries", number(entries)));
        }
    }
}
