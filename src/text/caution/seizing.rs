//! Seizing: how near a syrup is, and what to do once it is there.

use super::Advice;
use crate::engine::chocolate::{Flow, Syrup};
use crate::engine::quantity::Mass;
use crate::text::{format, format_options::FormatOptions, tr};

/// What a syrup that seizes asks for; `None` where it does not.
#[must_use]
pub fn seized(syrup: &Syrup, options: FormatOptions) -> Option<Advice> {
    if syrup.flow != Flow::Seized {
        return None;
    }
    let to_do = match syrup.least_liquid {
        Some(least) => tr!(
            "Pour at least {first} of this liquid onto {second} of chocolate, warm and all at once, and stir \
             until it is smooth.",
            first = format::mass(least, options),
            second = format::mass(syrup.chocolate, options)
        ),
        None => {
            tr!("No amount of this liquid makes it flow. Thin it with water or milk.").to_owned()
        }
    };
    Some(Advice::new(
        tr!("It seizes: with so little liquid the chocolate turns to a stiff, grainy paste."),
        to_do,
        tr!(
            "packing of grains, Krieger and Dougherty, Trans. Soc. Rheol. 3 (1959) 137 (from memory)"
        ),
    ))
}

/// How far a syrup is from seizing, in a sentence.
#[must_use]
pub fn from_seizing(syrup: &Syrup, options: FormatOptions) -> String {
    let mass = |mass| format::mass(mass, options);
    let Some(least) = syrup.least_liquid else {
        return tr!("It seizes, however much of this liquid is poured.").to_owned();
    };
    match syrup.beyond_seizing() {
        _ if least <= Mass::ZERO => tr!("It flows even with none of this liquid.").to_owned(),
        _ if syrup.flow == Flow::MeltedOnly => tr!(
            "Melted by itself it flows; with less than {value} of liquid it would seize.",
            value = mass(least)
        ),
        Some(beyond) => tr!(
            "It seizes below {first} of liquid, and has {second} more than that.",
            first = mass(least),
            second = mass(beyond)
        ),
        None => tr!(
            "It seizes below {first} of liquid, and {second} is missing.",
            first = mass(least),
            second = mass(least.less(syrup.liquid))
        ),
    }
}
