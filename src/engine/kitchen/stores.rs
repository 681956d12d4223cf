//! Stores: how warm each thing of a formula is in this kitchen before the work begins.

use super::place::Kitchen;
use crate::engine::formula::{Formula, LineAt};
use crate::engine::heat::Stores;

impl Kitchen {
    /// How warm things are kept here, with what a formula's own lines and streams say otherwise.
    #[must_use]
    pub fn stores(&self, formula: &Formula) -> Stores {
        let mut stores = Stores {
            room: self.room,
            flour: self.flour,
            tap: self.tap,
            fridge: self.fridge,
            lines: Vec::new(),
            streams: Vec::new(),
        };
        for (stream, own) in formula.streams.iter().enumerate() {
            stores
                .streams
                .extend(own.temperature.map(|at| (stream, at)));
            for (line, written) in own.lines.iter().enumerate() {
                let at = LineAt { stream, line };
                stores
                    .lines
                    .extend(written.temperature.map(|warm| (at, warm)));
            }
        }
        stores
    }
}
