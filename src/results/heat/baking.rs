//! Baking a formula in this kitchen: its programme, its core, and its time scaled from a known
//! bake.

use crate::engine::formula::Bread;
use crate::engine::heat::{
    BakeSetting, BakeTime, CoreTarget, Crumb, HeatError, Programme, bake_time, core_target, review,
    thickness_of,
};
use crate::engine::quantity::{Factor, Mass, Temperature};
use crate::engine::working::{Line, given};
use crate::sheet::{BakeSettings, HeatSettings, Kitchen};

/// All results of a bake.
#[derive(Clone, Debug, PartialEq)]
pub struct Baking {
    /// Its programme.
    pub programme: Result<Programme, HeatError>,
    /// Where water boils here.
    pub boils: Temperature,
    /// How hot the middle should be.
    pub core: CoreTarget,
    /// How long a piece of this batch takes, from the known bake.
    pub time: Result<BakeTime, HeatError>,
}

/// Looks a bake over: programme, core, and how long pieces of this weight take.
///
/// The dough goes in proofed; both bakes assume its temperature off the mixer.
///
/// ```
/// use softcrumb::engine::formula::Bread;
/// use softcrumb::engine::quantity::Mass;
/// use softcrumb::results::heat::baking;
/// use softcrumb::sheet::{HeatSettings, Kitchen};
///
/// let piece = Mass::from_grams(70.0).unwrap();
/// let bake = baking(Bread::SweetBun, piece, &Kitchen::default(), &HeatSettings::default())?;
/// // The core stays below the boiling point.
/// assert!(bake.core.to < bake.boils);
/// # Ok::<(), softcrumb::engine::heat::HeatError>(())
/// ```
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub fn baking(
    bread: Bread,
    piece: Mass,
    kitchen: &Kitchen,
    settings: &HeatSettings,
) -> Result<Baking, HeatError> {
    let boils = kitchen.boiling()?.temperature;
    let core = core_target(crumb(bread), boils)?;
    let programme = review(&settings.bake.phases);
    let oven = programme.as_ref().map(|programme| programme.mean_as_still);
    let time = oven
        .map_err(Clone::clone)
        .and_then(|oven| time(oven, core.from, piece, settings.dough, &settings.bake));
    Ok(Baking {
        programme,
        boils,
        core,
        time,
    })
}

fn time(
    oven: Temperature,
    core: Temperature,
    piece: Mass,
    dough: Temperature,
    settings: &BakeSettings,
) -> Result<BakeTime, HeatError> {
    let known = settings.known;
    let weight = piece.share_of(known.piece).ok_or(HeatError::NoKnownPiece)?;
    let thickness = thickness_of(Factor::from_number(weight.fraction())?)?;
    let from = BakeSetting {
        oven: known.oven,
        dough,
        core,
    };
    let to = BakeSetting { oven, ..from };
    bake_time(known.minutes, &from, &to, thickness)
}

impl Baking {
    /// How the core's range comes about.
    #[must_use]
    pub fn core_working(&self) -> Vec<Line> {
        vec![Line {
            rule: "min(K, B − 1)".into(),
            with: vec![
                given("K", "this crumb", self.core.to.celsius(), "°C"),
                given("B", "water boils here", self.boils.celsius(), "°C"),
            ],
            gives: given("T", "middle, at most", self.core.to.celsius(), "°C"),
            source: "common practice".into(),
        }]
    }
}

/// The crumb a kind of bread has.
const fn crumb(bread: Bread) -> Crumb {
    match bread {
        Bread::SoftTin | Bread::SweetBun => Crumb::SoftEnriched,
        Bread::RichEgg => Crumb::EggRich,
        Bread::PlainTin | Bread::Rye => Crumb::Lean,
    }
}
