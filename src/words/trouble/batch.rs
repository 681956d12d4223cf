//! What keeps a batch from being worked out, in words.

use super::Trouble;
use super::told::off_scale;
use crate::engine::batch::BatchError;
use crate::engine::quantity::NoSuchDivision;
use crate::words::{manner::Manner, say, write};

impl Trouble for BatchError {
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::NoFlour => say!(
                "The formula holds no flour, so flour on hand says nothing about the \
                              batch. Add a flour, or ask in another way."
            )
            .to_owned(),
            Self::NoDough => {
                say!("The formula’s dough weighs nothing yet. Give its ingredients their weights.")
                    .to_owned()
            }
            Self::NotInFormula { .. } => {
                say!("The ingredient on hand is no longer in the formula. Choose another.")
                    .to_owned()
            }
            Self::NoneInFormula { .. } => say!(
                "The formula takes nothing of the ingredient on hand. \
                                           Choose another, or give it a weight."
            )
            .to_owned(),
            Self::LossesTakeAll { residue, share, .. } => say!(
                "The losses, {} and {}, take all of the dough. Lower them.",
                write::mass(*residue, manner),
                write::share(*share, manner)
            ),
            Self::TooLittleToDivide {
                dough,
                pieces,
                division,
            } => say!(
                "There is too little dough, {}, for {} pieces on a scale that steps by {}. Take fewer \
                 pieces or a finer scale.",
                write::mass(*dough, manner),
                write::count(pieces.get(), manner),
                write::division(*division, manner)
            ),
            Self::OffScale(_) => off_scale(),
        }
    }
}

impl Trouble for NoSuchDivision {
    fn sentence(&self, manner: Manner) -> String {
        super::told::no_such_division(manner)
    }
}
