//! Answers: what each row of the place says of itself in one line.

use crate::engine::heat::{CookedPaste, CoreTarget, LoafCooling, Programme};
use crate::engine::quantity::Minutes;
use crate::results::heat::{CoolingResult, DoughFit, DoughOffMixer};
use crate::sheet::Kitchen;
use crate::text::{format, format_options::FormatOptions, tr};

/// The temperatures of a kitchen: "room 21 · flour 20 · fridge 4 · tap 14 °C".
#[must_use]
pub fn kitchen_answer(kitchen: &Kitchen, options: FormatOptions) -> String {
    let number = |at| format::box_temperature(at, options);
    tr!(
        "room {room} · flour {flour} · fridge {fridge} · tap {tap}",
        room = number(kitchen.room),
        flour = number(kitchen.flour_at()),
        fridge = number(kitchen.fridge),
        tap = format::temperature(kitchen.tap, options)
    )
}

/// The dough off the mixer: as it was measured, or as a thermometer can tell what is predicted.
#[must_use]
pub fn off_mixer(dough: &DoughOffMixer, options: FormatOptions) -> String {
    if dough.is_measured {
        format::temperature(dough.temperature, options)
    } else {
        format::near_temperature(dough.temperature, options)
    }
}

/// The dough off the mixer beside what is wanted: "12.9 °C (10 to 15), wanted 25 °C: too cold".
#[must_use]
pub fn dough_answer(dough: &DoughOffMixer, options: FormatOptions) -> String {
    let [low, high] = dough
        .between
        .map(|end| format::plain(options.units.temperature.number_of(end), 0, options.numbers));
    let at = off_mixer(dough, options);
    let found = if dough.is_measured {
        tr!("{at}, measured", at = at)
    } else {
        tr!("{at} ({low} to {high})", at = at, low = low, high = high)
    };
    let wanted = format::temperature(dough.wanted, options);
    match dough.fit() {
        DoughFit::Fits => tr!("{found}, as wanted", found = found),
        DoughFit::TooCold => tr!(
            "{found}, wanted {wanted}: too cold",
            found = found,
            wanted = wanted
        ),
        DoughFit::TooWarm => tr!(
            "{found}, wanted {wanted}: too warm",
            found = found,
            wanted = wanted
        ),
    }
}

/// A paste: "70.8 °C, all starch cooked".
#[must_use]
pub fn paste_answer(cooked: &CookedPaste, options: FormatOptions) -> String {
    let hot = format::temperature(cooked.temperature, options);
    if cooked.remedies.is_empty() {
        tr!("{hot}, all starch cooked", hot = hot)
    } else {
        tr!(
            "{hot}: only {share} of its starch cooks",
            hot = hot,
            share = format::share(cooked.cooked, options)
        )
    }
}

/// A cooling: "down to 5 °C in 21 min: passes".
#[must_use]
pub fn cooling_answer(result: &CoolingResult, options: FormatOptions) -> String {
    let Some(cooled) = &result.cooled else {
        return match result.plan {
            None => tr!("if it is cooked, say how hot").to_owned(),
            Some(_) => tr!("cannot be followed").to_owned(),
        };
    };
    if !cooled.slow.passes {
        return tr!("too slow for the rules as it is").to_owned();
    }
    let stages = cooled.slow.stages.iter();
    let coldest = stages.map(|stage| stage.stage.to);
    let coldest = coldest.reduce(|one, other| if other < one { other } else { one });
    match (coldest, cooled.cold()) {
        (Some(to), [_, Some(likely), _]) => tr!(
            "down to {to} in {likely}: passes",
            to = format::temperature(to, options),
            likely = format::minutes(likely, options)
        ),
        _ => tr!("passes").to_owned(),
    }
}

/// A bake of so many minutes in all: "35 min at 180 °C, core 88 to 91 °C".
#[must_use]
pub fn bake_answer(
    minutes: Minutes,
    programme: &Programme,
    core: &CoreTarget,
    options: FormatOptions,
) -> String {
    tr!(
        "{minutes} at {oven}, core {core}",
        minutes = format::minutes(minutes, options),
        oven = format::temperature(programme.mean_as_still, options),
        core = format::temperature_range(core.from, core.to, options)
    )
}

/// How long bread cools: "1 h 56 min on a rack".
#[must_use]
pub fn cut_answer(cooling: &LoafCooling, options: FormatOptions) -> String {
    tr!(
        "{likely} on a rack ({from} to {to})",
        likely = format::minutes(cooling.likely, options),
        from = format::minutes(cooling.from, options),
        to = format::minutes(cooling.to, options)
    )
}
