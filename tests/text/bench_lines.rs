//! Single lines of bench and plan: when the bread is ready, when something comes out of the fridge, how
//! ripe a preferment is, and that a dough is too cold.

use super::days::{celsius, friday, minutes, plan};
use super::format_options::british;
use super::plain_speech::is_plain;
use softcrumb::engine::formula::PartKind;
use softcrumb::engine::ingredients::Role;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::engine::quantity::{Instant, Mass};
use softcrumb::engine::rise::{RipenessState, RiseSettings};
use softcrumb::results::day::{BenchStep, DayInput, DayResults, bench_step, of};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{DaySettings, Target};
use softcrumb::sheet::{Kitchen, Moment, Sheet, examples};
use softcrumb::text::{day, format};

/// A sentence, with usual spaces.
fn plain(text: &str) -> String {
    is_plain(text);
    spaced(text)
}

fn spaced(text: &str) -> String {
    text.replace('\u{A0}', " ")
}

fn seen<T>(
    sheet: &Sheet,
    room: f64,
    rises: RiseSettings,
    seen: impl Fn(&DayInput, &DayResults) -> T,
) -> T {
    let kitchen = Kitchen {
        room: celsius(room),
        flour: Some(celsius(room)),
        ..Kitchen::default()
    };
    let settings = DaySettings {
        rises,
        ..DaySettings::default()
    };
    let input = DayInput {
        sheet,
        kitchen: &kitchen,
        settings: &settings,
        learnt: &Learnt::default(),
        rounded: None,
        zone: &Zone::default(),
        now: friday(),
        bench: None,
    };
    seen(&input, &of(&input).unwrap())
}

/// By definition: the quiet line is the sentence of the plan without what can be set.
#[test]
fn the_quiet_ready_line_is_the_plans_sentence_without_its_margin() {
    let zone = Zone::default();
    for (_, sheet) in examples() {
        let wished = friday().instant().seconds() + 26 * 3600;
        let wished = Moment::from_instant(Instant::from_seconds(wished).unwrap());
        let results = plan(&sheet, 21.0, Target::Table(wished));
        let quiet = day::ready_between(&results, &zone).unwrap();
        let whole = day::ready(&results, &zone, british()).unwrap();
        assert!(
            whole.starts_with(&quiet) && whole.len() > quiet.len(),
            "{whole}"
        );
        let [soonest, latest] = results.ready.as_ref().unwrap().shown();
        let clock = |at| format::clock_at(at, &zone);
        let said = plain(&quiet);
        let ends = format!("between {} and {}.", clock(soonest), clock(latest));
        assert!(
            said.starts_with("Ready to cut Sat ") && said.ends_with(&ends),
            "{said}"
        );
        assert!(!said.contains("set"), "{said}");
    }
}

/// By definition: something comes out of the fridge when the step begins that waits for it.
#[test]
fn what_goes_into_the_fridge_says_when_it_comes_out() {
    let mut said_of = 0;
    for (_, sheet) in examples() {
        for standing in [0.0, 30.0] {
            let mut sheet = sheet.clone();
            sheet.heat.standing = minutes(standing);
            seen(&sheet, 21.0, RiseSettings::default(), |input, results| {
                let find = |work| results.find(StepAt { work, of: 0 });
                // A formula without anything made ahead has nothing to stand out.
                let first = find(StepKind::WarmUp).or(find(StepKind::Mix));
                let (_, next) = first.unwrap();
                let when = format::day_and_clock(next.begins, input.zone);
                let chills = [StepKind::ChillPaste, StepKind::ChillPreferment];
                let chills = results
                    .steps()
                    .filter(|(step, _)| chills.contains(&step.at.work));
                for (step, _) in chills {
                    let found = bench_step(input, results, step.at).unwrap();
                    assert!(matches!(found, BenchStep::IntoFridge { .. }), "{found:?}");
                    let said = day::bench_sentence(&found, &sheet.formula, input.zone, british());
                    let said = plain(&said);
                    let out = format!("into the fridge, covered. It comes out {when}.");
                    assert!(said.ends_with(&spaced(&out)), "{said}");
                }
            });
            said_of += 1;
        }
    }
    assert!(said_of > 0);
}

