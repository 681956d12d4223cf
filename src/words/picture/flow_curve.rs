//! The flow curve in words.

use crate::engine::chocolate::{Flow, FlowCurve, Syrup};
use crate::engine::quantity::{Mass, Share};
use crate::words::manner::Manner;
use crate::words::{name, write};

/// The flow curve in words: where the syrup stands, and where it seizes.
#[must_use]
pub fn flow_curve(syrup: &Syrup, curve: &FlowCurve, manner: Manner) -> String {
    let at = write::temperature(syrup.temperature, manner);
    let liquid = on_hundred(curve.here.liquid_on_chocolate, manner);
    let hundred = on_hundred(Share::WHOLE, manner);
    let here = match syrup.flow {
        Flow::MeltedOnly => {
            format!("At {at}, no water added: melted chocolate, which flows in its own fat.")
        }
        Flow::Seized => {
            format!("At {at}, {liquid} of liquid to {hundred} of chocolate: it seizes.")
        }
        Flow::Flows {
            thickness,
            handling,
        } => format!(
            "At {at}, {liquid} of liquid to {hundred} of chocolate: {}; it {}.",
            write::viscosity(thickness, manner),
            name::handling_looks(handling)
        ),
    };
    let seizes = match (curve.seizes_below, syrup.flow) {
        (None, _) => "It seizes with any amount of this liquid.".to_owned(),
        (Some(below), _) if below <= Share::NONE => {
            "It does not seize with any amount of this liquid.".to_owned()
        }
        (Some(below), Flow::Seized) => format!("It flows from {} on.", on_hundred(below, manner)),
        (Some(below), Flow::MeltedOnly) => {
            format!(
                "With less than {} of liquid it would seize.",
                on_hundred(below, manner)
            )
        }
        (Some(below), Flow::Flows { .. }) => {
            format!("It seizes below {}.", on_hundred(below, manner))
        }
    };
    format!("{here} {seizes}")
}

/// So much to 100 g.
fn on_hundred(share: Share, manner: Manner) -> String {
    Mass::from_grams(share.percent()).map_or_else(
        |_| "more than a tonne".to_owned(),
        |mass| write::mass(mass, manner),
    )
}
