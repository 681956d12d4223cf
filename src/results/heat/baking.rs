//! Baking what stands in the oven of this kitchen: programme, core, time from a known bake, and how
//! long the bread cools.

use super::in_oven::InOven;
use super::usual_bake::usual_bake;
use crate::engine::formula::Bread;
use crate::engine::heat::{
    BakeSetting, BakeTime, BakedBody, CoreTarget, Crumb, HeatError, LoafCooling, Programme,
    bake_time, cool_loaf, core_target, review,
};
use crate::engine::learn::LearntFactor;
use crate::engine::quantity::{Mass, Minutes, Share, Temperature};
use crate::engine::working::{WorkingLine, given};
use crate::sheet::{BakeLength, HeatSettings, Kitchen, KnownBake};

/// All results of a bake.
#[derive(Clone, Debug, PartialEq)]
pub struct Baking {
    /// Its programme, as it is set.
    pub programme: Result<Programme, HeatError>,
    /// The programme as it is expected without a log: as long as is worked out, or as it is set
    /// where that is wished or nothing can be worked out.
    pub expected: Result<Programme, HeatError>,
    /// The programme as it is baked: as expected, in an oven as the log has taught it.
    pub planned: Result<Programme, HeatError>,
    /// Where water boils here.
    pub boils: Temperature,
    /// How hot the middle should be.
    pub core: CoreTarget,
    /// What bakes as one body.
    pub baked: Result<BakedBody, HeatError>,
    /// The known bake, or the usual one.
    pub known: KnownBake,
    /// How long it takes, from the known bake.
    pub time: Result<BakeTime, HeatError>,
    /// How long the bread cools until it is cut, from what the middle has come to at least.
    pub cooling: Result<LoafCooling, HeatError>,
}

/// Works out a bake: programme, core, the minutes in the oven, and the cooling afterwards.
///
/// The known bake went in at [`InOven::PROOFED`]. What the log has `taught` of the oven makes the
/// bake that many times as long, and says how far off it is.
///
/// ```
/// use softcrumb::results::{batch, heat::{InOven, baking}};
/// use softcrumb::sheet::{HeatSettings, Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let scaled = batch::scale(&sheet).unwrap();
/// let in_oven = InOven::of(&sheet, Some(&scaled), InOven::PROOFED);
/// let bake = baking(&in_oven, &Kitchen::default(), &HeatSettings::default(), None)?;
/// // The core stays below the boiling point.
/// assert!(bake.core.to < bake.boils);
/// // The programme lasts as long as is worked out, to the minute.
/// let differs = bake.planned?.total.minutes() - bake.time?.likely.minutes();
/// assert!(differs.abs() <= 0.5);
/// # Ok::<(), softcrumb::engine::heat::HeatError>(())
/// ```
///
/// # Errors
/// [`HeatError::OffScale`] never within the ranges of the quantities.
pub fn baking(
    in_oven: &InOven,
    kitchen: &Kitchen,
    settings: &HeatSettings,
    taught: Option<&LearntFactor>,
) -> Result<Baking, HeatError> {
    let boils = kitchen.boiling()?.temperature;
    let core = core_target(crumb(in_oven.bread), boils)?;
    let programme = review(&settings.bake.phases);
    let baked = in_oven.baked();
    let usual = |body: &BakedBody| usual_bake(in_oven.bread, body.shape, body.dough);
    let standing = baked
        .clone()
        .or_else(|_| BakedBody::apart(in_oven.bread, USUAL_PIECE))?;
    let known = settings.bake.known.unwrap_or_else(|| usual(&standing));
    let both = programme.clone().and_then(|own| Ok((own, baked.clone()?)));
    let time = both.and_then(|(own, body)| time(&own, body, core.from, in_oven, &known));
    let expected = match (&time, settings.bake.length) {
        (Ok(time), BakeLength::Predicted) => {
            let own = programme.clone();
            own.and_then(|own| own.lasting(time.likely))
        }
        (Ok(_), BakeLength::Programme) | (Err(_), _) => programme.clone(),
    };
    let time = time.and_then(|time| match taught {
        Some(taught) => time.in_an_oven(taught.factor, taught.rests.spread),
        None => Ok(time),
    });
    let planned = in_this_oven(&programme, &expected, &time, (taught, settings.bake.length));
    let cooling = baked
        .clone()
        .and_then(|body| cool_loaf(&body.body, in_oven.bread, kitchen.room, core.from));
    Ok(Baking {
        programme,
        expected,
        planned,
        boils,
        core,
        baked,
        known,
        time,
        cooling,
    })
}

/// The programme as an oven bakes it that the log has `taught`: as long as its time says where that is
/// wished, else each phase so many times as long.
fn in_this_oven(
    programme: &Result<Programme, HeatError>,
    expected: &Result<Programme, HeatError>,
    time: &Result<BakeTime, HeatError>,
    (taught, length): (Option<&LearntFactor>, BakeLength),
) -> Result<Programme, HeatError> {
    let expected = expected.clone();
    match (taught, time, length) {
        (None, ..) => expected,
        (Some(_), Ok(time), BakeLength::Predicted) => programme.clone()?.lasting(time.likely),
        (Some(taught), ..) => {
            let expected = expected?;
            let total = expected.total.minutes() * taught.factor.number();
            expected.lasting(Minutes::from_minutes(total)?)
        }
    }
}

/// The piece whose shape selects the usual bake where there is no dough yet.
const USUAL_PIECE: Mass = Mass::known(75.0);

fn time(
    programme: &Programme,
    baked: BakedBody,
    core: Temperature,
    in_oven: &InOven,
    known: &KnownBake,
) -> Result<BakeTime, HeatError> {
    let from = BakeSetting {
        baked: BakedBody::known(in_oven.bread, known.baked_as(), known.piece)?,
        oven: known.oven,
        heat: Share::WHOLE,
        dough: InOven::PROOFED,
        core,
    };
    let to = BakeSetting {
        baked,
        oven: programme.mean_as_still,
        heat: programme.heat,
        dough: in_oven.dough,
        core,
    };
    bake_time(known.minutes, &from, &to)
}

impl Baking {
    /// Returns the step that leads to the range of the core's temperature, in °C.
    #[must_use]
    pub fn core_working(&self) -> Vec<WorkingLine> {
        vec![WorkingLine {
            rule: "min(K, B − 1)".into(),
            with: vec![
                given("K", "this crumb", self.core.to.celsius(), "°C"),
                given("B", "water boils here", self.boils.celsius(), "°C"),
            ],
            result: given("T", "middle, at most", self.core.to.celsius(), "°C"),
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
