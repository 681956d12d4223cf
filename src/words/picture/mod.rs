//! Pictures in words: the text twin of each drawing, for who cannot see it.

mod divided;
mod flow_curve;
mod sentence;
mod water_ledger;

pub use divided::divided;
pub use flow_curve::flow_curve;
pub use water_ledger::water_ledger;
