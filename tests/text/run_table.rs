//! The run of each example in a cold, a usual and a warm kitchen, as a table in `DEVELOPERS.md`.

use softcrumb::engine::formula::Formula;
use softcrumb::engine::heat::CoolingWay;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::quantity::{Instant, Minutes, Temperature};
use softcrumb::results::batch;
use softcrumb::results::day::{self, DayInput, DayResults};
use softcrumb::results::heat::{HeatInput, HeatResults};
use softcrumb::results::run::Run;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Kitchen, Moment, Sheet, examples};
use softcrumb::text::{FormatOptions, format};

use crate::written_table::{Column, check};

/// A Friday evening at six, ms since 1970.
const FRIDAY_EVENING: f64 = 1_774_634_400_000.0;

fn plain(text: &str) -> String {
    text.replace('\u{A0}', " ")
}

fn minutes(time: Minutes) -> String {
    plain(&format::minutes(time, FormatOptions::default()))
}

fn temperature(at: Temperature) -> String {
    plain(&format::temperature(at, FormatOptions::default()))
}

/// In what and where it is cooled.
fn way(way: &CoolingWay) -> String {
    let vessel = format!("{:?}", way.vessel).to_lowercase();
    let vessel = match way.laid.count {
        1 => vessel,
        count => format!("{count} × {vessel}"),
    };
    let stays = [(way.bench, "bench"), (way.ice, "ice water")];
    let stays = stays.into_iter().filter(|(time, _)| *time > Minutes::ZERO);
    let stays: Vec<_> = stays
        .map(|(time, place)| format!("{} {place}", minutes(time)))
        .chain(["fridge".to_owned()])
        .collect();
    format!("{vessel}: {}", stays.join(", "))
}

/// When each paste is at 5 °C in the middle, and by which way; none without a paste.
fn pastes(run: &Run, formula: &Formula) -> String {
    let of = |part: usize| {
        let cooling = run.cooling(part)?;
        let cold = cooling.chilled_after().map_or("never".to_owned(), minutes);
        Some(format!("{cold} ({})", way(&cooling.plan.way)))
    };
    let pastes: Vec<_> = (0..formula.parts.len()).filter_map(of).collect();
    if pastes.is_empty() {
        "no paste".to_owned()
    } else {
        pastes.join("; ")
    }
}

/// From the first step until the bread is cut: at the soonest, most likely, at the latest.
fn ready(results: &DayResults) -> String {
    let ready = results.ready.as_ref().unwrap();
    let hours = |end: Instant| end.since(results.solved.begins).minutes() / 60.0;
    let [soonest, likely, latest] = [ready.soonest, ready.likely, ready.latest].map(hours);
    format!("{likely:.1} h ({soonest:.1} to {latest:.1})")
}

fn row(sheet: &Sheet, room: f64) -> Vec<String> {
    let room = Temperature::from_celsius(room).unwrap();
    let kitchen = Kitchen {
        room,
        flour: Some(room),
        ..Kitchen::default()
    };
    let (settings, learnt, zone) = (DaySettings::default(), Learnt::default(), Zone::default());
    let batch = batch::of(sheet, kitchen.scales);
    let input = DayInput {
        sheet,
        kitchen: &kitchen,
        settings: &settings,
        learnt: &learnt,
        rounded: batch.rounded.as_ref(),
        zone: &zone,
        now: Moment::from_milliseconds(FRIDAY_EVENING).unwrap(),
        bench: None,
    };
    let run = input.run();
    let results = day::of_run(&input, run.clone()).unwrap();
    let heat = HeatResults::of(&HeatInput {
        formula: &batch.formula,
        settings: &sheet.heat,
        kitchen: &kitchen,
        picked: None,
        run: &run,
    });
    let passes = run.coolings.iter().all(|one| one.passes);
    let verdict = match (run.coolings.is_empty(), passes) {
        (true, _) => "no paste",
        (false, true) => "pass",
        (false, false) => "fail",
    };
    vec![
        sheet.name.clone(),
        temperature(room),
        temperature(run.dough),
        pastes(&run, &batch.formula),
        minutes(run.rises.bulk.as_ref().unwrap().due),
        minutes(run.rises.proof.as_ref().unwrap().due),
        minutes(results.bake),
        minutes(heat.baking.unwrap().cooling.unwrap().likely),
        ready(&results),
        verdict.to_owned(),
    ]
}

/// The table in `DEVELOPERS.md` is what the run says today.
#[test]
fn the_table_of_runs_is_up_to_date() {
    let examples = examples();
    let in_kitchens = |(_, sheet)| [17.0, 21.0, 28.0].map(|room| row(sheet, room));
    let rows: Vec<_> = examples
        .iter()
        .map(|(id, sheet)| (id, sheet))
        .flat_map(in_kitchens)
        .collect();
    let columns = [
        Column::text("formula"),
        Column::number("room"),
        Column::number("dough temperature"),
        Column::text("paste at 5 °C after"),
        Column::number("bulk rise"),
        Column::number("proof"),
        Column::number("bake"),
        Column::number("cooling"),
        Column::text("ready after"),
        Column::text("strictest rules"),
    ];
    check("run", &columns, &rows);
}
