//! Numerical methods: interpolation in a table, bisection, and a mean that outliers do not move.
//!
//! The only ones of the engine. Each returns for every argument, NaN and ∞ included.

mod bisect;
mod interpolate;
mod robust;

pub use bisect::{NoRoot, first_integer, first_true, halve_integers, root, try_first_true};
pub use interpolate::{Segment, first_crossing, interpolate, segment};
pub use robust::{RobustMean, robust_mean};
