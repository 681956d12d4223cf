//! Makes the cards: of a bench and of the teacher, each on one page.

use super::card_steps::CardStep;
use super::card_weights::card_weights;
use super::fit::{self, code_side};
use super::on_page::{UNFITTED, allergens_of, on_paper, takes, with_local_rules};
use super::page::BenchCard;
use super::steps::short_cautions;
use crate::engine::batch::Rounded;
use crate::results::batch::BatchResults;
use crate::results::day::ListedStep;
use crate::sheet::{Pantry, Sheet};
use crate::storage::interchange::SquareCode;
use crate::text::{
    caution,
    class::{BenchView, ClassView},
    format_options::FormatOptions,
    name, tr,
    weighing::{self, PartWeights},
};

/// The steps of a bench: in figures, as the weights need them, and in sentences.
#[derive(Clone, Copy, Debug)]
pub struct CardList<'l> {
    /// In figures.
    pub list: &'l [ListedStep],
    /// In sentences.
    pub steps: &'l [CardStep],
}

/// Makes the bench card of a batch, with the square code of its link; none where there is no batch.
#[must_use]
pub fn bench_card(
    sheet: &Sheet,
    batch: &BatchResults,
    steps: CardList,
    (pantry, code): (&Pantry, Option<&SquareCode>),
    options: FormatOptions,
) -> Option<BenchCard> {
    let scaled = batch.scaled.as_ref().ok()?;
    let rounded = batch.rounded.as_ref()?;
    let parts = card_weights(rounded, steps.list, options);
    let mut card = card_of(sheet, parts, steps.steps, (pantry, code), options);
    let pieces = weighing::pieces(&scaled.pieces, options);
    card.made = [name::bread(sheet.bread).to_owned(), pieces].join(tr!(", "));
    card.below_scale(&caution::below_scale(rounded, options));
    Some(card.fitted(code))
}

/// Makes the card of a bench of a class: it weighs what `rounded` shows, and takes the rest from the
/// teacher's bowl.
#[must_use]
pub fn class_bench_card(
    sheet: &Sheet,
    (bench, rounded): (&BenchView, &Rounded),
    steps: CardList,
    (pantry, code): (&Pantry, Option<&SquareCode>),
    options: FormatOptions,
) -> BenchCard {
    let parts = card_weights(rounded, steps.list, options);
    let mut card = card_of(sheet, parts, steps.steps, (pantry, code), options);
    card.made.clone_from(&bench.title);
    if !bench.portions.is_empty() {
        let taken = PartWeights {
            name: tr!("From the teacher’s bowl").to_owned(),
            lines: bench.portions.clone(),
            total: String::new(),
        };
        card.parts.insert(0, taken);
    }
    card.below_scale(&bench.aids);
    card.fitted(code)
}

/// Makes the teacher's card: what the teacher weighs, or everything together where the teacher weighs
/// nothing; what each bench takes; the oven loads.
#[must_use]
pub fn teacher_card(
    sheet: &Sheet,
    (class, rounded): (&ClassView, Option<&Rounded>),
    steps: CardList,
    (pantry, code): (&Pantry, Option<&SquareCode>),
    options: FormatOptions,
) -> BenchCard {
    let parts = rounded.map_or_else(
        || class.total.clone(),
        |rounded| card_weights(rounded, steps.list, options),
    );
    let mut card = card_of(sheet, parts, steps.steps, (pantry, code), options);
    card.title = tr!("{name}: the teacher’s card", name = sheet.name);
    card.made.clone_from(&class.title);
    let benches = class.benches.iter().chain(&class.bowl);
    let taken: Vec<String> = benches.filter_map(takes).collect();
    card.note(tr!("From the teacher’s bowl"), &taken.join("\n"));
    let stagger = class.stagger.iter().map(|advice| advice.to_do.to_string());
    let loads: Vec<String> = class
        .loads
        .iter()
        .chain(&class.evened)
        .cloned()
        .chain(stagger)
        .collect();
    card.note(tr!("Oven"), &loads.join("\n"));
    if let Some(rounded) = rounded {
        card.below_scale(&caution::below_scale(rounded, options));
    }
    card.fitted(code)
}

fn card_of(
    sheet: &Sheet,
    parts: Vec<PartWeights>,
    steps: &[CardStep],
    (pantry, code): (&Pantry, Option<&SquareCode>),
    options: FormatOptions,
) -> BenchCard {
    let mut card = BenchCard {
        title: sheet.name.clone(),
        made: String::new(),
        allergens: allergens_of(sheet, pantry),
        cautions: with_local_rules(short_cautions(sheet, options)),
        code: code.map(on_paper),
        fit: UNFITTED,
        parts,
        steps: steps.to_vec(),
        notes: Vec::new(),
    };
    card.note(tr!("Note"), &sheet.note);
    card
}

impl BenchCard {
    /// The card of a plan: it says between when the bread is ready.
    #[must_use]
    pub fn with_ready(mut self, ready: &str, code: Option<&SquareCode>) -> Self {
        self.note(tr!("Ready"), ready);
        self.fitted(code)
    }

    fn note(&mut self, name: &str, text: &str) {
        if !text.trim().is_empty() {
            self.notes.push((name.to_owned(), text.trim().to_owned()));
        }
    }

    /// How to weigh what the scale shows nothing of, or something far off.
    fn below_scale(&mut self, aids: &[String]) {
        self.note(tr!("⚠ Scale"), &aids.join("\n"));
    }

    /// The card with the layout that is expected before it is measured.
    fn fitted(mut self, code: Option<&SquareCode>) -> Self {
        self.fit = fit::card(&self, code.map_or(0.0, code_side));
        self
    }
}
