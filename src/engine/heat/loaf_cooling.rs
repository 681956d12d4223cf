//! Loaf cooling: how long bread cools on a rack before it is cut.

use super::error::HeatError;
use super::loaf_body::LoafBody;
use crate::engine::formula::Bread;
use crate::engine::quantity::{Factor, Minutes, Temperature};
use crate::engine::working::{WorkingLine, given};

/// How long bread cools before it is cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LoafCooling {
    /// The time by conduction, air on all sides.
    pub by_conduction: Minutes,
    /// How much longer this kind of bread waits.
    pub bread: Factor,
    /// The soonest.
    pub from: Minutes,
    /// The likely time.
    pub likely: Minutes,
    /// The latest.
    pub to: Minutes,
}

/// How cool the middle is when bread is cut, °C.
///
/// Source: bakery trade encyclopedia on cooling: 30 to 40 °C.
pub const CUT_AT: Temperature = Temperature::known(30.0);

/// How many times the computed time bread waits. Loaves stand close and on their crust, the crumb
/// sets on: tin loaves that are at 30 °C after 1¼ h by computation wait 1½ to 3 h. Common practice.
const LIKELY: f64 = 1.5;
const LATEST: f64 = 2.2;

/// How much longer rye waits than wheat, whose crumb sets sooner. Common practice.
const RYE: f64 = 1.5;

/// How long bread cools in a room from the temperature of its middle as it leaves the oven.
///
/// The soonest is conduction from an even temperature with air on all sides; the likely time and the
/// latest are 1.5 and 2.2 times that. Rye waits 1.5 times as long.
///
/// # Errors
/// [`HeatError::NeverReached`] in a room at 30 °C or above; [`HeatError::OffScale`] when the time
/// leaves [`Minutes::RANGE`].
pub fn cool_loaf(
    body: &LoafBody,
    bread: Bread,
    room: Temperature,
    core: Temperature,
) -> Result<LoafCooling, HeatError> {
    let by_conduction = body.cools_in(room, core, CUT_AT)?;
    let slower = match bread {
        Bread::Rye => RYE,
        Bread::SoftTin | Bread::SweetBun | Bread::RichEgg | Bread::PlainTin => 1.0,
    };
    let times = |factor: f64| Minutes::from_minutes(by_conduction.minutes() * slower * factor);
    Ok(LoafCooling {
        by_conduction,
        bread: Factor::from_number(slower)?,
        from: times(1.0)?,
        likely: times(LIKELY)?,
        to: times(LATEST)?,
    })
}

impl LoafCooling {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let line = |factor: f64, of: &'static str, result: Minutes| WorkingLine {
            rule: "t × b × f".into(),
            with: vec![
                given(
                    "t",
                    "by conduction to 30 °C",
                    self.by_conduction.minutes(),
                    "min",
                ),
                given("b", "this kind of bread", self.bread.number(), ""),
                given("f", "what the trade waits", factor, ""),
            ],
            result: given("T", of, result.minutes(), "min"),
            source: "conduction: Carslaw and Jaeger, Conduction of Heat in Solids; common practice"
                .into(),
        };
        vec![
            line(1.0, "soonest", self.from),
            line(LIKELY, "likely", self.likely),
            line(LATEST, "latest", self.to),
        ]
    }
}
