//! Charts: the geometry and the text alternative of each drawing.

mod bowl_balance;
mod cooling_curve;
mod cooling_drawing;
mod day_ribbon;
mod divided;
mod flow_curve;
mod flow_drawing;
mod flow_label;
mod flow_scale;
mod melt_curve;
mod ribbon_labels;
mod ribbon_scale;
mod rise_curve;
mod sentence;
mod text_width;
mod tin_plan;
mod water_bar;
mod water_ledger;

pub use bowl_balance::{BalanceBar, balance_bars, bowl_balance};
pub use cooling_curve::cooling_curve;
pub use cooling_drawing::{CoolingDrawing, Stretch, Wall};
pub use day_ribbon::{DayRibbon, Lane, RibbonBlock, day_ribbon};
pub use divided::divided;
pub use flow_curve::flow_curve;
pub use flow_drawing::{Band, FlowDrawing, Mark, Tick};
pub use flow_label::Spot;
pub use melt_curve::{MeltDrawing, melt_curve};
pub use rise_curve::{RiseDrawing, rise_curve};
pub use tin_plan::{PlanCircle, TinPlan, tin_plan};
pub use water_bar::{WaterBar, WaterMark, WaterPiece, WaterRow, water_bar};
pub use water_ledger::water_ledger;

pub use sentence::capitalized;
pub(super) use sentence::{listed, stopped};
