//! Calendar: steps of a plan as the text of an iCalendar file.

use crate::engine::quantity::Instant;

use crate::sheet::civil::Zone;
use crate::sheet::plain;

/// One entry of a calendar.
#[derive(Clone, Debug, PartialEq)]
pub struct Event {
    /// A name that is nobody else's, and the same each time the plan is written.
    pub uid: String,
    /// When it begins.
    pub begins: Instant,
    /// When it ends.
    pub ends: Instant,
    /// Its name.
    pub summary: String,
    /// Its description; may be empty.
    pub description: String,
    /// Whether it is announced as it begins.
    pub announced: bool,
}

/// A line has at most so many bytes before it is folded.
const FOLDED_AT: usize = 75;
/// The most characters of a text.
const LONGEST: usize = 2000;

/// Writes a calendar as it was at `stamp`.
///
/// All times are in UTC, so that no calendar has to know the zone's rules; each shows them in its
/// own. An entry of no length has no end.
///
/// Source: RFC 5545, sections 3.1 (lines), 3.3.5 (times), 3.3.11 (texts), 3.6.1 (entries), 3.6.6
/// (announcing).
#[must_use]
pub fn write(events: &[Event], stamp: Instant) -> String {
    let mut text = String::new();
    for line in [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//Softcrumb//Day//EN",
        "CALSCALE:GREGORIAN",
    ] {
        put(&mut text, line);
    }
    for event in events {
        put(&mut text, "BEGIN:VEVENT");
        put(&mut text, &format!("UID:{}", escaped(&event.uid)));
        put(&mut text, &format!("DTSTAMP:{}", time(stamp)));
        put(&mut text, &format!("DTSTART:{}", time(event.begins)));
        if event.ends > event.begins {
            put(&mut text, &format!("DTEND:{}", time(event.ends)));
        }
        put(&mut text, &format!("SUMMARY:{}", escaped(&event.summary)));
        if !event.description.is_empty() {
            let description = escaped(&event.description);
            put(&mut text, &format!("DESCRIPTION:{description}"));
        }
        if event.announced {
            put(&mut text, "BEGIN:VALARM");
            put(&mut text, "ACTION:DISPLAY");
            put(
                &mut text,
                &format!("DESCRIPTION:{}", escaped(&event.summary)),
            );
            put(&mut text, "TRIGGER:PT0S");
            put(&mut text, "END:VALARM");
        }
        put(&mut text, "END:VEVENT");
    }
    put(&mut text, "END:VCALENDAR");
    text
}

/// "20260329T013000Z".
fn time(at: Instant) -> String {
    let civil = Zone::default().civil(at);
    let (year, month, day) = civil.date.numbers();
    let (hour, minute) = (civil.clock.hour(), civil.clock.minute());
    format!(
        "{year:04}{month:02}{day:02}T{hour:02}{minute:02}{:02}Z",
        civil.second
    )
}

/// A text with what means something to a calendar marked as text.
fn escaped(text: &str) -> String {
    let mut safe = String::new();
    for letter in plain::note(text, LONGEST).chars() {
        match letter {
            '\\' | ';' | ',' => safe.extend(['\\', letter]),
            '\n' => safe.push_str("\\n"),
            '\t' => safe.push(' '),
            _ => safe.push(letter),
        }
    }
    safe
}

/// Adds a line, folded where it is too long, never within a letter.
fn put(text: &mut String, line: &str) {
    let mut bytes = 0;
    for letter in line.chars() {
        if bytes + letter.len_utf8() > FOLDED_AT {
            text.push_str("\r\n ");
            bytes = 1;
        }
        text.push(letter);
        bytes += letter.len_utf8();
    }
    text.push_str("\r\n");
}
