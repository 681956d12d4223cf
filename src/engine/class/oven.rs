//! Oven loads: which loaves go in together, and when each load's dough must be ready.

use crate::engine::numerics::{saturating_u16, whole};
use std::num::{NonZeroU16, NonZeroU32};

use super::error::ClassError;
use super::settings::OvenSettings;
use crate::engine::plan::Loads;
use crate::engine::quantity::Minutes;

/// The most loads that are planned.
const MOST_LOADS: u32 = 60;

/// One load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Load {
    /// The first loaf in it, counted from one.
    pub first: u32,
    /// How many loaves.
    pub loaves: u32,
    /// When it goes in, counted from the first load.
    pub goes_in: Minutes,
    /// When it comes out.
    pub comes_out: Minutes,
}

/// All loads of an oven.
#[derive(Clone, Debug, PartialEq)]
pub struct OvenPlan {
    /// What is true of the oven.
    pub oven: OvenSettings,
    /// All loaves.
    pub loaves: NonZeroU32,
    /// The loads, as even as they can be.
    pub loads: Vec<Load>,
    /// How much later each load goes in than the one before it: begin its dough that much later.
    pub stagger: Minutes,
    /// When the last one comes out, counted from when the first goes in.
    pub all_out: Minutes,
}

/// Shares loaves out among as few loads as the oven allows, as evenly as they go.
///
/// Load k goes in at k × (bake + between). Dough that was all begun at once would have to wait that
/// long, so each load's dough is begun that much later.
///
/// Source: division with remainder (by definition).
///
/// # Errors
/// [`ClassError::TooManyLoads`] above sixty; [`ClassError::OffScale`] when the last load would come
/// out in more than sixty days.
pub fn oven(loaves: NonZeroU32, oven: OvenSettings) -> Result<OvenPlan, ClassError> {
    let count = loaves.get().div_ceil(u32::from(oven.places.get()));
    if count > MOST_LOADS {
        let (loads, most) = (count, MOST_LOADS);
        return Err(ClassError::TooManyLoads { loads, most });
    }
    let stagger = oven.bake.minutes() + oven.between.minutes();
    let mut loads = Vec::new();
    let mut first = 1;
    for at in 0..count {
        // The whole is shared as evenly as it goes, the larger loads first.
        let left = loaves.get().saturating_sub(first - 1);
        let here = left.div_ceil(count - at);
        let begins = f64::from(at) * stagger;
        loads.push(Load {
            first,
            loaves: here,
            goes_in: Minutes::from_minutes(begins)?,
            comes_out: Minutes::from_minutes(begins + oven.bake.minutes())?,
        });
        first += here;
    }
    let last = f64::from(count.saturating_sub(1)) * stagger + oven.bake.minutes();
    Ok(OvenPlan {
        oven,
        loaves,
        loads,
        stagger: Minutes::from_minutes(stagger)?,
        all_out: Minutes::from_minutes(last)?,
    })
}

impl OvenPlan {
    /// The loads as a plan goes by them: each from a dough of its own.
    #[must_use]
    pub fn as_planned(&self) -> Loads {
        let count = saturating_u16(self.loads.len());
        Loads {
            count: NonZeroU16::new(count).unwrap_or(NonZeroU16::MIN),
            between: self.oven.between,
            staggered: count > 1,
        }
    }

    /// Whether there are several loads and none of them fills the oven: the loaves are shared out evenly.
    #[must_use]
    pub fn is_evened(&self) -> bool {
        let places = u32::from(self.oven.places.get());
        self.loads.len() > 1 && self.loads.iter().all(|load| load.loaves < places)
    }

    /// Whether the last load's dough, begun with the first, would wait longer than `longest`.
    #[must_use]
    pub fn waits_longer_than(&self, longest: Minutes) -> bool {
        let waits = self.loads.last().map_or(Minutes::ZERO, |load| load.goes_in);
        whole(waits.minutes()) > whole(longest.minutes())
    }
}
