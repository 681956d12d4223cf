//! What the second version of a link holds beyond the first: settings that came after it. New
//! fields are added at the end, each optional, in a version of their own.

use serde::{Deserialize, Serialize};

use super::LinkError;
use super::choice::Choice;
use super::packed::Packed;
use super::unpack;
use crate::engine::heat::BakedShape;
use crate::sheet::{BakeLength, Sheet};

/// The second version: the first, and after it what came later.
#[derive(Debug, Deserialize, PartialEq, Serialize)]
pub(super) struct Second {
    first: Packed,
    later: LaterSettings,
}

/// Settings that came after the first version; each left out where it is as usual.
#[derive(Debug, Default, Deserialize, PartialEq, Serialize)]
struct LaterSettings {
    /// How the known bake baked.
    known_shape: Option<u8>,
    /// How long the plan bakes.
    bake_length: Option<u8>,
}

impl Second {
    /// The second version of a sheet; `None` where the first holds all of it.
    pub(super) fn of(sheet: &Sheet) -> Option<Self> {
        let bake = &sheet.heat.bake;
        let later = LaterSettings {
            known_shape: bake.known.and_then(|known| known.shape.map(Choice::number)),
            bake_length: (bake.length != BakeLength::default()).then(|| bake.length.number()),
        };
        (later != LaterSettings::default()).then(|| Self {
            first: Packed::of(sheet),
            later,
        })
    }

    /// The sheet.
    pub(super) fn sheet(self) -> Result<Sheet, LinkError> {
        let known = self.first.heat.as_ref().map(|heat| heat.known_bake());
        let mut sheet = unpack::sheet(self.first)?;
        let bake = &mut sheet.heat.bake;
        if let Some(shape) = self.later.known_shape {
            let mut known = known.ok_or(LinkError::Damaged)??;
            known.shape = Some(BakedShape::numbered(shape)?);
            bake.known = Some(known);
        }
        if let Some(length) = self.later.bake_length {
            bake.length = BakeLength::numbered(length)?;
        }
        Ok(sheet)
    }
}
