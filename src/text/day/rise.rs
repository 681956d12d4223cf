//! Rises in sentences: how long they take, what that is scaled from, what to look for.

use crate::engine::plan::StepKind;
use crate::engine::quantity::{Factor, Minutes, Temperature};
use crate::engine::rise::{Cardinal, ReferenceBasis, ReferenceRise, Risen};
use crate::results::day::{self, DayResults, WhichRise};
use crate::results::run::DoughBasis;
use crate::text::{format, format_options::FormatOptions, tr};

/// "52 min to 75 min".
#[must_use]
pub fn rise_range(risen: &Risen, options: FormatOptions) -> String {
    let soonest = format::minutes(risen.soonest, options);
    match risen.latest {
        Some(latest) if format::minutes(latest, options) == soonest => soonest,
        Some(latest) => tr!(
            "{soonest} to {value}",
            soonest = soonest,
            value = format::minutes(latest, options)
        ),
        None => tr!("{soonest} or more", soonest = soonest),
    }
}

/// The reference rise that a rise is scaled from, and its spread.
#[must_use]
pub fn basis(anchor: &ReferenceRise, options: FormatOptions) -> String {
    let time = format::minutes(anchor.time, options);
    let at = format::temperature(anchor.at, options);
    match anchor.basis {
        ReferenceBasis::Usual => tr!(
            "Default estimate from a usual dough (1 % instant yeast, 10 % sugar, 1.8 % salt): {time} at {at}. Printed recipes differ by a quarter to a half; likely range {value}.",
            time = time,
            at = at,
            value = format::share(anchor.spread, options)
        ),
        ReferenceBasis::Stated => tr!(
            "Default estimate of the formula: {time} at {at}. Likely range {value}.",
            time = time,
            at = at,
            value = format::share(anchor.spread, options)
        ),
        ReferenceBasis::Bakes(1) => tr!(
            "Based on one bake of yours: {time} at {at}.",
            time = time,
            at = at
        ),
        ReferenceBasis::Bakes(count) => tr!(
            "Based on {first} bakes of yours: {time} at {at}. Likely range {second}.",
            first = format::count(u32::from(count), options),
            time = time,
            at = at,
            second = format::share(anchor.spread, options)
        ),
    }
}

/// A rise as a product that can be reckoned again: known time, dough, warmth.
#[must_use]
pub fn rise_difference(risen: &Risen, here: Temperature, options: FormatOptions) -> String {
    let due = format::minutes(risen.due, options);
    let Some(factors) = day::rise_factors(risen) else {
        return due;
    };
    let times = |factor: Factor| format::plain(factor.number(), 2, options.numbers);
    if matches!(risen.asked.anchor.basis, ReferenceBasis::Bakes(_)) {
        return tr!(
            "{known} (by your bakes, at {at}) × {dough} for what is in this dough × {warmth} for its \
             warmth, with {here} around it = {due}.",
            known = format::minutes(factors.known, options),
            at = format::temperature(risen.asked.anchor.at, options),
            dough = times(factors.dough),
            warmth = times(factors.warmth),
            here = format::temperature(here, options),
            due = due
        );
    }
    tr!(
        "{known} (known, at {at}) × {dough} for what is in this dough × {warmth} for its warmth, with \
         {here} around it = {due}.",
        known = format::minutes(factors.known, options),
        at = format::temperature(risen.asked.anchor.at, options),
        dough = times(factors.dough),
        warmth = times(factors.warmth),
        here = format::temperature(here, options),
        due = due
    )
}

/// The temperatures at which the dough begins to rise, and of the place where it does.
#[must_use]
pub fn rise_begins(results: &DayResults, options: FormatOptions) -> String {
    let place = format::temperature(results.bulk_place, options);
    let dough = match results.run.dough_basis {
        DoughBasis::Predicted => format::near_temperature(results.run.dough, options),
        DoughBasis::Measured | DoughBasis::Wished => {
            format::temperature(results.run.dough, options)
        }
    };
    match results.run.dough_basis {
        DoughBasis::Measured => tr!(
            "The dough came off the mixer at {dough}; it is {place} where it rises.",
            dough = dough,
            place = place
        ),
        DoughBasis::Predicted => tr!(
            "The dough comes off the mixer at about {dough}; it is {place} where it rises.",
            dough = dough,
            place = place
        ),
        DoughBasis::Wished => tr!(
            "The dough temperature is not known: the target, {dough}, is used. It is {place} where it rises.",
            dough = dough,
            place = place
        ),
    }
}

