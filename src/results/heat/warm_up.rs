//! Standing out: how long each cold paste or preferment takes to warm in this room.

use super::mixer_load::{LoadSource, mixer_load};
use crate::engine::formula::Formula;
use crate::engine::heat::{Air, HeatError, LiquidUse, stand};
use crate::engine::quantity::{Minutes, Temperature};
use crate::sheet::{HeatSettings, Kitchen};

/// The warming of one of them.
#[derive(Clone, Debug, PartialEq)]
pub struct Warming {
    /// Which part.
    pub part: usize,
    /// Its temperature at the start.
    pub starts: Temperature,
    /// How long until it is this warm on the whole, once stirred.
    pub times: Vec<(Temperature, Minutes)>,
}

/// The temperatures whose times are listed, °C.
const LISTED: [f64; 3] = [10.0, 15.0, 20.0];

/// How long each cold paste and preferment must stand in the room, as a ball, to be 10, 15 and
/// 20 °C warm on the whole; those it passes only after a day, or never, are left out.
///
/// ```
/// use softcrumb::results::heat::warming;
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let kitchen = Kitchen::default();
/// let parts = warming(&sheet.formula, &kitchen)?;
/// assert!(parts.iter().all(|part| part.starts == kitchen.fridge));
/// # Ok::<(), softcrumb::engine::heat::HeatError>(())
/// ```
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
        let mut times = Vec::with_capacity(LISTED.len());
        for celsius in LISTED {
            let warm = Temperature::from_celsius(celsius)?;
            if warm > starts
                && let Ok(stood) = stand(
                    &body,
                    starts,
                    Air::of_kitchen(kitchen.room, &kitchen.cooling),
                    warm,
                )
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

/// Standing out for longer than this is a risk, min. Common practice: two hours in the room.
const LONG: f64 = 120.0;

/// Whether any of them takes so long that milk and eggs are at risk.
///
/// ```
/// use softcrumb::results::heat::is_long_standing;
///
/// assert!(!is_long_standing(&[]));
/// ```
#[must_use]
pub fn is_long_standing(all: &[Warming]) -> bool {
    let mut times = all.iter().flat_map(|one| &one.times);
    times.any(|(_, minutes)| minutes.minutes() > LONG)
}
