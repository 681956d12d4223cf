//! Rule sets: how fast food must cool, as authorities write it.

use crate::engine::quantity::{Minutes, Temperature};

/// Whose rules are followed. Local rules come first; these are starting points.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum RuleSet {
    /// All of the others at once: what passes here passes everywhere.
    #[default]
    Strictest,
    /// Food and Drug Administration (United States), *Food Code*.
    UnitedStates,
    /// Food Standards Agency (United Kingdom).
    UnitedKingdom,
    /// France, order on catering.
    France,
}

/// One stretch of cooling that must not take longer than it may.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stage {
    /// Whose rule it is.
    pub by: RuleSet,
    /// The clock starts when the middle falls below this.
    pub from: Temperature,
    /// It stops when the middle is down to this.
    pub to: Temperature,
    /// How long it may take.
    pub within: Minutes,
    /// Where the rule is written.
    pub source: &'static str,
}

const fn stage(by: RuleSet, from: f64, to: f64, within: f64, source: &'static str) -> Stage {
    Stage {
        by,
        from: Temperature::known(from),
        to: Temperature::known(to),
        within: Minutes::known(within),
        source,
    }
}

const FOOD_CODE: &str = "FDA Food Code 2022, 3-501.14(A)";

/// All stages, those of one authority side by side.
const STAGES: [Stage; 5] = [
    stage(RuleSet::UnitedStates, 57.0, 21.0, 120.0, FOOD_CODE),
    stage(RuleSet::UnitedStates, 57.0, 5.0, 360.0, FOOD_CODE),
    stage(
        RuleSet::UnitedKingdom,
        63.0,
        8.0,
        90.0,
        "FSA, Safer food, better business (from memory): to 8 °C or below in about 90 minutes",
    ),
    stage(
        RuleSet::UnitedKingdom,
        63.0,
        8.0,
        120.0,
        "Food Safety and Hygiene (England) Regulations 2013, schedule 4: hot food may be below 63 °C for up to 2 hours, here the most that cooling may take",
    ),
    stage(
        RuleSet::France,
        63.0,
        10.0,
        120.0,
        "French order on catering and cold storage: 63 to 10 °C in less than 2 hours",
    ),
];

impl RuleSet {
    /// Every rule set, in the order lists are shown.
    pub const ALL: [Self; 4] = [
        Self::Strictest,
        Self::UnitedStates,
        Self::UnitedKingdom,
        Self::France,
    ];

    /// What it asks for.
    pub fn stages(self) -> impl Iterator<Item = &'static Stage> {
        STAGES
            .iter()
            .filter(move |stage| self == Self::Strictest || stage.by == self)
    }

    /// The coldest that any of its stages asks for.
    #[must_use]
    pub fn coldest(self) -> Temperature {
        let coldest = self.stages().map(|stage| stage.to.celsius());
        Temperature::known(coldest.fold(63.0, f64::min))
    }
}
