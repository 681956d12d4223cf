//! What stands in the way of an answer about heat, in words.

use super::Trouble;
use super::told::off_scale;
use crate::engine::heat::HeatError;
use crate::words::{manner::Manner, say, write};

impl Trouble for HeatError {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, manner: Manner) -> String {
        let degrees = |temperature| write::temperature(temperature, manner);
        match self {
            Self::EmptyBowl => {
                say!("There is nothing in the bowl yet. Give the ingredients their weights.")
                    .to_owned()
            }
            Self::UnknownFood => say!(
                "Nothing is known of what this food is made of. Fill in its \
                                  label, or choose another."
            )
            .to_owned(),
            Self::IceLeft => say!(
                "There is more ice than can melt: some would be left in the dough. \
                              Take less ice."
            )
            .to_owned(),
            Self::OffScale(_) => off_scale(),
            Self::NoLiquid => say!(
                "There is no liquid here whose temperature could be chosen. Add \
                               water or milk to the final dough."
            )
            .to_owned(),
            Self::NoFlour => say!("There is no flour in the paste. Add some first.").to_owned(),
            Self::Gained { before, after } => say!(
                "The paste weighs {} after cooking and {} before. It cannot gain: weigh it again, \
                 and take the bowl off.",
                write::mass(*after, manner),
                write::mass(*before, manner)
            ),
            Self::NeverReached {
                target,
                surroundings,
            } => say!(
                "However long it waits, {} around it never brings it to {}. Choose another place \
                 or another temperature.",
                degrees(*surroundings),
                degrees(*target)
            ),
            Self::OvenTooCool { oven, core } => say!(
                "An oven at {} never brings the middle to {}. Set it hotter.",
                degrees(*oven),
                degrees(*core)
            ),
            Self::EmptyProgramme => {
                say!("The baking programme has no minutes in it yet. Add a phase.").to_owned()
            }
        }
    }
}
