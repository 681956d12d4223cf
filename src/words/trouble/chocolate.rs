//! What keeps a filling or a syrup from being worked out, in words.

use super::Trouble;
use super::told::off_scale;
use crate::engine::chocolate::ChocolateError;
use crate::words::{manner::Manner, say, write};

impl Trouble for ChocolateError {
    fn sentence(&self, manner: Manner) -> String {
        let thick = |viscosity| write::viscosity(viscosity, manner);
        match self {
            Self::NoChocolate => {
                say!("There is no chocolate here yet. Add one and give it a weight.").to_owned()
            }
            Self::NoDough => {
                say!("A piece of dough weighs nothing here. Give the pieces their weight first.")
                    .to_owned()
            }
            Self::NothingLeft { stays } => say!(
                "With {} staying in bag and bowl nothing reaches the bread. Lower that share.",
                write::share(*stays, manner)
            ),
            Self::NoWater => say!(
                "This liquid brings no water, so chocolate cannot be thinned with it \
                              in this way. Add water, milk or cream."
            )
            .to_owned(),
            Self::TooThin {
                wished,
                thinnest: Some((thinnest, mass)),
            } => say!(
                "This liquid cannot thin the chocolate to {}. The thinnest is {}, with {} of it. \
                 Ask for that, or use a thinner liquid.",
                thick(*wished),
                thick(*thinnest),
                write::mass(*mass, manner)
            ),
            Self::TooThin { thinnest: None, .. } => say!(
                "With this liquid the chocolate seizes, however \
                                                    much is poured. Use water or milk."
            )
            .to_owned(),
            Self::TooThick { wished, thickest } => say!(
                "This chocolate cannot be as thick as {} without seizing. Ask for {} or thinner.",
                thick(*wished),
                thick(*thickest)
            ),
            Self::OffScale(_) => off_scale(),
        }
    }
}
