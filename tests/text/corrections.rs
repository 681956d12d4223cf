//! Deviations at the bench in sentences, and those of the log.

use super::days::{celsius, friday, minutes, plan};
use super::format_options::{american, british};
use super::plain_speech::is_plain;
use softcrumb::engine::formula::{Form, LineAt};
use softcrumb::engine::quantity::{Factor, Mass, Share, TemperatureChange};
use softcrumb::engine::rise::{YeastActivity, yeast_activity};
use softcrumb::results::day::{
    DayResults, Doughs, PartWarmth, ReadyTime, RiseDeviation, RisePlace, StartDeviation,
    StepCorrections, WeighingEffect, WhichRise, additions, as_shown, duration_changes,
    plan_snapshot,
};
use softcrumb::results::heat::StillNeeds;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bake, Bench, LogImport, Target};
use softcrumb::sheet::{Id, examples};
use softcrumb::text::day;

fn plain(text: &str) -> String {
    text.replace('\u{A0}', " ")
}

#[test]
fn a_step_that_begins_off_its_time_says_so() {
    let zone = Zone::default();
    let said = |by: f64, late: bool| {
        let start = StartDeviation {
            planned: friday().instant(),
            by: minutes(by),
            late,
        };
        plain(&day::start_deviation(&start, &zone, british()))
    };
    let late = said(22.0, true);
    assert_eq!(late, "This was to begin at 18:00: it is 22 min late.");
    let early = said(15.0, false);
    assert_eq!(early, "This was to begin at 18:00: it is 15 min early.");
    is_plain(&late);
    is_plain(&early);
}

#[test]
fn a_rise_that_deviates_is_shown_with_the_place_that_corrects_it() {
    let place = RisePlace {
        at: celsius(29.0),
        due: minutes(61.0),
    };
    let rise = RiseDeviation {
        which: WhichRise::Bulk,
        planned: minutes(60.0),
        now: minutes(78.0),
        late: minutes(0.0),
        place: Some(place),
        chosen: None,
    };
    let said = |rise: RiseDeviation, dough| {
        let corrections = StepCorrections {
            rise: Some(rise),
            dough,
            ..StepCorrections::default()
        };
        plain(&day::rise_deviation(&corrections, british()).join(" "))
    };
    let cold = said(rise, Some((celsius(25.0), celsius(22.0))));
    assert_eq!(
        cold,
        "The dough is at 22 °C instead of 25 °C: it rises later than planned. The bulk rise takes \
         1 h 18 min instead of 1 h."
    );
    is_plain(&cold);
    let tap = day::rise_place(&place, rise.now, british());
    assert_eq!(
        plain(&tap),
        "Put it in a warmer place, 29 °C: up in 1 h 1 min"
    );
    let tap = day::rise_place(&place, rise.now, american());
    assert!(plain(&tap).contains("84 °F"), "{tap}");
    let late = RiseDeviation {
        which: WhichRise::Proof,
        now: minutes(60.0),
        late: minutes(20.0),
        ..rise
    };
    assert_eq!(said(late, None), "It is 20 min behind the plan.");
}

#[test]
fn a_paste_is_to_wait_or_to_go_on() {
    let said = |wait: Option<f64>| {
        let there = minutes(wait.unwrap_or(0.0));
        let warmth = PartWarmth {
            measured: celsius(55.0),
            needs: Ok(StillNeeds {
                wanted: celsius(40.0),
                there,
                in_ice: Some(minutes(4.0)),
            }),
            wait: wait.map(|wait| as_shown(minutes(wait))),
            in_ice: Some(minutes(4.0)),
        };
        plain(&day::part_warmth("Scald", &warmth, british()))
    };
    let wait = said(Some(17.0));
    assert_eq!(
        wait,
        "Scald is at 55 °C; the plan has it at 40 °C by now. It needs about 20 min more."
    );
    is_plain(&wait);
    assert!(said(None).ends_with("it can go on."), "{}", said(None));
    assert_eq!(
        plain(&day::wait_for(as_shown(minutes(17.0)), british())),
        "Wait 20 min more"
    );
}

/// Common practice: the sentence and the button below it name one figure, for every wait.
#[test]
fn a_wait_is_one_figure_in_sentence_and_button() {
    for tenths in 10..2000_u16 {
        let wait = as_shown(minutes(f64::from(tenths) / 10.0));
        let warmth = PartWarmth {
            measured: celsius(55.0),
            needs: Ok(StillNeeds {
                wanted: celsius(40.0),
                there: minutes(f64::from(tenths) / 10.0),
                in_ice: None,
            }),
            wait: Some(wait),
            in_ice: None,
        };
        let said = plain(&day::part_warmth("Scald", &warmth, british()));
        let button = plain(&day::wait_for(wait, british()));
        let figure = button.trim_start_matches("Wait ").trim_end_matches(" more");
        assert!(
            said.ends_with(&format!("about {figure} more.")),
            "{said} / {button}"
        );
        assert!(wait.minutes() >= f64::from(tenths) / 10.0);
    }
}

