//! Finding the notebooks, their encodings and their formats.

use super::args::{InputFormat, SeasonArgs};
use crate::cli::failure::Failure;
use crate::cli::files::listed;
use encoding_rs::Encoding;
use rectrix::entries::{Format, Guess, Lines};
use rustc_hash::FxHashSet;
use std::fs::{self, File};
use std::io::{self, Read};
use std::path::{Path, PathBuf};

/// How much of a stream is looked at to find out what it is.
const SAMPLE: u64 = 1 << 20;
/// The bytes read at once.
const BLOCK: usize = 1 << 18;

/// A notebook that is there.
#[derive(Clone, Debug)]
pub struct Input {
    /// Its path; `-` for standard input.
    pub path: PathBuf,
    /// The name in the output.
    pub name: String,
    /// Its length in bytes, where it is known.
    pub length: Option<u64>,
}

/// A file that is left alone, and why.
pub type LeftAlone = (PathBuf, &'static str);

fn true_path(path: &Path) -> PathBuf {
    fs::canonicalize(path).unwrap_or_else(|_| path.to_owned())
}

/// What was found so far.
#[derive(Default)]
struct Search {
    found: Vec<Input>,
    left_alone: Vec<LeftAlone>,
    /// Files and folders met before, by their true paths: a link may lead to one of them again.
    met: FxHashSet<PathBuf>,
    /// The true paths of what will be written.
    outputs: Vec<PathBuf>,
}

impl Search {
    /// Whether a path was not met before.
    fn is_new(&mut self, path: &Path) -> bool {
        self.met.insert(true_path(path))
    }

    fn is_output(&self, path: &Path) -> bool {
        !self.outputs.is_empty() && self.outputs.contains(&true_path(path))
    }

    fn file(&mut self, path: PathBuf, data: &fs::Metadata) {
        // A pipe may be named twice, and gives other notes the second time.
        if data.is_file() && !self.is_new(&path) {
            self.left_alone.push((path, "it is read already"));
        } else {
            self.found.push(input(&path, data));
        }
    }
}

/// The notebooks that are named, folders looked into, each once; files that are left alone come back
/// with the reason.
pub fn inputs(
    args: &SeasonArgs,
    outputs: &[PathBuf],
) -> Result<(Vec<Input>, Vec<LeftAlone>), Failure> {
    let mut search = Search { outputs: outputs.to_vec(), ..Search::default() };
    for path in &args.paths {
        if path.as_os_str() == "-" {
            let name = "-".to_owned();
            search.found.push(Input { path: path.clone(), name, length: None });
        } else {
            let data = fs::metadata(path).map_err(|error| Failure::File(path.clone(), error))?;
            if data.is_dir() {
                folder(path, &mut search)?;
            } else if data.is_file() && search.is_output(path) {
                return Err(Failure::Bad(
                    format!("{} is a notebook, and would be written over", path.display()),
                    "name another file for the output".to_owned(),
                ));
            } else {
                search.file(path.clone(), &data);
            }
        }
    }
    let Search { found, left_alone, .. } = search;
    if found.is_empty() {
        let paths: Vec<String> = args.paths.iter().map(|p| p.display().to_string()).collect();
        return Err(Failure::Bad(
            format!("no notebook in {}", paths.join(", ")),
            format!("in folders files ending in {} are read", Format::ENDINGS.join(", ")),
        ));
    }
    Ok((found, left_alone))
}

fn input(path: &Path, data: &fs::Metadata) -> Input {
    Input {
        path: path.to_owned(),
        name: path.display().to_string().replace('\\', "/"),
        length: data.is_file().then_some(data.len()),
    }
}

fn folder(path: &Path, search: &mut Search) -> Result<(), Failure> {
    if !search.is_new(path) {
        return Ok(());
    }
    for path in listed(path)? {
        let hidden = path.file_name().is_some_and(|n| n.to_string_lossy().starts_with('.'));
        if hidden {
            continue;
        }
        let data = fs::metadata(&path).map_err(|error| Failure::File(path.clone(), error))?;
        let known =
            path.extension().is_some_and(|e| Format::of_ending(&e.to_string_lossy()).is_some());
        if data.is_dir() {
            folder(&path, search)?;
        } else if search.is_output(&path) {
            // From the run before: without this it would be read as a notebook.
            search.left_alone.push((path, "it is an output of this run"));
        } else if known {
            search.file(path, &data);
        } else {
            search.left_alone.push((path, "by its ending no notebook"));
        }
    }
    Ok(())
}

/// A notebook that is open.
pub struct Opened {
    /// Its lines.
    pub lines: Lines<Box<dyn Read + Send>>,
    /// Its encoding.
    pub encoding: &'static Encoding,
    /// Its format.
    pub format: Format,
}

/// Opens a notebook and finds out what it is.
pub fn open(input: &Input, args: &SeasonArgs) -> Result<Opened, Failure> {
    let fail = |error| match input.name.as_str() {
        "-" => Failure::Input(error),
        _ => Failure::File(input.path.clone(), error),
    };
    let (encoding, stream): (_, Box<dyn Read + Send>) = if input.length.is_some() {
        let encoding = encoding_of_file(input, args).map_err(|e| e.or(fail))?;
        (encoding, Box::new(File::open(&input.path).map_err(fail)?))
    } else {
        let mut stream: Box<dyn Read + Send> = match input.name.as_str() {
            "-" => Box::new(io::stdin()),
            _ => Box::new(File::open(&input.path).map_err(fail)?),
        };
        let mut sample = Vec::new();
        stream.by_ref().take(SAMPLE).read_to_end(&mut sample).map_err(fail)?;
        let mut guess = Guess::default();
        guess.push(&sample);
        let encoding = settled(guess, input, args).map_err(|e| e.or(fail))?;
        (encoding, Box::new(io::Cursor::new(sample).chain(stream)))
    };
    let lines = Lines::new(stream, encoding).map_err(fail)?;
    let sample = lines.peek();
    let by_name = input.path.extension().and_then(|e| Format::of_ending(&e.to_string_lossy()));
    let format = match args.from {
        Some(InputFormat::Text) => Format::Plain,
        Some(InputFormat::Markdown) => Format::Markdown,
        Some(InputFormat::Csv) => Format::Comma,
        Some(InputFormat::Tsv) => Format::Tab,
        Some(InputFormat::Jsonl) => Format::Objects,
        Some(InputFormat::Subtitles) => Format::Subtitles,
        None => by_name.unwrap_or_else(|| Format::of_text(&sample)),
    };
    Ok(Opened { lines, encoding, format: format.settled(&sample) })
}

/// A failure, or an error of the stream still without its name.
enum Trouble {
    Stream(io::Error),
    Known(Failure),
}

impl Trouble {
    fn or(self, fail: impl FnOnce(io::Error) -> Failure) -> Failure {
        match self {
            Self::Stream(error) => fail(error),
            Self::Known(failure) => failure,
        }
    }
}

fn encoding_of_file(input: &Input, args: &SeasonArgs) -> Result<&'static Encoding, Trouble> {
    let mut guess = Guess::default();
    let mut file = File::open(&input.path).map_err(Trouble::Stream)?;
    let mut block = vec![0; BLOCK];
    while args.encoding.is_none() {
        let read = match file.read(&mut block) {
            Ok(0) => break,
            Ok(read) => read,
            Err(error) if error.kind() == io::ErrorKind::Interrupted => continue,
            Err(error) => return Err(Trouble::Stream(error)),
        };
        guess.push(&block[..read]);
        if super::pipeline::stopped() {
            break;
        }
    }
    settled(guess, input, args)
}

fn settled(guess: Guess, input: &Input, args: &SeasonArgs) -> Result<&'static Encoding, Trouble> {
    if let Some(name) = &args.encoding {
        return Encoding::for_label(name.as_bytes()).ok_or_else(|| {
            Trouble::Known(Failure::Bad(
                format!("there is no encoding `{name}`"),
                "names are those of the web: utf-8, utf-16le, windows-1252, macintosh, ..."
                    .to_owned(),
            ))
        });
    }
    guess.finish().map_err(|zero| {
        Trouble::Known(Failure::Bad(
            format!("{} is no text: a zero byte at byte {zero}", input.name),
            "give text files only; for UTF-16 without a mark at its start add --encoding utf-16le"
                .to_owned(),
        ))
    })
}
