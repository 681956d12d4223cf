//! The bake: phases, time, core.

use crate::engine::heat::{
    BakeTime, CoreTarget, HeatFrom, PhaseAdvice, ReviewedPhase, still_to_fan,
};
use crate::engine::quantity::Temperature;
use crate::words::{
    Advice,
    manner::Manner,
    say,
    unit::{TemperatureUnit, Units},
    write,
};

/// One phase: when, and what any oven is set to, still or fan, in either unit.
#[must_use]
pub fn phase(phase: &ReviewedPhase, manner: Manner) -> String {
    let until = say!(
        "{} to {}",
        write::minutes(phase.begins, manner),
        write::minutes(phase.ends, manner)
    );
    let from = match phase.phase.from {
        HeatFrom::Both => say!("above and below"),
        HeatFrom::Top => say!("above"),
        HeatFrom::Bottom => say!("below"),
    };
    let still = both_units(phase.as_still, manner);
    let fan = still_to_fan(phase.as_still).map_or_else(
        |_| String::new(),
        |fan| say!(", a fan oven {}", both_units(fan, manner)),
    );
    say!(
        "{until}, heat from {from}. A still oven: {still}{fan}.",
        until,
        from,
        still,
        fan
    )
}

/// A temperature in the unit that is set and, in brackets, in the other: "180 °C (356 °F)".
fn both_units(at: Temperature, manner: Manner) -> String {
    let temperature = match manner.units.temperature {
        TemperatureUnit::Celsius => TemperatureUnit::Fahrenheit,
        TemperatureUnit::Fahrenheit => TemperatureUnit::Celsius,
    };
    let units = Units {
        temperature,
        ..manner.units
    };
    let other = Manner { units, ..manner };
    format!(
        "{} ({})",
        write::temperature(at, manner),
        write::temperature(at, other)
    )
}

/// What to do as a phase begins; `None` for nothing.
#[must_use]
pub fn phase_advice(advice: PhaseAdvice) -> Option<&'static str> {
    match advice {
        PhaseAdvice::Leave => None,
        PhaseAdvice::Tent => Some(say!(
            "Cover it with foil: a rich top would brown too much by the end."
        )),
        PhaseAdvice::MoveDown => Some(say!(
            "Move it a shelf down: heat from above alone browns it before the middle is done."
        )),
    }
}

/// How long it takes, scaled from the known bake.
#[must_use]
pub fn bake_time(time: &BakeTime, manner: Manner) -> Advice {
    Advice {
        means: say!(
            "From the known bake: {}.",
            write::minutes_range(time.from, time.to, manner)
        )
        .into(),
        to_do: say!(
            "Time is a hint; the temperature in the middle is the test. Look from the first \
                of the two on."
        )
        .into(),
        source: say!("conduction, Carslaw and Jaeger 1959; ovens differ: common practice").into(),
    }
}

/// How hot the middle should be.
#[must_use]
pub fn core(core: &CoreTarget, boils: Temperature, manner: Manner) -> String {
    let range = write::temperature_range(core.from, core.to, manner);
    if core.capped {
        say!(
            "Done at {range} in the middle. Water boils at {} here, and the crumb gets no hotter.",
            range,
            write::temperature(boils, manner)
        )
    } else {
        say!("Done at {range} in the middle.", range)
    }
}
