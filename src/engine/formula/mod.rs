//! The formula: streams of ingredients, their percentages, and their water.

mod bread;
mod stream;

pub use bread::Bread;
pub use stream::{Formula, Line, LineAt, Stream, StreamKind};
