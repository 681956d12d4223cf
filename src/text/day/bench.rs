//! The bench in sentences: timers, and what deviating masses and temperatures do.

use super::rise::rise_takes;
use crate::engine::formula::Formula;
use crate::engine::plan::StepKind;
use crate::engine::quantity::{Minutes, Temperature, TemperatureChange};
use crate::results::day::{Addition, TimerState, WeighingDifference, WeighingEffect, timer_state};
use crate::sheet::Moment;
use crate::sheet::day::Timer;
use crate::text::{format, format_options::FormatOptions, name, tr};

/// The state of a timer: "12 min left", "over for 3 min".
#[must_use]
pub fn timer(timer: &Timer, now: Moment, options: FormatOptions) -> String {
    match timer_state(timer, now) {
        TimerState::Running(left) => tr!("{value} left", value = countdown(left, options)),
        TimerState::JustEnded => tr!("over now").to_owned(),
        TimerState::Ended(ago) => {
            // Nobody acts on a tenth of a minute.
            let whole = Minutes::from_minutes(libm::floor(ago.minutes())).unwrap_or(ago);
            tr!("over for {value}", value = format::minutes(whole, options))
        }
    }
}

/// "1 h 12 min", "12:05" below an hour.
fn countdown(left: Minutes, options: FormatOptions) -> String {
    if left.minutes() >= 60.0 {
        return format::minutes(left, options);
    }
    let seconds = libm::ceil(left.minutes() * 60.0);
    let minutes = libm::floor(seconds / 60.0);
    let over = seconds - minutes * 60.0;
    format!("{minutes:.0}:{over:02.0}")
}

/// The button that says a step is done; of what is only set going, what it then does.
#[must_use]
pub fn done(kind: StepKind) -> &'static str {
    match kind {
        StepKind::CoolPaste | StepKind::Cool => tr!("It is cooling"),
        StepKind::ChillPaste | StepKind::ChillPreferment => tr!("It is in the fridge"),
        StepKind::WarmUp => tr!("It is out of the fridge"),
        StepKind::Preheat => tr!("The oven is on"),
        StepKind::Bake | StepKind::LaterBake => tr!("It is baking"),
        StepKind::Scald
        | StepKind::MixPreferment
        | StepKind::StandPreferment
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
        | StepKind::Own
        | StepKind::LaterDough
        | StepKind::LaterProof
        | StepKind::Refill => tr!("Done"),
    }
}

/// What the masses that were weighed do to the dough; empty where they do nothing.
#[must_use]
pub fn weighing_effect(
    effect: &WeighingEffect,
    formula: &Formula,
    options: FormatOptions,
) -> String {
    let Some((asked, got)) = effect.true_water else {
        return String::new();
    };
    let differences = effect.differences.iter();
    let mut wording: Vec<String> = differences
        .filter_map(|difference| weighing_difference(difference, formula, options))
        .collect();
    let (asked, got) = (format::share(asked, options), format::share(got, options));
    if asked != got {
        wording.push(tr!(
            "True hydration is {got} instead of {asked}, without the steam.",
            got = got,
            asked = asked
        ));
    }
    wording.extend(
        effect
            .noticeable_warming()
            .map(|by| dough_warming(by, options)),
    );
    let rises = effect.rises.iter();
    wording.extend(rises.map(|(which, [was, now])| rise_takes(*which, *now, *was, options)));
    wording.join(" ")
}

/// "Water is 4 g short."
fn weighing_difference(
    difference: &WeighingDifference,
    formula: &Formula,
    options: FormatOptions,
) -> Option<String> {
    let food = name::food_short(&formula.line(difference.at)?.food);
    let (asked, got) = (difference.target, difference.actual);
    let wording = format::mass((got - asked).size(), options);
    let said = if got < asked {
        tr!("{food} is {said} short.", food = food, said = wording)
    } else {
        tr!("{food} is {said} over.", food = food, said = wording)
    };
    let part = formula.parts.get(difference.at.part);
    let part = part.filter(|_| difference.elsewhere);
    Some(match part {
        Some(part) => format!("{}: {said}", name::part(part)),
        None => said,
    })
}

/// A button for something that was added: "Added: 8 g of Water, and it is as asked".
#[must_use]
pub fn addition(more: &Addition, formula: &Formula, options: FormatOptions) -> String {
    let food = formula
        .line(more.at)
        .map(|line| name::food_short(&line.food));
    let (food, mass) = (food.unwrap_or_default(), format::mass(more.more, options));
    if more.as_asked {
        tr!(
            "Add {mass} of {food}: it is back as planned",
            mass = mass,
            food = food
        )
    } else {
        tr!(
            "Add {mass} more of {food}: hydration is back as planned",
            mass = mass,
            food = food
        )
    }
}

/// What the masses that were weighed do to the dough temperature.
fn dough_warming(by: TemperatureChange, options: FormatOptions) -> String {
    let by = format::temperature_change(by, options);
    tr!("That changes the dough temperature by {by}.", by = by)
}

/// What the measured dough temperature does to the rise, against the wished one.
#[must_use]
pub fn dough_deviation(wished: Temperature, got: Temperature, options: FormatOptions) -> String {
    let (asked, warm) = (
        format::near_temperature(wished, options),
        format::temperature(got, options),
    );
    if asked == warm {
        tr!("The dough is at {warm}, as wanted.", warm = warm)
    } else if got > wished {
        tr!(
            "The dough is at {warm} instead of {asked}: it rises sooner than planned.",
            warm = warm,
            asked = asked
        )
    } else {
        tr!(
            "The dough is at {warm} instead of {asked}: it rises later than planned.",
            warm = warm,
            asked = asked
        )
    }
}
