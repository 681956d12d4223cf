//! The user's own ingredients.

use super::from_label::Labelled;
use super::label_error::{check_label, check_name};
use super::{Allergen, Composition, Constituent, Label, LabelError, Role, from_label};
use crate::engine::quantity::Share;

/// An ingredient of the user's own.
///
/// [`OwnFood::new`] is the door: it holds name and label against what is possible. The parts are
/// open to be read, and every answer below stands whatever they hold.
#[derive(Clone, Debug, PartialEq)]
pub struct OwnFood {
    /// As the user calls it; at most [`OwnFood::NAME_LENGTH`] characters.
    pub name: String,
    /// What it does in a dough.
    pub role: Role,
    /// What its label says.
    pub label: Label,
    /// What the user marked as to be named.
    pub allergens: Vec<Allergen>,
}

impl OwnFood {
    /// The most characters a name may have.
    pub const NAME_LENGTH: usize = 60;

    /// An ingredient by its label. Spaces around the name are dropped.
    ///
    /// # Errors
    /// [`LabelError`] when the name cannot be shown or the label cannot be true.
    pub fn new(
        name: &str,
        role: Role,
        label: Label,
        allergens: Vec<Allergen>,
    ) -> Result<Self, LabelError> {
        let food = Self {
            name: name.trim().to_owned(),
            role,
            label,
            allergens,
        };
        food.check()?;
        Ok(food)
    }

    /// Holds its name and label against what is possible, for one that came another way.
    ///
    /// # Errors
    /// [`LabelError`] when the name cannot be shown or the label cannot be true.
    pub fn check(&self) -> Result<(), LabelError> {
        check_name(&self.name, Self::NAME_LENGTH)?;
        check_label(&self.label)
    }

    /// What it is made of, as far as the label lets it be worked out: see [`Self::worked_out`].
    #[must_use]
    pub fn composition(&self) -> Composition {
        from_label::composition(self.labelled())
    }

    /// The parts the label does not give, which [`Self::composition`] works out or counts as none.
    #[must_use]
    pub fn worked_out(&self) -> Vec<Constituent> {
        from_label::worked_out(self.labelled())
    }

    fn labelled(&self) -> Labelled<'_> {
        Labelled {
            role: self.role,
            label: &self.label,
            fat_free_cocoa: self.fat_free_cocoa(),
        }
    }

    /// Cocoa that is not cocoa butter, for a chocolate without milk whose cocoa and fat are known.
    ///
    /// All fat of a plain chocolate is taken for cocoa butter. In milk chocolate the two fats
    /// cannot be told apart by the label, so there is no answer.
    #[must_use]
    pub fn fat_free_cocoa(&self) -> Option<Share> {
        let plain = self.role == Role::Chocolate && !self.allergens.contains(&Allergen::Milk);
        match (self.label.cocoa, self.label.fat) {
            (Some(cocoa), Some(fat)) if plain => Some(cocoa.less(fat)),
            _ => None,
        }
    }
}
