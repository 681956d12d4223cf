//! What a bake shows: noted as it can be learnt from.

use softcrumb::engine::formula::LineAt;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::nutrition::LabelLaw;
use softcrumb::engine::plan::{Edit, StepKind, weighed_at};
use softcrumb::engine::quantity::{Mass, Temperature, WarmingRate};
use softcrumb::results::batch;
use softcrumb::results::day::{
    self, DayInput, DayResults, as_weighed, note_bread, note_dough, note_dough_temperature,
    note_durations, note_mixing_time, unmixed,
};
use softcrumb::results::heat::MixingResult;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{Bake, Bench, DaySettings};
use softcrumb::sheet::{Id, Kitchen, Sheet, examples};

use crate::days::{minutes, ms, step};

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn first() -> Sheet {
    examples().remove(0).1
}

fn plan(sheet: &Sheet, bake: Option<&Bake>, room: f64) -> DayResults {
    let kitchen = Kitchen {
        room: Temperature::from_celsius(room).unwrap(),
        ..Kitchen::default()
    };
    let bench = bake.cloned().map(Bench::new);
    day::of(&DayInput {
        sheet,
        kitchen: &kitchen,
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: None,
        zone: &Zone::default(),
        now: ms(1_774_634_400_000.0),
        bench: bench.as_ref(),
    })
    .unwrap()
}

fn bake() -> Bake {
    Bake::new(Id::from_random(1), ms(1_774_634_400_000.0))
}

/// The friction of the mixer has no part in a dough without friction, and a dough that came off as
/// the balance has it teaches the mixer's own friction, whatever the room took meanwhile.
#[test]
fn a_dough_as_the_balance_has_it_teaches_the_mixers_own_friction() {
    let sheet = first();
    for (rate, room) in [(0.12, 21.0), (0.5, 14.0), (3.0, 33.0)] {
        let mut kitchen = Kitchen {
            room: Temperature::from_celsius(room).unwrap(),
            ..Kitchen::default()
        };
        let cold = unmixed(&sheet, &kitchen, minutes(9.0)).unwrap();
        kitchen.mixer.friction = WarmingRate::from_kelvin_per_minute(rate).unwrap();
        assert_eq!(unmixed(&sheet, &kitchen, minutes(9.0)), Some(cold));
        assert!(cold.warmed_for < minutes(9.0) && cold.warmed_for > minutes(8.0));
        let mixing = MixingResult::of(&sheet.formula, &kitchen, &sheet.heat).unwrap();
        let mut bake = bake();
        note_dough_temperature(&mut bake, &sheet, &kitchen, mixing.dough.temperature);
        let learnt = bake.noted.friction().unwrap().kelvin_per_minute();
        assert!((learnt - rate).abs() < 1e-9, "{learnt} {rate}");
        // Mixed for longer than was noted at first: the balance is noted again.
        note_mixing_time(&mut bake, &sheet, &kitchen, minutes(14.0));
        let longer = unmixed(&sheet, &kitchen, minutes(14.0)).unwrap();
        assert_eq!(bake.noted.warmed_for, Some(longer.warmed_for));
        assert_eq!(bake.noted.unmixed, Some(longer.temperature));
    }
}

/// Conservation of mass, by definition: a loaf with its filling and drizzle that weighs what Batch and
/// its nutrition say has lost in the oven what Batch says.
#[test]
fn what_is_in_and_on_the_bread_is_no_dough_that_the_oven_has_spared() {
    for (_, sheet) in examples() {
        let scaled = batch::scale(&sheet).unwrap();
        let loaf = batch::nutrition::of(&sheet, &scaled, LabelLaw::Eu).unwrap();
        let bread = grams(loaf.piece.mass.grams() * f64::from(scaled.pieces.count.get()));
        let mut bake = bake();
        note_dough(&mut bake, scaled.mixed, scaled.needed);
        note_bread(&mut bake, bread, scaled.beside_dough());
        let lost = bake.noted.oven_loss.unwrap().lost().unwrap();
        let said = sheet.batch.losses.bake;
        assert!(
            (lost.fraction() - said.fraction()).abs() < 0.001,
            "{}: {lost:?} {said:?}",
            sheet.name
        );
    }
    // Bread that weighs more than what went into the oven teaches nothing.
    let mut bake = bake();
    note_dough(&mut bake, grams(930.0), grams(920.0));
    note_bread(&mut bake, grams(1010.0), grams(80.0));
    assert_eq!(bake.noted.oven_loss.unwrap().lost(), None);
}

#[test]
fn losses_are_noted_from_bowl_to_bread() {
    let mut bake = bake();
    note_bread(&mut bake, grams(800.0), grams(0.0));
    assert_eq!(bake.noted.oven_loss, None, "nothing was divided");
    assert_eq!(bake.found.bread, Some(grams(800.0)), "but it was weighed");
    note_dough(&mut bake, grams(930.0), grams(920.0));
    note_bread(&mut bake, grams(810.0), grams(0.0));
    let lost = bake.noted.oven_loss.unwrap();
    assert_eq!((lost.before, lost.after), (grams(920.0), grams(810.0)));
}

