//! Chance: bits that nobody can foretell, for an id.

use js_sys::Math;

/// Sixty-four random bits, made of the fractions of two random numbers.
pub fn bits() -> u64 {
    let fraction = || (1.0 + Math::random()).to_bits();
    fraction().rotate_left(32) ^ fraction()
}
