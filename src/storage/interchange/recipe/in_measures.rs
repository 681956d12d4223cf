//! A weight in cups and spoons: only about, for who has no scale.

use super::household::weight;
use super::measure::MeasureUnit;
use crate::engine::ingredients::Food;
use crate::engine::numerics::whole;
use crate::engine::quantity::Mass;

/// Below so many tablespoons a weight is given in spoons alone.
const CUPS_FROM: f64 = 4.0;
const TABLESPOONS_IN_CUP: f64 = 16.0;
/// More cups than this are no kitchen measure.
const MOST_CUPS: f64 = 40.0;

/// About how many cups and spoons a weight is, the larger first, each with its count in quarters:
/// to the half tablespoon, or the quarter teaspoon where it is less than one; whole eggs where the
/// table weighs one. None where the table has no measure of the food, where it is less than an
/// eighth of a teaspoon, or more than forty cups.
///
/// Source: as `weight`.
#[must_use]
pub fn in_measures(food: &Food, mass: Mass) -> Option<Vec<(MeasureUnit, u32)>> {
    let Food::Listed(listed) = food else {
        return None;
    };
    let number = listed.row().number;
    let of = |unit| Some(mass.grams() / weight(number, unit)?.grams());
    if let Some(count) = of(MeasureUnit::Whole) {
        let quarters = whole(libm::round(count * 4.0));
        return (quarters > 0).then(|| vec![(MeasureUnit::Whole, quarters)]);
    }
    let tablespoons = of(MeasureUnit::Tablespoon)?;
    let components = if tablespoons < 1.0 {
        let quarters = whole(libm::round(of(MeasureUnit::Teaspoon)? * 4.0));
        vec![(MeasureUnit::Teaspoon, quarters)]
    } else if tablespoons < CUPS_FROM {
        vec![(MeasureUnit::Tablespoon, halves(tablespoons))]
    } else {
        let (cup, spoon) = (
            weight(number, MeasureUnit::Cup)?,
            weight(number, MeasureUnit::Tablespoon)?,
        );
        // What rounds up to the next quarter of a cup is that quarter.
        let nearly = mass.grams() + spoon.grams() / 4.0;
        let quarters = whole(nearly / cup.grams() * 4.0);
        let over = mass.grams() - f64::from(quarters) * cup.grams() / 4.0;
        vec![
            (MeasureUnit::Cup, quarters),
            (
                MeasureUnit::Tablespoon,
                halves((over / spoon.grams()).max(0.0)),
            ),
        ]
    };
    let components: Vec<_> = components
        .into_iter()
        .filter(|(_, count)| *count > 0)
        .collect();
    let few = tablespoons <= MOST_CUPS * TABLESPOONS_IN_CUP;
    (few && !components.is_empty()).then_some(components)
}

/// To the half, counted in quarters.
fn halves(count: f64) -> u32 {
    whole(libm::round(count * 2.0) * 2.0)
}
