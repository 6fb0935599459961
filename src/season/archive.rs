//! A Darwin Core Archive: one occurrence a bird, one measurement or fact a mark.
//!
//! Terms are those of Darwin Core, named by their addresses in the archive's `meta.xml`. The place of
//! a kind that the lexicon lists as sensitive is left out, with the note, which may name it too.

use super::desk::{BirdRead, Desk, Read};
use super::rows::in_words;
use crate::lexicon::Lexicon;
use crate::lexicon::account::species_id;
use crate::lexicon::names::Name;
use crate::traits::{Certainty, Polarity, Trait};
use rustc_hash::FxHashSet;
use std::fmt::Write as _;
use std::io::{self, Read as Input, Seek, Write};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipWriter};

const DWC: &str = "http://rs.tdwg.org/dwc/terms/";
const DC: &str = "http://purl.org/dc/terms/";
const OBIS: &str = "http://rs.iobis.org/obis/terms/";

/// Fields of an occurrence, its id first.
pub const OCCURRENCE: [(&str, &str); 24] = [
    (DWC, "occurrenceID"),
    (DWC, "basisOfRecord"),
    (DC, "type"),
    (DWC, "occurrenceStatus"),
    (DWC, "eventDate"),
    (DWC, "verbatimEventDate"),
    (DWC, "eventTime"),
    (DWC, "year"),
    (DWC, "month"),
    (DWC, "day"),
    (DWC, "locality"),
    (DWC, "habitat"),
    (DWC, "recordedBy"),
    (DWC, "individualCount"),
    (DWC, "organismQuantity"),
    (DWC, "scientificName"),
    (DWC, "taxonRank"),
    (DWC, "vernacularName"),
    (DWC, "verbatimIdentification"),
    (DWC, "identificationVerificationStatus"),
    (DWC, "occurrenceRemarks"),
    (DWC, "dynamicProperties"),
    (DWC, "dataGeneralizations"),
    (DWC, "informationWithheld"),
];

/// Fields of a measurement or fact, the occurrence's id first.
pub const FACT: [(&str, &str); 9] = [
    (DWC, "occurrenceID"),
    (DWC, "measurementID"),
    (DWC, "measurementType"),
    (DWC, "measurementValue"),
    (OBIS, "measurementValueID"),
    (DWC, "measurementUnit"),
    (DWC, "measurementMethod"),
    (DWC, "measurementAccuracy"),
    (DWC, "measurementRemarks"),
];

/// What the archive says for all records.
#[derive(Clone, Debug, Default)]
pub struct Archive {
    /// Kinds whose places are left out.
    sensitive: FxHashSet<Name>,
    exact: bool,
    /// The reserve or other wide place that is given instead.
    site: String,
    /// What stands where no kind is named: name and rank.
    any: (String, String),
    generalised: String,
    withheld: String,
}

