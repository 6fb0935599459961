//! JSON written straight into a buffer.
//!
//! The same bytes as `serde_json` writes, of the shapes of this program, several times faster: names of
//! fields are not looked through for signs to be escaped, and texts eight bytes at a time.

use serde::ser::{
    Error as _, Impossible, Serialize, SerializeMap, SerializeSeq, SerializeStruct, SerializeTuple,
    Serializer,
};
use serde_json::Error;

/// Writes a value behind what is in `out`.
///
/// # Errors
/// Where a map has keys that are no texts, or an enum holds values: shapes that are not published.
pub fn to_buffer<T: Serialize + ?Sized>(value: &T, out: &mut Vec<u8>) -> Result<(), Error> {
    value.serialize(Json { out })
}

/// Whether one of eight bytes must be escaped: a quote, a backslash or a control character.
const fn eight_need_escape(x: u64) -> bool {
    const ONES: u64 = u64::MAX / 255;
    const HIGHS: u64 = ONES << 7;
    // Taking n from a byte below n borrows, which sets its highest bit; that of others was not set before.
    let quote = x ^ (ONES * b'"' as u64);
    let backslash = x ^ (ONES * b'\\' as u64);
    let below = x.wrapping_sub(ONES * 0x20) & !x;
    let zero = quote.wrapping_sub(ONES) & !quote | backslash.wrapping_sub(ONES) & !backslash;
    (below | zero) & HIGHS != 0
}

/// The bytes of a piece as a number: all of its eight, or fewer, the rest filled with spaces.
fn eight(piece: &[u8]) -> u64 {
    match piece {
        &[a, b, c, d, e, f, g, h, ..] => u64::from_le_bytes([a, b, c, d, e, f, g, h]),
        _ => piece.iter().fold(u64::from_le_bytes([b' '; 8]), |x, &b| x << 8 | u64::from(b)),
    }
}

fn needs_escape(text: &[u8]) -> bool {
    let mut pieces = text.chunks_exact(8);
    if pieces.by_ref().any(|piece| eight_need_escape(eight(piece))) {
        return true;
    }
    // The last eight bytes, some of them for the second time.
    let rest = if text.len() < 8 { text } else { &text[text.len() - 8..] };
    eight_need_escape(eight(rest))
}

/// Writes a text as a JSON string.
pub fn text(text: &str, out: &mut Vec<u8>) -> Result<(), Error> {
    if needs_escape(text.as_bytes()) {
        return serde_json::to_writer(out, text);
    }
    out.reserve(text.len() + 2);
    out.push(b'"');
    out.extend_from_slice(text.as_bytes());
    out.push(b'"');
    Ok(())
}

struct Json<'o> {
    out: &'o mut Vec<u8>,
}

/// Items of a list, or fields of an object.
struct Items<'o> {
    out: &'o mut Vec<u8>,
    first: bool,
    end: u8,
}

impl Items<'_> {
    #[inline(always)]
    fn next(&mut self) {
        if !std::mem::replace(&mut self.first, false) {
            self.out.push(b',');
        }
    }

    fn item<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Error> {
        self.next();
        value.serialize(Json { out: self.out })
    }

    fn end(self) -> Result<(), Error> {
        self.out.push(self.end);
        Ok(())
    }
}

impl<'o> Json<'o> {
    fn open(self, start: u8, end: u8) -> Items<'o> {
        self.out.push(start);
        Items { out: self.out, first: true, end }
    }

    fn other<T: Serialize>(self, value: T) -> Result<(), Error> {
        serde_json::to_writer(self.out, &value)
    }

    fn bytes(self, bytes: &[u8]) -> Result<(), Error> {
        self.out.extend_from_slice(bytes);
        Ok(())
    }
}

fn unpublished() -> Error {
    Error::custom("no published value has this shape")
}

impl<'o> Serializer for Json<'o> {
    type Ok = ();
    type Error = Error;
    type SerializeSeq = Items<'o>;
    type SerializeTuple = Items<'o>;
    type SerializeTupleStruct = Impossible<(), Error>;
    type SerializeTupleVariant = Impossible<(), Error>;
    type SerializeMap = Items<'o>;
    type SerializeStruct = Items<'o>;
    type SerializeStructVariant = Impossible<(), Error>;

