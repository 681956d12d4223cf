//! Temperatures and times of the steps, part by part, from the run of the dough.

use crate::engine::formula::PartKind;
use crate::engine::quantity::{Minutes, Temperature};
use crate::results::heat::is_met;
use crate::results::run::{Run, Stage, StageKind};
use crate::sheet::Sheet;
use crate::text::{format, format_options::FormatOptions, tr};

/// What temperature and time belong to the steps of each part, in the order of the formula.
#[must_use]
pub fn run_steps(sheet: &Sheet, run: &Run, options: FormatOptions) -> Vec<Vec<String>> {
    let dough = sheet.formula.first_part(PartKind::Final);
    let parts = (0..sheet.formula.parts.len()).map(|part| {
        let own = |stage: &&Stage| match stage.part {
            Some(own) => own == part,
            None => dough == Some(part),
        };
        let stages = run.stages.iter().filter(own);
        stages
            .filter_map(|stage| said(stage, sheet, run, options))
            .collect()
    });
    parts.collect()
}

/// Temperature and time of a stage; none where it takes no time.
fn said(stage: &Stage, sheet: &Sheet, run: &Run, options: FormatOptions) -> Option<String> {
    let [_, likely, _] = stage.lasts;
    let ends = format::near_temperature(stage.ends, options);
    let time = format::about_minutes(likely, options);
    if likely <= Minutes::ZERO && stage.kind != StageKind::Scald {
        return None;
    }
    Some(match stage.kind {
        StageKind::Scald => tr!("It comes to {ends}.", ends = ends),
        StageKind::Stand => tr!(
            "Outside the fridge: {time}, until it is at {ends}.",
            time = time,
            ends = ends
        ),
        StageKind::Chill => tr!("In the fridge: {time}.", time = time),
        StageKind::WarmUp => tr!(
            "Take it out of the fridge {time} before mixing.",
            time = time
        ),
        StageKind::Mix => {
            let mixed = tr!(
                "Mix {time}; the dough comes to {ends}.",
                time = time,
                ends = ends
            );
            match too_cold(stage.ends, sheet.heat.dough, options) {
                Some(advice) => format!("{mixed} {advice}"),
                None => mixed,
            }
        }
        StageKind::Bulk => tr!("First rise: {time}.", time = time),
        StageKind::Shape => tr!("Divide and shape: {time}.", time = time),
        StageKind::Proof => tr!("Second rise, in the tin: {time}.", time = time),
        StageKind::Bake => bake(sheet, run, options)?,
        StageKind::Cool => tr!("Let it cool {time} before cutting.", time = time),
    })
}

/// That a dough is colder than is wanted, and what to do; `None` where it is warm enough.
fn too_cold(dough: Temperature, wanted: Temperature, options: FormatOptions) -> Option<String> {
    (dough < wanted && !is_met(dough, wanted)).then(|| {
        tr!(
            "That is colder than the {wanted} wanted, and it will rise slowly: warm the liquid and let \
             what comes from the fridge stand out first.",
            wanted = format::temperature(wanted, options)
        )
    })
}

/// "Bake 35 min at 180 °C, until the middle is at 88 to 91 °C."
fn bake(sheet: &Sheet, run: &Run, options: FormatOptions) -> Option<String> {
    let core = run.baking.as_ref().ok()?.core;
    let phases = sheet.heat.bake.phases.iter().zip(&run.bake);
    let phases: Vec<String> = phases
        .map(|(phase, lasts)| {
            tr!(
                "{time} at {oven}",
                time = format::about_minutes(*lasts, options),
                oven = format::temperature(phase.temperature, options)
            )
        })
        .collect();
    Some(tr!(
        "Bake {phases}, until the middle is at {from} to {to}.",
        phases = phases.join(tr!(", then ")),
        from = format::near_temperature(core.from, options),
        to = format::near_temperature(core.to, options)
    ))
}
