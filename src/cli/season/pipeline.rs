//! Entries are parted in one thread, read and written as rows in many, and put in order in one.
//!
//! A fixed number of batches is under way at any time, so memory does not grow with the input.

use super::SeasonArgs;
use super::inputs::{Input, Opened, open};
use super::outputs::{Before, Kind, Output, Piece};
use crate::cli::failure::Failure;
use rectrix::entries::{self, Broken, Entry, Format, Heading, Plan, Remark, Sink, Use};
use rectrix::knowledge::Knowledge;
use rectrix::season::tally::Keep;
use rectrix::season::{Desk, Tally};
use std::collections::BTreeMap;
use std::io;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, SyncSender, channel, sync_channel};
use std::sync::{Arc, Mutex};
use std::thread;
use std::time::Duration;

/// The text and the entries of a batch. What is made of it may be thirty times as long, and a few batches for
/// each thread are in memory.
const BATCH_BYTES: usize = 32 * 1024;
const BATCH_ENTRIES: usize = 128;
/// The most remarks kept.
const MOST_REMARKS: usize = 1_000;

/// How long an interruption waits for the work to end by itself.
const GRACE: Duration = Duration::from_secs(2);

static STOP: AtomicBool = AtomicBool::new(false);

/// Asks the work to stop. Called on an interruption, in a thread of its own.
pub fn stop() {
    STOP.store(true, Ordering::Relaxed);
    // Whoever waits for input that does not come can't stop by itself.
    thread::sleep(GRACE);
    super::outputs::forget_unfinished();
    std::process::exit(i32::from(super::INTERRUPTED));
}

/// Whether the work was asked to stop.
pub fn stopped() -> bool {
    STOP.load(Ordering::Relaxed)
}

/// What became of a file's bytes.
#[derive(Clone, Debug, Default)]
pub struct FileAccount {
    /// The file.
    pub name: String,
    /// Its format.
    pub format: Format,
    /// What it is: format, encoding.
    pub what: String,
    /// Which columns were taken for what.
    pub columns: Option<String>,
    /// Columns that were named with `--column` and are there.
    pub named_columns: Vec<String>,
    /// Entries found.
    pub entries: u64,
    /// Bytes of notes, headings, blanks, signs of the format, undecodable ones.
    pub uses: [u64; 5],
    /// All bytes.
    pub bytes: u64,
    /// Remarks, and how many there are in all.
    pub remarks: Vec<Remark>,
    /// How many remarks there are in all.
    pub remark_count: u64,
    /// Rows or objects without a note: how many, and the line of the first.
    pub noteless: (u64, u64),
    /// How many remarks are of lines that could not be decoded.
    pub damaged: u64,
    /// How many are of lines that are not of the file's format, and were kept as they stand.
    pub broken: u64,
}

struct Job {
    number: u64,
    file: Arc<str>,
    entries: Vec<Entry>,
    place: u64,
}

/// A batch, done.
struct Done {
    number: u64,
    pieces: io::Result<Vec<Piece>>,
    tally: Tally,
    place: u64,
}

/// Told how far the work is.
pub trait Watch {
    /// Bytes read so far, of all files, and entries written.
    fn at(&self, bytes: u64, entries: u64);
}

/// What all parts of the work share.
pub struct Work<'a> {
    /// What was asked for.
    pub args: &'a SeasonArgs,
    /// Everything the program knows.
    pub knowledge: &'a Knowledge,
    /// The region, by its id.
    pub region: String,
    /// How to part files, save for their formats and what their names say.
    pub plan: Plan<'a>,
    /// The notebooks.
    pub inputs: Vec<Input>,
    /// How many threads read.
    pub threads: usize,
    /// What to keep for the report.
    pub keep: Keep,
}

