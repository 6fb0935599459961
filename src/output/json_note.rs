//! A reading as JSON on one line: the bytes that serde gives of the same shapes, with fewer instructions.

use super::json::{field, list, maybe, number, pair, value, word};
use super::model::{Bird, Bytes, Mark, NoteReading, SetAside, TraitOut};
use serde::Serialize;

impl NoteReading<'_> {
    /// Writes it as JSON on one line, without a line end: the same bytes as by `serde_json`, faster.
    pub fn write_json(&self, out: &mut Vec<u8>) {
        field("{\"note\":{\"id\":", self.note.id, out);
        field(",\"text\":", self.note.text, out);
        out.push(b'}');
        field(",\"region\":", self.region, out);
        field(",\"region_title\":", self.region_title, out);
        other(",\"yardsticks\":", &self.yardsticks, out);
        out.extend_from_slice(b",\"birds\":");
        list(&self.birds, out, Bird::write_json);
        other(",\"unplaced\":", &self.unplaced, out);
        out.extend_from_slice(b",\"set_aside\":");
        list(&self.set_aside, out, SetAside::write_json);
        other(",\"repairs\":", &self.repairs, out);
        out.push(b'}');
    }
}

impl Bird<'_> {
    fn write_json(&self, out: &mut Vec<u8>) {
        out.extend_from_slice(b"{\"bird\":");
        number(u64::from(self.bird), out);
        out.extend_from_slice(b",\"traits\":");
        list(&self.traits, out, TraitOut::write_json);
        other(",\"named\":", &self.named, out);
        out.extend_from_slice(b",\"gaps\":");
        list(&self.gaps, out, |gap, out| out.extend_from_slice(gap.ready.as_bytes()));
        other(",\"candidates\":", &self.candidates, out);
        other(",\"none_of_these\":", &self.none_of_these, out);
        other(",\"look_next\":", &self.look_next, out);
        out.push(b'}');
    }
}

impl TraitOut<'_> {
    fn write_json(&self, out: &mut Vec<u8>) {
        out.extend_from_slice(b"{\"bird\":");
        number(u64::from(self.bird), out);
        out.push(b',');
        self.mark.write_json(out);
        out.extend_from_slice(b",\"span\":");
        bytes(self.span, out);
        out.extend_from_slice(b",\"parts\":");
        list(&self.parts, out, |part, out| bytes(*part, out));
        field(",\"rule\":", self.rule, out);
        out.push(b'}');
    }
}

impl Mark<'_> {
    /// Adds its fields, to stand beside others.
    pub(crate) fn write_json(&self, out: &mut Vec<u8>) {
        self.write_said(out);
        field(",\"as_written\":", &self.as_written, out);
    }

    /// The same without the note's own words, which are the last of them.
    pub(crate) fn write_said(&self, out: &mut Vec<u8>) {
        field("\"area\":", self.area, out);
        field(",\"aspect\":", self.aspect, out);
        field(",\"value\":", &self.value, out);
        word(",\"polarity\":", self.polarity.text(), out);
        word(",\"certainty\":", self.certainty.text(), out);
        maybe(",\"tone\":", self.tone, out);
        maybe(",\"extent\":", self.extent, out);
        maybe(",\"position\":", self.position, out);
        maybe(",\"relation\":", self.relation, out);
        maybe(",\"against\":", self.against, out);
        if let Some(mass) = &self.mass_g {
            other(",\"mass_g\":", mass, out);
        }
        maybe(",\"written_area\":", self.written_area, out);
        maybe(",\"pato\":", self.pato, out);
    }
}

impl SetAside<'_> {
    fn write_json(&self, out: &mut Vec<u8>) {
        field("{\"text\":", self.text, out);
        out.extend_from_slice(b",\"span\":");
        bytes(self.span, out);
        field(",\"reason\":", &self.reason, out);
        out.push(b'}');
    }
}

/// A field, by serde.
fn other<T: Serialize + ?Sized>(name: &str, said: &T, out: &mut Vec<u8>) {
    out.extend_from_slice(name.as_bytes());
    value(said, out);
}

/// A range of bytes.
fn bytes(range: Bytes, out: &mut Vec<u8>) {
    pair(range.map(|n| n as u64), out);
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
            reading.write_json(&mut line);
            assert_eq!(line, serde_json::to_vec(&reading).unwrap(), "{note}");
        }
    }
}
