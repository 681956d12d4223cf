//! Mass is kept by scaling, rounding and dividing, over generated formulas.

use std::num::{NonZeroU16, NonZeroU32};

use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};
use softcrumb::engine::batch::{
    Losses, Scaled, Shown, SolutionCure, Wanted, Weighing, divide, round, scale,
};
use softcrumb::engine::formula::{Formula, Line, LineAt, Stream, StreamKind};
use softcrumb::engine::larder::{Food, Listed};
use softcrumb::engine::quantity::{Division, Factor, Mass, Share};

/// How many cases each property is tried on; two in three and more have an answer.
const CASES: u32 = 150_000;

/// Flour, rye, water, milk, butter, sugar, salt, dried yeast, dark chocolate.
const FOODS: [u16; 9] = [1, 41, 200, 300, 500, 700, 800, 902, 1000];

fn runner() -> TestRunner {
    TestRunner::new(Config {
        cases: CASES,
        failure_persistence: None,
        ..Config::default()
    })
}

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

fn fraction(fraction: f64) -> Share {
    Share::from_fraction(fraction).unwrap()
}

fn count(count: u16) -> NonZeroU16 {
    NonZeroU16::new(count).unwrap()
}

/// From a pinch to a sack, as likely in each tenfold step; now and then nothing.
fn mass() -> impl Strategy<Value = f64> {
    prop_oneof![
        1 => Just(0.0),
        12 => (-2.0..4.5_f64).prop_map(|power| libm::pow(10.0, power)),
    ]
}

fn formula() -> impl Strategy<Value = Formula> {
    let line = (0..FOODS.len(), mass()).prop_map(|(food, mass)| {
        Line::new(
            Food::Listed(Listed::numbered(FOODS[food]).unwrap()),
            grams(mass),
        )
    });
    let lines = prop::collection::vec(line, 0..6);
    let stream = (0..StreamKind::ALL.len(), lines, 0.0..0.2_f64).prop_map(|(kind, lines, lost)| {
        let mut stream = Stream {
            kind: StreamKind::ALL[kind],
            name: String::new(),
            lines,
            steam: Mass::ZERO,
        };
        if stream.kind == StreamKind::Paste {
            stream.steam = stream.mass().part(fraction(lost));
        }
        stream
    });
    let flour = (50.0..5000.0_f64).prop_map(grams);
    (prop::collection::vec(stream, 0..4), flour).prop_map(|(mut streams, flour)| {
        let food = Food::Listed(Listed::numbered(FOODS[0]).unwrap());
        streams.push(Stream {
            kind: StreamKind::Final,
            name: String::new(),
            lines: vec![Line::new(food, flour)],
            steam: Mass::ZERO,
        });
        Formula { streams }
    })
}

fn losses() -> impl Strategy<Value = Losses> {
    let share = || prop_oneof![30 => Just(0.0), 70 => 0.0..0.1_f64, 1 => 0.0..1.2_f64];
    (0.0..30.0_f64, share(), share(), share(), share()).prop_map(|(residue, a, b, c, d)| Losses {
        residue: grams(residue),
        residue_share: fraction(a),
        dividing: fraction(b),
        bake: fraction(c),
        topping: fraction(d),
    })
}

fn wanted() -> impl Strategy<Value = Wanted> {
    let number = || 1..200_u16;
    prop_oneof![
        (0.01..50.0_f64).prop_map(|times| Wanted::Times(Factor::from_number(times).unwrap())),
        mass().prop_map(|mass| Wanted::Dough(grams(mass))),
        (number(), mass()).prop_map(|(pieces, each)| Wanted::Pieces {
            count: count(pieces),
            each: grams(each / 10.0),
        }),
        mass().prop_map(|mass| Wanted::FlourOnHand(grams(mass))),
        (0..2_usize, 0..3_usize, mass()).prop_map(|(stream, line, mass)| Wanted::OnHand {
            at: LineAt { stream, line },
            mass: grams(mass),
        }),
        (number(), 1..5_u16, mass()).prop_map(|(students, loaves, loaf)| Wanted::Class {
            students: count(students),
            loaves: count(loaves),
            loaf: grams(loaf / 10.0),
        }),
    ]
}

/// Alike to a billionth of the larger, or of a gram.
#[track_caller]
fn alike(one: f64, other: f64, what: &str) {
    let allowed = 1e-9 * one.abs().max(other.abs()).max(1.0);
    assert!((one - other).abs() <= allowed, "{what}: {one} and {other}");
}

/// All of one food, wherever it stands.
fn all_of(formula: &Formula, food: &Food) -> f64 {
    let lines = formula.streams.iter().flat_map(|stream| &stream.lines);
    let masses = lines
        .filter(|line| line.food == *food)
        .map(|line| line.mass);
    masses.sum::<Mass>().grams()
}

