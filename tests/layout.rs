//! The shape of the source tree: the direction of the modules, the size of files, what stands at the
//! top level, where files and the network may be touched, and that the documents name real paths.

use std::fs::{read_dir, read_to_string};
use std::path::{Path, PathBuf};

/// The way the data goes. A module may use those before it, and itself.
const ORDER: [&str; 19] = [
    "span",
    "diagnostic",
    "words",
    "lexicon",
    "rules",
    "grammar",
    "traits",
    "standard",
    "reading",
    "entries",
    "proof",
    "gold",
    "gaps",
    "accounts",
    "knowledge",
    "built_in",
    "matching",
    "output",
    "season",
];

/// The most lines of a source file.
const MOST_LINES: usize = 600;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn sources(folder: &Path, out: &mut Vec<PathBuf>) {
    for entry in read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources(&path, out);
        } else if path.extension().is_some_and(|e| e == "rs") {
            out.push(path);
        }
    }
}

fn all_sources() -> Vec<PathBuf> {
    let mut out = Vec::new();
    sources(&root().join("src"), &mut out);
    out.sort();
    assert!(out.len() > 20, "the sources were not found");
    out
}

/// The module of the library a file belongs to; none for the program and the crate roots.
fn module_of(path: &Path) -> Option<String> {
    let inner = path.strip_prefix(root().join("src")).ok()?;
    let first = inner.components().next()?.as_os_str().to_str()?;
    let name = first.strip_suffix(".rs").unwrap_or(first);
    (!matches!(name, "lib" | "main" | "cli")).then(|| name.to_owned())
}

#[test]
fn modules_use_only_those_before_them() {
    let mut wrong = Vec::new();
    for path in all_sources() {
        let Some(module) = module_of(&path) else {
            continue;
        };
        let place = ORDER.iter().position(|m| *m == module);
        let Some(place) = place else {
            wrong.push(format!("{} is not in the order of modules", path.display()));
            continue;
        };
        let text = read_to_string(&path).unwrap();
        for (line, found) in text.lines().enumerate().flat_map(|(n, line)| {
            line.match_indices("crate::").map(move |(at, _)| (n + 1, &line[at + 7..]))
        }) {
            let end = found.find(|c: char| !(c.is_alphanumeric() || c == '_'));
            let used = &found[..end.unwrap_or(found.len())];
            if ORDER.iter().position(|m| *m == used).is_some_and(|p| p > place) {
                wrong.push(format!("{}:{line}: {module} uses {used}", path.display()));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn source_files_stay_small() {
    let long: Vec<String> = all_sources()
        .iter()
        .map(|path| (path, read_to_string(path).unwrap().lines().count()))
        .filter(|(_, lines)| *lines > MOST_LINES)
        .map(|(path, lines)| format!("{}: {lines} lines", path.display()))
        .collect();
    assert!(long.is_empty(), "{}", long.join("\n"));
}

#[test]
fn the_library_touches_no_files_and_prints_nothing() {
    let forbidden =
        ["std::fs", "std::net", "println!", "print!(", "std::env", "SystemTime", "std::process"];
    let mut wrong = Vec::new();
    for path in all_sources() {
        if module_of(&path).is_none() {
            continue;
        }
        let text = read_to_string(&path).unwrap();
        for (number, line) in text.lines().enumerate() {
            let code = line.split("//").next().unwrap_or("");
            if let Some(word) = forbidden.iter().find(|w| code.contains(**w)) {
                wrong.push(format!("{}:{}: {word}", path.display(), number + 1));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Names of the schema that stand in Rust although they are also words of the lexicon.
const SCHEMA_WORDS: [&str; 6] = ["bird", "size", "mark", "all", "hedge", "path"];

#[test]
fn the_engine_knows_no_birds() {
    let knowledge = rectrix::built_in::knowledge();
    let lexicon = &knowledge.lexicon;
    let kinds = ["area", "colour", "pattern", "shape", "species", "yardstick", "habitat"];
    let words: Vec<&str> = lexicon
        .vocabulary
        .terms
        .iter()
        .filter(|t| kinds.contains(&lexicon.kinds.get(t.kind).name.as_str()))
        .map(|t| lexicon.names.text(t.id))
        .filter(|w| !SCHEMA_WORDS.contains(w))
        .collect();
    assert!(words.len() > 500);
    let mut wrong = Vec::new();
    for path in all_sources() {
        let text = read_to_string(&path).unwrap();
        let code = text.split("#[cfg(test)]").next().unwrap_or("");
        for (number, line) in code.lines().enumerate().filter(|(_, l)| !l.trim().starts_with("//"))
        {
            for quoted in line.split('"').skip(1).step_by(2) {
                if words.contains(&quoted) {
                    wrong.push(format!("{}:{}: \"{quoted}\"", path.display(), number + 1));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "words of the lexicon in the code:\n{}", wrong.join("\n"));
}

#[test]
fn the_top_level_holds_what_it_should() {
    let known = [
        ".ci",
        ".git",
        ".gitignore",
        "Cargo.lock",
        "Cargo.toml",
        "DEVELOPERS.md",
        "LICENSE-APACHE",
        "LICENSE-MIT",
        "README.md",
        "benches",
        "build.rs",
        "check",
        "corpus-synthetic",
        "examples",
        "fuzz",
        "lexicon",
        "src",
        "target",
        "tests",
        "rustfmt.toml",
        "clippy.toml",
    ];
    let extra: Vec<String> = read_dir(root())
        .unwrap()
        .map(|e| e.unwrap().file_name().to_string_lossy().into_owned())
        .filter(|name| !known.contains(&name.as_str()))
        .collect();
    assert!(extra.is_empty(), "not known at the top level: {extra:?}");
}

#[test]
fn the_documents_name_real_paths() {
    let mut wrong = Vec::new();
    for document in ["README.md", "DEVELOPERS.md"] {
        let text = read_to_string(root().join(document)).unwrap();
        for quoted in text.split('`').skip(1).step_by(2) {
            let path = quoted.trim_end_matches('/');
            let looks_like_path = [
                "src/",
                "lexicon/",
                "tests/",
                "corpus-synthetic/",
                "examples/",
                "benches/",
                ".ci/",
            ]
            .iter()
            .any(|start| quoted.starts_with(start))
                && !path.contains([' ', '*', '<']);
            if looks_like_path && !root().join(path).exists() {
                wrong.push(format!("{document}: {quoted}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
