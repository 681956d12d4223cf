//! Writing: JSON without spaces, kind and version first, every number exact.

use std::io;

use serde::Serialize;
use serde_json::ser::{CharEscape, Formatter, Serializer};

use super::head::{KIND, VERSION};

/// The text of a record.
pub(super) fn record(kind: &str, version: u32, body: &impl Serialize) -> String {
    let fields = json(body);
    let fields = fields.strip_prefix('{').unwrap_or(&fields);
    format!("{{\"{KIND}\":\"{kind}\",\"{VERSION}\":{version},{fields}")
}

/// The JSON of a value.
pub(in crate::storage) fn json(value: &impl Serialize) -> String {
    let mut bytes = Vec::new();
    // Nothing here fails: the bytes are in memory, and keys are text.
    let _written = value.serialize(&mut Serializer::with_formatter(&mut bytes, Exact));
    String::from_utf8(bytes).unwrap_or_default()
}

/// The shortest digits that read back to the same `f64`, never with an exponent; control
/// characters by number (RFC 8259, section 7).
struct Exact;

impl Formatter for Exact {
    fn write_f64<W: ?Sized + io::Write>(&mut self, to: &mut W, number: f64) -> io::Result<()> {
        write!(to, "{number}")
    }

    fn write_char_escape<W: ?Sized + io::Write>(
        &mut self,
        to: &mut W,
        escape: CharEscape,
    ) -> io::Result<()> {
        let control = match escape {
            CharEscape::Quote => return to.write_all(b"\\\""),
            CharEscape::ReverseSolidus => return to.write_all(b"\\\\"),
            CharEscape::Solidus => return to.write_all(b"/"),
            CharEscape::Backspace => 0x08,
            CharEscape::Tab => 0x09,
            CharEscape::LineFeed => 0x0a,
            CharEscape::FormFeed => 0x0c,
            CharEscape::CarriageReturn => 0x0d,
            CharEscape::AsciiControl(control) => control,
        };
        write!(to, "\\u{control:04x}")
    }
}
