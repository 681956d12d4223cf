//! The sentence of a step at the bench, with its figures in it.

use super::bench_ahead::ahead;
use super::bench_oven::{baking, done_at, heating, taking_out};
use super::bench_pieces::pieces;
use super::rise::{signs, signs_of};
use crate::engine::formula::Formula;
use crate::engine::plan::StepKind;
use crate::engine::quantity::Temperature;
use crate::results::day::{BenchStep, WhichRise};
use crate::results::heat::is_met;
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, tr};

/// The sentence of a step: "Pour 112 g of boiling water over both flours …".
#[must_use]
pub fn bench_sentence(
    step: &BenchStep,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> String {
    ahead(step, formula, zone, options)
        .or_else(|| dough(step, zone, options))
        .or_else(|| pieces(step, formula, options))
        .or_else(|| oven(step, zone, options))
        .unwrap_or_else(|| plain(step).to_owned())
}

/// A step without figures of its own.
fn plain(step: &BenchStep) -> &'static str {
    if let BenchStep::Plain(kind) = step {
        if *kind == StepKind::Brush {
            tr!("Stir the wash smooth and brush it on thinly.")
        } else {
            signs(*kind)
        }
    } else {
        ""
    }
}

/// Mixing, butter, and both rises.
fn dough(step: &BenchStep, zone: &Zone, options: FormatOptions) -> Option<String> {
    if let BenchStep::Mix {
        butter_later,
        bowl,
        minutes,
        ..
    } = step
    {
        let minutes = format::minutes(*minutes, options);
        let mixed = if *butter_later {
            tr!(
                "Everything but the butter into the mixer, {minutes}.",
                minutes = minutes
            )
        } else {
            tr!("Everything into the mixer, {minutes}.", minutes = minutes)
        };
        let bowl = bowl.map(|bowl| format::temperature(bowl, options));
        let warmed = bowl.map(|bowl| tr!("Warm the bowl to {bowl} first.", bowl = bowl));
        return Some(warmed.map_or(mixed.clone(), |warmed| format!("{warmed} {mixed}")));
    }
    if let BenchStep::ButterIn { .. } = step {
        return Some(tr!("Work it in bit by bit until the dough is smooth again.").to_owned());
    }
    if let BenchStep::Rise { which, at, between } = step {
        let [soonest, latest] = between.map(|at| format::clock_at(at, zone));
        let at = format::temperature(*at, options);
        return Some(rise(*which, &at, &soonest, &latest));
    }
    None
}

/// The oven's steps.
fn oven(step: &BenchStep, zone: &Zone, options: FormatOptions) -> Option<String> {
    if let BenchStep::Preheat { phase, minutes } = step {
        return Some(heating(phase.as_ref(), *minutes, options));
    }
    if let BenchStep::Bake {
        phase,
        minutes,
        core,
    } = step
    {
        return Some(baking(phase.as_ref(), *minutes, core.as_ref(), options));
    }
    if let BenchStep::Cool { core, cut } = step {
        return Some(taking_out(core.as_ref(), *cut, zone, options));
    }
    None
}

/// What is to be known beside the sentence, in a line: how warm the dough comes off the mixer.
#[must_use]
pub fn bench_note(step: &BenchStep, options: FormatOptions) -> Option<String> {
    if let BenchStep::ButterIn { dough } = step {
        return Some(expected_dough(*dough, options));
    }
    let BenchStep::Mix { dough, wished, .. } = step else {
        return None;
    };
    let is_colder = wished.is_some_and(|wished| *dough < wished && !is_met(*dough, wished));
    let near = format::near_temperature(*dough, options);
    Some(match *wished {
        Some(wished) if is_colder => tr!(
            "Dough at {dough}, not {wished}: too cold, see Heat.",
            dough = near,
            wished = format::temperature(wished, options)
        ),
        Some(wished) => tr!(
            "Dough at {dough} instead of {wished}: see Heat.",
            dough = near,
            wished = format::temperature(wished, options)
        ),
        None => expected_dough(*dough, options),
    })
}

/// How warm the dough is expected off the mixer.
pub fn expected_dough(dough: Temperature, options: FormatOptions) -> String {
    tr!(
        "Expected dough temperature: {dough}.",
        dough = format::near_temperature(dough, options)
    )
}

/// The sentence while a step runs and there is nothing to do; `None` where nothing is to be watched.
#[must_use]
pub fn bench_meanwhile(
    step: &BenchStep,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> Option<String> {
    if let BenchStep::Bake { core, .. } = step {
        return core.as_ref().map(|core| done_at(core, options));
    }
    let is_watched = matches!(
        step,
        BenchStep::Rise { .. }
            | BenchStep::Rest { .. }
            | BenchStep::Stand { .. }
            | BenchStep::WarmUp { .. }
            | BenchStep::CoolPaste { .. }
    );
    let sentence = is_watched.then(|| bench_sentence(step, formula, zone, options))?;
    // Where and how warm, then what to look for.
    Some(if let BenchStep::Rise { which, .. } = step {
        format!("{sentence} {}", signs_of(*which))
    } else {
        sentence
    })
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
