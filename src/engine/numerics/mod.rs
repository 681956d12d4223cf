//! Numerical methods: interpolation in a table, bisection, means that outliers do not move, and
//! conversions between integers and floats.
//!
//! The only ones of the engine. Each returns for every argument, NaN and ∞ included.

mod bisect;
mod integer;
mod interpolate;
mod robust;
mod weighted;

pub use bisect::{NoRoot, first_integer, first_true, halve_integers, root, try_first_true};
pub(crate) use integer::{
    float_from_i64, float_from_u64, float_from_usize, saturating_u16, saturating_u32, whole,
    whole_i64,
};
pub use interpolate::{Segment, first_crossing, interpolate, segment};
pub use robust::{RobustMean, robust_mean};
pub use weighted::{Weighed, WeightedMean, weighted_mean};
