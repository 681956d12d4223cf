//! How a syrup's thickness came about, line by line.

use super::blend::Blend;
use super::liquid_needed::LiquidNeeded;
use super::minimum_water::MinimumWater;
use super::room_working::{crowding_line, room_lines};
use super::solubility::SolubilityTable;
use super::sugar_solution::{mole_fraction, temperature_term};
use super::suspension::{MixConditions, Suspension};
use super::syrup::{Flow, Syrup};
use crate::engine::quantity::{Mass, Viscosity};
use crate::engine::working::{Given, WorkingLine, given};

const GENOTELLE: &str = "Génotelle, Ind. aliment. agric. 95 (1978) 747, from memory; agrees with \
    Bingham and Jackson (1918) within 3 %";
const KRIEGER: &str = "Krieger and Dougherty, Trans. Soc. Rheol. 3 (1959) 137, from memory";

impl Syrup {
    /// How the thickness came about: water and sugar, room, and the two factors of the thickness.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let now = &self.components.now;
        let conditions = &self.components.conditions;
        let mut lines = vec![self.water_line()];
        lines.extend(self.solubility_lines());
        lines.push(self.dissolved_line());
        lines.extend(room_lines(&self.blend(), now, conditions));
        lines.push(crowding_line(now));
        lines.extend(sugared_water_lines(now, conditions));
        if let Flow::Flows { thickness, .. } = self.flow {
            lines.push(thickness_line(now, conditions, thickness));
        }
        lines
    }

    /// How chocolate and liquid stand to each other.
    #[must_use]
    pub fn parts_working(&self) -> Vec<WorkingLine> {
        vec![WorkingLine {
            rule: "100 × L / C".into(),
            with: vec![
                grams("L", "all liquids", self.liquid),
                grams("C", "chocolate", self.chocolate),
            ],
            result: given(
                "r",
                "liquid to 100 g of chocolate",
                self.liquid_on_chocolate.percent(),
                "g",
            ),
            source: "by definition".into(),
        }]
    }

    /// How the seizing point was found: with this liquid, grains and drops are just packed.
    #[must_use]
    pub fn seizing_working(&self) -> Vec<WorkingLine> {
        let Some(least) = self.least_liquid else {
            return Vec::new();
        };
        let there = self.components.with(least.grams());
        vec![
            crowding_line(&there),
            WorkingLine {
                rule: "100 × L / C".into(),
                with: vec![
                    grams("L", "least liquid that flows", least),
                    grams("C", "chocolate", self.chocolate),
                ],
                result: given(
                    "r",
                    "least liquid to 100 g of chocolate",
                    100.0 * least.grams() / self.chocolate.grams(),
                    "g",
                ),
                source: "found by halving, 60 times".into(),
            },
        ]
    }

    /// All that is in the syrup.
    fn blend(&self) -> Blend {
        let liquid = self.liquid.grams();
        self.components
            .chocolate
            .plus(liquid, &self.components.liquid)
    }

    fn water_line(&self) -> WorkingLine {
        let own = Mass::less(self.water, self.water_brought);
        WorkingLine {
            rule: "c + b".into(),
            with: vec![
                grams("c", "water in the chocolate", own),
                grams("b", "water in the liquid", self.water_brought),
            ],
            result: grams("W", "water", self.water),
            source: "composition of each ingredient".into(),
        }
    }

    fn solubility_lines(&self) -> Vec<WorkingLine> {
        let table = self.model.solubility;
        let read = table.read(self.temperature);
        let (name, unit) = match table {
            SolubilityTable::Antokolskaya => ("sugar in 100 g of water", "g"),
            SolubilityTable::Sokolovsky => ("sugar in the saturated solution", "%"),
        };
        let value = given("s", name, read.value, unit);
        let at = given("t", "temperature", read.at, "°C");
        let mut lines = vec![read.working(at, value.clone(), table.source())];
        if table == SolubilityTable::Sokolovsky {
            lines.push(WorkingLine {
                rule: "100 × s / (100 − s)".into(),
                with: vec![value],
                result: given(
                    "s",
                    "sugar in 100 g of water",
                    100.0 * self.components.conditions.solubility,
                    "g",
                ),
                source: "by definition".into(),
            });
        }
        lines
    }

    fn dissolved_line(&self) -> WorkingLine {
        WorkingLine {
            rule: "min(S, s × W / 100)".into(),
            with: vec![
                grams("S", "sugars", self.sugars),
                given(
                    "s",
                    "sugar in 100 g of water",
                    100.0 * self.components.conditions.solubility,
                    "g",
                ),
                grams("W", "water", self.water),
            ],
            result: grams("d", "sugar dissolved", self.dissolved),
            source: "all sugars counted as sucrose".into(),
        }
    }
}

impl LiquidNeeded {
    /// How the thickness with the liquid that was found comes about.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = vec![crowding_line(&self.mix)];
        lines.extend(sugared_water_lines(&self.mix, &self.conditions));
        lines.push(thickness_line(&self.mix, &self.conditions, self.thickness));
        lines
    }
}

impl MinimumWater {
    /// How the handbook's least water came about.
    #[must_use]
    pub fn working(&self, chocolate: Mass) -> Vec<WorkingLine> {
        vec![WorkingLine {
            rule: "r × C".into(),
            with: vec![
                given(
                    "r",
                    "water to chocolate",
                    self.water_on_chocolate.fraction(),
                    "",
                ),
                grams("C", "chocolate", chocolate),
            ],
            result: grams("W", "least water by the rule", self.needed),
            source: "Corriher, BakeWise (2008), from memory; common practice".into(),
        }]
    }
}

fn sugared_water_lines(mix: &Suspension, conditions: &MixConditions) -> [WorkingLine; 3] {
    let percent = mix.sugar_percent;
    let t = conditions.celsius;
    let n = given("N", "mole fraction of sugar", mole_fraction(percent), "");
    let p = given("P", "temperature term", temperature_term(t), "");
    [
        WorkingLine {
            rule: "B / (1900 − 18 × B)".into(),
            with: vec![given("B", "sugar in the sugared water", percent, "%")],
            result: n.clone(),
            source: GENOTELLE.into(),
        },
        WorkingLine {
            rule: "(30 − t) / (91 + t)".into(),
            with: vec![given("t", "temperature", t, "°C")],
            result: p.clone(),
            source: GENOTELLE.into(),
        },
        WorkingLine {
            rule: "10^(22.46 × N − 0.114 + P × (1.1 + 43.1 × N^1.25)) / 1000".into(),
            with: vec![n, p],
            result: sugared_water(mix, conditions),
            source: GENOTELLE.into(),
        },
    ]
}

fn thickness_line(
    mix: &Suspension,
    conditions: &MixConditions,
    thickness: Viscosity,
) -> WorkingLine {
    WorkingLine {
        rule: "E / (1 − v / p)^(2.5 × p)".into(),
        with: vec![
            sugared_water(mix, conditions),
            given("v", "share of grains and drops", mix.crowding, ""),
            given("p", "share at which they are packed", conditions.limit, ""),
        ],
        result: given("H", "thickness", thickness.pascal_seconds(), "Pa·s"),
        source: KRIEGER.into(),
    }
}

fn sugared_water(mix: &Suspension, conditions: &MixConditions) -> Given {
    given(
        "E",
        "thickness of the sugared water",
        mix.liquid_viscosity(conditions),
        "Pa·s",
    )
}

fn grams(letter: &'static str, of: &'static str, mass: Mass) -> Given {
    given(letter, of, mass.grams(), "g")
}
