//! The rows of Day: their answers, and sentences whose numbers can be reckoned again.

use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{Change, StepAt, StepKind};
use softcrumb::results::day::{
    AdjustmentReason, ConflictedPlan, DayInput, adjustments, begin_bake, of,
};
use softcrumb::results::run::StageKind;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{DaySettings, Target};
use softcrumb::sheet::{Id, Kitchen, Moment, examples};
use softcrumb::text::{day, format};

use crate::days::{celsius, friday, plan};
use crate::format_options::british;

fn at(hours: f64) -> Target {
    Target::Table(Moment::from_milliseconds(friday().milliseconds() + hours * 3.6e6).unwrap())
}

fn plain(text: &str) -> String {
    text.replace('\u{A0}', " ")
}

/// The numbers of a text, in their order.
fn numbers(text: &str) -> Vec<f64> {
    let pieces = text.split(|c: char| !(c.is_ascii_digit() || c == '.'));
    pieces.filter_map(|piece| piece.parse().ok()).collect()
}

/// By definition: a product is its factors multiplied, as they are read on the page.
#[test]
fn the_numbers_of_a_rise_multiply() {
    for (_, sheet) in examples() {
        for room in [14.0, 21.0, 26.0, 32.0] {
            let planned = plan(&sheet, room, Target::Open);
            let bulk = planned.run.rises.bulk.as_ref().unwrap();
            let said = plain(&day::rise_difference(bulk, celsius(room), british()));
            // The known rise of these examples is one hour.
            assert!(said.starts_with("1 h (known"), "{said}");
            let found = numbers(&said);
            let [known, dough, warmth] = [60.0 * found[0], found[2], found[3]];
            let due = bulk.due.minutes();
            // Half of the last digit of the last factor.
            let off = known * dough * 0.005 + 0.5;
            assert!((known * dough * warmth - due).abs() <= off, "{said}: {due}");
        }
    }
}

/// By definition: what leaves the fridge when the plan says so has been in it as long as the plan has it.
#[test]
fn a_preferment_is_as_ripe_as_the_plan_leaves_it() {
    let (_, sheet) = examples().remove(0);
    let zone = Zone::default();
    for hours in [18.0, 22.0, 26.0, 30.0] {
        let planned = plan(&sheet, 21.0, at(hours));
        let rise = planned.run.rises.preferments[0].as_ref().unwrap();
        let of = u16::try_from(rise.part).unwrap();
        let chill = StepAt {
            work: StepKind::ChillPreferment,
            of,
        };
        let (_, timed) = planned.find(chill).unwrap();
        let mut stages = planned.run.stages.iter();
        let stage =
            stages.find(|stage| stage.kind == StageKind::Chill && stage.part == Some(rise.part));
        assert_eq!(stage.unwrap().lasts, [timed.lasts; 3]);
        let said = day::preferment_rise(rise, &planned, &sheet.formula, &zone, british());
        let out = format::day_and_clock(timed.ends, &zone);
        assert!(
            said.contains(&format!("leaves the fridge, {out}")),
            "{said}"
        );
    }
}

#[test]
fn a_night_that_is_lengthened_by_a_minute_says_why() {
    let (_, sheet) = examples().remove(0);
    let (kitchen, settings) = (Kitchen::default(), DaySettings::default());
    let (learnt, zone) = (Default::default(), Zone::default());
    let input = DayInput {
        sheet: &sheet,
        kitchen: &kitchen,
        settings: &settings,
        learnt: &learnt,
        rounded: None,
        zone: &zone,
        now: friday(),
        bench: None,
    };
    let results = of(&input).unwrap();
    let found = adjustments(&input, &results);
    assert!(!found.is_empty());
    assert_eq!(found[0].reason, AdjustmentReason::Hands);
    let said = plain(&day::adjustment(
        &found[0],
        &results,
        &sheet.formula,
        british(),
    ));
    assert!(
        said.starts_with("Night dough in the fridge: 12 h 1 min instead of 12 h"),
        "{said}"
    );
}

