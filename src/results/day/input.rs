//! The input of the day's results: sheet, kitchen, settings, log and time.

use super::weighed_formula::as_weighed;
use crate::engine::batch::Rounded;
use crate::engine::formula::Formula;
use crate::engine::learn::Learnt;
use crate::engine::rise::RiseSettings;
use crate::sheet::civil::Zone;
use crate::sheet::day::{Bake, Bench, DaySettings};
use crate::sheet::{HeatSettings, Kitchen};
use crate::sheet::{Moment, Sheet};

/// Everything the results of a day follow from.
#[derive(Clone, Copy, Debug)]
pub struct DayInput<'a> {
    /// The formula with its batch and its heat settings.
    pub sheet: &'a Sheet,
    /// The kitchen.
    pub kitchen: &'a Kitchen,
    /// The settings of the formula's plan.
    pub settings: &'a DaySettings,
    /// What the log has taught.
    pub learnt: &'a Learnt,
    /// The batch as the scales show it, where it can be worked out.
    pub rounded: Option<&'a Rounded>,
    /// The zone of the local clock.
    pub zone: &'a Zone,
    /// Now.
    pub now: Moment,
    /// The bake of this formula that is under way, if there is one.
    pub bench: Option<&'a Bench>,
}

impl<'a> DayInput<'a> {
    /// The bake under way.
    pub(super) fn bake(&self) -> Option<&'a Bake> {
        self.bench.map(|bench| &bench.bake)
    }

    /// The heat settings of the sheet; a measured dough temperature replaces the wished one.
    pub(super) fn heat_settings(&self) -> HeatSettings {
        let mut heat = self.sheet.heat.clone();
        if let Some(measured) = self.bake().and_then(|bake| bake.noted.dough) {
            heat.dough = measured;
        }
        heat
    }

    /// The rise settings; a place chosen for the bake under way replaces the usual one.
    pub(super) fn rise_settings(&self) -> RiseSettings {
        let mut rises = self.settings.rises;
        if let Some(bench) = self.bench {
            rises.bulk_place = bench.bulk_place.or(rises.bulk_place);
            rises.proof_place = bench.proof_place.or(rises.proof_place);
        }
        rises
    }

    /// The batch with the masses that were really weighed; `None` where none differs from the
    /// batch.
    pub(super) fn weighed_formula(&self) -> Option<Formula> {
        let bench = self.bench?;
        let rounded = self.rounded?;
        let any = bench.weighed.iter().any(|weighing| weighing.mass.is_some());
        any.then(|| as_weighed(&rounded.formula, bench))
    }
}
