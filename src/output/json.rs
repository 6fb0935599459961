//! JSON straight into bytes, for what there is a lot of: notes, marks, words. serde writes each sign by itself; to
//! leave these to it took a quarter of the time of a season. What is rare still goes through it.

use serde::Serialize;

/// Adds a string.
#[inline]
pub(crate) fn text(text: &str, out: &mut Vec<u8>) {
    // Without an early end the look at the bytes takes many of them at once.
    let escapes =
        text.bytes().fold(false, |found, b| found | (b < b' ') | (b == b'"') | (b == b'\\'));
    if escapes {
        value(text, out);
        return;
    }
    out.reserve(text.len() + 2);
    out.push(b'"');
    out.extend_from_slice(text.as_bytes());
    out.push(b'"');
}

/// Adds whatever serde can write.
pub(crate) fn value<T: Serialize + ?Sized>(value: &T, out: &mut Vec<u8>) {
    // Values of this program have string keys and no errors of their own, and memory takes all bytes.
    let written = serde_json::to_writer(out, value);
    debug_assert!(written.is_ok());
}

/// Adds a whole number.
pub(crate) fn number(number: u64, out: &mut Vec<u8>) {
    out.extend_from_slice(itoa::Buffer::new().format(number).as_bytes());
}

/// Adds two numbers as a list.
pub(crate) fn pair([first, second]: [u64; 2], out: &mut Vec<u8>) {
    out.push(b'[');
    number(first, out);
    out.push(b',');
    number(second, out);
    out.push(b']');
}

/// Adds a string under a name, which brings the signs before it: `,"area":`. In place, the length of the name is
/// known, and to copy it takes a store or two.
#[inline(always)]
pub(crate) fn field(name: &str, said: &str, out: &mut Vec<u8>) {
    out.extend_from_slice(name.as_bytes());
    text(said, out);
}

/// The same where there may be none.
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
        let mut out = Vec::new();
        list([[0, 1], [2, u64::MAX]], &mut out, pair);
        assert_eq!(out, serde_json::to_vec(&[[0, 1], [2, u64::MAX]]).unwrap());
    }
}
