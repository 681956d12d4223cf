//! The numbers that can be asked of heat.

use crate::app::part::{Wish, degrees, minutes};
use crate::text::{
    FormatOptions, tr_noop,
    read::{self, ReadError},
    unit::ThicknessUnit,
    format,
};

fn thickness(manner: FormatOptions) -> &'static str {
    ThicknessUnit::of(manner.units).symbol()
}

/// Nothing where nothing is typed: then it is as usual.
fn or_usual<T>(
    text: &str,
    manner: FormatOptions,
    read: fn(&str, FormatOptions) -> Result<T, ReadError>,
) -> Result<Option<T>, ReadError> {
    match read(text, manner) {
        Ok(read) => Ok(Some(read)),
        Err(ReadError::Empty) => Ok(None),
        Err(error) => Err(error),
    }
}

/// How warm the dough is to come off the mixer.
pub const WANTED: Wish = Wish {
    id: "heat-wanted",
    label: tr_noop!("Dough wanted at"),
    unit: degrees,
    look: |wishes, _, manner| format::box_temperature(wishes.dough, manner),
    set: |wishes, text, manner| read::temperature(text, manner).map(|read| wishes.dough = read),
};

/// How long the dough is mixed.
pub const MIXING: Wish = Wish {
    id: "heat-mixing",
    label: tr_noop!("Mixing"),
    unit: minutes,
    look: |wishes, kitchen, manner| {
        format::box_minutes(wishes.mixing.unwrap_or(kitchen.mixer.minutes), manner)
    },
    set: |wishes, text, manner| {
        or_usual(text, manner, read::minutes).map(|read| wishes.mixing = read)
    },
};

/// How long pastes and preferments stand out.
pub const STANDING: Wish = Wish {
    id: "heat-standing",
    label: tr_noop!("Cold streams stand out"),
    unit: minutes,
    look: |wishes, _, manner| format::box_minutes(wishes.standing, manner),
    set: |wishes, text, manner| read::minutes(text, manner).map(|read| wishes.standing = read),
};

/// How warm the mixing bowl is.
pub const MIXING_BOWL: Wish = Wish {
    id: "heat-mixing-bowl",
    label: tr_noop!("Mixing bowl at"),
    unit: degrees,
    look: |wishes, kitchen, manner| {
        format::box_temperature(wishes.mixing_bowl.unwrap_or(kitchen.room), manner)
    },
    set: |wishes, text, manner| {
        or_usual(text, manner, read::temperature).map(|read| wishes.mixing_bowl = read)
    },
};

/// How warm the paste's bowl is.
pub const PASTE_BOWL: Wish = Wish {
    id: "heat-paste-bowl",
    label: tr_noop!("Bowl at"),
    unit: degrees,
    look: |wishes, kitchen, manner| {
        format::box_temperature(wishes.paste.bowl.unwrap_or(kitchen.room), manner)
    },
    set: |wishes, text, manner| {
        or_usual(text, manner, read::temperature).map(|read| wishes.paste.bowl = read)
    },
};

/// What the liquid loses on its way.
pub const DROP: Wish = Wish {
    id: "heat-drop",
    label: tr_noop!("Lost from kettle to bowl"),
    unit: degrees,
    look: |wishes, _, manner| format::box_degrees(wishes.paste.drop, manner),
    set: |wishes, text, manner| {
        read::degrees_lost(text, manner).map(|read| wishes.paste.drop = read)
    },
};

/// How thick it is as it cools.
pub const THICK: Wish = Wish {
    id: "heat-thick",
    label: tr_noop!("Thick through the middle"),
    unit: thickness,
    look: |wishes, _, manner| format::box_thickness(wishes.cooling.thick, manner),
    set: |wishes, text, manner| {
        read::thickness(text, manner).map(|read| wishes.cooling.thick = read)
    },
};

/// How long it stays on the bench.
pub const BENCH: Wish = Wish {
    id: "heat-bench",
    label: tr_noop!("On the bench"),
    unit: minutes,
    look: |wishes, _, manner| format::box_minutes(wishes.cooling.bench, manner),
    set: |wishes, text, manner| read::minutes(text, manner).map(|read| wishes.cooling.bench = read),
};

/// How long it stands in ice water.
pub const ICE: Wish = Wish {
    id: "heat-ice",
    label: tr_noop!("In ice water"),
    unit: minutes,
    look: |wishes, _, manner| format::box_minutes(wishes.cooling.ice, manner),
    set: |wishes, text, manner| read::minutes(text, manner).map(|read| wishes.cooling.ice = read),
};

/// The known bake.
pub const KNOWN: [Wish; 3] = [
    Wish {
        id: "heat-known-minutes",
        label: tr_noop!("It took"),
        unit: minutes,
        look: |wishes, _, manner| format::box_minutes(wishes.bake.known.minutes, manner),
        set: |wishes, text, manner| {
            read::minutes(text, manner).map(|read| wishes.bake.known.minutes = read)
        },
    },
    Wish {
        id: "heat-known-oven",
        label: tr_noop!("Oven, as a still one"),
        unit: degrees,
        look: |wishes, _, manner| format::box_temperature(wishes.bake.known.oven, manner),
        set: |wishes, text, manner| {
            read::temperature(text, manner).map(|read| wishes.bake.known.oven = read)
        },
    },
    Wish {
        id: "heat-known-piece",
        label: tr_noop!("A piece weighed"),
        unit: |manner| manner.units.mass.symbol(),
        look: |wishes, _, manner| format::box_mass(wishes.bake.known.piece, manner),
        set: |wishes, text, manner| {
            read::mass(text, manner).map(|read| wishes.bake.known.piece = read)
        },
    },
];
