//! JSON straight into bytes, for what there is a lot of: notes, marks, words. serde writes each sign by itself; to
//! leave these to it took a quarter of the time of a season. What is rare still goes through it.

use super::digits::Digits;
use serde::Serialize;

/// Adds a string.
#[inline]
pub(crate) fn text(text: &str, out: &mut Vec<u8>) {
    if has_escapes(text.as_bytes()) {
        value(text, out);
    } else {
        plain(text, out);
    }
}

/// Adds a string in which nothing has to be escaped.
pub(crate) fn plain(text: &str, out: &mut Vec<u8>) {
    out.push(b'"');
    out.extend_from_slice(text.as_bytes());
    out.push(b'"');
}

/// Whether anything in a text has to be escaped. Eight bytes are looked at together; the last eight of a text may be
/// looked at twice, and those of a short one are put together.
#[inline]
fn has_escapes(text: &[u8]) -> bool {
    let any = match (text.last_chunk::<8>(), text.first_chunk::<4>(), text.last_chunk::<4>()) {
        (Some(last), ..) => {
            let words = text.as_chunks::<8>().0.iter();
            words.fold(escaped(*last), |any, eight| any | escaped(*eight))
        }
        (None, Some(&[a, b, c, d]), Some(&[e, f, g, h])) => escaped([a, b, c, d, e, f, g, h]),
        _ => {
            let mut eight = [b' '; 8];
            for (to, from) in eight.iter_mut().zip(text) {
                *to = *from;
            }
            escaped(eight)
        }
    };
    any != 0
}

/// Not zero where one of eight bytes has to be escaped: below a space, a quotation mark, a backslash.
#[inline]
const fn escaped(eight: [u8; 8]) -> u64 {
    const ONES: u64 = u64::from_ne_bytes([1; 8]);
    let word = u64::from_ne_bytes(eight);
    let quotes = word ^ (ONES * b'"' as u64);
    let slashes = word ^ (ONES * b'\\' as u64);
    // A byte below what is taken from it borrows its highest bit, which it has not itself.
    let below = word.wrapping_sub(ONES * b' ' as u64) & !word;
    let quote = quotes.wrapping_sub(ONES) & !quotes;
    let slash = slashes.wrapping_sub(ONES) & !slashes;
    (below | quote | slash) & (ONES << 7)
}

/// Adds whatever serde can write.
pub(crate) fn value<T: Serialize + ?Sized>(value: &T, out: &mut Vec<u8>) {
    // Values of this program have string keys and no errors of their own, and memory takes all bytes.
    let written = serde_json::to_writer(out, value);
    debug_assert!(written.is_ok());
}

/// Adds a whole number.
pub(crate) fn number(number: u64, out: &mut Vec<u8>) {
    let mut digits = Digits::new();
    digits.number(number);
    out.extend_from_slice(digits.bytes());
}

/// Adds two numbers as a list.
pub(crate) fn pair([first, second]: [u64; 2], out: &mut Vec<u8>) {
    let mut list = Digits::new();
    list.signs(b"[");
    list.number(first);
    list.signs(b",");
    list.number(second);
    list.signs(b"]");
    out.extend_from_slice(list.bytes());
}

/// Adds a string under a name, which brings the signs before it: `,"area":`. In place, the length of the name is
/// known, and to copy it takes a store or two.
#[inline(always)]
pub(crate) fn field(name: &str, said: &str, out: &mut Vec<u8>) {
    out.extend_from_slice(name.as_bytes());
    text(said, out);
}

/// The same, of a string in which nothing has to be escaped.
pub(crate) fn word(name: &str, said: &str, out: &mut Vec<u8>) {
    out.extend_from_slice(name.as_bytes());
    plain(said, out);
}

/// As [`field`], where there may be none.
#[inline(always)]
pub(crate) fn maybe(name: &str, said: Option<&str>, out: &mut Vec<u8>) {
    if let Some(said) = said {
        field(name, said, out);
    }
}

/// Adds a list, each item by `write`.
pub(crate) fn list<T>(
    items: impl IntoIterator<Item = T>,
    out: &mut Vec<u8>,
    mut write: impl FnMut(T, &mut Vec<u8>),
) {
    out.push(b'[');
    for (n, item) in items.into_iter().enumerate() {
        if n > 0 {
            out.push(b',');
        }
        write(item, out);
    }
    out.push(b']');
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_bytes_are_those_of_serde() {
        for sample in ["", "black cap", "a \"hood\"", "\\", "two\nlines\u{1}", "Möwe 🐦", "\u{7f}"]
        {
            let mut out = Vec::new();
            text(sample, &mut out);
            assert_eq!(String::from_utf8(out).unwrap(), serde_json::to_string(sample).unwrap());
        }
        // Every sign at every place of texts of every length around a step of the look.
        for sign in ["\u{1f}", "\"", "\\", "\0", " ", "!", "#", "[", "]", "\u{7f}", "é", "\u{a2}"]
        {
            for length in 0..20 {
                for at in 0..=length {
                    let sample = format!("{}{sign}{}", "a".repeat(at), "z".repeat(length - at));
                    let mut out = Vec::new();
                    text(&sample, &mut out);
                    assert_eq!(out, serde_json::to_vec(&sample).unwrap(), "{sample:?}");
                }
            }
        }
        let mut out = Vec::new();
        list([[0, 1], [2, u64::MAX]], &mut out, pair);
        assert_eq!(out, serde_json::to_vec(&[[0, 1], [2, u64::MAX]]).unwrap());
    }
}
