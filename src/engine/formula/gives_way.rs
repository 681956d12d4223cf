//! Which line gives way, when a figure is set and the user has not said.

use super::figure::Contribution;
use super::{Figure, Formula, LineAt, giving_way};
use crate::engine::quantity::Mass;

impl Figure {
    /// The line that usually gives way when this figure is set: for water the one that
    /// [`giving_way`] names, else the line of the dough that brings most of the figure.
    ///
    /// `None` where no line of the dough brings any.
    #[must_use]
    pub fn gives_way(self, formula: &Formula) -> Option<LineAt> {
        let of_water = matches!(
            self,
            Self::PouredWater | Self::Liquids | Self::TrueWater | Self::TotalWater | Self::Dough
        );
        let water = of_water.then(|| giving_way(formula)).flatten();
        water.or_else(|| self.heaviest(formula))
    }

    fn heaviest(self, formula: &Formula) -> Option<LineAt> {
        let parts = formula.parts.iter().enumerate();
        parts
            .filter(|(_, own)| own.kind.in_dough())
            .flat_map(|(part, own)| {
                own.lines.iter().enumerate().map(move |(line, written)| {
                    let brings = self.in_gram(&Contribution::new(own.kind, written));
                    (LineAt { part, line }, written.mass.component(brings))
                })
            })
            .filter(|(_, mass)| *mass > Mass::ZERO)
            .max_by(|(_, one), (_, other)| one.grams().total_cmp(&other.grams()))
            .map(|(at, _)| at)
    }
}
