//! `Run`: every stage of a bake, each from what the one before it hands on.

use super::chilled::{PartTemperatures, agree, chilled, part_temperatures};
use super::plan_times::PlanTimes;
use super::run_input::{DoughBasis, RunInput};
use super::stage::{Stage, held};
use super::stages::{Followed, stages};
use crate::engine::formula::{Form, Formula};
use crate::engine::heat::{CoolingFactors, HeatError};
use crate::engine::learn::LearntFactor;
use crate::engine::quantity::{Factor, Minutes, Temperature};
use crate::engine::rise::{ReferenceRise, RiseError, YeastActivity, yeast_activity};
use crate::results::day::{Doughs, ReferenceRises, RiseInput, Rises, rises, taught_kitchen};
use crate::results::heat::{
    Baking, InOven, MixingResult, PasteCooling, baking, paste_coolings, planned_phases,
};
use crate::sheet::{HeatSettings, Kitchen};

/// A bake followed from the kettle to the cutting board.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// The formula with every paste and preferment as warm as it leaves the fridge.
    pub formula: Formula,
    /// The cooling of every paste that can be followed.
    pub coolings: Vec<PasteCooling>,
    /// The mix.
    pub mixing: Result<MixingResult, HeatError>,
    /// The temperature of the dough off the mixer, as the rises take it.
    pub dough: Temperature,
    /// Where that is from.
    pub dough_basis: DoughBasis,
    /// The rises that all others are scaled from.
    pub references: ReferenceRises,
    /// The dough and that of the reference rises, where both have yeast.
    pub doughs: Option<Doughs>,
    /// The rises.
    pub rises: Rises,
    /// How cooling goes in its kitchen, as the log has taught.
    pub cooling: CoolingFactors,
    /// The bake, and how long the bread cools.
    pub baking: Result<Baking, HeatError>,
    /// The phases of the bake of one load, as this oven bakes.
    pub bake: Vec<Minutes>,
    /// The stages, by strand in the order of time.
    pub stages: Vec<Stage>,
    /// The temperatures of every paste and preferment, stage by stage.
    parts: Vec<PartTemperatures>,
    /// How long they stand out before they are mixed in.
    standing_out: Minutes,
}

impl Run {
    /// Follows a bake.
    ///
    /// ```
    /// use softcrumb::engine::learn::Learnt;
    /// use softcrumb::engine::rise::RiseSettings;
    /// use softcrumb::results::heat::InOven;
    /// use softcrumb::results::run::{Run, RunInput, strands};
    /// use softcrumb::sheet::{Kitchen, examples};
    ///
    /// let (_, sheet) = examples().remove(0);
    /// let run = Run::of(&RunInput {
    ///     formula: &sheet.formula,
    ///     kitchen: &Kitchen::default(),
    ///     heat: &sheet.heat,
    ///     rises: &RiseSettings::default(),
    ///     pieces: 9,
    ///     learnt: &Learnt::default(),
    ///     in_oven: InOven::of(&sheet, None, InOven::PROOFED),
    ///     measured_dough: None,
    ///     planned: None,
    /// });
    /// // What a stage hands on is what the next takes in.
    /// for strand in strands(&run.stages) {
    ///     assert!(strand.windows(2).all(|pair| pair[0].ends == pair[1].starts));
    /// }
    /// ```
    #[must_use]
    pub fn of(input: &RunInput) -> Self {
        Self::of_known(input, &[])
    }

    /// As [`Run::of`]; a cooling that is `known` from an earlier run is taken from there.
    #[must_use]
    pub fn of_known(input: &RunInput, known: &[PasteCooling]) -> Self {
        let kitchen = &taught_kitchen(input.kitchen, input.learnt);
        let standing = input.planned.and_then(|planned| planned.standing_out);
        match standing.filter(|standing| *standing != input.heat.standing) {
            None => Self::in_kitchen(&RunInput { kitchen, ..*input }, known),
            Some(standing) => {
                let heat = &HeatSettings {
                    standing,
                    ..input.heat.clone()
                };
                Self::in_kitchen(
                    &RunInput {
                        kitchen,
                        heat,
                        ..*input
                    },
                    known,
                )
            }
        }
    }

    fn in_kitchen(input: &RunInput, known: &[PasteCooling]) -> Self {
        let RunInput { kitchen, heat, .. } = *input;
        let coolings = paste_coolings(input.formula, kitchen, heat, known);
        let parts = part_temperatures(
            input.formula,
            kitchen,
            input.rises,
            (&coolings, input.planned),
        );
        let formula = chilled(input.formula, &parts);
        let mixing = MixingResult::of(&formula, kitchen, heat);
        let (dough, dough_basis) = off_the_mixer(input, mixing.as_ref().ok());
        let (references, doughs, rises) = risen(input, &formula, dough);
        let in_oven = InOven {
            dough: rises.temperatures.proofed,
            ..input.in_oven
        };
        let baking = baking(&in_oven, kitchen, heat, input.learnt.bake.as_ref());
        let mut run = Self {
            formula,
            coolings,
            mixing,
            dough,
            dough_basis,
            references,
            doughs,
            rises,
            cooling: kitchen.cooling,
            bake: planned_phases(baking.as_ref().ok(), heat),
            baking,
            stages: Vec::new(),
            standing_out: heat.standing,
            parts,
        };
        run.stages = stages(&run.followed(), input, &run.parts);
        run
    }

