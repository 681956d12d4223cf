//! What is eaten: the nutrients of a batch as it comes to the table.

use std::num::NonZeroU32;

use super::energy::{energy_eu, energy_us};
use super::error::NutritionError;
use super::law::LabelLaw;
use super::nutrients::Nutrients;
use crate::engine::batch::Scaled;
use crate::engine::formula::Line;
use crate::engine::quantity::{FoodEnergy, Mass, Share};

/// What a whole batch holds as it is eaten, with the numbers met on the way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nutrition {
    /// In the lines of the dough, all of it.
    pub in_dough: Nutrients,
    /// The part of the dough that reaches the pieces.
    pub reaches: Share,
    /// In fillings, toppings and washes that reach the pieces.
    pub beside: Nutrients,
    /// In all pieces.
    pub all: Nutrients,
    /// Fillings, toppings and washes that reach the pieces.
    pub beside_mass: Mass,
    /// Water lost in the oven and while cooling.
    pub lost: Mass,
    /// All pieces as they are eaten.
    pub mass: Mass,
    /// How many pieces.
    pub pieces: NonZeroU32,
}

/// What a batch holds as it is eaten.
///
/// The nutrients of the dough's lines, as far as the dough reaches the pieces, and those of
/// fillings, toppings and washes less what stays in bag and bowl. What is lost as steam and in the
/// oven is water only, so it makes the bread lighter and takes nothing else.
///
/// Source: conservation of mass (by definition); composition of each ingredient.
///
/// # Errors
/// [`NutritionError::MoreThanWater`] when the oven would take more than the water there is;
/// [`NutritionError::NothingLeft`] when there is no bread.
pub fn nutrition(scaled: &Scaled) -> Result<Nutrition, NutritionError> {
    let reaches = scaled.needed.share_of(scaled.mixed).unwrap_or(Share::NONE);
    let kept = Share::WHOLE.less(scaled.losses.topping);
    let (mut in_dough, mut beside) = (Nutrients::default(), Nutrients::default());
    let (mut water, mut beside_mass) = (Mass::ZERO, Mass::ZERO);
    for part in &scaled.formula.parts {
        let held: Nutrients = part
            .lines
            .iter()
            .map(of_line)
            .fold(Nutrients::default(), Nutrients::and);
        if part.kind.in_dough() {
            in_dough = in_dough.and(held);
            let wet = part.lines.iter().map(water_of).sum::<Mass>();
            water = water + wet.less(part.steam);
        } else {
            beside = beside.and(held.component(kept));
            beside_mass = beside_mass + part.mass().component(kept);
        }
    }
    let water = water.component(reaches);
    let lost = scaled.lost_baking;
    if lost > water {
        return Err(NutritionError::MoreThanWater { lost, water });
    }
    let mass = (scaled.needed.less(lost) + beside_mass).unsaturated()?;
    if mass <= Mass::ZERO {
        return Err(NutritionError::NothingLeft);
    }
    Ok(Nutrition {
        in_dough,
        reaches,
        beside,
        all: in_dough.component(reaches).and(beside),
        beside_mass,
        lost,
        mass,
        pieces: scaled.pieces.count,
    })
}

fn of_line(line: &Line) -> Nutrients {
    Nutrients::of(line.mass, &line.food.composition())
}

fn water_of(line: &Line) -> Mass {
    line.mass.component(line.food.composition().water)
}

impl Nutrition {
    /// The nutrients of a portion.
    #[must_use]
    pub fn in_portion(&self, portion: Mass) -> Nutrients {
        self.all
            .component(portion.share_of(self.mass).unwrap_or(Share::NONE))
    }

    /// The nutrients of a hundred grams.
    #[must_use]
    pub fn in_hundred_grams(&self) -> Nutrients {
        self.in_portion(Mass::known(100.0))
    }

    /// The weight of one of so many equal portions, and what is in it.
    #[must_use]
    pub fn in_one_of(&self, portions: NonZeroU32) -> (Mass, Nutrients) {
        let share = Share::from_fraction(1.0 / f64::from(portions.get())).unwrap_or(Share::WHOLE);
        (self.mass.component(share), self.all.component(share))
    }

    /// The weight of one piece, and what is in it.
    #[must_use]
    pub fn in_piece(&self) -> (Mass, Nutrients) {
        self.in_one_of(self.pieces)
    }
}

impl Nutrients {
    /// Their energy by one of the laws.
    ///
    /// # Errors
    /// [`NutritionError::OffScale`] for more than a tonne.
    pub fn energy(&self, law: LabelLaw) -> Result<FoodEnergy, NutritionError> {
        Ok(match law {
            LabelLaw::Eu => energy_eu(self)?,
            LabelLaw::Us => energy_us(self)?,
        })
    }
}
