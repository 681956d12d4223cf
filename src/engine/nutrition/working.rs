//! The working of nutrition.

use super::eaten::Nutrition;
use super::law::LabelLaw;
use super::nutrients::{Nutrient, Nutrients, SALT_OF_SODIUM};
use crate::engine::quantity::{FoodEnergy, Mass};
use crate::engine::working::{Given, WorkingLine, given};

impl Nutrition {
    /// The steps that lead to a nutrient in a hundred grams.
    #[must_use]
    pub fn working_of(&self, nutrient: Nutrient) -> Vec<WorkingLine> {
        let salt = nutrient == Nutrient::Salt;
        let basis = if salt { Nutrient::Sodium } else { nutrient };
        let share = self.in_hundred_grams().of_one(basis);
        let mut lines = vec![WorkingLine {
            rule: "100 × (S × k + T) / B".into(),
            with: vec![
                grams(
                    "S",
                    "in the dough’s ingredients",
                    self.in_dough.of_one(basis),
                ),
                given(
                    "k",
                    "part of the dough in the pieces",
                    self.reaches.fraction(),
                    "",
                ),
                grams("T", "in fillings and toppings", self.beside.of_one(basis)),
                grams("B", "all pieces as eaten", self.mass),
            ],
            result: grams("x", "in 100 g", share),
            source: "composition of each ingredient; only water is lost in the oven".into(),
        }];
        if salt {
            lines.push(self.salt_line(share));
        }
        lines
    }

    fn salt_line(&self, sodium: Mass) -> WorkingLine {
        let salt = self.in_hundred_grams().of_one(Nutrient::Salt);
        WorkingLine {
            rule: "k × x".into(),
            with: vec![
                given("k", "salt for a gram of sodium", SALT_OF_SODIUM, ""),
                grams("x", "sodium in 100 g", sodium),
            ],
            result: grams("s", "salt in 100 g", salt),
            source: "Regulation (EU) No 1169/2011, annex I".into(),
        }
    }
}

impl Nutrients {
    /// The steps that lead to their energy: kilojoules and kilocalories for the EU, kilocalories for the US.
    #[must_use]
    pub fn working_of_energy(&self, law: LabelLaw, energy: FoodEnergy) -> Vec<WorkingLine> {
        match law {
            LabelLaw::Eu => vec![
                self.energy_line(
                    "17 × (C + P) + 37 × F + 8 × f + 29 × a",
                    true,
                    given("E", "energy", energy.kilojoules(), "kJ"),
                    "Regulation (EU) No 1169/2011, annex XIV",
                ),
                self.energy_line(
                    "4 × (C + P) + 9 × F + 2 × f + 7 × a",
                    true,
                    given("E", "energy", energy.kilocalories(), "kcal"),
                    "Regulation (EU) No 1169/2011, annex XIV",
                ),
            ],
            LabelLaw::Us => vec![self.energy_line(
                "4 × (C + P) + 9 × F + 7 × a",
                false,
                given("E", "energy", energy.kilocalories(), "kcal"),
                "21 CFR 101.9(c)(1)(i)",
            )],
        }
    }

    fn energy_line(
        &self,
        rule: &'static str,
        fibre: bool,
        result: Given,
        source: &'static str,
    ) -> WorkingLine {
        let mut with = vec![
            grams("C", "carbohydrate without fibre", self.carbohydrate),
            grams("P", "protein", self.protein),
            grams("F", "fat", self.fat),
        ];
        if fibre {
            with.push(grams("f", "fibre", self.fibre));
        }
        with.push(grams("a", "alcohol", self.alcohol));
        WorkingLine {
            rule: rule.into(),
            with,
            result,
            source: source.into(),
        }
    }
}

fn grams(letter: &'static str, of: &'static str, mass: Mass) -> Given {
    given(letter, of, mass.grams(), "g")
}
