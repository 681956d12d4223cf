//! What is noted at the bench, in words: a paste off the kettle, a step that begins early, the log.

use super::days::{celsius, friday, minutes, plan};
use super::format_options::british;
use super::plain_speech::is_plain;
use softcrumb::engine::plan::{Conflict, StepAt, StepKind};
use softcrumb::engine::quantity::Mass;
use softcrumb::results::day::{
    DurationChange, FoundWarmth, FreshPaste, Moved, StartNow, steps_counted,
};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bake, Log, Resets, Target, WeighedOtherwise};
use softcrumb::sheet::{Id, Moment, examples};
use softcrumb::text::day;

fn spaced(text: &str) -> String {
    text.replace('\u{A0}', " ")
}

/// Source: wheat starch cooks from 58 to 65 °C, Faltermaier et al., *J. Inst. Brew.* 2014.
#[test]
fn a_paste_that_is_short_is_told_with_what_to_do() {
    let fresh = |degrees| {
        FoundWarmth::Fresh(FreshPaste {
            measured: celsius(degrees),
            begins: celsius(58.0),
            goal: celsius(65.0),
        })
    };
    let said = spaced(&day::found_warmth("Scald", &fresh(56.0), british()));
    assert_eq!(
        said,
        "Scald is at 56 °C; its starch cooks at 58 to 65 °C. Put it on low heat and stir until it \
         is at 65 °C."
    );
    is_plain(&said);
    let said = spaced(&day::found_warmth("Scald", &fresh(65.0), british()));
    assert!(said.starts_with("Scald is at 65 °C: hot enough"), "{said}");
}

/// By definition: a button tells what it does to the bread, and what then takes longer.
#[test]
fn a_step_that_begins_early_tells_the_bread() {
    let sheet = examples().remove(0).1;
    let results = plan(&sheet, 21.0, Target::Open);
    let chill = StepAt {
        work: StepKind::ChillPaste,
        of: 0,
    };
    let longer = DurationChange {
        step: chill,
        planned: minutes(720.0),
        now: minutes(840.0),
        fills_time: true,
    };
    let said = |moved, longer, conflicts| {
        let then = StartNow {
            ready: results.solved.table,
            moved,
            longer,
            hot: None,
            conflicts,
        };
        let zone = Zone::default();
        let said = day::start_now(&then, &results.plan, &sheet.formula, &zone, british());
        is_plain(&said);
        spaced(&said)
    };
    let earlier = said(Moved::Earlier(minutes(90.0)), None, vec![]);
    assert_eq!(
        earlier,
        "Started now, the bread is ready Sat 16:00, 1 h 30 min earlier."
    );
    let divide = StepAt {
        work: StepKind::Divide,
        of: 0,
    };
    let (_, divided) = results.find(divide).unwrap();
    let night = Conflict::AtNight {
        step: results.plan.place(divide).unwrap(),
        begins: divided.begins,
        wakes: divided.ends,
    };
    let later = said(Moved::Later(minutes(20.0)), None, vec![night]);
    assert!(
        later.contains("20 min later. “Weigh and divide” would begin Sat"),
        "{later}"
    );
    let same = said(Moved::Same, Some(longer), vec![]);
    assert!(same.contains("all the same. “"), "{same}");
    assert!(same.contains("14 h instead of 12 h"), "{same}");
}

/// By definition: the row, its answer and the photo have one date, and say of what.
#[test]
fn the_log_says_of_what_its_date_is() {
    let hour =
        |hours: f64| Moment::from_milliseconds(friday().milliseconds() + hours * 3.6e6).unwrap();
    let mut bake = Bake::new(Id::from_random(3), hour(0.0));
    let now = hour(40.0).instant();
    let zone = Zone::default();
    let row = |bake: &Bake| day::baked_on(bake, now, &zone);
    assert_eq!(row(&bake), "begun Fri 27 March");
    let oven = StepAt {
        work: StepKind::Bake,
        of: 0,
    };
    bake.begin(oven, hour(20.0));
    assert_eq!(row(&bake), "baked Sat 28 March");
    let grams = |g: f64| Mass::from_grams(g).unwrap();
    bake.weighed = vec![WeighedOtherwise {
        food: "Water".to_owned(),
        asked: grams(112.0),
        weighed: grams(104.0),
    }];
    let said = spaced(&day::weighed_otherwise(&bake, british()).unwrap());
    assert_eq!(said, "Weighed: Water 104 g instead of 112 g.");
    let log = Log::of(vec![bake], Resets::default());
    assert_eq!(
        day::log_answer(&log, &zone, british()),
        "one bake, baked Sat 28 March"
    );
}

/// By definition: the plan counts what the bench counts.
#[test]
fn the_plan_counts_the_steps_of_the_bench() {
    let sheet = examples().remove(0).1;
    let results = plan(&sheet, 21.0, Target::Open);
    let said = spaced(&day::steps_answer(&results, british()));
    let count = steps_counted(&results);
    assert!(said.starts_with(&format!("{count} steps, ")), "{said}");
    assert!(count < results.order.len(), "some run by themselves");
}
