//! The water ledger: the dough's water counted four ways, where it sits, and who brought it.

use std::borrow::Cow;

use super::figures::of_flour;
use super::{Figure, Figures, Form, Formula, FormulaError, LineAt, PartKind};
use crate::engine::ingredients::Food;
use crate::engine::quantity::{Mass, Share};

/// So much water, and what that is of the flour.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Water {
    /// Its weight.
    pub mass: Mass,
    /// Its share of the flour.
    pub share: Share,
}

/// What one line brings.
#[derive(Clone, Debug, PartialEq)]
pub struct Contributor {
    /// Where the line stands.
    pub at: LineAt,
    /// What becomes of its part.
    pub kind: PartKind,
    /// What it is called.
    pub food: Cow<'static, str>,
    /// The weight of the line.
    pub mass: Mass,
    /// How much of it is water.
    pub water_content: Share,
    /// The water it brings.
    pub water: Mass,
    /// Whether it is flour, whose own moisture only the total counts.
    pub is_flour: bool,
}

/// The water of a dough.
///
/// Eggs and milk are *liquids* at their full weight and *true* water by what is in them. Steam
/// is taken off the true and the total water, and off the part that lost it; what was poured
/// stays what was poured.
#[derive(Clone, Debug, PartialEq)]
pub struct WaterLedger {
    /// Which weights were counted.
    pub form: Form,
    /// All flour of the dough.
    pub flour: Mass,
    /// All of the dough, less the steam.
    pub dough: Mass,
    /// Plain water only.
    pub poured: Water,
    /// Water, other liquids and eggs at full weight.
    pub liquids: Water,
    /// All water by composition, flour's own left out.
    pub true_water: Water,
    /// All water by composition, flour's own included.
    pub total: Water,
    /// All water as a share of the dough: wet basis.
    pub moisture: Share,
    /// True water held in pastes.
    pub in_paste: Water,
    /// True water that went into preferments.
    pub in_preferment: Water,
    /// True water free in the final mix.
    pub free: Water,
    /// The steam that was taken off.
    pub steam: Mass,
    /// What each line brings, most first; lines without water are left out.
    pub from: Vec<Contributor>,
}

impl WaterLedger {
    /// The water of a formula's dough.
    ///
    /// Source of each water content: the composition of the ingredient.
    ///
    /// # Errors
    /// [`FormulaError::NoFlour`] where the dough has none; [`FormulaError::OffScale`] where it
    /// has next to none.
    pub fn of(formula: &Formula, form: Form) -> Result<Self, FormulaError> {
        let figures = Figures::of(formula, form);
        let flour = figures.try_mass(Figure::Flour)?;
        let water = |figure| {
            let mass = figures.try_mass(figure)?;
            of_flour(mass, flour).map(|share| Water { mass, share })
        };
        Ok(Self {
            form,
            flour,
            dough: figures.try_mass(Figure::Dough)?,
            poured: water(Figure::PouredWater)?,
            liquids: water(Figure::Liquids)?,
            true_water: water(Figure::TrueWater)?,
            total: water(Figure::TotalWater)?,
            moisture: figures.moisture().unwrap_or_default(),
            in_paste: water(Figure::WaterInPaste)?,
            in_preferment: water(Figure::WaterInPreferment)?,
            free: water(Figure::WaterInFinal)?,
            steam: figures.steam,
            from: contributors(formula, form),
        })
    }
}

fn contributors(formula: &Formula, form: Form) -> Vec<Contributor> {
    let mut from: Vec<Contributor> = Vec::new();
    for (part, own) in formula.parts.iter().enumerate() {
        if !own.kind.in_dough() {
            continue;
        }
        from.extend(own.lines.iter().enumerate().map(|(line, written)| {
            let mass = form.mass(written);
            let water_content = written.food.composition().water;
            Contributor {
                at: LineAt { part, line },
                kind: own.kind,
                food: name(&written.food),
                mass,
                water_content,
                water: mass.component(water_content),
                is_flour: written.is_flour(),
            }
        }));
    }
    from.retain(|one| one.water > Mass::ZERO);
    from.sort_by(|one, other| other.water.grams().total_cmp(&one.water.grams()));
    from
}

/// The name of a food, borrowed where the ingredient table holds it.
pub(super) fn name(food: &Food) -> Cow<'static, str> {
    match food {
        Food::Listed(listed) => Cow::Borrowed(listed.row().name),
        Food::Own(own) => Cow::Owned(own.name.clone()),
    }
}
