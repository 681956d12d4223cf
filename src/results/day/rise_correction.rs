//! A rise of the bake under way that deviates, and the place that brings it back on time.

use super::day_results::DayResults;
use super::input::DayInput;
use super::rise_place::{RisePlace, rise_place};
use super::rises::{RiseInput, Rises};
use super::which_rise::WhichRise;
use crate::engine::quantity::{Minutes, Temperature};
use crate::sheet::Moment;
use crate::sheet::day::Bench;

/// A rise that takes another time than it was to take, or begins later.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RiseDeviation {
    /// Which of the two.
    pub which: WhichRise,
    /// How long it was to take.
    pub planned: Minutes,
    /// How long it takes where it is put now.
    pub now: Minutes,
    /// How much later than planned it begins; zero where it is on time or early.
    pub late: Minutes,
    /// A place in which it is done when it was to be, or nearer to it than where it is now.
    pub place: Option<RisePlace>,
    /// The place that was chosen for this bake.
    pub chosen: Option<Temperature>,
}

/// Less than this is no deviation, min.
const NEGLIGIBLE: f64 = 2.0;
/// A place has to bring the rise nearer to its time by this much, min: nobody carries a dough about for
/// less. Common practice.
const WORTH_MOVING: f64 = 10.0;
/// A place is reckoned with for the whole of a rise, and so is offered only in this first part of it.
/// Common practice: the place is chosen as the dough is covered.
const YOUNG: f64 = 0.25;

/// Returns how a rise of the bake under way deviates, in kelvins and minutes; `None` where it does
/// not, is over, or is not known.
#[must_use]
pub fn rise_deviation(
    input: &DayInput,
    results: &DayResults,
    which: WhichRise,
) -> Option<RiseDeviation> {
    let bench = input.bench?;
    let late = late(results, bench, which)?;
    let now = due(&results.run.rises, which)?;
    let planned = due(&input.planned_run().rises, which)?;
    let chosen = match which {
        WhichRise::Bulk => bench.bulk_place,
        WhichRise::Proof => bench.proof_place,
    };
    let deviates = (now.minutes() - planned.minutes()).abs() >= NEGLIGIBLE;
    if !deviates && late <= Minutes::ZERO && chosen.is_none() {
        return None;
    }
    let left = planned.minutes() - late.minutes();
    let place = better_place(input, results, (which, now), left);
    Some(RiseDeviation {
        which,
        planned,
        now,
        late,
        place: place.filter(|place| chosen != Some(place.at)),
        chosen,
    })
}

/// A place in which a rise is done nearer to what is left until it was to be, min, than where it is now;
/// `None` where no place is, or where it is of no use any more.
fn better_place(
    input: &DayInput,
    results: &DayResults,
    (which, now): (WhichRise, Minutes),
    left: f64,
) -> Option<RisePlace> {
    let run = &results.run;
    let rise = RiseInput {
        formula: &run.formula,
        kitchen: input.kitchen,
        dough: run.dough,
        pieces: input.sheet.batch.pieces.get(),
        settings: &input.rise_settings(),
        references: &run.references,
    };
    let wanted = Minutes::from_minutes(left.max(0.0)).ok()?;
    let place = rise_place(&rise, (which, wanted))?;
    let miss = |due: Minutes| (due.minutes() - left).abs();
    // Nobody cools a dough that is too cold already, so that it is up no sooner than planned.
    let suits = place.due < now || run.dough > input.sheet.heat.dough;
    let is_worth_it = miss(place.due) + WORTH_MOVING <= miss(now);
    (suits && is_worth_it && is_young(input, (which, now))).then_some(place)
}

/// Whether another place still has nearly all of a rise before it: it has not begun, or only just.
fn is_young(input: &DayInput, (which, lasts): (WhichRise, Minutes)) -> bool {
    let began = input.bench.and_then(|bench| bench.bake.began(which.step()));
    began
        .map(Moment::instant)
        .is_none_or(|began| input.now.instant().since(began).minutes() < lasts.minutes() * YOUNG)
}

fn due(rises: &Rises, which: WhichRise) -> Option<Minutes> {
    rises.of(which).ok().map(|risen| risen.due)
}

/// How much later than planned it begins; `None` where it is over, or was not planned.
fn late(results: &DayResults, bench: &Bench, which: WhichRise) -> Option<Minutes> {
    let at = which.step();
    if bench.bake.is_over(at) {
        return None;
    }
    let (_, timed) = results.find(at)?;
    let planned = bench.planned(at)?.begins.instant();
    let late = match bench.bake.began(at).map(Moment::instant) {
        Some(began) => began.since(planned),
        // A step that is put off because later ones have become shorter is not late: the bread is
        // ready as planned.
        None => {
            let ready = bench.planned_table()?;
            let (table, begins) = (
                results.solved.table.since(ready),
                timed.begins.since(planned),
            );
            if table < begins { table } else { begins }
        }
    };
    Some(if late.minutes() >= NEGLIGIBLE {
        late
    } else {
        Minutes::ZERO
    })
}
