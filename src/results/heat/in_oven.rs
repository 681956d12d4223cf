//! The content of the oven: the dough of a batch by its tin, and its temperature.

use crate::engine::batch::Scaled;
use crate::engine::formula::Bread;
use crate::engine::heat::{BakedBody, HeatError};
use crate::engine::quantity::{Mass, Temperature};
use crate::engine::tin::Tin;
use crate::sheet::Sheet;

/// The content of the oven.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct InOven {
    /// The kind of bread.
    pub bread: Bread,
    /// The tin; `None` where pieces stand free.
    pub tin: Option<Tin>,
    /// The dough in one tin.
    pub in_tin: Mass,
    /// The dough in one piece.
    pub piece: Mass,
    /// The temperature of the dough at the end of its proof.
    pub dough: Temperature,
}

impl InOven {
    /// The temperature of a dough at the end of its proof where that is not known. Common practice.
    pub const PROOFED: Temperature = Temperature::known(28.0);

    /// The batch of a sheet, its dough as warm as at the end of its proof; without dough where the
    /// batch cannot be scaled.
    ///
    /// ```
    /// use softcrumb::engine::heat::BakedShape;
    /// use softcrumb::results::{batch, heat::InOven};
    /// use softcrumb::sheet::examples;
    ///
    /// let (_, sheet) = examples().remove(0);
    /// let scaled = batch::scale(&sheet).unwrap();
    /// let in_oven = InOven::of(&sheet, Some(&scaled), InOven::PROOFED);
    /// // All pieces of a tin bake as one loaf.
    /// assert_eq!(in_oven.baked().unwrap().shape, BakedShape::Loaf);
    /// ```
    #[must_use]
    pub fn of(sheet: &Sheet, scaled: Option<&Scaled>, dough: Temperature) -> Self {
        let used = sheet.batch.tin;
        let tins = used.map_or(1.0, |used| f64::from(used.tins.count.get()));
        let needed = scaled.map_or(Mass::ZERO, |scaled| scaled.needed);
        let in_tin = Mass::from_grams(needed.grams() / tins);
        Self {
            bread: sheet.bread,
            tin: used.map(|used| used.tins.tin),
            in_tin: in_tin.unwrap_or_default(),
            piece: scaled.map_or(Mass::ZERO, |scaled| scaled.pieces.each),
            dough,
        }
    }

    /// Returns the body that bakes: its shape, dough in g, volume and measures.
    ///
    /// # Errors
    /// [`HeatError::EmptyBowl`] without dough; [`HeatError::OffScale`] when a measure of it leaves
    /// its range.
    pub fn baked(&self) -> Result<BakedBody, HeatError> {
        match &self.tin {
            Some(tin) => BakedBody::in_tin(self.bread, tin, self.in_tin, self.piece),
            None => BakedBody::apart(self.bread, self.piece),
        }
    }
}
