//! Errors of reading a number.

use crate::engine::quantity::{
    Altitude, Factor, Length, Mass, Minutes, Pressure, Share, Temperature, TemperatureChange,
    Viscosity, WarmingRate,
};

/// What a number measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Measure {
    /// A weight.
    Mass,
    /// A percentage.
    Share,
    /// A temperature.
    Temperature,
    /// A factor.
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

/// A limit of a quantity.
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

/// Why a text is not accepted.
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
        /// The most digits accepted.
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
    /// A word after the number that is no known unit.
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
    /// Above the limit.
    #[error("more than {most:?}")]
    TooLarge {
        /// The upper limit.
        most: Limit,
    },
    /// Below the limit.
    #[error("less than {least:?}")]
    TooSmall {
        /// The lower limit.
        least: Limit,
    },
}