#[test]
fn what_has_changed_is_shown_step_by_step_with_the_table() {
    let (_, sheet) = examples().remove(0);
    let before = plan(&sheet, 21.0, Target::Open);
    let mut bench = Bench::new(Bake::new(Id::from_random(1), friday()));
    bench.planned = plan_snapshot(&before);
    let told = |results: &DayResults, ready| {
        let zone = Zone::default();
        let corrections = StepCorrections {
            durations: duration_changes(results, &bench),
            ready,
            ..StepCorrections::default()
        };
        let mut said =
            day::duration_changes(&corrections, &results.plan, &sheet.formula, british());
        said.extend(day::ready_change(&corrections, &zone));
        said
    };
    assert!(told(&before, None).is_empty());
    let colder = plan(&sheet, 15.0, Target::Open);
    let (planned, now) = (
        before.solved.table,
        before.solved.table.later(minutes(30.0)),
    );
    for (ready, last) in [
        (
            ReadyTime::OnTime(planned),
            "The bread can be cut Sat 16:00, as planned.",
        ),
        (
            ReadyTime::Moved { planned, now },
            "The bread can be cut Sat 16:30 instead of Sat 16:00.",
        ),
    ] {
        let said = told(&colder, Some(ready));
        assert!(
            said.iter()
                .any(|said| said.starts_with("“Bulk rise” lasts")),
            "{said:?}"
        );
        assert_eq!(said.last().map(|said| plain(said)).as_deref(), Some(last));
        for sentence in &said {
            is_plain(sentence);
        }
    }
}

#[test]
fn what_is_added_names_the_food_and_the_weight() {
    let formula = examples().remove(0).1.formula;
    let mut bench = Bench::new(Bake::new(Id::from_random(1), friday()));
    let water = LineAt { part: 0, line: 2 };
    let mut said = |grams: f64| {
        bench.weigh(water, Mass::from_grams(grams).ok());
        let more = additions(&formula, &bench);
        plain(&day::addition(&more[0], &formula, british()))
    };
    assert_eq!(said(104.0), "Add 8 g of Water: it is back as planned");
    let flour = said(120.0);
    assert!(
        flour.contains("more of") && flour.contains("flour"),
        "{flour}"
    );
    let warmer = |kelvin: f64| {
        let effect = WeighingEffect {
            true_water: Some((Share::WHOLE, Share::WHOLE)),
            warming: TemperatureChange::from_kelvin(kelvin).ok(),
            ..WeighingEffect::default()
        };
        plain(&day::weighing_effect(&effect, &formula, british()))
    };
    assert_eq!(warmer(0.05), "");
    is_plain(&warmer(-0.4));
}

#[test]
fn another_dough_is_shown_with_what_is_in_it() {
    let formula = examples().remove(0).1.formula;
    let then = yeast_activity(&formula, Form::AsMade).unwrap();
    let twice = Share::from_fraction(then.yeast.fraction() * 2.0).unwrap();
    let now = YeastActivity::of(twice, then.sugar, then.salt).unwrap();
    let times = now.against(&then).unwrap();
    let told =
        |now, reference, times| day::yeast_activity(&Doughs { now, reference }, times, british());
    let said = plain(&told(now, then, times).unwrap());
    assert!(
        said.starts_with("This dough rises 1.") && said.contains("times as fast as the one"),
        "{said}"
    );
    assert!(said.contains("of yeast, as fresh, instead of"), "{said}");
    assert!(!said.contains("sugar") && !said.contains("salt"), "{said}");
    is_plain(&said);
    let slower = then.against(&now).unwrap();
    let said = told(then, now, slower).unwrap();
    assert!(
        said.starts_with("This dough takes 1.") && said.contains("times as long"),
        "{said}"
    );
    assert_eq!(told(now, now, Factor::ONE), None);
}

#[test]
fn what_was_taken_into_the_log_is_shown() {
    let id = Id::from_random(1);
    let taken = |added: usize, there, no_room| LogImport {
        added: vec![id.clone(); added],
        there,
        no_room,
    };
    for (added, there, no_room, photos) in
        [(0, 0, 0, 0), (1, 1, 1, 1), (3, 2, 4, 5), (2000, 0, 0, 0)]
    {
        for said in day::log_imported(&taken(added, there, no_room), photos, british()) {
            is_plain(&said);
        }
    }
    let said = day::log_imported(&taken(0, 3, 0), 0, british()).join(" ");
    assert_eq!(
        said,
        "No bake of this file is new here. 3 were there already, and are left as they are."
    );
    for said in [
        day::photos_full(),
        day::not_a_picture(),
        day::picture_broken(),
        day::photo_stored(),
        day::photo_gone(),
    ] {
        is_plain(said);
    }
    is_plain(&day::photo_too_large(49e6, 30e6, british()));
}
