//! Conversions between integers and `f64`, and to narrower integers: they saturate, never wrap.
//!
//! The only place for them; elsewhere `f64::from` and `i64::from` do for what always fits.

/// 2³², by which a 64-bit integer is split into halves that an `f64` holds exactly.
const HALF: f64 = 4_294_967_296.0;

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

/// The whole part of a number, from zero to the largest `i64`; zero for NaN.
pub(crate) fn whole_i64(number: f64) -> i64 {
    let high = whole(number / HALF);
    let low = whole(number - f64::from(high) * HALF);
    let joined = (u64::from(high) << 32) | u64::from(low);
    i64::try_from(joined).unwrap_or(i64::MAX)
}

/// The nearest `f64` to an integer: both halves fit exactly, so the sum rounds only once.
pub(crate) fn float_from_u64(number: u64) -> f64 {
    let [high, low] =
        [number >> 32, number & 0xffff_ffff].map(|half| u32::try_from(half).unwrap_or(u32::MAX));
    f64::from(high) * HALF + f64::from(low)
}

/// The nearest `f64` to an integer.
pub(crate) fn float_from_i64(number: i64) -> f64 {
    let size = float_from_u64(number.unsigned_abs());
    if number < 0 { -size } else { size }
}

/// The nearest `f64` to a count.
pub(crate) fn float_from_usize(count: usize) -> f64 {
    float_from_u64(u64::try_from(count).unwrap_or(u64::MAX))
}

/// A count, or the largest `u32`.
pub(crate) fn saturating_u32(count: usize) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}

/// A count, or the largest `u16`.
pub(crate) fn saturating_u16(count: usize) -> u16 {
    u16::try_from(count).unwrap_or(u16::MAX)
}

#[cfg(test)]
mod tests {
    use super::{float_from_i64, float_from_u64, saturating_u16, whole, whole_i64};

    /// Source: IEEE 754-2019: integers up to 2⁵³ are exact, those beyond round to even.
    #[test]
    fn conversions_are_exact_where_they_can_be_and_saturate_elsewhere() {
        assert_eq!([-1.0, f64::NAN, 0.99].map(whole), [0, 0, 0]);
        assert_eq!([4_294_967_295.5, 1e300].map(whole), [u32::MAX, u32::MAX]);
        assert_eq!(whole_i64(253_402_300_799.9), 253_402_300_799);
        assert_eq!([f64::NAN, -5.0].map(whole_i64), [0, 0]);
        assert_eq!(whole_i64(f64::INFINITY), i64::MAX);
        assert_eq!(
            float_from_u64(9_007_199_254_740_993).to_string(),
            "9007199254740992"
        );
        assert_eq!(float_from_u64(u64::MAX).to_string(), "18446744073709552000");
        assert_eq!(
            float_from_i64(-253_402_300_799).to_string(),
            "-253402300799"
        );
        assert_eq!(float_from_i64(i64::MIN).to_string(), "-9223372036854776000");
        assert_eq!(saturating_u16(70_000), u16::MAX);
    }
}
