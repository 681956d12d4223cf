//! Standing out: how long each cold paste or preferment takes to warm in this room.

use super::bowl::{Whence, bowlful};
use super::place::Kitchen;
use super::wishes::HeatWishes;
use crate::engine::formula::Formula;
use crate::engine::heat::{Air, Handling, HeatError, stand};
use crate::engine::quantity::{Minutes, Temperature};

/// How one of them warms.
#[derive(Clone, Debug, PartialEq)]
pub struct Warming {
    /// Which stream.
    pub stream: usize,
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
/// Those of [`bowlful`].
pub fn warming(formula: &Formula, kitchen: &Kitchen) -> Result<Vec<Warming>, HeatError> {
    let cold = bowlful(formula, kitchen, &HeatWishes::default())?;
    let mut found = Vec::new();
    for (item, from) in cold.dough.items.iter().zip(&cold.from) {
        let (Handling::Standing(body), Whence::Stream(stream)) = (item.handling, *from) else {
            continue;
        };
        let starts = item.part.temperature;
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
            stream,
            starts,
            times,
        });
    }
    Ok(found)
}
