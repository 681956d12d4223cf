//! What steps of the work and days of the week are called.

use crate::engine::formula::Formula;
use crate::engine::plan::{Step, StepAt, StepKind};
use crate::sheet::civil::Weekday;
use crate::text::tr;

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

/// What a step is called: the user's own name, else that of its work, with the part where there are
/// several, and the phase after the first.
#[must_use]
pub fn step(step: &Step, formula: &Formula) -> String {
    if step.name.is_empty() {
        step_at(step.at, formula)
    } else {
        step.name.clone()
    }
}

/// What the step at a place is called where it has no name of its own.
#[must_use]
pub fn step_at(at: StepAt, formula: &Formula) -> String {
    let plain = work(at.work);
    match at.work {
        StepKind::Scald
        | StepKind::CoolPaste
        | StepKind::ChillPaste
        | StepKind::MixPreferment
        | StepKind::StandPreferment
        | StepKind::ChillPreferment => of_part(at, formula, plain),
        StepKind::Bake if at.of > 0 => tr!(
            "{plain}, phase {value}",
            plain = plain,
            value = u32::from(at.of) + 1
        ),
        StepKind::LaterDough | StepKind::LaterProof | StepKind::Refill | StepKind::LaterBake => {
            tr!(
                "Load {first}: {second}",
                first = at.of,
                second = plain.to_lowercase()
            )
        }
        StepKind::WarmUp
        | StepKind::Mix
        | StepKind::ButterIn
        | StepKind::Bulk
        | StepKind::Divide
        | StepKind::Round
        | StepKind::Rest
        | StepKind::Shape
        | StepKind::Tin
        | StepKind::Proof
        | StepKind::Melt
        | StepKind::Drizzle
        | StepKind::Brush
        | StepKind::Preheat
        | StepKind::Bake
        | StepKind::Cool
        | StepKind::Own => plain.to_owned(),
    }
}

/// "Mix the preferment: Night dough" where the formula has more than one of that kind.
fn of_part(at: StepAt, formula: &Formula, plain: &str) -> String {
    let Some(own) = formula.parts.get(usize::from(at.of)) else {
        return plain.to_owned();
    };
    let alike = formula
        .parts
        .iter()
        .filter(|part| part.kind == own.kind)
        .count();
    if alike > 1 && !own.name.is_empty() {
        format!("{plain}: {}", own.name)
    } else {
        plain.to_owned()
    }
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
