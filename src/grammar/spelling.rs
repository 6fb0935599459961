//! Mending the spelling of unknown words.
//!
//! A word is mended only if
//! - it is at least four letters long, not as long as no word is, and in no list of the lexicon, the ordinary words included;
//! - it is a verb without its last letter ("flickin"), or one form of a kind that may be mended is nearer than any
//!   other (restricted edits: a letter more, less, wrong, or two swapped), within a distance that grows with its length;
//! - one of the three words on either side is itself a word of such a kind.
//!
//! So "brest" next to "white" becomes breast, and alone it stays what it is.

use super::joins::LONGEST_MENDED;
use super::known::Known;
use super::look::Look;
use super::remembered::Remembered;
use super::tokens::{Basics, NO_WORD, Token};
use crate::lexicon::Lexicon;
use crate::lexicon::kinds::KindSet;
use crate::lexicon::vocabulary::{Node, WordId, normalise_into};
use crate::rules::program::small;

/// How many words on either side may lend support.
const NEAR: usize = 3;

/// The mended words among `tokens`: the token's place and the word it is read as.
pub fn mend(
    text: &str,
    lexicon: &Lexicon,
    basics: &Basics,
    tokens: &[Token],
    mended: &mut Remembered<Option<WordId>>,
) -> Vec<(usize, WordId)> {
    let able = lexicon.mendable;
    let mut scratch = String::new();
    let mut out = Vec::new();
    for (i, token) in tokens.iter().enumerate() {
        // A word that starts some longer form is no misspelling.
        let known = token.first != NO_WORD && lexicon.vocabulary.starts_form(token.first);
        if token.kinds != basics.unknown()
            || known
            || token.span.end - token.span.start > LONGEST_MENDED
            || !supported(tokens, i, able | lexicon.of_birds)
        {
            continue;
        }
        normalise_into(token.span.of(text), &mut scratch);
        let nearest = || {
            dropped_g(lexicon, &scratch)
                .or_else(|| nearest_form(lexicon, basics.forms(lexicon), &scratch))
        };
        if let Some(word) = mended.of(&scratch, nearest) {
            out.push((i, word));
        }
    }
    out
}

/// The verb that a word is, written as it is often said: "flickin".
fn dropped_g(lexicon: &Lexicon, word: &str) -> Option<WordId> {
    let vocabulary = &lexicon.vocabulary;
    let whole = vocabulary.word(&format!("{}ing", word.strip_suffix("in")?))?;
    let known = Known::of(lexicon, whole);
    (known.kinds & vocabulary.verbs != 0).then_some(whole)
}

/// Whether one of the nearest words on either side, signs not counted, is of such a kind.
fn supported(tokens: &[Token], i: usize, able: KindSet) -> bool {
    let word = |t: &&Token| t.node != 0 || t.first != NO_WORD || t.is_word;
    let near = |t: &Token| t.kinds & able != 0;
    let before = tokens[..i].iter().rev().filter(word).take(NEAR).any(near);
    before || tokens[i + 1..].iter().filter(word).take(NEAR).any(near)
}

/// How many edits a word of that length may be away.
const fn most_edits(len: usize) -> usize {
    match len {
        0..=3 => 0,
        4..=6 => 1,
        7..=10 => 2,
        _ => 3,
    }
}

/// How many edits two spellings are apart. What they start and end with alike needs none, and leaving it out
/// leaves little to compare: a tenth of the instructions.
fn edits_between(word: &str, form: &str) -> usize {
    let alike = |(a, b): &(char, char)| a == b;
    let start = word.chars().zip(form.chars()).take_while(alike).map(|(c, _)| c.len_utf8()).sum();
    let (word, form): (&str, &str) = (&word[start..], &form[start..]);
    let ends = word.chars().rev().zip(form.chars().rev());
    let end: usize = ends.take_while(alike).map(|(c, _)| c.len_utf8()).sum();
    strsim::osa_distance(&word[..word.len() - end], &form[..form.len() - end])
}

/// How far apart two spellings are: edits, where two letters changing places count for less than a
/// letter too many or too few, and a wrong first letter counts for more.
fn distance(word: &str, form: &str, edits: usize) -> f64 {
    let edits = u8::try_from(edits).unwrap_or(u8::MAX);
    let mut letters: Vec<u8> = word.bytes().collect();
    let mut of_form: Vec<u8> = form.bytes().collect();
    letters.sort_unstable();
    of_form.sort_unstable();
    let same_letters = if letters == of_form { -0.4 } else { 0.0 };
    let first = if word.as_bytes().first() == form.as_bytes().first() { 0.0 } else { 0.3 };
    let surplus = if letters.len() > of_form.len() { 0.15 } else { 0.0 };
    let slipped = if slipped_key(word, form) { -0.1 } else { 0.0 };
    f64::from(edits) + same_letters + first + surplus + slipped
        - 0.2 * strsim::jaro_winkler(word, form)
}

/// Whether two spellings start alike: people seldom get the first letter wrong, but they drop it, or
/// swap it with the second.
fn same_start(word: &str, form: &str) -> bool {
    let (w, f) = (word.as_bytes(), form.as_bytes());
    let swapped = w.len() > 1 && f.len() > 1 && w[0] == f[1] && w[1] == f[0];
    w.first() == f.first() || swapped || f.get(1..) == Some(w) || w.get(1..) == Some(f)
}

