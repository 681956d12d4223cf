//! The sentences of the steps at the bench that make paste and preferment.

use super::bench_pieces::line_name;
use crate::engine::formula::{Formula, LineAt};
use crate::results::day::BenchStep;
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, heat, tr};

/// The sentence of a step of a paste or preferment; `None` for other steps.
pub(super) fn ahead(
    step: &BenchStep,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> Option<String> {
    if let BenchStep::Scald {
        liquid,
        liquids,
        flours,
    } = step
    {
        let liquid = format::mass(*liquid, options);
        return Some(scald(&liquid, &liquid_name(liquids, formula), *flours));
    }
    if let BenchStep::CoolPaste { way } = step {
        return Some(match way {
            Some((way, deep)) => heat::cooling_way(way, *deep, options),
            None => tr!("Let it cool, covered, in a shallow layer.").to_owned(),
        });
    }
    if let BenchStep::MixPreferment { stands } = step {
        return Some(if stands.minutes() > 0.0 {
            tr!(
                "Mix to a stiff dough and cover it. It stands in the room for {time}.",
                time = format::minutes(*stands, options)
            )
        } else {
            tr!("Mix to a stiff dough and cover it.").to_owned()
        });
    }
    standing(step, formula, zone, options)
}

/// In the fridge, in the room, and out of the fridge.
fn standing(
    step: &BenchStep,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> Option<String> {
    if let BenchStep::IntoFridge { part, until } = step {
        return Some(tr!(
            "{part} into the fridge, covered. It comes out {when}.",
            part = part_name(*part, formula),
            when = format::day_and_clock(*until, zone)
        ));
    }
    if let BenchStep::Stand { room, until } = step {
        return Some(tr!(
            "It stands covered at {room} and goes into the fridge at {time}.",
            room = format::temperature(*room, options),
            time = format::clock_at(*until, zone)
        ));
    }
    if let BenchStep::WarmUp { minutes } = step {
        return Some(tr!(
            "Paste and preferment out of the fridge: {minutes} in the room before they are mixed in.",
            minutes = format::minutes(*minutes, options)
        ));
    }
    None
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

fn part_name(part: usize, formula: &Formula) -> String {
    let own = formula.parts.get(part);
    own.map_or_else(String::new, |own| own.name.clone())
}
