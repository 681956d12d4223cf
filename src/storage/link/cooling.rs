//! A cooling, packed for a link: in the places of the first releases' body, as more numbers of its
//! shape.

use super::LinkError;
use super::choice::Choice;
use super::number::Short;
use crate::engine::heat::{CoolingVessel, Shape};
use crate::engine::quantity::{Length, Minutes};
use crate::sheet::{CoolingChoice, CoolingSettings, FormerBody, FormerCooling};

/// The five places a cooling has in a link.
pub(super) struct PackedCooling {
    /// The thickness of a body of the first releases; else the width of the vessel, m, nought where
    /// it is left to the amount.
    pub(super) thick: Short,
    /// A shape of the first releases, a vessel with the user's own times, or a vessel with the
    /// quickest way.
    pub(super) shape: u8,
    pub(super) lid: bool,
    pub(super) bench: Short,
    pub(super) ice: Short,
}

/// The first number of a vessel with the user's own times. Numbers below are shapes.
const OWN: u8 = 16;
/// The first number of a vessel with the quickest way.
const QUICKEST: u8 = 32;

impl PackedCooling {
    pub(super) fn of(settings: &CoolingSettings) -> Self {
        let time = |minutes: Minutes| Short::of(minutes.minutes());
        if let Some(former) = settings.to_former() {
            return Self {
                thick: Short::of(former.body.thick.metres()),
                shape: former.body.shape.number(),
                lid: former.lid,
                bench: time(former.bench),
                ice: time(former.ice),
            };
        }
        let first = if settings.own_times().is_some() {
            OWN
        } else {
            QUICKEST
        };
        let (bench, ice) = settings
            .own_times()
            .unwrap_or((Minutes::ZERO, Minutes::ZERO));
        Self {
            thick: Short::of(settings.across.map_or(0.0, Length::metres)),
            shape: first + settings.vessel.number(),
            lid: settings.lid,
            bench: time(bench),
            ice: time(ice),
        }
    }

    pub(super) fn settings(self) -> Result<CoolingSettings, LinkError> {
        let minutes = |short: Short| Minutes::from_minutes(short.value());
        let (bench, ice) = (minutes(self.bench)?, minutes(self.ice)?);
        if self.shape < OWN {
            return Ok(CoolingSettings::from_former(FormerCooling {
                body: FormerBody {
                    thick: Length::from_metres(self.thick.value())?,
                    shape: Shape::numbered(self.shape)?,
                },
                lid: self.lid,
                bench,
                ice,
            }));
        }
        let width = self.thick.value();
        let (first, way) = if self.shape < QUICKEST {
            (OWN, CoolingChoice::Own { bench, ice })
        } else {
            (QUICKEST, CoolingChoice::Quickest)
        };
        Ok(CoolingSettings {
            vessel: CoolingVessel::numbered(self.shape - first)?,
            across: (width != 0.0)
                .then(|| Length::from_metres(width))
                .transpose()?,
            lid: self.lid,
            way,
            former: None,
        })
    }
}
