//! What keeps tins, nutrition, shopping and a class from being worked out, in words.

use super::Trouble;
use super::told::off_scale;
use crate::engine::class::ClassError;
use crate::engine::nutrition::NutritionError;
use crate::engine::shopping::ShoppingError;
use crate::engine::tin::TinError;
use crate::words::{manner::Manner, say, write};

impl Trouble for TinError {
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::NoSides => say!(
                "A flat tray has no sides, so nothing says how much dough it holds. \
                              Ask for pieces and their weight instead."
            )
            .to_owned(),
            Self::TubeFillsTin => say!(
                "The tube is as wide as the tin, so there is no room for dough. \
                                   Measure both again."
            )
            .to_owned(),
            Self::NoDough => {
                say!("There is no dough to put in. Give the batch a weight.").to_owned()
            }
            Self::TooManyPieces { pieces, most } => say!(
                "{} pieces are more than can be laid out here, {}. Take more tins.",
                write::count(pieces.get(), manner),
                write::count(*most, manner)
            ),
            Self::OffScale(_) => off_scale(),
        }
    }
}

impl Trouble for NutritionError {
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::MoreThanWater { lost, water } => say!(
                "The oven would take {}, but only {} of water reaches it. Lower the baking loss.",
                write::mass(*lost, manner),
                write::mass(*water, manner)
            ),
            Self::NothingLeft => {
                say!("Nothing is left to eat. Give the ingredients their weights.").to_owned()
            }
            Self::OffScale(_) => off_scale(),
        }
    }
}

impl Trouble for ShoppingError {
    fn sentence(&self, _: Manner) -> String {
        match self {
            Self::EmptyPack { name } => {
                say!(
                    "A pack of “{name}” holds nothing. Type what is printed on it.",
                    name
                )
            }
            Self::OffScale(_) => off_scale(),
        }
    }
}

impl Trouble for ClassError {
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::Batch(error) => error.sentence(manner),
            Self::TooManyLoads { loads, most } => say!(
                "That would be {} oven loads; {} are the most for one class. Take fewer loaves, or \
                 say how many the oven really holds.",
                write::count(*loads, manner),
                write::count(*most, manner)
            ),
            Self::OffScale(_) => off_scale(),
        }
    }
}
