//! The rows of Day: their answers, and sentences whose numbers can be reckoned again.

use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::results::day::{AdjustmentReason, DayInput, DayResults, adjustments, of};
use softcrumb::results::run::StageKind;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{DaySettings, Target};
use softcrumb::sheet::{Kitchen, Moment, examples};
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
        said.starts_with("Preferment in the fridge: 12 h 1 min instead of 12 h"),
        "{said}"
    );
}

fn some_plan(select: impl Fn(&DayResults) -> bool) -> DayResults {
    let (_, sheet) = examples().remove(0);
    let hours = (40..140_u32).map(|quarters| f64::from(quarters) / 4.0);
    let mut plans = hours.map(|hours| plan(&sheet, 21.0, at(hours)));
    plans.find(select).unwrap()
}

#[test]
fn a_loaf_that_is_cut_early_is_told() {
    let planned = some_plan(|planned| planned.cut_early().is_some());
    let (lasts, wished) = planned.cut_early().unwrap();
    assert!(lasts < wished);
    let said = day::cut_early(&planned, british()).unwrap();
    assert!(said.contains(&format::minutes(wished, british())), "{said}");
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
    assert!(all.contains("Scald the paste: 12 min hands-on"), "{all}");
    assert!(
        all.contains("Let the preferment stand: 40 min, nothing to do"),
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
