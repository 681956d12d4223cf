//! The sentences of the oven's steps at the bench: heating up, a phase of the bake, taking out.

use crate::engine::heat::{CoreTarget, HeatFrom, ReviewedPhase};
use crate::engine::quantity::{Instant, Minutes};
use crate::sheet::civil::Zone;
use crate::text::{format, format_options::FormatOptions, heat, tr};

/// How the oven is set: "180 °C, top and bottom heat".
fn oven(phase: &ReviewedPhase, options: FormatOptions) -> String {
    let at = format::temperature(phase.phase.temperature, options);
    let set = match phase.phase.from {
        HeatFrom::Both => tr!("{at}, top and bottom heat", at = at),
        HeatFrom::Top => tr!("{at}, top heat only", at = at),
        HeatFrom::Bottom => tr!("{at}, bottom heat only", at = at),
    };
    if phase.phase.fan {
        tr!("{set}, with the fan", set = set)
    } else {
        set
    }
}

/// The oven is switched on.
pub(super) fn heating(
    phase: Option<&ReviewedPhase>,
    minutes: Minutes,
    options: FormatOptions,
) -> String {
    let minutes = format::minutes(minutes, options);
    match phase {
        Some(phase) => tr!(
            "Switch the oven on: {oven}. The bread goes in after {minutes}.",
            oven = oven(phase, options),
            minutes = minutes
        ),
        None => tr!(
            "Switch the oven on. The bread goes in after {minutes}.",
            minutes = minutes
        ),
    }
}

/// The bread goes into the oven, or the oven is set otherwise.
pub(super) fn baking(
    phase: Option<&ReviewedPhase>,
    minutes: Minutes,
    core: Option<&CoreTarget>,
    options: FormatOptions,
) -> String {
    let minutes = format::minutes(minutes, options);
    let mut wording = vec![match phase {
        Some(phase) if phase.begins > Minutes::ZERO => tr!(
            "Set the oven to {oven}, for {minutes} more.",
            oven = oven(phase, options),
            minutes = minutes
        ),
        Some(phase) => tr!(
            "Into the oven: {oven}, {minutes}.",
            oven = oven(phase, options),
            minutes = minutes
        ),
        None => tr!("Into the oven for {minutes}.", minutes = minutes),
    }];
    let advice = phase.and_then(|phase| heat::phase_advice(phase.advice));
    wording.extend(advice.map(str::to_owned));
    wording.extend(core.map(|core| done_at(core, options)));
    wording.join(" ")
}

/// How hot the middle is when the bread is done.
pub(super) fn done_at(core: &CoreTarget, options: FormatOptions) -> String {
    tr!(
        "Done at {range} in the middle.",
        range = format::temperature_range(core.from, core.to, options)
    )
}

/// The bread comes out.
pub(super) fn taking_out(
    core: Option<&CoreTarget>,
    cut: Instant,
    zone: &Zone,
    options: FormatOptions,
) -> String {
    let cut = format::day_and_clock(cut, zone);
    match core {
        Some(core) => tr!(
            "Out of the oven at {range} in the middle, out of the tin, onto a rack. Cut it from {cut} on.",
            range = format::temperature_range(core.from, core.to, options),
            cut = cut
        ),
        None => tr!(
            "Out of the oven, out of the tin, onto a rack. Cut it from {cut} on.",
            cut = cut
        ),
    }
}
