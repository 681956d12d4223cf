//! Seizing: how near a syrup is, and what to do once it is there.

use super::Advice;
use crate::engine::chocolate::{Flow, Syrup};
use crate::engine::quantity::Mass;
use crate::words::{manner::Manner, say, write};

/// What a syrup that seizes asks for; `None` where it does not.
#[must_use]
pub fn seized(syrup: &Syrup, manner: Manner) -> Option<Advice> {
    if syrup.flow != Flow::Seized {
        return None;
    }
    let to_do = match syrup.least_liquid {
        Some(least) => say!(
            "Pour at least {} of this liquid onto {} of chocolate, warm and all at once, and stir \
             until it is smooth.",
            write::mass(least, manner),
            write::mass(syrup.chocolate, manner)
        ),
        None => {
            say!("No amount of this liquid makes it flow. Thin it with water or milk.").to_owned()
        }
    };
    Some(Advice::new(
        say!("It seizes: with so little liquid the chocolate turns to a stiff, grainy paste."),
        to_do,
        say!(
            "packing of grains, Krieger and Dougherty, Trans. Soc. Rheol. 3 (1959) 137 (from memory)"
        ),
    ))
}

/// How far a syrup is from seizing, in a sentence.
#[must_use]
pub fn from_seizing(syrup: &Syrup, manner: Manner) -> String {
    let mass = |mass| write::mass(mass, manner);
    let Some(least) = syrup.least_liquid else {
        return say!("It seizes, however much of this liquid is poured.").to_owned();
    };
    match syrup.beyond_seizing() {
        _ if least <= Mass::ZERO => say!("It flows even with none of this liquid.").to_owned(),
        _ if syrup.flow == Flow::MeltedOnly => say!(
            "Melted by itself it flows; with less than {} of liquid it would seize.",
            mass(least)
        ),
        Some(beyond) => say!(
            "It seizes below {} of liquid, and has {} more than that.",
            mass(least),
            mass(beyond)
        ),
        None => say!(
            "It seizes below {} of liquid, and {} is missing.",
            mass(least),
            mass(least.less(syrup.liquid))
        ),
    }
}
