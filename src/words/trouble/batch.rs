//! What keeps a batch from being worked out, in words.

use super::Trouble;
use super::told::OFF_SCALE;
use crate::engine::batch::BatchError;
use crate::engine::quantity::NoSuchDivision;
use crate::words::manner::Manner;
use crate::words::write;

impl Trouble for BatchError {
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::NoFlour => "The formula holds no flour, so flour on hand says nothing about the \
                              batch. Add a flour, or ask in another way."
                .to_owned(),
            Self::NoDough => {
                "The formula’s dough weighs nothing yet. Give its ingredients their weights."
                    .to_owned()
            }
            Self::NotInFormula { .. } => {
                "The ingredient on hand is no longer in the formula. Choose another.".to_owned()
            }
            Self::NoneInFormula { .. } => "The formula takes nothing of the ingredient on hand. \
                                           Choose another, or give it a weight."
                .to_owned(),
            Self::LossesTakeAll { residue, share, .. } => format!(
                "The losses, {} and {}, take all of the dough. Lower them.",
                write::mass(*residue, manner),
                write::share(*share, manner)
            ),
            Self::TooLittleToDivide {
                dough,
                pieces,
                division,
            } => format!(
                "There is too little dough, {}, for {} pieces on a scale that steps by {}. Take fewer \
                 pieces or a finer scale.",
                write::mass(*dough, manner),
                write::count(pieces.get(), manner),
                write::division(*division, manner)
            ),
            Self::OffScale(_) => OFF_SCALE.to_owned(),
        }
    }
}

impl Trouble for NoSuchDivision {
    fn sentence(&self, manner: Manner) -> String {
        super::told::no_such_division(manner)
    }
}
