//! The bench in sentences: what is weighed, what an actual weight does, how a timer stands.

use crate::engine::formula::{Figure, Figures, Form, Formula};
use crate::engine::quantity::{Mass, Minutes, Temperature, TemperatureChange};
use crate::results::day::{AddMore, as_weighed};
use crate::sheet::Moment;
use crate::sheet::day::{Bench, Timer};
use crate::text::{format, format_options::FormatOptions, name, tr};

/// How a timer stands: "12 min left", "over for 3 min".
#[must_use]
pub fn timer(timer: &Timer, now: Moment, options: FormatOptions) -> String {
    let left = timer.left(now);
    if left > Minutes::ZERO {
        return tr!("{value} left", value = countdown(left, options));
    }
    let gone = now.instant().since(timer.ends.instant());
    if gone.minutes() < 1.0 {
        tr!("over now").to_owned()
    } else {
        tr!("over for {value}", value = format::minutes(gone, options))
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

/// What the weights that really went in do to the dough; empty where they do nothing.
#[must_use]
pub fn weighed_off(formula: &Formula, bench: &Bench, options: FormatOptions) -> String {
    let made = as_weighed(formula, bench);
    // Steam that a paste loses is missing from both.
    let share = |formula| {
        Figures::of(formula, Form::AsMade)
            .share(Figure::TrueWater)
            .ok()
    };
    let (Some(asked), Some(got)) = (share(formula), share(&made)) else {
        return String::new();
    };
    let mut said = Vec::new();
    for weighing in &bench.weighed {
        if let (Some(mass), Some(line)) = (weighing.mass, formula.line(weighing.at)) {
            said.extend(miss(
                &name::food_short(&line.food),
                line.mass,
                mass,
                options,
            ));
        }
    }
    let (asked, got) = (format::share(asked, options), format::share(got, options));
    if asked != got {
        said.push(tr!(
            "True water comes to {got} instead of {asked}.",
            got = got,
            asked = asked
        ));
    }
    said.join(" ")
}

/// "Water is 4 g short."
fn miss(food: &str, asked: Mass, got: Mass, options: FormatOptions) -> Option<String> {
    let off = (got - asked).size();
    let said = format::mass(off, options);
    if got < asked {
        Some(tr!("{food} is {said} short.", food = food, said = said))
    } else if got > asked {
        Some(tr!("{food} is {said} over.", food = food, said = said))
    } else {
        None
    }
}

/// What can be added, as something to tap: "Add 8 g of Water".
#[must_use]
pub fn add_more(more: &AddMore, formula: &Formula, options: FormatOptions) -> String {
    let food = formula
        .line(more.at)
        .map(|line| name::food_short(&line.food));
    let (food, mass) = (food.unwrap_or_default(), format::mass(more.more, options));
    if more.as_asked {
        tr!(
            "Added: {mass} of {food}, and it is as asked",
            mass = mass,
            food = food
        )
    } else {
        tr!(
            "Added: {mass} more of {food}, and the water is as asked",
            mass = mass,
            food = food
        )
    }
}

/// What the weights that really went in do to the dough's temperature; nothing where that is less
/// than can be measured.
#[must_use]
pub fn warmed_by_weights(by: TemperatureChange, options: FormatOptions) -> Option<String> {
    if by.kelvin().abs() < 0.1 {
        return None;
    }
    let by = format::temperature_change(by, options);
    Some(tr!(
        "By that, the temperature of the dough changes by {by}.",
        by = by
    ))
}

/// What the dough's real temperature does to its rise: against what was wished.
#[must_use]
pub fn dough_off(wished: Temperature, got: Temperature, options: FormatOptions) -> String {
    let (asked, warm) = (
        format::temperature(wished, options),
        format::temperature(got, options),
    );
    if asked == warm {
        tr!("The dough is at {warm}, just as wished.", warm = warm)
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
