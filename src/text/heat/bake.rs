//! The bake: phases, time, core.

use crate::engine::heat::{
    BakeTime, BakedShape, CUT_AT, CoreTarget, HeatFrom, LoafBody, LoafCooling, PhaseAdvice,
    ReviewedPhase, still_to_fan,
};
use crate::engine::quantity::Temperature;
use crate::text::{
    Advice, format,
    format_options::FormatOptions,
    tr,
    unit::{TemperatureUnit, Units},
};

/// One phase: when, and what any oven is set to, still or fan, in either unit.
#[must_use]
pub fn phase(phase: &ReviewedPhase, options: FormatOptions) -> String {
    let until = tr!(
        "{first} to {second}",
        first = format::minutes(phase.begins, options),
        second = format::minutes(phase.ends, options)
    );
    let from = match phase.phase.from {
        HeatFrom::Both => tr!("above and below"),
        HeatFrom::Top => tr!("above"),
        HeatFrom::Bottom => tr!("below"),
    };
    let still = both_units(phase.as_still, options);
    let fan = still_to_fan(phase.as_still).map_or_else(
        |_| String::new(),
        |fan| tr!(", fan oven {value}", value = both_units(fan, options)),
    );
    tr!(
        "{until}, heat from {from}. Conventional oven: {still}{fan}.",
        until = until,
        from = from,
        still = still,
        fan = fan
    )
}

/// A temperature in the unit that is set and, in brackets, in the other: "180 °C (356 °F)".
fn both_units(at: Temperature, options: FormatOptions) -> String {
    let temperature = match options.units.temperature {
        TemperatureUnit::Celsius => TemperatureUnit::Fahrenheit,
        TemperatureUnit::Fahrenheit => TemperatureUnit::Celsius,
    };
    let units = Units {
        temperature,
        ..options.units
    };
    let other = FormatOptions { units, ..options };
    format!(
        "{} ({})",
        format::temperature(at, options),
        format::temperature(at, other)
    )
}

/// What to do as a phase begins; `None` for nothing.
#[must_use]
pub fn phase_advice(advice: PhaseAdvice) -> Option<&'static str> {
    match advice {
        PhaseAdvice::Leave => None,
        PhaseAdvice::Tent => Some(tr!(
            "Where the rich top browns too fast towards the end, put foil over it like a tent that touches nothing."
        )),
        PhaseAdvice::MoveDown => Some(tr!(
            "Move it a shelf down: heat from above alone browns it before the middle is done."
        )),
    }
}

/// How long it takes, and as what it bakes.
fn bakes_in(time: &BakeTime, options: FormatOptions) -> String {
    let likely = format::minutes(time.likely, options);
    let range = format::minutes_range(time.from, time.to, options);
    let mass = format::mass(time.to_bake.baked.dough, options);
    let baked = &time.to_bake.baked;
    match (baked.shape, baked.suits) {
        (BakedShape::Loaf, Some(suits)) => tr!(
            "{mass} of dough is little for this tin, which takes {suits} or more. As a loaf in a tin of its own size it bakes {likely} ({range}).",
            mass = mass,
            suits = format::mass(suits, options),
            likely = likely,
            range = range
        ),
        (BakedShape::Loaf, None) => tr!(
            "{mass} of dough in a tin bake as one loaf, however many pieces touch: {likely} ({range}).",
            mass = mass,
            likely = likely,
            range = range
        ),
        (BakedShape::Apart, _) => tr!(
            "Pieces of {mass} that stand apart bake in {likely} ({range}).",
            mass = mass,
            likely = likely,
            range = range
        ),
    }
}

/// What the time is scaled from: of a loaf with the tin that it is taken to have baked in, which suits
/// its dough.
fn scaled_from(time: &BakeTime, options: FormatOptions) -> String {
    let baked = &time.from_bake.baked;
    let minutes = format::minutes(time.known, options);
    let oven = format::temperature(time.from_bake.oven, options);
    let mass = format::mass(baked.dough, options);
    match baked.body {
        LoafBody::Bar { long, wide, .. } => {
            let [long, wide] = [long, wide].map(|side| format::thickness(side, options));
            tr!(
                "Scaled from {minutes} at {oven} for {mass} of dough in a tin of {long} × {wide}.",
                minutes = minutes,
                oven = oven,
                mass = mass,
                long = long,
                wide = wide
            )
        }
        LoafBody::Round { .. } => tr!(
            "Scaled from {minutes} at {oven} for pieces of {mass} that stand apart.",
            minutes = minutes,
            oven = oven,
            mass = mass
        ),
    }
}

/// How long it takes, scaled from the known bake.
#[must_use]
pub fn bake_time(time: &BakeTime, options: FormatOptions) -> Advice {
    Advice {
        means: format!("{} {}", bakes_in(time, options), scaled_from(time, options)).into(),
        to_do: tr!(
            "Time is a hint; the temperature in the middle is the test. Begin to measure at the \
             shorter time."
        )
        .into(),
        source: if time.oven.is_some() {
            tr!(
                "conduction (Carslaw and Jaeger 1959), scaled from the known bake and by the bakes of your oven"
            )
        } else {
            tr!(
                "conduction (Carslaw and Jaeger 1959), scaled from the known bake; ovens differ: common practice"
            )
        }
        .into(),
    }
}

/// Where the known bake comes from.
#[must_use]
pub fn known_bake(is_usual: bool) -> &'static str {
    if is_usual {
        tr!("This is the usual bake of this bread. Type your own once one has worked.")
    } else {
        tr!("This is your own bake. Times are scaled from it.")
    }
}

/// How long the bread cools until it is cut.
#[must_use]
pub fn loaf_cooling(cooling: &LoafCooling, options: FormatOptions) -> Advice {
    Advice {
        means: tr!(
            "On a rack it is cool enough to cut after {likely} ({range}).",
            likely = format::minutes(cooling.likely, options),
            range = format::minutes_range(cooling.from, cooling.to, options)
        )
        .into(),
        to_do: tr!(
            "Take it out of the tin at once. Cut it when the middle is at {value} or the bottom no \
             longer feels warm.",
            value = format::temperature(CUT_AT, options)
        )
        .into(),
        source: tr!("conduction (Carslaw and Jaeger 1959); what bakeries wait: common practice")
            .into(),
    }
}

/// How hot the middle should be.
#[must_use]
pub fn core(core: &CoreTarget, boils: Temperature, options: FormatOptions) -> String {
    let range = format::temperature_range(core.from, core.to, options);
    if core.capped {
        tr!(
            "Done at {range} in the middle. Water boils at {value} here, and the crumb gets no hotter.",
            range = range,
            value = format::temperature(boils, options)
        )
    } else {
        tr!("Done at {range} in the middle.", range = range)
    }
}
