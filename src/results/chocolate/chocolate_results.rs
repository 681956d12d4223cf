//! `ChocolateResults`: the filling of a batch, the syrup of the formula, and how the syrup melts.

use crate::engine::batch::Scaled;
use crate::engine::chocolate::{
    ChocolateError, Fill, FillAsked, FlowCurve, MeltRemedy, Melted, Melting, Syrup, SyrupCaution,
    fill, melt, melt_remedies,
};
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::HeatError;
use crate::engine::quantity::Temperature;
use crate::results::batch::{BatchResults, scaled_formula};
use crate::results::heat::melting;
use crate::sheet::Sheet;
use crate::sheet::{Kitchen, MeltSettings};

/// A syrup with its flow curve.
#[derive(Clone, Debug, PartialEq)]
pub struct SyrupResults {
    /// The syrup.
    pub syrup: Syrup,
    /// Its thickness against the liquid.
    pub curve: FlowCurve,
}

impl SyrupResults {
    /// Returns the cautions about its figures, without the one that is shown beside the curve: how
    /// far to trust the thickness.
    #[must_use]
    pub fn doubts(&self) -> Vec<SyrupCaution> {
        let all = self.syrup.cautions.iter();
        all.filter(|doubt| **doubt != SyrupCaution::WithinAFactorOfTwo)
            .copied()
            .collect()
    }
}

/// The filling of a batch.
#[derive(Clone, Debug, PartialEq)]
pub struct FillingResults {
    /// Which part it is.
    pub part: usize,
    /// How much of it each piece gets; `None` where the batch cannot be worked out.
    pub fill: Option<Result<Fill, ChocolateError>>,
}

/// Chocolate and hot liquid, as they are poured together.
#[derive(Clone, Debug, PartialEq)]
pub struct MeltResults {
    /// What is poured together.
    pub melting: Melting,
    /// Where it settles.
    pub melted: Melted,
}

impl MeltResults {
    /// Searches the remedies for lumps; `None` where they cannot be worked out. It takes some
    /// milliseconds.
    #[must_use]
    pub fn remedies(&self) -> Option<Vec<MeltRemedy>> {
        melt_remedies(&self.melting, &self.melted).ok()
    }
}

/// Results for the filling and the syrup of a sheet; of several of a kind, the first.
#[derive(Clone, Debug, PartialEq)]
pub struct ChocolateResults {
    /// The filling; `None` where the formula has none.
    pub filling: Option<FillingResults>,
    /// Which part is the syrup; `None` where the formula has none.
    pub syrup_part: Option<usize>,
    /// The syrup as the formula has it.
    pub syrup: Option<Result<SyrupResults, ChocolateError>>,
    /// The syrup as large as the batch makes it.
    pub made: Option<Result<Syrup, ChocolateError>>,
    /// The melting of the syrup's chocolate, for the batch.
    pub melt: Option<Result<MeltResults, HeatError>>,
}

/// Results for the filling and the syrup of a sheet and its batch.
///
/// ```
/// use softcrumb::results::{batch, chocolate};
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let kitchen = Kitchen::default();
/// let batch = batch::of(&sheet, kitchen.scales);
/// let results = chocolate::of(&sheet, &kitchen, &batch);
/// let syrup = results.syrup.unwrap().unwrap().syrup;
/// assert!(syrup.least_liquid.unwrap() < syrup.liquid);
/// ```
#[must_use]
pub fn of(sheet: &Sheet, kitchen: &Kitchen, batch: &BatchResults) -> ChocolateResults {
    let formula = &sheet.formula;
    let scaled = batch.scaled.as_ref().ok();
    let syrup_part = formula.first_part(PartKind::Topping);
    ChocolateResults {
        filling: formula
            .first_part(PartKind::Filling)
            .map(|part| FillingResults {
                part,
                fill: scaled.and_then(|scaled| filling(scaled, part)),
            }),
        syrup_part,
        syrup: syrup_part.and_then(|part| syrup_at(formula, part, sheet.batch.syrup_at)),
        made: syrup_part.and_then(|part| made(&batch.formula, part, sheet.batch.syrup_at)),
        melt: syrup_part.and_then(|part| melted(&batch.formula, part, kitchen, &sheet.heat.melt)),
    }
}

