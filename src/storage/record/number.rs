//! Numbers in records: each quantity in the unit that its key names, through its own constructor.

use crate::engine::numerics::{float_from_usize, saturating_u32};
use std::num::NonZeroU16;

use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::engine::quantity::{
    Altitude, Division, Factor, Length, Mass, Minutes, Money, OutOfRange, Pressure, Share,
    SpecificVolume, Temperature, TemperatureChange, WarmingRate,
};
use crate::sheet::Moment;
use crate::sheet::civil::Clock;

use super::error::{RecordError, RecordFault};
use super::refused::refuse;

/// Quantities with the constructor and the reader of the unit they are written in.
macro_rules! quantities {
    ($($quantity:ty: $take:ident, $give:ident;)+) => {$(
        impl Serialize for $quantity {
            fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                to.serialize_f64(self.$give())
            }
        }

        impl<'de> Deserialize<'de> for $quantity {
            fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
                Self::$take(f64::deserialize(from)?).map_err(refuse)
            }
        }
    )+};
}

quantities! {
    Altitude: from_metres, metres;
    Factor: from_number, number;
    Length: from_metres, metres;
    Mass: from_grams, grams;
    Minutes: from_minutes, minutes;
    Moment: from_milliseconds, milliseconds;
    Money: from_amount, amount;
    Pressure: from_hectopascals, hectopascals;
    Share: from_fraction, fraction;
    SpecificVolume: from_cubic_centimetres_per_gram, cubic_centimetres_per_gram;
    Temperature: from_celsius, celsius;
    TemperatureChange: from_kelvin, kelvin;
    WarmingRate: from_kelvin_per_minute, kelvin_per_minute;
}

/// A whole number from `least` to `most`.
pub(super) fn whole(value: f64, least: u32, most: u32) -> Result<u32, RecordError> {
    let range = f64::from(least)..=f64::from(most);
    if !range.contains(&value) {
        return Err(OutOfRange { value, range }.into());
    }
    let found = crate::engine::numerics::whole(value);
    if f64::from(found) < value {
        return Err(RecordFault::NotWhole { value }.into());
    }
    Ok(found)
}

fn read_whole<'de, D: Deserializer<'de>>(from: D, least: u32, most: u32) -> Result<u32, D::Error> {
    whole(f64::deserialize(from)?, least, most).map_err(refuse)
}

/// A whole number from nought to what sixteen bits hold.
pub(super) struct Small;

impl Small {
    #[allow(clippy::trivially_copy_pass_by_ref, reason = "serde hands a reference")]
    pub(super) fn serialize<S: Serializer>(number: &u16, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_f64(f64::from(*number))
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<u16, D::Error> {
        let whole = read_whole(from, 0, u32::from(u16::MAX))?;
        Ok(u16::try_from(whole).unwrap_or(u16::MAX))
    }
}

/// A whole number from one to `MOST`.
pub(super) struct Count<const MOST: u16 = { u16::MAX }>;

impl<const MOST: u16> Count<MOST> {
    pub(super) fn serialize<S: Serializer>(count: &NonZeroU16, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_f64(f64::from(count.get()))
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<NonZeroU16, D::Error> {
        let whole = read_whole(from, 1, u32::from(MOST))?;
        let count = u16::try_from(whole).ok().and_then(NonZeroU16::new);
        Ok(count.unwrap_or(NonZeroU16::MIN))
    }
}

/// A place in a list of `length` items.
pub(super) fn place(place: usize, length: usize) -> Result<usize, RecordError> {
    if place < length {
        return Ok(place);
    }
    Err(OutOfRange {
        value: float_from_usize(place),
        range: 0.0..=float_from_usize(length.saturating_sub(1)),
    }
    .into())
}

/// A place in a list of at most `MOST` items, counted from nought.
pub(super) struct Place<const MOST: usize>;

impl<const MOST: usize> Place<MOST> {
    pub(super) fn serialize<S: Serializer>(place: &usize, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_f64(float_from_usize(*place))
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<usize, D::Error> {
        let most = saturating_u32(MOST).saturating_sub(1);
        let whole = read_whole(from, 0, most)?;
        Ok(usize::try_from(whole).unwrap_or(usize::MAX))
    }
}

/// A weight that is a division of some scale.
pub(super) struct DivisionMass;

impl DivisionMass {
    pub(super) fn serialize<S: Serializer>(mass: &Mass, to: S) -> Result<S::Ok, S::Error> {
        mass.serialize(to)
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<Mass, D::Error> {
        let division = Division::from_mass(Mass::deserialize(from)?);
        division.map(Division::mass).map_err(refuse)
    }
}

impl Serialize for Clock {
    /// Minutes since midnight.
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        Small::serialize(&self.minutes(), to)
    }
}

impl<'de> Deserialize<'de> for Clock {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let minutes = read_whole(from, 0, u32::from(Self::DAY) - 1)?;
        let clock = u16::try_from(minutes).ok().and_then(Self::from_minutes);
        Ok(clock.unwrap_or_default())
    }
}