/// Does it all; outputs get their rows in the order of the entries.
pub fn run(
    work: &Work<'_>,
    outputs: &mut [Output],
    watch: &dyn Watch,
) -> Result<(Tally, Vec<FileAccount>), Failure> {
    let kinds: Vec<Kind> = outputs.iter().map(|o| o.kind.clone()).collect();
    let under_way = work.threads * 4 + 4;
    let (permits, permitted) = sync_channel::<()>(under_way);
    let (jobs, waiting) = sync_channel::<Job>(work.threads * 2);
    let (done, finished) = channel::<Done>();
    let waiting = Arc::new(Mutex::new(waiting));
    thread::scope(|scope| {
        for _ in 0..work.threads {
            let (waiting, done, kinds) = (Arc::clone(&waiting), done.clone(), kinds.clone());
            scope.spawn(move || {
                let desk = Desk::new(work.knowledge, &work.region);
                let mut before = vec![Before::default(); kinds.len()];
                // The lock is held while waiting, and only then.
                while let Some(job) = next(&waiting) {
                    if done.send(read(&desk, &kinds, &mut before, job, work)).is_err() {
                        return;
                    }
                }
            });
        }
        drop(done);
        // Only the readers hold it now, so that it closes when the last of them is gone.
        drop(waiting);
        let parting = scope.spawn(move || part_all(work, jobs, permits));
        let written = write(outputs, &finished, permitted, watch);
        drop(finished);
        let parted = parting.join().unwrap_or_else(|_| {
            Err(Failure::Bad(
                "parting the notebooks failed".to_owned(),
                "please report it".to_owned(),
            ))
        });
        // What went wrong with the output comes first: it is why the parting stopped.
        let tally = written?;
        Ok((tally, parted?))
    })
}

fn next(waiting: &Mutex<Receiver<Job>>) -> Option<Job> {
    waiting.lock().ok()?.recv().ok()
}

/// Reads a batch and makes its rows. `before` is what the batch before left for each output.
fn read(desk: &Desk<'_>, kinds: &[Kind], before: &mut [Before], job: Job, work: &Work<'_>) -> Done {
    let mut tally = Tally::default();
    let mut makers: Vec<_> =
        kinds.iter().zip(&mut *before).map(|(kind, before)| kind.empty(before)).collect();
    let mut failed = None;
    for entry in &job.entries {
        if work.args.split {
            tally.entries += 1;
            tally.bytes += entry.text.len() as u64;
            for maker in &mut makers {
                failed = failed.or(maker.add_parted(entry, &job.file).err());
            }
            continue;
        }
        let read = desk.read(entry, &job.file);
        tally.add(desk, &read, work.keep);
        for (maker, kind) in makers.iter_mut().zip(kinds) {
            failed = failed.or(maker.add(kind, desk, &read).err());
        }
    }
    let pieces = match failed {
        Some(error) => Err(error),
        None => {
            Ok(makers.into_iter().zip(before).map(|(maker, before)| maker.done(before)).collect())
        }
    };
    Done { number: job.number, pieces, tally, place: job.place }
}

/// Writes batches in order. A permit is given back for each, so that new ones may come.
fn write(
    outputs: &mut [Output],
    finished: &Receiver<Done>,
    permitted: Receiver<()>,
    watch: &dyn Watch,
) -> Result<Tally, Failure> {
    let mut tally = Tally::default();
    let mut early: BTreeMap<u64, Done> = BTreeMap::new();
    let mut number = 0;
    while let Ok(done) = finished.recv() {
        early.insert(done.number, done);
        while let Some(done) = early.remove(&number) {
            number += 1;
            let pieces = done.pieces.map_err(Failure::Write)?;
            for (output, piece) in outputs.iter_mut().zip(pieces) {
                output.take(piece)?;
            }
            tally.merge(done.tally);
            watch.at(done.place, tally.entries);
            let _ = permitted.recv();
        }
    }
    Ok(tally)
}

/// Gathers entries into batches and hands them on.
struct Batches {
    jobs: SyncSender<Job>,
    permits: SyncSender<()>,
    number: u64,
    file: Arc<str>,
    entries: Vec<Entry>,
    bytes: usize,
    /// Bytes of the files before this one.
    before: u64,
    place: u64,
    account: FileAccount,
}

