//! What all printed pages have: the layout before they are measured, allergens, code, cautions.

use super::fit::{LEAST, code_side};
use super::page::{Fit, Paper};
use crate::engine::nutrition::LabelLaw;
use crate::results::batch;
use crate::sheet::{Pantry, Sheet};
use crate::storage::interchange::{SquareCode, svg};
use crate::text::{allergens, caution::LOCAL_RULES, class::BenchView, language::text};

/// The layout before the page is measured.
pub(super) const UNFITTED: Fit = Fit {
    paper: Paper::A5,
    points: LEAST,
    one_page: true,
};

/// The allergens of a formula as sentences.
pub(super) fn allergens_of(sheet: &Sheet, pantry: &Pantry) -> String {
    let found = batch::allergens::of(&sheet.formula, pantry, LabelLaw::Eu);
    allergens::view(&found, &sheet.formula).says
}

/// Draws a code at its size on paper.
pub(super) fn on_paper(code: &SquareCode) -> String {
    let side = code_side(code);
    let size = format!("<svg width=\"{side:.1}mm\" height=\"{side:.1}mm\" ");
    svg(code).replacen("<svg ", &size, 1)
}

/// Some cautions, then the authority that decides.
pub(super) fn with_local_rules(mut cautions: Vec<String>) -> Vec<String> {
    cautions.push(text(LOCAL_RULES).to_owned());
    cautions
}

/// What a bench takes from the teacher's bowl, or what stays in it.
pub(super) fn takes(bench: &BenchView) -> Option<String> {
    let portions = bench.portions.iter();
    let portions: Vec<String> = portions
        .map(|(name, shows)| format!("{name}: {shows}"))
        .collect();
    (!portions.is_empty()).then(|| format!("{}: {}", bench.title, portions.join("; ")))
}
