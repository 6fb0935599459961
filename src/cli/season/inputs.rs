//! Finding the notebooks, their encodings and their formats.

use super::args::{InputFormat, SeasonArgs};
use crate::cli::failure::Failure;
use crate::cli::files::listed;
use encoding_rs::Encoding;
use rectrix::entries::{Format, Guess, Lines};
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

/// The notebooks that are named, folders looked into; files in folders that are no notebooks come
/// back by name.
pub fn inputs(args: &SeasonArgs) -> Result<(Vec<Input>, Vec<PathBuf>), Failure> {
    let mut found = Vec::new();
    let mut left_alone = Vec::new();
    for path in &args.paths {
        if path.as_os_str() == "-" {
            found.push(Input { path: path.clone(), name: "-".to_owned(), length: None });
        } else {
            let data = fs::metadata(path).map_err(|error| Failure::File(path.clone(), error))?;
            if data.is_dir() {
                folder(path, &mut found, &mut left_alone)?;
            } else {
                found.push(input(path, &data));
            }
        }
    }
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

fn folder(
    path: &Path,
    found: &mut Vec<Input>,
    left_alone: &mut Vec<PathBuf>,
) -> Result<(), Failure> {
    for path in listed(path)? {
        let hidden = path.file_name().is_some_and(|n| n.to_string_lossy().starts_with('.'));
        if hidden {
            continue;
        }
        let data = fs::metadata(&path).map_err(|error| Failure::File(path.clone(), error))?;
        let known =
            path.extension().is_some_and(|e| Format::of_ending(&e.to_string_lossy()).is_some());
        if data.is_dir() {
            folder(&path, found, left_alone)?;
        } else if known {
            found.push(input(&path, &data));
        } else {
            left_alone.push(path);
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