fn made(
    formula: &Formula,
    part: usize,
    temperature: Temperature,
) -> Option<Result<Syrup, ChocolateError>> {
    Some(Syrup::of(formula.parts.get(part)?, temperature))
}

/// The first syrup of a sheet as large as its batch makes it; `None` where it has none.
///
/// ```
/// use softcrumb::engine::batch::BatchTarget;
/// use softcrumb::engine::quantity::Factor;
/// use softcrumb::results::chocolate;
/// use softcrumb::sheet::examples;
///
/// let (_, mut sheet) = examples().remove(0);
/// let once = chocolate::syrup_made(&sheet).unwrap().unwrap().chocolate.grams();
/// sheet.batch.wanted = BatchTarget::Times(Factor::from_number(2.0).unwrap());
/// let twice = chocolate::syrup_made(&sheet).unwrap().unwrap().chocolate.grams();
/// assert!(twice > 1.9 * once);
/// ```
#[must_use]
pub fn syrup_made(sheet: &Sheet) -> Option<Result<Syrup, ChocolateError>> {
    let part = sheet.formula.first_part(PartKind::Topping)?;
    made(&scaled_formula(sheet), part, sheet.batch.syrup_at)
}

/// The first syrup of a sheet; `None` where it has none.
#[must_use]
pub fn syrup(sheet: &Sheet) -> Option<Result<SyrupResults, ChocolateError>> {
    let part = sheet.formula.first_part(PartKind::Topping)?;
    syrup_at(&sheet.formula, part, sheet.batch.syrup_at)
}

/// Returns the syrup of one part at a temperature of use; `None` where the formula has no such
/// part.
///
/// # Errors
/// [`ChocolateError`] inside, where that syrup cannot be worked out.
#[must_use]
pub fn syrup_at(
    formula: &Formula,
    part: usize,
    temperature: Temperature,
) -> Option<Result<SyrupResults, ChocolateError>> {
    let syrup = Syrup::of(formula.parts.get(part)?, temperature);
    Some(syrup.map(|syrup| SyrupResults {
        curve: syrup.curve(),
        syrup,
    }))
}

/// Returns the filling of one part of a batch, in g; `None` where the batch has no such part.
///
/// # Errors
/// [`ChocolateError`] inside, where that filling cannot be worked out.
#[must_use]
pub fn filling(scaled: &Scaled, part: usize) -> Option<Result<Fill, ChocolateError>> {
    let batch = scaled.formula.parts.get(part)?.mass();
    Some(fill(
        FillAsked::Total(batch),
        scaled.pieces.count,
        scaled.pieces.each,
        scaled.losses.topping,
    ))
}

/// Returns the chocolate of one part, melted by its liquid; `None` where the formula has no such
/// part.
///
/// # Errors
/// [`HeatError`] inside, where that part cannot be melted.
#[must_use]
pub fn melted(
    formula: &Formula,
    part: usize,
    kitchen: &Kitchen,
    settings: &MeltSettings,
) -> Option<Result<MeltResults, HeatError>> {
    let melting = melting(formula.parts.get(part)?, kitchen, settings);
    Some(melting.and_then(|melting| {
        Ok(MeltResults {
            melted: melt(&melting)?,
            melting,
        })
    }))
}

/// How warm what is melted together is at the start.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeltTemperatures {
    /// The liquid; `None` where this kitchen's boiling point cannot be worked out.
    pub liquid: Option<Temperature>,
    /// The chocolate.
    pub chocolate: Temperature,
    /// The bowl.
    pub bowl: Temperature,
}

/// Returns the start temperatures in °C: as set, else the liquid just off the boil, chocolate and
/// bowl as warm as the room.
#[must_use]
pub fn melt_temperatures(settings: &MeltSettings, kitchen: &Kitchen) -> MeltTemperatures {
    MeltTemperatures {
        liquid: settings.liquid.or_else(|| kitchen.off_the_boil().ok()),
        chocolate: settings.chocolate.unwrap_or(kitchen.room),
        bowl: settings.bowl.unwrap_or(kitchen.room),
    }
}
