//! How the temperature and the lumps of melted chocolate came about.

use super::melt::{HOT, HOT_MORE, LATENT_HEAT, Melted, SOLID_AT_20};
use crate::engine::working::{WorkingLine, given};

const BECKETT: &str =
    "Beckett (ed.), Industrial Chocolate Manufacture and Use, 4th ed., pp. 667-668";
const SOLID_FAT: &str =
    "solid share of cocoa butter: Chaiseri and Dimick 1989 (from memory), Wille and Lutton 1966";

impl Melted {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let settled = given("T", "all together", self.temperature.celsius(), "°C");
        let mut lines = vec![self.reading.working(
            settled.clone(),
            given("S", "fat still solid", self.unmelted.fraction(), ""),
            SOLID_FAT,
        )];
        lines.push(WorkingLine {
            rule: "l × m × f × (s − S) / W + h × m / 1000 × (max(T − H, 0) − max(Z − H, 0))".into(),
            with: vec![
                given(
                    "l",
                    "melts a gram of cocoa butter",
                    LATENT_HEAT.joules_per_gram(),
                    "J/g",
                ),
                given("m", "chocolate", self.chocolate.grams(), "g"),
                given("f", "fat in it", self.fat.fraction(), ""),
                given("s", "fat solid before", self.solid_before.fraction(), ""),
                given("S", "fat still solid", self.unmelted.fraction(), ""),
                given("W", "fat solid at 20 °C", SOLID_AT_20, ""),
                given("h", "more specific heat when hot", HOT_MORE, "J/(kg·K)"),
                settled,
                given("Z", "chocolate before", self.chocolate_at.celsius(), "°C"),
                given("H", "hot from", HOT, "°C"),
            ],
            result: given("A", "heat used up", self.mixed.absorbed.joules(), "J"),
            source: BECKETT.into(),
        });
        lines.extend(self.mixed.working());
        lines
    }
}
