//! The flow curve in words.

use crate::engine::chocolate::{Flow, FlowCurve, Syrup};
use crate::engine::quantity::{Mass, Share};
use crate::text::{format, format_options::FormatOptions, name, tr};

/// The flow curve in words: the point of the syrup, and where it seizes.
#[must_use]
pub fn flow_curve(syrup: &Syrup, curve: &FlowCurve, options: FormatOptions) -> String {
    format!(
        "{} {}",
        stands(syrup, curve, options),
        seizes(syrup, curve, options)
    )
}

/// The point of the syrup.
fn stands(syrup: &Syrup, curve: &FlowCurve, options: FormatOptions) -> String {
    let at = format::temperature(syrup.temperature, options);
    let liquid = on_hundred(curve.here.liquid_on_chocolate, options);
    let hundred = on_hundred(Share::WHOLE, options);
    match syrup.flow {
        Flow::MeltedOnly => {
            tr!(
                "At {at}, no water added: melted chocolate, which flows in its own fat.",
                at = at
            )
        }
        Flow::Seized => {
            tr!(
                "At {at}, {liquid} of liquid to {hundred} of chocolate: it seizes.",
                at = at,
                liquid = liquid,
                hundred = hundred
            )
        }
        Flow::Flows { handling, .. } => tr!(
            "At {at}, {liquid} of liquid to {hundred} of chocolate: it {looks}.",
            at = at,
            liquid = liquid,
            hundred = hundred,
            looks = name::handling_looks(handling)
        ),
    }
}

/// Where it seizes.
fn seizes(syrup: &Syrup, curve: &FlowCurve, options: FormatOptions) -> String {
    match (curve.seizes_below, syrup.flow) {
        (None, _) => tr!("It seizes with any amount of this liquid.").to_owned(),
        (Some(below), _) if below <= Share::NONE => {
            tr!("It does not seize with any amount of this liquid.").to_owned()
        }
        (Some(below), Flow::Seized) => tr!(
            "It flows from {value} on.",
            value = on_hundred(below, options)
        ),
        (Some(below), Flow::MeltedOnly) => {
            tr!(
                "With less than {value} of liquid it would seize.",
                value = on_hundred(below, options)
            )
        }
        (Some(below), Flow::Flows { .. }) => {
            tr!(
                "It seizes below {value}.",
                value = on_hundred(below, options)
            )
        }
    }
}

/// So much to 100 g.
fn on_hundred(share: Share, options: FormatOptions) -> String {
    Mass::from_grams(share.percent()).map_or_else(
        |_| tr!("more than a tonne").to_owned(),
        |mass| format::mass(mass, options),
    )
}
