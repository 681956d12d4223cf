//! Makes the printed pages: the bench card and the class sheet, each on one page.

use super::fit::{self, code_side};
use super::page::{BenchCard, ClassSheet, Fit, Paper, SheetRow, TypeSize};
use super::run_steps::run_steps;
use super::steps::{cautions, work};
use crate::engine::nutrition::LabelLaw;
use crate::results::batch::{self, BatchResults};
use crate::results::run::Run;
use crate::sheet::{Pantry, Sheet};
use crate::storage::interchange::{SquareCode, svg};
use crate::text::{
    allergens,
    caution::LOCAL_RULES,
    class::{BenchView, ClassView},
    format_options::FormatOptions,
    language::text,
    name, tr,
    weighing::{self, PartWeights, part_weights},
};

/// The layout before the page is measured.
const ROOMY: Fit = Fit {
    paper: Paper::A5,
    type_size: TypeSize::Roomy,
    one_page: true,
};

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
        made: [
            name::bread(sheet.bread).to_owned(),
            weighing::pieces(&scaled.pieces, options),
        ]
        .join(tr!(", ")),
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

/// The card of a plan: it says between when the bread is ready.
#[must_use]
pub fn with_ready(mut card: BenchCard, ready: String, code: Option<&SquareCode>) -> BenchCard {
    card.steps.push((tr!("Ready").to_owned(), vec![ready]));
    card.fit = fit::card(&card, code.map_or(0.0, code_side));
    card
}

/// The card with temperatures and times of its steps, and the note of its formula.
#[must_use]
pub fn with_run(
    mut card: BenchCard,
    sheet: &Sheet,
    run: &Run,
    code: Option<&SquareCode>,
    options: FormatOptions,
) -> BenchCard {
    for ((_, work), said) in card.steps.iter_mut().zip(run_steps(sheet, run, options)) {
        work.extend(said);
    }
    if !sheet.note.is_empty() {
        let note = (tr!("Note").to_owned(), vec![sheet.note.clone()]);
        card.steps.push(note);
    }
    card.fit = fit::card(&card, code.map_or(0.0, code_side));
    card
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
    let mut wording = Vec::new();
    if !card.fit.one_page {
        wording.push(tr!(
            "So many ingredients take more than one page for the bench, however small they are set."
        ));
    } else if card.fit.paper == Paper::A4 {
        wording.push(tr!(
            "So many ingredients do not fit A5: the bench card is set for A4 or Letter."
        ));
    }
    if !sheet.fit.one_page {
        wording.push(tr!(
            "So many ingredients take more than one page for the class, however small they are set."
        ));
    }
    if card.code.is_none() {
        wording.push(tr!(
            "The link is too long for a square code, so paper carries none. Make it shorter above."
        ));
    }
    wording
}

/// Most rows of one table.
const MOST_ROWS: usize = 34;

/// Makes the sheet of a class, with the square code of the formula's link.
#[must_use]
pub fn class_sheet(
    sheet: &Sheet,
    view: &ClassView,
    pantry: &Pantry,
    code: Option<&SquareCode>,
    options: FormatOptions,
) -> ClassSheet {
    let mut columns: Vec<String> = view
        .benches
        .iter()
        .map(|bench| bench.title.clone())
        .collect();
    columns.extend(view.bowl.iter().map(|bowl| bowl.title.clone()));
    columns.push(tr!("Everything together").to_owned());
    let rows = rows(view);
    let mut notes = taken(view);
    notes.extend(view.bowls.iter().cloned());
    notes.extend(view.loads.iter().cloned());
    notes.extend(view.stagger.iter().map(|advice| advice.to_do.to_string()));
    let mut paper = ClassSheet {
        title: sheet.name.clone(),
        class: view.title.clone(),
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
    let first_half = rows.iter().take(half + 1);
    let part = first_half.filter_map(|row| row.begins.clone()).next_back();
    let mut second = rows.split_off(half);
    if let Some(first) = second.first_mut() {
        first.begins = first.begins.take().or(part);
    }
    vec![rows, second]
}

/// What each bench takes from the teacher's bowl, and what stays in it.
fn taken(view: &ClassView) -> Vec<String> {
    let all = view.benches.iter().chain(&view.bowl);
    let of = |bench: &BenchView| {
        let portions = bench.portions.iter();
        let portions: Vec<String> = portions
            .map(|(name, shows)| format!("{name}: {shows}"))
            .collect();
        (!portions.is_empty()).then(|| format!("{}: {}", bench.title, portions.join(tr!("; "))))
    };
    all.filter_map(of).collect()
}

fn rows(view: &ClassView) -> Vec<SheetRow> {
    let mut rows = Vec::new();
    for part in &view.total {
        for (line, (food, total)) in part.lines.iter().enumerate() {
            let of = |parts: &[PartWeights]| {
                let own = parts.iter().find(|own| own.name == part.name);
                let found = own.and_then(|part| part.lines.get(line));
                found.map(|(_, shows)| shows.clone()).unwrap_or_default()
            };
            let mut cells: Vec<String> = view
                .benches
                .iter()
                .chain(&view.bowl)
                .map(|bench| of(&bench.parts))
                .collect();
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