fn what_was_wanted_comes_out(formula: &Formula, scaled: &Scaled) {
    let needed = scaled.needed.grams();
    match scaled.wanted {
        Wanted::Times(factor) => alike(scaled.factor.number(), factor.number(), "factor"),
        Wanted::Dough(mass) => alike(needed, mass.grams(), "dough"),
        Wanted::Pieces { count, each } => {
            assert_eq!(scaled.pieces.count, NonZeroU32::from(count));
            alike(needed, f64::from(count.get()) * each.grams(), "pieces");
        }
        Wanted::FlourOnHand(mass) => alike(scaled.formula.flour().grams(), mass.grams(), "flour"),
        Wanted::OnHand { at, mass } => {
            let food = &formula.line(at).unwrap().food;
            alike(all_of(&scaled.formula, food), mass.grams(), "on hand");
        }
        Wanted::Class {
            students,
            loaves,
            loaf,
        } => {
            let loaves = f64::from(students.get()) * f64::from(loaves.get());
            alike(needed, loaves * loaf.grams(), "loaves");
        }
    }
}

fn mass_is_kept(formula: &Formula, scaled: &Scaled) {
    let losses = scaled.losses;
    let out = scaled.needed + scaled.left_behind + scaled.lost_dividing + scaled.steam;
    alike(scaled.weighed_in.grams(), out.grams(), "what went in");
    alike(
        scaled.formula.dough().grams(),
        scaled.weighed_in.grams(),
        "lines of the dough",
    );
    let pieces = scaled.pieces.each.grams() * f64::from(scaled.pieces.count.get());
    alike(pieces, scaled.needed.grams(), "pieces");
    let after = scaled.baked.grams() + scaled.lost_baking.grams();
    alike(
        after,
        scaled.needed.grams() + scaled.filling.grams(),
        "the oven",
    );
    for (before, after) in formula.streams.iter().zip(&scaled.formula.streams) {
        let reaches = if after.kind.in_dough() {
            scaled.factor.number()
        } else {
            let needed = scaled.needed.grams() / (formula.dough().grams() - steam(formula));
            needed / (1.0 - losses.topping.fraction())
        };
        for (line, made) in before.lines.iter().zip(&after.lines) {
            alike(line.mass.grams() * reaches, made.mass.grams(), "a line");
        }
    }
}

fn steam(formula: &Formula) -> f64 {
    formula
        .dough_streams()
        .map(|stream| stream.steam.grams())
        .sum()
}

#[test]
fn scaling_keeps_mass_and_gives_what_was_wanted() {
    let answered = std::cell::Cell::new(0);
    let cases = (formula(), wanted(), losses(), 1..40_u16);
    runner()
        .run(&cases, |(formula, wanted, losses, pieces)| {
            if let Ok(scaled) = scale(&formula, wanted, losses, count(pieces)) {
                answered.set(answered.get() + 1);
                what_was_wanted_comes_out(&formula, &scaled);
                mass_is_kept(&formula, &scaled);
            }
            Ok(())
        })
        .unwrap();
    // The rest ask for nothing, for what is not in the formula, or lose everything.
    let answered = answered.get();
    assert!(answered > CASES / 3 * 2, "only {answered} had an answer");
}

fn weighing() -> impl Strategy<Value = Weighing> {
    let division = || (0..Division::ALL.len()).prop_map(|at| Division::ALL[at]);
    (division(), prop::option::of(division())).prop_map(|(main, pocket)| Weighing { main, pocket })
}

#[test]
fn rounding_is_bounded_by_half_a_division_a_line() {
    runner()
        .run(&(formula(), weighing()), |(formula, weighing)| {
            let rounded = round(&formula, weighing);
            let mut allowed = 0.0;
            for line in &rounded.lines {
                let half = 0.5 * line.division.grams() + 1e-7;
                assert!(line.error.size().grams() <= half, "{line:?}");
                let whole = line.division.times(line.division.whole_in(line.weighed));
                alike(whole.grams(), line.weighed.grams(), "whole divisions");
                let nothing = line.exact > Mass::ZERO && line.weighed == Mass::ZERO;
                assert_eq!(line.shown == Shown::BelowScale, nothing, "{line:?}");
                let share = line.error_share.map_or(0.0, Share::fraction);
                assert_eq!(line.cures.is_some(), share > 0.02, "{line:?}");
                if formula.streams[line.at.stream].kind.in_dough() {
                    allowed += half;
                }
                cures_hold(&formula, line.at, line.cures);
            }
            let change = rounded.dough_weighed - rounded.dough_exact;
            assert!(change.size().grams() <= allowed + 1e-6);
            Ok(())
        })
        .unwrap();
}

