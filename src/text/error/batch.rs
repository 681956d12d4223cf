//! What keeps a batch from being worked out, in words.

use super::ErrorText;
use super::reported::off_scale;
use crate::engine::batch::BatchError;
use crate::engine::quantity::NoSuchDivision;
use crate::text::{format, format_options::FormatOptions, tr};

impl ErrorText for BatchError {
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::NoFlour => tr!(
                "The formula holds no flour, so flour on hand says nothing about the \
                              batch. Add a flour, or ask in another way."
            )
            .to_owned(),
            Self::NoDough => {
                tr!("The formula’s dough weighs nothing yet. Give its ingredients their weights.")
                    .to_owned()
            }
            Self::NotInFormula { .. } => {
                tr!("The ingredient on hand is no longer in the formula. Choose another.")
                    .to_owned()
            }
            Self::NoneInFormula { .. } => {
                tr!("The formula takes nothing of the ingredient on hand. \
                                           Choose another, or give it a weight.")
                .to_owned()
            }
            Self::LossesTakeAll { residue, share, .. } => tr!(
                "The losses, {first} and {second}, take all of the dough. Lower them.",
                first = format::mass(*residue, options),
                second = format::share(*share, options)
            ),
            Self::TooLittleToDivide {
                dough,
                pieces,
                division,
            } => tr!(
                "There is too little dough, {first}, for {second} pieces on a scale that steps by {third}. Take fewer \
                 pieces or a finer scale.",
                first = format::mass(*dough, options),
                second = format::count(pieces.get(), options),
                third = format::division(*division, options)
            ),
            Self::OffScale(_) => off_scale(),
        }
    }
}

impl ErrorText for NoSuchDivision {
    fn sentence(&self, options: FormatOptions) -> String {
        super::reported::no_such_division(options)
    }
}
