//! What the log teaches goes through the run: friction, losses, rises and oven, each from what was
//! measured. Steam and the cooling of a bowl: `kitchen_taught`.

use softcrumb::engine::learn::{Learnt, MeasuredDuration, Observation, WeighedLoss, learn};
use softcrumb::engine::quantity::{Mass, Temperature};
use softcrumb::engine::rise::RiseSettings;
use softcrumb::results::batch::scale;
use softcrumb::results::day::{with_learnt_friction, with_learnt_losses};
use softcrumb::results::heat::InOven;
use softcrumb::results::run::{Run, RunInput, StageKind};
use softcrumb::sheet::{Kitchen, Sheet};

use crate::bench_results::first;
use crate::days::minutes;

fn taught(noted: Observation) -> Learnt {
    let usual = Kitchen::default().mixer.friction;
    learn(&[noted; 8], usual)
}

fn run(sheet: &Sheet, learnt: &Learnt) -> Run {
    run_in(sheet, &Kitchen::default(), learnt)
}

fn run_in(sheet: &Sheet, kitchen: &Kitchen, learnt: &Learnt) -> Run {
    Run::of(&RunInput {
        formula: &sheet.formula,
        kitchen,
        heat: &sheet.heat,
        rises: &RiseSettings::default(),
        pieces: 9,
        learnt,
        in_oven: InOven::of(sheet, scale(sheet).ok().as_ref(), InOven::PROOFED),
        measured_dough: None,
        planned: None,
    })
}

fn took(expected: f64, measured: f64) -> Option<MeasuredDuration> {
    Some(MeasuredDuration {
        expected: minutes(expected),
        minutes: minutes(measured),
    })
}

fn lasts(run: &Run, kind: StageKind) -> [f64; 3] {
    let stage = run.stages.iter().find(|stage| stage.kind == kind).unwrap();
    stage.lasts.map(|time| time.minutes())
}

/// By definition: rises that took half as long again, or four fifths, are reckoned from references as
/// many times as long; a bake likewise, to the minute of its timer.
#[test]
fn rises_and_bake_last_as_many_times_as_long_as_they_took() {
    let sheet = first();
    let before = run(&sheet, &Learnt::default());
    let noted = Observation {
        bulk: took(60.0, 90.0),
        proof: took(60.0, 48.0),
        bake: took(30.0, 36.0),
        ..Observation::default()
    };
    let after = run(&sheet, &taught(noted));
    let reference = |run: &Run| {
        let both = [run.references.bulk, run.references.proof];
        both.map(|reference| reference.time.minutes())
    };
    for (kind, factor) in [(0, 1.5), (1, 0.8)] {
        let ratio = reference(&after)[kind] / reference(&before)[kind];
        assert!((ratio - factor).abs() < 1e-6, "{kind} {ratio}");
    }
    // The dough warms in the room meanwhile: what lasts longer has a warmer end.
    let times = |kind| lasts(&after, kind)[1] / lasts(&before, kind)[1];
    let bulk = times(StageKind::Bulk);
    assert!((1.25..=1.5).contains(&bulk), "{bulk}");
    // Whole minutes of about half an hour.
    let bake = times(StageKind::Bake);
    assert!((bake - 1.2).abs() < 0.03, "{bake}");
    assert!(lasts(&after, StageKind::Proof)[1] < lasts(&before, StageKind::Proof)[1]);
    // What has been measured eight times is known better than what is printed.
    let wide = |run: &Run| {
        let [soonest, likely, latest] = lasts(run, StageKind::Bulk);
        (latest - soonest) / likely
    };
    assert!(wide(&after) < wide(&before));
}

/// By definition: a mixer that warms a dough by 0.2 K a minute more brings it off warmer, by what its
/// minutes make of that and the bowl takes a part of, and the rise begins there.
#[test]
fn a_mixer_that_warms_more_brings_a_warmer_dough_which_rises_sooner() {
    let sheet = first();
    let before = run(&sheet, &Learnt::default());
    let usual = Kitchen::default().mixer.friction.kelvin_per_minute();
    let mixed = 9.0;
    let celsius = |t| Temperature::from_celsius(t).unwrap();
    let noted = Observation {
        unmixed: Some(celsius(20.0)),
        dough: Some(celsius(20.0 + mixed * (usual + 0.2))),
        mixing: Some(minutes(mixed)),
        warmed_for: Some(minutes(mixed)),
        ..Observation::default()
    };
    let learnt = taught(noted);
    let rate = learnt.friction.as_ref().unwrap().rate;
    let more = rate.kelvin_per_minute() - usual;
    assert!((0.1..=0.21).contains(&more), "{more}");
    let own = with_learnt_friction(&Kitchen::default(), &learnt).unwrap();
    let after = run_in(&sheet, &own, &learnt);
    let warmer = (after.dough - before.dough).kelvin();
    assert!(
        (0.6 * mixed * more..=1.05 * mixed * more).contains(&warmer),
        "{warmer} {more}"
    );
    let bulk = |run: &Run| {
        *run.stages
            .iter()
            .find(|one| one.kind == StageKind::Bulk)
            .unwrap()
    };
    assert_eq!(bulk(&after).starts, after.dough);
    assert!(bulk(&after).lasts[1] < bulk(&before).lasts[1]);
    let spread = |run: &Run| {
        let dough = &run.mixing.as_ref().unwrap().dough;
        (dough.high - dough.low).kelvin()
    };
    assert!(spread(&after) < spread(&before));
}

/// By definition: 2 % that stay in the bowl and 9 % that the oven takes are what the batch is scaled
/// with.
#[test]
fn losses_that_were_weighed_are_those_of_the_batch() {
    let mut sheet = first();
    let grams = |mass| Mass::from_grams(mass).unwrap();
    let lost = |before, after| {
        Some(WeighedLoss {
            before: grams(before),
            after: grams(after),
        })
    };
    let noted = Observation {
        bowl: lost(1000.0, 980.0),
        oven_loss: lost(980.0, 891.8),
        ..Observation::default()
    };
    let losses = with_learnt_losses(sheet.batch.losses, &taught(noted)).unwrap();
    sheet.batch.losses = losses;
    let scaled = scale(&sheet).unwrap();
    let of = |mass: Mass, of: Mass| mass.grams() / of.grams();
    assert!((losses.bake.fraction() - 0.09).abs() < 1e-9);
    assert!(scaled.lost_baking > Mass::ZERO);
    assert!((losses.residue_share.fraction() - 0.02).abs() < 1e-9);
    // The pieces are cut from what the bowl gives.
    assert!((of(scaled.left_behind, scaled.mixed) - 0.02).abs() < 1e-6);
}
