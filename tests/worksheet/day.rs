//! The day of one document: what is asked of rises and plan, and what comes of it.

use std::borrow::Cow;

use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::PlanError;
use softcrumb::engine::quantity::{Instant, Minutes};
use softcrumb::results::day::{self, DayInput, DayResults};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Kitchen, Moment, Sheet};
use softcrumb::storage::{Json, Record};

use crate::asked::{get, known, number, record};
use crate::error::ErrorText;

/// What is asked of a day.
pub(crate) struct AskedDay {
    pub(crate) settings: DaySettings,
    pub(crate) now: Moment,
    pub(crate) zone: Zone,
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
        }
    }
}

/// Keys that are not those of a record of a day.
const OWN: [&str; 2] = ["now_s", "offsets"];

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
    }))
}

/// How far around now the zone is asked, h.
const AROUND: f64 = 24.0 * 40.0;

/// The zone of a list of `{"from_s", "ahead_min"}`, in rising order; UTC before and without it.
fn zone(day: &Json, now: Instant) -> Result<Zone, ErrorText> {
    let mut table: Vec<(f64, f64)> = Vec::new();
    if let Some(offsets) = get(day, "offsets") {
        let Json::List(items) = offsets else {
            return Err(ErrorText::new("offsets", "WrongType", "expected a list"));
        };
        for (at, item) in items.iter().enumerate() {
            let read = || {
                known(item, &["from_s", "ahead_min"])?;
                Ok((number(item, "from_s")?, number(item, "ahead_min")?))
            };
            table.push(read().map_err(|error: ErrorText| error.inside("offsets", at))?);
        }
    }
    let around = Minutes::from_hours(AROUND).unwrap_or(Minutes::ZERO);
    let offset = |at: Instant| {
        let seconds = Moment::from_instant(at).milliseconds() / 1000.0;
        let past = table.iter().rev().find(|(from, _)| *from <= seconds);
        let ahead = past.map_or(0.0, |(_, ahead)| *ahead);
        (-1080..=1080_i32)
            .find(|minutes| f64::from(*minutes).total_cmp(&ahead).is_eq())
            .map_or(0, i64::from)
    };
    Ok(Zone::asked(now.earlier(around), now.later(around), offset))
}

/// Works out a day.
pub(crate) fn work_out(
    asked: &AskedDay,
    sheet: &Sheet,
    kitchen: &Kitchen,
) -> Result<DayResults, PlanError> {
    day::of(&DayInput {
        sheet,
        kitchen,
        settings: &asked.settings,
        learnt: &Learnt::default(),

        zone: &asked.zone,
        now: asked.now,
        rounded: None,
        bench: None,
    })
}
