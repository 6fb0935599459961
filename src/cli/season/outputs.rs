//! Where rows go: each output is written beside its place under another name, and moved there when
//! all of them are whole.

use super::args::{RowsOf, SeasonArgs, TableFormat};
use crate::cli::failure::Failure;
use rectrix::entries::Entry;
use rectrix::lexicon::Lexicon;
use rectrix::season::again::Again;
use rectrix::season::archive::{About, Archive, Rows, heads, write as write_archive};
use rectrix::season::cells::{Column, Csv};
use rectrix::season::columns::{Columns, Parquet};
use rectrix::season::object::{object, parted};
use rectrix::season::rows::{RowOf, columns, rows};
use rectrix::season::{Desk, Read};
use std::fs::{self, File};
use std::io::{self, BufWriter, Seek, Write};
use std::path::{Path, PathBuf};
use std::sync::Mutex;
use tempfile::NamedTempFile;

/// The bytes written at once.
const BUFFER: usize = 1 << 18;

/// How rows are written.
#[derive(Clone, Debug)]
pub enum Kind {
    /// One object an entry.
    Objects,
    /// One object an entry that is not read.
    Parted,
    /// Rows with a sign between cells.
    Table(u8, RowOf),
    /// Columns.
    Columns(RowOf, Vec<Column>),
    /// A Darwin Core Archive.
    Archive(Box<Archive>),
}

/// What a thread has made of some entries, for one output.
pub enum Piece {
    /// Bytes.
    Bytes(Vec<u8>),
    /// Columns.
    Columns(Columns),
    /// Rows of the archive's tables.
    Archive(Rows),
}

/// What a thread keeps of an output from one batch to the next.
#[derive(Clone, Debug, Default)]
pub struct Before {
    /// How long its rows were: those of the next are of much the same length.
    size: usize,
    /// The marks it has written.
    again: Again,
}

impl Kind {
    /// Nothing yet.
    pub fn empty(&self, before: &mut Before) -> Maker {
        let mut again = || std::mem::take(&mut before.again);
        match self {
            Self::Objects | Self::Parted => Maker::Bytes(Vec::with_capacity(before.size), again()),
            Self::Table(sign, _) => {
                let mut csv = Box::new(Csv::after(*sign, again()));
                csv.reserve(before.size);
                Maker::Csv(csv)
            }
            Self::Columns(_, columns) => Maker::Columns(Columns::new(columns)),
            Self::Archive(_) => Maker::Archive(Rows::default()),
        }
    }
}

/// Gathers rows.
pub enum Maker {
    Bytes(Vec<u8>, Again),
    Csv(Box<Csv>),
    Columns(Columns),
    Archive(Rows),
}

impl Maker {
    /// Adds the rows of an entry.
    pub fn add(&mut self, kind: &Kind, desk: &Desk<'_>, read: &Read<'_>) -> io::Result<()> {
        match (self, kind) {
            (Self::Bytes(out, again), Kind::Objects) => object(desk, read, again, out),
            (Self::Csv(out), Kind::Table(_, of)) => rows(*of, desk, read, out.as_mut()),
            (Self::Columns(out), Kind::Columns(of, _)) => rows(*of, desk, read, out),
            (Self::Archive(out), Kind::Archive(archive)) => archive.rows(desk, read, out),
            _ => {}
        }
        Ok(())
    }

    /// Adds an entry that is not read.
    pub fn add_parted(&mut self, entry: &Entry, file: &str) -> io::Result<()> {
        if let Self::Bytes(out, _) = self {
            parted(entry, file, out)?;
        }
        Ok(())
    }

    /// What was gathered; what helps with the next is left in `before`.
    pub fn done(self, before: &mut Before) -> Piece {
        let (bytes, again) = match self {
            Self::Bytes(bytes, again) => (bytes, again),
            Self::Csv(csv) => csv.into_parts(),
            Self::Columns(columns) => return Piece::Columns(columns),
            Self::Archive(rows) => return Piece::Archive(rows),
        };
        // A little room over.
        *before = Before { size: bytes.len() + bytes.len() / 8, again };
        Piece::Bytes(bytes)
    }
}

