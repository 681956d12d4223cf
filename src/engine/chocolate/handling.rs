//! Consistency: what a syrup of some viscosity can be used for.

use crate::engine::quantity::Viscosity;

/// What can be done with a syrup, from thin to thick.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Consistency {
    /// Runs off like milk and soaks in.
    RunsThin,
    /// Coats what is dipped or brushed.
    Dips,
    /// Runs from a bag or a spoon in a thread.
    Drizzles,
    /// Comes from a bag when pressed and keeps its line.
    Pipes,
    /// Stays where a palette knife puts it.
    Spreads,
    /// Too stiff to work.
    Stiff,
}

impl Consistency {
    /// Every class, from thin to thick.
    pub const ALL: [Self; 6] = [
        Self::RunsThin,
        Self::Dips,
        Self::Drizzles,
        Self::Pipes,
        Self::Spreads,
        Self::Stiff,
    ];

    /// The classes that a syrup can be made for: all but what is too stiff to work.
    pub const WORKABLE: [Self; 5] = [
        Self::RunsThin,
        Self::Dips,
        Self::Drizzles,
        Self::Pipes,
        Self::Spreads,
    ];

    /// The thickness below which a class ends, Pa·s; none for the last.
    ///
    /// Common practice, set beside things everyone knows at kitchen temperature: milk 0.002,
    /// light oil 0.06, honey near 10, nut butter over 100 Pa·s.
    #[must_use]
    pub fn below(self) -> Option<Viscosity> {
        let end = match self {
            Self::RunsThin => Some(0.06),
            Self::Dips => Some(0.15),
            Self::Drizzles => Some(1.0),
            Self::Pipes => Some(10.0),
            Self::Spreads => Some(100.0),
            Self::Stiff => None,
        };
        end.and_then(|end| Viscosity::from_pascal_seconds(end).ok())
    }

    /// A thickness in the middle of the class, on a scale of ratios; for the last class a little
    /// beyond its beginning.
    #[must_use]
    pub fn typical(self) -> Option<Viscosity> {
        let pascal_seconds = match self {
            Self::RunsThin => 0.03,
            Self::Dips => 0.095,
            Self::Drizzles => 0.39,
            Self::Pipes => 3.2,
            Self::Spreads => 32.0,
            Self::Stiff => 200.0,
        };
        Viscosity::from_pascal_seconds(pascal_seconds).ok()
    }

    /// The class of a thickness; a boundary belongs to the thicker class.
    #[must_use]
    pub fn of(thickness: Viscosity) -> Self {
        Self::ALL
            .into_iter()
            .find(|class| class.below().is_none_or(|end| thickness < end))
            .unwrap_or(Self::Stiff)
    }
}
