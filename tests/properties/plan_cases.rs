//! Plans drawn at random, on a grid of quarters of an hour.

use proptest::prelude::*;
use softcrumb::engine::plan::{Around, DurationRange, Plan, Span, Step, StepAt, StepKind};
use softcrumb::engine::quantity::Instant;

use crate::heat_cases::minutes;

pub(crate) const QUARTER: i64 = 900;
pub(crate) const DAY: i64 = 86_400;
/// Some midnight.
pub(crate) const MIDNIGHT: i64 = 1_800_057_600;

pub(crate) fn at(seconds: i64) -> Instant {
    Instant::from_seconds(seconds).unwrap()
}

/// Least, wished and most in quarters of an hour, hands as a share of the least, inputs as bits.
type Drawn = (u16, u16, u16, bool, u16, u32);

fn any_step() -> impl Strategy<Value = Drawn> {
    (
        1..8_u16,
        0..12_u16,
        0..24_u16,
        any::<bool>(),
        0..3_u16,
        any::<u32>(),
    )
}

fn quarters(count: u16) -> softcrumb::engine::quantity::Minutes {
    minutes(f64::from(count) * 15.0)
}

fn step(place: usize, drawn: Drawn, is_flexible: bool) -> Step {
    let (least, more, most, waits, hands, inputs) = drawn;
    let lasts = if is_flexible {
        let wished = least + more;
        DurationRange::between(quarters(least), quarters(wished), quarters(wished + most)).unwrap()
    } else {
        DurationRange::just(quarters(least))
    };
    let hands = if waits { 0 } else { hands.min(least) };
    let after = (0..place)
        .filter(|input| inputs >> input & 1 == 1)
        .collect();
    let at = StepAt {
        work: StepKind::Own,
        of: u16::try_from(place).unwrap(),
    };
    Step::new(at, lasts, quarters(hands), after)
}

/// A plan of up to `most` steps, of which at most `giving` give.
pub(crate) fn any_plan(most: usize, giving: usize) -> impl Strategy<Value = Plan> {
    prop::collection::vec((any_step(), any::<bool>()), 1..=most).prop_map(move |drawn| {
        let mut left = giving;
        let steps = drawn
            .into_iter()
            .enumerate()
            .map(|(place, (drawn, is_flexible))| {
                let is_flexible = is_flexible && left > 0;
                left -= usize::from(is_flexible);
                step(place, drawn, is_flexible)
            });
        Plan::of(steps.collect()).unwrap()
    })
}

/// A baker who sleeps from `from` quarters after eight in the evening, for `long` quarters.
pub(crate) fn nights(from: i64, long: i64) -> Vec<Span> {
    (-4..3)
        .map(|night| {
            let begins = MIDNIGHT + night * DAY - 4 * 3600 + from * QUARTER;
            Span {
                from: at(begins),
                until: at(begins + long * QUARTER),
            }
        })
        .collect()
}

/// Asleep at night, with one pair of hands or two.
pub(crate) fn any_around() -> impl Strategy<Value = Around> {
    (0..16_i64, 20..36_i64, any::<bool>()).prop_map(|(from, long, one_pair_of_hands)| Around {
        nights: nights(from, long),
        now: None,
        done: Vec::new(),
        one_pair_of_hands,
    })
}