/// Common practice: a loaf is cut at 30 to 35 °C in the middle, and no plan makes it get there sooner.
/// Where the time does not suffice something is in the way, and what solves it is another time.
#[test]
fn no_plan_shortens_the_cooling_of_the_bread() {
    let (mut crowded, mut later) = (0, 0);
    for (_, sheet) in examples() {
        for quarters in (4..140_u32).step_by(3) {
            let planned = plan(&sheet, 21.0, at(f64::from(quarters) / 4.0));
            let mut cooling = planned.run.stages.iter();
            let cooling = cooling
                .rfind(|stage| stage.kind == StageKind::Cool)
                .unwrap();
            let cool = StepAt {
                work: StepKind::Cool,
                of: 0,
            };
            let place = planned.plan.place(cool).unwrap();
            let lasts = planned.solved.steps[place].lasts.minutes();
            // Times are whole seconds.
            assert!(
                lasts >= cooling.lasts[1].minutes() - 0.02,
                "{lasts} {cooling:?}"
            );
            crowded += u32::from(!planned.solved.conflicts.is_empty());
            let conflicted = ConflictedPlan::of(&planned);
            for change in &conflicted.map_or_else(Vec::new, |one| one.solutions()) {
                let of_cool =
                    matches!(change, Change::LetLast { step, longer: false, .. } if *step == place);
                assert!(!of_cool, "{change:?}");
                later += u32::from(matches!(change, Change::TableLater(_)));
            }
        }
    }
    assert!(crowded > 0 && later > 0);
}

/// By definition: a bake that begins with more than a day to spare has all the time it takes.
#[test]
fn nothing_is_shortened_for_time_while_there_is_a_day_to_spare() {
    for (_, sheet) in examples() {
        for hours in 44..60_u32 {
            let settings = DaySettings {
                target: at(f64::from(hours)),
                ..DaySettings::default()
            };
            let kitchen = Kitchen::default();
            let learnt = Learnt::default();
            let zone = Zone::default();
            let mut input = DayInput {
                sheet: &sheet,
                kitchen: &kitchen,
                settings: &settings,
                learnt: &learnt,
                rounded: None,
                zone: &zone,
                now: friday(),
                bench: None,
            };
            let results = of(&input).unwrap();
            let mut bench = begin_bake(Id::from_random(1), None, input.now, &input, Some(&results));
            let first = results.plan.steps()[results.order[0]].at;
            bench.bake.begin(first, input.now);
            input.bench = Some(&bench);
            let results = of(&input).unwrap();
            for one in adjustments(&input, &results) {
                let shorter = one.lasts < one.wished && one.reason == AdjustmentReason::Time;
                assert!(!shorter, "{} {hours}: {one:?}", sheet.name);
            }
        }
    }
}

#[test]
fn a_bake_that_may_reach_into_the_night_is_told() {
    // A dough of one day that is on the table after midnight is out of the oven just before bedtime.
    let (_, one_day) = examples().remove(1);
    let planned = plan(&one_day, 21.0, at(30.75));
    assert_eq!(planned.solved.conflicts, []);
    let said = day::bedtime(&planned.bedtime.unwrap(), &Zone::default());
    assert!(said.contains("Sat 23:00"), "{said}");
    // The usual afternoon is far from it.
    let (_, sheet) = examples().remove(0);
    assert_eq!(plan(&sheet, 21.0, Target::Open).bedtime, None);
}

#[test]
fn steps_are_shown_with_clock_length_and_work() {
    let (_, sheet) = examples().remove(0);
    let planned = plan(&sheet, 21.0, Target::Open);
    let pairs = planned.plan.steps().iter().zip(&planned.solved.steps);
    let told: Vec<String> = pairs
        .map(|(step, timed)| {
            let told = day::step_line(step, timed, &sheet.formula, &Zone::default(), british());
            format!("{} {}: {}", told.clock, told.name, told.lasts)
        })
        .collect();
    let all = told.join("\n").replace('\u{A0}', " ");
    assert!(all.contains("Make Scald: 12 min hands-on"), "{all}");
    assert!(
        all.contains("Let Night dough stand: 40 min, nothing to do"),
        "{all}"
    );
    let order = planned.order.iter();
    let days = order.filter_map(|place| day::first_of_day(&planned, *place, &Zone::default()));
    assert_eq!(days.collect::<Vec<_>>(), ["Fri 27 March", "Sat 28 March"]);
    assert!(
        all.contains("Bulk rise: ") && all.contains(" hands-on)"),
        "{all}"
    );
}
