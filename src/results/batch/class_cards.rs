//! The cards of a class: what each kind of bench and the teacher weigh, each with the sheet of its own
//! batch.

use std::num::NonZeroU16;

use super::class::ClassWeights;
use super::class_batch::{of_all, of_bench, of_loaves};
use crate::engine::batch::Rounded;
use crate::engine::class::ClassSettings;
use crate::engine::plan::{StepAt, StepKind};
use crate::engine::quantity::Mass;
use crate::sheet::Sheet;

/// What one card of a class is made from.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassCard {
    /// Its place among the benches.
    pub bench: usize,
    /// The sheet with the batch of this bench.
    pub sheet: Sheet,
    /// What is weighed at it, as the scales show it.
    pub rounded: Rounded,
}

/// The cards of the students' benches, in the order of the class.
#[must_use]
pub fn bench_cards(
    sheet: &Sheet,
    settings: &ClassSettings,
    weights: &ClassWeights,
) -> Vec<ClassCard> {
    let benches = weights.class.benches.iter().zip(&weights.benches);
    let benches = benches.enumerate().filter(|(_, (own, _))| own.students > 0);
    let cards = benches.map(|(bench, (own, rounded))| ClassCard {
        bench,
        sheet: with_loaves(sheet, settings, own.loaves.get()),
        rounded: rounded.clone(),
    });
    cards.collect()
}

/// The teacher's card: what the teacher shows and, where the teacher makes it ahead, the bowl for all;
/// `None` where the teacher weighs nothing.
#[must_use]
pub fn teacher_card(
    sheet: &Sheet,
    settings: &ClassSettings,
    weights: &ClassWeights,
) -> Option<ClassCard> {
    let mut benches = weights.class.benches.iter();
    let own = benches.position(|bench| bench.students == 0);
    let shown = own.and_then(|bench| weights.benches.get(bench));
    let rounded = match (shown, &weights.bowl) {
        (Some(shown), Some(bowl)) => with_bowl(shown.clone(), bowl),
        (Some(shown), None) => shown.clone(),
        (None, Some(bowl)) => bowl.clone(),
        (None, None) => return None,
    };
    Some(ClassCard {
        bench: own.unwrap_or_default(),
        sheet: with_loaves(sheet, settings, settings.shown.max(1).into()),
        rounded,
    })
}

/// The sheet that the code of the class sheet opens: the loaves of a student's bench as the sheet
/// prints them, or those of all where the class is shared as a whole.
///
/// ```
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::batch::{class_cards, scale};
/// use softcrumb::sheet::examples;
///
/// // The batch is the formula made once; the class makes loaves of 450 g, thirteen in all.
/// let (_, sheet) = examples().remove(0);
/// let class = ClassSettings::default();
/// let dough = |whole| scale(&class_cards::opened(&sheet, &class, whole)).unwrap().needed.grams();
/// assert!((dough(false) - 450.0).abs() < 1e-6);
/// assert!((dough(true) - 13.0 * 450.0).abs() < 1e-6);
/// ```
#[must_use]
pub fn opened(sheet: &Sheet, settings: &ClassSettings, whole: bool) -> Sheet {
    let mut own = sheet.clone();
    own.batch = if whole {
        of_all(sheet, settings)
    } else {
        of_bench(sheet, settings)
    };
    own
}

fn with_loaves(sheet: &Sheet, settings: &ClassSettings, loaves: u32) -> Sheet {
    let mut own = sheet.clone();
    let loaves = u16::try_from(loaves).ok().and_then(NonZeroU16::new);
    if let Some(loaves) = loaves {
        own.batch = of_loaves(sheet, settings, loaves);
    }
    own
}

/// What is weighed at a bench, with the parts that are weighed into the bowl for all.
fn with_bowl(mut bench: Rounded, bowl: &Rounded) -> Rounded {
    let filled = |part: usize| {
        let own = bowl.formula.parts.get(part);
        own.is_some_and(|own| own.mass() > Mass::ZERO)
    };
    for (at, part) in bench.formula.parts.iter_mut().enumerate() {
        if let Some(own) = bowl.formula.parts.get(at).filter(|_| filled(at)) {
            part.clone_from(own);
        }
    }
    for line in &mut bench.lines {
        if let Some(own) = bowl.line(line.at).filter(|_| filled(line.at.part)) {
            line.clone_from(own);
        }
    }
    bench
}

/// Whether a step makes a paste or preferment, which the teacher may make ahead for all.
///
/// ```
/// use softcrumb::engine::plan::{StepAt, StepKind};
/// use softcrumb::results::batch::class_cards::is_ahead;
///
/// assert!(is_ahead(StepAt { work: StepKind::Scald, of: 0 }));
/// assert!(!is_ahead(StepAt { work: StepKind::Mix, of: 0 }));
/// ```
#[must_use]
pub const fn is_ahead(step: StepAt) -> bool {
    matches!(
        step.work,
        StepKind::Scald
            | StepKind::CoolPaste
            | StepKind::ChillPaste
            | StepKind::MixPreferment
            | StepKind::StandPreferment
            | StepKind::ChillPreferment
    )
}
