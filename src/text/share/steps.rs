//! The steps of a formula in sentences, part by part, each with the caution that belongs to it.

use crate::engine::formula::{Part, PartKind};
use crate::sheet::Sheet;
use crate::text::{
    caution::{Hazard, safety, safety_line},
    chart::listed,
    format_options::FormatOptions,
    name, tr,
};

/// Returns the steps of each part in the order of the formula, then its cautions.
#[must_use]
pub fn steps(sheet: &Sheet, options: FormatOptions) -> Vec<Vec<String>> {
    let parts = sheet.formula.parts.iter().zip(work(sheet));
    parts
        .map(|(part, mut steps)| {
            let cautions = hazards_of(part.kind).iter();
            steps.extend(cautions.map(|step| safety(*step, options).sentence()));
            steps
        })
        .collect()
}

/// Returns the steps of each part without the cautions.
#[must_use]
pub fn work(sheet: &Sheet) -> Vec<Vec<String>> {
    let ahead = |part: &&Part| matches!(part.kind, PartKind::Paste | PartKind::Preferment);
    let parts = || sheet.formula.parts.iter();
    let ahead: Vec<String> = parts()
        .filter(ahead)
        .map(|part| name::part(part).to_owned())
        .collect();
    parts().map(|part| of_part(part.kind, &ahead)).collect()
}

/// Returns the cautions of all parts, each once, in the order of the work.
pub(super) fn cautions(sheet: &Sheet, options: FormatOptions) -> Vec<String> {
    let all = hazards(sheet);
    all.map(|step| safety(step, options).sentence()).collect()
}

/// The same, a line each.
pub(super) fn short_cautions(sheet: &Sheet, options: FormatOptions) -> Vec<String> {
    let all = hazards(sheet);
    all.map(|step| format!("{}.", safety_line(step, options)))
        .collect()
}

fn hazards(sheet: &Sheet) -> impl Iterator<Item = Hazard> {
    let wanted = move |step: &Hazard| {
        let mut parts = sheet.formula.parts.iter();
        parts.any(|part| hazards_of(part.kind).contains(step))
    };
    Hazard::ALL.into_iter().filter(wanted)
}

/// The cautions of a kind of part.
#[must_use]
pub const fn hazards_of(kind: PartKind) -> &'static [Hazard] {
    match kind {
        PartKind::Paste => &[Hazard::Scalding, Hazard::CoolingPaste],
        PartKind::Preferment => &[Hazard::KeepingCold],
        PartKind::Final => &[Hazard::Mixing, Hazard::RawDough, Hazard::Baking],
        PartKind::Topping => &[Hazard::HotChocolate],
        PartKind::Filling | PartKind::Wash => &[],
    }
}

fn of_part(kind: PartKind, ahead: &[String]) -> Vec<String> {
    match kind {
        PartKind::Paste => vec![
            tr!("Pour the boiling liquid on the flour, stir until no dry spot is left, cover and cool.")
                .to_owned(),
        ],
        PartKind::Preferment => {
            vec![tr!("Mix to a stiff dough, cover, and leave it in the fridge overnight.").to_owned()]
        }
        PartKind::Final => {
            let mut steps = Vec::new();
            if let Some(list) = listed(ahead) {
                steps.push(tr!("Put {list} into the mixer.", list = list));
            }
            steps.push(
                tr!("Mix everything to a smooth, stretchy dough; let it rise, divide, shape, and let \
                 it rise again.")
                    .to_owned(),
            );
            steps.push(tr!("Bake until the middle is done by the thermometer.").to_owned());
            steps
        }
        PartKind::Filling => {
            vec![tr!("Share it out among the pieces and close them well.").to_owned()]
        }
        PartKind::Topping => {
            vec![tr!("Stir it smooth and drizzle or spread it on just before baking.").to_owned()]
        }
        PartKind::Wash => vec![tr!("Stir it smooth and brush it on before baking.").to_owned()],
    }
}
