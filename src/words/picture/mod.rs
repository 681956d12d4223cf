//! Pictures in words: the text twin of each drawing, for who cannot see it.

mod divided;
mod flow_curve;
mod flow_drawing;
mod flow_label;
mod flow_scale;
mod sentence;
mod water_bar;
mod water_ledger;

pub use divided::divided;
pub use flow_curve::flow_curve;
pub use flow_drawing::{Band, FlowDrawing, Mark, Tick};
pub use flow_label::Spot;
pub use water_bar::{WaterBar, WaterMark, WaterPiece, WaterRow, water_bar};
pub use water_ledger::water_ledger;
