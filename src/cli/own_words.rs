//! A person's own words: one file, taken by every command, written by `lexicon add`.

use super::args::{AddArgs, Args};
use super::failure::Failure;
use super::files::{layers, text_file};
use super::note_commands::print;
use rectrix::diagnostic::Source;
use rectrix::grammar::nearest::Nearest;
use rectrix::knowledge::Knowledge;
use rectrix::lexicon::entry::{Entry, entries};
use rectrix::lexicon::{Layers, Lexicon};
use std::fmt::Write as _;
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::{env, fs, io};

/// Names another file for own words.
const VARIABLE: &str = "RECTRIX_WORDS";
/// The id of the entry for words that say nothing.
const ASIDE: &str = "own-words";
const HEAD: &str = "# Words of your own, written by `rectrix lexicon add`. Change them here as you like, and see with\n\
                    # `rectrix lexicon check` that all is well.\n";

/// Where own words are kept; none where the system has no such place.
pub fn path() -> Option<PathBuf> {
    if let Some(path) = env::var_os(VARIABLE).filter(|p| !p.is_empty()) {
        return Some(PathBuf::from(path));
    }
    directories::ProjectDirs::from("", "", "rectrix").map(|d| d.config_dir().join("words.lex"))
}

/// Takes own words, if there are any, behind what is named on the command line.
pub fn take(args: &mut Args) {
    if args.no_own_words {
        return;
    }
    if let Some(path) = path().filter(|p| p.is_file()) {
        args.lexicon.push(path);
    }
}

/// Adds words.
pub fn add(args: &Args, add: &AddArgs) -> Result<ExitCode, Failure> {
    let path = match add.file.clone().or_else(path) {
        Some(path) => path,
        None => {
            return Err(Failure::Bad(
                "this system names no place for own words".to_owned(),
                format!("say where with --file FILE, or set {VARIABLE}"),
            ));
        }
    };
    let mut layers = layers(&args.lexicon)?;
    let (lexicon, _) = Knowledge::read_language(&layers)?;
    let words: Vec<String> = add.words.iter().map(|w| w.trim().to_lowercase()).collect();
    if let Some(bad) = words.iter().find(|w| w.is_empty() || w.contains([',', '\n', '#'])) {
        return Err(Failure::Bad(
            format!("`{bad}` is no word"),
            "give one word or phrase in each argument".to_owned(),
        ));
    }
    let (kind, id) = match &add.term {
        Some(term) => term_of(&lexicon, term, add.kind.as_deref())?,
        None => ("ordinary".to_owned(), ASIDE.to_owned()),
    };
    let old = if path.is_file() { text_file(&path)? } else { HEAD.to_owned() };
    let new = with_words(&old, &layers, (&kind, &id), &words);
    check(&mut layers, &path, &new)?;
    write(&path, &new).map_err(|error| Failure::WriteFile(path.clone(), error))?;
    let meaning = match &add.term {
        Some(_) => format!("now stands for {kind} {id}"),
        None => "is now set aside".to_owned(),
    };
    let mut said = String::new();
    for word in &words {
        let _ = writeln!(said, "`{word}` {meaning}");
    }
    let _ = writeln!(said, "kept in {}", path.display());
    print(&said)
}

/// The kind and the id of the term of that id or form.
fn term_of(
    lexicon: &Lexicon,
    wanted: &str,
    kind: Option<&str>,
) -> Result<(String, String), Failure> {
    let form = wanted.trim().to_lowercase();
    let slug = form.replace(' ', "-");
    let mut found: Vec<(String, String)> = Vec::new();
    for by_id in [true, false] {
        let vocabulary = &lexicon.vocabulary;
        for (term, text) in vocabulary.terms.iter().zip(&vocabulary.texts) {
            let id = lexicon.names.text(term.id);
            let name = lexicon.kinds.get(term.kind).name.clone();
            let fits = if by_id { id == slug } else { text.forms.contains(&form) };
            let pair = (name, id.to_owned());
            if fits && kind.is_none_or(|k| k == pair.0) && !found.contains(&pair) {
                found.push(pair);
            }
        }
        if !found.is_empty() {
            break;
        }
    }
    match found.len() {
        1 => Ok(found.remove(0)),
        0 => {
            let near = Nearest::of(lexicon, 3).to(&form);
            let hint = if near.is_empty() {
                "`rectrix lexicon find PATTERN` finds terms".to_owned()
            } else {
                format!("nearest: {}; `rectrix lexicon find PATTERN` finds terms", near.join(", "))
            };
            Err(Failure::Bad(format!("there is no term `{wanted}`"), hint))
        }
        _ => {
            let kinds: Vec<String> =
                found.iter().map(|(kind, id)| format!("{kind} {id}")).collect();
            Err(Failure::Bad(
                format!("`{wanted}` is more than one term: {}", kinds.join(", ")),
                format!("add --kind {}", found[0].0),
            ))
        }
    }
}

