//! What to know about a filling or a syrup.

use super::Advice;
use super::advice::{COMMON_PRACTICE, celsius_range, grams};
use crate::engine::chocolate::{Fill, FillCaution, Keeping, KeepsAs, MinimumWater, SyrupCaution};
use crate::engine::quantity::Share;
use crate::words::{manner::Manner, message, say, write};

/// The rule for thickness, and what it leaves out.
const KRIEGER: &str =
    message!("Krieger and Dougherty, Trans. Soc. Rheol. 3 (1959) 137 (from memory)");

/// The handbook rule for water in chocolate.
const CORRIHER: &str = message!("Corriher, BakeWise (2008) (from memory); common practice");

/// What a caution about a filling says.
#[must_use]
pub fn fill(caution: FillCaution, fill: &Fill, manner: Manner) -> Advice {
    match caution {
        FillCaution::Heavy => Advice::new(
            say!(
                "The filling is {} of the dough. Above {} seams open and the middle bakes late.",
                write::share(fill.of_dough, manner),
                write::share(
                    Share::from_fraction(Fill::HEAVY).unwrap_or(Share::NONE),
                    manner
                )
            ),
            say!(
                "Take {} for a piece of {}, seal the seams well, and test the middle.",
                write::mass_range(grams(7.0), grams(10.0), manner),
                write::mass(grams(85.0), manner)
            ),
            COMMON_PRACTICE,
        ),
    }
}

/// What a caution about a syrup says.
#[must_use]
#[allow(clippy::too_many_lines, reason = "one arm for each caution")]
pub fn syrup(caution: &SyrupCaution, manner: Manner) -> Advice {
    match *caution {
        SyrupCaution::WithinAFactorOfTwo => Advice::new(
            say!("The true thickness may be half of this figure, or twice it."),
            say!(
                "Hold a little liquid back, stir, and look at how it runs before you pour the rest."
            ),
            KRIEGER,
        ),
        SyrupCaution::OutsideTable { temperature } => Advice::new(
            say!(
                "At {} the figures reach past their tables, which run from {}.",
                write::temperature(temperature, manner),
                celsius_range(SyrupCaution::TABLE_FROM, SyrupCaution::TABLE_TO, manner)
            ),
            say!("Take them as a hint only."),
            say!("Génotelle’s equation for sugared water, range of its tables"),
        ),
        SyrupCaution::SetsAtThisTemperature { temperature } => Advice::new(
            say!(
                "At {} cocoa butter begins to set, so the syrup goes on stiffening.",
                write::temperature(temperature, manner)
            ),
            say!(
                "Use it at once, or keep it at {}.",
                celsius_range(35.0, 40.0, manner)
            ),
            say!("Wille and Lutton, JAOCS 43 (1966) 491 (from memory)"),
        ),
        SyrupCaution::SugarLeft { undissolved } => Advice::new(
            say!(
                "The water cannot take up {} of the sugar, which stays grainy.",
                write::mass(undissolved, manner)
            ),
            say!("Add water, or serve it warm."),
            say!("solubility of sugar in water, by the table chosen"),
        ),
        SyrupCaution::NearSeizing { slack } => Advice::new(
            say!(
                "It is near seizing: only {} of the room between its grains is left.",
                write::share(slack, manner)
            ),
            say!(
                "Pour all of the liquid at once, warm, and stir; if it turns to paste, stir in more \
             warm liquid."
            ),
            KRIEGER,
        ),
        SyrupCaution::Alcohol { alcohol } => Advice::new(
            say!(
                "The {} of alcohol in it is left out of these figures.",
                write::mass(alcohol, manner)
            ),
            say!("Try a small amount first, keep it from flames, and tell everyone who eats."),
            COMMON_PRACTICE,
        ),
    }
}

/// What the handbook rule says where a syrup does not meet it; `None` where it does.
#[must_use]
pub fn minimum_water(rule: &MinimumWater, manner: Manner) -> Option<Advice> {
    (!rule.met()).then(|| {
        Advice::new(
            say!("The handbook rule asks for {} of water with chocolate of {} cocoa; this has {}.", write::mass(rule.needed, manner), write::share(rule.cocoa, manner), write::mass(rule.brought, manner)),
            say!("The rule is on the safe side: with less it may still flow, but pour it warm, all at \
             once."),
            CORRIHER,
        )
    })
}

/// How a syrup must be kept.
#[must_use]
pub fn keeping(keeping: &Keeping, manner: Manner) -> Advice {
    let free = write::plain(keeping.water_activity.fraction(), 2, manner.numbers);
    let (means, to_do) = match keeping.keeps_as {
        KeepsAs::FreshFood => (
            say!(
                "Its water is free enough (water activity {free}) for germs to grow.",
                free
            ),
            say!(
                "Make what you use today; keep the rest covered in the fridge for two or three days."
            ),
        ),
        KeepsAs::MouldsSlowly => (
            say!(
                "Its water is bound (water activity {free}): germs rest, moulds do not.",
                free
            ),
            say!("Keep it covered and cool, and throw it away at the first spot."),
        ),
    };
    Advice::new(
        means,
        to_do,
        say!("21 CFR 114.3 (from memory); Norrish, J. Food Technol. 1 (1966) 25"),
    )
}
