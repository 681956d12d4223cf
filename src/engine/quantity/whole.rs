//! Whole numbers: the whole part of a measured one.

/// The whole part of a number, from zero to the largest `u32`; found bit by bit, zero for NaN.
pub(crate) fn whole(number: f64) -> u32 {
    let mut found = 0_u32;
    for bit in (0..u32::BITS).rev() {
        let tried = found | (1_u32 << bit);
        if f64::from(tried) <= number {
            found = tried;
        }
    }
    found
}
