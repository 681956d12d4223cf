//! The bake: phases, time, core.

use crate::engine::heat::{BakeTime, CoreTarget, PhaseAdvice, ReviewedPhase};
use crate::engine::quantity::Temperature;
use crate::words::Advice;
use crate::words::manner::Manner;
use crate::words::{name, write};

/// One phase: when, and what another oven is set to.
#[must_use]
pub fn phase(phase: &ReviewedPhase, manner: Manner) -> String {
    let until = format!(
        "{} to {}",
        write::minutes(phase.begins, manner),
        write::minutes(phase.ends, manner)
    );
    let from = name::heat_from(phase.phase.from).to_lowercase();
    if phase.phase.fan {
        format!(
            "{until}, heat from {from}. A still oven: {}.",
            write::temperature(phase.as_still, manner)
        )
    } else {
        format!("{until}, heat from {from}.")
    }
}

/// What to do as a phase begins; `None` for nothing.
#[must_use]
pub const fn phase_advice(advice: PhaseAdvice) -> Option<&'static str> {
    match advice {
        PhaseAdvice::Leave => None,
        PhaseAdvice::Tent => {
            Some("Cover it with foil: a rich top would brown too much by the end.")
        }
        PhaseAdvice::MoveDown => {
            Some("Move it a shelf down: heat from above alone browns it before the middle is done.")
        }
    }
}

/// How long it takes, scaled from the known bake.
#[must_use]
pub fn bake_time(time: &BakeTime, manner: Manner) -> Advice {
    Advice {
        means: format!(
            "From the known bake: {}.",
            write::minutes_range(time.from, time.to, manner)
        )
        .into(),
        to_do: "Time is a hint; the temperature in the middle is the test. Look from the first \
                of the two on."
            .into(),
        source: "conduction, Carslaw and Jaeger 1959; ovens differ: common practice".into(),
    }
}

/// How hot the middle should be.
#[must_use]
pub fn core(core: &CoreTarget, boils: Temperature, manner: Manner) -> String {
    let range = write::temperature_range(core.from, core.to, manner);
    if core.capped {
        format!(
            "Done at {range} in the middle. Water boils at {} here, and the crumb gets no hotter.",
            write::temperature(boils, manner)
        )
    } else {
        format!("Done at {range} in the middle.")
    }
}
