//! What headings of a notebook hold for the entries below them.

use super::heading::Found;
use super::labels::{Field, Labels};
use super::{Date, DateOrder, Heading, Plan};
use std::sync::Arc;

/// What is known at a place of the notebook.
pub(super) struct Context {
    /// Known everywhere below the titles of these ranks.
    titles: Vec<(usize, Heading)>,
    /// Known here.
    pub(super) now: Arc<Heading>,
    /// Known before any date.
    pub(super) base: Heading,
    dated: bool,
}

impl Context {
    /// What is known before the first line.
    pub(super) fn new(base: Heading) -> Self {
        Self { titles: Vec::new(), now: Arc::new(base.clone()), base, dated: false }
    }

    /// What the titles above say.
    fn above(&self) -> &Heading {
        self.titles.last().map_or(&self.base, |(_, heading)| heading)
    }

    /// Leaves the titles of a rank and below, and gives what those above say.
    pub(super) fn leave(&mut self, rank: usize) -> Heading {
        self.titles.retain(|(other, _)| *other < rank);
        self.above().clone()
    }

    /// Goes below a title, which says so much.
    pub(super) fn enter(&mut self, rank: usize, heading: Heading, dated: bool) {
        self.titles.push((rank, heading.clone()));
        self.now = Arc::new(heading);
        self.dated = dated;
    }

    /// A new day: what was said of the day before is over.
    pub(super) fn day(&mut self, found: &Found, plan: &Plan<'_>) {
        let mut heading = self.above().clone();
        heading.date = self.now.date.or(heading.date);
        apply(&mut heading, found, plan);
        self.now = Arc::new(heading);
        self.dated = true;
    }

    /// More is said for all that follows.
    pub(super) fn more(&mut self, found: &Found, plan: &Plan<'_>) {
        let mut heading = (*self.now).clone();
        apply(&mut heading, found, plan);
        self.now = Arc::new(heading.clone());
        if !self.dated {
            match self.titles.last_mut() {
                Some((_, title)) => *title = heading,
                None => self.base = heading,
            }
        }
    }
}

/// Sets the fields that were found in a line.
pub(super) fn apply(heading: &mut Heading, found: &Found, plan: &Plan<'_>) {
    let before = heading.date;
    for (field, value) in &found.fields {
        match field {
            Field::Year => {
                if let Some(year) = year_of(value) {
                    heading.date = Some(of_year(year));
                }
            }
            _ => heading.set(*field, value, plan.labels, plan.order),
        }
    }
    if let Some(date) = found.date {
        heading.date = Some(date.after(before));
    }
}

/// Sets a named field; what is no field is kept with its name.
pub(super) fn field_or_other(
    heading: &mut Heading,
    (name, value): (&str, &str),
    labels: &Labels,
    order: DateOrder,
) {
    match labels.field(name) {
        Some(field) if field != Field::Note => heading.set(field, value, labels, order),
        _ if !value.is_empty() => heading.other.push((name.trim().to_owned(), value.to_owned())),
        _ => {}
    }
}

/// A year alone.
pub(super) const fn of_year(year: i16) -> Date {
    Date { year: Some(year), month: None, day: None, either: false }
}

/// The first number of four digits that can be a year.
pub(super) fn year_of(text: &str) -> Option<i16> {
    text.split(|c: char| !c.is_ascii_digit())
        .filter(|n| n.len() == 4)
        .filter_map(|n| n.parse().ok())
        .find(|y| (1700..=2200).contains(y))
}
