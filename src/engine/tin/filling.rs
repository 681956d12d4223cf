//! Filling: how much dough tins take, and whether a batch is too much or too little for them.

use super::capacity::Capacity;
use super::error::TinError;
use super::shape::Tins;
use super::usual::UsualSpecificVolume;
use crate::engine::formula::Bread;
use crate::engine::quantity::{Mass, SpecificVolume, Volume};

/// Whether the dough suits the tin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Fullness {
    /// It runs over the rim or strains against the lid: too much dough.
    TooFull {
        /// The least to take out of each tin.
        over: Mass,
    },
    /// As is usual.
    Right,
    /// It stays low, or the lid shapes nothing: too little dough.
    TooEmpty {
        /// The least to add to each tin.
        short: Mass,
    },
}

/// Tins, the dough they take, and whether the dough of a batch suits them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Filling {
    /// The tins.
    pub tins: Tins,
    /// Room in one tin.
    pub volume: Volume,
    /// What is usual.
    pub usual: UsualSpecificVolume,
    /// The volume for a gram of dough that `each` and `all` go by.
    pub wished: SpecificVolume,
    /// Dough for one tin at `wished`.
    pub each: Mass,
    /// Dough for all tins at `wished`.
    pub all: Mass,
    /// The dough of the batch for all tins, where it is given.
    pub there: Option<Mass>,
    /// The dough of the batch for one tin.
    pub there_each: Option<Mass>,
    /// The volume of tin for a gram of it; none outside the range of a specific volume.
    pub found: Option<SpecificVolume>,
    /// Whether it suits.
    pub fullness: Option<Fullness>,
}

/// How much dough goes into the tins, and whether the dough `there` suits them.
///
/// Dough for a tin = its volume / (volume for a gram), cm³ over cm³/g. The usual volume depends on
/// the kind of bread; `wished` overrides it.
///
/// Source: common practice; see [`UsualSpecificVolume`].
///
/// # Errors
/// [`TinError::NoSides`] for a tray; [`TinError::TubeFillsTin`] for a ring whose tube fills it;
/// [`TinError::NoDough`] when the dough weighs nothing; [`TinError::OffScale`] for a tonne of it.
pub fn filling(
    tins: Tins,
    bread: Bread,
    wished: Option<SpecificVolume>,
    there: Option<Mass>,
) -> Result<Filling, TinError> {
    let volume = Capacity::of(&tins.tin)?.volume()?;
    let usual = UsualSpecificVolume::of(bread, &tins.tin);
    let wished = wished.unwrap_or(usual.taken);
    let each = volume.filled_at(wished)?;
    let count = f64::from(tins.count.get());
    let all = Mass::from_grams(each.grams() * count)?;
    let there_each = there
        .map(|there| Mass::from_grams(there.grams() / count))
        .transpose()?;
    if there_each.is_some_and(|mass| mass <= Mass::ZERO) {
        return Err(TinError::NoDough);
    }
    let found = there_each.and_then(|mass| {
        let room = volume.cubic_centimetres() / mass.grams();
        SpecificVolume::from_cubic_centimetres_per_gram(room).ok()
    });
    let fullness = there_each
        .map(|mass| fullness(volume, usual, mass))
        .transpose()?;
    Ok(Filling {
        tins,
        volume,
        usual,
        wished,
        each,
        all,
        there,
        there_each,
        found,
        fullness,
    })
}

impl Filling {
    /// How far the dough in one tin is from what is usual: what to take out, or to add.
    #[must_use]
    pub fn beyond_usual(&self) -> Mass {
        let there = self.there_each.unwrap_or(self.each);
        let beyond = there.grams() - self.each.grams();
        Mass::from_grams(beyond.abs()).unwrap_or_default()
    }
}

fn fullness(volume: Volume, usual: UsualSpecificVolume, there: Mass) -> Result<Fullness, TinError> {
    let most = volume.filled_at(usual.least)?;
    let least = volume.filled_at(usual.most)?;
    Ok(if there > most {
        Fullness::TooFull {
            over: there.less(most),
        }
    } else if there < least {
        Fullness::TooEmpty {
            short: least.less(there),
        }
    } else {
        Fullness::Right
    })
}
