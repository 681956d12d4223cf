//! CSV: the log of bakes as a table that any spreadsheet opens.

use crate::engine::learn::{MeasuredDuration, WeighedLoss};
use crate::engine::quantity::{Mass, Minutes, Share, Temperature};
use crate::sheet::Moment;

use crate::sheet::civil::Zone;
use crate::sheet::day::{Bake, Crust, Log};

const HEADS: [&str; 30] = [
    "began",
    "formula",
    "kitchen",
    "room_c",
    "dough_without_mixing_c",
    "dough_c",
    "mixing_min",
    "into_bowl_g",
    "on_bench_g",
    "into_oven_g",
    "out_of_oven_g",
    "bulk_expected_min",
    "bulk_min",
    "proof_expected_min",
    "proof_min",
    "bake_expected_min",
    "bake_min",
    "steps",
    "note",
    // What a later release added stands at the end, so that tables made before keep their columns.
    "baked",
    "true_water_percent",
    "paste_c",
    "bread_g",
    "core_c",
    "crust",
    "paste_stirred_g",
    "paste_cooked_g",
    "paste_steam_expected_g",
    "cooling_expected_c",
    "cooling_found_c",
];

/// Writes the log, oldest first, with the times of day of a zone.
///
/// A text that a spreadsheet would take for a sum begins with an apostrophe. Numbers have a point
/// and no unit; what was not noted is empty.
///
/// Source: RFC 4180, section 2.
#[must_use]
pub fn write(log: &Log, zone: &Zone) -> String {
    let mut text = HEADS.join(",");
    text.push_str("\r\n");
    for bake in log.bakes() {
        text.push_str(&cells(bake, zone).join(","));
        text.push_str("\r\n");
    }
    text
}

fn cells(bake: &Bake, zone: &Zone) -> Vec<String> {
    let noted = &bake.noted;
    let degrees = |at: Option<Temperature>| number(at.map(Temperature::celsius));
    let mut cells = vec![
        date_and_time(bake.began, zone),
        words(&bake.name),
        words(&bake.kitchen),
        degrees(bake.room),
        degrees(noted.unmixed),
        degrees(noted.dough),
        number(noted.mixing.map(Minutes::minutes)),
    ];
    for weighed in [noted.bowl, noted.oven_loss] {
        cells.extend(weighings(weighed));
    }
    for took in [noted.bulk, noted.proof, noted.bake] {
        cells.extend(times(took));
    }
    cells.push(bake.steps.len().to_string());
    cells.push(words(&bake.note));
    cells.extend(later(bake, zone));
    cells
}

/// What a later release added.
fn later(bake: &Bake, zone: &Zone) -> [String; 11] {
    let Bake { noted, found, .. } = bake;
    let degrees = |at: Option<Temperature>| number(at.map(Temperature::celsius));
    let grams = |mass: Option<Mass>| number(mass.map(Mass::grams));
    let [stirred, cooked] = weighings(noted.steam.map(|steam| steam.weighed));
    [
        date_and_time(bake.baked(), zone),
        number(found.water.map(Share::percent)),
        degrees(found.paste),
        grams(found.bread),
        degrees(found.core),
        found.crust.map(crust).unwrap_or_default().to_owned(),
        stirred,
        cooked,
        grams(noted.steam.map(|steam| steam.expected)),
        degrees(noted.cooling.map(|cooling| cooling.expected)),
        degrees(noted.cooling.map(|cooling| cooling.found)),
    ]
}

const fn crust(crust: Crust) -> &'static str {
    match crust {
        Crust::Pale => "pale",
        Crust::Golden => "golden",
        Crust::Dark => "dark",
    }
}

fn weighings(weighed: Option<WeighedLoss>) -> [String; 2] {
    let grams = |mass: Option<Mass>| number(mass.map(Mass::grams));
    [
        grams(weighed.map(|weighed| weighed.before)),
        grams(weighed.map(|weighed| weighed.after)),
    ]
}

fn times(took: Option<MeasuredDuration>) -> [String; 2] {
    let minutes = |time: Option<Minutes>| number(time.map(Minutes::minutes));
    [
        minutes(took.map(|took| took.expected)),
        minutes(took.map(|took| took.minutes)),
    ]
}

/// "2026-03-29 13:30".
fn date_and_time(at: Moment, zone: &Zone) -> String {
    let civil = zone.civil(at.instant());
    let (year, month, day) = civil.date.numbers();
    let (hour, minute) = (civil.clock.hour(), civil.clock.minute());
    format!("{year:04}-{month:02}-{day:02} {hour:02}:{minute:02}")
}

fn number(number: Option<f64>) -> String {
    number.map_or_else(String::new, |number| number.to_string())
}

fn words(text: &str) -> String {
    let sum = text.starts_with(['=', '+', '-', '@', '\t', '\r']);
    let text = if sum {
        format!("'{text}")
    } else {
        text.to_owned()
    };
    if text.contains([',', '"', '\n', '\r']) {
        format!("\"{}\"", text.replace('"', "\"\""))
    } else {
        text
    }
}