/// An output, open.
pub struct Output {
    /// How it is written.
    pub kind: Kind,
    sink: Sink,
}

enum Sink {
    Stream(Box<dyn Write>),
    File(BufWriter<Placed>),
    Columns(Box<Parquet<Placed>>, PathBuf),
    Archive { place: Box<Placed>, occurrences: BufWriter<File>, facts: BufWriter<File> },
}

/// Files that are not yet in their places.
static UNFINISHED: Mutex<Vec<PathBuf>> = Mutex::new(Vec::new());

/// Takes away files that are not yet in their places, before the process is ended from outside the work.
/// Those that are in place have no such name any more.
pub fn forget_unfinished() {
    if let Ok(parts) = UNFINISHED.lock() {
        for path in parts.iter() {
            let _ = fs::remove_file(path);
        }
    }
}

/// A file that takes its place when it is whole.
pub struct Placed {
    target: PathBuf,
    inner: Inner,
}

enum Inner {
    Beside(NamedTempFile),
    /// A device or a pipe: there is nothing to put in its place.
    Straight(File),
}

impl Placed {
    /// Opens a file beside `target`.
    pub fn new(target: &Path) -> Result<Self, Failure> {
        let fail = |error| Failure::WriteFile(target.to_owned(), error);
        // Through a link the file itself is replaced, not the link.
        let target = fs::canonicalize(target).unwrap_or_else(|_| target.to_owned());
        if let Ok(data) = fs::metadata(&target) {
            if data.is_dir() {
                return Err(fail(io::Error::other("it is a folder; name a file")));
            }
            if !data.is_file() {
                let file = File::options().write(true).open(&target).map_err(fail)?;
                return Ok(Self { target, inner: Inner::Straight(file) });
            }
        }
        let folder = target.parent().filter(|p| !p.as_os_str().is_empty());
        let name = target.file_name().unwrap_or_default().to_string_lossy().into_owned();
        let mut builder = tempfile::Builder::new();
        let prefix = format!(".{name}.");
        builder.prefix(&prefix).suffix(".part");
        #[cfg(unix)]
        let usual = {
            use std::os::unix::fs::PermissionsExt;
            let mode = fs::metadata(&target).map_or(0o666, |d| d.permissions().mode() & 0o777);
            fs::Permissions::from_mode(mode)
        };
        #[cfg(unix)]
        builder.permissions(usual);
        let file = builder.tempfile_in(folder.unwrap_or(Path::new("."))).map_err(fail)?;
        if let Ok(mut parts) = UNFINISHED.lock() {
            parts.push(file.path().to_owned());
        }
        Ok(Self { target, inner: Inner::Beside(file) })
    }

    /// Puts the file in its place.
    fn place(self) -> Result<PathBuf, Failure> {
        match self.inner {
            Inner::Straight(_) => {}
            Inner::Beside(file) => {
                file.persist(&self.target)
                    .map_err(|error| Failure::WriteFile(self.target.clone(), error.error))?;
            }
        }
        Ok(self.target)
    }

    fn settle(&mut self) -> Result<(), Failure> {
        let done = match &mut self.inner {
            Inner::Straight(file) => file.flush(),
            Inner::Beside(file) => file.as_file().sync_all(),
        };
        done.map_err(|error| Failure::WriteFile(self.target.clone(), error))
    }
}

impl Write for Placed {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        match &mut self.inner {
            Inner::Beside(file) => file.write(bytes),
            Inner::Straight(file) => file.write(bytes),
        }
    }
    fn flush(&mut self) -> io::Result<()> {
        match &mut self.inner {
            Inner::Beside(file) => file.flush(),
            Inner::Straight(file) => file.flush(),
        }
    }
}

impl Seek for Placed {
    fn seek(&mut self, to: io::SeekFrom) -> io::Result<u64> {
        match &mut self.inner {
            Inner::Beside(file) => file.seek(to),
            Inner::Straight(file) => file.seek(to),
        }
    }
}