#[test]
fn times_are_noted_once_a_work_is_over_from_its_first_step_to_its_last() {
    let sheet = first();
    let planned = plan(&sheet, None, 26.0);
    let settings = DaySettings::default();
    let mut bake = bake();
    let at = |min: f64| ms(1_774_634_400_000.0 + min * 60_000.0);
    bake.begin(step(StepKind::Bulk, 0), at(0.0));
    note_durations(&mut bake, &planned, &settings);
    assert_eq!(bake.noted.bulk, None, "it is under way");
    bake.end(step(StepKind::Bulk, 0), at(70.0));
    for (phase, from, until) in [(0, 100.0, 112.0), (1, 112.0, 127.0)] {
        bake.begin(step(StepKind::Bake, phase), at(from));
        bake.end(step(StepKind::Bake, phase), at(until));
    }
    note_durations(&mut bake, &planned, &settings);
    let bulk = bake.noted.bulk.unwrap();
    assert_eq!(bulk.minutes, minutes(70.0));
    let due = planned.run.rises.bulk.as_ref().unwrap().due;
    assert!((bulk.expected.minutes() - due.minutes()).abs() < 1e-9);
    assert_eq!(bake.noted.bake.unwrap().minutes, minutes(27.0));
    assert_eq!(bake.noted.proof, None);
}

/// By definition: an hour and fourteen minutes by the clock, give or take its seconds, are 74 min in the
/// record, not 74.0333333333.
#[test]
fn a_rise_that_was_measured_is_stored_with_the_digits_of_a_clock() {
    let sheet = first();
    let planned = plan(&sheet, None, 26.0);
    let mut bake = bake();
    let at = |seconds: f64| ms(1_774_634_400_000.0 + seconds * 1000.0);
    bake.begin(step(StepKind::Bulk, 0), at(1.0));
    bake.end(step(StepKind::Bulk, 0), at(74.0 * 60.0 + 3.0));
    note_durations(&mut bake, &planned, &DaySettings::default());
    assert_eq!(bake.noted.bulk.unwrap().minutes, minutes(74.0));
}

#[test]
fn a_dough_that_came_out_cold_is_planned_with_as_it_is() {
    let sheet = first();
    let predicted = plan(&sheet, None, 24.0).run.dough;
    let mut cold = bake();
    cold.noted.dough = Temperature::from_celsius(predicted.celsius() - 3.0).ok();
    let due = |planned: &DayResults| planned.run.rises.bulk.as_ref().unwrap().due;
    let (usual, later) = (plan(&sheet, None, 24.0), plan(&sheet, Some(&cold), 24.0));
    assert!(due(&later) > due(&usual));
}

#[test]
fn what_really_went_in_stands_in_for_what_was_asked() {
    let sheet = first();
    let mut bench = Bench::new(bake());
    let water = LineAt { part: 0, line: 2 };
    bench.weigh(water, Some(grams(104.0)));
    let made = as_weighed(&sheet.formula, &bench);
    assert_eq!(made.line(water).unwrap().poured, Some(grams(104.0)));
    bench.weigh(LineAt { part: 99, line: 0 }, Some(grams(1.0)));
    assert_eq!(as_weighed(&sheet.formula, &bench), made);
}

/// Every line of the formula is weighed at exactly one step.
#[test]
fn every_line_is_weighed_once() {
    for (_, sheet) in examples() {
        let planned = plan(&sheet, None, 21.0);
        let steps = planned.plan.steps().iter();
        let mut all: Vec<LineAt> = steps
            .flat_map(|step| weighed_at(step.at, &planned.plan, &sheet.formula))
            .collect();
        all.sort_unstable();
        let lines = sheet.formula.parts.iter().enumerate();
        let asked: Vec<LineAt> = lines
            .flat_map(|(part, own)| (0..own.lines.len()).map(move |line| LineAt { part, line }))
            .collect();
        assert_eq!(all, asked, "{}", sheet.name);
    }
}

#[test]
fn a_changed_length_replaces_the_one_before_and_own_steps_have_numbers() {
    let mut settings = DaySettings::default();
    let rest = step(StepKind::Rest, 0);
    let lasts = |m: f64| Edit::Duration {
        step: rest,
        minutes: minutes(m),
    };
    settings.add(lasts(20.0));
    settings.add(lasts(25.0));
    assert_eq!(settings.edits, [lasts(25.0)]);
    for number in 1..=3_u16 {
        let own = settings.own_step(rest, "Turn \u{202e}it");
        let Edit::Added {
            number: found,
            name,
            ..
        } = &own
        else {
            panic!("{own:?}")
        };
        assert_eq!((*found, name.as_str()), (number, "Turn it"));
        settings.add(own);
    }
    for _ in 0..100 {
        settings.add(settings.own_step(rest, "x"));
    }
    assert_eq!(settings.edits.len(), Edit::MOST);
}

#[test]
fn an_open_table_is_an_afternoon_with_a_night_before_it() {
    for hour in 0..48_u32 {
        let now = ms(1_774_634_400_000.0 + f64::from(hour) * 3.6e6);
        let table = day::open_target(&Zone::fixed(60), now);
        let ahead = table.since(now.instant());
        assert!(
            (20.0..=44.0).contains(&ahead.hours()),
            "{hour}: {}",
            ahead.hours()
        );
        assert_eq!(Zone::fixed(60).civil(table).clock.minutes(), 16 * 60);
    }
}
