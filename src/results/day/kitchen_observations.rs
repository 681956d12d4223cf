//! What teaches how this kitchen cools: a paste weighed, a paste or preferment measured at a known
//! time, each beside what the printed figures say.

use super::input::DayInput;
use super::preferment::preferment_course;
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::{CoolingFactors, CoolingWay, HeatError, KitchenFactor, Pace, Probe};
use crate::engine::learn::{MeasuredCooling, MeasuredSteam, WeighedLoss};
use crate::engine::numerics::first_true;
use crate::engine::plan::{StepAt, StepKind};
use crate::engine::quantity::{Factor, Mass, Minutes, Share, Temperature};
use crate::results::heat::{expected_steam, paste_cooling, stirred_in};
use crate::sheet::{Kitchen, Moment};

/// Returns the steam in g that a paste lost which weighed `after` on its way to the fridge, beside
/// the steam that was expected; `None` under a lid in the bowl, where none is expected.
#[must_use]
pub fn measured_steam(input: &DayInput, step: StepAt, after: Mass) -> Option<MeasuredSteam> {
    let formula = input.made();
    let part = usize::from(step.of);
    let own = formula.parts.get(part)?;
    let kitchen = Kitchen {
        cooling: CoolingFactors::default(),
        ..input.kitchen.clone()
    };
    let expected = expected_steam(&formula, part, &kitchen, &input.sheet.heat).ok()?;
    (own.kind == PartKind::Paste && expected.likely > Mass::ZERO).then(|| MeasuredSteam {
        expected: expected.likely,
        weighed: WeighedLoss {
            before: stirred_in(own),
            after,
        },
    })
}

/// The least and the most that a cooling may ask of the printed heat that passes.
const LEAST: f64 = 0.25;
const MOST: f64 = 4.0;
/// Halvings of the factor: to a thousandth of its logarithm.
const HALVINGS: u32 = 12;
/// A step of the factor, as a logarithm, by which its leverage is measured.
const STEP: f64 = 0.1;
/// A factor that 1 K moves by more than this, as a logarithm, teaches nothing.
const BLUNT: f64 = 0.7;
/// A measurement sooner than this after the step began teaches nothing, min.
const SOON: f64 = 5.0;

/// How a part cooled that was `found` so warm at a step; `None` where the beginning of the step is
/// not noted, where it stands in ice water, or where a thermometer cannot tell.
///
/// The factor is that on the heat passed to the air with which its simulated course meets the
/// measured temperature: on the whole while it is out, in the middle once it is in the fridge.
#[must_use]
pub fn measured_cooling(
    input: &DayInput,
    (step, part): (StepAt, usize),
    found: Temperature,
    when: Moment,
) -> Option<MeasuredCooling> {
    let stood = Stood::of(input, step, part, when)?;
    let formula = input.made();
    let at = |log_factor: f64| {
        let kitchen = stood.kitchen(input.kitchen, libm::exp(log_factor));
        stood.temperature(&formula, &kitchen, input)
    };
    let expected = at(0.0).ok()?;
    let is_colder = |log: f64| at(log).is_ok_and(|at| at <= found);
    let ends = libm::log(LEAST)..=libm::log(MOST);
    // Colder than the least factor makes it, so that the factor is found between the two.
    if is_colder(*ends.start()) {
        return None;
    }
    let log = first_true(ends, HALVINGS, is_colder)?;
    let slope = (at(log - STEP).ok()? - at(log + STEP).ok()?).kelvin() / (2.0 * STEP);
    let sharp = slope > 1.0 / BLUNT;
    sharp
        .then(|| {
            Some(MeasuredCooling {
                expected,
                found,
                factor: Factor::from_number(libm::exp(log)).ok()?,
                within: Share::from_fraction(libm::expm1(1.0 / slope)).ok()?,
            })
        })
        .flatten()
}

/// What a part has gone through when it is measured.
#[derive(Clone, Copy)]
struct Stood {
    part: usize,
    is_paste: bool,
    /// Out of the fridge.
    out: Minutes,
    /// In the fridge; `None` while it is out.
    fridge: Option<Minutes>,
}

impl Stood {
    fn of(input: &DayInput, step: StepAt, part: usize, when: Moment) -> Option<Self> {
        let bake = input.bake()?;
        let own = input.sheet.formula.parts.get(part)?;
        let is_paste = own.kind == PartKind::Paste;
        let begun = bake.began(step)?;
        let since = when.instant().since(begun.instant());
        let (before, cold) = if step.work == StepKind::CoolPaste {
            (None, false)
        } else if step.work == StepKind::ChillPaste {
            (Some(StepKind::CoolPaste), true)
        } else if step.work == StepKind::ChillPreferment {
            (Some(StepKind::StandPreferment), true)
        } else {
            return None;
        };
        let out = before
            .and_then(|work| bake.began(StepAt { work, ..step }))
            .map(|began| begun.instant().since(began.instant()));
        (since.minutes() >= SOON).then_some(Self {
            part,
            is_paste,
            out: if cold {
                out.unwrap_or(Minutes::ZERO)
            } else {
                since
            },
            fridge: cold.then_some(since),
        })
    }

    /// The kitchen with such a factor on the heat that passes.
    fn kitchen(&self, kitchen: &Kitchen, factor: f64) -> Kitchen {
        let likely = Factor::from_number(factor).unwrap_or(Factor::ONE);
        Kitchen {
            cooling: CoolingFactors {
                transfer: Some(KitchenFactor {
                    likely,
                    spread: Share::NONE,
                }),
                ..kitchen.cooling
            },
            ..kitchen.clone()
        }
    }

    fn temperature(
        &self,
        formula: &Formula,
        kitchen: &Kitchen,
        input: &DayInput,
    ) -> Result<Temperature, HeatError> {
        if !self.is_paste {
            let room = (self.out, kitchen.room);
            let fridge = (self.fridge.unwrap_or(Minutes::ZERO), kitchen.fridge);
            let course = preferment_course(formula, self.part, kitchen, &[room, fridge])?;
            let end = course.end().map(|end| end.centre);
            return end.ok_or(HeatError::NoTarget);
        }
        let plan = paste_cooling(formula, self.part, kitchen, &input.sheet.heat)?;
        if plan.way.ice > Minutes::ZERO {
            return Err(HeatError::NoTarget);
        }
        let way = CoolingWay {
            bench: self.out,
            ..plan.way
        };
        let course = plan.cooling.simulate(&way, Pace::Middle)?.curve;
        let all = self.out.minutes() + self.fridge.map_or(0.0, Minutes::minutes);
        let probe = if self.fridge.is_some() {
            Probe::Centre
        } else {
            Probe::Mean
        };
        course
            .at(Minutes::from_minutes(all)?, probe)
            .ok_or(HeatError::NoTarget)
    }
}