/// A whole file that is not yet in its place.
pub struct Whole(Placed);

impl Whole {
    /// A small file, all of it at once.
    pub fn of(target: &Path, bytes: &[u8]) -> Result<Self, Failure> {
        let mut placed = Placed::new(target)?;
        placed.write_all(bytes).map_err(|error| Failure::WriteFile(target.to_owned(), error))?;
        placed.settle()?;
        Ok(Self(placed))
    }

    /// Puts it there.
    pub fn place(self) -> Result<PathBuf, Failure> {
        self.0.place()
    }
}

fn site(args: &SeasonArgs) -> &str {
    args.site.as_deref().unwrap_or_default()
}

fn row_of(args: &SeasonArgs) -> RowOf {
    match args.rows.unwrap_or(RowsOf::Mark) {
        RowsOf::Mark => RowOf::Mark,
        RowsOf::Bird => RowOf::Bird,
    }
}

fn kind(args: &SeasonArgs, format: TableFormat, lexicon: &Lexicon) -> Kind {
    let of = row_of(args);
    match format {
        TableFormat::Jsonl if args.split => Kind::Parted,
        TableFormat::Jsonl => Kind::Objects,
        TableFormat::Csv => Kind::Table(b',', of),
        TableFormat::Tsv => Kind::Table(b'\t', of),
        TableFormat::Parquet => Kind::Columns(of, columns(of, lexicon)),
        TableFormat::Dwca => {
            Kind::Archive(Box::new(Archive::new(lexicon, args.exact_places, site(args))))
        }
    }
}

/// The true paths of all files that will be written.
pub fn targets(args: &SeasonArgs) -> Result<Vec<PathBuf>, Failure> {
    let mut out: Vec<PathBuf> = Vec::new();
    for path in args.out.iter().chain(&args.report).chain(&args.account) {
        // What is not yet there has the true path of its folder.
        let file = path.file_name().unwrap_or_default();
        let folder = path.parent().filter(|p| !p.as_os_str().is_empty()).unwrap_or(Path::new("."));
        // Else it would be known only when all is read.
        fs::metadata(folder).map_err(|error| Failure::WriteFile(path.clone(), error))?;
        let whole = fs::canonicalize(path);
        let whole = whole.or_else(|_| fs::canonicalize(folder).map(|f| f.join(file)));
        let whole = whole.unwrap_or_else(|_| path.clone());
        let is_file = fs::metadata(&whole).map_or(true, |d| d.is_file());
        if is_file && out.contains(&whole) {
            return Err(Failure::Bad(
                format!("{} would be written twice", path.display()),
                "give each output a name of its own".to_owned(),
            ));
        }
        out.push(whole);
    }
    Ok(out)
}

/// Opens every output that is asked for.
pub fn open(args: &SeasonArgs, lexicon: &Lexicon) -> Result<Vec<Output>, Failure> {
    let mut out = Vec::new();
    let formats = args.formats()?;
    for (path, format) in args.out.iter().zip(&formats) {
        let kind = kind(args, *format, lexicon);
        out.push(Output::new(kind, Placed::new(path)?)?);
    }
    if let (true, Some(format)) = (args.out.is_empty(), formats.first()) {
        if matches!(format, TableFormat::Parquet | TableFormat::Dwca) {
            return Err(Failure::Bad(
                "this format can't be written to standard output".to_owned(),
                "name a file with --out".to_owned(),
            ));
        }
        let kind = kind(args, *format, lexicon);
        let stream = BufWriter::with_capacity(BUFFER, io::stdout());
        out.push(Output { kind, sink: Sink::Stream(Box::new(stream)) });
    }
    for one in &mut out {
        one.head(lexicon)?;
    }
    Ok(out)
}

