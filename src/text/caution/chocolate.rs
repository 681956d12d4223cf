//! What to know about a filling or a syrup.

use super::Advice;
use super::advice::{COMMON_PRACTICE, celsius_range, grams};
use crate::engine::chocolate::{
    Fill, FillCaution, MinimumWater, Perishability, SyrupCaution, WaterActivity,
};
use crate::engine::quantity::Share;
use crate::text::{format, format_options::FormatOptions, tr, tr_noop};

/// The rule for thickness, and what it leaves out.
const KRIEGER: &str =
    tr_noop!("Krieger and Dougherty, Trans. Soc. Rheol. 3 (1959) 137 (from memory)");

/// The handbook rule for water in chocolate.
const CORRIHER: &str = tr_noop!("Corriher, BakeWise (2008) (from memory); common practice");

/// What a caution about a filling says.
#[must_use]
pub fn fill(caution: FillCaution, fill: &Fill, options: FormatOptions) -> Advice {
    match caution {
        FillCaution::Heavy => Advice::new(
            tr!(
                "The filling is {first} of the dough. Above {second} seams open and the middle bakes late.",
                first = format::share(fill.of_dough, options),
                second = format::share(
                    Share::from_fraction(Fill::HEAVY).unwrap_or(Share::NONE),
                    options
                )
            ),
            tr!(
                "Take {first} for a piece of {second}, seal the seams well, and test the middle.",
                first = format::mass_range(grams(7.0), grams(10.0), options),
                second = format::mass(grams(85.0), options)
            ),
            COMMON_PRACTICE,
        ),
    }
}

/// What a caution about a syrup says.
#[must_use]
#[allow(clippy::too_many_lines, reason = "one arm for each caution")]
pub fn syrup(caution: &SyrupCaution, options: FormatOptions) -> Advice {
    match *caution {
        SyrupCaution::WithinAFactorOfTwo => Advice::new(
            tr!("The true thickness may be half of this figure, or twice it."),
            tr!(
                "Hold a little liquid back, stir, and look at how it runs before you pour the rest."
            ),
            KRIEGER,
        ),
        SyrupCaution::OutsideTable { temperature } => Advice::new(
            tr!(
                "At {first} the figures reach past their tables, which run from {second}.",
                first = format::temperature(temperature, options),
                second = celsius_range(SyrupCaution::TABLE_FROM, SyrupCaution::TABLE_TO, options)
            ),
            tr!("Take them as a hint only."),
            tr!("Génotelle’s equation for sugared water, range of its tables"),
        ),
        SyrupCaution::SetsAtThisTemperature { temperature } => Advice::new(
            tr!(
                "At {value} cocoa butter begins to set, so the syrup goes on stiffening.",
                value = format::temperature(temperature, options)
            ),
            tr!(
                "Use it at once, or keep it at {value}.",
                value = celsius_range(35.0, 40.0, options)
            ),
            tr!("Wille and Lutton, JAOCS 43 (1966) 491 (from memory)"),
        ),
        SyrupCaution::SugarLeft { undissolved } => Advice::new(
            tr!(
                "The water cannot take up {value} of the sugar, which stays grainy.",
                value = format::mass(undissolved, options)
            ),
            tr!("Add water, or serve it warm."),
            tr!("solubility of sugar in water, by the table chosen"),
        ),
        SyrupCaution::NearSeizing { slack } => Advice::new(
            tr!(
                "It is near seizing: only {value} of the room between its grains is left.",
                value = format::share(slack, options)
            ),
            tr!(
                "Pour all of the liquid at once, warm, and stir; if it turns to paste, stir in more \
             warm liquid."
            ),
            KRIEGER,
        ),
        SyrupCaution::Alcohol { alcohol } => Advice::new(
            tr!(
                "The {value} of alcohol in it is left out of these figures.",
                value = format::mass(alcohol, options)
            ),
            tr!("Try a small amount first, keep it from flames, and tell everyone who eats."),
            COMMON_PRACTICE,
        ),
    }
}

/// What the handbook rule says where a syrup does not meet it; `None` where it does.
#[must_use]
pub fn minimum_water(rule: &MinimumWater, options: FormatOptions) -> Option<Advice> {
    (!rule.met()).then(|| {
        Advice::new(
            tr!("The handbook rule asks for {first} of water with chocolate of {second} cocoa; this has {third}.", first = format::mass(rule.needed, options), second = format::share(rule.cocoa, options), third = format::mass(rule.brought, options)),
            tr!("The rule is on the safe side: with less it may still flow, but pour it warm, all at \
             once."),
            CORRIHER,
        )
    })
}

/// How to store a syrup.
#[must_use]
pub fn keeping(keeping: &WaterActivity, options: FormatOptions) -> Advice {
    let free = format::plain(keeping.water_activity.fraction(), 2, options.numbers);
    let (means, to_do) = match keeping.keeps_as {
        Perishability::FreshFood => (
            tr!(
                "Its water is free enough (water activity {free}) for germs to grow.",
                free = free
            ),
            tr!(
                "Make what you use today; keep the rest covered in the fridge for two or three days."
            ),
        ),
        Perishability::MouldsSlowly => (
            tr!(
                "Its water is bound (water activity {free}): germs rest, moulds do not.",
                free = free
            ),
            tr!("Keep it covered and cool, and throw it away at the first spot."),
        ),
    };
    Advice::new(
        means,
        to_do,
        tr!("21 CFR 114.3 (from memory); Norrish, J. Food Technol. 1 (1966) 25"),
    )
}

/// What a caution about a syrup is about.
#[must_use]
pub fn syrup_title(doubt: SyrupCaution) -> &'static str {
    match doubt {
        SyrupCaution::WithinAFactorOfTwo => tr!("How far to trust the thickness"),
        SyrupCaution::OutsideTable { .. } => tr!("Outside the tables"),
        SyrupCaution::SetsAtThisTemperature { .. } => tr!("It stiffens as it stands"),
        SyrupCaution::SugarLeft { .. } => tr!("Grainy"),
        SyrupCaution::NearSeizing { .. } => tr!("Near seizing"),
        SyrupCaution::Alcohol { .. } => tr!("Alcohol"),
    }
}
