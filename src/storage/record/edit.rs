//! Steps in a record, each by its work and which of several alike, and how a plan changes them.

use serde::{Deserialize, Serialize};

use crate::engine::plan::{Edit, Step, StepAt, StepKind};
use crate::engine::quantity::Minutes;
use crate::storage::enum_names::WORKS;

use super::batch::needed;
use super::error::RecordError;
use super::formula::Number;
use super::number::Small;
use super::read::{converted, described};
use super::text::{Name, words};

words! { StepKind: WORKS; }

described! { StepAt: StepRecord; }

converted! { Edit: EditRecord; }

#[derive(Deserialize, Serialize)]
#[serde(remote = "StepAt", deny_unknown_fields)]
struct StepRecord {
    work: StepKind,
    #[serde(with = "Small")]
    of: u16,
}

/// The changes of a step, by their words in the record.
#[derive(Clone, Copy, PartialEq)]
enum Change {
    Lasts,
    LeftOut,
    Sooner,
    Added,
}

words! {
    Change: &[
        (Change::Lasts, "lasts"),
        (Change::LeftOut, "left_out"),
        (Change::Sooner, "sooner"),
        (Change::Added, "added"),
    ];
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct EditRecord {
    change: Change,
    work: StepKind,
    #[serde(with = "Small")]
    of: u16,
    #[serde(skip_serializing_if = "Option::is_none")]
    number: Option<Number>,
    #[serde(skip_serializing_if = "Option::is_none")]
    name: Option<Called>,
    #[serde(skip_serializing_if = "Option::is_none")]
    minutes: Option<Minutes>,
    #[serde(skip_serializing_if = "Option::is_none")]
    hands_min: Option<Minutes>,
}

#[derive(Deserialize, Serialize)]
#[serde(transparent)]
struct Called(#[serde(with = "Name::<{ Step::NAME_LENGTH }>")] String);

impl From<&Edit> for EditRecord {
    fn from(edit: &Edit) -> Self {
        let of = |change, step: StepAt| Self {
            change,
            work: step.work,
            of: step.of,
            number: None,
            name: None,
            minutes: None,
            hands_min: None,
        };
        match edit {
            Edit::Duration { step, minutes } => Self {
                minutes: Some(*minutes),
                ..of(Change::Lasts, *step)
            },
            Edit::LeftOut { step } => of(Change::LeftOut, *step),
            Edit::Sooner { step } => of(Change::Sooner, *step),
            Edit::Added {
                after,
                number,
                name,
                minutes,
                hands,
            } => Self {
                number: Some(Number(*number)),
                name: Some(Called(name.clone())),
                minutes: Some(*minutes),
                hands_min: Some(*hands),
                ..of(Change::Added, *after)
            },
        }
    }
}

impl TryFrom<EditRecord> for Edit {
    type Error = RecordError;

    fn try_from(record: EditRecord) -> Result<Self, RecordError> {
        let EditRecord { work, of, .. } = record;
        let step = StepAt { work, of };
        let minutes = || needed("minutes", record.minutes);
        Ok(match record.change {
            Change::Lasts => Self::Duration {
                step,
                minutes: minutes()?,
            },
            Change::LeftOut => Self::LeftOut { step },
            Change::Sooner => Self::Sooner { step },
            Change::Added => Self::Added {
                after: step,
                number: needed("number", record.number)?.0,
                minutes: minutes()?,
                hands: needed("hands_min", record.hands_min)?,
                name: needed("name", record.name)?.0,
            },
        })
    }
}
