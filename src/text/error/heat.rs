//! Messages for errors of heat.

use super::ErrorText;
use super::reported::off_scale;
use crate::engine::heat::HeatError;
use crate::text::{format, format_options::FormatOptions, tr};

impl ErrorText for HeatError {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, options: FormatOptions) -> String {
        let degrees = |temperature| format::temperature(temperature, options);
        match self {
            Self::EmptyBowl => {
                tr!("There is nothing in the bowl yet. Give the ingredients their weights.")
                    .to_owned()
            }
            Self::UnknownFood => tr!(
                "Nothing is known of what this food is made of. Fill in its \
                                  label, or choose another."
            )
            .to_owned(),
            Self::IceLeft => tr!(
                "There is more ice than can melt: some would be left in the dough. \
                              Take less ice."
            )
            .to_owned(),
            Self::OffScale(_) => off_scale(),
            Self::NoLiquid => tr!(
                "There is no liquid here whose temperature could be chosen. Add \
                               water or milk to the final dough."
            )
            .to_owned(),
            Self::NoPart => {
                tr!("This part is no longer in the formula. Choose another part.").to_owned()
            }
            Self::NoFlour => tr!("There is no flour in the paste. Add some first.").to_owned(),
            Self::NoPaste => {
                tr!("This part is no paste: it lacks flour, or liquid to pour on it. Add it first.")
                    .to_owned()
            }
            Self::NoChocolate => {
                tr!("There is no chocolate here to melt. Give it a weight.").to_owned()
            }
            Self::NothingPoured => {
                tr!("Nothing is poured on the chocolate. Add a liquid to this part.").to_owned()
            }
            Self::NoTarget => tr!("Nothing is cooled or warmed at this step.").to_owned(),
            Self::NoKnownPiece => {
                tr!("The piece of the bake that worked weighs nothing yet. Give its weight.")
                    .to_owned()
            }
            Self::Gained { before, after } => tr!(
                "The paste weighs {first} after cooking and {second} before. It cannot gain: weigh it again, \
                 and take the bowl off.",
                first = format::mass(*after, options),
                second = format::mass(*before, options)
            ),
            Self::NeverReached {
                target,
                surroundings,
            } => tr!(
                "However long it waits, {first} around it never brings it to {second}. Choose another place \
                 or another temperature.",
                first = degrees(*surroundings),
                second = degrees(*target)
            ),
            Self::OvenTooCool { oven, core } => tr!(
                "An oven at {first} never brings the middle to {second}. Set it hotter.",
                first = degrees(*oven),
                second = degrees(*core)
            ),
            Self::EmptyProgramme => {
                tr!("The baking programme has no minutes in it yet. Add a phase.").to_owned()
            }
        }
    }
}
