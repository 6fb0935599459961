//! How many notes a second one thread reads, nothing else done: what a season is measured against.
//!
//! `rectrix season FILES --split | cargo run --release --example reading_rate`

use std::io::Read;
use std::time::Instant;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut text = String::new();
    std::io::stdin().read_to_string(&mut text)?;
    let notes: Vec<String> = text
        .lines()
        .map(|line| {
            let one: serde_json::Value = serde_json::from_str(line)?;
            Ok(one["note"].as_str().unwrap_or_default().to_owned())
        })
        .collect::<serde_json::Result<_>>()?;
    let knowledge = rectrix::built_in::knowledge();
    let reader = knowledge.reader("");
    let started = Instant::now();
    let marks: usize = notes.iter().map(|n| reader.read(n).traits.len()).sum();
    let seconds = started.elapsed().as_secs_f64();
    println!(
        "{:.0} notes a second ({} notes, {marks} marks)",
        notes.len() as f64 / seconds,
        notes.len()
    );
    Ok(())
}
