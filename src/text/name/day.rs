//! What steps of the work and days of the week are called.

use super::formula::part;
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::HeatFrom;
use crate::engine::plan::{Step, StepAt, StepKind};
use crate::sheet::civil::Weekday;
use crate::text::{chart::listed, tr};

/// What a kind of work is called, as something to do.
#[must_use]
pub fn work(work: StepKind) -> &'static str {
    match work {
        StepKind::Scald => tr!("Scald the paste"),
        StepKind::CoolPaste => tr!("Let the paste cool"),
        StepKind::ChillPaste => tr!("Paste in the fridge"),
        StepKind::MixPreferment => tr!("Mix the preferment"),
        StepKind::StandPreferment => tr!("Let the preferment stand"),
        StepKind::ChillPreferment => tr!("Preferment in the fridge"),
        StepKind::WarmUp => tr!("Take out paste and preferment"),
        StepKind::Mix => tr!("Weigh and mix the dough"),
        StepKind::ButterIn => tr!("Work the butter in"),
        StepKind::Bulk => tr!("Bulk rise"),
        StepKind::Divide => tr!("Weigh and divide"),
        StepKind::Round => tr!("Pre-shape"),
        StepKind::Rest => tr!("Bench rest"),
        StepKind::Shape => tr!("Fill and shape"),
        StepKind::Tin => tr!("Set in the tin"),
        StepKind::Proof => tr!("Proof"),
        StepKind::Melt => tr!("Melt and thin the chocolate"),
        StepKind::Drizzle => tr!("Drizzle"),
        StepKind::Brush => tr!("Brush with the wash"),
        StepKind::Preheat => tr!("Heat the oven up"),
        StepKind::Bake => tr!("Bake"),
        StepKind::Cool => tr!("Cool"),
        StepKind::Own => tr!("Step of your own"),
        StepKind::LaterDough => tr!("Dough from the bowl to the oven"),
        StepKind::LaterProof => tr!("Proof in its turn"),
        StepKind::Refill => tr!("Empty the oven, let it heat up"),
        StepKind::LaterBake => tr!("Bake in its turn"),
    }
}

/// What a step is called: the user's own name, else that of its work.
#[must_use]
pub fn step(step: &Step, formula: &Formula) -> String {
    if step.name.is_empty() {
        step_with_heat(step.at, step.heat, formula)
    } else {
        step.name.clone()
    }
}

/// What the step at a place is called where it has no name of its own.
#[must_use]
pub fn step_at(at: StepAt, formula: &Formula) -> String {
    step_with_heat(at, None, formula)
}

/// What the step at a place is called: by the names of the parts of its formula, where that is at hand.
#[must_use]
pub fn step_of(at: StepAt, formula: Option<&Formula>) -> String {
    formula.map_or_else(|| work(at.work).to_owned(), |formula| step_at(at, formula))
}

/// What the step at a place is called, with the heat of the oven where the bake has several phases.
#[must_use]
pub fn step_with_heat(at: StepAt, heat: Option<HeatFrom>, formula: &Formula) -> String {
    let plain = work(at.work);
    if let Some(called) = of_a_part(at, formula) {
        return called;
    }
    match (at.work, heat) {
        (StepKind::Bake, Some(HeatFrom::Both)) => tr!("Bake, top and bottom heat").to_owned(),
        (StepKind::Bake, Some(HeatFrom::Top)) => tr!("Bake, top heat").to_owned(),
        (StepKind::Bake, Some(HeatFrom::Bottom)) => tr!("Bake, bottom heat").to_owned(),
        (StepKind::Bake, None) if at.of > 0 => tr!(
            "{plain}, phase {value}",
            plain = plain,
            value = u32::from(at.of) + 1
        ),
        (
            StepKind::LaterDough | StepKind::LaterProof | StepKind::Refill | StepKind::LaterBake,
            _,
        ) => tr!(
            "Load {first}: {second}",
            first = at.of,
            second = plain.to_lowercase()
        ),
        _ => plain.to_owned(),
    }
}

/// A step of a part, by the part's own name: "Mix Night dough". `None` for other steps, and where the
/// part has no name.
fn of_a_part(at: StepAt, formula: &Formula) -> Option<String> {
    if at.work == StepKind::WarmUp {
        let is_ahead = |kind| matches!(kind, PartKind::Paste | PartKind::Preferment);
        let parts = names_of(formula, is_ahead)?;
        return Some(tr!("Take out {parts}", parts = parts));
    }
    if at.work == StepKind::Brush {
        let part = names_of(formula, |kind| kind == PartKind::Wash)?;
        return Some(tr!("Brush with {part}", part = part));
    }
    let part = || {
        let own = formula.parts.get(usize::from(at.of))?;
        (!own.name.is_empty()).then_some(own.name.as_str())
    };
    if at.work == StepKind::Scald {
        Some(tr!("Make {part}", part = part()?))
    } else if at.work == StepKind::CoolPaste {
        Some(tr!("Let {part} cool", part = part()?))
    } else if at.work == StepKind::MixPreferment {
        Some(tr!("Mix {part}", part = part()?))
    } else if at.work == StepKind::StandPreferment {
        Some(tr!("Let {part} stand", part = part()?))
    } else if matches!(at.work, StepKind::ChillPaste | StepKind::ChillPreferment) {
        Some(tr!("{part} in the fridge", part = part()?))
    } else {
        None
    }
}

/// The names of the parts of some kinds, in a list; `None` without one.
/// The names of some parts, as a list: "Scald and Night dough"; `None` where there is none.
#[must_use]
pub fn names_of(formula: &Formula, is_one: impl Fn(PartKind) -> bool) -> Option<String> {
    let own = formula.parts.iter().filter(|part| is_one(part.kind));
    listed(&own.map(|own| part(own).to_owned()).collect::<Vec<_>>())
}

/// A day of the week, short.
#[must_use]
pub fn weekday(day: Weekday) -> &'static str {
    match day {
        Weekday::Monday => tr!("Mon"),
        Weekday::Tuesday => tr!("Tue"),
        Weekday::Wednesday => tr!("Wed"),
        Weekday::Thursday => tr!("Thu"),
        Weekday::Friday => tr!("Fri"),
        Weekday::Saturday => tr!("Sat"),
        Weekday::Sunday => tr!("Sun"),
    }
}
