//! The fetched files, and tables of our own beside the tests.

use std::fs::{read, read_to_string};

/// A fetched file as text. Fails with what to do if it is not there.
pub fn fetched(name: &str) -> String {
    let path = format!("{}/target/outside/{name}", env!("CARGO_MANIFEST_DIR"));
    let bytes = read(&path).unwrap_or_else(|why| {
        panic!("{path}: {why}. Run ./check (or tests/outside/fetch.sh), which fetches it.")
    });
    String::from_utf8_lossy(&bytes).into_owned()
}

/// The rows of a table beside the tests: fields parted by tabs, `#` starts a remark.
pub fn table(name: &str, fields: usize) -> Vec<Vec<String>> {
    let path = format!("{}/tests/outside/{name}", env!("CARGO_MANIFEST_DIR"));
    let text = read_to_string(&path).unwrap_or_else(|why| panic!("{path}: {why}"));
    text.lines()
        .filter(|line| !line.is_empty() && !line.starts_with('#'))
        .map(|line| {
            let mut row: Vec<String> = line.split('\t').map(str::to_owned).collect();
            assert!(row.len() <= fields, "{name}: too many fields: {line}");
            row.resize(fields, String::new());
            row
        })
        .collect()
}
