//! Day settings: the plan settings of a formula.

use crate::engine::plan::{DurationRange, Edit, Loads, PlanError, Step, StepAt};
use crate::engine::quantity::Minutes;
use crate::engine::rise::RiseSettings;
use crate::sheet::civil::Clock;
use crate::sheet::{Moment, plain};

/// What times are found from.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum Target {
    /// Nothing chosen yet: tomorrow afternoon.
    #[default]
    Open,
    /// The bread is on the table then.
    Table(Moment),
    /// The work begins then.
    From(Moment),
}

/// When the baker sleeps, by the clock on the wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Sleep {
    /// Falls asleep.
    pub from: Clock,
    /// Wakes.
    pub until: Clock,
}

/// How long a preferment may be in the fridge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fridge {
    /// At least.
    pub least: Minutes,
    /// At most.
    pub most: Minutes,
}

/// The plan settings of a formula.
#[derive(Clone, Debug, PartialEq)]
pub struct DaySettings {
    /// What the formula says of its rises.
    pub rises: RiseSettings,
    /// What times are found from.
    pub target: Target,
    /// When the baker sleeps; `None` works through the night.
    pub sleep: Option<Sleep>,
    /// How long a preferment may be in the fridge.
    pub fridge: Fridge,
    /// Whether one baker does all the work.
    pub one_pair_of_hands: bool,
    /// How often the oven is filled.
    pub loads: Loads,
    /// What is changed in the usual steps; at most [`Edit::MOST`].
    pub edits: Vec<Edit>,
}

impl Default for DaySettings {
    /// Asleep from eleven to half past six, alone, one load; eight to eighteen hours of fridge.
    fn default() -> Self {
        Self {
            rises: RiseSettings::default(),
            target: Target::Open,
            sleep: Some(Sleep {
                from: Clock::known(23, 0),
                until: Clock::known(6, 30),
            }),
            fridge: Fridge {
                least: Minutes::from_hours(8.0).unwrap_or(Minutes::ZERO),
                most: Minutes::from_hours(18.0).unwrap_or(Minutes::ZERO),
            },
            one_pair_of_hands: true,
            loads: Loads::default(),
            edits: Vec::new(),
        }
    }
}

impl DaySettings {
    /// Adds a change of the steps, in place of an earlier length of the same step; nothing where
    /// there are as many as there may be.
    pub fn add(&mut self, edit: Edit) {
        if let Edit::Duration { step, .. } = &edit {
            let same =
                |other: &Edit| matches!(other, Edit::Duration { step: of, .. } if of == step);
            self.edits.retain(|other| !same(other));
        }
        if self.edits.len() < Edit::MOST {
            self.edits.push(edit);
        }
    }

    /// An own step of ten minutes after another step, with a new number.
    #[must_use]
    pub fn own_step(&self, after: StepAt, name: &str) -> Edit {
        let numbers = self.edits.iter().filter_map(|edit| match edit {
            Edit::Added { number, .. } => Some(*number),
            Edit::Duration { .. } | Edit::LeftOut { .. } | Edit::Sooner { .. } => None,
        });
        let ten = Minutes::from_minutes(10.0).unwrap_or(Minutes::ZERO);
        Edit::Added {
            after,
            number: numbers.max().map_or(1, |last| last.saturating_add(1)),
            name: plain::name(name, Step::NAME_LENGTH),
            minutes: ten,
            hands: ten,
        }
    }

    /// How long a preferment is in the fridge: the wished time, clamped to the limits.
    ///
    /// # Errors
    /// [`PlanError::NoSuchRange`] where the least is more than the most.
    pub fn in_fridge(&self) -> Result<DurationRange, PlanError> {
        let Fridge { least, most } = self.fridge;
        Ok(DurationRange::between(least, least, most)?.wishing(self.rises.fridge))
    }
}
