//! What keeps a filling or a syrup from being worked out, in words.

use super::Trouble;
use super::told::OFF_SCALE;
use crate::engine::chocolate::ChocolateError;
use crate::words::manner::Manner;
use crate::words::write;

impl Trouble for ChocolateError {
    fn sentence(&self, manner: Manner) -> String {
        let thick = |viscosity| write::viscosity(viscosity, manner);
        match self {
            Self::NoChocolate => {
                "There is no chocolate here yet. Add one and give it a weight.".to_owned()
            }
            Self::NoDough => {
                "A piece of dough weighs nothing here. Give the pieces their weight first."
                    .to_owned()
            }
            Self::NothingLeft { stays } => format!(
                "With {} staying in bag and bowl nothing reaches the bread. Lower that share.",
                write::share(*stays, manner)
            ),
            Self::NoWater => "This liquid brings no water, so chocolate cannot be thinned with it \
                              in this way. Add water, milk or cream."
                .to_owned(),
            Self::TooThin {
                wished,
                thinnest: Some((thinnest, mass)),
            } => format!(
                "This liquid cannot thin the chocolate to {}. The thinnest is {}, with {} of it. \
                 Ask for that, or use a thinner liquid.",
                thick(*wished),
                thick(*thinnest),
                write::mass(*mass, manner)
            ),
            Self::TooThin { thinnest: None, .. } => {
                "With this liquid the chocolate seizes, however \
                                                    much is poured. Use water or milk."
                    .to_owned()
            }
            Self::TooThick { wished, thickest } => format!(
                "This chocolate cannot be as thick as {} without seizing. Ask for {} or thinner.",
                thick(*wished),
                thick(*thickest)
            ),
            Self::OffScale(_) => OFF_SCALE.to_owned(),
        }
    }
}