/// The file with the words added to the term's entry, which is copied from the built-in one if need be.
fn with_words(old: &str, layers: &Layers, (kind, id): (&str, &str), words: &[String]) -> String {
    let mut also = String::new();
    for word in words {
        let _ = writeln!(also, "  also    {word}");
    }
    let own = Source::new("own", old);
    let same = |e: &&Entry| e.kind == kind && e.id == id;
    if let Some(entry) = entries(&own).0.iter().find(same) {
        let end = old[entry.span.end..].find('\n').map_or(old.len(), |n| entry.span.end + n + 1);
        let gap = if old[..end].ends_with('\n') { "" } else { "\n" };
        return format!("{}{gap}{also}{}", &old[..end], &old[end..]);
    }
    let mut new = old.to_owned();
    if !new.is_empty() && !new.ends_with('\n') {
        new.push('\n');
    }
    let _ = write!(new, "\n{kind} {id}\n");
    let sources = layers.own.iter().chain(&layers.base);
    let built_in = sources
        .filter(|s| s.name.ends_with(".lex"))
        .find_map(|source| entries(source).0.into_iter().find(|e| e.kind == kind && e.id == id));
    new.push_str(&also);
    match built_in {
        // An entry of one's own stands for the built-in one, so it holds all that one holds.
        Some(entry) => {
            for field in &entry.fields {
                let _ = writeln!(new, "  {:<7} {}", field.key, field.value);
            }
        }
        None => new.push_str("  hidden  yes\n  means   own words\n"),
    }
    new
}

/// Refuses what would break the lexicon.
fn check(layers: &mut Layers, path: &Path, new: &str) -> Result<(), Failure> {
    let name = path.display().to_string();
    layers.own.retain(|s| s.name.as_ref() != name);
    layers.own.push(Source::new(name, new));
    Knowledge::read_language(layers)?;
    Ok(())
}

fn write(path: &Path, text: &str) -> io::Result<()> {
    let folder = path.parent().filter(|p| !p.as_os_str().is_empty()).unwrap_or(Path::new("."));
    fs::create_dir_all(folder)?;
    let mut file = tempfile::NamedTempFile::new_in(folder)?;
    file.write_all(text.as_bytes())?;
    file.as_file().sync_all()?;
    file.persist(path)?;
    Ok(())
}

/// Of entries of one kind and id in several sources, the first stands; the others become comments of
/// the same length, so that places in the file stay true.
pub fn first_stands(sources: &mut [Source]) {
    let mut taken: Vec<(String, String)> = Vec::new();
    for source in sources.iter_mut().filter(|s| !s.name.ends_with(".acc")) {
        let found = entries(source).0;
        let mut text: Option<Vec<u8>> = None;
        for (n, entry) in found.iter().enumerate() {
            let key = (entry.kind.clone(), entry.id.clone());
            if !taken.contains(&key) {
                continue;
            }
            let end = found.get(n + 1).map_or(source.text.len(), |next| next.span.start);
            let bytes = text.get_or_insert_with(|| source.text.as_bytes().to_vec());
            let mut at_start = true;
            for byte in &mut bytes[entry.span.start..end] {
                if std::mem::replace(&mut at_start, *byte == b'\n')
                    && byte.is_ascii()
                    && *byte != b'\n'
                {
                    *byte = b'#';
                }
            }
        }
        taken.extend(found.into_iter().map(|e| (e.kind, e.id)));
        if let Some(text) = text.and_then(|t| String::from_utf8(t).ok()) {
            *source = Source::new(source.name.clone(), text);
        }
    }
}
