//! How the water activity of a syrup came about, line by line.

use super::water_activity::WaterActivity;
use crate::engine::working::{Given, WorkingLine, given};

impl WaterActivity {
    /// How the water activity came about.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        vec![
            self.mole_fraction_line(),
            WorkingLine {
                rule: "(1 − x) × exp(−K × x^2)".into(),
                with: vec![
                    self.sugar_moles(),
                    given("K", "Norrish's constant of sucrose", Self::NORRISH, ""),
                ],
                result: self.sugar_activity(),
                source:
                    "Norrish, J. Food Technol. 1 (1966) 25; K: Chirife et al. (1980), from memory"
                        .into(),
            },
            WorkingLine {
                rule: "1 − k × m".into(),
                with: vec![
                    given("k", "fall for each mol/kg", Self::SALT, ""),
                    given("m", "salt", self.salt_molality.fraction(), "mol/kg"),
                ],
                result: self.salt_activity(),
                source: "straight line through computed values to 1.4 mol/kg".into(),
            },
            WorkingLine {
                rule: "a × b".into(),
                with: vec![self.sugar_activity(), self.salt_activity()],
                result: given("w", "water activity", self.water_activity.fraction(), ""),
                source: "Ross, Food Technol. 29(3) (1975) 26, from memory".into(),
            },
        ]
    }

    fn mole_fraction_line(&self) -> WorkingLine {
        let dissolved = self.sugar_in_solution.fraction();
        WorkingLine {
            rule: "(q / 342.3) / (q / 342.3 + (1 − q) / 18.015)".into(),
            with: vec![given(
                "q",
                "sugar in the sugared water at 20 °C",
                dissolved,
                "",
            )],
            result: self.sugar_moles(),
            source: "all sugars counted as sucrose".into(),
        }
    }

    fn sugar_moles(&self) -> Given {
        given(
            "x",
            "mole fraction of sugar",
            self.mole_fraction.fraction(),
            "",
        )
    }

    fn sugar_activity(&self) -> Given {
        given("a", "water activity by sugar", self.by_sugar.fraction(), "")
    }

    fn salt_activity(&self) -> Given {
        given("b", "water activity by salt", self.by_salt.fraction(), "")
    }
}
