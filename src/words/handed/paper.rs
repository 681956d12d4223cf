//! What is printed: the bench card and the class sheet, each on one page.

use super::steps::{cautions, work};
use crate::engine::batch::{Rounded, Scaled};
use crate::engine::nutrition::LabelLaw;
use crate::sheet::{Pantry, Sheet};
use crate::words::{
    caution::LOCAL_RULES,
    class::{ClassView, StreamLines, allergens},
    language::text,
    manner::Manner,
    name, say, weigh,
};

/// How close together a page is set so that all of it fits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Density {
    /// Large letters.
    Roomy,
    /// Middling ones.
    Close,
    /// The smallest that can be read on a bench.
    Closest,
}

/// The card that lies on the bench.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchCard {
    /// The formula's name.
    pub title: String,
    /// "Soft tin bread, 10 × 92 g".
    pub made: String,
    /// What to weigh, stream by stream.
    pub streams: Vec<StreamLines>,
    /// What to do, stream by stream.
    pub steps: Vec<(String, Vec<String>)>,
    /// Allergens.
    pub allergens: String,
    /// What to take care of.
    pub cautions: Vec<String>,
    /// How close it is set.
    pub density: Density,
}

/// The card of a batch for the bench.
#[must_use]
pub fn bench_card(
    sheet: &Sheet,
    scaled: &Scaled,
    rounded: &Rounded,
    pantry: &Pantry,
    manner: Manner,
) -> BenchCard {
    let streams = weighed(sheet, rounded, manner);
    let steps: Vec<(String, Vec<String>)> = sheet
        .formula
        .streams
        .iter()
        .zip(work(sheet))
        .map(|(stream, work)| (stream.name.clone(), work))
        .collect();
    let rows: usize = streams.iter().map(|stream| stream.lines.len() + 1).sum();
    let marks = pantry.marks(&sheet.formula);
    BenchCard {
        title: sheet.name.clone(),
        made: format!(
            "{}, {}",
            name::bread(sheet.bread),
            weigh::pieces(&scaled.pieces, manner)
        ),
        allergens: allergens(&sheet.formula, &marks, LabelLaw::Eu).says,
        cautions: all_cautions(sheet, manner),
        density: density(rows + 2 * steps.len()),
        streams,
        steps,
    }
}

fn weighed(sheet: &Sheet, rounded: &Rounded, manner: Manner) -> Vec<StreamLines> {
    let numbered = sheet.formula.streams.iter().enumerate();
    let all = numbered.map(|(at, stream)| StreamLines {
        name: stream.name.clone(),
        lines: rounded
            .lines
            .iter()
            .filter(|line| line.at.stream == at)
            .filter_map(|line| {
                let food = &rounded.formula.line(line.at)?.food;
                Some((name::food(food), weigh::line(line, manner).shows))
            })
            .collect(),
    });
    all.filter(|stream| !stream.lines.is_empty()).collect()
}

/// Every caution that belongs to a stream, once, and who decides.
fn all_cautions(sheet: &Sheet, manner: Manner) -> Vec<String> {
    let mut all = cautions(sheet, manner);
    all.push(text(LOCAL_RULES).to_owned());
    all
}

const fn density(rows: usize) -> Density {
    match rows {
        0..=28 => Density::Roomy,
        29..=40 => Density::Close,
        _ => Density::Closest,
    }
}

/// A row of the class sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SheetRow {
    /// The stream that begins here.
    pub begins: Option<String>,
    /// The ingredient.
    pub food: String,
    /// What each kind of bench weighs, then everything together.
    pub cells: Vec<String>,
}

/// The sheet for the teacher and the wall.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassSheet {
    /// The formula's name.
    pub title: String,
    /// How large the class is.
    pub class: String,
    /// What stands over each column of weights.
    pub columns: Vec<String>,
    /// Ingredient by ingredient.
    pub rows: Vec<SheetRow>,
    /// Bowls, then oven loads.
    pub notes: Vec<String>,
    /// Allergens.
    pub allergens: String,
    /// What to take care of.
    pub cautions: Vec<String>,
    /// How close it is set.
    pub density: Density,
}

/// The sheet of a class.
#[must_use]
pub fn class_sheet(sheet: &Sheet, told: &ClassView, pantry: &Pantry, manner: Manner) -> ClassSheet {
    let mut columns: Vec<String> = told
        .benches
        .iter()
        .map(|bench| bench.title.clone())
        .collect();
    columns.push(say!("Everything together").to_owned());
    let rows = rows(told);
    let mut notes = told.bowls.clone();
    notes.extend(told.loads.iter().cloned());
    notes.extend(told.stagger.iter().map(|advice| advice.to_do.to_string()));
    let marks = pantry.marks(&sheet.formula);
    ClassSheet {
        title: sheet.name.clone(),
        class: told.title.clone(),
        columns,
        allergens: allergens(&sheet.formula, &marks, LabelLaw::Eu).says,
        cautions: all_cautions(sheet, manner),
        density: density(rows.len() + notes.len()),
        rows,
        notes,
    }
}

fn rows(told: &ClassView) -> Vec<SheetRow> {
    let mut rows = Vec::new();
    for (at, stream) in told.total.iter().enumerate() {
        for (line, (food, total)) in stream.lines.iter().enumerate() {
            let of = |streams: &[StreamLines]| {
                let found = streams.get(at).and_then(|stream| stream.lines.get(line));
                found.map(|(_, shows)| shows.clone()).unwrap_or_default()
            };
            let mut cells: Vec<String> = told
                .benches
                .iter()
                .map(|bench| of(&bench.streams))
                .collect();
            cells.push(total.clone());
            rows.push(SheetRow {
                begins: (line == 0).then(|| stream.name.clone()),
                food: food.clone(),
                cells,
            });
        }
    }
    rows
}
