//! Filling: how much dough tins take, and whether what goes in is too much or too little.

use super::error::TinError;
use super::room::Room;
use super::shape::Tins;
use super::usual::UsualRoom;
use crate::engine::formula::Bread;
use crate::engine::quantity::{Mass, SpecificVolume, Volume};

/// Whether so much dough suits a tin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Fullness {
    /// It runs over the rim or strains against the lid: so much less dough in each tin is usual.
    TooFull {
        /// At least so much is too much.
        over: Mass,
    },
    /// As is usual.
    Right,
    /// It stays low, or the lid shapes nothing: so much more dough in each tin is usual.
    TooEmpty {
        /// At least so much is missing.
        short: Mass,
    },
}

/// So many tins, the dough they take, and how what is there suits them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Filling {
    /// The tins.
    pub tins: Tins,
    /// Room in one tin.
    pub volume: Volume,
    /// What is usual.
    pub usual: UsualRoom,
    /// The room a gram is given where tins are filled as wished.
    pub wished: SpecificVolume,
    /// Dough for one tin, filled as wished.
    pub each: Mass,
    /// Dough for all tins, filled as wished.
    pub all: Mass,
    /// The dough there is for all tins; none where it was not asked.
    pub there: Option<Mass>,
    /// The dough there is for one.
    pub there_each: Option<Mass>,
    /// The room a gram of it has; none where that is beyond every tin.
    pub found: Option<SpecificVolume>,
    /// How it suits.
    pub fullness: Option<Fullness>,
}

/// How much dough goes into the tins, and whether the dough `there` suits them.
///
/// Dough for a tin = its volume / (room for a gram), cm³ over cm³/g. The usual room goes by the
/// kind of bread; `wished` overrules it.
///
/// Source: common practice; see [`UsualRoom`].
///
/// # Errors
/// [`TinError`] for a tray, a ring without room, dough that weighs nothing, or a tonne of it.
pub fn filling(
    tins: Tins,
    bread: Bread,
    wished: Option<SpecificVolume>,
    there: Option<Mass>,
) -> Result<Filling, TinError> {
    let volume = Room::of(&tins.tin)?.volume()?;
    let usual = UsualRoom::of(bread, &tins.tin);
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

fn fullness(volume: Volume, usual: UsualRoom, there: Mass) -> Result<Fullness, TinError> {
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
