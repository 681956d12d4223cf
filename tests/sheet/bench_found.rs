//! What the bench makes of a weight and of a core temperature that came out otherwise.

use softcrumb::engine::formula::LineAt;
use softcrumb::engine::plan::StepKind;
use softcrumb::engine::quantity::Mass;
use softcrumb::results::day::{step_weighing, underbaked};
use softcrumb::sheet::day::{Bench, Findings};

use crate::bench_results::{begun, celsius, with};
use crate::days::{grams, step};

/// A soft loaf is done from about 88 °C in the middle, and bread at 80 °C is raw: common practice.
#[test]
fn a_middle_that_is_too_cold_sends_the_bread_back_into_the_oven() {
    let bench = begun();
    let found = |degrees: Option<f64>| Findings {
        core: degrees.map(celsius),
        ..Findings::default()
    };
    with(Some(&bench), |_, results| {
        assert_eq!(underbaked(&found(None), results), None);
        assert_eq!(underbaked(&found(Some(94.0)), results), None);
        let raw = underbaked(&found(Some(80.0)), results).unwrap();
        assert_eq!(raw.found, celsius(80.0));
        let from = raw.wanted.from.celsius();
        assert!((85.0..92.0).contains(&from), "{from}");
        assert_eq!(underbaked(&found(Some(from)), results), None);
    });
}

/// The display of a scale that is not tared is the sum of what is on it, by definition.
#[test]
fn a_scale_that_is_not_tared_shows_what_really_went_in() {
    let (scald, flour) = (step(StepKind::Scald, 0), LineAt { part: 0, line: 0 });
    let read = |bench: &Bench| {
        with(Some(bench), |input, results| {
            step_weighing(input, results, scald)
        })
    };
    let mut bench = begun();
    let asked = read(&bench);
    let over = asked.lines[0].target.unwrap().grams() + 5.0;
    bench.weigh(flour, Some(grams(over)));
    let weighed = read(&bench);
    assert_eq!(weighed.so_far, grams(over));
    let five = |after: Mass, before: Mass| (after.grams() - before.grams() - 5.0).abs() < 1e-9;
    assert!(five(weighed.total, asked.total));
    for (after, before) in weighed.lines.iter().zip(&asked.lines) {
        assert!(five(after.untared, before.untared), "{after:?}");
    }
    // Taken back, it is on no scale.
    bench.unweigh(flour);
    assert_eq!(read(&bench).total, asked.total);
}
