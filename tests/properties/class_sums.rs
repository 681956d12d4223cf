//! Classes drawn at random: benches, the teacher's bowl, the total and the shopping are sums of the
//! same lines, to the gram.

use std::num::NonZeroU16;

use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};
use softcrumb::engine::batch::{Losses, RoundedLine, ScaleReading};
use softcrumb::engine::class::{Ahead, ClassSettings};
use softcrumb::engine::formula::{LineAt, PartKind};
use softcrumb::engine::ingredients::Role;
use softcrumb::engine::quantity::{Division, Mass, Share};
use softcrumb::results::batch::{self, class, class::ClassWeights, class_batch, shopping};
use softcrumb::sheet::{Pantry, Scales, Sheet, examples};

use crate::cases::cases;

/// Far below a gram: the last places of sums of a thousand weighings.
const NOTHING: f64 = 1e-6;

#[derive(Clone, Debug)]
struct Drawn {
    example: usize,
    settings: ClassSettings,
    scales: Scales,
    losses: Losses,
}

fn count(range: std::ops::Range<u16>) -> impl Strategy<Value = NonZeroU16> {
    range.prop_map(|count| NonZeroU16::new(count).unwrap())
}

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

fn settings() -> impl Strategy<Value = ClassSettings> {
    let people = (count(1..40), count(1..5), count(1..4), 0_u16..4);
    (people, 150.0..1200.0_f64, any::<bool>()).prop_map(
        |((students, at_bench, loaves, shown), loaf, bowl)| ClassSettings {
            students,
            at_bench,
            loaves,
            shown,
            loaf: grams(loaf),
            of_batch: false,
            ahead: if bowl {
                Ahead::TeacherBowl
            } else {
                Ahead::EachBench
            },
            ..ClassSettings::default()
        },
    )
}

fn losses() -> impl Strategy<Value = Losses> {
    let shares = (0.0..0.05_f64, 0.0..0.05_f64);
    (0.0..30.0_f64, shares).prop_map(|(residue, (residue_share, dividing))| {
        let share = |share| Share::from_fraction(share).unwrap();
        Losses {
            residue: grams(residue),
            residue_share: share(residue_share),
            dividing: share(dividing),
            ..Losses::default()
        }
    })
}

fn drawn() -> impl Strategy<Value = Drawn> {
    let main = prop::sample::select(&[1.0, 2.0, 5.0][..]);
    let pocket = prop::sample::select(&[0.0, 0.01, 0.1, 0.5][..]);
    let scales = (main, pocket).prop_map(|(main, pocket)| Scales {
        main: grams(main),
        pocket: (pocket > 0.0).then(|| grams(pocket)),
    });
    (0_usize..examples().len(), settings(), scales, losses()).prop_map(
        |(example, settings, scales, losses)| Drawn {
            example,
            settings,
            scales,
            losses,
        },
    )
}

/// The weight of one line at all benches and in the teacher's bowl.
fn weighed(weights: &ClassWeights, part: usize, line: usize) -> f64 {
    let counted = weights.class.benches.iter().zip(&weights.benches);
    let benches: f64 = counted
        .map(|(bench, rounded)| {
            let at = LineAt { part, line };
            let below = |own: &&RoundedLine| own.reading == ScaleReading::BelowScale;
            let hidden = rounded.line(at).filter(below);
            // What a bench's scale shows nothing of is measured in another way, all of it.
            let each = hidden.map_or_else(
                || rounded.formula.parts[part].lines[line].mass.grams(),
                |own| own.exact.grams(),
            );
            f64::from(bench.count.get()) * each
        })
        .sum();
    let bowl = weights.bowl.as_ref();
    benches
        + bowl.map_or(0.0, |bowl| {
            bowl.formula.parts[part].lines[line].mass.grams()
        })
}

fn adds_up(sheet: &Sheet, drawn: &Drawn) {
    let found = class::of(sheet, &drawn.settings, drawn.scales);
    let weights = found.weights.unwrap();
    let total = &weights.total.formula;
    let mut yeast = (0.0, 0.0);
    for (part, own) in total.parts.iter().enumerate() {
        for (line, written) in own.lines.iter().enumerate() {
            let all = weighed(&weights, part, line);
            assert!((written.mass.grams() - all).abs() < NOTHING, "{drawn:?}");
            if written.food.role() == Role::Yeast {
                yeast = (yeast.0 + written.mass.grams(), yeast.1 + all);
            }
        }
    }
    assert!((yeast.0 - yeast.1).abs() < NOTHING);
    bought_is_weighed(sheet, drawn, &weights);
    portions_fill_the_bowl(&weights, drawn);
    let loaves: u32 = weights
        .class
        .benches
        .iter()
        .map(|one| one.count.get() * one.loaves.get())
        .sum();
    assert_eq!(loaves, drawn.settings.loaves_in_all());
    let dough = f64::from(loaves) * drawn.settings.loaf.grams();
    assert!((weights.class.dough.grams() - dough).abs() < NOTHING);
}

