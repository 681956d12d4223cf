//! The input of the day's results: sheet, kitchen, settings, log and time.

use super::learning::taught_kitchen;
use super::plan_times::plan_times;
use super::weighed_formula::{as_weighed, exact, settled};
use crate::engine::batch::Rounded;
use crate::engine::formula::Formula;
use crate::engine::learn::Learnt;
use crate::engine::quantity::Temperature;
use crate::engine::rise::RiseSettings;
use crate::results::batch::{scale, scaled_formula};
use crate::results::heat::{InOven, PasteCooling};
use crate::results::run::{PlanTimes, Run, RunInput};
use crate::sheet::civil::Zone;
use crate::sheet::day::{Bake, Bench, DaySettings};
use crate::sheet::{Kitchen, Moment, Sheet};

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

    /// Returns the kitchen with what the log has taught of it; see [`taught_kitchen`].
    #[must_use]
    pub fn taught_kitchen(&self) -> Kitchen {
        taught_kitchen(self.kitchen, self.learnt)
    }

    /// The formula as large as it is made, with the masses that were really weighed.
    pub(super) fn made(&self) -> Formula {
        self.weighed_formula()
            .unwrap_or_else(|| scaled_formula(self.sheet))
    }

    /// Returns the run of this dough: with what the bake under way has measured, in the places
    /// chosen for its rises.
    #[must_use]
    pub fn run(&self) -> Run {
        self.run_known(&[])
    }

    /// As [`DayInput::run`]; a cooling that is `known` from an earlier run is taken from there.
    #[must_use]
    pub fn run_known(&self, known: &[PasteCooling]) -> Run {
        let planned = self.times_at_start();
        let follow = |input: &RunInput| Run::of_known(input, known);
        self.with_run_input(planned.as_ref(), follow)
    }

    /// The run by the times of its plan.
    #[must_use]
    pub fn run_in(&self, planned: &PlanTimes, known: &[PasteCooling]) -> Run {
        self.with_run_input(Some(planned), |input| Run::of_known(input, known))
    }

    /// Whether the times of a plan leave a run as it is.
    pub(super) fn agrees(&self, run: &Run, planned: &PlanTimes) -> bool {
        self.with_run_input(Some(planned), |input| run.agrees_with(planned, input))
    }

    /// The run as it was to be: of the masses that went in, no temperature measured, in the usual
    /// places, by the times of the plan with which the bake began.
    #[must_use]
    pub fn planned_run(&self) -> Run {
        let planned = self.times_at_start();
        let (made, rises) = (self.made(), &self.settings.rises);
        Run::of(&self.run_input(&made, rises, (None, planned.as_ref())))
    }

    /// The run by the times of its plan, with no dough temperature measured.
    pub(super) fn unmeasured_run(&self, planned: &PlanTimes) -> Run {
        let (made, rises) = (self.made(), self.rise_settings());
        Run::of(&self.run_input(&made, &rises, (None, Some(planned))))
    }

    fn with_run_input<T>(
        &self,
        planned: Option<&PlanTimes>,
        run: impl FnOnce(&RunInput) -> T,
    ) -> T {
        let measured = self.bake().and_then(|bake| bake.noted.dough);
        let (made, rises) = (self.made(), self.rise_settings());
        run(&self.run_input(&made, &rises, (measured, planned)))
    }

    fn run_input<'i>(
        &'i self,
        formula: &'i Formula,
        rises: &'i RiseSettings,
        (measured_dough, planned): (Option<Temperature>, Option<&'i PlanTimes>),
    ) -> RunInput<'i> {
        RunInput {
            formula,
            kitchen: self.kitchen,
            heat: &self.sheet.heat,
            rises,
            pieces: self.sheet.batch.pieces.get(),
            learnt: self.learnt,
            in_oven: InOven::of(self.sheet, scale(self.sheet).ok().as_ref(), InOven::PROOFED),
            measured_dough,
            planned,
        }
    }

    /// The times of the plan with which the bake under way began.
    fn times_at_start(&self) -> Option<PlanTimes> {
        let bench = self.bench.filter(|bench| !bench.planned.is_empty())?;
        let lasts = |at| Some(bench.planned(at)?.lasts);
        Some(plan_times(&self.sheet.formula, lasts))
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

    /// The batch with the masses that were really weighed; `None` where all are as asked.
    pub(super) fn weighed_formula(&self) -> Option<Formula> {
        let rounded = self.rounded?;
        let bench = settled(rounded, self.bench?);
        let any = bench.weighed.iter().any(|weighing| weighing.mass.is_some());
        any.then(|| as_weighed(&exact(rounded), &bench))
    }
}
