//! How English words bend: the regular endings, by spelling alone.
//!
//! | ending | examples |
//! |---|---|
//! | plural | `wing` wings, `patch` patches, `belly` bellies |
//! | -ing, -ed, -s | `bob` bobbing bobbed bobs, `wade` wading waded wades |
//! | -er | `brown` browner, `white` whiter, `red` redder |
//! | -ish | `red` reddish, `white` whitish, `grey` greyish |
//! | -ed from a noun | `crown` crowned, `belly` bellied, `leg` legged, `face` faced |
//!
//! Irregular forms stand in the lexicon.

fn is_vowel(c: u8) -> bool {
    matches!(c, b'a' | b'e' | b'i' | b'o' | b'u')
}

/// A short stressed syllable doubles its last consonant: bob, red, leg, flit.
fn doubles(word: &str) -> bool {
    let b = word.as_bytes();
    let n = b.len();
    let vowels = b.iter().filter(|&&c| is_vowel(c)).count();
    n >= 3
        && !is_vowel(b[n - 1])
        && !matches!(b[n - 1], b'w' | b'x' | b'y')
        && is_vowel(b[n - 2])
        && !is_vowel(b[n - 3])
        && vowels == 1
}

/// Whether a final `y` turns into `i`.
fn y_after_consonant(word: &str) -> bool {
    let b = word.as_bytes();
    b.len() >= 2 && b[b.len() - 1] == b'y' && !is_vowel(b[b.len() - 2])
}

/// The plural of a noun, or the third person of a verb.
pub fn with_s(word: &str) -> String {
    if y_after_consonant(word) {
        format!("{}ies", &word[..word.len() - 1])
    } else if ["s", "x", "z", "ch", "sh"].iter().any(|e| word.ends_with(e)) {
        format!("{word}es")
    } else {
        format!("{word}s")
    }
}

/// The plural of a form, bent at its last word; none where that word is a plural already.
pub fn plural(form: &str) -> Option<String> {
    const ALSO: [&str; 2] = ["mice", "ae"];
    let last = form.rsplit([' ', '-']).next().unwrap_or(form);
    let singular = ["ss", "us", "is"].iter().any(|e| last.ends_with(e));
    let is_plural = (last.ends_with('s') && !singular) || ALSO.iter().any(|e| last.ends_with(e));
    (!is_plural).then(|| bend_last(form, with_s))
}

/// The participle in -ing.
pub fn with_ing(word: &str) -> String {
    if let Some(stem) = word.strip_suffix("ie") {
        format!("{stem}ying")
    } else if word.ends_with('e') && !word.ends_with("ee") && !word.ends_with("oe") {
        format!("{}ing", &word[..word.len() - 1])
    } else if doubles(word) {
        format!("{word}{}ing", &word[word.len() - 1..])
    } else {
        format!("{word}ing")
    }
}

/// With an ending of e and one letter more.
fn with_e(word: &str, last: char) -> String {
    if word.ends_with('e') {
        format!("{word}{last}")
    } else if y_after_consonant(word) {
        format!("{}ie{last}", &word[..word.len() - 1])
    } else if doubles(word) {
        format!("{word}{}e{last}", &word[word.len() - 1..])
    } else {
        format!("{word}e{last}")
    }
}

/// The past in -ed, and the adjective from a noun.
pub fn with_ed(word: &str) -> String {
    with_e(word, 'd')
}

/// The comparative.
pub fn with_er(word: &str) -> String {
    with_e(word, 'r')
}

/// The weakened adjective in -ish.
pub fn with_ish(word: &str) -> String {
    if let Some(stem) = word.strip_suffix('e') {
        format!("{stem}ish")
    } else if doubles(word) {
        format!("{word}{}ish", &word[word.len() - 1..])
    } else {
        format!("{word}ish")
    }
}

/// Bends the first word of a phrase.
pub fn bend_first(phrase: &str, bend: fn(&str) -> String) -> String {
    match phrase.split_once([' ', '-']) {
        Some((first, rest)) => format!("{} {rest}", bend(first)),
        None => bend(phrase),
    }
}

/// Bends the last word of a phrase.
pub fn bend_last(phrase: &str, bend: fn(&str) -> String) -> String {
    match phrase.rsplit_once([' ', '-']) {
        Some((rest, last)) => format!("{rest} {}", bend(last)),
        None => bend(phrase),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[rstest]
    #[case(with_s, "wing", "wings")]
    #[case(with_s, "patch", "patches")]
    #[case(with_s, "belly", "bellies")]
    #[case(with_s, "grey", "greys")]
    #[case(with_ing, "bob", "bobbing")]
    #[case(with_ing, "wade", "wading")]
    #[case(with_ing, "flick", "flicking")]
    #[case(with_ing, "lie", "lying")]
    #[case(with_ing, "feed", "feeding")]
    #[case(with_ed, "crown", "crowned")]
    #[case(with_ed, "belly", "bellied")]
    #[case(with_ed, "leg", "legged")]
    #[case(with_ed, "face", "faced")]
    #[case(with_ed, "eye", "eyed")]
    #[case(with_ed, "rump", "rumped")]
    #[case(with_er, "brown", "browner")]
    #[case(with_er, "white", "whiter")]
    #[case(with_er, "red", "redder")]
    #[case(with_ish, "red", "reddish")]
    #[case(with_ish, "white", "whitish")]
    #[case(with_ish, "grey", "greyish")]
    #[case(with_ish, "blue", "bluish")]
    #[case(with_ish, "brown", "brownish")]
    fn bends(#[case] how: fn(&str) -> String, #[case] word: &str, #[case] expected: &str) {
        assert_eq!(how(word), expected);
    }

    #[rstest]
    #[case("wing bar", Some("wing bars"))]
    #[case("tarsus", Some("tarsuses"))]
    #[case("iris", Some("irises"))]
    #[case("tail-feathers", None)]
    #[case("titmice", None)]
    fn a_plural_has_no_plural(#[case] form: &str, #[case] expected: Option<&str>) {
        assert_eq!(plural(form).as_deref(), expected);
    }

    #[test]
    fn phrases_bend_at_one_end() {
        assert_eq!(bend_first("fan the tail", with_s), "fans the tail");
        assert_eq!(bend_last("wing bar", with_s), "wing bars");
    }
}
