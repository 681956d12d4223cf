//! What to leave out where a link is too long for a square code.

use crate::engine::ingredients::{Food, Label};
use crate::sheet::HeatSettings;
use crate::sheet::Sheet;
use crate::storage::link;

/// A component that can be left out of a shared formula.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Omission {
    /// The note.
    Note,
    /// What the formula asks of heat.
    Heat,
    /// The tin, and the layout of the formula in it.
    Tin,
    /// The labels of the user's own ingredients.
    Labels,
}

/// One thing to leave out, and what that saves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Shorter {
    /// What.
    pub component: Omission,
    /// How many characters shorter the link becomes.
    pub saves: usize,
    /// Whether that alone makes it short enough.
    pub enough: bool,
}

/// What could be left out of a sheet so that its link has at most `most` characters, what saves
/// most first; only what saves something.
#[must_use]
pub fn shorter(sheet: &Sheet, most: usize) -> Vec<Shorter> {
    let whole = link::length(sheet);
    let mut found: Vec<Shorter> = Omission::ALL
        .into_iter()
        .filter_map(|component| {
            let left = link::length(&component.left_out_of(sheet));
            let saves = whole.checked_sub(left).filter(|saves| *saves > 0)?;
            let enough = left <= most;
            Some(Shorter {
                component,
                saves,
                enough,
            })
        })
        .collect();
    found.sort_by_key(|one| std::cmp::Reverse(one.saves));
    found
}

impl Omission {
    /// Every part there is.
    pub const ALL: [Self; 4] = [Self::Note, Self::Heat, Self::Tin, Self::Labels];

    /// The sheet without it.
    #[must_use]
    pub fn left_out_of(self, sheet: &Sheet) -> Sheet {
        let mut shorter = sheet.clone();
        match self {
            Self::Note => shorter.note = String::new(),
            Self::Heat => shorter.heat = HeatSettings::default(),
            Self::Tin => shorter.batch.tin = None,
            Self::Labels => {
                let parts = shorter.formula.parts.iter_mut();
                for line in parts.flat_map(|part| &mut part.lines) {
                    if let Food::Own(own) = &mut line.food {
                        own.label = Label::default();
                    }
                }
            }
        }
        shorter
    }
}
