//! A run in its plan: what each stage hands on is what the next takes in, in temperature and in
//! time, however long the plan has a paste or preferment in the fridge.

use proptest::prelude::*;
use softcrumb::engine::formula::{Formula, PartKind};
use softcrumb::engine::heat::Probe;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{Edit, StepAt, StepKind};
use softcrumb::engine::quantity::{Instant, Minutes, Temperature};
use softcrumb::results::day::{self, DayInput, DayResults, preferment_course};
use softcrumb::results::heat::{CoolingPlan, LoadSource};
use softcrumb::results::run::{Stage, StageKind, strands};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{DaySettings, Target};
use softcrumb::sheet::{Kitchen, Moment, Sheet, examples};

use crate::dough::{cases, likely};
use crate::heat_cases::{celsius, minutes};

/// Friday, 27 March 2026, 18:00.
const NOW: i64 = 1_774_634_400;

fn at(seconds: i64) -> Moment {
    Moment::from_instant(Instant::from_seconds(seconds).unwrap())
}

struct Kept {
    sheet: Sheet,
    kitchen: Kitchen,
    settings: DaySettings,
}

impl Kept {
    fn of(formula: &Formula, kitchen: Kitchen, ahead: i64) -> Self {
        let (_, mut sheet) = examples().remove(0);
        sheet.formula = formula.clone();
        let target = Target::Table(at(NOW + ahead * 3600));
        Self {
            sheet,
            kitchen,
            settings: DaySettings {
                target,
                sleep: None,
                ..DaySettings::default()
            },
        }
    }

    fn plan(&self) -> DayResults {
        day::of(&DayInput {
            sheet: &self.sheet,
            kitchen: &self.kitchen,
            settings: &self.settings,
            learnt: &Learnt::default(),
            rounded: None,
            zone: &Zone::default(),
            now: at(NOW),
            bench: None,
        })
        .unwrap()
    }
}

/// The times of two successive steps are exact; the plan's clock has whole seconds.
const SECOND: f64 = 1.01 / 60.0;

fn step(results: &DayResults, work: StepKind, of: u16) -> Option<(Instant, Minutes)> {
    let (_, timed) = results.find(StepAt { work, of })?;
    Some((timed.begins, timed.lasts))
}

/// The mean temperature of a part after so long on the bench and in the fridge, by a simulation of
/// its own.
fn followed(
    results: &DayResults,
    kitchen: &Kitchen,
    part: usize,
    times: [Minutes; 2],
) -> [Temperature; 2] {
    let run = &results.run;
    let [bench, fridge] = times;
    let both = minutes(bench.minutes() + fridge.minutes());
    let curve = if run.formula.parts[part].kind == PartKind::Paste {
        let plan = &run.cooling(part).unwrap().plan;
        let ice = plan.way.ice.minutes().min(bench.minutes());
        let mut way = plan.way;
        way.bench = minutes(bench.minutes() - ice);
        way.ice = minutes(ice);
        CoolingPlan { way, ..*plan }.likely().unwrap().curve
    } else {
        let stays = [(bench, kitchen.room), (fridge, kitchen.fridge)];
        preferment_course(&run.formula, part, kitchen, &stays).unwrap()
    };
    [bench, both].map(|time| curve.at(time, Probe::Mean).unwrap())
}

/// Whether what a strand does is as long, begins and ends as the steps of the plan.
fn agrees_with_its_plan(results: &DayResults, strand: &[Stage], kitchen: &Kitchen, own: &Formula) {
    let Some(part) = strand[0].part else { return };
    let of = u16::try_from(part).unwrap();
    let kinds = if own.parts[part].kind == PartKind::Paste {
        [StepKind::CoolPaste, StepKind::ChillPaste]
    } else {
        [StepKind::StandPreferment, StepKind::ChillPreferment]
    };
    let [stand, chill] = kinds.map(|kind| step(results, kind, of).unwrap());
    let of_kind = |kind| strand.iter().find(|stage| stage.kind == kind).unwrap();
    let (stood, chilled) = (of_kind(StageKind::Stand), of_kind(StageKind::Chill));
    assert_eq!(stood.lasts, [stand.1; 3]);
    assert_eq!(chilled.lasts, [chill.1; 3]);
    let gap = |from: (Instant, Minutes), to: Instant| {
        if to >= from.0 {
            to.since(from.0).minutes() - from.1.minutes()
        } else {
            -from.0.since(to).minutes() - from.1.minutes()
        }
    };
    assert!(gap(stand, chill.0).abs() <= SECOND, "{stand:?} {chill:?}");
    // From the fridge it goes into the room, and from there into the mixer.
    let next = step(results, StepKind::WarmUp, 0)
        .or(step(results, StepKind::Mix, 0))
        .unwrap();
    assert!(gap(chill, next.0) >= -SECOND, "{chill:?} {next:?}");
    // As warm as that long on the bench and in the fridge leaves it, however long was wished.
    let [warm, cold] = followed(results, kitchen, part, [stand.1, chill.1]);
    let off = |stage: &Stage, to: Temperature| (stage.ends - to).kelvin().abs();
    assert!(off(stood, warm) < 0.05, "{stood:?} {warm:?}");
    if own.parts[part].temperature.is_none() {
        assert!(off(chilled, cold) < 0.05, "{chilled:?} {cold:?}");
    }
    goes_into_the_mixer(results, strand, (part, chilled));
}

