//! From a label to a composition: the parts a packet does not print, worked out.
//!
//! Printed figures are kept. For the rest:
//!
//! - **Carbohydrate** by difference is the label's carbohydrate and fibre together.
//! - **Sodium** is salt divided by 2.5 (Regulation (EU) No 1169/2011, annex I: salt is sodium
//!   times 2.5).
//! - **Ash** is at least the salt; and minerals come with protein, so much per gram by the kind of
//!   food (see [`minerals_with_protein`]).
//! - **Water** is what is left of 100 g when fat, carbohydrate and protein are all known.
//!   Chocolate holds about 1 g, and what else is left there is not water.
//! - **Sugars**, not printed, are all carbohydrate of a sugar or syrup; in plain chocolate what is
//!   not cocoa; elsewhere none.
//! - **Fibre**, not printed, goes with the fat-free cocoa of plain chocolate; elsewhere none.
//! - **Starch** of a flour is carbohydrate less sugars; elsewhere none. **Saturates** and
//!   **alcohol** not printed are none.
//! - A label that says nothing at all: water, fat, sugar and salt are taken for the pure thing.

use super::{Composition, Constituent, Label, LabelLine, Role};
use crate::engine::quantity::Share;

/// Source: Regulation (EU) No 1169/2011, annex I, point 11: salt = sodium × 2.5.
const SODIUM_IN_SALT: Share = Share::in_hundred(40.0);

/// Water of finished chocolate. Source: USDA ARS, Release 28: 0.5 to 1.5 g in 100 g over its
/// plain, milk and white chocolates.
const WATER_OF_CHOCOLATE: Share = Share::in_hundred(1.0);

/// The most a dry chocolate's label leaves open when fibre is printed: acids, tannins and the
/// rounding of the rest. Past it the food is taken for a wet one. An estimate of our own: the
/// French table's plain chocolates leave 0 to 3 g open.
const OPEN_IN_DRY_CHOCOLATE: Share = Share::in_hundred(10.0);

/// Fibre in fat-free cocoa. Source: USDA ARS, Release 28, unsweetened chocolate (19078): 16.6 g of
/// fibre in 100 g less 52.31 g of fat and 1.34 g of water.
const FIBRE_OF_FAT_FREE_COCOA: Share = Share::in_hundred(35.8);

/// Grams of ash that come with a gram of protein. Source: USDA ARS, Release 28, ash over protein
/// of its rows: milks, creams and milk powders 0.16 to 0.27, eggs 0.06 to 0.11, white to wholemeal
/// flours 0.04 to 0.12, chocolates and cocoas 0.23 to 0.43, nuts and seeds 0.12 to 0.25, yeasts
/// 0.14 to 0.21; a figure near the middle of each.
const fn minerals_with_protein(role: Role) -> Share {
    match role {
        Role::Dairy | Role::Liquid => Share::in_hundred(22.0),
        Role::Egg => Share::in_hundred(8.5),
        Role::Flour => Share::in_hundred(6.0),
        Role::Chocolate => Share::in_hundred(28.0),
        Role::Inclusion => Share::in_hundred(14.0),
        Role::Yeast => Share::in_hundred(16.0),
        Role::Water | Role::Fat | Role::Sugar | Role::Salt => Share::NONE,
    }
}

/// What a composition is worked out from.
#[derive(Clone, Copy)]
pub(super) struct Labelled<'a> {
    /// What the ingredient does in a dough.
    pub(super) role: Role,
    /// What its label says.
    pub(super) label: &'a Label,
    /// Cocoa that is not cocoa butter, where it is plain chocolate and that is known.
    pub(super) fat_free_cocoa: Option<Share>,
}

/// What it is made of.
pub(super) fn composition(food: Labelled) -> Composition {
    if *food.label == Label::default() {
        return pure(food.role);
    }
    let label = food.label;
    let sugars = sugars(food);
    let fibre = fibre(food, sugars);
    let available = available_carbohydrate(food, sugars, fibre);
    let starch = if food.role == Role::Flour {
        available.less(sugars)
    } else {
        Share::NONE
    };
    Composition {
        water: water(food, available, fibre),
        protein: label.known(LabelLine::Protein),
        fat: fat(label),
        saturates: label.known(LabelLine::Saturates),
        carbohydrate: available.plus(fibre),
        sugars,
        starch,
        fibre,
        ash: ash(food),
        sodium: sodium_of(label.known(LabelLine::Salt)),
        alcohol: Share::NONE,
    }
}

/// The parts the label does not print.
///
/// Starch is among them where carbohydrate leaves room for it. Alcohol is not: a drink's label
/// gives it by volume, and no line here asks for it.
pub(super) fn worked_out(food: Labelled) -> Vec<Constituent> {
    let label = food.label;
    let made_of = composition(food);
    let no_carbohydrate = label.carbohydrate.is_none() || label.fibre.is_none();
    let room_for_starch = made_of.carbohydrate.less(made_of.fibre) > made_of.sugars;
    let missing = |component: &Constituent| match component {
        Constituent::Water => label.water.is_none(),
        Constituent::Protein => label.protein.is_none(),
        Constituent::Fat => label.fat.is_none(),
        Constituent::Saturates => label.saturates.is_none() && made_of.fat > Share::NONE,
        Constituent::Carbohydrate => no_carbohydrate,
        Constituent::Sugars => label.sugars.is_none(),
        Constituent::Starch => room_for_starch,
        Constituent::Fibre => label.fibre.is_none(),
        Constituent::Ash => true,
        Constituent::Sodium => label.salt.is_none(),
        Constituent::Alcohol => false,
    };
    Constituent::ALL.into_iter().filter(missing).collect()
}

