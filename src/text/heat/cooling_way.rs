//! Ways of cooling in sentences: in what, where and for how long, and what makes a slow one pass.

use crate::engine::heat::{CooledRange, CoolingAdvice, CoolingRemedy, CoolingVessel, CoolingWay};
use crate::engine::quantity::{Length, Minutes};
use crate::text::{chart::stopped, format, format_options::FormatOptions, tr};

/// A way of cooling: "In a bowl 145 mm across, 14 mm deep. 20 min on the bench, then the fridge."
#[must_use]
pub fn cooling_way(way: &CoolingWay, deep: Length, options: FormatOptions) -> String {
    let steps = steps(way, options);
    format!("{} {}", lies(way, deep, options), stopped(&steps))
}

/// In what it lies, how wide and how deep.
fn lies(way: &CoolingWay, deep: Length, options: FormatOptions) -> String {
    let across = format::thickness(way.laid.across, options);
    let deep = format::thickness(deep, options);
    if way.laid.count > 1 {
        let count = format::count(way.laid.count, options);
        return in_several(way.vessel, &count, &across, &deep);
    }
    match way.vessel {
        CoolingVessel::Bowl => tr!(
            "In a bowl {across} across, {deep} deep.",
            across = across,
            deep = deep
        ),
        CoolingVessel::Dish => tr!(
            "Spread in a dish, {across} across and {deep} deep.",
            across = across,
            deep = deep
        ),
        CoolingVessel::Tray => tr!(
            "Spread on a tray, as wide as a circle of {across} and {deep} deep.",
            across = across,
            deep = deep
        ),
        CoolingVessel::Jar => tr!(
            "In a jar {across} across, {deep} deep.",
            across = across,
            deep = deep
        ),
        CoolingVessel::Bag => tr!("In a closed bag, pressed flat to {deep}.", deep = deep),
    }
}

/// As `lies`, shared out between several vessels.
fn in_several(vessel: CoolingVessel, count: &str, across: &str, deep: &str) -> String {
    match vessel {
        CoolingVessel::Bowl => tr!(
            "In {count} bowls {across} across, {deep} deep in each.",
            count = count,
            across = across,
            deep = deep
        ),
        CoolingVessel::Dish => tr!(
            "Spread in {count} dishes, {across} across and {deep} deep in each.",
            count = count,
            across = across,
            deep = deep
        ),
        CoolingVessel::Tray => tr!(
            "Spread on {count} trays, as wide as a circle of {across} and {deep} deep on each.",
            count = count,
            across = across,
            deep = deep
        ),
        CoolingVessel::Jar => tr!(
            "In {count} jars {across} across, {deep} deep in each.",
            count = count,
            across = across,
            deep = deep
        ),
        CoolingVessel::Bag => tr!(
            "In {count} closed bags, each pressed flat to {deep}.",
            count = count,
            deep = deep
        ),
    }
}

/// Where it stands and how long, without an end: "20 min on the bench, then the fridge".
fn steps(way: &CoolingWay, options: FormatOptions) -> String {
    let [bench, ice] = [way.bench, way.ice].map(|minutes| format::minutes(minutes, options));
    match (way.bench > Minutes::ZERO, way.ice > Minutes::ZERO) {
        (false, false) => tr!("Straight into the fridge").to_owned(),
        (true, false) => tr!("{bench} on the bench, then the fridge", bench = bench),
        (false, true) => tr!(
            "{ice} in ice water, stirred now and then, then the fridge",
            ice = ice
        ),
        (true, true) => tr!(
            "{bench} on the bench, {ice} in ice water, stirred now and then, then the fridge",
            bench = bench,
            ice = ice
        ),
    }
}

/// Its longest time on the bench, by the way it goes on.
#[must_use]
pub fn bench_at_most(advice: &CoolingAdvice, way: &CoolingWay, options: FormatOptions) -> String {
    let in_ice = way.ice > Minutes::ZERO;
    match advice.bench_at_most {
        Some(minutes) if minutes.minutes() >= 1.0 && in_ice => tr!(
            "Move it to the ice water within {value}.",
            value = format::minutes(minutes, options)
        ),
        Some(minutes) if minutes.minutes() >= 1.0 => tr!(
            "Move it to the fridge within {value}.",
            value = format::minutes(minutes, options)
        ),
        Some(_) if in_ice => tr!("Put it into the ice water at once.").to_owned(),
        Some(_) => tr!("Put it into the fridge at once.").to_owned(),
        None if in_ice => tr!("So short a time in ice water is not enough.").to_owned(),
        None => tr!("Lying like this, the fridge alone is too slow. What passes:").to_owned(),
    }
}

/// One thing that makes it pass, with the time it then takes.
#[must_use]
pub fn cooling_remedy(remedy: &CoolingRemedy, options: FormatOptions) -> String {
    format!(
        "{} {}{}",
        lies(&remedy.way, remedy.deep, options),
        steps(&remedy.way, options),
        then(&remedy.cooled, options)
    )
}

/// ": 5 °C in the middle after 2 h 10 min at most."
fn then(cooled: &CooledRange, options: FormatOptions) -> String {
    let last = cooled
        .slow
        .stages
        .iter()
        .filter_map(|stage| Some((stage.stage.to, stage.ended?)))
        .min_by(|(one, _), (other, _)| one.celsius().total_cmp(&other.celsius()));
    match last {
        Some((to, ended)) => tr!(
            ": {first} in the middle after {second} at most.",
            first = format::temperature(to, options),
            second = format::minutes(ended, options)
        ),
        None => ".".to_owned(),
    }
}