    /// Whether a plan with these times leaves every temperature of this run, which followed the same
    /// `input`, as it is: within what a thermometer tells.
    #[must_use]
    pub fn agrees_with(&self, planned: &PlanTimes, input: &RunInput) -> bool {
        let standing = planned.standing_out.unwrap_or(self.standing_out);
        let kitchen = taught_kitchen(input.kitchen, input.learnt);
        let known = (self.coolings.as_slice(), Some(planned));
        let parts = part_temperatures(input.formula, &kitchen, input.rises, known);
        standing == self.standing_out && agree(&parts, &self.parts)
    }

    /// Returns a kitchen with what the log has taught of this run's.
    #[must_use]
    pub fn kitchen(&self, kitchen: &Kitchen) -> Kitchen {
        Kitchen {
            cooling: self.cooling,
            ..kitchen.clone()
        }
    }

    /// How long one load bakes in all, as this oven bakes.
    #[must_use]
    pub fn bake_time(&self) -> Minutes {
        held(self.bake.iter().map(|phase| phase.minutes()).sum())
    }

    fn followed(&self) -> Followed<'_> {
        Followed {
            formula: &self.formula,
            mixing: self.mixing.as_ref().ok(),
            dough_is_measured: self.dough_basis == DoughBasis::Measured,
            rises: &self.rises,
            baking: self.baking.as_ref().ok(),
            bake: &self.bake,
        }
    }

    /// The cooling of the paste of a part, where it can be followed.
    ///
    /// ```
    /// use softcrumb::engine::learn::Learnt;
    /// use softcrumb::engine::rise::RiseSettings;
    /// use softcrumb::results::heat::InOven;
    /// use softcrumb::results::run::{Run, RunInput};
    /// use softcrumb::sheet::{Kitchen, examples};
    ///
    /// let (_, sheet) = examples().remove(0);
    /// let run = Run::of(&RunInput {
    ///     formula: &sheet.formula,
    ///     kitchen: &Kitchen::default(),
    ///     heat: &sheet.heat,
    ///     rises: &RiseSettings::default(),
    ///     pieces: 9,
    ///     learnt: &Learnt::default(),
    ///     in_oven: InOven::of(&sheet, None, InOven::PROOFED),
    ///     measured_dough: None,
    ///     planned: None,
    /// });
    /// // The paste comes first; the way chosen for it passes the rules.
    /// assert!(run.cooling(0).unwrap().cooled.slow.passes);
    /// ```
    #[must_use]
    pub fn cooling(&self, part: usize) -> Option<&PasteCooling> {
        self.coolings.iter().find(|one| one.part == part)
    }
}

/// The temperature of the dough off the mixer, and where it is from.
fn off_the_mixer(input: &RunInput, mixing: Option<&MixingResult>) -> (Temperature, DoughBasis) {
    let predicted = mixing.map(|mixing| mixing.dough.temperature);
    match (input.measured_dough, predicted) {
        (Some(measured), _) => (measured, DoughBasis::Measured),
        (None, Some(predicted)) => (predicted, DoughBasis::Predicted),
        (None, None) => (input.heat.dough, DoughBasis::Wished),
    }
}

/// The rises of a formula whose dough is so warm off the mixer, and what they are scaled from.
fn risen(
    input: &RunInput,
    formula: &Formula,
    dough: Temperature,
) -> (ReferenceRises, Option<Doughs>, Rises) {
    let (references, doughs, error) = references(input);
    let rises = known_rises(
        &RiseInput {
            formula,
            kitchen: input.kitchen,
            dough,
            pieces: input.pieces,
            settings: input.rises,
            references: &references,
        },
        error,
    );
    (references, doughs, rises)
}

/// The rises; without a comparison of the doughs neither rise of the dough is known.
fn known_rises(input: &RiseInput, error: Option<RiseError>) -> Rises {
    let mut rises = rises(input);
    if let Some(error) = error {
        rises.bulk = Err(error.clone());
        rises.proof = Err(error);
    }
    rises
}

/// The known rises scaled by the dough and by what the log has taught; why the doughs cannot be
/// compared, where they cannot.
fn references(input: &RunInput) -> (ReferenceRises, Option<Doughs>, Option<RiseError>) {
    let compared = doughs(input).and_then(|doughs| {
        let activity = doughs.now.against(&doughs.reference)?;
        Ok((doughs, activity))
    });
    let (doughs, yeast_activity, error) = match compared {
        Ok((doughs, activity)) => (Some(doughs), activity, None),
        Err(error) => (None, Factor::ONE, Some(error)),
    };
    let known = ReferenceRises::of(input.rises);
    let learnt = |factor: &Option<LearntFactor>, reference: ReferenceRise| {
        let factor = factor.as_ref();
        factor.map_or(reference, |factor| factor.anchor(reference))
    };
    let references = ReferenceRises {
        bulk: learnt(&input.learnt.bulk, known.bulk),
        proof: learnt(&input.learnt.proof, known.proof),
        yeast_activity,
    };
    (references, doughs, error)
}

/// Both doughs: this one, and that of the known rises, which is a usual one where none was noted.
fn doughs(input: &RunInput) -> Result<Doughs, RiseError> {
    let reference = input.rises.dough.map_or_else(YeastActivity::usual, Ok)?;
    let now = yeast_activity(input.formula, Form::AsMade)?;
    Ok(Doughs { now, reference })
}
