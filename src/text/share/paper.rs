//! Makes the class sheet; says what is to be known before printing.

use super::columns::continued;
use super::fit::{self, code_side};
use super::on_page::{UNFITTED, allergens_of, on_paper, takes, with_local_rules};
use super::page::{BenchCard, ClassSheet, Paper, SheetRow};
use super::steps::cautions;
use crate::sheet::{Pantry, Sheet};
use crate::storage::interchange::SquareCode;
use crate::text::{
    class::ClassView, format, format_options::FormatOptions, tr, weighing::PartWeights,
};

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
    let rows = rows(view, options);
    let all = view.benches.iter().chain(&view.bowl);
    let mut notes: Vec<String> = view.weighed.iter().cloned().collect();
    notes.extend(all.filter_map(takes));
    notes.extend(below_scale(view));
    notes.extend(view.bowls.iter().cloned());
    notes.extend(view.loads.iter().chain(&view.evened).cloned());
    notes.extend(view.stagger.iter().map(|advice| advice.to_do.to_string()));
    let mut paper = ClassSheet {
        title: sheet.name.clone(),
        class: view.title.clone(),
        columns,
        allergens: allergens_of(sheet, pantry),
        cautions: with_local_rules(cautions(sheet, options)),
        code: code.map(on_paper),
        fit: UNFITTED,
        tables: side_by_side(rows),
        notes,
    };
    paper.fit = fit::sheet(&paper, code.map_or(0.0, code_side));
    paper
}

/// How to weigh what a scale shows nothing of, each once though several benches weigh the same.
fn below_scale(view: &ClassView) -> Vec<String> {
    let all = view.benches.iter().chain(&view.bowl);
    let mut told: Vec<String> = Vec::new();
    for aid in all.flat_map(|bench| &bench.aids) {
        if !told.contains(aid) {
            told.push(aid.clone());
        }
    }
    told
}

/// Rows of a table of a page: what is more makes further tables, two side by side.
const MOST_OF_PAGE: usize = 44;

/// Splits the rows into one table, or tables side by side; each begins with the name of its part.
fn side_by_side(mut rows: Vec<SheetRow>) -> Vec<Vec<SheetRow>> {
    if rows.len() <= MOST_ROWS {
        return vec![rows];
    }
    let half = rows.len().div_ceil(2).min(MOST_OF_PAGE);
    let mut tables = Vec::new();
    while !rows.is_empty() {
        let mut at = half.min(rows.len());
        // A sum stays with its part.
        if rows.get(at).is_some_and(|row| row.is_sum) {
            at = at.saturating_add(1);
        }
        let part = rows.iter().take(at);
        let part = part.filter_map(|row| row.begins.clone()).next_back();
        let mut next = rows.split_off(at);
        if let Some(first) = next.first_mut() {
            let goes_on = part.map(|part| {
                if part.ends_with(&continued("")) {
                    part
                } else {
                    continued(&part)
                }
            });
            first.begins = first.begins.take().or(goes_on);
        }
        tables.push(rows);
        rows = next;
    }
    tables
}

fn rows(view: &ClassView, options: FormatOptions) -> Vec<SheetRow> {
    let benches = || view.benches.iter().chain(&view.bowl);
    let mut rows = Vec::new();
    for part in &view.total {
        let own = |parts: &[PartWeights]| parts.iter().find(|own| own.name == part.name).cloned();
        for (line, (food, total)) in part.lines.iter().enumerate() {
            let of = |parts: &[PartWeights]| {
                let found = own(parts)?.lines.get(line)?.1.clone();
                Some(found)
            };
            let cells = benches().map(|bench| of(&bench.parts).unwrap_or_default());
            rows.push(SheetRow {
                begins: (line == 0).then(|| part.name.clone()),
                food: food.clone(),
                cells: cells.chain([total.clone()]).collect(),
                is_sum: false,
            });
        }
        if part.lines.len() > 1 {
            let sums = benches().map(|bench| own(&bench.parts).map(|own| own.total));
            let sums = sums.map(Option::unwrap_or_default);
            rows.push(SheetRow {
                begins: None,
                food: tr!("In all").to_owned(),
                cells: sums.chain([part.total.clone()]).collect(),
                is_sum: true,
            });
        }
    }
    in_line(rows, options)
}

/// The rows with the decimal signs of each column below each other.
fn in_line(mut rows: Vec<SheetRow>, options: FormatOptions) -> Vec<SheetRow> {
    let columns = rows.first().map_or(0, |row| row.cells.len());
    for column in 0..columns {
        let cells = rows.iter().filter_map(|row| row.cells.get(column).cloned());
        let written = format::in_line(&cells.collect::<Vec<_>>(), options);
        for (row, written) in rows.iter_mut().zip(written) {
            if let Some(cell) = row.cells.get_mut(column) {
                *cell = written;
            }
        }
    }
    rows
}
