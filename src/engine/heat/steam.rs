//! Steam: what a paste loses while it cooks, found by weighing.

use super::error::HeatError;
use crate::engine::quantity::{Heat, HeatPerMass, Mass, Share, Temperature};
use crate::engine::working::{WorkingLine, given};

/// What went off as steam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SteamLoss {
    /// Weight before.
    pub before: Mass,
    /// Weight after.
    pub after: Mass,
    /// The difference.
    pub lost: Mass,
    /// The difference as a share of the weight before.
    pub share: Share,
    /// The heat a gram of steam carries off at this temperature.
    pub latent: HeatPerMass,
    /// The heat all of it carried off.
    pub heat: Heat,
}

/// Heat that turns a gram of water to steam at `at`, 0 to 100 °C; level beyond.
///
/// Source: a cubic through IAPWS-95, within 0.02 J/g of it.
///
/// # Errors
/// [`HeatError::OffScale`] never.
pub fn latent_heat_of_boiling(at: Temperature) -> Result<HeatPerMass, HeatError> {
    let t = at.celsius().clamp(0.0, 100.0);
    let joules = 2_500.904_86 + t * (-2.374_665_16 + t * (5.230_688_05e-4 - t * 1.225_918_99e-5));
    Ok(HeatPerMass::from_joules_per_gram(joules)?)
}

/// What went off as steam, from the weight before and after.
///
/// # Errors
/// [`HeatError::Gained`] when it weighs more after; [`HeatError::EmptyBowl`] when it weighed
/// nothing before.
pub fn steam_loss(before: Mass, after: Mass, at: Temperature) -> Result<SteamLoss, HeatError> {
    if after > before {
        return Err(HeatError::Gained { before, after });
    }
    let lost = before.less(after);
    let latent = latent_heat_of_boiling(at)?;
    Ok(SteamLoss {
        before,
        after,
        lost,
        share: lost.share_of(before).ok_or(HeatError::EmptyBowl)?,
        latent,
        heat: latent * lost,
    })
}

impl SteamLoss {
    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let lost = given("S", "steam", self.lost.grams(), "g");
        vec![
            WorkingLine {
                rule: "B − A".into(),
                with: vec![
                    given("B", "before", self.before.grams(), "g"),
                    given("A", "after", self.after.grams(), "g"),
                ],
                result: lost.clone(),
                source: "by definition".into(),
            },
            WorkingLine {
                rule: "S × L".into(),
                with: vec![
                    lost,
                    given(
                        "L",
                        "heat in a gram of steam",
                        self.latent.joules_per_gram(),
                        "J/g",
                    ),
                ],
                result: given("Q", "heat carried off", self.heat.joules(), "J"),
                source: "IAPWS-95".into(),
            },
        ]
    }
}
