//! Which column of a table, or member of an object, is which field.

use super::dates::date_at;
use super::labels::{Field, plain};
use super::{Heading, Plan, Sink};

/// What a column is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Column {
    /// A field of the heading, or the note.
    Is(Field),
    /// Kept with its name.
    Other,
}

/// Finds what columns are for: named by the person, by their names, else by what stands in them:
/// the longest text is the note, what reads as a date the date.
pub fn columns(plan: &Plan<'_>, names: &[String], rows: &[Vec<String>]) -> Vec<Column> {
    let mut out: Vec<Column> = vec![Column::Other; names.len()];
    let free = |out: &[Column], field: Field| !out.contains(&Column::Is(field));
    for (field, wanted) in plan.columns {
        if let Some(at) = names.iter().position(|n| plain(n) == plain(wanted)) {
            out[at] = Column::Is(*field);
        }
    }
    let chosen: Vec<bool> = out.iter().map(|c| *c != Column::Other).collect();
    // The name that is nearest to the front of its entry's words wins; here, the first column.
    for (at, name) in names.iter().enumerate().filter(|(at, _)| !chosen[*at]) {
        if let Some(field) = plan.labels.field(name).filter(|f| free(&out, *f)) {
            out[at] = Column::Is(field);
        }
    }
    if free(&out, Field::Date) {
        let dated = |at: usize| {
            let cells = rows.iter().filter_map(|r| r.get(at)).filter(|c| !c.is_empty());
            let (mut all, mut good) = (0, 0);
            for cell in cells {
                all += 1;
                good += usize::from(date_at(cell, plan.labels, plan.order).is_some());
            }
            all > 0 && good * 2 > all
        };
        if let Some(at) = (0..names.len()).find(|&at| out[at] == Column::Other && dated(at)) {
            out[at] = Column::Is(Field::Date);
        }
    }
    if free(&out, Field::Note) {
        let length = |at: usize| -> usize {
            rows.iter().filter_map(|r| r.get(at)).map(|c| c.split_whitespace().count()).sum()
        };
        let longest = (0..names.len())
            .filter(|&at| out[at] == Column::Other)
            .max_by_key(|&at| (length(at), std::cmp::Reverse(at)))
            .filter(|&at| length(at) > rows.len());
        if let Some(at) = longest {
            out[at] = Column::Is(Field::Note);
        }
    }
    out
}

/// Sets the heading from the fields of a row.
pub fn heading_of_row<'t>(
    plan: &Plan<'_>,
    columns: &[Column],
    names: &[String],
    cells: impl Iterator<Item = &'t str>,
) -> Heading {
    let mut heading = plan.heading.clone();
    let mut time = None;
    for (at, cell) in cells.enumerate() {
        let cell = cell.trim();
        if cell.is_empty() {
            continue;
        }
        match columns.get(at) {
            Some(Column::Is(Field::Note)) => {}
            Some(Column::Is(Field::Time)) => time = Some(cell),
            Some(Column::Is(field)) => heading.set(*field, cell, plan.labels, plan.order),
            _ => {
                let name = names.get(at).filter(|n| !n.is_empty()).cloned();
                let name = name.unwrap_or_else(|| format!("column {}", at + 1));
                heading.other.push((name, cell.to_owned()));
            }
        }
    }
    // A column of times stands over a time within the date.
    if let Some(time) = time {
        heading.set(Field::Time, time, plan.labels, plan.order);
    }
    heading
}

/// Tells what was found.
pub fn tell(plan: &Plan<'_>, columns: &[Column], names: &[String], sink: &mut dyn Sink) {
    for (_, wanted) in plan.columns {
        if names.iter().any(|n| plain(n) == plain(wanted)) {
            sink.named_column(wanted);
        }
    }
    sink.columns(told(columns, names));
}

/// What was found, for people: `note: log, date: t; kept as they are: id`.
fn told(columns: &[Column], names: &[String]) -> String {
    let mut fields = Vec::new();
    let mut kept = Vec::new();
    for (column, name) in columns.iter().zip(names) {
        match column {
            Column::Is(field) => fields.push(format!("{}: {name}", field.name())),
            Column::Other => kept.push(name.as_str()),
        }
    }
    let mut out = fields.join(", ");
    if !kept.is_empty() {
        out.push_str("; kept as they are: ");
        out.push_str(&kept.join(", "));
    }
    out
}
