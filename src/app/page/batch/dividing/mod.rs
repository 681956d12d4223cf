//! Dividing the dough on the bench.

mod bench_boxes;
mod card;

pub use bench_boxes::BenchBoxes;
pub use card::DivideCard;
