//! Tells cargo to build again when the lexicon changes.

fn main() {
    // include_dir! does not tell cargo about new files.
    println!("cargo:rerun-if-changed=lexicon");
}
