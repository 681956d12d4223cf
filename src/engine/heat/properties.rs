//! What a food's composition makes of its specific heat, conductivity and density.

use super::component::Component;
use super::error::HeatError;
use super::matter::Matter;
use crate::engine::quantity::{Conductivity, Density, Share, SpecificHeat, Temperature};
use crate::engine::working::{Given, WorkingLine, given};

/// What one component brings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Term {
    /// Which component.
    pub component: Component,
    /// How much of the food it is, by weight.
    pub share: Share,
    /// How much of the food it is, by volume.
    pub of_volume: Share,
    /// Its specific heat.
    pub specific_heat: SpecificHeat,
    /// Its conductivity.
    pub conductivity: Conductivity,
    /// Its density.
    pub density: Density,
}

/// The thermal properties of a food at one temperature.
#[derive(Clone, Debug, PartialEq)]
pub struct Properties {
    /// The temperature they hold at.
    pub at: Temperature,
    /// What each component brings.
    pub terms: Vec<Term>,
    /// Specific heat.
    pub specific_heat: SpecificHeat,
    /// Conductivity, as if the components lay side by side along the flow.
    pub conductivity: Conductivity,
    /// Density, without air.
    pub density: Density,
}

/// The curves hold from −40 to 150 °C; hotter or colder counts as the end of that.
const HOLDS: (f64, f64) = (-40.0, 150.0);

const CHOI_OKOS: &str = "Choi and Okos 1986, in Le Maguer and Jelen (eds), Food Engineering and Process Applications 1, pp. 93-101";

impl Properties {
    /// The properties of `food` at a temperature.
    ///
    /// `c = Σ xᵢ·cᵢ`; `1/ρ = Σ xᵢ/ρᵢ`; `k = Σ vᵢ·kᵢ` with vᵢ the shares of the volume.
    /// No air is counted, so a risen dough is lighter and conducts less.
    ///
    /// Source: Choi and Okos 1986, −40 to 150 °C.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] when a property leaves its range.
    pub fn of(food: &Matter, at: Temperature) -> Result<Self, HeatError> {
        let t = at.celsius().clamp(HOLDS.0, HOLDS.1);
        let volume: f64 = food
            .components()
            .map(|(one, x)| x / one.density().at(t))
            .sum();
        let mut terms = Vec::with_capacity(Component::ALL.len());
        let (mut heat, mut conduction) = (0.0, 0.0);
        for (component, share) in food.components() {
            let density = component.density().at(t);
            let conductivity = component.conductivity().at(t);
            let specific = if t < 0.0 {
                component.specific_heat_below_freezing()
            } else {
                component.specific_heat()
            };
            let specific = 1000.0 * specific.at(t);
            let of_volume = share / density / volume;
            heat += share * specific;
            conduction += of_volume * conductivity;
            terms.push(Term {
                component,
                share: Share::from_fraction(share)?,
                of_volume: Share::from_fraction(of_volume)?,
                specific_heat: SpecificHeat::from_joules_per_kilogram_kelvin(specific)?,
                conductivity: Conductivity::from_watts_per_metre_kelvin(conductivity)?,
                density: Density::from_kilograms_per_cubic_metre(density)?,
            });
        }
        Ok(Self {
            at,
            terms,
            specific_heat: SpecificHeat::from_joules_per_kilogram_kelvin(heat)?,
            conductivity: Conductivity::from_watts_per_metre_kelvin(conduction)?,
            density: Density::from_kilograms_per_cubic_metre(1.0 / volume)?,
        })
    }

    /// The working of the three, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let specific_heat = self.specific_heat.joules_per_kilogram_kelvin();
        let conductivity = self.conductivity.watts_per_metre_kelvin();
        let density = self.density.kilograms_per_cubic_metre();
        vec![
            self.line(
                "{x} × {y}",
                |t| (t.share, t.specific_heat.joules_per_kilogram_kelvin()),
                given("c", "specific heat", specific_heat, "J/(kg·K)"),
            ),
            self.line(
                "{x} × {y}",
                |t| (t.of_volume, t.conductivity.watts_per_metre_kelvin()),
                given("k", "conductivity", conductivity, "W/(m·K)"),
            ),
            self.line(
                "{x} / {y}",
                |t| (t.share, t.density.kilograms_per_cubic_metre()),
                given("d", "density", density, "kg/m³"),
            ),
        ]
    }

    /// One sum over the components. A sum of volumes, `{x} / {y}`, is turned round.
    fn line(&self, pattern: &str, of: fn(&Term) -> (Share, f64), result: Given) -> WorkingLine {
        let mut with = Vec::with_capacity(2 * self.terms.len());
        let mut rule: Vec<String> = Vec::with_capacity(self.terms.len());
        for (place, term) in self.terms.iter().enumerate() {
            let name = term.component.name();
            let (share, value) = of(term);
            let (x, y) = (
                format!("x{}", place + 1),
                format!("{}{}", result.letter, place + 1),
            );
            rule.push(pattern.replace("{x}", &x).replace("{y}", &y));
            with.push(given(x, name, share.fraction(), ""));
            with.push(given(y, name, value, result.unit));
        }
        let sum = rule.join(" + ");
        let turned = pattern.contains('/');
        WorkingLine {
            rule: if turned { format!("1 / ({sum})") } else { sum }.into(),
            with,
            result,
            source: CHOI_OKOS.into(),
        }
    }
}

impl Component {
    /// What the trade calls it.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Water => "water",
            Self::Ice => "ice",
            Self::Protein => "protein",
            Self::Fat => "fat",
            Self::Carbohydrate => "carbohydrate",
            Self::Fibre => "fibre",
            Self::Ash => "ash",
            Self::SugarCrystals => "sugar, dry",
            Self::SaltCrystals => "salt, dry",
            Self::Alcohol => "alcohol",
        }
    }
}
