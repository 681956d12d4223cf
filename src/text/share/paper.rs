//! What is printed: the bench card and the class sheet, each on one page.

use super::fit::{self, Density, Fit, Paper, code_side};
use super::steps::{cautions, work};
use crate::engine::batch::{Rounded, Scaled};
use crate::engine::nutrition::LabelLaw;
use crate::sheet::interchange::{SquareCode, svg};
use crate::sheet::{Pantry, Sheet};
use crate::text::{
    caution::LOCAL_RULES,
    class::{ClassView, PartLines, allergens},
    format_options::FormatOptions,
    language::text,
    name, tr, weighing,
};

/// Before it is measured.
const ROOMY: Fit = Fit {
    paper: Paper::A5,
    density: Density::Roomy,
    one_page: true,
};

/// The card that lies on the bench.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchCard {
    /// The formula's name.
    pub title: String,
    /// "Soft tin bread, 10 × 92 g".
    pub made: String,
    /// What to weigh, part by part.
    pub parts: Vec<PartLines>,
    /// What to do, part by part.
    pub steps: Vec<(String, Vec<String>)>,
    /// Allergens.
    pub allergens: String,
    /// What to take care of.
    pub cautions: Vec<String>,
    /// The square code of the link, as a picture of its size on paper.
    pub code: Option<String>,
    /// How it is set.
    pub fit: Fit,
}

/// The card of a batch for the bench, with the code of its link.
#[must_use]
pub fn bench_card(
    sheet: &Sheet,
    scaled: &Scaled,
    rounded: &Rounded,
    pantry: &Pantry,
    code: Option<&SquareCode>,
    options: FormatOptions,
) -> BenchCard {
    let parts = weighed(sheet, rounded, options);
    let steps: Vec<(String, Vec<String>)> = sheet
        .formula
        .parts
        .iter()
        .zip(work(sheet))
        .map(|(part, work)| (part.name.clone(), work))
        .collect();
    let marks = pantry.marks(&sheet.formula);
    let mut card = BenchCard {
        title: sheet.name.clone(),
        made: format!(
            "{}, {}",
            name::bread(sheet.bread),
            weighing::pieces(&scaled.pieces, options)
        ),
        allergens: allergens(&sheet.formula, &marks, LabelLaw::Eu).says,
        cautions: all_cautions(sheet, options),
        code: code.map(on_paper),
        fit: ROOMY,
        parts,
        steps,
    };
    card.fit = fit::card(&card, code.map_or(0.0, code_side));
    card
}

/// A code as a picture of its size on paper.
fn on_paper(code: &SquareCode) -> String {
    let side = code_side(code);
    let size = format!("<svg width=\"{side:.1}mm\" height=\"{side:.1}mm\" ");
    svg(code).replacen("<svg ", &size, 1)
}

fn weighed(sheet: &Sheet, rounded: &Rounded, options: FormatOptions) -> Vec<PartLines> {
    let numbered = sheet.formula.parts.iter().enumerate();
    let all = numbered.map(|(at, part)| PartLines {
        name: part.name.clone(),
        lines: rounded
            .lines
            .iter()
            .filter(|line| line.at.part == at)
            .filter_map(|line| {
                let food = &rounded.formula.line(line.at)?.food;
                Some((name::food(food), weighing::line(line, options).shows))
            })
            .collect(),
    });
    all.filter(|part| !part.lines.is_empty()).collect()
}

/// Every caution that belongs to a part, once, and who decides.
fn all_cautions(sheet: &Sheet, options: FormatOptions) -> Vec<String> {
    let mut all = cautions(sheet, options);
    all.push(text(LOCAL_RULES).to_owned());
    all
}

/// What is to be known before the two are printed; nothing where all is as usual.
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
    /// The part that begins here.
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
    /// Ingredient by ingredient; where there are very many, in two tables side by side.
    pub tables: Vec<Vec<SheetRow>>,
    /// Bowls, then oven loads.
    pub notes: Vec<String>,
    /// Allergens.
    pub allergens: String,
    /// What to take care of.
    pub cautions: Vec<String>,
    /// The square code of the link, as a picture of its size on paper.
    pub code: Option<String>,
    /// How it is set.
    pub fit: Fit,
}

/// The most rows that stand below each other.
const MOST_ROWS: usize = 34;

/// The sheet of a class, with the code of its formula's link.
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
    let marks = pantry.marks(&sheet.formula);
    let mut paper = ClassSheet {
        title: sheet.name.clone(),
        class: told.title.clone(),
        columns,
        allergens: allergens(&sheet.formula, &marks, LabelLaw::Eu).says,
        cautions: all_cautions(sheet, options),
        code: code.map(on_paper),
        fit: ROOMY,
        tables: side_by_side(rows),
        notes,
    };
    paper.fit = fit::sheet(&paper, code.map_or(0.0, code_side));
    paper
}

/// The rows in one table, or in two where they are very many; the second says its part again.
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
            let of = |parts: &[PartLines]| {
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