/// What to look for in a rise, beside the sentence that says how far it goes.
pub(super) fn signs_of(which: WhichRise) -> &'static str {
    match which {
        WhichRise::Bulk => {
            tr!("It is domed and light; a floured fingertip leaves a dent that comes back slowly.")
        }
        WhichRise::Proof => {
            tr!("A gentle press leaves a dent that comes back slowly and not all the way.")
        }
    }
}

/// What to look for at a step, since the dough and not the clock says when it is done.
#[must_use]
pub fn signs(kind: StepKind) -> &'static str {
    match kind {
        StepKind::Bulk => tr!(
            "Look for a dough of about twice its size, domed and light; a floured fingertip leaves \
             a dent that comes back slowly."
        ),
        StepKind::Proof => {
            tr!(
                "Look for pieces that touch and fill their gaps; a gentle press leaves a dent that \
             comes back slowly and not all the way."
            )
        }
        StepKind::StandPreferment | StepKind::ChillPreferment => {
            tr!(
                "Look for a preferment that has grown by half or more, smells of yeast and fruit, and \
             has not sunk in the middle."
            )
        }
        StepKind::Rest => tr!("Look for pieces that can be flattened and no longer spring back."),
        StepKind::Preheat | StepKind::Cool => before_and_after_the_oven(kind),
        StepKind::LaterDough | StepKind::LaterProof | StepKind::Refill | StepKind::LaterBake => {
            of_a_later_load(kind)
        }
        StepKind::Scald
        | StepKind::CoolPaste
        | StepKind::ChillPaste
        | StepKind::MixPreferment
        | StepKind::WarmUp
        | StepKind::Mix
        | StepKind::ButterIn
        | StepKind::Divide
        | StepKind::Round
        | StepKind::Shape
        | StepKind::Tin
        | StepKind::Melt
        | StepKind::Drizzle
        | StepKind::Brush
        | StepKind::Bake
        | StepKind::Own => "",
    }
}

/// What to do before and after the bake.
fn before_and_after_the_oven(kind: StepKind) -> &'static str {
    if kind == StepKind::Preheat {
        tr!(
            "Set the oven as the first phase of the bake says, its rack where the bread will stand. \
             It needs some 20 min to be hot all through."
        )
    } else {
        tr!("Out of the tin, on a rack. Look for a bottom that no longer feels warm, then cut.")
    }
}

/// What to do for a load that waits for its turn in the oven.
fn of_a_later_load(kind: StepKind) -> &'static str {
    if kind == StepKind::LaterDough {
        tr!("Begin this load’s dough; it goes the same way as the first: mix, rise, shape, rise.")
    } else if kind == StepKind::Refill {
        tr!("Take the loaves out, close the door and let the oven come back to its heat.")
    } else if kind == StepKind::LaterBake {
        tr!("Set this load in; it bakes as the first did.")
    } else {
        tr!(
            "Until it is due, keep this load’s shaped pieces in the fridge, covered; look for pieces \
         that touch and fill their gaps."
        )
    }
}

/// "The bulk rise takes 50 min instead of 60 min."
pub(super) fn rise_takes(
    which: WhichRise,
    now: Minutes,
    planned: Minutes,
    options: FormatOptions,
) -> String {
    let (now, wished) = (
        format::minutes(now, options),
        format::minutes(planned, options),
    );
    match which {
        WhichRise::Bulk => tr!(
            "The bulk rise takes {now} instead of {wished}.",
            now = now,
            wished = wished
        ),
        WhichRise::Proof => tr!(
            "The proof takes {now} instead of {wished}.",
            now = now,
            wished = wished
        ),
    }
}

/// The temperature at which a dough rises fastest.
#[must_use]
pub(super) fn best_temperature(options: FormatOptions) -> String {
    format::temperature(Cardinal::DOUGH.best(), options)
}
