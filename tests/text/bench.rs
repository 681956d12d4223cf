//! The bench in words: actual weights, timers, clocks, what one bake noted.

use super::days::{celsius, effect_of, friday, minutes};
use super::format_options::british;
use super::plain_speech::is_plain;
use softcrumb::engine::formula::LineAt;
use softcrumb::engine::learn::{MeasuredDuration, Observation};
use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::engine::quantity::Mass;
use softcrumb::results::day::WeighingEffect;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bake, Bench, Timer};
use softcrumb::sheet::{Id, Moment, examples};
use softcrumb::text::{day, format, read};

#[test]
fn what_one_bake_noted_is_shown() {
    let mut noted = Observation::default();
    assert_eq!(
        day::observations(&noted, british()),
        "Nothing was measured."
    );
    noted.dough = Some(celsius(22.0));
    noted.bulk = Some(MeasuredDuration {
        expected: minutes(60.0),
        minutes: minutes(75.0),
    });
    let said = day::observations(&noted, british()).replace('\u{A0}', " ");
    assert_eq!(
        said,
        "Dough at 22 °C and bulk rise 1 h 15 min, 1 h expected."
    );
    is_plain(&said);
}

#[test]
fn an_actual_mass_is_shown_with_its_effect() {
    let formula = examples().remove(0).1.formula;
    let bake = Bake::new(Id::from_random(1), friday());
    let said = |grams: Option<f64>| {
        let mut bench = Bench::new(bake.clone());
        let mass = grams.map(|g| Mass::from_grams(g).unwrap());
        bench.weigh(LineAt { part: 0, line: 2 }, mass);
        let effect = WeighingEffect {
            warming: None,
            ..effect_of(&bench)
        };
        day::weighing_effect(&effect, &formula, british()).replace('\u{A0}', " ")
    };
    assert_eq!(said(None), "");
    assert_eq!(said(Some(112.0)), "");
    let short = said(Some(104.0));
    assert!(
        short.starts_with("Water is 8 g short. True hydration"),
        "{short}"
    );
    assert!(!short.contains("flour"), "{short}");
    let over = said(Some(120.0));
    assert!(
        over.starts_with("Water is 8 g over. True hydration is"),
        "{over}"
    );
    is_plain(&short);
    is_plain(&over);
    for (got, word) in [(22.0, "later"), (27.0, "sooner"), (25.0, "as wanted")] {
        let said = day::dough_deviation(celsius(25.0), celsius(got), british());
        assert!(said.contains(word), "{said}");
        is_plain(&said);
    }
}

#[test]
fn a_timer_counts_down_and_then_up() {
    let at = StepAt {
        work: StepKind::Bulk,
        of: 0,
    };
    let timer = Timer {
        step: at,
        ends: friday(),
        heard: false,
    };
    let before = |seconds: f64| {
        let now = Moment::from_milliseconds(friday().milliseconds() - seconds * 1000.0).unwrap();
        day::timer(&timer, now, british()).replace('\u{A0}', " ")
    };
    assert_eq!(before(4.2), "0:05 left");
    assert_eq!(before(725.0), "12:05 left");
    assert_eq!(before(3_599.5), "60:00 left");
    assert_eq!(before(5_400.0), "1 h 30 min left");
    assert_eq!(before(-30.0), "over now");
    assert_eq!(before(-600.0), "over for 10 min");
    // Whole minutes: a kitchen timer has no tenths, common practice.
    assert_eq!(before(-306.0), "over for 5 min");
}

#[test]
fn clocks_and_dates_are_read_as_a_browsers_boxes_write_them() {
    for text in ["", "24:00", "7", "7:60", "a:b", "07:05:", "-1:00"] {
        assert_eq!(read::clock(text).is_some(), text == "07:05:", "{text}");
    }
    let zone = Zone::fixed(60);
    let at = friday().instant();
    let text = format::box_date_and_clock(at, &zone);
    assert_eq!(text, "2026-03-27T19:00");
    let (date, clock) = read::date_and_clock(&text).unwrap();
    assert_eq!(zone.instant(date, clock).first(), at);
    for text in [
        "2026-03-27",
        "2026-02-30T10:00",
        "2026-03-27T25:00",
        "T",
        "x-y-zT10:00",
    ] {
        assert_eq!(read::date_and_clock(text), None, "{text}");
    }
}

/// By definition: a weight of another part says of which.
#[test]
fn a_weight_of_another_part_names_it_and_a_late_step_tells_the_bread() {
    let formula = examples().remove(0).1.formula;
    let mut bench = Bench::new(Bake::new(Id::from_random(1), friday()));
    bench.weigh(LineAt { part: 0, line: 2 }, Mass::from_grams(104.0).ok());
    let mut effect = effect_of(&bench);
    effect.differences[0].elsewhere = true;
    let said = day::weighing_effect(&effect, &formula, british()).replace('\u{A0}', " ");
    let named = format!("{}: Water is 8 g short.", formula.parts[0].name);
    assert!(said.starts_with(&named), "{said}");
    let late = minutes(33.0);
    let said = day::ready_later(late, british()).replace('\u{A0}', " ");
    assert_eq!(said, "The bread will be 33 min later than planned.");
}
