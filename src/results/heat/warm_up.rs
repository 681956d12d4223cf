//! Standing out: how long each cold paste or preferment takes to warm in this room.

use super::mixer_load::{LoadSource, mixer_load};
use crate::engine::formula::Formula;
use crate::engine::heat::{Air, HeatError, LiquidUse, stand};
use crate::engine::quantity::{Minutes, Temperature};
use crate::sheet::{HeatSettings, Kitchen};

/// How one of them warms.
#[derive(Clone, Debug, PartialEq)]
pub struct Warming {
    /// Which part.
    pub part: usize,
    /// How warm it comes out.
    pub starts: Temperature,
    /// How long until it is this warm on the whole, once stirred.
    pub times: Vec<(Temperature, Minutes)>,
}

/// The temperatures whose times are told, °C.
const TOLD: [f64; 3] = [10.0, 15.0, 20.0];

/// How long each cold paste and preferment must stand in the room, as a ball, to be 10, 15 and
/// 20 °C warm on the whole; those it passes only after a day, or never, are left out.
///
/// # Errors
/// Those of [`mixer_load`].
pub fn warming(formula: &Formula, kitchen: &Kitchen) -> Result<Vec<Warming>, HeatError> {
    let cold = mixer_load(formula, kitchen, &HeatSettings::default())?;
    let mut found = Vec::new();
    for (item, from) in cold.dough.items.iter().zip(&cold.from) {
        let (LiquidUse::Standing(body), LoadSource::Part(part)) = (item.handling, *from) else {
            continue;
        };
        let starts = item.component.temperature;
        if starts >= kitchen.room {
            continue;
        }
        let mut times = Vec::with_capacity(TOLD.len());
        for celsius in TOLD {
            let warm = Temperature::from_celsius(celsius)?;
            if warm > starts
                && let Ok(stood) = stand(&body, starts, Air::still(kitchen.room), warm)
            {
                times.push((warm, stood.minutes));
            }
        }
        found.push(Warming {
            part,
            starts,
            times,
        });
    }
    Ok(found)
}
