//! A cooling held against the rules of food safety, stage by stage.

use super::conduction::{Curve, Probe};
use super::rule_set::{RuleSet, Stage};
use crate::engine::quantity::Minutes;
use crate::engine::working::{WorkingLine, given};

/// How one stage went.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StageResult {
    /// What was asked.
    pub stage: Stage,
    /// When the middle fell below where the stage starts.
    pub began: Minutes,
    /// When it was down to where it ends; `None` where it never was in the time followed.
    pub ended: Option<Minutes>,
    /// How long that took.
    pub took: Option<Minutes>,
    /// Whether that is fast enough.
    pub passes: bool,
}

/// How the cooling goes.
#[derive(Clone, Debug, PartialEq)]
pub struct Cooled {
    /// Sample by moment.
    pub curve: Curve,
    /// Stage by stage.
    pub stages: Vec<StageResult>,
    /// Whether every stage passes.
    pub passes: bool,
}

/// Holds a cooling against the rules.
///
/// The middle counts, where a probe is put: the clock of a stage starts when the middle falls
/// below its upper temperature, or at once where it starts lower.
#[must_use]
pub fn judge(curve: Curve, rules: RuleSet) -> Cooled {
    let stages: Vec<_> = rules
        .stages()
        .map(|stage| StageResult::of(&curve, *stage))
        .collect();
    let passes = stages.iter().all(|stage| stage.passes);
    Cooled {
        curve,
        stages,
        passes,
    }
}

impl StageResult {
    fn of(curve: &Curve, stage: Stage) -> Self {
        let start = curve
            .moments
            .first()
            .map_or(stage.to, |moment| moment.centre);
        let already = start <= stage.to;
        let began = if start <= stage.from {
            Some(Minutes::ZERO)
        } else {
            curve.reaches(stage.from, Probe::Centre, Minutes::ZERO)
        };
        let ended = if already {
            Some(Minutes::ZERO)
        } else {
            began.and_then(|began| curve.reaches(stage.to, Probe::Centre, began))
        };
        let took = began.zip(ended).and_then(|(began, ended)| {
            Minutes::from_minutes(ended.minutes() - began.minutes()).ok()
        });
        Self {
            stage,
            began: began.unwrap_or(Minutes::ZERO),
            ended,
            took,
            passes: took.is_some_and(|took| took <= stage.within),
        }
    }
}

impl Cooled {
    /// When the coldest limit of the rules is reached; `None` where it never was.
    #[must_use]
    pub fn cold(&self) -> Option<Minutes> {
        let coldest = self
            .stages
            .iter()
            .min_by(|one, other| one.stage.to.celsius().total_cmp(&other.stage.to.celsius()));
        coldest?.ended
    }

    /// How it came about: the time each stage took.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let took = self
            .stages
            .iter()
            .filter_map(|result| Some((result, result.ended?.minutes(), result.took?.minutes())));
        took.map(|(result, ended, took)| WorkingLine {
            rule: "E − B".into(),
            with: vec![
                given("E", "the middle is cold", ended, "min"),
                given("B", "the clock starts", result.began.minutes(), "min"),
            ],
            result: given("t", "time this stage takes", took, "min"),
            source: result.stage.source.into(),
        })
        .collect()
    }
}
