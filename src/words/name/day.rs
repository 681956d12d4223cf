//! What steps of the work and days of the week are called.

use crate::engine::formula::Formula;
use crate::engine::plan::{Step, StepAt, Work};
use crate::sheet::civil::Weekday;
use crate::words::say;

/// What a kind of work is called, as something to do.
#[must_use]
pub fn work(work: Work) -> &'static str {
    match work {
        Work::Scald => say!("Scald the paste"),
        Work::CoolPaste => say!("Let the paste cool"),
        Work::ChillPaste => say!("Paste in the fridge"),
        Work::MixPreferment => say!("Mix the preferment"),
        Work::StandPreferment => say!("Let the preferment stand"),
        Work::ChillPreferment => say!("Preferment in the fridge"),
        Work::WarmUp => say!("Stand paste and preferment out"),
        Work::Mix => say!("Weigh and mix the dough"),
        Work::ButterIn => say!("Work the butter in"),
        Work::Bulk => say!("Bulk rise"),
        Work::Divide => say!("Weigh and divide"),
        Work::Round => say!("Pre-shape"),
        Work::Rest => say!("Bench rest"),
        Work::Shape => say!("Fill and shape"),
        Work::Tin => say!("Set in the tin"),
        Work::Proof => say!("Proof"),
        Work::Melt => say!("Melt and thin the chocolate"),
        Work::Drizzle => say!("Drizzle"),
        Work::Brush => say!("Brush with the wash"),
        Work::Bake => say!("Bake"),
        Work::Cool => say!("Cool"),
        Work::Own => say!("Step of your own"),
        Work::LaterDough => say!("Dough from the bowl to the oven"),
        Work::LaterProof => say!("Proof in its turn"),
        Work::Refill => say!("Empty the oven, let it heat up"),
        Work::LaterBake => say!("Bake in its turn"),
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
        Work::Bake => say!("{plain}, phase {}", plain, u32::from(at.of) + 1),
        Work::LaterDough | Work::LaterProof | Work::Refill | Work::LaterBake => {
            say!("Load {}: {}", at.of, plain.to_lowercase())
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
pub fn weekday(day: Weekday) -> &'static str {
    match day {
        Weekday::Monday => say!("Mon"),
        Weekday::Tuesday => say!("Tue"),
        Weekday::Wednesday => say!("Wed"),
        Weekday::Thursday => say!("Thu"),
        Weekday::Friday => say!("Fri"),
        Weekday::Saturday => say!("Sat"),
        Weekday::Sunday => say!("Sun"),
    }
}
