//! The bench between steps and at its end: until when there is nothing to do, and the summary.

use crate::engine::formula::Formula;
use crate::engine::plan::StepKind;
use crate::engine::quantity::Instant;
use crate::results::day::{SummaryFigure, SummaryRow, Underbaked, WeighedPart};
use crate::sheet::Moment;
use crate::sheet::civil::Zone;
use crate::sheet::day::{Crust, Findings};
use crate::text::{format, format_options::FormatOptions, name, tr};

/// "Nothing to do until 9:45"; with the day where that is not today.
#[must_use]
pub fn nothing_until(until: Instant, now: Moment, zone: &Zone) -> String {
    let today = zone.civil(now.instant()).date == zone.civil(until).date;
    if today {
        tr!(
            "Nothing to do until {time}",
            time = format::clock_at(until, zone)
        )
    } else {
        tr!(
            "Nothing to do until {day}",
            day = format::day_and_clock(until, zone)
        )
    }
}

/// The number of a step: "Step 7 of 19".
#[must_use]
pub fn step_number(number: u32, of: u32, options: FormatOptions) -> String {
    tr!(
        "Step {number} of {of}",
        number = format::count(number, options),
        of = format::count(of, options)
    )
}

/// A paste or preferment as a row to weigh: "Scald, all of it".
#[must_use]
pub fn all_of_part(part: &WeighedPart, formula: &Formula) -> String {
    let own = formula.parts.get(part.part);
    let part = own.map_or_else(String::new, |own| own.name.clone());
    tr!("{part}, all of it", part = part)
}

/// What is in the bowl so far, for those who do not tare: "179 g of 886 g in the bowl".
#[must_use]
pub fn in_the_bowl(
    so_far: crate::engine::quantity::Mass,
    total: crate::engine::quantity::Mass,
    options: FormatOptions,
) -> String {
    tr!(
        "{first} of {second} in the bowl",
        first = format::mass(so_far, options),
        second = format::mass(total, options)
    )
}

/// How brown a crust is.
#[must_use]
pub fn crust(crust: Crust) -> &'static str {
    match crust {
        Crust::Pale => tr!("Pale"),
        Crust::Golden => tr!("Golden brown"),
        Crust::Dark => tr!("Dark brown"),
    }
}

/// What to do with bread whose middle is too cold.
#[must_use]
pub fn underbaked(found: &Underbaked, options: FormatOptions) -> String {
    tr!(
        "{found} is below {wanted}: the middle is not done. Put it back into the oven, and measure again every 3 minutes.",
        found = format::temperature(found.found, options),
        wanted = format::temperature(found.wanted.from, options)
    )
}

/// What a row of the summary is about.
#[must_use]
pub fn summary_name(row: &SummaryRow) -> &'static str {
    if row.of == StepKind::Mix {
        tr!("Dough temperature")
    } else {
        name::work(row.of)
    }
}

/// A figure of the summary; a dash where there is none.
#[must_use]
pub fn summary_figure(figure: Option<SummaryFigure>, options: FormatOptions) -> String {
    match figure {
        Some(SummaryFigure::Measured(at)) => format::temperature(at, options),
        Some(SummaryFigure::Expected(at)) => format::near_temperature(at, options),
        Some(SummaryFigure::Lasts(minutes)) => format::minutes(minutes, options),
        None => "–".to_owned(),
    }
}

/// What was found in a bake, a sentence each.
#[must_use]
pub fn findings(found: &Findings, options: FormatOptions) -> Vec<String> {
    let mut wording = Vec::new();
    wording.extend(found.water.map(|water| {
        tr!(
            "True hydration as weighed, less the steam: {value}.",
            value = format::share(water, options)
        )
    }));
    wording.extend(found.paste.map(|at| {
        tr!(
            "Paste at {value} when last measured.",
            value = format::temperature(at, options)
        )
    }));
    wording.extend(found.bread.map(|bread| {
        tr!(
            "Bread out of the oven {value}.",
            value = format::mass(bread, options)
        )
    }));
    wording.extend(found.core.map(|core| {
        tr!(
            "Middle at {value} at the end of the bake.",
            value = format::temperature(core, options)
        )
    }));
    wording.extend(
        found
            .crust
            .map(|found| tr!("Crust: {value}.", value = crust(found).to_lowercase())),
    );
    wording
}
