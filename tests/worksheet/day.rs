//! The day of one document: what is asked of rises and plan, and what comes of it.

use std::borrow::Cow;

use softcrumb::engine::plan::PlanError;
use softcrumb::engine::quantity::{Instant, Minutes};
use softcrumb::results::day::{self, DayInput, DayResults, learnt};
use softcrumb::results::run::Run;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::{DaySettings, Log};
use softcrumb::sheet::{Kitchen, Moment, Sheet};
use softcrumb::storage::{Json, Record};

use crate::asked::{each, get, in_range, known, number, record};
use crate::error::ErrorText;

/// What is asked of a day.
pub(crate) struct AskedDay {
    pub(crate) settings: DaySettings,
    pub(crate) now: Moment,
    pub(crate) zone: Zone,
    /// The bakes that were noted, all of which teach.
    pub(crate) log: Log,
}

impl AskedDay {
    /// A usual day that begins on an evening in spring, by a clock that changes that night.
    pub(crate) fn usual() -> Self {
        const CHANGE: i64 = 1_774_746_000;
        let now = Instant::from_seconds(CHANGE - 6 * 3600).unwrap_or_default();
        let around = Minutes::from_hours(AROUND).unwrap_or(Minutes::ZERO);
        let summer = |at: Instant| if at.seconds() >= CHANGE { 60 } else { 0 };
        Self {
            settings: DaySettings::default(),
            now: Moment::from_instant(now),
            zone: Zone::asked(now.earlier(around), now.later(around), summer),
            log: Log::default(),
        }
    }
}

/// Keys that are not those of a record of a day.
const OWN: [&str; 3] = ["now_s", "offsets", "log"];

/// Reads `day`; nothing where it is left out.
pub(crate) fn read(tree: &Json) -> Result<Option<AskedDay>, ErrorText> {
    let Some(day) = get(tree, "day") else {
        return Ok(None);
    };
    let Json::Fields(fields) = day else {
        return Err(ErrorText::new("day", "WrongType", "expected fields"));
    };
    let inside = |error: ErrorText| error.below("day");
    let settings: Vec<(Cow<str>, Json)> = fields
        .iter()
        .filter(|(key, _)| !OWN.contains(&key.as_ref()))
        .cloned()
        .collect();
    let settings = DaySettings::read(&record("day", settings))
        .map_err(|error| ErrorText::of_record(&error, "day"))?;
    let now = number(day, "now_s").map_err(inside)?;
    let now = Moment::from_milliseconds(now * 1000.0)
        .map_err(|error| ErrorText::new("day.now_s", "OutOfRange", &error.to_string()))?;
    let zone = zone(day, now.instant()).map_err(inside)?;
    Ok(Some(AskedDay {
        settings,
        now,
        zone,
        log: log(day)?,
    }))
}

/// The log of a day, as its record has it; an empty one where it is left out.
fn log(day: &Json) -> Result<Log, ErrorText> {
    match get(day, "log") {
        None => Ok(Log::default()),
        Some(Json::Fields(fields)) => Log::read(&record("log", fields.clone()))
            .map_err(|error| ErrorText::of_record(&error, "day.log")),
        Some(_) => Err(ErrorText::new("day.log", "WrongType", "expected fields")),
    }
}

/// How far around now the zone is asked, h.
const AROUND: f64 = 24.0 * 40.0;

/// The zone of a list of `{"from_s", "ahead_min"}`, in rising order; UTC before and without it.
fn zone(day: &Json, now: Instant) -> Result<Zone, ErrorText> {
    let table = each(day, "offsets", offset)?;
    let falls = table.windows(2).position(|pair| match pair {
        [one, next] => one.0 >= next.0,
        _ => false,
    });
    if let Some(at) = falls {
        let error = ErrorText::new("from_s", "OutOfOrder", "not later than the one before");
        return Err(error.inside("offsets", at.saturating_add(1)));
    }
    let around = Minutes::from_hours(AROUND).unwrap_or(Minutes::ZERO);
    let offset = |at: Instant| {
        let now = Moment::from_instant(at);
        let past = table.iter().rev().find(|(from, _)| *from <= now);
        past.map_or(0, |(_, ahead)| *ahead)
    };
    Ok(Zone::asked(now.earlier(around), now.later(around), offset))
}

/// The most minutes that a clock may differ from UTC: 18 hours.
const MOST_AHEAD: i32 = 18 * 60;

/// When an offset begins, and its whole minutes.
fn offset(item: &Json) -> Result<(Moment, i64), ErrorText> {
    known(item, &["from_s", "ahead_min"])?;
    let from = Moment::from_milliseconds(number(item, "from_s")? * 1000.0);
    let from = in_range("from_s", from)?;
    let ahead = number(item, "ahead_min")?;
    let minutes = (-MOST_AHEAD..=MOST_AHEAD)
        .find(|minutes| f64::from(*minutes).total_cmp(&(ahead + 0.0)).is_eq())
        .ok_or_else(|| {
            let message = format!("-{MOST_AHEAD} to {MOST_AHEAD}, whole");
            ErrorText::new("ahead_min", "OutOfRange", &message)
        })?;
    Ok((from, i64::from(minutes)))
}

/// Works out a day, from the run of the same dough where that is known.
pub(crate) fn work_out(
    asked: &AskedDay,
    sheet: &Sheet,
    kitchen: &Kitchen,
    run: Option<&Run>,
) -> Result<DayResults, PlanError> {
    let input = DayInput {
        sheet,
        kitchen,
        settings: &asked.settings,
        learnt: &learnt(&asked.log, kitchen, None),
        zone: &asked.zone,
        now: asked.now,
        rounded: None,
        bench: None,
    };
    let run = run.cloned().unwrap_or_else(|| input.run());
    day::of_run(&input, run)
}