/// It goes into the mixer as it comes from the fridge, after as long in the room as the plan has it.
fn goes_into_the_mixer(results: &DayResults, strand: &[Stage], (part, chilled): (usize, &Stage)) {
    if let Some(out) = strand.iter().find(|stage| stage.kind == StageKind::WarmUp) {
        assert_eq!(out.starts, chilled.ends);
        let load = &results.run.mixing.as_ref().unwrap().load;
        assert_eq!(load.starts_at(LoadSource::Part(part)), Some(chilled.ends));
        assert_eq!(
            load.item(LoadSource::Part(part))
                .unwrap()
                .component
                .temperature,
            out.ends
        );
        let standing = step(results, StepKind::WarmUp, 0).map_or(Minutes::ZERO, |(_, lasts)| lasts);
        assert_eq!(out.lasts, [standing; 3]);
    }
}

/// The dough's own stages last as the plan's steps, one after the other.
fn dough_agrees(results: &DayResults) {
    let lasts = |kind: StageKind| {
        let mut own = results
            .run
            .stages
            .iter()
            .filter(|stage| stage.part.is_none());
        own.find(|stage| stage.kind == kind)
            .map(|stage| stage.lasts[1].minutes())
    };
    for (kind, work) in [
        (StageKind::Bulk, StepKind::Bulk),
        (StageKind::Proof, StepKind::Proof),
    ] {
        let planned = step(results, work, 0).unwrap().1.minutes();
        let own = lasts(kind).unwrap();
        assert!((own - planned).abs() < SECOND, "{kind:?} {own} {planned}");
    }
    let bakes = results
        .steps()
        .filter(|(step, _)| step.at.work == StepKind::Bake);
    let baked: f64 = bakes.map(|(_, timed)| timed.lasts.minutes()).sum();
    assert!((lasts(StageKind::Bake).unwrap() - baked).abs() < SECOND);
    // The oven is hot when the bake begins.
    let (heats, bake) = (StepKind::Preheat, StepKind::Bake);
    let (begins, heated) = step(results, heats, 0).unwrap();
    assert_eq!(begins.later(heated), step(results, bake, 0).unwrap().0);
    assert!((20.0..=45.0).contains(&heated.minutes()));
    for (step, timed) in results.steps() {
        let ends = timed.begins.later(timed.lasts);
        assert!(
            (timed.ends.seconds() - ends.seconds()).abs() <= 1,
            "{step:?}"
        );
    }
}

proptest! {
    #![proptest_config(cases(10_000))]

    /// With any time in the fridge, from an hour to a day, wished or made by the plan.
    #[test]
    fn each_stage_begins_as_and_when_the_one_before_it_ends(
        formula in likely(), room in 14.0..32.0f64, fridge in 1.0..8.0f64,
        least in 1.0..8.0f64, more in 0.0..16.0f64, wished in 20.0..1000.0f64,
        standing in prop_oneof![Just(0.0), 5.0..60.0f64], ahead in 8..40i64,
        stood in prop::option::of(5.0..180.0f64),
    ) {
        let kitchen = Kitchen {
            room: celsius(room), flour: Some(celsius(room)), fridge: celsius(fridge),
            ..Kitchen::default()
        };
        let mut kept = Kept::of(&formula, kitchen, ahead);
        kept.sheet.heat.standing = minutes(standing);
        kept.settings.fridge.least = minutes(least * 60.0);
        kept.settings.fridge.most = minutes((least + more) * 60.0);
        kept.settings.rises.fridge = minutes(wished);
        if let Some(stood) = stood {
            let made_ahead = [(PartKind::Paste, StepKind::CoolPaste), (PartKind::Preferment, StepKind::StandPreferment)];
            for (part, own) in formula.parts.iter().enumerate() {
                let of = u16::try_from(part).unwrap();
                if let Some((_, work)) = made_ahead.iter().find(|(kind, _)| *kind == own.kind) {
                    let step = StepAt { work: *work, of };
                    kept.settings.add(Edit::Duration { step, minutes: minutes(stood.round()) });
                }
            }
        }
        let results = kept.plan();
        for strand in strands(&results.run.stages) {
            for pair in strand.windows(2) {
                prop_assert_eq!(pair[0].ends, pair[1].starts, "{:?}", pair);
            }
            agrees_with_its_plan(&results, &strand, &kept.kitchen, &formula);
        }
        dough_agrees(&results);
    }
}

/// Common practice: a preferment that has been in the fridge for an hour is not as cold as one that
/// has been there overnight, and the dough is the warmer for it.
#[test]
fn an_hour_in_the_fridge_leaves_a_preferment_warmer_than_a_night() {
    let formula = examples()
        .into_iter()
        .map(|(_, sheet)| sheet.formula)
        .find(|formula| formula.first_part(PartKind::Preferment).is_some())
        .unwrap();
    let after = |hours: f64| {
        let mut kept = Kept::of(&formula, Kitchen::default(), 40);
        kept.settings.fridge.least = minutes(hours * 60.0);
        kept.settings.fridge.most = minutes(hours * 60.0);
        // The wish is a night in both; what the plan makes of it counts.
        let results = kept.plan();
        let part = formula.first_part(PartKind::Preferment);
        let mut stages = results.run.stages.iter();
        let chilled = stages.find(|stage| stage.part == part && stage.kind == StageKind::Chill);
        (chilled.unwrap().ends.celsius(), results.run.dough.celsius())
    };
    let (hour, night) = (after(1.0), after(12.0));
    assert!(
        hour.0 > night.0 + 3.0 && hour.1 > night.1 + 0.2,
        "{hour:?} {night:?}"
    );
    assert!(
        (night.0 - Kitchen::default().fridge.celsius()).abs() < 0.3,
        "{night:?}"
    );
}
