//! What can be in the way of reading a number.

use crate::engine::quantity::{
    Altitude, Factor, Length, Mass, Minutes, Pressure, Share, Temperature, TemperatureChange,
    Viscosity, WarmingRate,
};

/// What kind of thing a number counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Measure {
    /// A weight.
    Mass,
    /// So many hundredths of something.
    Share,
    /// How hot.
    Temperature,
    /// How many times over.
    Times,
    /// Whole things: pieces, tins, students.
    Count,
    /// How thick a liquid is.
    Thickness,
    /// Spoons, cups, millilitres: understood, but never a weight.
    Volume,
    /// Minutes and hours.
    Time,
    /// Centimetres, metres, inches, feet.
    Length,
    /// What a barometer shows.
    Pressure,
}

/// The most or least that is taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Limit {
    /// For a weight.
    Mass(Mass),
    /// For a share.
    Share(Share),
    /// For a temperature.
    Temperature(Temperature),
    /// For a factor.
    Times(Factor),
    /// For a number of things.
    Count(u16),
    /// For a thickness.
    Thickness(Viscosity),
    /// For a time.
    Minutes(Minutes),
    /// For a length.
    Length(Length),
    /// For a height above the sea.
    Altitude(Altitude),
    /// For a pressure.
    Pressure(Pressure),
    /// For a warming rate.
    Rate(WarmingRate),
    /// For a change of temperature.
    Degrees(TemperatureChange),
}

/// Why what was typed is not taken.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum ReadError {
    /// Nothing is typed.
    #[error("nothing typed")]
    Empty,
    /// No number can be made out.
    #[error("no number")]
    NotANumber,
    /// More than one number.
    #[error("more than one number")]
    TwoNumbers,
    /// Two decimal points or commas.
    #[error("more than one decimal mark")]
    TwoPoints,
    /// A comma or point that may stand for thousands or for decimals.
    #[error("{grouped} or {decimal}")]
    Unclear {
        /// Read as thousands.
        grouped: f64,
        /// Read as decimals.
        decimal: f64,
    },
    /// More digits than any scale shows.
    #[error("more than {most} digits")]
    TooManyDigits {
        /// The most that are taken.
        most: usize,
    },
    /// Below zero, where that means nothing.
    #[error("below zero")]
    Minus,
    /// A fraction with nothing under the line.
    #[error("a fraction of nought parts")]
    OverNought,
    /// Not a whole number, where only whole things count.
    #[error("not whole")]
    NotWhole,
    /// A step that no scale has.
    #[error("no such division")]
    NoSuchDivision,
    /// A word behind the number that is no unit we know.
    #[error("unknown unit where {wanted:?} is wanted")]
    UnknownUnit {
        /// What is asked for.
        wanted: Measure,
    },
    /// A unit of another kind.
    #[error("{got:?} where {wanted:?} is wanted")]
    OtherUnit {
        /// What is asked for.
        wanted: Measure,
        /// What the unit is for.
        got: Measure,
    },
    /// More than is taken.
    #[error("more than {most:?}")]
    TooLarge {
        /// The most that is taken.
        most: Limit,
    },
    /// Less than is taken.
    #[error("less than {least:?}")]
    TooSmall {
        /// The least that is taken.
        least: Limit,
    },
}
