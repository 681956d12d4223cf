//! Cooling: a hot food through bench, ice water and fridge, held against the rules of food safety.

use super::body::Air;
use super::cooled::{Cooled, judge};
use super::cooling_bound::is_hopeless;
use super::cooling_factors::{CoolingFactors, Pace};
use super::cooling_vessel::{CoolingVessel, Laid};
use super::error::HeatError;
use super::evaporation::OpenAir;
use super::filling::{Cover, Filling, VesselStay};
use super::material::Material;
use super::matter::Matter;
use super::properties::Properties;
use super::rule_set::RuleSet;
use super::vessel_cooling::{SKIN, VesselCourse, simulate_in_vessel, simulate_in_vessel_coarsely};
use crate::engine::quantity::{HeatCapacity, Length, Mass, Minutes, Share, Temperature};
use crate::engine::working::WorkingLine;

/// A hot food that is to be cooled in a kitchen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cooling {
    /// What it is made of.
    pub food: Matter,
    /// What it weighs.
    pub mass: Mass,
    /// How warm it is, throughout.
    pub start: Temperature,
    /// How warm the room is.
    pub room: Temperature,
    /// How cold the fridge is.
    pub fridge: Temperature,
    /// Whether a lid or film covers it on the bench; in the fridge it is always covered.
    pub lid: bool,
    /// Material and mass of the bowl it was stirred in, where they are known.
    pub bowl: Option<(Material, Mass)>,
    /// Whose rules are followed.
    pub rules: RuleSet,
    /// How cooling goes in this kitchen, against the printed figures.
    pub factors: CoolingFactors,
}

/// One way of cooling: in what, then how long on the bench and in ice water; the fridge follows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoolingWay {
    /// What it cools in.
    pub vessel: CoolingVessel,
    /// How it lies there.
    pub laid: Laid,
    /// Its time on the bench.
    pub bench: Minutes,
    /// Its time in ice water after that.
    pub ice: Minutes,
}

/// How the cooling goes at each end of what is uncertain.
#[derive(Clone, Debug, PartialEq)]
pub struct CooledRange {
    /// At the quick end.
    pub quick: Cooled,
    /// As is likely: what a plan reckons with.
    pub middle: Cooled,
    /// At the slow end: what the verdict on safety goes by.
    pub slow: Cooled,
    /// The water that evaporates on the way: at the slow end, as is likely, at the quick end.
    pub evaporated: [Mass; 3],
}

/// How long a cooling is simulated in the fridge, at the end of it.
pub const IN_FRIDGE: Minutes = Minutes::known(720.0);

impl Cooling {
    /// Its properties halfway to cold.
    fn properties(&self) -> Result<Properties, HeatError> {
        let middle = Temperature::from_celsius(self.start.celsius().midpoint(10.0))?;
        Properties::of(&self.food, middle)
    }

