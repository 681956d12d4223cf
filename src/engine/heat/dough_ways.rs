//! The ways to a dough's temperature, in the order in which a baker tries them, and several together.

use super::body::Air;
use super::conduction::{Exposure, Probe, simulate};
use super::dough::{Dough, LiquidUse, comes_off};
use super::dough_remedy::{
    DoughRemedy, NEAR, WARM_AT_MOST, bowl_to, flour_to, ice, liquid_to, mix_for, poured, stand_out,
};
use super::dough_step::DoughStep;
use super::error::HeatError;
use super::surroundings::Surroundings;
use crate::engine::quantity::{Minutes, Temperature};

/// What changes the dough by less than this, and is not enough, is not worth the trouble, K.
const SLIGHT: f64 = 0.5;
/// The same of a step among several, K.
const SLIGHT_IN_SEVERAL: f64 = 0.25;

/// What a baker tries, in this order. Common practice: first what is poured, then what stands out or
/// is put in as ice, then the bowl and the time of mixing; flour is warmed or chilled last.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Way {
    Liquid,
    StandOut,
    Ice,
    Bowl,
    Mix,
    Flour,
}

const COLD: [Way; 4] = [Way::Liquid, Way::StandOut, Way::Bowl, Way::Mix];
const HOT: [Way; 4] = [Way::Liquid, Way::Ice, Way::Bowl, Way::Mix];

/// What would bring a dough there: what is enough by itself first, and then what a baker would do
/// first; nothing where it is there, to two tenths of a degree.
///
/// Where nothing is enough by itself, several together come first, as one action. What changes the
/// dough by less than half a degree without being enough is named only where nothing else helps.
/// Flour is warmed or chilled only where all else together does not reach the target.
///
/// # Errors
/// Those of [`super::dough_temperature`].
pub fn dough_remedies(
    dough: &Dough,
    target: Temperature,
    around: &Surroundings,
) -> Result<Vec<DoughRemedy>, HeatError> {
    let now = comes_off(dough)?;
    let lacks = (target - now).kelvin();
    if lacks.abs() <= NEAR {
        return Ok(Vec::new());
    }
    let asked = Asked {
        target,
        around,
        too_cold: lacks > 0.0,
    };
    let ways = if asked.too_cold { COLD } else { HOT };
    let mut found = Vec::with_capacity(6);
    for way in ways {
        found.extend(asked.remedy(dough, way)?);
    }
    if !found.iter().any(|remedy| remedy.enough) {
        let together = asked.together(dough, &ways)?;
        let is_enough = together.is_some_and(|remedy| remedy.enough);
        let together = if is_enough {
            together
        } else {
            let all: Vec<Way> = ways.into_iter().chain([Way::Flour]).collect();
            found.extend(asked.remedy(dough, Way::Flour)?);
            asked.together(dough, &all)?
        };
        found.splice(0..0, together);
    }
    let worth =
        |remedy: &DoughRemedy| remedy.enough || (remedy.reaches - now).kelvin().abs() >= SLIGHT;
    if found.iter().any(worth) {
        found.retain(worth);
    }
    // Stable: of two that are enough, the one a baker would do first stays first; flour stays last.
    let is_flour = |remedy: &DoughRemedy| {
        matches!(
            remedy.step,
            DoughStep::WarmFlour { .. } | DoughStep::ChillFlour { .. }
        )
    };
    found.sort_by_key(|remedy| (is_flour(remedy), !remedy.enough));
    Ok(found)
}

/// A step that takes something to a temperature.
type StepTo = fn(Temperature) -> DoughStep;

const fn liquid_step(warm: bool) -> StepTo {
    if warm {
        |to| DoughStep::WarmLiquid { to }
    } else {
        |to| DoughStep::ChillLiquid { to }
    }
}

const fn bowl_step(warm: bool) -> StepTo {
    if warm {
        |to| DoughStep::WarmBowl { to }
    } else {
        |to| DoughStep::ChillBowl { to }
    }
}

const fn flour_step(warm: bool) -> StepTo {
    if warm {
        |to| DoughStep::WarmFlour { to }
    } else {
        |to| DoughStep::ChillFlour { to }
    }
}

