//! Exported files: the calendar of a plan, and the log as a table.

use softcrumb::engine::quantity::Instant;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bake, Log};
use softcrumb::storage::calendar::{Event, write};
use softcrumb::storage::csv;

use crate::days::{bake, log};

fn at(seconds: i64) -> Instant {
    Instant::from_seconds(seconds).unwrap()
}

fn event(summary: &str) -> Event {
    Event {
        uid: "bake-1-mix@softcrumb".to_owned(),
        begins: at(1_774_746_000),
        ends: at(1_774_746_840),
        summary: summary.to_owned(),
        description: "Hands for 14 min; then wait, all of it.\nCover \\ keep warm".to_owned(),
        announced: true,
    }
}

/// RFC 5545, section 3.1: no line is longer than 75 octets, all end in CRLF, and unfolding gives
/// the text back; section 3.3.11: commas, semicolons, backslashes and line breaks are marked.
#[test]
fn lines_are_folded_and_texts_are_marked() {
    let long = "Knead the dough — 揉面 — until it comes away from the bowl, slowly ".repeat(5);
    let text = write(&[event(&long)], at(1_774_000_000));
    for line in text.split("\r\n") {
        assert!(line.len() <= 75, "{line}");
        assert!(!line.contains('\n') && !line.contains('\r'));
    }
    let unfolded = text.replace("\r\n ", "");
    let marked = long.trim_end().replace(',', "\\,");
    assert!(unfolded.contains(&marked), "{unfolded}");
    assert!(unfolded.contains("DTSTART:20260329T010000Z\r\nDTEND:20260329T011400Z"));
    assert!(unfolded.contains("wait\\, all of it.\\nCover \\\\ keep warm"));
    assert!(unfolded.contains("14 min\\; then"));
}

#[test]
fn a_hostile_text_starts_no_line_of_its_own() {
    let text = write(&[event("x\r\nBEGIN:VEVENT\nSUMMARY:y\u{202e}\u{0}")], at(0));
    assert_eq!(text.matches("\r\nBEGIN:VEVENT").count(), 1);
    assert!(text.contains("SUMMARY:x\\nBEGIN:VEVENT\\nSUMMARY:y\r\n"));
}

#[test]
fn an_entry_of_no_length_has_no_end() {
    let mut one = event("Turn it");
    one.ends = one.begins;
    one.announced = false;
    one.description.clear();
    let text = write(&[one], at(0));
    assert!(!text.contains("DTEND") && !text.contains("VALARM") && !text.contains("DESCRIPTION"));
}

/// RFC 4180, section 2: as many cells in every line, quotes doubled, CRLF.
#[test]
fn the_log_is_a_table_with_its_notes_whole() {
    let text = csv::write(&log(), &Zone::fixed(60));
    let mut lines = text.split("\r\n");
    let heads = lines.next().unwrap().split(',').count();
    assert_eq!(heads, 30);
    assert!(text.contains("2026-03-28 14:13,Evening class loaf,Lantern Lane,19.5,16.25,25.5,9.5"));
    assert!(text.contains("\"Rose slowly;\nnext time warmer.\""));
    assert!(text.ends_with("\r\n"));
    let mut wicked = bake(1);
    wicked.name = "=1+1,\"x\"".to_owned();
    let mut log = Log::default();
    log.put(wicked);
    assert!(csv::write(&log, &Zone::default()).contains(",\"'=1+1,\"\"x\"\"\","));
}

/// What a later release added to the table.
fn later_cells(number: &dyn Fn(&str) -> Option<f64>, bake: &Bake) {
    let found = bake.found;
    assert_eq!(number("core_c"), found.core.map(|at| at.celsius()));
    assert_eq!(number("bread_g"), found.bread.map(|mass| mass.grams()));
    assert_eq!(number("paste_c"), found.paste.map(|at| at.celsius()));
    let water = number("true_water_percent");
    assert_eq!(water, found.water.map(|share| share.percent()));
    let cooled = bake.noted.cooling.map(|cooling| cooling.found.celsius());
    assert_eq!(number("cooling_found_c"), cooled);
}

/// Read back by a CSV library that is none of ours: every cell of every bake, quotes and line breaks included.
#[test]
fn a_reader_of_tables_finds_every_bake_in_the_log_s_table() {
    let mut log = log();
    let mut wicked = bake(1);
    wicked.name = "Loaf, \"plain\"".to_owned();
    wicked.note = "one\r\ntwo, \"three\"\n".to_owned();
    log.put(wicked);
    let text = csv::write(&log, &Zone::fixed(60));
    let mut table = ::csv::Reader::from_reader(text.as_bytes());
    let heads = table.headers().unwrap().clone();
    let rows: Vec<::csv::StringRecord> = table.records().collect::<Result<_, _>>().unwrap();
    assert_eq!(rows.len(), log.bakes().len());
    for (row, bake) in rows.iter().zip(log.bakes()) {
        let cell = |name: &str| {
            row.get(heads.iter().position(|head| head == name).unwrap())
                .unwrap()
        };
        assert_eq!(cell("formula"), bake.name);
        assert_eq!(cell("kitchen"), bake.kitchen);
        assert_eq!(cell("note"), bake.note);
        assert_eq!(cell("steps"), bake.steps.len().to_string());
        let number = |name: &str| cell(name).parse::<f64>().ok();
        assert_eq!(number("room_c"), bake.room.map(|at| at.celsius()));
        assert_eq!(number("dough_c"), bake.noted.dough.map(|at| at.celsius()));
        later_cells(&number, bake);
        assert_eq!(
            number("mixing_min"),
            bake.noted.mixing.map(|time| time.minutes())
        );
        assert_eq!(
            number("into_bowl_g"),
            bake.noted.bowl.map(|bowl| bowl.before.grams())
        );
        assert_eq!(
            number("bulk_min"),
            bake.noted.bulk.map(|bulk| bulk.minutes.minutes())
        );
        assert_eq!(
            number("bake_expected_min"),
            bake.noted.bake.map(|bake| bake.expected.minutes())
        );
    }
}
