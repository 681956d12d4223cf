//! The ingredients that a part usually has, offered first.

use crate::engine::formula::PartKind;
use crate::engine::ingredients::Listed;

/// The numbers of the ingredients that a part of a kind usually has, in the order they are weighed.
///
/// Source: common practice for soft enriched breads.
const fn numbers(kind: PartKind) -> &'static [u16] {
    match kind {
        PartKind::Paste => &[1, 41, 200, 300],
        PartKind::Preferment => &[1, 41, 200, 902],
        PartKind::Final => &[1, 4, 200, 300, 600, 601, 700, 710, 500, 340, 800, 902, 900],
        PartKind::Filling => &[1001, 1004, 500, 701, 1300, 1200],
        PartKind::Topping => &[1001, 200, 322, 700, 703],
        PartKind::Wash => &[600, 601, 300, 200],
    }
}

/// The ingredients that a part of a kind usually has.
///
/// ```
/// use softcrumb::engine::formula::PartKind;
/// use softcrumb::results::formula::usual_foods;
///
/// assert!(usual_foods(PartKind::Paste).iter().any(|food| food.row().name == "Water"));
/// ```
#[must_use]
pub fn usual_foods(kind: PartKind) -> Vec<Listed> {
    let numbers = numbers(kind).iter();
    numbers
        .filter_map(|number| Listed::numbered(*number).ok())
        .collect()
}
