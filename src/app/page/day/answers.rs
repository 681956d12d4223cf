//! Answers about the day: what its plan goes by, the plan itself, the log and what it teaches.

use leptos::prelude::*;

use super::benched;
use crate::app::browser::{clock, storage};
use crate::app::state::{Keeps, State, memo};
use crate::engine::learn::{Learnt, learn};
use crate::engine::plan::{Edit, PlanError};
use crate::engine::quantity::{Instant, Minutes};
use crate::sheet::civil::Zone;
use crate::sheet::day::{Bake, Bench, DayAsked, DayWishes, Log, Planned, planned};
use crate::sheet::record::{RecordError, read_day, read_log, write_day, write_log};
use crate::sheet::{Id, Moment, key};

/// How far around now the zone's clock is asked.
const AROUND: f64 = 24.0 * 60.0;

/// Answers about the day, and what they are found from.
#[derive(Clone, Copy)]
pub struct Day {
    /// The state of the page.
    pub state: State,
    /// The formula they are kept for; a visitor's copy keeps none.
    id: StoredValue<Option<Id>>,
    /// What the plan goes by.
    pub wishes: RwSignal<DayWishes>,
    /// The log.
    pub log: RwSignal<Log>,
    /// The bake that was taken out of the log last.
    pub taken: RwSignal<Option<Bake>>,
    /// The bake under way.
    pub bench: RwSignal<Option<Bench>>,
    /// Whether the bench is looked at, and not the plan.
    pub at_bench: RwSignal<bool>,
    /// This second.
    pub now: RwSignal<Moment>,
    /// This minute.
    pub minute: Memo<Instant>,
    /// The zone of the clock on the wall.
    pub zone: StoredValue<Zone>,
    /// What the bakes of this kitchen teach.
    pub learnt: Memo<Learnt>,
    /// The plan with its times.
    pub planned: Memo<Result<Planned, PlanError>>,
}

impl Day {
    /// The answers for the formula that is open.
    pub fn of(state: State, id: Option<Id>) -> Self {
        let wishes = id
            .as_ref()
            .and_then(|id| read(&key::of_day(id), read_day, state));
        let log = read(key::LOG, read_log, state);
        let bench = benched::bench();
        let now = RwSignal::new(clock_now());
        clock::every_second(move || now.set(clock_now()));
        let minute = memo(move || now.get().instant().minute());
        let zone = StoredValue::new(zone_here(now.get_untracked().instant()));
        let wishes = RwSignal::new(wishes.unwrap_or_default());
        let log = RwSignal::new(log.unwrap_or_default());
        let own = id.clone();
        let learnt = memo(move || {
            let kitchen = state.kitchen.get();
            let noted = log.with(|log| log.noted(&kitchen.name, own.as_ref()));
            learn(&noted, kitchen.mixer.friction)
        });
        let planned = memo(move || {
            let sheet = state.stands();
            planned(&DayAsked {
                sheet: &sheet,
                kitchen: &state.kitchen.get(),
                wishes: &wishes.get(),
                learnt: &learnt.get(),
                weighed: None,
                zone: &zone.get_value(),
                now: Moment::from_instant(minute.get()),
                bench: bench.get().as_ref(),
            })
        });
        Self {
            state,
            id: StoredValue::new(id),
            wishes,
            log,
            taken: RwSignal::new(None),
            bench,
            at_bench: RwSignal::new(bench.with_untracked(Option::is_some)),
            now,
            minute,
            zone,
            learnt,
            planned,
        }
    }

    /// The answers of this page.
    pub fn here() -> Self {
        expect_context::<Self>()
    }

    /// The formula they are kept for.
    pub fn formula_id(self) -> Option<Id> {
        self.id.get_value()
    }

    /// Changes what the plan goes by, and keeps it.
    pub fn wish(self, change: impl FnOnce(&mut DayWishes)) {
        self.wishes.update(change);
        if let Some(id) = self.id.get_value() {
            let text = self.wishes.with_untracked(write_day);
            keep(&key::of_day(&id), &text, self.state);
        }
    }

    /// Changes a step of the plan.
    pub fn edit(self, edit: Edit) {
        self.wish(|wishes| wishes.add(edit));
    }

    /// Changes the log, and keeps it.
    pub fn change_log(self, change: impl FnOnce(&mut Log)) {
        self.log.update(change);
        keep(key::LOG, &self.log.with_untracked(write_log), self.state);
    }

    /// Changes the bake under way, and keeps it.
    pub fn change_bench(self, change: impl FnOnce(&mut Bench)) {
        self.bench.update(|bench| {
            if let Some(bench) = bench {
                change(bench);
            }
        });
        if let Err(trouble) = benched::keep() {
            self.state.keeps.set(Some(Keeps::Storage(trouble)));
        }
    }

    /// A look at the plan, where there is one.
    pub fn read<T>(self, look: impl FnOnce(&Planned) -> T) -> Option<T> {
        self.planned.with(|planned| planned.as_ref().ok().map(look))
    }
}

/// Now.
pub fn clock_now() -> Moment {
    Moment::from_milliseconds(clock::milliseconds()).unwrap_or_default()
}

/// The zone of this device, for some weeks around now.
fn zone_here(now: Instant) -> Zone {
    let around = Minutes::from_hours(AROUND).unwrap_or(Minutes::ZERO);
    Zone::asked(now.earlier(around), now.later(around), |at| {
        clock::minutes_ahead(Moment::from_instant(at).milliseconds())
    })
}

/// Reads a record; says so where it cannot be opened.
fn read<T>(key: &str, read: fn(&str) -> Result<T, RecordError>, state: State) -> Option<T> {
    let text = storage::get(key).ok().flatten()?;
    match read(&text) {
        Ok(record) => Some(record),
        Err(error) => {
            state.keeps.set(Some(Keeps::Record(key.to_owned(), error)));
            None
        }
    }
}

fn keep(key: &str, text: &str, state: State) {
    if let Err(trouble) = storage::set(key, text) {
        state.keeps.set(Some(Keeps::Storage(trouble)));
    }
}
