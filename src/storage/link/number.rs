//! Numbers in a link: a few bytes where they have few digits, all eight where they have more.

use super::tagged::tagged;
use crate::engine::numerics::whole;

tagged! {
    /// A number, exact in every case.
    #[derive(Clone, Copy, Debug, PartialEq)]
    enum Short {
        /// Whole hundredths: weights in 0.01 g, temperatures in 0.01 °C.
        0 => Hundredths(whole: i32),
        /// Whole hundredths of a percent, as a fraction.
        1 => Percent(whole: u32),
        /// All of it.
        2 => Full(number: f64),
    }
}

impl Short {
    /// The shortest form that reads back to just this number.
    pub(super) fn of(number: f64) -> Self {
        let hundredths = nearest(number * 100.0).map(Self::Hundredths);
        let percent = nearest(number * 10_000.0).and_then(|n| u32::try_from(n).ok());
        let forms = [hundredths, percent.map(Self::Percent)];
        let exact = |form: &Self| form.value().total_cmp(&number).is_eq();
        forms
            .into_iter()
            .flatten()
            .find(exact)
            .unwrap_or(Self::Full(number))
    }

    /// The number.
    pub(super) fn value(self) -> f64 {
        match self {
            Self::Hundredths(n) => f64::from(n) / 100.0,
            Self::Percent(n) => f64::from(n) / 100.0 / 100.0,
            Self::Full(number) => number,
        }
    }
}

/// The nearest whole number, where it is not too large.
fn nearest(number: f64) -> Option<i32> {
    let wanted = libm::round(number);
    let size = i32::try_from(whole(wanted.abs())).ok()?;
    Some(if wanted < 0.0 { -size } else { size })
}

#[cfg(test)]
mod tests {
    use super::Short;

    #[test]
    fn few_digits_take_few_bytes_and_all_numbers_come_back() {
        let cases = [
            (0.0, Short::Hundredths(0)),
            (187.5, Short::Hundredths(18_750)),
            (0.01, Short::Hundredths(1)),
            (1_000_000.0, Short::Hundredths(100_000_000)),
            (-40.0, Short::Hundredths(-4_000)),
            (1.8 / 100.0, Short::Percent(180)),
            (28.349_523_125, Short::Full(28.349_523_125)),
            (1e-300, Short::Full(1e-300)),
        ];
        for (number, short) in cases {
            assert_eq!(Short::of(number), short);
            assert_eq!(short.value().to_bits(), number.to_bits());
        }
    }
}
