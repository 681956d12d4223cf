//! Friction, steam and the passing of heat, learnt from drawn measurements around a known truth.

use softcrumb::engine::heat::Dough;
use softcrumb::engine::learn::{
    Learnt, LearntFactor, MeasuredCooling, MeasuredSteam, Observation, WeighedLoss, learn,
};
use softcrumb::engine::quantity::{Factor, Mass, Share};

use crate::heat_cases::{celsius, minutes};
use crate::learn::Dice;

const KITCHENS: u32 = 1000;

/// What a bake of a kitchen notes.
type Notes = fn(f64, &mut Dice) -> Observation;
/// What was learnt, and how far the truth may lie from it.
type Reads = fn(&Learnt) -> Option<(f64, f64)>;

/// Five minutes of mixing by a mixer of so much friction, the thermometer out by half a degree.
fn mixed(friction: f64, dice: &mut Dice) -> Observation {
    let unmixed = dice.between(18.0, 24.0);
    Observation {
        unmixed: Some(celsius(unmixed)),
        dough: Some(celsius(unmixed + 5.0 * friction + dice.normal(0.5))),
        mixing: Some(minutes(5.0)),
        ..Observation::default()
    }
}

/// A paste that loses so many times what is printed, on a scale of whole grams.
fn weighed(factor: f64, dice: &mut Dice) -> Observation {
    let expected = dice.between(2.0, 12.0);
    let lost = expected * factor * (1.0 + dice.normal(0.15)) + dice.normal(0.7);
    Observation {
        steam: Some(steam(expected, lost)),
        ..Observation::default()
    }
}

fn steam(expected: f64, lost: f64) -> MeasuredSteam {
    let grams = |g: f64| Mass::from_grams(g).unwrap();
    MeasuredSteam {
        expected: grams(expected),
        weighed: WeighedLoss {
            before: grams(150.0),
            after: grams(150.0 - lost),
        },
    }
}

/// A paste that passes so many times the printed heat; a degree moves the factor by 5 to 15 %.
fn cooled(factor: f64, dice: &mut Dice) -> Observation {
    let within = dice.between(0.05, 0.15);
    let read = factor * libm::exp(dice.normal(0.08) + within * dice.normal(0.5));
    Observation {
        cooling: Some(cooling(read, within)),
        ..Observation::default()
    }
}

fn cooling(factor: f64, within: f64) -> MeasuredCooling {
    MeasuredCooling {
        expected: celsius(30.0),
        found: celsius(28.0),
        factor: Factor::from_number(factor).unwrap(),
        within: Share::from_fraction(within).unwrap(),
    }
}

fn taught(noted: &[Observation]) -> Learnt {
    learn(noted, Dough::FRICTION)
}

/// How many of a thousand kitchens are held within the stated uncertainty after so many bakes, and
/// the mean stated uncertainty.
fn held(bakes: u16, (least, most): (f64, f64), bake: Notes, read: Reads) -> (u32, f64) {
    let mut dice = Dice(u64::from(bakes));
    let (mut good, mut wide) = (0, 0.0);
    for _ in 0..KITCHENS {
        let truth = dice.between(least, most);
        let noted: Vec<_> = (0..bakes).map(|_| bake(truth, &mut dice)).collect();
        if let Some((found, spread)) = read(&taught(&noted)) {
            good += u32::from((found - truth).abs() <= spread);
            wide += spread;
        }
    }
    (good, wide / f64::from(KITCHENS))
}

fn friction(learnt: &Learnt) -> Option<(f64, f64)> {
    let found = learnt.friction.as_ref()?;
    Some((
        found.rate.kelvin_per_minute(),
        found.spread.kelvin_per_minute(),
    ))
}

fn open(factor: Option<&LearntFactor>) -> Option<(f64, f64)> {
    let found = factor?;
    let likely = found.factor.number();
    Some((likely, likely * found.rests.spread.fraction()))
}

/// The truth lies within the range that is stated, nine times in ten or more, and the range narrows:
/// what 'nine in ten' says of itself.
#[test]
fn a_known_truth_is_found_within_the_stated_range_which_narrows_with_each_bake() {
    let cases: [((f64, f64), Notes, Reads); 3] = [
        ((0.0, 0.33), mixed, friction),
        ((0.6, 1.9), weighed, |learnt| open(learnt.steam.as_ref())),
        ((0.7, 1.45), cooled, |learnt| open(learnt.transfer.as_ref())),
    ];
    for (place, (truths, bake, read)) in cases.into_iter().enumerate() {
        let mut before = f64::INFINITY;
        for bakes in [1, 3, 10] {
            let (good, wide) = held(bakes, truths, bake, read);
            assert!(good >= 900, "{place}, {bakes} bakes: {good}");
            assert!(wide < before, "{place}, {bakes} bakes: {wide}");
            before = wide;
        }
    }
}

/// A mean of many drawn kitchens shows no bias: a thermometer that is out by 0.5 K around a friction
/// of 0.05 K/min, where a ratio is as often below zero as it is twice the truth.
#[test]
fn a_gentle_mixer_is_learnt_without_bias() {
    let mut dice = Dice(3);
    let mut sum = 0.0;
    for _ in 0..KITCHENS {
        let noted: Vec<_> = (0..12).map(|_| mixed(0.05, &mut dice)).collect();
        // What is left out says of itself that it is next to none.
        sum += friction(&taught(&noted)).map_or(0.0, |found| found.0);
    }
    let mean = sum / f64::from(KITCHENS);
    assert!((mean - 0.05).abs() < 0.01, "{mean}");
}

#[test]
fn one_wild_figure_changes_little_and_none_leaves_what_is_printed() {
    let mut dice = Dice(9);
    let mut noted: Vec<_> = (0..6)
        .map(|_| Observation {
            steam: weighed(1.4, &mut dice).steam,
            cooling: cooled(1.2, &mut dice).cooling,
            ..Observation::default()
        })
        .collect();
    let both = |noted: &[Observation]| {
        let learnt = taught(noted);
        let factor = |one: Option<LearntFactor>| one.unwrap().factor.number();
        (factor(learnt.steam), factor(learnt.transfer))
    };
    let (steam_before, cooling_before) = both(&noted);
    noted.push(Observation {
        steam: Some(steam(6.0, 80.0)),
        cooling: Some(cooling(3.9, 0.08)),
        ..Observation::default()
    });
    let (steam_after, cooling_after) = both(&noted);
    assert!((steam_after / steam_before - 1.0).abs() < 0.02);
    assert!((cooling_after / cooling_before - 1.0).abs() < 0.02);
    // A single observation teaches nothing.
    let alone = taught(&noted[6..]);
    assert_eq!((alone.steam, alone.transfer), (None, None));
    assert_eq!(taught(&[Observation::default()]), Learnt::default());
}