impl Archive {
    /// As the lexicon says. With `exact`, places are given whatever the kind; `site` is the wide
    /// place given instead of an exact one.
    pub fn new(lexicon: &Lexicon, exact: bool, site: &str) -> Self {
        let role = |wanted: &'static str| {
            lexicon.others("note").find(move |e| e.get("role") == Some(wanted))
        };
        let text = |entry: Option<&crate::lexicon::entry::Entry>, key: &str| {
            entry.and_then(|e| e.get(key)).unwrap_or_default().to_owned()
        };
        let list = role("sensitive");
        Self {
            sensitive: lexicon
                .others("note")
                .filter(|e| e.get("role") == Some("sensitive"))
                .flat_map(|e| e.items("kinds"))
                .map(|kind| lexicon.names.find(&species_id(kind)))
                .filter(|name| name.is_some())
                .collect(),
            exact,
            site: site.to_owned(),
            any: (text(role("any-kind"), "scientific"), text(role("any-kind"), "rank")),
            generalised: text(list, "generalised"),
            withheld: text(list, "withheld"),
        }
    }

    /// Whether an entry's own identification names a sensitive kind.
    pub fn hides(&self, read: &Read<'_>) -> bool {
        !self.exact && read.named.iter().any(|n| self.sensitive.contains(n))
    }

    /// Writes the rows of an entry: occurrences, and facts.
    pub fn rows(&self, desk: &Desk<'_>, read: &Read<'_>, out: &mut Rows) {
        let none = [BirdRead::default()];
        let birds: &[BirdRead] = if read.birds.is_empty() {
            // A bird named without a mark is a record; an entry without either is none.
            if read.named.is_empty() {
                return;
            }
            &none
        } else {
            &read.birds
        };
        for bird in birds {
            let id = self.id(read, bird.bird);
            self.occurrence(desk, read, &id, &mut out.occurrences);
            for (n, &at) in bird.traits.iter().enumerate() {
                let one = &read.reading.traits[at];
                self.fact(desk, read, one, (&id, n + 1), &mut out.facts);
            }
        }
    }

    /// File, line, first byte and bird: the same in every run.
    fn id(&self, read: &Read<'_>, bird: u32) -> String {
        format!("{}:{}:{}:{bird}", read.file, read.entry.map.first_line(), read.entry.span[0])
    }

    fn occurrence(&self, desk: &Desk<'_>, read: &Read<'_>, id: &str, out: &mut String) {
        let heading = &read.entry.heading;
        let hidden = self.hides(read);
        let date = heading.date;
        let part = |number: Option<i64>| number.map(|n| n.to_string()).unwrap_or_default();
        let text = |value: &Option<String>| value.clone().unwrap_or_default();
        let (scientific, rank, english) = self.kind(desk, read);
        let count = text(&heading.count);
        let whole_count = count.parse::<u32>().is_ok();
        let note = if hidden { String::new() } else { read.entry.text.clone() };
        let fields = [
            id.to_owned(),
            "HumanObservation".to_owned(),
            "Event".to_owned(),
            if count == "0" { "absent" } else { "present" }.to_owned(),
            date.filter(|d| d.year.is_some()).map(|d| d.to_string()).unwrap_or_default(),
            text(&heading.date_as_written),
            heading.time.clone().filter(|t| t.contains(':')).unwrap_or_default(),
            part(date.and_then(|d| d.year).map(i64::from)),
            part(date.and_then(|d| d.month).map(i64::from)),
            part(date.and_then(|d| d.day).map(i64::from)),
            if hidden { self.site.clone() } else { text(&heading.place) },
            text(&heading.habitat),
            text(&heading.observer),
            if whole_count { count.clone() } else { String::new() },
            if whole_count { String::new() } else { count },
            scientific,
            rank,
            english,
            heading.identification.clone().unwrap_or_else(|| {
                read.reading
                    .named
                    .iter()
                    .map(|n| n.span.of(&read.entry.text))
                    .collect::<Vec<_>>()
                    .join(" | ")
            }),
            "observer's own, unverified".to_owned(),
            note,
            properties(read),
            if hidden { self.generalised.clone() } else { String::new() },
            if hidden { self.withheld.clone() } else { String::new() },
        ];
        line(&fields, out);
    }

    /// Scientific name, rank and English name of the kind, where just one is named.
    fn kind(&self, desk: &Desk<'_>, read: &Read<'_>) -> (String, String, String) {
        if let [one] = read.named[..]
            && let Some(account) = desk.knowledge.account(one)
        {
            return (account.scientific.clone(), "species".to_owned(), account.english.clone());
        }
        (self.any.0.clone(), self.any.1.clone(), String::new())
    }

    fn fact(
        &self,
        desk: &Desk<'_>,
        read: &Read<'_>,
        one: &Trait,
        (id, number): (&str, usize),
        out: &mut String,
    ) {
        let lexicon = &desk.knowledge.lexicon;
        let area = lexicon.topography.title(one.area, &lexicon.names);
        let (bytes, place) = read.place(one.span());
        let mut remarks = format!("line {place}, bytes {}-{}", bytes[0], bytes[1]);
        if !self.hides(read) {
            let _ = write!(remarks, ": {}", one.as_written(&read.entry.text));
        }
        let polarity = match one.polarity {
            Polarity::Present => "",
            Polarity::Absent => "looked for, not there: ",
            Polarity::Unseen => "could not be seen: ",
        };
        let value = match one.polarity {
            Polarity::Unseen => String::new(),
            _ => in_words(desk, one),
        };
        let pato = desk.pato(one).map(|p| p.replace(':', "_"));
        let rule = desk.knowledge.rules.rules.get(one.rule).map_or("", |r| r.name.as_str());
        line(
            &[
                id.to_owned(),
                format!("{id}:{number}"),
                format!("{area} {}", desk.text(one.aspect).replace('-', " ")),
                format!("{polarity}{value}").trim_end_matches(": ").to_owned(),
                pato.map(|p| format!("http://purl.obolibrary.org/obo/{p}")).unwrap_or_default(),
                String::new(),
                format!("read from the note by rule {rule}"),
                match one.certainty {
                    Certainty::Sure => String::new(),
                    Certainty::Hedged => "observer not sure".to_owned(),
                },
                remarks,
            ],
            out,
        );
    }
}

