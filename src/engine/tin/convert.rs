//! Converting a dough from one set of tins to another.

use super::capacity::{Capacity, cm};
use super::error::TinError;
use super::shape::{Tin, TinShape, Tins};
use crate::engine::quantity::{Factor, Mass};

/// A dough carried from one set of tins to another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Converted {
    /// From these.
    pub from: Tins,
    /// To these.
    pub to: Tins,
    /// What is compared for one tin: cm³, or cm² of tray when both are trays.
    pub(super) sizes: (f64, f64),
    /// Whether trays are compared, by their area.
    pub by_area: bool,
    /// How many times the dough.
    pub factor: Factor,
    /// Dough before.
    pub before: Mass,
    /// Dough now.
    pub now: Mass,
}

/// Carries a dough that suits `from` to `to`, filled just as full.
///
/// The dough grows with the volume: factor = volume after × tins / (volume before × tins); between
/// two trays with the area.
///
/// Source: geometry.
///
/// # Errors
/// [`TinError::NoSides`] between a tray and a tin; [`TinError`] when a ring has no room or the
/// dough leaves its range.
pub fn convert(from: Tins, to: Tins, before: Mass) -> Result<Converted, TinError> {
    let (sizes, by_area) = match (tray(&from.tin), tray(&to.tin)) {
        (Some(one), Some(other)) => ((one, other), true),
        _ => ((volume(&from.tin)?, volume(&to.tin)?), false),
    };
    let (one, other) = sizes;
    let all = |size: f64, tins: Tins| size * f64::from(tins.count.get());
    let factor = Factor::from_number(all(other, to) / all(one, from))?;
    let now = Mass::from_grams(before.grams() * factor.number())?;
    Ok(Converted {
        from,
        to,
        sizes,
        by_area,
        factor,
        before,
        now,
    })
}

fn volume(tin: &Tin) -> Result<f64, TinError> {
    Ok(Capacity::of(tin)?.volume()?.cubic_centimetres())
}

/// The area of a tray, cm².
fn tray(tin: &Tin) -> Option<f64> {
    if let TinShape::Tray { across } = tin.shape {
        Some(cm(across.long) * cm(across.wide))
    } else {
        None
    }
}
