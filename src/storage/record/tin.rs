//! Tins in records: by themselves with their names, and in a batch.

use serde::{Deserialize, Serialize};

use crate::engine::quantity::{Factor, Length, SpecificVolume};
use crate::engine::tin::{Across, Tin, TinRise, TinShape, Tins};
use crate::sheet::{SavedTin, TinUse};

use super::Record;
use super::batch::{Counted, needed};
use super::error::{RecordError, RecordFault};
use super::read::{converted, described};
use super::text::{List, Name, words};

converted! {
    Tin: TinRecord;
    SavedTin: TinRecord;
    TinUse: TinUseRecord;
}

#[derive(Clone, Copy, Default, PartialEq)]
enum Form {
    #[default]
    Rectangle,
    Round,
    Ring,
    Muffin,
    Tray,
}

words! {
    Form: &[
        (Form::Rectangle, "rectangle"),
        (Form::Round, "round"),
        (Form::Ring, "ring"),
        (Form::Muffin, "muffin"),
        (Form::Tray, "tray"),
    ];
}

#[derive(Default, Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct TinRecord {
    #[serde(skip_serializing_if = "Option::is_none")]
    name: Option<Called>,
    shape: Form,
    #[serde(default)]
    lidded: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    top_long_m: Option<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    top_wide_m: Option<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    bottom_long_m: Option<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    bottom_wide_m: Option<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    top_m: Option<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    bottom_m: Option<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    deep_m: Option<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    tube_m: Option<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    cups: Option<Counted>,
}

#[derive(Deserialize, Serialize)]
#[serde(transparent)]
struct Called(#[serde(with = "Name::<{ SavedTin::NAME_LENGTH }>")] String);

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct TinUseRecord {
    tin: Tin,
    #[serde(skip_serializing_if = "Option::is_none")]
    count: Option<Counted>,
    #[serde(skip_serializing_if = "Option::is_none")]
    rows: Option<Counted>,
    #[serde(skip_serializing_if = "Option::is_none")]
    room_cm3_per_g: Option<SpecificVolume>,
    #[serde(skip_serializing_if = "Option::is_none")]
    rise: Option<Factor>,
}

impl From<&Tin> for TinRecord {
    fn from(tin: &Tin) -> Self {
        let bare = Self {
            lidded: tin.lidded,
            ..Self::default()
        };
        match tin.shape {
            TinShape::Rectangle { top, bottom, deep } => Self {
                top_long_m: Some(top.long),
                top_wide_m: Some(top.wide),
                bottom_long_m: Some(bottom.long),
                bottom_wide_m: Some(bottom.wide),
                deep_m: Some(deep),
                ..bare
            },
            TinShape::Round { top, bottom, deep } => bare.round(Form::Round, top, bottom, deep),
            TinShape::Ring {
                top,
                bottom,
                tube,
                deep,
            } => Self {
                tube_m: Some(tube),
                ..bare.round(Form::Ring, top, bottom, deep)
            },
            TinShape::Muffin {
                top,
                bottom,
                deep,
                cups,
            } => Self {
                cups: Some(Counted(cups)),
                ..bare.round(Form::Muffin, top, bottom, deep)
            },
            TinShape::Tray { across } => Self {
                shape: Form::Tray,
                bottom_long_m: Some(across.long),
                bottom_wide_m: Some(across.wide),
                ..bare
            },
        }
    }
}

impl TinRecord {
    fn round(self, shape: Form, top: Length, bottom: Length, deep: Length) -> Self {
        Self {
            shape,
            top_m: Some(top),
            bottom_m: Some(bottom),
            deep_m: Some(deep),
            ..self
        }
    }
}

impl TinRecord {
    fn top_across(&self) -> Result<Across, RecordError> {
        Ok(Across {
            long: needed("top_long_m", self.top_long_m)?,
            wide: needed("top_wide_m", self.top_wide_m)?,
        })
    }

    fn bottom_across(&self) -> Result<Across, RecordError> {
        Ok(Across {
            long: needed("bottom_long_m", self.bottom_long_m)?,
            wide: needed("bottom_wide_m", self.bottom_wide_m)?,
        })
    }
}

impl TryFrom<TinRecord> for Tin {
    type Error = RecordError;

    fn try_from(record: TinRecord) -> Result<Self, RecordError> {
        let deep = || needed("deep_m", record.deep_m);
        let top = || needed("top_m", record.top_m);
        let bottom = || needed("bottom_m", record.bottom_m);
        let shape = match record.shape {
            Form::Rectangle => TinShape::Rectangle {
                top: record.top_across()?,
                bottom: record.bottom_across()?,
                deep: deep()?,
            },
            Form::Round => TinShape::Round {
                top: top()?,
                bottom: bottom()?,
                deep: deep()?,
            },
            Form::Ring => TinShape::Ring {
                top: top()?,
                bottom: bottom()?,
                tube: needed("tube_m", record.tube_m)?,
                deep: deep()?,
            },
            Form::Muffin => TinShape::Muffin {
                top: top()?,
                bottom: bottom()?,
                deep: deep()?,
                cups: needed("cups", record.cups)?.0,
            },
            Form::Tray => TinShape::Tray {
                across: record.bottom_across()?,
            },
        };
        let tin = Self::open(shape).map_err(|_| RecordFault::NoRoom)?;
        Ok(tin.with_lid(record.lidded))
    }
}

impl From<&SavedTin> for TinRecord {
    fn from(saved: &SavedTin) -> Self {
        Self {
            name: Some(Called(saved.name.clone())),
            ..Self::from(&saved.tin)
        }
    }
}

impl TryFrom<TinRecord> for SavedTin {
    type Error = RecordError;

    fn try_from(mut record: TinRecord) -> Result<Self, RecordError> {
        let name = record.name.take().map(|called| called.0);
        Ok(Self {
            name: name.unwrap_or_default(),
            tin: record.try_into()?,
        })
    }
}

impl From<&TinUse> for TinUseRecord {
    fn from(used: &TinUse) -> Self {
        Self {
            tin: used.tins.tin,
            count: Some(Counted(used.tins.count)),
            rows: used.rows.map(Counted),
            room_cm3_per_g: used.room,
            rise: Some(used.rise.as_factor()),
        }
    }
}

impl From<TinUseRecord> for TinUse {
    fn from(record: TinUseRecord) -> Self {
        let usual = Self::of(record.tin);
        Self {
            tins: Tins {
                tin: record.tin,
                count: record.count.map_or(usual.tins.count, |count| count.0),
            },
            rows: record.rows.map(|rows| rows.0),
            room: record.room_cm3_per_g,
            rise: record.rise.map_or(usual.rise, TinRise::of_factor),
        }
    }
}

/// The user's tins.
#[derive(Clone, Debug, Default, Deserialize, PartialEq, Serialize)]
#[serde(remote = "Self", deny_unknown_fields)]
pub struct SavedTins {
    /// One by one, as the user added them; at most [`SavedTin::MOST`].
    #[serde(with = "List::<{ SavedTin::MOST }>")]
    pub tins: Vec<SavedTin>,
}

described! { SavedTins: SavedTins; }

impl Record for SavedTins {
    const KIND: &'static str = "tins";
}