/// Whether one letter was hit beside the right key.
fn slipped_key(word: &str, form: &str) -> bool {
    const ROWS: [&str; 3] = ["qwertyuiop", "asdfghjkl", "zxcvbnm"];
    let place = |c: char| ROWS.iter().find_map(|row| row.find(c).map(|at| (*row, at)));
    let mut wrong = word.chars().zip(form.chars()).filter(|(a, b)| a != b);
    let (one, more) = (wrong.next(), wrong.next());
    match (one, more, word.len() == form.len()) {
        (Some((a, b)), None, true) => match (place(a), place(b)) {
            (Some((row, i)), Some((other, j))) => row == other && i.abs_diff(j) == 1,
            _ => false,
        },
        _ => false,
    }
}

/// The forms that misspelt words may be mended into, found by how they start and by their letters, so
/// that few of them have to be compared.
#[derive(Clone, Debug, Default)]
pub struct Forms {
    list: Vec<Candidate>,
    /// By first letter, and by second letter, places in the list.
    starting: Box<[Vec<u32>]>,
    second: Box<[Vec<u32>]>,
}

#[derive(Clone, Debug)]
struct Candidate {
    word: WordId,
    node: Node,
    look: Look,
}

impl Forms {
    /// Those of a lexicon.
    pub fn of(lexicon: &Lexicon) -> Self {
        let empty = || vec![Vec::new(); 256].into_boxed_slice();
        let mut out = Self { list: Vec::new(), starting: empty(), second: empty() };
        for (word, node) in lexicon.vocabulary.single_word_nodes() {
            let form = lexicon.vocabulary.word_text(word);
            if form.len() < 4 || written_kinds(lexicon, node) & lexicon.mendable == 0 {
                continue;
            }
            let place = u32::try_from(out.list.len()).unwrap_or(0);
            out.starting[usize::from(form.as_bytes()[0])].push(place);
            out.second[usize::from(form.as_bytes()[1])].push(place);
            out.list.push(Candidate { word, node, look: Look::at(form) });
        }
        out
    }

    /// Those that can be at most `most` edits from `word` and start alike, in their own order.
    fn near(&self, word: &str, most: usize) -> Vec<&Candidate> {
        let [first, second, ..] = word.as_bytes() else { return Vec::new() };
        let own = Look::at(word);
        let mut places: Vec<u32> = [
            &self.starting[usize::from(*first)],
            &self.starting[usize::from(*second)],
            &self.second[usize::from(*first)],
        ]
        .into_iter()
        .flatten()
        .copied()
        .filter(|&p| {
            let look = self.list[p as usize].look;
            // The lengths alone rule out most, with less to count.
            let most = small(most);
            own.length.abs_diff(look.length) <= most
                && own.length.max(look.length) <= own.common(look) + most
        })
        .collect();
        places.sort_unstable();
        places.dedup();
        places.into_iter().map(|p| &self.list[p as usize]).collect()
    }
}

/// The one form that is nearest, if it is near enough and alone.
fn nearest_form(lexicon: &Lexicon, forms: &Forms, word: &str) -> Option<WordId> {
    let most = most_edits(word.chars().count());
    if most == 0 {
        return None;
    }
    let mut best: Option<(f64, WordId, Node)> = None;
    let mut tied = false;
    for one in forms.near(word, most) {
        let form = lexicon.vocabulary.word_text(one.word);
        if !same_start(word, form) {
            continue;
        }
        // A short form may not lose half its letters.
        let edits = edits_between(word, form);
        if edits > most || edits > most_edits(form.len()) {
            continue;
        }
        let far = distance(word, form, edits);
        match best {
            Some((b, _, n)) if (far - b).abs() < 1e-9 => tied |= !same(lexicon, n, one.node),
            Some((b, ..)) if far > b => {}
            _ => {
                tied = false;
                best = Some((far, one.word, one.node));
            }
        }
    }
    best.filter(|_| !tied).map(|(_, word, _)| word)
}

/// The kinds of a form's readings, those left out that only sound like it.
pub(super) fn written_kinds(lexicon: &Lexicon, node: Node) -> KindSet {
    let senses = lexicon.vocabulary.senses(node).iter();
    senses.filter(|s| !s.heard()).fold(0, |set, s| set | s.kind.bit())
}

/// Whether two forms are read as the same term.
fn same(lexicon: &Lexicon, a: Node, b: Node) -> bool {
    let first = |n: Node| lexicon.vocabulary.senses(n).first().map(|s| (s.kind, s.term));
    first(a) == first(b)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_alike_at_the_ends_changes_no_number_of_edits() {
        let mut words = vec![String::new()];
        for from in 0..1 + 3 + 9 + 27 + 81 {
            words.extend(["a", "b", "ö"].map(|letter| words[from].clone() + letter));
        }
        assert_eq!(words.last().map(String::as_str), Some("ööööö"));
        for a in words.iter().step_by(5) {
            for b in &words {
                assert_eq!(edits_between(a, b), strsim::osa_distance(a, b), "{a} {b}");
            }
        }
    }
}
