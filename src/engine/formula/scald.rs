//! A scald: what water a paste has for its starch.

use super::{Form, Formula, FormulaError, PartKind};
use crate::engine::quantity::{Mass, Share};
use crate::engine::working::{WorkingLine, given};

/// The water and the starch of one paste.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scald {
    /// All its water by composition, flour's own included, before any steam is lost.
    pub water: Mass,
    /// The steam that is taken off.
    pub steam: Mass,
    /// Its starch.
    pub starch: Mass,
    /// So many grams of water to a gram of starch.
    pub water_to_starch: Share,
}

/// The water and the starch of a paste; `None` where no starch is known of.
///
/// # Errors
/// [`FormulaError::NoSuchPart`]; [`FormulaError::NotMadeAhead`] where it is no paste.
pub fn scald(formula: &Formula, part: usize, form: Form) -> Result<Option<Scald>, FormulaError> {
    let own = formula
        .parts
        .get(part)
        .ok_or(FormulaError::NoSuchPart { part })?;
    if own.kind != PartKind::Paste {
        return Err(FormulaError::NotMadeAhead { part });
    }
    let (mut water, mut starch) = (Mass::ZERO, Mass::ZERO);
    for line in &own.lines {
        let (mass, made_of) = (form.mass(line), line.food.composition());
        water = water + mass.component(made_of.water);
        starch = starch + mass.component(made_of.starch);
    }
    let steam = match form {
        Form::AsMade => own.steam,
        Form::AsWritten => Mass::ZERO,
    };
    Ok(water
        .less(steam)
        .share_of(starch)
        .map(|water_to_starch| Scald {
            water,
            steam,
            starch,
            water_to_starch,
        }))
}

impl Scald {
    /// The working of the ratio, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        vec![WorkingLine {
            rule: "max(W − S, 0) / X".into(),
            with: vec![
                given("W", "all water of the paste", self.water.grams(), "g"),
                given("S", "steam lost", self.steam.grams(), "g"),
                given("X", "its starch", self.starch.grams(), "g"),
            ],
            result: given("r", "water to starch", self.water_to_starch.fraction(), ""),
            source: "composition of each ingredient".into(),
        }]
    }
}