/// The shopping of a batch that is the class's is the sum of what is weighed, food by food, and its
/// tins are the class's loaves.
fn bought_is_weighed(sheet: &Sheet, drawn: &Drawn, weights: &ClassWeights) {
    let mut sheet = sheet.clone();
    sheet.batch = class_batch::of_all(&sheet, &drawn.settings);
    let made = batch::of(&sheet, drawn.scales);
    let bought = shopping::of_sheet(
        &sheet,
        &made,
        &drawn.settings,
        drawn.scales,
        &Pantry::default(),
    );
    let bought = bought.unwrap().unwrap();
    assert!(bought.of_class);
    for item in &bought.list.items {
        let mut all = 0.0;
        for (part, own) in weights.total.formula.parts.iter().enumerate() {
            for (line, written) in own.lines.iter().enumerate() {
                if written.food == item.food {
                    all += weighed(weights, part, line);
                }
            }
        }
        assert!((item.needed.grams() - all).abs() < NOTHING, "{drawn:?}");
    }
    let scaled = made.scaled.unwrap();
    let loaves = f64::from(weights.class.loaves);
    let dough = loaves * drawn.settings.loaf.grams();
    assert!((scaled.needed.grams() - dough).abs() < NOTHING);
    if let Some(used) = sheet.batch.tin {
        assert_eq!(u32::from(used.tins.count.get()), weights.class.loaves);
    }
    assert_eq!(class::loaf_difference(&sheet, &drawn.settings), None);
}

/// Portions and what is left are what the bowl holds; no bench gets less than it needs by more than
/// weighing can help.
fn portions_fill_the_bowl(weights: &ClassWeights, drawn: &Drawn) {
    assert_eq!(
        weights.bowl.is_some(),
        drawn.settings.ahead == Ahead::TeacherBowl
    );
    let mut parts = Vec::new();
    for portion in &weights.portions {
        parts.push(portion.part);
        let counted = weights.class.benches.iter().zip(&portion.each);
        let taken: f64 = counted
            .map(|(bench, each)| f64::from(bench.count.get()) * each.grams())
            .sum();
        assert!(
            (taken + portion.left.grams() - portion.holds.grams()).abs() < NOTHING,
            "{drawn:?}"
        );
        for each in &portion.each {
            let division = Division::from_mass(drawn.scales.main).unwrap();
            assert!((division.nearest(*each).grams() - each.grams()).abs() < NOTHING);
        }
        for rounded in &weights.benches {
            assert_eq!(rounded.formula.parts[portion.part].mass(), Mass::ZERO);
        }
    }
    parts.dedup();
    assert_eq!(parts.len(), weights.portions.len());
}

/// By definition: what is shared out, weighed and bought is one sum. Ten thousand classes.
#[test]
fn everything_adds_up_to_the_gram_in_every_class() {
    let mut runner = TestRunner::new(Config {
        cases: cases(10_000),
        ..Config::default()
    });
    let all = examples();
    runner
        .run(&drawn(), |drawn| {
            let mut sheet = all[drawn.example].1.clone();
            sheet.batch.losses = drawn.losses;
            adds_up(&sheet, &drawn);
            Ok(())
        })
        .unwrap();
}

/// Common practice: half a gram of yeast at each of twelve benches is nothing on a scale of 1 g; six
/// grams in one bowl are weighed.
#[test]
fn yeast_too_small_for_a_bench_is_weighed_in_the_teacher_s_bowl() {
    let (_, mut sheet) = examples().remove(0);
    sheet.batch.losses = Losses::default();
    let scales = Scales {
        main: Mass::from_grams(1.0).unwrap(),
        pocket: None,
    };
    let worst = |rounded: &softcrumb::engine::batch::Rounded| {
        let parts = &rounded.formula.parts;
        let yeast = rounded.lines.iter().filter(|line| {
            parts[line.at.part].kind == PartKind::Preferment
                && parts[line.at.part].lines[line.at.line].food.role() == Role::Yeast
        });
        let errors = yeast.filter_map(|line| line.error_share);
        errors.map(Share::fraction).fold(0.0, f64::max)
    };
    let mut settings = ClassSettings {
        loaf: Mass::from_grams(300.0).unwrap(),
        ..ClassSettings::default()
    };
    let alone = class::of(&sheet, &settings, scales).weights.unwrap();
    settings.ahead = Ahead::TeacherBowl;
    let ahead = class::of(&sheet, &settings, scales).weights.unwrap();
    let (alone, ahead) = (worst(&alone.benches[0]), worst(&ahead.bowl.unwrap()));
    assert!(alone > 0.25 && ahead < alone / 2.0, "{alone} {ahead}");
}