/// What is asked of a dough.
struct Asked<'a> {
    target: Temperature,
    around: &'a Surroundings,
    too_cold: bool,
}

impl Asked<'_> {
    fn remedy(&self, dough: &Dough, way: Way) -> Result<Option<DoughRemedy>, HeatError> {
        let (target, cold) = (self.target, self.too_cold);
        let end = if cold {
            WARM_AT_MOST
        } else {
            self.around.fridge
        };
        match way {
            Way::Liquid => liquid_to(dough, target, end, cold, liquid_step(cold)),
            Way::StandOut => stand_out(dough, target, self.around),
            Way::Ice => ice(dough, target, self.around),
            Way::Bowl => bowl_to(dough, target, end, cold, bowl_step(cold)),
            Way::Mix => mix_for(dough, target, cold),
            Way::Flour => flour_to(dough, target, end, cold, flour_step(cold)),
        }
    }

    /// One way after the other, each as far as it goes, until the target is reached; `None` where
    /// that is less than two.
    ///
    /// Ice is weighed for the dough as it then is and ends the list; where it is not enough it is
    /// left out, as the rest of the ways are easier to take back.
    fn together(&self, dough: &Dough, ways: &[Way]) -> Result<Option<DoughRemedy>, HeatError> {
        let mut current = dough.clone();
        let mut now = comes_off(dough)?;
        let mut steps: Vec<DoughStep> = Vec::with_capacity(5);
        for way in ways {
            let Some(found) = self.remedy(&current, *way)? else {
                continue;
            };
            let slight = (found.reaches - now).kelvin().abs() < SLIGHT_IN_SEVERAL;
            if !found.enough && (slight || *way == Way::Ice) {
                continue;
            }
            steps.push(found.step);
            now = found.reaches;
            if found.enough {
                break;
            }
            current = self.done(&current, found.step)?;
        }
        let [first, more @ ..] = steps.as_slice() else {
            return Ok(None);
        };
        if more.is_empty() {
            return Ok(None);
        }
        let mut all = DoughRemedy::new(*first, now, self.target);
        for (place, step) in all.with.iter_mut().zip(more) {
            *place = Some(*step);
        }
        Ok(Some(all))
    }

    /// The dough once a step is done; ice is not put in.
    fn done(&self, dough: &Dough, step: DoughStep) -> Result<Dough, HeatError> {
        let mut done = dough.clone();
        match step {
            DoughStep::WarmLiquid { to } => done = poured(dough, to, true),
            DoughStep::ChillLiquid { to } => done = poured(dough, to, false),
            DoughStep::StandOut { minutes } => self.stood(&mut done, minutes)?,
            DoughStep::MixLonger { minutes } => {
                let all = dough.minutes.minutes() + minutes.minutes();
                done.minutes = Minutes::from_minutes(all)?;
            }
            DoughStep::MixShorter { minutes } => {
                let left = dough.minutes.minutes() - minutes.minutes();
                done.minutes = Minutes::from_minutes(left.max(0.0))?;
            }
            DoughStep::WarmBowl { to } | DoughStep::ChillBowl { to } => {
                if let Some(vessel) = &mut done.vessel {
                    vessel.temperature = to;
                }
            }
            // The last of all, and ice is weighed at the end.
            DoughStep::WarmFlour { .. } | DoughStep::ChillFlour { .. } | DoughStep::Ice { .. } => {}
        }
        Ok(done)
    }

    /// Lets the cold things stand until they have stood so long in all.
    fn stood(&self, dough: &mut Dough, minutes: Minutes) -> Result<(), HeatError> {
        let longer = minutes.minutes() - dough.stood.minutes();
        let longer = Minutes::from_minutes(longer.max(0.0))?;
        dough.stood = minutes;
        let stay = Exposure {
            minutes: longer,
            air: Air::still(self.around.room),
        };
        for item in &mut dough.items {
            if let LiquidUse::Standing(body) = item.handling
                && item.component.temperature < self.around.room
            {
                let curve = simulate(&body, item.component.temperature, &[stay])?;
                if let Some(warm) = curve.at(longer, Probe::Mean) {
                    item.component.temperature = warm;
                }
            }
        }
        Ok(())
    }
}