    /// The working of the properties it cools by, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let properties = self.properties();
        properties.map_or_else(|_| Vec::new(), |found| found.working())
    }

    /// The room it takes, m³.
    pub(super) fn volume(&self) -> Result<f64, HeatError> {
        let density = self.properties()?.density;
        Ok(self.mass.grams() / 1000.0 / density.kilograms_per_cubic_metre())
    }

    /// The way with this vessel and these times; its width, where none is given, suits the food.
    ///
    /// # Errors
    /// [`HeatError::EmptyBowl`] when it weighs nothing; [`HeatError::OffScale`] when no vessel
    /// holds it.
    pub fn way(
        &self,
        vessel: CoolingVessel,
        across: Option<Length>,
        (bench, ice): (Minutes, Minutes),
    ) -> Result<CoolingWay, HeatError> {
        let way = CoolingWay {
            vessel,
            laid: vessel.laid(self.volume()?, across)?,
            bench,
            ice,
        };
        self.filling(&way)?;
        Ok(way)
    }

    /// The food in one of its vessels. A bowl is as warm as the food, others as the room.
    ///
    /// # Errors
    /// [`HeatError::EmptyBowl`] when it weighs nothing; [`HeatError::OffScale`] when a property or
    /// the depth leaves its range.
    pub fn filling(&self, way: &CoolingWay) -> Result<Filling, HeatError> {
        let each = Mass::from_grams(self.mass.grams() / f64::from(way.laid.count.max(1)))?;
        let at = if way.vessel == CoolingVessel::Bowl {
            self.start
        } else {
            self.room
        };
        let bare = Filling::of(
            &self.food,
            each,
            way.laid.across,
            HeatCapacity::from_joules_per_kelvin(0.0),
            (self.start, at),
        )?;
        let vessel = way.vessel.capacity(way.laid.across, bare.deep, self.bowl);
        Ok(Filling { vessel, ..bare })
    }

    /// The places it is put in, one after the other: bench, ice water, fridge.
    ///
    /// Ice water is taken as stirred now and then outside the vessel, and the food as not stirred.
    #[must_use]
    pub fn stays(&self, way: &CoolingWay, pace: Pace) -> Vec<VesselStay> {
        let bag = way.vessel == CoolingVessel::Bag;
        let covered = if bag {
            Cover::Surrounded
        } else {
            Cover::Closed
        };
        let on_bench = match pace {
            Pace::Slow => covered,
            Pace::Quick | Pace::Middle if bag || self.lid => covered,
            Pace::Quick | Pace::Middle => self.uncovered(pace),
        };
        let stay = |minutes, around, coefficient, cover| VesselStay {
            minutes,
            around,
            coefficient,
            cover,
        };
        let fridge = self.fridge_at(pace);
        let bench = self.factors.likely_air(VesselStay::BENCH);
        let air = self.factors.still_air(VesselStay::FRIDGE, pace);
        let stays = [
            stay(way.bench, self.room, bench, on_bench),
            stay(way.ice, Temperature::known(0.0), Air::ICE_BATH, covered),
            stay(IN_FRIDGE, fridge, air, covered),
        ];
        let there = stays.into_iter();
        there.filter(|stay| stay.minutes > Minutes::ZERO).collect()
    }

    /// What lies over a food on the bench that nothing covers, and is not meant to be the slow end.
    fn uncovered(&self, pace: Pace) -> Cover {
        match (self.factors.steam, pace) {
            (Some(factor), _) => Cover::Wet {
                humidity: OpenAir::HUMIDITY,
                share: Share::from_fraction(SKIN * factor.at(pace).number()).unwrap_or(Share::NONE),
            },
            (None, Pace::Quick) => Cover::Open(OpenAir::HUMIDITY),
            (None, _) => Cover::Skin(OpenAir::HUMIDITY),
        }
    }

    fn fridge_at(&self, pace: Pace) -> Temperature {
        match pace {
            Pace::Quick | Pace::Middle => self.fridge,
            Pace::Slow => {
                let warmer = Temperature::from_celsius(self.fridge.celsius() + 1.0);
                warmer.unwrap_or(self.fridge)
            }
        }
    }

    /// Follows it through bench, ice water and fridge.
    ///
    /// # Errors
    /// As [`Cooling::filling`].
    pub fn simulate(&self, way: &CoolingWay, pace: Pace) -> Result<VesselCourse, HeatError> {
        simulate_in_vessel(&self.filling(way)?, self.start, &self.stays(way, pace))
    }

    /// Whether it passes at the slow end, by a coarse simulation.
    pub(super) fn passes_coarsely(&self, way: &CoolingWay) -> Result<bool, HeatError> {
        let (filling, stays) = (self.filling(way)?, self.stays(way, Pace::Slow));
        if is_hopeless(&filling, self.start, &stays, self.rules)? {
            return Ok(false);
        }
        let course = simulate_in_vessel_coarsely(&filling, self.start, &stays)?;
        Ok(judge(course.curve, self.rules).passes)
    }

    /// Follows it at each end of what is uncertain, and holds it against the rules.
    ///
    /// # Errors
    /// As [`Cooling::filling`].
    pub fn cool(&self, way: &CoolingWay) -> Result<CooledRange, HeatError> {
        self.cool_with_slow(way, self.simulate(way, Pace::Slow)?)
    }

    /// As [`Cooling::cool`], where the course at the slow end is known from choosing the way.
    ///
    /// # Errors
    /// As [`Cooling::filling`].
    pub fn cool_with_slow(
        &self,
        way: &CoolingWay,
        slow: VesselCourse,
    ) -> Result<CooledRange, HeatError> {
        let of = |course: VesselCourse| {
            let steam = course.steam().grams() * f64::from(way.laid.count);
            Ok::<_, HeatError>((judge(course.curve, self.rules), Mass::from_grams(steam)?))
        };
        let simulate = |pace| self.simulate(way, pace);
        let ((quick, most), (middle, likely), (slow, least)) = (
            of(simulate(Pace::Quick)?)?,
            of(simulate(Pace::Middle)?)?,
            of(slow)?,
        );
        Ok(CooledRange {
            quick,
            middle,
            slow,
            evaporated: [least, likely, most],
        })
    }
}

impl CooledRange {
    /// When the coldest limit of the rules is reached: at the quick end, as is likely, at the slow
    /// end.
    #[must_use]
    pub fn cold(&self) -> [Option<Minutes>; 3] {
        [self.quick.cold(), self.middle.cold(), self.slow.cold()]
    }
}