/// The pure thing, for a label that says nothing; nothing at all where no food is pure.
fn pure(role: Role) -> Composition {
    let nothing = Composition::default();
    let all = Share::WHOLE;
    match role {
        Role::Water => Composition {
            water: all,
            ..nothing
        },
        Role::Fat => Composition {
            fat: all,
            ..nothing
        },
        Role::Sugar => Composition {
            carbohydrate: all,
            sugars: all,
            ..nothing
        },
        Role::Salt => Composition {
            ash: all,
            sodium: sodium_of(all),
            ..nothing
        },
        Role::Flour
        | Role::Liquid
        | Role::Yeast
        | Role::Dairy
        | Role::Egg
        | Role::Chocolate
        | Role::Inclusion => nothing,
    }
}

/// Fat: as printed; else at least the saturates.
fn fat(label: &Label) -> Share {
    if label.fat.is_some() {
        label.known(LabelLine::Fat)
    } else {
        label.known(LabelLine::Saturates)
    }
}

/// Sodium, from salt.
fn sodium_of(salt: Share) -> Share {
    salt.component(SODIUM_IN_SALT)
}

/// Ash: the minerals that come with protein, and never less than the salt.
fn ash(food: Labelled) -> Share {
    let protein = food.label.known(LabelLine::Protein);
    let minerals = protein.component(minerals_with_protein(food.role));
    let salt = food.label.known(LabelLine::Salt);
    if salt > minerals { salt } else { minerals }
}

/// Sugars: as printed; else all of a syrup's carbohydrate, or what is not cocoa in plain chocolate.
fn sugars(food: Labelled) -> Share {
    let label = food.label;
    if label.sugars.is_some() {
        return label.known(LabelLine::Sugars);
    }
    let carbohydrate = label.known(LabelLine::Carbohydrate);
    match (food.role, label.cocoa) {
        (Role::Sugar, _) => carbohydrate,
        (Role::Chocolate, Some(cocoa)) if food.fat_free_cocoa.is_some() => {
            let water = label.water.unwrap_or(WATER_OF_CHOCOLATE);
            let sugars = Share::WHOLE.less(cocoa).less(water);
            let room = open(food, label.known(LabelLine::Fibre), water);
            sugars.at_most(room.at_most(label.carbohydrate.unwrap_or(room)))
        }
        _ => Share::NONE,
    }
}

/// Fibre: as printed; else that of the fat-free cocoa of plain chocolate, as far as there is room.
fn fibre(food: Labelled, sugars: Share) -> Share {
    let label = food.label;
    match food.fat_free_cocoa {
        Some(cocoa) if label.fibre.is_none() => {
            let fibre = cocoa.component(FIBRE_OF_FAT_FREE_COCOA);
            let carbohydrate = label
                .carbohydrate
                .map_or(sugars, |_| label.known(LabelLine::Carbohydrate));
            let water = label.water.unwrap_or(WATER_OF_CHOCOLATE);
            fibre.at_most(open(food, carbohydrate, water))
        }
        _ => label.known(LabelLine::Fibre),
    }
}

/// Carbohydrate without fibre: as printed; else what is left where everything else is known, and
/// never less than the sugars.
fn available_carbohydrate(food: Labelled, sugars: Share, fibre: Share) -> Share {
    let label = food.label;
    if label.carbohydrate.is_some() {
        return label.known(LabelLine::Carbohydrate);
    }
    let rest_known = label.fat.is_some() && label.protein.is_some() && label.water.is_some();
    let left = open(food, fibre, label.known(LabelLine::Water));
    if rest_known && left > sugars {
        left
    } else {
        sugars
    }
}

/// Water: as printed; else what is left where fat, carbohydrate and protein are known, or the
/// little a chocolate holds.
fn water(food: Labelled, available: Share, fibre: Share) -> Share {
    let label = food.label;
    if label.water.is_some() {
        return label.known(LabelLine::Water);
    }
    let known = label.fat.is_some() && label.carbohydrate.is_some() && label.protein.is_some();
    let left = open(food, available, fibre);
    let wet = known && label.fibre.is_some() && left > OPEN_IN_DRY_CHOCOLATE;
    if food.role == Role::Chocolate && !wet {
        left.at_most(WATER_OF_CHOCOLATE)
    } else if known {
        left
    } else {
        Share::NONE
    }
}

/// What fat, protein and ash leave of the whole, and then two more parts.
fn open(food: Labelled, one: Share, other: Share) -> Share {
    let label = food.label;
    let taken = [
        fat(label),
        label.known(LabelLine::Protein),
        ash(food),
        one,
        other,
    ];
    taken.into_iter().fold(Share::WHOLE, Share::less)
}
