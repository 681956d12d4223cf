//! Food: an ingredient of the larder, or one of the user's own.

use super::water::ICE;
use super::{
    Allergen, Composition, Constituent, Listed, OwnFood, Presence, Role, Source, UnknownIngredient,
};

/// What a line of a formula holds.
#[derive(Clone, Debug, PartialEq)]
pub enum Food {
    /// A row of the larder.
    Listed(Listed),
    /// The user's own.
    Own(OwnFood),
}

impl Food {
    /// What it is called.
    #[must_use]
    pub fn name(&self) -> &str {
        match self {
            Self::Listed(listed) => listed.row().name,
            Self::Own(own) => &own.name,
        }
    }

    /// What it does in a dough.
    #[must_use]
    pub fn role(&self) -> Role {
        match self {
            Self::Listed(listed) => listed.row().role,
            Self::Own(own) => own.role,
        }
    }

    /// Water that goes in frozen and melts.
    ///
    /// ```
    /// use softcrumb::engine::ingredients::Food;
    ///
    /// assert!(Food::ice().is_ok_and(|ice| ice.is_ice()));
    /// ```
    ///
    /// # Errors
    /// [`UnknownIngredient`] never.
    pub fn ice() -> Result<Self, UnknownIngredient> {
        Listed::numbered(ICE).map(Self::Listed)
    }

    /// Whether it is water that goes in frozen and melts.
    #[must_use]
    pub fn is_ice(&self) -> bool {
        match self {
            Self::Listed(listed) => listed.row().number == ICE,
            Self::Own(_) => false,
        }
    }

    /// What it is made of.
    #[must_use]
    pub fn composition(&self) -> Composition {
        match self {
            Self::Listed(listed) => listed.row().composition(),
            Self::Own(own) => own.composition(),
        }
    }

    /// What must be named.
    #[must_use]
    pub fn allergens(&self) -> &[Allergen] {
        match self {
            Self::Listed(listed) => listed.row().allergens,
            Self::Own(own) => &own.allergens,
        }
    }

    /// How sure it is that the food holds an allergen; none where a single food does not.
    ///
    /// An own food holds what the user marked. Without a mark nothing is known of it.
    #[must_use]
    pub fn presence(&self, allergen: Allergen) -> Option<Presence> {
        if self.allergens().contains(&allergen) {
            return Some(Presence::Contains);
        }
        match self {
            Self::Listed(listed) => {
                let packet = listed.row().packet?;
                Some(if packet.usual.contains(&allergen) {
                    Presence::Usual
                } else if packet.possible.contains(&allergen) {
                    Presence::Possible
                } else {
                    Presence::NotKnown
                })
            }
            Self::Own(own) => own.allergens.is_empty().then_some(Presence::NotKnown),
        }
    }

    /// Whether only its packet tells all of its allergens.
    #[must_use]
    pub fn packet_decides(&self) -> bool {
        match self {
            Self::Listed(listed) => listed.row().packet.is_some(),
            Self::Own(own) => own.allergens.is_empty(),
        }
    }

    /// The parts of its composition that no table or label gives: worked out, or counted as none
    /// for want of a figure.
    #[must_use]
    pub fn worked_out(&self) -> Vec<Constituent> {
        match self {
            Self::Listed(listed) => listed.row().worked_out().collect(),
            Self::Own(own) => own.worked_out(),
        }
    }

    /// Where its composition was read.
    #[must_use]
    pub fn source(&self) -> Source {
        match self {
            Self::Listed(listed) => listed.row().source,
            Self::Own(_) => Source::Label,
        }
    }
}
