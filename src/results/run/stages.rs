//! The stages of a run, strand by strand: pastes, preferments, the dough and its bread.

use super::chilled::PartTemperatures;
use super::run_input::RunInput;
use super::stage::{Stage, StageKind, between, held};
use crate::engine::formula::Formula;
use crate::engine::heat::CUT_AT;
use crate::engine::learn::Learnt;
use crate::engine::plan::{SCALDING, hands_between, shaping_time};
use crate::engine::quantity::{Minutes, Share, Temperature};
use crate::results::day::Rises;
use crate::results::heat::{Baking, LoadSource, MixingResult};

/// What was worked out for a run.
pub(super) struct Followed<'r> {
    /// The formula with every paste and preferment as warm as it leaves the fridge.
    pub(super) formula: &'r Formula,
    /// The mix, where it can be worked out.
    pub(super) mixing: Option<&'r MixingResult>,
    /// Whether the dough was measured off the mixer.
    pub(super) dough_is_measured: bool,
    /// The rises.
    pub(super) rises: &'r Rises,
    /// The bake, where it can be worked out.
    pub(super) baking: Option<&'r Baking>,
    /// The phases of the bake of one load, as this oven bakes.
    pub(super) bake: &'r [Minutes],
}

/// How far a bake is off that cannot be compared with another. Common practice: printed times of
/// one bread differ by a fifth.
const BAKE_SPREAD: f64 = 0.2;

/// The stages, by strand in the order of time.
pub(super) fn stages(run: &Followed, input: &RunInput, parts: &[PartTemperatures]) -> Vec<Stage> {
    let mut stages: Vec<Stage> = parts
        .iter()
        .flat_map(|part| run.part_stages(part, input))
        .collect();
    stages.extend(run.dough_stages(input));
    stages.extend(run.bread_stages(input));
    stages
}

/// A stage that is not measured.
const fn stage(kind: StageKind, [starts, ends]: [Temperature; 2], lasts: [Minutes; 3]) -> Stage {
    Stage {
        kind,
        part: None,
        starts,
        ends,
        lasts,
        is_measured: false,
    }
}

impl Followed<'_> {
    /// Scalding, standing, chilling and standing out of a paste or preferment.
    fn part_stages(&self, one: &PartTemperatures, input: &RunInput) -> Vec<Stage> {
        let own = self.formula.parts.get(one.part);
        let chilled = own.and_then(|own| own.temperature).unwrap_or(one.chilled);
        let scald = one.poured.map(|poured| {
            stage(
                StageKind::Scald,
                [poured, one.made],
                hands_between(SCALDING),
            )
        });
        let cooling = [
            stage(StageKind::Stand, [one.made, one.stood], [one.standing; 3]),
            stage(StageKind::Chill, [one.stood, chilled], [one.chilling; 3]),
        ];
        let warm_up = self.mixed_in_at(one.part).map(|warm| {
            let lasts = [input.heat.standing; 3];
            stage(StageKind::WarmUp, [chilled, warm], lasts)
        });
        let all = scald.into_iter().chain(cooling).chain(warm_up);
        let part = Some(one.part);
        all.map(|stage| Stage { part, ..stage }).collect()
    }

    /// The temperature at which a paste or preferment goes into the mixer.
    fn mixed_in_at(&self, part: usize) -> Option<Temperature> {
        let load = &self.mixing?.load;
        let item = load.item(LoadSource::Part(part))?;
        Some(item.component.temperature)
    }

    /// Mixing, rising, shaping and proofing.
    fn dough_stages(&self, input: &RunInput) -> [Stage; 4] {
        let at = self.rises.temperatures;
        let together = self
            .mixing
            .map_or(at.mixed, |mixing| mixing.dough.mixed.temperature);
        let mixing = input.heat.mixing.unwrap_or(input.kitchen.mixer.minutes);
        let shaping = shaping_time(input.formula, input.pieces, input.rises.rest);
        let bulk = between(&self.rises.bulk, input.rises.bulk.time);
        let proof = between(&self.rises.proof, input.rises.proof.time);
        [
            Stage {
                is_measured: self.dough_is_measured,
                ..stage(StageKind::Mix, [together, at.mixed], hands_between(mixing))
            },
            stage(StageKind::Bulk, [at.mixed, at.risen], bulk),
            stage(
                StageKind::Shape,
                [at.risen, at.shaped],
                hands_between(shaping),
            ),
            stage(StageKind::Proof, [at.shaped, at.proofed], proof),
        ]
    }

    /// Baking until the middle has come to what it must reach, and cooling until it is cut.
    fn bread_stages(&self, input: &RunInput) -> Vec<Stage> {
        let Some(baking) = self.baking else {
            return Vec::new();
        };
        let (dough, core) = (self.rises.temperatures.proofed, baking.core.from);
        let lasts = self.bake_lasts(baking, input.learnt);
        let mut stages = vec![stage(StageKind::Bake, [dough, core], lasts)];
        if let Ok(cooling) = &baking.cooling {
            let lasts = [cooling.from, cooling.likely, cooling.to];
            stages.push(stage(StageKind::Cool, [core, CUT_AT], lasts));
        }
        stages
    }

    /// How long one load bakes: at the soonest, most likely, at the latest. What the log has taught,
    /// or else the comparison with the known bake, says how far off it is.
    fn bake_lasts(&self, baking: &Baking, learnt: &Learnt) -> [Minutes; 3] {
        let likely: f64 = self.bake.iter().map(|phase| phase.minutes()).sum();
        let taught = learnt.bake.as_ref().map(|bake| bake.rests.spread);
        let compared = baking.time.as_ref().ok().map(|time| time.spread);
        let off = compared.or(taught).map_or(BAKE_SPREAD, Share::fraction);
        let off = off.min(1.0);
        [1.0 - off, 1.0, 1.0 + off].map(|times| held(likely * times))
    }
}
