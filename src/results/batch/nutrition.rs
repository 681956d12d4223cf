//! Nutrition: what is in 100 g, in a piece and in a loaf, as a label law has it declared.

use std::num::NonZeroU32;

use crate::engine::batch::Scaled;
use crate::engine::nutrition::{
    DeclaredEnergy, DeclaredLine, LabelLaw, Nutrient, Nutrients, Nutrition, NutritionError,
    declare, nutrition,
};
use crate::engine::quantity::{FoodEnergy, Mass};
use crate::engine::working::WorkingLine;
use crate::sheet::Sheet;

/// What a portion is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PortionKind {
    /// A hundred grams.
    HundredGrams,
    /// A piece.
    Piece,
    /// What is baked in one tin.
    Loaf,
}

/// A portion, what it holds, and what a label declares of it.
#[derive(Clone, Debug, PartialEq)]
pub struct NutritionPortion {
    /// What it is.
    pub kind: PortionKind,
    /// What it weighs.
    pub mass: Mass,
    /// What it holds, exact.
    pub nutrients: Nutrients,
    /// Its energy, rounded by the law.
    pub energy: DeclaredEnergy,
    /// Each nutrient in the order of the law, rounded by it.
    pub lines: Vec<DeclaredLine>,
}

/// The nutrition of a batch under one law.
#[derive(Clone, Debug, PartialEq)]
pub struct NutritionResults {
    /// Whose rounding it is.
    pub law: LabelLaw,
    /// The whole batch.
    pub whole: Nutrition,
    /// A hundred grams.
    pub hundred_grams: NutritionPortion,
    /// The energy of a hundred grams, exact.
    pub hundred_grams_energy: FoodEnergy,
    /// A piece.
    pub piece: NutritionPortion,
    /// What is baked in one tin, where that is another number than of pieces.
    pub loaf: Option<NutritionPortion>,
}

/// The nutrition of a batch, declared by a law.
///
/// ```
/// use softcrumb::engine::nutrition::LabelLaw;
/// use softcrumb::results::batch::{self, nutrition};
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let scaled = batch::scale(&sheet).unwrap();
/// let nutrition = nutrition::of(&sheet, &scaled, LabelLaw::Eu).unwrap();
///
/// // Bread: some 1000 to 1600 kJ in 100 g.
/// let kilojoules = nutrition.hundred_grams.energy.kilojoules.unwrap();
/// assert!((1000..1600).contains(&kilojoules));
/// ```
///
/// # Errors
/// [`NutritionError`] when the oven would take more than the water there is, when nothing is left
/// to eat, or when an energy leaves its range.
pub fn of(
    sheet: &Sheet,
    scaled: &Scaled,
    law: LabelLaw,
) -> Result<NutritionResults, NutritionError> {
    let whole = nutrition(scaled)?;
    let tins = sheet
        .batch
        .tin
        .map(|used| NonZeroU32::from(used.tins.count));
    let loaves = tins.filter(|tins| *tins != whole.pieces);
    let hundred = whole.in_hundred_grams();
    let portion = |kind, (mass, nutrients): (Mass, Nutrients)| {
        let (energy, lines) = declare(&nutrients, law)?;
        Ok::<_, NutritionError>(NutritionPortion {
            kind,
            mass,
            nutrients,
            energy,
            lines,
        })
    };
    Ok(NutritionResults {
        law,
        hundred_grams: portion(PortionKind::HundredGrams, (Mass::known(100.0), hundred))?,
        hundred_grams_energy: hundred.energy(law)?,
        piece: portion(PortionKind::Piece, whole.in_piece())?,
        loaf: loaves
            .map(|loaves| portion(PortionKind::Loaf, whole.in_one_of(loaves)))
            .transpose()?,
        whole,
    })
}

impl NutritionResults {
    /// Returns the portions that are declared: 100 g, a piece, and a loaf where that differs.
    pub fn portions(&self) -> impl Iterator<Item = &NutritionPortion> {
        [&self.hundred_grams, &self.piece]
            .into_iter()
            .chain(&self.loaf)
    }

    /// Returns the steps that lead to the energy of 100 g, in kJ and kcal by the law that is
    /// chosen.
    #[must_use]
    pub fn energy_working(&self) -> Vec<WorkingLine> {
        let nutrients = &self.hundred_grams.nutrients;
        nutrients.working_of_energy(self.law, self.hundred_grams_energy)
    }

    /// Returns the steps that lead to a nutrient in 100 g, in g.
    #[must_use]
    pub fn working_of(&self, nutrient: Nutrient) -> Vec<WorkingLine> {
        self.whole.working_of(nutrient)
    }
}
