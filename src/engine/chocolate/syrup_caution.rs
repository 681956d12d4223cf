//! Doubts about a syrup.

use super::blend::Blend;
use crate::engine::quantity::{Mass, Share, Temperature};

/// A doubt about a syrup's figures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SyrupCaution {
    /// Always given: gums, swelling cocoa and the stiffness before flow sets in are left out, so
    /// that the true thickness may be half or twice the figure.
    WithinAFactorOfTwo,
    /// The tables of sugared water run from 10 to 80 °C.
    OutsideTable {
        /// How warm the syrup is.
        temperature: Temperature,
    },
    /// Below about 34 °C cocoa butter begins to set, and the syrup stiffens with time.
    SetsAtThisTemperature {
        /// How warm the syrup is.
        temperature: Temperature,
    },
    /// More sugar than the water takes up: it stays grainy.
    SugarLeft {
        /// Sugar left as grains.
        undissolved: Mass,
    },
    /// Within a tenth of the packing: a few grams less liquid and it seizes.
    NearSeizing {
        /// Room left, as a share of the packing.
        slack: Share,
    },
    /// Alcohol changes how sugar dissolves and how thick the water is; that is left out.
    Alcohol {
        /// Alcohol in all.
        alcohol: Mass,
    },
}

impl SyrupCaution {
    /// Where the tables of sugared water begin, °C.
    pub const TABLE_FROM: f64 = 10.0;
    /// Where they end, °C.
    pub const TABLE_TO: f64 = 80.0;
    /// Melting of cocoa butter's form V, °C. Source: Wille and Lutton, JAOCS 43 (1966) 491 (from
    /// memory).
    pub const COCOA_BUTTER_MELTS: f64 = 33.8;
    /// A slack below this share of the packing is near seizing (an estimate of our own).
    const NEAR: f64 = 0.1;
    /// Alcohol beyond this share of the water is said to be left out (an estimate of our own).
    const ALCOHOL: f64 = 0.02;
}

/// All doubts about a syrup: how warm it is, how much sugar is left as grains in its water, how far
/// it is from being packed, and what it is made of.
pub(super) fn cautions(
    temperature: Temperature,
    sugar_left: Mass,
    slack: Option<Share>,
    all: &Blend,
) -> Vec<SyrupCaution> {
    let t = temperature.celsius();
    let mut cautions = vec![SyrupCaution::WithinAFactorOfTwo];
    if !(SyrupCaution::TABLE_FROM..=SyrupCaution::TABLE_TO).contains(&t) {
        cautions.push(SyrupCaution::OutsideTable { temperature });
    }
    if t < SyrupCaution::COCOA_BUTTER_MELTS {
        cautions.push(SyrupCaution::SetsAtThisTemperature { temperature });
    }
    if sugar_left > Mass::ZERO {
        let undissolved = sugar_left;
        cautions.push(SyrupCaution::SugarLeft { undissolved });
    }
    if let Some(slack) = slack
        && slack.fraction() < SyrupCaution::NEAR
    {
        cautions.push(SyrupCaution::NearSeizing { slack });
    }
    if all.alcohol > SyrupCaution::ALCOHOL * all.water {
        let alcohol = Mass::from_grams(all.alcohol).unwrap_or(Mass::ZERO);
        cautions.push(SyrupCaution::Alcohol { alcohol });
    }
    cautions
}
