//! `Run`: every stage of a bake, each from what the one before it hands on.

use super::chilled::{PartTemperatures, chilled, part_temperatures};
use super::stage::{Stage, StageKind};
use crate::engine::formula::{Form, Formula};
use crate::engine::heat::{CoolingFactors, HeatError};
use crate::engine::learn::{Learnt, LearntFactor};
use crate::engine::plan::shaping_time;
use crate::engine::quantity::{Factor, Minutes, Temperature};
use crate::engine::rise::{
    ReferenceRise, RiseError, RiseSettings, Risen, YeastActivity, yeast_activity,
};
use crate::results::day::{Doughs, ReferenceRises, RiseInput, Rises, rises, taught_kitchen};
use crate::results::heat::{LoadSource, MixingResult};
use crate::sheet::{HeatSettings, Kitchen};

/// What a run follows from.
#[derive(Clone, Copy, Debug)]
pub struct RunInput<'i> {
    /// The formula, as large as it is made.
    pub formula: &'i Formula,
    /// The kitchen.
    pub kitchen: &'i Kitchen,
    /// The settings of heat.
    pub heat: &'i HeatSettings,
    /// The settings of the rises, with the places of the bake under way.
    pub rises: &'i RiseSettings,
    /// How many pieces the dough is divided into.
    pub pieces: u16,
    /// What the log has taught.
    pub learnt: &'i Learnt,
    /// The temperature of the dough off the mixer, where it was measured.
    pub measured_dough: Option<Temperature>,
}

/// Where the temperature of the dough off the mixer is from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DoughBasis {
    /// It was measured.
    Measured,
    /// It was worked out from what goes into the mixer.
    Predicted,
    /// It could not be worked out: the wished one stands in.
    Wished,
}

/// A bake followed from the kettle to the oven.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// The formula with every paste and preferment as warm as it leaves the fridge.
    pub formula: Formula,
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
    /// The stages, by strand in the order of time.
    pub stages: Vec<Stage>,
}

impl Run {
    /// Follows a bake.
    ///
    /// ```
    /// use softcrumb::engine::learn::Learnt;
    /// use softcrumb::engine::rise::RiseSettings;
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
    ///     measured_dough: None,
    /// });
    /// // What a stage hands on is what the next takes in.
    /// for strand in strands(&run.stages) {
    ///     assert!(strand.windows(2).all(|pair| pair[0].ends == pair[1].starts));
    /// }
    /// ```
    #[must_use]
    pub fn of(input: &RunInput) -> Self {
        let kitchen = &taught_kitchen(input.kitchen, input.learnt);
        Self::in_kitchen(&RunInput { kitchen, ..*input })
    }

    fn in_kitchen(input: &RunInput) -> Self {
        let RunInput { kitchen, heat, .. } = *input;
        let parts = part_temperatures(input.formula, kitchen, heat, input.rises);
        let formula = chilled(input.formula, &parts);
        let mixing = MixingResult::of(&formula, kitchen, heat);
        let predicted = mixing.as_ref().ok().map(|mixing| mixing.dough.temperature);
        let (dough, dough_basis) = match (input.measured_dough, predicted) {
            (Some(measured), _) => (measured, DoughBasis::Measured),
            (None, Some(predicted)) => (predicted, DoughBasis::Predicted),
            (None, None) => (heat.dough, DoughBasis::Wished),
        };
        let (references, doughs, error) = references(input);
        let mut rises = rises(&RiseInput {
            formula: &formula,
            kitchen,
            dough,
            pieces: input.pieces,
            settings: input.rises,
            references: &references,
        });
        // Without a comparison neither rise of the dough is known.
        if let Some(error) = error {
            rises.bulk = Err(error.clone());
            rises.proof = Err(error);
        }
        let mut run = Self {
            formula,
            mixing,
            dough,
            dough_basis,
            references,
            doughs,
            rises,
            cooling: kitchen.cooling,
            stages: Vec::new(),
        };
        run.stages = run.stages_of(input, &parts);
        run
    }

    /// A kitchen with what the log has taught of this run's.
    #[must_use]
    pub fn kitchen(&self, kitchen: &Kitchen) -> Kitchen {
        Kitchen {
            cooling: self.cooling,
            ..kitchen.clone()
        }
    }

    fn stages_of(&self, input: &RunInput, parts: &[PartTemperatures]) -> Vec<Stage> {
        let mut stages = Vec::new();
        for one in parts {
            let stage = |kind, starts, ends, lasts| Stage {
                kind,
                part: Some(one.part),
                starts,
                ends,
                lasts: [lasts; 3],
                is_measured: false,
            };
            let chilled = self.formula.parts.get(one.part);
            let chilled = chilled
                .and_then(|own| own.temperature)
                .unwrap_or(one.chilled);
            stages.push(stage(StageKind::Stand, one.made, one.stood, one.standing));
            stages.push(stage(StageKind::Chill, one.stood, chilled, one.chilling));
            if let Some(warm) = self.mixed_in_at(one.part) {
                let lasts = input.heat.standing;
                stages.push(stage(StageKind::WarmUp, chilled, warm, lasts));
            }
        }
        stages.extend(self.dough_stages(input));
        stages
    }

    /// The temperature at which a paste or preferment goes into the mixer.
    fn mixed_in_at(&self, part: usize) -> Option<Temperature> {
        let load = &self.mixing.as_ref().ok()?.load;
        let item = load.item(LoadSource::Part(part))?;
        Some(item.component.temperature)
    }

    /// Mixing, rising, shaping and proofing.
    fn dough_stages(&self, input: &RunInput) -> Vec<Stage> {
        let at = self.rises.temperatures;
        let stage = |kind, starts, ends, lasts| Stage {
            kind,
            part: None,
            starts,
            ends,
            lasts,
            is_measured: false,
        };
        let together = self
            .mixing
            .as_ref()
            .map_or(at.mixed, |mixing| mixing.dough.mixed.temperature);
        let mixing = input.heat.mixing.unwrap_or(input.kitchen.mixer.minutes);
        let shaping = shaping_time(input.formula, input.pieces, input.rises.rest);
        vec![
            Stage {
                is_measured: self.dough_basis == DoughBasis::Measured,
                ..stage(StageKind::Mix, together, at.mixed, [mixing; 3])
            },
            stage(
                StageKind::Bulk,
                at.mixed,
                at.risen,
                between(&self.rises.bulk, input.rises.bulk.time),
            ),
            stage(StageKind::Shape, at.risen, at.shaped, [shaping; 3]),
            stage(
                StageKind::Proof,
                at.shaped,
                at.proofed,
                between(&self.rises.proof, input.rises.proof.time),
            ),
        ]
    }
}

/// At the soonest, most likely, at the latest; the stated time where a rise cannot be worked out.
pub(crate) fn between(risen: &Result<Risen, RiseError>, stated: Minutes) -> [Minutes; 3] {
    match risen {
        Ok(risen) => [risen.soonest, risen.due, risen.latest.unwrap_or(risen.due)],
        Err(_) => [stated; 3],
    }
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
