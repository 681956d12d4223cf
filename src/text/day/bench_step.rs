//! The sentence of a step at the bench, with its figures in it.

use super::bench_oven::{baking, done_at, heating, taking_out};
use super::rise::signs;
use crate::engine::formula::{Formula, LineAt};
use crate::engine::plan::StepKind;
use crate::results::day::{BenchStep, WhichRise};
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, heat, name, tr, weighing};

/// The sentence of a step: "Pour 112 g of boiling water over both flours …".
#[must_use]
pub fn bench_sentence(
    step: &BenchStep,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> String {
    let minutes = |time| format::minutes(time, options);
    match step {
        BenchStep::Scald {
            liquid,
            liquids,
            flours,
        } => scald(
            &format::mass(*liquid, options),
            &liquid_name(liquids, formula),
            *flours,
        ),
        BenchStep::CoolPaste {
            way: Some((way, deep)),
        } => heat::cooling_way(way, *deep, options),
        BenchStep::CoolPaste { way: None } => {
            tr!("Let it cool, covered, in a shallow layer.").to_owned()
        }
        BenchStep::MixPreferment { stands } if stands.minutes() > 0.0 => tr!(
            "Mix to a stiff dough and cover it. It stands in the room for {time}.",
            time = minutes(*stands)
        ),
        BenchStep::MixPreferment { .. } => tr!("Mix to a stiff dough and cover it.").to_owned(),
        BenchStep::IntoFridge { part, until } => tr!(
            "{part} into the fridge, covered. It comes out {when}.",
            part = part_name(*part, formula),
            when = format::day_and_clock(*until, zone)
        ),
        BenchStep::Stand { room, until } => tr!(
            "It stands covered at {room} and goes into the fridge at {time}.",
            room = format::temperature(*room, options),
            time = format::clock_at(*until, zone)
        ),
        BenchStep::WarmUp { minutes: stand } => tr!(
            "Paste and preferment out of the fridge: {minutes} in the room before they are mixed in.",
            minutes = minutes(*stand)
        ),
        BenchStep::Mix { .. } | BenchStep::ButterIn { .. } => mix(step, options),
        BenchStep::Rise { which, at, between } => {
            let [soonest, latest] = between.map(|at| format::clock_at(at, zone));
            rise(
                *which,
                &format::temperature(*at, options),
                &soonest,
                &latest,
            )
        }
        BenchStep::Rest { minutes: rest } => tr!(
            "The pieces rest, covered, for {minutes}.",
            minutes = minutes(*rest)
        ),
        BenchStep::Divide { .. }
        | BenchStep::Round { .. }
        | BenchStep::Shape { .. }
        | BenchStep::Tin { .. } => pieces(step, formula, options),
        BenchStep::Melt { all } => tr!(
            "Melt it gently over hot water, stirring, until it runs: {all} in all.",
            all = format::mass(*all, options)
        ),
        BenchStep::Drizzle { all } => tr!(
            "Drizzle all {all} of the chocolate over it.",
            all = format::mass(*all, options)
        ),
        BenchStep::Preheat { phase, minutes } => heating(phase.as_ref(), *minutes, options),
        BenchStep::Bake {
            phase,
            minutes,
            core,
        } => baking(phase.as_ref(), *minutes, core.as_ref(), options),
        BenchStep::Cool { core, cut } => taking_out(core.as_ref(), *cut, zone, options),
        BenchStep::Plain(StepKind::Brush) => {
            tr!("Stir the wash smooth and brush it on thinly.").to_owned()
        }
        BenchStep::Plain(kind) => signs(*kind).to_owned(),
    }
}

fn scald(liquid: &str, what: &str, flours: usize) -> String {
    match flours {
        1 => tr!(
            "Pour {liquid} of boiling {what} over the flour and stir until no dry spot is left.",
            liquid = liquid,
            what = what
        ),
        2 => tr!(
            "Pour {liquid} of boiling {what} over both flours and stir until no dry spot is left.",
            liquid = liquid,
            what = what
        ),
        _ => tr!(
            "Pour {liquid} of boiling {what} over all the flours and stir until no dry spot is left.",
            liquid = liquid,
            what = what
        ),
    }
}

/// The name of the only liquid, in small letters; "liquid" where there are several.
fn liquid_name(liquids: &[LineAt], formula: &Formula) -> String {
    match liquids {
        [only] => line_name(*only, formula).to_lowercase(),
        _ => tr!("liquid").to_owned(),
    }
}

fn line_name(at: LineAt, formula: &Formula) -> String {
    let line = formula.line(at);
    line.map_or_else(String::new, |line| {
        name::food_short(&line.food).into_owned()
    })
}

fn part_name(part: usize, formula: &Formula) -> String {
    let own = formula.parts.get(part);
    own.map_or_else(String::new, |own| own.name.clone())
}

/// Mixing, and butter.
fn mix(step: &BenchStep, options: FormatOptions) -> String {
    let (butter_later, bowl, minutes) = match step {
        BenchStep::Mix {
            butter_later,
            bowl,
            minutes,
            ..
        } => (*butter_later, *bowl, *minutes),
        BenchStep::ButterIn { dough } => {
            return tr!(
                "Work it in bit by bit until the dough is smooth again. The dough should be at {dough}.",
                dough = format::near_temperature(*dough, options)
            );
        }
        _ => return String::new(),
    };
    let minutes = format::minutes(minutes, options);
    let mixed = if butter_later {
        tr!(
            "Everything but the butter into the mixer, {minutes}.",
            minutes = minutes
        )
    } else {
        tr!("Everything into the mixer, {minutes}.", minutes = minutes)
    };
    match bowl {
        Some(bowl) => {
            let bowl = format::temperature(bowl, options);
            format!(
                "{} {mixed}",
                tr!("Warm the bowl to {bowl} first.", bowl = bowl)
            )
        }
        None => mixed,
    }
}

/// What is to be known beside the sentence, in a line: how warm the dough comes off the mixer.
#[must_use]
pub fn bench_note(step: &BenchStep, options: FormatOptions) -> Option<String> {
    let BenchStep::Mix { dough, wished, .. } = step else {
        return None;
    };
    let dough = format::near_temperature(*dough, options);
    Some(match wished {
        Some(wished) => tr!(
            "Dough at {dough} instead of {wished}: see Heat.",
            dough = dough,
            wished = format::temperature(*wished, options)
        ),
        None => tr!("The dough comes off at {dough}.", dough = dough),
    })
}

/// The sentence while a step runs and there is nothing to do; `None` where nothing is to be watched.
#[must_use]
pub fn bench_meanwhile(
    step: &BenchStep,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> Option<String> {
    match step {
        BenchStep::Rise { .. }
        | BenchStep::Rest { .. }
        | BenchStep::Stand { .. }
        | BenchStep::WarmUp { .. }
        | BenchStep::CoolPaste { .. } => Some(bench_sentence(step, formula, zone, options)),
        BenchStep::Bake { core, .. } => core.as_ref().map(|core| done_at(core, options)),
        _ => None,
    }
}

fn rise(which: WhichRise, at: &str, soonest: &str, latest: &str) -> String {
    match which {
        WhichRise::Bulk => tr!(
            "The dough rises, covered, at {at} to about twice its size: between {soonest} and {latest}.",
            at = at,
            soonest = soonest,
            latest = latest
        ),
        WhichRise::Proof => tr!(
            "The pieces rise, covered, at {at} until they touch: between {soonest} and {latest}.",
            at = at,
            soonest = soonest,
            latest = latest
        ),
    }
}

/// What is done with the pieces between the two rises.
fn pieces(step: &BenchStep, formula: &Formula, options: FormatOptions) -> String {
    let count = |number: u32| format::count(number, options);
    match step {
        BenchStep::Divide { pieces, divided } => {
            let each = divided.as_ref().map_or_else(
                || format::mass(pieces.each, options),
                |divided| weighing::divided(divided, options),
            );
            match pieces.count.get() {
                1 => tr!("It stays in one piece: {each}.", each = each),
                many => tr!(
                    "Divide it into {count} pieces: {each}.",
                    count = count(many),
                    each = each
                ),
            }
        }
        BenchStep::Round { pieces } => match pieces.get() {
            1 => tr!("Round the dough into a ball and cover it.").to_owned(),
            many => tr!("Round {count} balls and cover them.", count = count(many)),
        },
        BenchStep::Shape {
            pieces,
            filling: Some((each, line)),
        } => {
            let what = line.map(|line| line_name(line, formula).to_lowercase());
            tr!(
                "{each} of {what} inside each of the {count} pieces. Close them well.",
                each = format::mass(*each, options),
                what = what.unwrap_or_else(|| tr!("filling").to_owned()),
                count = count(pieces.get())
            )
        }
        BenchStep::Shape {
            pieces,
            filling: None,
        } => match pieces.get() {
            1 => tr!("Shape it as long as the tin.").to_owned(),
            many => tr!("Shape {count} pieces, tight and even.", count = count(many)),
        },
        BenchStep::Tin { pieces, tins, rows } => {
            let tins = tins.map_or(1, std::num::NonZeroU16::get);
            match (pieces.get(), rows) {
                (1, _) => tr!("Into the greased tin, seam down.").to_owned(),
                (many, Some((rows, columns))) if tins == 1 => tr!(
                    "{count} pieces into the greased tin, seam down: rows {rows}, in each {columns}.",
                    count = count(many),
                    rows = count(u32::from(rows.get())),
                    columns = count(u32::from(columns.get()))
                ),
                (many, _) => tr!(
                    "{count} pieces into the greased tins ({tins}), seam down, side by side.",
                    count = count(many),
                    tins = count(u32::from(tins))
                ),
            }
        }
        _ => String::new(),
    }
}