impl Output {
    fn new(kind: Kind, place: Placed) -> Result<Self, Failure> {
        let target = place.target.clone();
        let sink = match &kind {
            Kind::Columns(_, columns) => {
                let out = Parquet::new(place, columns).map_err(|e| columns_failure(&target, e))?;
                Sink::Columns(Box::new(out), target)
            }
            Kind::Archive(_) => {
                let file = || {
                    tempfile::tempfile()
                        .map(BufWriter::new)
                        .map_err(|error| Failure::WriteFile(std::env::temp_dir(), error))
                };
                Sink::Archive { place: Box::new(place), occurrences: file()?, facts: file()? }
            }
            _ => Sink::File(BufWriter::with_capacity(BUFFER, place)),
        };
        Ok(Self { kind, sink })
    }

    fn head(&mut self, lexicon: &Lexicon) -> Result<(), Failure> {
        match &self.kind {
            Kind::Table(sign, of) => {
                let mut csv = Csv::new(*sign);
                csv.head(&columns(*of, lexicon));
                let bytes = csv.into_bytes();
                self.take(Piece::Bytes(bytes))
            }
            Kind::Archive(_) => self.take(Piece::Archive(heads())),
            _ => Ok(()),
        }
    }

    /// Takes the next rows.
    pub fn take(&mut self, piece: Piece) -> Result<(), Failure> {
        match (&mut self.sink, piece) {
            (Sink::Stream(out), Piece::Bytes(bytes)) => {
                out.write_all(&bytes).map_err(Failure::Write)
            }
            (Sink::File(out), Piece::Bytes(bytes)) => {
                let written = out.write_all(&bytes);
                written.map_err(|e| Failure::WriteFile(out.get_ref().target.clone(), e))
            }
            (Sink::Columns(out, target), Piece::Columns(columns)) => {
                out.add(columns).map_err(|e| columns_failure(target, e))
            }
            (Sink::Archive { occurrences, facts, place }, Piece::Archive(rows)) => occurrences
                .write_all(rows.occurrences.as_bytes())
                .and_then(|()| facts.write_all(rows.facts.as_bytes()))
                .map_err(|e| Failure::WriteFile(place.target.clone(), e)),
            _ => Ok(()),
        }
    }

    /// Ends the output; a file is whole then, and not yet in its place.
    pub fn finish(self, about: &About) -> Result<Option<Whole>, Failure> {
        let mut placed = match self.sink {
            Sink::Stream(mut out) => {
                out.flush().map_err(Failure::Write)?;
                return Ok(None);
            }
            Sink::File(out) => {
                let target = out.get_ref().target.clone();
                out.into_inner().map_err(|e| Failure::WriteFile(target, e.into_error()))?
            }
            Sink::Columns(out, target) => out.finish().map_err(|e| columns_failure(&target, e))?,
            Sink::Archive { place, occurrences, facts } => {
                let target = place.target.clone();
                archive(*place, about, occurrences, facts)
                    .map_err(|e| Failure::WriteFile(target, e))?
            }
        };
        placed.settle()?;
        Ok(Some(Whole(placed)))
    }
}

fn archive(
    place: Placed,
    about: &About,
    occurrences: BufWriter<File>,
    facts: BufWriter<File>,
) -> io::Result<Placed> {
    let again = |out: BufWriter<File>| -> io::Result<io::BufReader<File>> {
        let mut file = out.into_inner().map_err(io::IntoInnerError::into_error)?;
        file.rewind()?;
        Ok(io::BufReader::new(file))
    };
    let (mut occurrences, mut facts) = (again(occurrences)?, again(facts)?);
    let out = BufWriter::new(place);
    let out = write_archive(out, about, &mut occurrences, &mut facts)?;
    out.into_inner().map_err(io::IntoInnerError::into_error)
}

fn columns_failure(path: &Path, error: impl std::error::Error + Send + Sync + 'static) -> Failure {
    // What the system said is within what the library says.
    let within = std::error::Error::source(&error).and_then(|e| e.downcast_ref::<io::Error>());
    let error = match within {
        Some(e) => io::Error::new(e.kind(), e.to_string()),
        None => io::Error::other(error),
    };
    Failure::WriteFile(path.to_owned(), error)
}