/// What has no term of its own, as an object.
fn properties(read: &Read<'_>) -> String {
    let heading = &read.entry.heading;
    let mut map = serde_json::Map::new();
    map.insert("sourceFile".to_owned(), read.file.into());
    map.insert("sourceLine".to_owned(), read.entry.map.first_line().into());
    map.insert("sourceStart".to_owned(), read.entry.span[0].into());
    map.insert("sourceEnd".to_owned(), read.entry.span[1].into());
    if let Some(weather) = &heading.weather {
        map.insert("weather".to_owned(), weather.as_str().into());
    }
    serde_json::Value::Object(map).to_string()
}

/// A line of fields; tabs and line ends within become spaces.
fn line(fields: &[String], out: &mut String) {
    for (n, field) in fields.iter().enumerate() {
        if n > 0 {
            out.push('\t');
        }
        let mut gap = false;
        for c in field.trim().chars() {
            if c.is_whitespace() || c.is_control() {
                gap = true;
                continue;
            }
            if std::mem::take(&mut gap) {
                out.push(' ');
            }
            out.push(c);
        }
    }
    out.push('\n');
}

/// Rows of the archive's two tables.
#[derive(Default)]
pub struct Rows {
    /// Occurrences.
    pub occurrences: String,
    /// Measurements or facts.
    pub facts: String,
}

/// The head lines of both tables.
pub fn heads() -> Rows {
    let names = |fields: &[(&str, &str)]| -> Vec<String> {
        fields.iter().map(|(_, name)| (*name).to_owned()).collect()
    };
    let mut rows = Rows::default();
    line(&names(&OCCURRENCE), &mut rows.occurrences);
    line(&names(&FACT), &mut rows.facts);
    rows
}

fn meta() -> String {
    let mut out = String::from(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n\
         <archive xmlns=\"http://rs.tdwg.org/dwc/text/\" metadata=\"eml.xml\">\n",
    );
    let table = |out: &mut String, tag: &str, row: &str, file: &str, fields: &[(&str, &str)]| {
        let id = if tag == "core" { "id" } else { "coreid" };
        let _ = write!(
            out,
            "  <{tag} encoding=\"UTF-8\" fieldsTerminatedBy=\"\\t\" linesTerminatedBy=\"\\n\" \
             fieldsEnclosedBy=\"\" ignoreHeaderLines=\"1\" rowType=\"{DWC}{row}\">\n    \
             <files><location>{file}</location></files>\n    <{id} index=\"0\"/>\n"
        );
        for (n, (space, name)) in fields.iter().enumerate() {
            let _ = writeln!(out, "    <field index=\"{n}\" term=\"{space}{name}\"/>");
        }
        let _ = writeln!(out, "  </{tag}>");
    };
    table(&mut out, "core", "Occurrence", "occurrence.txt", &OCCURRENCE);
    table(&mut out, "extension", "MeasurementOrFact", "measurementorfact.txt", &FACT);
    out.push_str("</archive>\n");
    out
}

