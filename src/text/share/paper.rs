//! The printed pages: the bench card and the class sheet, each on one page.

use super::fit::{self, Density, Fit, Paper, code_side};
use super::steps::{cautions, work};
use crate::engine::nutrition::LabelLaw;
use crate::results::batch::{self, BatchResults};
use crate::sheet::interchange::{SquareCode, svg};
use crate::sheet::{Pantry, Sheet};
use crate::text::{
    allergens,
    caution::LOCAL_RULES,
    class::ClassView,
    format_options::FormatOptions,
    language::text,
    name, tr,
    weighing::{self, PartWeights, part_weights},
};

/// The layout before the page is measured.
const ROOMY: Fit = Fit {
    paper: Paper::A5,
    density: Density::Roomy,
    one_page: true,
};

/// A bench card.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchCard {
    /// The formula's name.
    pub title: String,
    /// "Soft tin bread, 10 × 92 g".
    pub made: String,
    /// Weights, part by part.
    pub parts: Vec<PartWeights>,
    /// Steps, part by part.
    pub steps: Vec<(String, Vec<String>)>,
    /// Allergens.
    pub allergens: String,
    /// Cautions.
    pub cautions: Vec<String>,
    /// The square code of the link, as a picture of its size on paper.
    pub code: Option<String>,
    /// Paper size and type size.
    pub fit: Fit,
}

/// Makes the bench card of a batch, with the square code of its link; none where there is no batch.
#[must_use]
pub fn bench_card(
    sheet: &Sheet,
    batch: &BatchResults,
    pantry: &Pantry,
    code: Option<&SquareCode>,
    options: FormatOptions,
) -> Option<BenchCard> {
    let scaled = batch.scaled.as_ref().ok()?;
    let rounded = batch.rounded.as_ref()?;
    let steps: Vec<(String, Vec<String>)> = sheet
        .formula
        .parts
        .iter()
        .zip(work(sheet))
        .map(|(part, work)| (part.name.clone(), work))
        .collect();
    let mut card = BenchCard {
        title: sheet.name.clone(),
        made: format!(
            "{}, {}",
            name::bread(sheet.bread),
            weighing::pieces(&scaled.pieces, options)
        ),
        allergens: allergens_of(sheet, pantry),
        cautions: all_cautions(sheet, options),
        code: code.map(on_paper),
        fit: ROOMY,
        parts: part_weights(rounded, options),
        steps,
    };
    card.fit = fit::card(&card, code.map_or(0.0, code_side));
    Some(card)
}

/// The allergens of a formula as sentences.
fn allergens_of(sheet: &Sheet, pantry: &Pantry) -> String {
    let found = batch::allergens::of(&sheet.formula, pantry, LabelLaw::Eu);
    allergens::view(&found, &sheet.formula).says
}

/// Draws a code at its size on paper.
fn on_paper(code: &SquareCode) -> String {
    let side = code_side(code);
    let size = format!("<svg width=\"{side:.1}mm\" height=\"{side:.1}mm\" ");
    svg(code).replacen("<svg ", &size, 1)
}

/// Lists the cautions of all parts, each once, then the authority that decides.
fn all_cautions(sheet: &Sheet, options: FormatOptions) -> Vec<String> {
    let mut all = cautions(sheet, options);
    all.push(text(LOCAL_RULES).to_owned());
    all
}

/// Warnings before printing; `None` if there are none.
#[must_use]
pub fn before_printing(card: Option<&BenchCard>, sheet: Option<&ClassSheet>) -> Vec<&'static str> {
    let (Some(card), Some(sheet)) = (card, sheet) else {
        return vec![tr!("There is no batch to print. See what Batch says.")];
    };
    let mut said = Vec::new();
    if !card.fit.one_page {
        said.push(tr!(
            "So many ingredients take more than one page for the bench, however small they are set."
        ));
    } else if card.fit.paper == Paper::A4 {
        said.push(tr!(
            "So many ingredients do not fit A5: the bench card is set for A4 or Letter."
        ));
    }
    if !sheet.fit.one_page {
        said.push(tr!(
            "So many ingredients take more than one page for the class, however small they are set."
        ));
    }
    if card.code.is_none() {
        said.push(tr!(
            "The link is too long for a square code, so paper carries none. Make it shorter above."
        ));
    }
    said
}

/// A row of the class sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SheetRow {
    /// Name of the part that begins here.
    pub begins: Option<String>,
    /// The ingredient.
    pub food: String,
    /// Weight for each kind of bench, then the total.
    pub cells: Vec<String>,
}

/// A class sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassSheet {
    /// The formula's name.
    pub title: String,
    /// Size of the class.
    pub class: String,
    /// Heads of the weight columns.
    pub columns: Vec<String>,
    /// Rows by ingredient, in two tables side by side where they are many.
    pub tables: Vec<Vec<SheetRow>>,
    /// Bowls, then oven loads.
    pub notes: Vec<String>,
    /// Allergens.
    pub allergens: String,
    /// Cautions.
    pub cautions: Vec<String>,
    /// The square code of the link, as a picture of its size on paper.
    pub code: Option<String>,
    /// Paper size and type size.
    pub fit: Fit,
}

/// Most rows of one table.
const MOST_ROWS: usize = 34;

/// Makes the sheet of a class, with the square code of the formula's link.
#[must_use]
pub fn class_sheet(
    sheet: &Sheet,
    told: &ClassView,
    pantry: &Pantry,
    code: Option<&SquareCode>,
    options: FormatOptions,
) -> ClassSheet {
    let mut columns: Vec<String> = told
        .benches
        .iter()
        .map(|bench| bench.title.clone())
        .collect();
    columns.push(tr!("Everything together").to_owned());
    let rows = rows(told);
    let mut notes = told.bowls.clone();
    notes.extend(told.loads.iter().cloned());
    notes.extend(told.stagger.iter().map(|advice| advice.to_do.to_string()));
    let mut paper = ClassSheet {
        title: sheet.name.clone(),
        class: told.title.clone(),
        columns,
        allergens: allergens_of(sheet, pantry),
        cautions: all_cautions(sheet, options),
        code: code.map(on_paper),
        fit: ROOMY,
        tables: side_by_side(rows),
        notes,
    };
    paper.fit = fit::sheet(&paper, code.map_or(0.0, code_side));
    paper
}

/// Splits the rows into one table or two; the second repeats the name of its part.
fn side_by_side(mut rows: Vec<SheetRow>) -> Vec<Vec<SheetRow>> {
    if rows.len() <= MOST_ROWS {
        return vec![rows];
    }
    let half = rows.len().div_ceil(2);
    let begun = rows.iter().take(half + 1);
    let part = begun.filter_map(|row| row.begins.clone()).next_back();
    let mut second = rows.split_off(half);
    if let Some(first) = second.first_mut() {
        first.begins = first.begins.take().or(part);
    }
    vec![rows, second]
}

fn rows(told: &ClassView) -> Vec<SheetRow> {
    let mut rows = Vec::new();
    for (at, part) in told.total.iter().enumerate() {
        for (line, (food, total)) in part.lines.iter().enumerate() {
            let of = |parts: &[PartWeights]| {
                let found = parts.get(at).and_then(|part| part.lines.get(line));
                found.map(|(_, shows)| shows.clone()).unwrap_or_default()
            };
            let mut cells: Vec<String> =
                told.benches.iter().map(|bench| of(&bench.parts)).collect();
            cells.push(total.clone());
            rows.push(SheetRow {
                begins: (line == 0).then(|| part.name.clone()),
                food: food.clone(),
                cells,
            });
        }
    }
    rows
}
