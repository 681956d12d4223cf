//! The flow curve in words.

use crate::engine::chocolate::{Flow, FlowCurve, Syrup};
use crate::engine::quantity::{Mass, Share};
use crate::words::{manner::Manner, name, say, write};

/// The flow curve in words: where the syrup stands, and where it seizes.
#[must_use]
pub fn flow_curve(syrup: &Syrup, curve: &FlowCurve, manner: Manner) -> String {
    format!(
        "{} {}",
        stands(syrup, curve, manner),
        seizes(syrup, curve, manner)
    )
}

/// Where the syrup stands.
fn stands(syrup: &Syrup, curve: &FlowCurve, manner: Manner) -> String {
    let at = write::temperature(syrup.temperature, manner);
    let liquid = on_hundred(curve.here.liquid_on_chocolate, manner);
    let hundred = on_hundred(Share::WHOLE, manner);
    match syrup.flow {
        Flow::MeltedOnly => {
            say!(
                "At {at}, no water added: melted chocolate, which flows in its own fat.",
                at
            )
        }
        Flow::Seized => {
            say!(
                "At {at}, {liquid} of liquid to {hundred} of chocolate: it seizes.",
                at,
                liquid,
                hundred
            )
        }
        Flow::Flows {
            thickness,
            handling,
        } => say!(
            "At {at}, {liquid} of liquid to {hundred} of chocolate: {}; it {}.",
            at,
            liquid,
            hundred,
            write::viscosity(thickness, manner),
            name::handling_looks(handling)
        ),
    }
}

/// Where it seizes.
fn seizes(syrup: &Syrup, curve: &FlowCurve, manner: Manner) -> String {
    match (curve.seizes_below, syrup.flow) {
        (None, _) => say!("It seizes with any amount of this liquid.").to_owned(),
        (Some(below), _) if below <= Share::NONE => {
            say!("It does not seize with any amount of this liquid.").to_owned()
        }
        (Some(below), Flow::Seized) => say!("It flows from {} on.", on_hundred(below, manner)),
        (Some(below), Flow::MeltedOnly) => {
            say!(
                "With less than {} of liquid it would seize.",
                on_hundred(below, manner)
            )
        }
        (Some(below), Flow::Flows { .. }) => {
            say!("It seizes below {}.", on_hundred(below, manner))
        }
    }
}

/// So much to 100 g.
fn on_hundred(share: Share, manner: Manner) -> String {
    Mass::from_grams(share.percent()).map_or_else(
        |_| say!("more than a tonne").to_owned(),
        |mass| write::mass(mass, manner),
    )
}