impl Batches {
    fn send(&mut self) -> bool {
        if self.entries.is_empty() {
            return true;
        }
        let job = Job {
            number: self.number,
            file: Arc::clone(&self.file),
            entries: std::mem::take(&mut self.entries),
            place: self.before.saturating_add(self.place),
        };
        self.number += 1;
        self.bytes = 0;
        self.permits.send(()).is_ok() && self.jobs.send(job).is_ok()
    }
}

impl Sink for Batches {
    fn bytes(&mut self, used: Use, start: u64, end: u64) {
        let at = match used {
            Use::Note => 0,
            Use::Heading => 1,
            Use::Blank => 2,
            Use::Syntax => 3,
            Use::Undecodable => 4,
        };
        self.account.uses[at] += end - start;
        self.place = end;
    }

    fn entry(&mut self, entry: Entry) -> bool {
        self.account.entries += 1;
        self.bytes += entry.text.len();
        self.place = entry.span[1].max(self.place);
        self.entries.push(entry);
        let full = self.bytes >= BATCH_BYTES || self.entries.len() >= BATCH_ENTRIES;
        (!full || self.send()) && !stopped()
    }

    fn remark(&mut self, remark: Remark) {
        if remark.what == entries::Trouble::NoNote {
            let (count, first) = self.account.noteless;
            self.account.noteless = (count + 1, if count == 0 { remark.line } else { first });
            return;
        }
        self.account.remark_count += 1;
        match remark.what {
            entries::Trouble::Undecodable => self.account.damaged += 1,
            entries::Trouble::NoObject(_) | entries::Trouble::Unclosed => self.account.broken += 1,
            _ => {}
        }
        if self.account.remarks.len() < MOST_REMARKS {
            self.account.remarks.push(remark);
        }
    }

    fn columns(&mut self, told: String) {
        self.account.columns = Some(told);
    }

    fn named_column(&mut self, name: &str) {
        self.account.named_columns.push(name.to_owned());
    }
}

fn part_all(
    work: &Work<'_>,
    jobs: SyncSender<Job>,
    permits: SyncSender<()>,
) -> Result<Vec<FileAccount>, Failure> {
    let mut batches = Batches {
        jobs,
        permits,
        number: 0,
        file: Arc::from(""),
        entries: Vec::new(),
        bytes: 0,
        before: 0,
        place: 0,
        account: FileAccount::default(),
    };
    let mut accounts = Vec::new();
    for input in &work.inputs {
        if stopped() {
            break;
        }
        let Opened { mut lines, encoding, format } = open(input, work.args)?;
        batches.file = Arc::from(input.name.as_str());
        batches.place = 0;
        batches.account = FileAccount {
            name: input.name.clone(),
            format,
            what: format!("{}, {}", format.name(), encoding.name()),
            ..FileAccount::default()
        };
        let plan = Plan { format, heading: heading(work, input), ..work.plan.clone() };
        match entries::part(&plan, &mut lines, &mut batches) {
            Ok(()) => {}
            Err(Broken::Stopped) => return Ok(accounts),
            Err(Broken::Io(error)) => {
                return Err(Failure::File(input.path.clone(), error));
            }
            Err(Broken::At(line, byte, what, hint)) => {
                return Err(Failure::Bad(
                    format!("{}: line {line} (byte {byte}): {what}", input.name),
                    hint,
                ));
            }
        }
        if !batches.send() {
            return Ok(accounts);
        }
        batches.account.bytes = lines.place();
        batches.before += lines.place();
        accounts.push(std::mem::take(&mut batches.account));
    }
    Ok(accounts)
}

/// What is known of a file before it is read.
fn heading(work: &Work<'_>, input: &Input) -> Heading {
    let mut heading = work.plan.heading.clone();
    let stem = input.path.file_stem().map(|s| s.to_string_lossy().into_owned()).unwrap_or_default();
    let (date, time) = entries::heading::heading_of_name(&stem, work.plan.labels, work.plan.order);
    if date.is_some() {
        heading.date = date;
        heading.time = time;
    }
    heading
}
