//! What goes otherwise at the bench, in words, and the log's own sentences.

use super::days::{celsius, friday, minutes, plan};
use super::format_options::{american, british};
use super::plain_speech::is_plain;
use softcrumb::engine::formula::{Form, LineAt};
use softcrumb::engine::quantity::{Factor, Mass, Share, TemperatureChange};
use softcrumb::engine::rise::{YeastActivity, yeast_activity};
use softcrumb::results::day::{RiseOff, RisePlace, WhichRise, add_more, promise};
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
    let at = friday().instant();
    let zone = Zone::default();
    let said = |minutes_late: f64| {
        let begins = if minutes_late < 0.0 {
            at.earlier(minutes(-minutes_late))
        } else {
            at.later(minutes(minutes_late))
        };
        day::off_time(at, begins, &zone, british()).map(|said| plain(&said))
    };
    assert_eq!(said(2.0), None);
    let late = said(22.0).unwrap();
    assert_eq!(late, "This was to begin at 18:00: it is 22 min late.");
    let early = said(-15.0).unwrap();
    assert_eq!(early, "This was to begin at 18:00: it is 15 min early.");
    is_plain(&late);
    is_plain(&early);
}

#[test]
fn a_rise_that_goes_otherwise_is_told_with_the_place_that_makes_up_for_it() {
    let off = RiseOff {
        which: WhichRise::Bulk,
        wished: minutes(60.0),
        now: minutes(78.0),
        late: minutes(0.0),
        place: Some(RisePlace {
            at: celsius(29.0),
            due: minutes(61.0),
        }),
        chosen: None,
    };
    let dough = Some((celsius(25.0), celsius(22.0)));
    let said = plain(&day::rise_off(&off, dough, british()).join(" "));
    assert_eq!(
        said,
        "The dough is at 22 °C instead of 25 °C: it rises later than planned. The bulk rise takes \
         78 min instead of 60 min."
    );
    is_plain(&said);
    let (at, tap) = day::place_for(&off, british()).unwrap();
    assert_eq!(at, celsius(29.0));
    assert_eq!(plain(&tap), "Put it in a warmer place, 29 °C: up in 61 min");
    let (_, tap) = day::place_for(&off, american()).unwrap();
    assert!(plain(&tap).contains("84 °F"), "{tap}");
    // Where it is put already, or where nothing is gained, nothing is offered.
    let put = RiseOff {
        chosen: Some(celsius(29.0)),
        ..off
    };
    assert_eq!(day::place_for(&put, british()), None);
    let none = RiseOff {
        now: minutes(60.5),
        ..off
    };
    assert_eq!(day::place_for(&none, british()), None);
    let late = RiseOff {
        which: WhichRise::Proof,
        now: minutes(60.0),
        late: minutes(20.0),
        ..off
    };
    let said = plain(&day::rise_off(&late, dough, british()).join(" "));
    assert_eq!(said, "It begins 20 min later than planned.");
}

#[test]
fn a_paste_is_told_to_wait_or_to_go_on() {
    let needs = |there: f64| StillNeeds {
        wanted: celsius(40.0),
        there: minutes(there),
        in_ice: Some(minutes(4.0)),
    };
    let said = |there: f64| {
        plain(&day::time_to_target(
            "Scald",
            celsius(55.0),
            &needs(there),
            british(),
        ))
    };
    let wait = said(17.0);
    assert_eq!(
        wait,
        "Scald is at 55 °C; the plan has it at 40 °C by now. It needs about 20 min more."
    );
    is_plain(&wait);
    assert!(said(0.0).ends_with("it can go on."), "{}", said(0.0));
    assert_eq!(
        plain(&day::wait_for(minutes(17.0), british())),
        "Wait 17 min more"
    );
}

#[test]
fn what_has_moved_is_told_step_by_step_with_the_table() {
    let (_, sheet) = examples().remove(0);
    let before = plan(&sheet, 21.0, Target::Open);
    let mut bench = Bench::new(Bake::new(Id::from_random(1), friday()));
    bench.promised = promise(&before);
    let told = |planned| {
        let zone = Zone::default();
        day::moved(planned, &bench, &sheet.formula, &zone, british())
    };
    assert!(told(&before).is_empty(), "{:?}", told(&before));
    let colder = plan(&sheet, 15.0, Target::Open);
    let said = told(&colder);
    assert!(
        said.iter()
            .any(|said| said.starts_with("“Bulk rise” lasts")),
        "{said:?}"
    );
    for sentence in &said {
        is_plain(sentence);
    }
}

#[test]
fn what_is_added_names_the_food_and_the_weight() {
    let formula = examples().remove(0).1.formula;
    let mut bench = Bench::new(Bake::new(Id::from_random(1), friday()));
    let water = LineAt { part: 0, line: 2 };
    let mut said = |grams: f64| {
        bench.weigh(water, Mass::from_grams(grams).ok());
        let more = add_more(&formula, &bench);
        plain(&day::add_more(&more[0], &formula, british()))
    };
    assert_eq!(said(104.0), "Added: 8 g of Water, and it is as asked");
    let flour = said(120.0);
    assert!(
        flour.contains("more of") && flour.contains("flour"),
        "{flour}"
    );
    let warmer = |kelvin: f64| {
        let by = TemperatureChange::from_kelvin(kelvin).unwrap();
        day::warmed_by_weights(by, british()).map(|said| plain(&said))
    };
    assert_eq!(warmer(0.05), None);
    is_plain(&warmer(-0.4).unwrap());
}

#[test]
fn another_dough_is_told_with_what_is_in_it() {
    let formula = examples().remove(0).1.formula;
    let then = yeast_activity(&formula, Form::AsMade).unwrap();
    let twice = Share::from_fraction(then.yeast.fraction() * 2.0).unwrap();
    let now = YeastActivity::of(twice, then.sugar, then.salt).unwrap();
    let times = now.against(&then).unwrap();
    let said = plain(&day::yeast_activity((&now, &then), times, british()).unwrap());
    assert!(
        said.starts_with("This dough rises 2 times as fast as the one"),
        "{said}"
    );
    assert!(said.contains("of yeast, as fresh, instead of"), "{said}");
    assert!(!said.contains("sugar") && !said.contains("salt"), "{said}");
    is_plain(&said);
    let slower = then.against(&now).unwrap();
    let said = day::yeast_activity((&then, &now), slower, british()).unwrap();
    assert!(
        said.starts_with("This dough takes 2 times as long"),
        "{said}"
    );
    assert_eq!(
        day::yeast_activity((&now, &now), Factor::ONE, british()),
        None
    );
}

#[test]
fn what_was_taken_into_the_log_is_told() {
    let id = Id::from_random(1);
    let taken = |added: usize, there, no_room| LogImport {
        added: vec![id.clone(); added],
        there,
        no_room,
    };
    for (added, there, no_room, photos) in
        [(0, 0, 0, 0), (1, 1, 1, 1), (3, 2, 4, 5), (2000, 0, 0, 0)]
    {
        for said in day::taken_in(&taken(added, there, no_room), photos, british()) {
            is_plain(&said);
        }
    }
    let said = day::taken_in(&taken(0, 3, 0), 0, british()).join(" ");
    assert_eq!(
        said,
        "No bake of this file is new here. 3 were there already, and are left as they are."
    );
    for said in [
        day::photos_full(),
        day::not_a_picture(),
        day::picture_broken(),
        day::photo_kept(),
        day::photo_gone(),
    ] {
        is_plain(said);
    }
    is_plain(&day::photo_too_large(49e6, 30e6, british()));
}
