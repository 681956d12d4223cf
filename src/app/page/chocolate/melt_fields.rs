//! The numbers of melting that can be typed.

use crate::app::part::{Wish, degrees};
use crate::engine::quantity::Temperature;
use crate::text::{
    FormatOptions, tr_noop,
    read::{self, ReadError},
    unit::ThicknessUnit,
    format,
};

/// Nothing where nothing is typed: then it is as usual.
fn temperature(text: &str, manner: FormatOptions) -> Result<Option<Temperature>, ReadError> {
    match read::temperature(text, manner) {
        Ok(read) => Ok(Some(read)),
        Err(ReadError::Empty) => Ok(None),
        Err(error) => Err(error),
    }
}

/// How hot the liquid is poured.
pub const LIQUID: Wish = Wish {
    id: "melt-liquid",
    label: tr_noop!("Liquid poured at"),
    unit: degrees,
    look: |wishes, kitchen, manner| {
        let at = wishes.melt.liquid.or_else(|| kitchen.off_the_boil().ok());
        at.map(|at| format::box_temperature(at, manner))
            .unwrap_or_default()
    },
    set: |wishes, text, manner| temperature(text, manner).map(|read| wishes.melt.liquid = read),
};

/// How warm the chocolate is.
pub const CHOCOLATE: Wish = Wish {
    id: "melt-chocolate",
    label: tr_noop!("Chocolate at"),
    unit: degrees,
    look: |wishes, kitchen, manner| {
        format::box_temperature(wishes.melt.chocolate.unwrap_or(kitchen.room), manner)
    },
    set: |wishes, text, manner| temperature(text, manner).map(|read| wishes.melt.chocolate = read),
};

/// How warm its bowl is.
pub const BOWL: Wish = Wish {
    id: "melt-bowl",
    label: tr_noop!("Bowl at"),
    unit: degrees,
    look: |wishes, kitchen, manner| {
        format::box_temperature(wishes.melt.bowl.unwrap_or(kitchen.room), manner)
    },
    set: |wishes, text, manner| temperature(text, manner).map(|read| wishes.melt.bowl = read),
};

/// How large the pieces are across.
pub const PIECES: Wish = Wish {
    id: "melt-pieces",
    label: tr_noop!("Chopped to, across"),
    unit: |manner| ThicknessUnit::of(manner.units).symbol(),
    look: |wishes, _, manner| format::box_thickness(wishes.melt.pieces, manner),
    set: |wishes, text, manner| read::thickness(text, manner).map(|read| wishes.melt.pieces = read),
};
