//! What keeps tins, nutrition, shopping and a class from being worked out, in words.

use super::ErrorText;
use super::reported::off_scale;
use crate::engine::class::ClassError;
use crate::engine::nutrition::NutritionError;
use crate::engine::shopping::ShoppingError;
use crate::engine::tin::TinError;
use crate::text::{format, format_options::FormatOptions, tr};

impl ErrorText for TinError {
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::NoSides => tr!(
                "A flat tray has no sides, so nothing says how much dough it holds. \
                              Ask for pieces and their weight instead."
            )
            .to_owned(),
            Self::BottomOverRim => tr!(
                "The bottom is larger than the rim. Measure both again, the rim first, or leave this \
                 empty to have it as the rim."
            )
            .to_owned(),
            Self::TubeFillsTin => tr!(
                "The tube is as wide as the tin, so there is no room for dough. \
                                   Measure both again."
            )
            .to_owned(),
            Self::NoDough => {
                tr!("There is no dough to put in. Give the batch a weight.").to_owned()
            }
            Self::TooManyPieces { pieces, most } => tr!(
                "{first} pieces are more than can be laid out here, {second}. Take more tins.",
                first = format::count(pieces.get(), options),
                second = format::count(*most, options)
            ),
            Self::OffScale(_) => off_scale(),
        }
    }
}

impl ErrorText for NutritionError {
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::MoreThanWater { lost, water } => tr!(
                "The oven would take {first}, but only {second} of water reaches it. Lower the baking loss.",
                first = format::mass(*lost, options),
                second = format::mass(*water, options)
            ),
            Self::NothingLeft => {
                tr!("Nothing is left to eat. Give the ingredients their weights.").to_owned()
            }
            Self::OffScale(_) => off_scale(),
        }
    }
}

impl ErrorText for ShoppingError {
    fn sentence(&self, _: FormatOptions) -> String {
        match self {
            Self::EmptyPack { name } => {
                tr!(
                    "A pack of “{name}” holds nothing. Type what is printed on it.",
                    name = name
                )
            }
            Self::OffScale(_) => off_scale(),
        }
    }
}

impl ErrorText for ClassError {
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::Batch(error) => error.sentence(options),
            Self::TooManyLoads { loads, most } => tr!(
                "That would be {first} oven loads; {second} are the most for one class. Take fewer loaves, or \
                 say how many the oven really holds.",
                first = format::count(*loads, options),
                second = format::count(*most, options)
            ),
            Self::OffScale(_) => off_scale(),
        }
    }
}
