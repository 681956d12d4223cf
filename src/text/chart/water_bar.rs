//! The water ledger as a bar: segments and marks, placed in hundredths of its width.

use crate::engine::formula::PartKind;
use crate::engine::formula::{Contributor, Water, WaterLedger};
use crate::engine::quantity::Mass;
use crate::text::{format, format_options::FormatOptions, language::tr_dynamic, line, tr};

/// A segment narrower than this has no room for its letter, in hundredths of the width.
const ROOM_FOR_LETTER: f64 = 6.0;

/// Beyond this a mark's words stand before it, in hundredths of the width.
const WORDS_BEFORE: f64 = 45.0;

/// The water of one line as a piece of the bar.
#[derive(Clone, Debug, PartialEq)]
pub struct WaterPiece {
    /// Where it begins, in hundredths of the width.
    pub from: f64,
    /// How wide it is, in hundredths of the width.
    pub wide: f64,
    /// The position of its letter; `None` where there is no room for one.
    pub letter_at: Option<f64>,
    /// The letter of its part.
    pub letter: char,
    /// What becomes of its part.
    pub kind: PartKind,
}

/// A mark across the bar.
#[derive(Clone, Debug, PartialEq)]
pub struct WaterMark {
    /// Its left edge, in hundredths of the width.
    pub at: f64,
    /// What it says.
    pub says: String,
    /// Whether its words stand before it.
    pub words_before: bool,
}

/// One line of the table below the bar.
#[derive(Clone, Debug, PartialEq)]
pub struct WaterRow {
    /// The letter of its part.
    pub letter: char,
    /// What becomes of its part.
    pub kind: PartKind,
    /// Its source.
    pub food: String,
    /// How much water that was.
    pub water: String,
    /// What it is of the flour.
    pub share: String,
}

/// The water ledger laid out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct WaterBar {
    /// The pieces, in the order of the parts.
    pub segments: Vec<WaterPiece>,
    /// Plain water and true water.
    pub marks: Vec<WaterMark>,
    /// The same as a table, in the same order.
    pub rows: Vec<WaterRow>,
}

/// Lays the water ledger out as a bar. Flour's own moisture is not in it.
#[must_use]
pub fn water_bar(ledger: &WaterLedger, options: FormatOptions) -> WaterBar {
    let mut from: Vec<&Contributor> = ledger.from.iter().filter(|one| !one.is_flour).collect();
    from.sort_by_key(|one| one.at);
    let brought: Mass = from.iter().map(|one| one.water).sum();
    let poured = ledger.poured.mass;
    let full = if brought > poured { brought } else { poured };
    let hundredths = |mass: Mass| mass.share_of(full).map_or(0.0, |share| share.percent());
    let mut bar = WaterBar::default();
    let mut before = Mass::ZERO;
    for one in from {
        let wide = hundredths(one.water);
        let begins = hundredths(before);
        bar.segments.push(WaterPiece {
            from: begins,
            wide,
            letter_at: (wide >= ROOM_FOR_LETTER).then_some(begins + wide / 2.0),
            letter: line::mark(one.at.part),
            kind: one.kind,
        });
        bar.rows.push(row(one, ledger, options));
        before = before + one.water;
    }
    let mark = |name: &str, water: Water| {
        let at = hundredths(water.mass);
        WaterMark {
            at,
            says: format!("{name} {}", format::share(water.share, options)),
            words_before: at > WORDS_BEFORE,
        }
    };
    if full > Mass::ZERO {
        bar.marks = vec![
            mark(tr!("added"), ledger.poured),
            mark(tr!("true"), ledger.true_water),
        ];
    }
    bar
}

fn row(one: &Contributor, ledger: &WaterLedger, options: FormatOptions) -> WaterRow {
    WaterRow {
        letter: line::mark(one.at.part),
        kind: one.kind,
        food: tr_dynamic(&one.food).into_owned(),
        water: format::mass(one.water, options),
        share: one
            .water
            .share_of(ledger.flour)
            .map_or_else(String::new, |share| format::share(share, options)),
    }
}
