//! What keeps a filling or a syrup from being worked out, in words.

use super::ErrorText;
use super::reported::off_scale;
use crate::engine::chocolate::ChocolateError;
use crate::results::chocolate::SetError;
use crate::text::{format, format_options::FormatOptions, tr};

impl ErrorText for ChocolateError {
    fn sentence(&self, options: FormatOptions) -> String {
        let thick = |viscosity| format::viscosity(viscosity, options);
        match self {
            Self::NoChocolate => {
                tr!("There is no chocolate here yet. Add one and give it a weight.").to_owned()
            }
            Self::NoDough => {
                tr!("A piece of dough weighs nothing here. Give the pieces their weight first.")
                    .to_owned()
            }
            Self::NothingLeft { stays } => tr!(
                "With {value} staying in bag and bowl nothing reaches the bread. Lower that share.",
                value = format::share(*stays, options)
            ),
            Self::NoWater => tr!(
                "This liquid brings no water, so chocolate cannot be thinned with it \
                              in this way. Add water, milk or cream."
            )
            .to_owned(),
            Self::TooThin {
                wished,
                thinnest: Some((thinnest, mass)),
            } => tr!(
                "This liquid cannot thin the chocolate to {first}. The thinnest is {second}, with {third} of it. \
                 Ask for that, or use a thinner liquid.",
                first = thick(*wished),
                second = thick(*thinnest),
                third = format::mass(*mass, options)
            ),
            Self::TooThin { thinnest: None, .. } => {
                tr!("With this liquid the chocolate seizes, however \
                                                    much is poured. Use water or milk.")
                .to_owned()
            }
            Self::TooThick { wished, thickest } => tr!(
                "This chocolate cannot be as thick as {first} without seizing. Ask for {second} or thinner.",
                first = thick(*wished),
                second = thick(*thickest)
            ),
            Self::OffScale(_) => off_scale(),
        }
    }
}

impl ErrorText for SetError {
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::Chocolate(error) => error.sentence(options),
            Self::Formula(error) => error.sentence(options),
        }
    }
}
