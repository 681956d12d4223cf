//! Formatting volumes, tin volume per gram, energy, money, lengths across.

use super::figure::{figure, plain, significant};
use super::quantity::{GAP, with_unit};
use crate::engine::nutrition::{Declared, DeclaredEnergy, Nutrient};
use crate::engine::quantity::{Length, Money, SpecificVolume, Volume};
use crate::text::{MassUnit, format_options::FormatOptions, tr};

/// A US fluid ounce, ml. Source: NIST Handbook 44 (2024), appendix C.
const FLUID_OUNCE: f64 = 29.573_53;
/// Fluid ounces of a US quart. Source: NIST Handbook 44 (2024), appendix C.
const QUART: f64 = 32.0;

/// A volume: "850 ml", "3.62 l".
#[must_use]
pub fn volume(volume: Volume, options: FormatOptions) -> String {
    let millilitres = volume.cubic_centimetres();
    if options.units.mass == MassUnit::Ounces {
        let ounces = millilitres / FLUID_OUNCE;
        return if ounces < QUART {
            with_unit(&significant(ounces, 3, options.numbers), "fl oz")
        } else {
            with_unit(&significant(ounces / QUART, 3, options.numbers), "qt")
        };
    }
    if millilitres < 1000.0 {
        with_unit(&significant(millilitres, 3, options.numbers), "ml")
    } else {
        with_unit(&significant(millilitres / 1000.0, 3, options.numbers), "l")
    }
}

/// Tin volume per gram of dough: "3.9 cm³/g".
#[must_use]
pub fn room(room: SpecificVolume, options: FormatOptions) -> String {
    let number = plain(room.cubic_centimetres_per_gram(), 2, options.numbers);
    with_unit(&number, "cm³/g")
}

/// Money, with the user's currency: "12.40 kr"; a plain figure without a name.
#[must_use]
pub fn money(money: Money, currency: &str, options: FormatOptions) -> String {
    with_unit(&figure(money.amount(), 2, options.numbers), currency)
}

/// Money for a box: "12.4".
#[must_use]
pub fn box_money(money: Money, options: FormatOptions) -> String {
    super::boxed::boxed(money.amount(), 2, options)
}

/// Tin volume per gram for a box: "3.9".
#[must_use]
pub fn box_room(room: SpecificVolume, options: FormatOptions) -> String {
    super::boxed::boxed(room.cubic_centimetres_per_gram(), 2, options)
}

/// A gap, in whole millimetres: "12 mm".
#[must_use]
pub fn millimetres(length: Length, options: FormatOptions) -> String {
    with_unit(&plain(length.metres() * 1000.0, 0, options.numbers), "mm")
}

/// Energy as a label has it: "1204 kJ / 287 kcal".
#[must_use]
pub fn declared_energy(energy: DeclaredEnergy, options: FormatOptions) -> String {
    let calories = with_unit(
        &plain(f64::from(energy.kilocalories), 0, options.numbers),
        tr!("kcal"),
    );
    match energy.kilojoules {
        Some(kilojoules) => {
            let kilojoules = with_unit(&plain(f64::from(kilojoules), 0, options.numbers), "kJ");
            format!("{kilojoules}{GAP}/ {calories}")
        }
        None => calories,
    }
}

/// A weight as a label has it: "0 g", "under 0.5 g", "3.4 g"; sodium in milligrams.
#[must_use]
pub fn declared(nutrient: Nutrient, declared: Declared, options: FormatOptions) -> String {
    let (times, unit) = if nutrient == Nutrient::Sodium {
        (1000.0, "mg")
    } else {
        (1.0, "g")
    };
    match declared {
        Declared::Nothing => with_unit("0", unit),
        Declared::Below(limit) => {
            let limit = plain(limit.grams() * times, 2, options.numbers);
            tr!("under {value}", value = with_unit(&limit, unit))
        }
        Declared::Amount { mass, places } => {
            let number = figure(mass.grams() * times, usize::from(places), options.numbers);
            with_unit(&number, unit)
        }
    }
}
