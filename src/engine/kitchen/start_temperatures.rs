//! `StartTemperatures`: how warm each thing of a formula is in this kitchen before the work begins.

use super::place::Kitchen;
use crate::engine::formula::{Formula, LineAt};
use crate::engine::heat::StartTemperatures;

impl Kitchen {
    /// How warm things are kept here, with what a formula's own lines and parts say otherwise.
    #[must_use]
    pub fn stores(&self, formula: &Formula) -> StartTemperatures {
        let mut stores = StartTemperatures {
            room: self.room,
            flour: self.flour,
            tap: self.tap,
            fridge: self.fridge,
            lines: Vec::new(),
            parts: Vec::new(),
        };
        for (part, own) in formula.parts.iter().enumerate() {
            stores.parts.extend(own.temperature.map(|at| (part, at)));
            for (line, written) in own.lines.iter().enumerate() {
                let at = LineAt { part, line };
                stores
                    .lines
                    .extend(written.temperature.map(|warm| (at, warm)));
            }
        }
        stores
    }
}
