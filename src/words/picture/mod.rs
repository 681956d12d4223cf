//! Pictures in words: the text twin of each drawing, for who cannot see it.

mod sentence;
mod water_ledger;

pub use water_ledger::water_ledger;