    fn serialize_bool(self, v: bool) -> Result<(), Error> {
        self.bytes(if v { b"true" } else { b"false" })
    }
    fn serialize_i8(self, v: i8) -> Result<(), Error> {
        self.other(v)
    }
    fn serialize_i16(self, v: i16) -> Result<(), Error> {
        self.other(v)
    }
    fn serialize_i32(self, v: i32) -> Result<(), Error> {
        self.other(v)
    }
    fn serialize_i64(self, v: i64) -> Result<(), Error> {
        self.other(v)
    }
    fn serialize_u8(self, v: u8) -> Result<(), Error> {
        self.serialize_u64(u64::from(v))
    }
    fn serialize_u16(self, v: u16) -> Result<(), Error> {
        self.serialize_u64(u64::from(v))
    }
    fn serialize_u32(self, v: u32) -> Result<(), Error> {
        self.serialize_u64(u64::from(v))
    }
    fn serialize_u64(self, v: u64) -> Result<(), Error> {
        self.bytes(itoa::Buffer::new().format(v).as_bytes())
    }
    fn serialize_f32(self, v: f32) -> Result<(), Error> {
        self.other(v)
    }
    fn serialize_f64(self, v: f64) -> Result<(), Error> {
        self.other(v)
    }
    fn serialize_char(self, v: char) -> Result<(), Error> {
        self.other(v)
    }
    fn serialize_str(self, v: &str) -> Result<(), Error> {
        text(v, self.out)
    }
    fn serialize_bytes(self, v: &[u8]) -> Result<(), Error> {
        self.other(v)
    }
    fn serialize_none(self) -> Result<(), Error> {
        self.bytes(b"null")
    }
    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Result<(), Error> {
        value.serialize(self)
    }
    fn serialize_unit(self) -> Result<(), Error> {
        self.bytes(b"null")
    }
    fn serialize_unit_struct(self, _: &'static str) -> Result<(), Error> {
        self.bytes(b"null")
    }
    fn serialize_unit_variant(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
    ) -> Result<(), Error> {
        text(variant, self.out)
    }
    fn serialize_newtype_struct<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        value: &T,
    ) -> Result<(), Error> {
        value.serialize(self)
    }
    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: &T,
    ) -> Result<(), Error> {
        Err(unpublished())
    }
    fn serialize_seq(self, _: Option<usize>) -> Result<Items<'o>, Error> {
        Ok(self.open(b'[', b']'))
    }
    fn serialize_tuple(self, _: usize) -> Result<Items<'o>, Error> {
        Ok(self.open(b'[', b']'))
    }
    fn serialize_tuple_struct(
        self,
        _: &'static str,
        _: usize,
    ) -> Result<Impossible<(), Error>, Error> {
        Err(unpublished())
    }
    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Impossible<(), Error>, Error> {
        Err(unpublished())
    }
    fn serialize_map(self, _: Option<usize>) -> Result<Items<'o>, Error> {
        Ok(self.open(b'{', b'}'))
    }
    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Items<'o>, Error> {
        Ok(self.open(b'{', b'}'))
    }
    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Impossible<(), Error>, Error> {
        Err(unpublished())
    }
}

impl SerializeSeq for Items<'_> {
    type Ok = ();
    type Error = Error;
    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Error> {
        self.item(value)
    }
    fn end(self) -> Result<(), Error> {
        Items::end(self)
    }
}

impl SerializeTuple for Items<'_> {
    type Ok = ();
    type Error = Error;
    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Error> {
        self.item(value)
    }
    fn end(self) -> Result<(), Error> {
        Items::end(self)
    }
}

impl SerializeMap for Items<'_> {
    type Ok = ();
    type Error = Error;
    fn serialize_key<T: Serialize + ?Sized>(&mut self, key: &T) -> Result<(), Error> {
        self.next();
        let start = self.out.len();
        key.serialize(Json { out: self.out })?;
        if self.out.get(start) == Some(&b'"') { Ok(()) } else { Err(unpublished()) }
    }
    fn serialize_value<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Error> {
        self.out.push(b':');
        value.serialize(Json { out: self.out })
    }
    fn end(self) -> Result<(), Error> {
        Items::end(self)
    }
}

impl SerializeStruct for Items<'_> {
    type Ok = ();
    type Error = Error;
    // Inlined, the name is known, and writing it takes an instruction or two.
    #[inline(always)]
    fn serialize_field<T: Serialize + ?Sized>(
        &mut self,
        name: &'static str,
        value: &T,
    ) -> Result<(), Error> {
        self.out.extend_from_slice(if self.first { b"\"" } else { b",\"" });
        self.first = false;
        self.out.extend_from_slice(name.as_bytes());
        self.out.extend_from_slice(b"\":");
        value.serialize(Json { out: self.out })
    }
    fn end(self) -> Result<(), Error> {
        Items::end(self)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde::Serialize;
    use std::collections::BTreeMap;

    #[derive(Serialize)]
    enum Word {
        Plain,
    }

    #[derive(Serialize)]
    struct Inner<'a> {
        text: &'a str,
        #[serde(skip_serializing_if = "Option::is_none")]
        maybe: Option<f32>,
    }

    #[derive(Serialize)]
    struct Outer<'a> {
        number: u64,
        less: i16,
        #[serde(flatten)]
        inner: Inner<'a>,
        list: Vec<[usize; 2]>,
        none: Option<u8>,
        yes: bool,
        word: Word,
        map: BTreeMap<&'a str, char>,
    }

    #[test]
    fn the_bytes_are_those_of_serde_json() {
        let signs: Vec<String> = (0..0x80u8).map(|b| format!("1234567{}8", b as char)).collect();
        let more = ["", "a", "black", "\"", "Möwe 🐦 with \u{2028}", "a\\b and\nmore than eight"];
        for text in more.into_iter().chain(signs.iter().map(String::as_str)) {
            let value = Outer {
                number: 18_446_744_073_709_551_615,
                less: -3,
                inner: Inner { text, maybe: Some(0.1) },
                list: vec![[0, 10], [99, 100]],
                none: None,
                yes: true,
                word: Word::Plain,
                map: BTreeMap::from([(text, 'x')]),
            };
            let mut out = Vec::new();
            to_buffer(&value, &mut out).unwrap();
            assert_eq!(String::from_utf8(out).unwrap(), serde_json::to_string(&value).unwrap());
        }
    }

    #[test]
    fn keys_that_are_no_texts_are_refused() {
        assert!(to_buffer(&BTreeMap::from([(1, 2)]), &mut Vec::new()).is_err());
    }
}
