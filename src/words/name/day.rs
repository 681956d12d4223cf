//! What steps of the work and days of the week are called.

use crate::engine::formula::Formula;
use crate::engine::plan::{Step, StepAt, Work};
use crate::sheet::civil::Weekday;

/// What a kind of work is called, as something to do.
#[must_use]
pub const fn work(work: Work) -> &'static str {
    match work {
        Work::Scald => "Scald the paste",
        Work::CoolPaste => "Let the paste cool",
        Work::ChillPaste => "Paste in the fridge",
        Work::MixPreferment => "Mix the preferment",
        Work::StandPreferment => "Let the preferment stand",
        Work::ChillPreferment => "Preferment in the fridge",
        Work::WarmUp => "Stand paste and preferment out",
        Work::Mix => "Weigh and mix the dough",
        Work::ButterIn => "Work the butter in",
        Work::Bulk => "Bulk rise",
        Work::Divide => "Weigh and divide",
        Work::Round => "Pre-shape",
        Work::Rest => "Bench rest",
        Work::Shape => "Fill and shape",
        Work::Tin => "Set in the tin",
        Work::Proof => "Proof",
        Work::Melt => "Melt and thin the chocolate",
        Work::Drizzle => "Drizzle",
        Work::Brush => "Brush with the wash",
        Work::Bake => "Bake",
        Work::Cool => "Cool",
        Work::Own => "Step of your own",
        Work::LaterDough => "Dough from the bowl to the oven",
        Work::LaterProof => "Proof in its turn",
        Work::Refill => "Empty the oven, let it heat up",
        Work::LaterBake => "Bake in its turn",
    }
}

/// What a step is called: the user's own name, else that of its work, with the stream or phase where
/// there are several.
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
        Work::Scald
        | Work::CoolPaste
        | Work::ChillPaste
        | Work::MixPreferment
        | Work::StandPreferment
        | Work::ChillPreferment => of_stream(at, formula, plain),
        Work::Bake => format!("{plain}, phase {}", u32::from(at.of) + 1),
        Work::LaterDough | Work::LaterProof | Work::Refill | Work::LaterBake => {
            format!("Load {}: {}", at.of, plain.to_lowercase())
        }
        Work::WarmUp
        | Work::Mix
        | Work::ButterIn
        | Work::Bulk
        | Work::Divide
        | Work::Round
        | Work::Rest
        | Work::Shape
        | Work::Tin
        | Work::Proof
        | Work::Melt
        | Work::Drizzle
        | Work::Brush
        | Work::Cool
        | Work::Own => plain.to_owned(),
    }
}

/// "Mix the preferment: Night dough" where the formula has more than one of that kind.
fn of_stream(at: StepAt, formula: &Formula, plain: &str) -> String {
    let Some(own) = formula.streams.get(usize::from(at.of)) else {
        return plain.to_owned();
    };
    let alike = formula
        .streams
        .iter()
        .filter(|stream| stream.kind == own.kind)
        .count();
    if alike > 1 && !own.name.is_empty() {
        format!("{plain}: {}", own.name)
    } else {
        plain.to_owned()
    }
}

/// A day of the week, short.
#[must_use]
pub const fn weekday(day: Weekday) -> &'static str {
    match day {
        Weekday::Monday => "Mon",
        Weekday::Tuesday => "Tue",
        Weekday::Wednesday => "Wed",
        Weekday::Thursday => "Thu",
        Weekday::Friday => "Fri",
        Weekday::Saturday => "Sat",
        Weekday::Sunday => "Sun",
    }
}