/// The first example with so many times the yeast in its preferment.
fn yeast_times(times: f64) -> Sheet {
    let mut sheet = examples().remove(0).1;
    let parts = sheet.formula.parts.iter_mut();
    let ahead = parts.filter(|part| part.kind == PartKind::Preferment);
    for line in ahead.flat_map(|part| &mut part.lines) {
        if line.food.role() == Role::Yeast {
            line.mass = Mass::from_grams(line.mass.grams() * times).unwrap();
        }
    }
    sheet
}

/// How ripe the preferment is and what is said of it.
fn ripeness(sheet: &Sheet, room: f64, bench: f64) -> (RipenessState, String) {
    let rises = RiseSettings {
        bench: minutes(bench),
        ..RiseSettings::default()
    };
    seen(sheet, room, rises, |input, results| {
        let rise = results.run.rises.preferments[0].as_ref().unwrap();
        let found = rise.ripeness.as_ref().unwrap();
        let said = day::preferment_rise(rise, results, &sheet.formula, input.zone, british());
        let chill = StepAt {
            work: StepKind::ChillPreferment,
            of: u16::try_from(rise.part).unwrap(),
        };
        let (_, timed) = results.find(chill).unwrap();
        let out = format::day_and_clock(timed.ends, input.zone);
        assert!(
            said.contains(&format!("leaves the fridge, {out}")),
            "{said}"
        );
        let mixed = timed.ends.earlier(rise.in_all());
        // What is said of when lies on the right side of when it comes out.
        let when = |after| format::day_and_clock(mixed.later(after), input.zone);
        match found.state {
            RipenessState::Under => {
                if let Some(from) = found.ripe_from {
                    assert!(from > rise.in_all());
                    assert!(
                        said.contains(&format!("it would be {}", when(from))),
                        "{said}"
                    );
                }
            }
            RipenessState::Ripe => {
                if let Some(until) = found.ripe_until {
                    assert!(until >= rise.in_all());
                    assert!(
                        said.contains(&format!("keeps there until {}", when(until))),
                        "{said}"
                    );
                }
            }
            RipenessState::Over => {
                let until = found.ripe_until.unwrap();
                assert!(until < rise.in_all());
                assert!(
                    said.contains(&format!("it was ripe until {}", when(until))),
                    "{said}"
                );
            }
        }
        (found.state, plain(&said))
    })
}

/// Common practice: 0.7 % instant yeast, 40 min in the room and a night in the fridge is ripe; half of
/// that in a cool room is not yet; a day in a warm room is too much.
#[test]
fn a_preferment_is_told_under_ripe_or_over_with_when() {
    let (state, said) = ripeness(&yeast_times(1.0), 24.0, 40.0);
    assert_eq!(state, RipenessState::Ripe, "{said}");
    assert!(said.contains("is ripe when it leaves the fridge"), "{said}");
    let (state, said) = ripeness(&yeast_times(0.4), 17.0, 15.0);
    assert_eq!(state, RipenessState::Under, "{said}");
    assert!(said.contains("is not ripe"), "{said}");
    let (state, said) = ripeness(&yeast_times(1.5), 28.0, 1200.0);
    assert_eq!(state, RipenessState::Over, "{said}");
    assert!(
        said.contains("is past its best when it leaves the fridge"),
        "{said}"
    );
}

/// Common practice: doughs are wanted at 24 to 27 °C; in a kitchen of 14 °C one that nothing was done
/// for comes off too cold, and in one line the mix says so.
#[test]
fn a_dough_that_is_too_cold_is_told_in_one_line_at_the_mix() {
    let (_, sheet) = examples().remove(0);
    let at = |room| {
        seen(&sheet, room, RiseSettings::default(), |input, results| {
            let mix = StepAt {
                work: StepKind::Mix,
                of: 0,
            };
            let found = bench_step(input, results, mix).unwrap();
            (results.run.dough, day::bench_note(&found, british()))
        })
    };
    let (dough, said) = at(14.0);
    let said = plain(&said.unwrap());
    let near = spaced(&format::near_temperature(dough, british()));
    let wanted = spaced(&format::temperature(sheet.heat.dough, british()));
    assert_eq!(
        said,
        format!("Dough at {near}, not {wanted}: too cold, see Heat.")
    );
    assert!(dough.celsius() < 20.0 && (24.0..=27.0).contains(&sheet.heat.dough.celsius()));
    // A warmer kitchen brings it nearer.
    assert!(at(28.0).0 > dough);
}
