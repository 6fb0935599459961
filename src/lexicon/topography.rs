//! The parts of a bird: which lies within which, which words stand for several, in which order.

use super::entry::Entry;
use super::names::{Name, Names};
use crate::diagnostic::{Diagnostic, Diagnostics};
use rustc_hash::FxHashMap;
use serde::{Deserialize, Serialize};

/// A part of the bird.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Area {
    /// Its id.
    pub id: Name,
    /// The part it lies within; none for the whole bird.
    pub within: Name,
    /// The parts an everyday word stands for; empty for standard parts.
    pub resolves: Vec<Name>,
    /// Whether only some birds show it, so that naming it says something.
    pub optional: bool,
    /// How much of its parent's surface it is, in proportion to its siblings.
    pub share: f32,
    /// An aspect that is called otherwise when said of this part, and what it is called.
    pub reads: Option<(Name, Name)>,
    /// Whether it can be seen in the field without luck.
    pub in_field: bool,
    /// Whether one speaks of it in the plural.
    pub plural: bool,
    /// What to call it, where that is not its id.
    pub title: Option<String>,
    /// What it is, for people.
    pub means: String,
}

/// All parts, in topographical order.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Topography {
    areas: Vec<Area>,
    /// By name one more than the place among them; 0 for what is no part.
    index: Vec<u16>,
    at: FxHashMap<(Name, Name), Name>,
    /// Areas in the order in which one passes over them.
    pub paths: Vec<Vec<Name>>,
}

/// Hidden entries only lend further forms to an area.
fn is_area(entry: &Entry) -> bool {
    entry.kind == "area" && entry.get("hidden").is_none()
}

impl Topography {
    /// Reads the `area` entries. The order of the entries is the topographical order.
    pub fn read(entries: &[Entry], names: &mut Names, wrong: &mut Diagnostics) -> Self {
        let mut out = Self::default();
        for entry in entries.iter().filter(|e| is_area(e)) {
            let id = names.intern(&entry.id);
            let share = match entry.numbers("share", 1) {
                Ok(found) => found.map_or(1.0, |n| n[0]),
                Err(diagnostic) => {
                    wrong.push(*diagnostic);
                    1.0
                }
            };
            for field in entry.fields.iter().filter(|f| f.key == "at") {
                match field.value.split_once(' ') {
                    Some((area, position)) => {
                        let key = (names.intern(area.trim()), names.intern(position.trim()));
                        out.at.insert(key, id);
                    }
                    None => wrong.push(
                        Diagnostic::error(
                            "bad-value",
                            &entry.source,
                            field.span,
                            "`at` expects an area and a position",
                        )
                        .hint("such as `at tail tip`"),
                    ),
                }
            }
            out.set_place(id);
            out.areas.push(Area {
                id,
                within: entry.get("within").map_or(Name::NONE, |w| names.intern(w)),
                resolves: entry.items("resolves").map(|p| names.intern(p)).collect(),
                optional: entry.get("optional") == Some("yes"),
                share,
                in_field: entry.get("in-field") != Some("no"),
                plural: match entry.get("plural") {
                    Some(said) => said == "yes",
                    None => entry.id.ends_with('s'),
                },
                title: entry.get("title").map(str::to_owned),
                reads: entry
                    .get("reads")
                    .and_then(|r| r.split_once(" as "))
                    .map(|(from, to)| (names.intern(from.trim()), names.intern(to.trim()))),
                means: entry.get("means").unwrap_or_default().to_owned(),
            });
        }
        for entry in entries.iter().filter(|e| e.kind == "path") {
            out.paths.push(entry.items("areas").map(|a| names.intern(a)).collect());
        }
        out.check(entries, names, wrong);
        out
    }

    /// Every area an entry speaks of must be declared, and no area may lie within itself.
    fn check(&self, entries: &[Entry], names: &Names, wrong: &mut Diagnostics) {
        for entry in entries.iter().filter(|e| is_area(e) || e.kind == "path") {
            for key in ["within", "resolves", "areas"] {
                for item in entry.items(key) {
                    if self.get(names.find(item)).is_none() {
                        let span = entry.field(key).map_or(entry.span, |f| f.span);
                        wrong.push(
                            Diagnostic::error(
                                "unknown-area",
                                &entry.source,
                                span,
                                format!("there is no area `{item}`"),
                            )
                            .hint("`rectrix lexicon find` lists the areas"),
                        );
                    }
                }
            }
            let mut at = names.find(&entry.id);
            for _ in 0..=self.areas.len() {
                at = self.parent(at);
            }
            if at.is_some() {
                wrong.push(Diagnostic::error(
                    "area-loop",
                    &entry.source,
                    entry.span,
                    format!("`{}` lies within itself", entry.id),
                ));
            }
        }
    }

    /// What is known of an area.
    pub fn get(&self, id: Name) -> Option<&Area> {
        self.areas.get(self.order(id))
    }

    /// The next area stands under that name.
    fn set_place(&mut self, id: Name) {
        let at = usize::from(id.0);
        self.index.resize(self.index.len().max(at + 1), 0);
        self.index[at] = u16::try_from(self.areas.len() + 1).unwrap_or(0);
    }

    /// The part it lies within.
    pub fn parent(&self, id: Name) -> Name {
        self.get(id).map_or(Name::NONE, |a| a.within)
    }

    /// Whether `inner` is `outer` or lies within it.
    pub fn covers(&self, outer: Name, inner: Name) -> bool {
        let mut at = inner;
        while at.is_some() {
            if at == outer {
                return true;
            }
            at = self.parent(at);
        }
        false
    }

    /// The area at a position of another ("tip of the tail"), where it has a name of its own.
    pub fn at(&self, area: Name, position: Name) -> Option<Name> {
        self.at.get(&(area, position)).copied()
    }

    /// What to call an area, for people.
    pub fn title(&self, id: Name, names: &Names) -> String {
        match self.get(id).and_then(|a| a.title.as_ref()) {
            Some(title) => title.clone(),
            None => names.text(id).replace('-', " "),
        }
    }

    /// The place of an area in topographical order.
    pub fn order(&self, id: Name) -> usize {
        let place = self.index.get(usize::from(id.0)).copied().unwrap_or(0);
        usize::from(place).checked_sub(1).unwrap_or(usize::MAX)
    }

    /// Every area, in topographical order.
    pub fn iter(&self) -> impl Iterator<Item = &Area> {
        self.areas.iter()
    }
}
