//! A reading as JSON on one line, the way that most of them are written: the bytes that serde gives of the
//! same shapes, with fewer instructions. What is rare goes by serde.

use super::model::{Bird, Bytes, NoteReading, SetAside, TraitOut};
use serde::Serialize;

impl NoteReading<'_> {
    /// Writes it as JSON on one line, without a line end: the same bytes as by `serde_json`, faster.
    ///
    /// # Errors
    /// None in practice: everything published has a shape that can be written.
    pub fn write_json(&self, out: &mut Vec<u8>) -> serde_json::Result<()> {
        text(out, "{\"note\":{\"id\":", self.note.id)?;
        text(out, ",\"text\":", self.note.text)?;
        out.push(b'}');
        text(out, ",\"region\":", self.region)?;
        text(out, ",\"region_title\":", self.region_title)?;
        put(out, ",\"yardsticks\":", &self.yardsticks)?;
        list(out, ",\"birds\":", &self.birds, Bird::write_json)?;
        put(out, ",\"unplaced\":", &self.unplaced)?;
        list(out, ",\"set_aside\":", &self.set_aside, SetAside::write_json)?;
        put(out, ",\"repairs\":", &self.repairs)?;
        out.push(b'}');
        Ok(())
    }
}

impl Bird<'_> {
    fn write_json(&self, out: &mut Vec<u8>) -> serde_json::Result<()> {
        put(out, "{\"bird\":", &self.bird)?;
        list(out, ",\"traits\":", &self.traits, TraitOut::write_json)?;
        put(out, ",\"named\":", &self.named)?;
        list(out, ",\"gaps\":", &self.gaps, |gap, out| {
            out.extend_from_slice(gap.ready.as_bytes());
            Ok(())
        })?;
        put(out, ",\"candidates\":", &self.candidates)?;
        put(out, ",\"none_of_these\":", &self.none_of_these)?;
        put(out, ",\"look_next\":", &self.look_next)?;
        out.push(b'}');
        Ok(())
    }
}

impl TraitOut<'_> {
    fn write_json(&self, out: &mut Vec<u8>) -> serde_json::Result<()> {
        let mark = &self.mark;
        put(out, "{\"bird\":", &self.bird)?;
        text(out, ",\"area\":", mark.area)?;
        text(out, ",\"aspect\":", mark.aspect)?;
        text(out, ",\"value\":", &mark.value)?;
        text(out, ",\"polarity\":", mark.polarity.text())?;
        text(out, ",\"certainty\":", mark.certainty.text())?;
        let some = [
            (",\"tone\":", mark.tone),
            (",\"extent\":", mark.extent),
            (",\"position\":", mark.position),
            (",\"relation\":", mark.relation),
            (",\"against\":", mark.against),
        ];
        some.into_iter().try_for_each(|(name, said)| maybe(out, name, said))?;
        if let Some(mass) = &mark.mass_g {
            put(out, ",\"mass_g\":", mass)?;
        }
        maybe(out, ",\"written_area\":", mark.written_area)?;
        maybe(out, ",\"pato\":", mark.pato)?;
        text(out, ",\"as_written\":", &mark.as_written)?;
        place(out, ",\"span\":", self.span);
        list(out, ",\"parts\":", &self.parts, |part, out| {
            place(out, "", *part);
            Ok(())
        })?;
        text(out, ",\"rule\":", self.rule)?;
        out.push(b'}');
        Ok(())
    }
}

impl SetAside<'_> {
    fn write_json(&self, out: &mut Vec<u8>) -> serde_json::Result<()> {
        text(out, "{\"text\":", self.text)?;
        place(out, ",\"span\":", self.span);
        text(out, ",\"reason\":", &self.reason)?;
        out.push(b'}');
        Ok(())
    }
}

/// A field, by serde.
fn put<T: Serialize + ?Sized>(out: &mut Vec<u8>, name: &str, value: &T) -> serde_json::Result<()> {
    out.extend_from_slice(name.as_bytes());
    serde_json::to_writer(out, value)
}

/// A field that is a text. Almost none has a sign that must be escaped; looking for one in all bytes at
/// once is quicker than writing byte by byte.
fn text(out: &mut Vec<u8>, name: &str, value: &str) -> serde_json::Result<()> {
    let odd = |b: u8| b < b' ' || b == b'"' || b == b'\\';
    if value.bytes().fold(false, |any, b| any | odd(b)) {
        return put(out, name, value);
    }
    out.extend_from_slice(name.as_bytes());
    out.push(b'"');
    out.extend_from_slice(value.as_bytes());
    out.push(b'"');
    Ok(())
}

/// A text that may be missing.
fn maybe(out: &mut Vec<u8>, name: &str, value: Option<&str>) -> serde_json::Result<()> {
    value.map_or(Ok(()), |value| text(out, name, value))
}

/// A field that is a range of bytes.
fn place(out: &mut Vec<u8>, name: &str, [start, end]: Bytes) {
    let mut digits = itoa::Buffer::new();
    out.extend_from_slice(name.as_bytes());
    out.push(b'[');
    out.extend_from_slice(digits.format(start).as_bytes());
    out.push(b',');
    out.extend_from_slice(digits.format(end).as_bytes());
    out.push(b']');
}

/// A field that is a list.
fn list<T>(
    out: &mut Vec<u8>,
    name: &str,
    items: &[T],
    write: impl Fn(&T, &mut Vec<u8>) -> serde_json::Result<()>,
) -> serde_json::Result<()> {
    out.extend_from_slice(name.as_bytes());
    out.push(b'[');
    for (n, item) in items.iter().enumerate() {
        out.extend_from_slice(if n > 0 { b"," } else { b"" });
        write(item, out)?;
    }
    out.push(b']');
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::super::build::{Analyst, Options};
    use crate::built_in;
    use crate::matching::Checklist;

    #[test]
    fn the_bytes_are_those_of_serde() {
        let knowledge = built_in::knowledge();
        let options = Options { top: 2, checklist: Checklist::all(&knowledge.accounts) };
        let analyst = Analyst::new(&knowledge, "europe", options).unwrap();
        let notes = [
            "",
            "small, robin-sized, \"brown\" bird\twith pale brownish wing bars \\ no crest; brest whtie",
            "the male black, the female 25-30 cm long, hood dark, xyzzy",
        ];
        for note in notes {
            let reading = analyst.analyse("1", note);
            let mut line = Vec::new();
            reading.write_json(&mut line).unwrap();
            assert_eq!(line, serde_json::to_vec(&reading).unwrap(), "{note}");
        }
    }
}
