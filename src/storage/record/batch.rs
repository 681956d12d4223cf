//! The batch in a record: what is wanted, what is lost.

use std::num::NonZeroU16;

use serde::{Deserialize, Serialize};

use crate::engine::batch::{BatchTarget, Losses};
use crate::engine::formula::{Formula, LineAt};
use crate::engine::quantity::{Factor, Mass, Share, Temperature};
use crate::sheet::{Batch, TinUse};

use super::error::{RecordError, RecordFault};
use super::number::{Count, Place};
use super::read::{converted, described};
use super::text::words;

described! {
    Batch: BatchRecord;
    Losses: LossesRecord;
}

converted! { BatchTarget: WantedRecord; }

#[derive(Deserialize, Serialize)]
#[serde(remote = "Batch", deny_unknown_fields)]
struct BatchRecord {
    wanted: BatchTarget,
    losses: Losses,
    #[serde(with = "Count::<{ u16::MAX }>")]
    pieces: NonZeroU16,
    #[serde(rename = "syrup_at_c")]
    syrup_at: Temperature,
    #[serde(skip_serializing_if = "Option::is_none")]
    tin: Option<TinUse>,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Losses", default = "Losses::default", deny_unknown_fields)]
struct LossesRecord {
    #[serde(rename = "residue_g")]
    residue: Mass,
    residue_share: Share,
    #[serde(rename = "dividing_share")]
    dividing: Share,
    #[serde(rename = "bake_share")]
    bake: Share,
    #[serde(rename = "topping_share")]
    topping: Share,
}

/// The kinds of target, by their words in the record.
#[derive(Clone, Copy, Default, PartialEq)]
enum By {
    #[default]
    Times,
    Dough,
    Pieces,
    Flour,
    OnHand,
    Class,
}

words! {
    By: &[
        (By::Times, "times"),
        (By::Dough, "dough"),
        (By::Pieces, "pieces"),
        (By::Flour, "flour_on_hand"),
        (By::OnHand, "on_hand"),
        (By::Class, "class"),
    ];
}

#[derive(Default, Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct WantedRecord {
    by: By,
    #[serde(skip_serializing_if = "Option::is_none")]
    times: Option<Factor>,
    #[serde(skip_serializing_if = "Option::is_none")]
    dough_g: Option<Mass>,
    #[serde(skip_serializing_if = "Option::is_none")]
    count: Option<Counted>,
    #[serde(skip_serializing_if = "Option::is_none")]
    each_g: Option<Mass>,
    #[serde(skip_serializing_if = "Option::is_none")]
    flour_g: Option<Mass>,
    #[serde(rename = "stream", skip_serializing_if = "Option::is_none")]
    part: Option<PartPlace>,
    #[serde(skip_serializing_if = "Option::is_none")]
    line: Option<LinePlace>,
    #[serde(skip_serializing_if = "Option::is_none")]
    mass_g: Option<Mass>,
    #[serde(skip_serializing_if = "Option::is_none")]
    students: Option<Counted>,
    #[serde(skip_serializing_if = "Option::is_none")]
    loaves: Option<Counted>,
    #[serde(skip_serializing_if = "Option::is_none")]
    loaf_g: Option<Mass>,
}

/// One or more.
#[derive(Clone, Copy, Deserialize, Serialize)]
#[serde(transparent)]
pub(super) struct Counted(#[serde(with = "Count::<{ u16::MAX }>")] pub(super) NonZeroU16);

#[derive(Clone, Copy, Deserialize, Serialize)]
#[serde(transparent)]
struct PartPlace(#[serde(with = "Place::<{ Formula::MOST_PARTS }>")] usize);

#[derive(Clone, Copy, Deserialize, Serialize)]
#[serde(transparent)]
struct LinePlace(#[serde(with = "Place::<{ Formula::MOST_LINES }>")] usize);

/// A field that this choice needs.
pub(super) fn needed<T>(key: &str, field: Option<T>) -> Result<T, RecordError> {
    field.ok_or_else(|| RecordFault::Missing.at(key))
}

impl From<&BatchTarget> for WantedRecord {
    fn from(wanted: &BatchTarget) -> Self {
        let none = |by| Self {
            by,
            ..Self::default()
        };
        match *wanted {
            BatchTarget::Times(times) => Self {
                times: Some(times),
                ..none(By::Times)
            },
            BatchTarget::Dough(dough) => Self {
                dough_g: Some(dough),
                ..none(By::Dough)
            },
            BatchTarget::Pieces { count, each } => Self {
                count: Some(Counted(count)),
                each_g: Some(each),
                ..none(By::Pieces)
            },
            BatchTarget::FlourOnHand(flour) => Self {
                flour_g: Some(flour),
                ..none(By::Flour)
            },
            BatchTarget::OnHand { at, mass } => Self {
                part: Some(PartPlace(at.part)),
                line: Some(LinePlace(at.line)),
                mass_g: Some(mass),
                ..none(By::OnHand)
            },
            BatchTarget::Class {
                students,
                loaves,
                loaf,
            } => Self {
                students: Some(Counted(students)),
                loaves: Some(Counted(loaves)),
                loaf_g: Some(loaf),
                ..none(By::Class)
            },
        }
    }
}

impl TryFrom<WantedRecord> for BatchTarget {
    type Error = RecordError;

    fn try_from(record: WantedRecord) -> Result<Self, RecordError> {
        Ok(match record.by {
            By::Times => Self::Times(needed("times", record.times)?),
            By::Dough => Self::Dough(needed("dough_g", record.dough_g)?),
            By::Pieces => Self::Pieces {
                count: needed("count", record.count)?.0,
                each: needed("each_g", record.each_g)?,
            },
            By::Flour => Self::FlourOnHand(needed("flour_g", record.flour_g)?),
            By::OnHand => Self::OnHand {
                at: LineAt {
                    part: needed("stream", record.part)?.0,
                    line: needed("line", record.line)?.0,
                },
                mass: needed("mass_g", record.mass_g)?,
            },
            By::Class => Self::Class {
                students: needed("students", record.students)?.0,
                loaves: needed("loaves", record.loaves)?.0,
                loaf: needed("loaf_g", record.loaf_g)?,
            },
        })
    }
}
