//! Checks against what others wrote, who never saw this library: the bird glosses of WordNet, and the
//! sound-alikes of the CMU Pronouncing Dictionary. `tests/outside/fetch.sh`, which `./check` runs first,
//! brings both into `target/outside`; nothing of them is kept here.

mod fetched;
mod glosses;
mod pronouncing;
mod sounds;
mod wordnet;