/// What the archive says of itself.
#[derive(Clone, Debug, Default)]
pub struct About {
    /// Its title.
    pub title: String,
    /// Who gives it out.
    pub publisher: String,
    /// The first and the last day.
    pub days: Option<(String, String)>,
    /// The wide place.
    pub site: String,
    /// What is said of sensitive kinds.
    pub care: String,
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

fn eml(about: &About) -> String {
    let title = escaped(&about.title);
    let publisher = escaped(&about.publisher);
    let party = |tag: &str| {
        format!("    <{tag}><organizationName>{publisher}</organizationName></{tag}>\n")
    };
    let mut coverage = String::new();
    if !about.site.is_empty() {
        // A description without a box: the exact place is nobody's business.
        let _ = writeln!(coverage, "      <!-- {} -->", escaped(&about.site).replace("--", "- "));
    }
    if let Some((first, last)) = &about.days {
        let _ = writeln!(
            coverage,
            "      <temporalCoverage><rangeOfDates><beginDate><calendarDate>{first}</calendarDate></beginDate>\
             <endDate><calendarDate>{last}</calendarDate></endDate></rangeOfDates></temporalCoverage>"
        );
    }
    if !coverage.is_empty() {
        coverage = format!("    <coverage>\n{coverage}    </coverage>\n");
    }
    format!(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n\
         <eml:eml xmlns:eml=\"https://eml.ecoinformatics.org/eml-2.2.0\" packageId=\"season\" \
         system=\"rectrix\" xml:lang=\"en\">\n  <dataset>\n    <title xml:lang=\"en\">{title}</title>\n{}    \
         <language>en</language>\n    <abstract><para>Field marks read from notebook entries. \
         Identifications are the observers' own. {}</para></abstract>\n{coverage}{}  </dataset>\n</eml:eml>\n",
        party("creator"),
        escaped(&about.care),
        party("contact"),
    )
}

/// Writes the archive from its two tables. The times within are fixed, so the same tables give the
/// same bytes.
///
/// # Errors
/// What reading or writing says.
pub fn write<W: Write + Seek>(
    out: W,
    about: &About,
    occurrences: &mut dyn Input,
    facts: &mut dyn Input,
) -> io::Result<W> {
    let mut zip = ZipWriter::new(Remembers { out, failed: None, at: 0 });
    let options = SimpleFileOptions::default()
        .compression_method(CompressionMethod::Deflated)
        .last_modified_time(DateTime::default())
        .unix_permissions(0o644)
        .large_file(true);
    let small = options.large_file(false);
    zip.start_file("meta.xml", small).map_err(io::Error::other)?;
    zip.write_all(meta().as_bytes())?;
    zip.start_file("eml.xml", small).map_err(io::Error::other)?;
    zip.write_all(eml(about).as_bytes())?;
    zip.start_file("occurrence.txt", options).map_err(io::Error::other)?;
    io::copy(occurrences, &mut zip)?;
    zip.start_file("measurementorfact.txt", options).map_err(io::Error::other)?;
    io::copy(facts, &mut zip)?;
    let Remembers { out, failed, .. } = zip.finish().map_err(io::Error::other)?;
    failed.map_or(Ok(out), Err)
}

/// Keeps the first failure for later and takes no more bytes then: the library, dropped after a failure,
/// would tell of it on standard error by itself.
struct Remembers<W> {
    out: W,
    failed: Option<io::Error>,
    /// Where the next byte goes, or would go.
    at: u64,
}

impl<W> Remembers<W> {
    /// Does it, unless something failed; `otherwise` stands for its result then.
    fn attempt<T>(&mut self, otherwise: T, mut work: impl FnMut(&mut W) -> io::Result<T>) -> T {
        while self.failed.is_none() {
            match work(&mut self.out) {
                Ok(done) => return done,
                Err(error) if error.kind() == io::ErrorKind::Interrupted => {}
                Err(error) => self.failed = Some(error),
            }
        }
        otherwise
    }
}

impl<W: Write> Write for Remembers<W> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let wrote = self.attempt(bytes.len(), |out| out.write(bytes));
        self.at += wrote as u64;
        Ok(wrote)
    }
    fn flush(&mut self) -> io::Result<()> {
        self.attempt((), Write::flush);
        Ok(())
    }
}

impl<W: Seek> Seek for Remembers<W> {
    fn seek(&mut self, to: io::SeekFrom) -> io::Result<u64> {
        let otherwise = match to {
            io::SeekFrom::Start(at) => at,
            io::SeekFrom::Current(by) => self.at.saturating_add_signed(by),
            io::SeekFrom::End(_) => self.at,
        };
        self.at = self.attempt(otherwise, |out| out.seek(to));
        Ok(self.at)
    }
}
