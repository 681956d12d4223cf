//! The rises of the day's dough: reference rises as the log has taught them, scaled by the dough.

use super::input::DayInput;
use super::rises::{ReferenceRises, Rises, rises};
use crate::engine::formula::Form;
use crate::engine::learn::LearntFactor;
use crate::engine::quantity::Factor;
use crate::engine::rise::{ReferenceRise, RiseError, YeastActivity, yeast_activity};

/// The dough of the day and the dough of the reference rises.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Doughs {
    /// The dough as it is weighed now.
    pub now: YeastActivity,
    /// The dough of the reference rises.
    pub reference: YeastActivity,
}

/// The rises, with what they are scaled from.
pub(super) struct ExpectedRises {
    pub(super) references: ReferenceRises,
    pub(super) doughs: Option<Doughs>,
    pub(super) rises: Rises,
}

/// The rises of the dough as it is, or as it was really weighed.
pub(super) fn expected_rises(input: &DayInput) -> ExpectedRises {
    let compared = doughs(input).and_then(|doughs| {
        let activity = doughs.map_or(Ok(Factor::ONE), |pair| pair.now.against(&pair.reference))?;
        Ok((doughs, activity))
    });
    let (doughs, activity, error) = match compared {
        Ok((doughs, activity)) => (doughs, activity, None),
        Err(error) => (None, Factor::ONE, Some(error)),
    };
    let references = references(input, activity);
    let formula = &input.sheet.formula;
    let (heat, settings) = (input.heat_settings(), input.rise_settings());
    let mut rises = rises(formula, input.kitchen, &heat, &settings, &references);
    // Without a comparison neither rise of the dough is known.
    if let Some(error) = error {
        rises.bulk = Err(error.clone());
        rises.proof = Err(error);
    }
    ExpectedRises {
        references,
        doughs,
        rises,
    }
}

/// Both doughs; `None` where the dough of the reference rises has not been noted.
fn doughs(input: &DayInput) -> Result<Option<Doughs>, RiseError> {
    let Some(reference) = input.settings.rises.dough else {
        return Ok(None);
    };
    let weighed = input.weighed_formula();
    let formula = weighed.as_ref().unwrap_or(&input.sheet.formula);
    let now = yeast_activity(formula, Form::AsMade)?;
    Ok(Some(Doughs { now, reference }))
}

/// The formula's stated rises, scaled by the factors that the log has taught.
fn references(input: &DayInput, yeast_activity: Factor) -> ReferenceRises {
    let stated = ReferenceRises::stated(&input.settings.rises);
    let learnt = |factor: &Option<LearntFactor>, reference: ReferenceRise| {
        let factor = factor.as_ref();
        factor.map_or(reference, |factor| factor.anchor(reference))
    };
    ReferenceRises {
        bulk: learnt(&input.learnt.bulk, stated.bulk),
        proof: learnt(&input.learnt.proof, stated.proof),
        yeast_activity,
    }
}