/// What a cure says can be done.
fn cures_hold(formula: &Formula, at: LineAt, cures: Option<softcrumb::engine::batch::Cures>) {
    let Some(cures) = cures else { return };
    let exact = formula.line(at).unwrap().mass.grams();
    if let Some(scale) = cures.pocket_scale {
        assert!(scale.error.size().grams() <= 0.02 * exact + 1e-12);
    }
    if let Some(SolutionCure::Take(solution)) = cures.solution {
        alike(
            solution.yeast.grams() * 21.0,
            solution.solution.grams(),
            "solution",
        );
        let both = solution.water_left_exact + solution.water;
        alike(
            both.grams(),
            solution.stream_water.grams(),
            "water of the stream",
        );
        let stirred = solution.stir_in_yeast + solution.stir_in_water;
        assert!(
            stirred.grams() >= solution.solution.grams() - 1e-9,
            "{solution:?}"
        );
        let left = (solution.water_left - solution.water_left_exact).size();
        assert!(left.grams() <= 0.5 * solution.division.grams() + 1e-7);
    }
}

#[test]
fn pieces_add_up_to_the_dough_and_differ_by_one_division_at_most() {
    let divided = std::cell::Cell::new(0);
    let division = (0..Division::ALL.len()).prop_map(|at| Division::ALL[at]);
    let dough = (1.0..6.0_f64).prop_map(|power| libm::pow(10.0, power));
    let cases = (dough, 1..100_u32, division);
    runner()
        .run(&cases, |(dough, pieces, division)| {
            let wanted = NonZeroU32::new(pieces).unwrap();
            if let Ok(answer) = divide(grams(dough), wanted, division) {
                divided.set(divided.get() + 1);
                let (heavier, lighter) = (answer.heavier, answer.lighter);
                assert_eq!(heavier.count + lighter.count, pieces);
                assert_eq!(heavier.divisions, lighter.divisions + 1);
                let sum = heavier.count * heavier.divisions + lighter.count * lighter.divisions;
                assert_eq!(sum, answer.divisions);
                assert!(lighter.divisions > 0 && lighter.count > 0);
                let below = answer.below_division.grams();
                assert!((-1e-5..division.grams()).contains(&below), "{answer:?}");
                alike(division.times(sum).grams() + below, dough, "dough");
            } else {
                assert!(dough < f64::from(pieces) * division.grams());
            }
            Ok(())
        })
        .unwrap();
    let divided = divided.get();
    assert!(divided > CASES / 4 * 3, "only {divided} were divided");
}

/// Every wish at the ends of its range, on formulas with everything, with nothing, with a tonne.
#[test]
fn the_ends_of_every_range_are_answered() {
    let ends = [0.0, f64::MIN_POSITIVE, 1e-9, 1.0, 999_999.9, 1_000_000.0];
    let shares = [0.0, 1e-12, 0.5, 0.999_999, 1.0, 1e8];
    let mut seen = 0;
    for &line in &ends {
        let formula = Formula {
            streams: StreamKind::ALL
                .map(|kind| Stream {
                    kind,
                    name: String::new(),
                    lines: FOODS
                        .map(|food| Food::Listed(Listed::numbered(food).unwrap()))
                        .map(|food| Line::new(food, grams(line)))
                        .to_vec(),
                    steam: grams(line / 2.0),
                })
                .to_vec(),
        };
        for &asked in &ends {
            for &share in &shares {
                let at = LineAt { stream: 0, line: 0 };
                let losses = Losses {
                    residue: grams(asked),
                    residue_share: fraction(share),
                    dividing: fraction(share / 2.0),
                    bake: fraction(share),
                    topping: fraction(share),
                };
                for wanted in [
                    Wanted::Dough(grams(asked)),
                    Wanted::FlourOnHand(grams(asked)),
                    Wanted::OnHand {
                        at,
                        mass: grams(asked),
                    },
                    Wanted::Pieces {
                        count: NonZeroU16::MAX,
                        each: grams(asked),
                    },
                ] {
                    if let Ok(scaled) = scale(&formula, wanted, losses, NonZeroU16::MAX) {
                        assert!(scaled.baked_each.grams().is_finite());
                        let main = Division::ALL[0];
                        let rounded = round(&scaled.formula, Weighing { main, pocket: None });
                        assert!(rounded.dough_weighed.grams().is_finite());
                    }
                    seen += 1;
                }
            }
        }
    }
    assert_eq!(seen, 6 * 6 * 6 * 4);
}
