//! `compare`: look-alikes side by side.

use super::args::{Args, CompareArgs, CompareFormat};
use super::failure::Failure;
use super::files::knowledge;
use super::note_commands::{json_failure, layout_for, print, region};
use rectrix::matching::Matcher;
use rectrix::matching::species::SpeciesNames;
use rectrix::output::compare::{compare as comparison, compare_view};
use std::process::ExitCode;

/// How many names are offered for one that is not known.
const MOST_NEAREST: usize = 3;

/// Sets species side by side.
pub fn compare(args: &Args, wanted: &CompareArgs) -> Result<ExitCode, Failure> {
    let knowledge = knowledge(&args.lexicon)?;
    let region = region(&knowledge, wanted.region.as_deref())?;
    let names = SpeciesNames::of(&knowledge.accounts);
    let mut species = Vec::new();
    for name in &wanted.species {
        let found = names.find(name).ok_or_else(|| unknown(&names, name))?;
        if !species.contains(&found) {
            species.push(found);
        }
    }
    if species.len() < 2 {
        return Err(Failure::Bad(
            "two different species are needed to compare".to_owned(),
            "put names of several words in quotes, one after the other".to_owned(),
        ));
    }
    let matcher = Matcher::new(&knowledge)?;
    let reader = knowledge.reader(&region);
    let noted = wanted.note.as_deref().map(|text| (text, reader.read(text).traits));
    let note = noted.as_ref().map(|(text, traits)| (*text, traits.as_slice()));
    let found = comparison(&knowledge, &matcher, &species, wanted.form.as_deref(), note);
    match wanted.format {
        CompareFormat::Text => {
            print(&compare_view(&found, layout_for(wanted.region.is_some()), note.is_some()))
        }
        CompareFormat::Json => {
            let text = serde_json::to_string_pretty(&found).map_err(json_failure)?;
            print(&format!("{text}\n"))
        }
    }
}

fn unknown(names: &SpeciesNames<'_>, name: &str) -> Failure {
    let hint = match names.nearest(name, MOST_NEAREST).as_slice() {
        [] => "give an English or scientific name of a species that has an account".to_owned(),
        near => format!("the nearest names are: {}", near.join(", ")),
    };
    Failure::Bad(format!("`{name}` matches no account"), hint)
}
