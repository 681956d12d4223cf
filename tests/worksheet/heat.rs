//! Heat: every question of heat for one document, and bare coolings and boilings that are asked.

use softcrumb::engine::chocolate::{Melted, Melting, melt};
use softcrumb::engine::formula::{Formula, PartKind};
use softcrumb::engine::heat::{
    Boiling, CookedPaste, Cooled, Curve, DoughRemedy, DoughTemperature, FactorMethod, HeatError,
    LiquidAnswer, boiling_at, boiling_under, cook, dough_temperature, follow, liquid_for,
};
use softcrumb::engine::kitchen::{
    Baking, BoilsBy, CoolingPlan, HeatShare, MixerLoad, baking, bowlful, cooling_plan,
    factor_method_for, melting, paste, shares,
};
use softcrumb::engine::quantity::Mass;
use softcrumb::results::heat::DoughQuestion;

use crate::asked::Asked;
use crate::asked_heat::CoolingAsked;

/// Everything about heat that follows from one document.
pub(crate) struct Heat {
    pub(crate) boiling: Result<Boiling, HeatError>,
    pub(crate) pastes: Vec<(usize, Result<PasteSums, HeatError>)>,
    pub(crate) bowl: Result<BowlSums, HeatError>,
    pub(crate) baking: Result<Baking, HeatError>,
    pub(crate) melts: Vec<(usize, Result<MeltSums, HeatError>)>,
    pub(crate) coolings: Vec<Result<Curve, HeatError>>,
    pub(crate) boilings: Vec<Result<Boiling, HeatError>>,
}

/// A paste, and how it cools. What makes it pass is looked for where it is told: that is slow,
/// and the page too looks for it once all else has been drawn.
pub(crate) struct PasteSums {
    pub(crate) cooked: CookedPaste,
    pub(crate) plan: CoolingPlan,
    pub(crate) cooled: Cooled,
}

/// The bowl in the morning.
pub(crate) struct BowlSums {
    pub(crate) bowlful: MixerLoad,
    pub(crate) came: DoughTemperature,
    pub(crate) shares: Vec<HeatShare>,
    pub(crate) liquid: Result<LiquidAnswer, HeatError>,
    pub(crate) at_best: Vec<DoughRemedy>,
    pub(crate) ways: Vec<DoughRemedy>,
    pub(crate) factor: Result<FactorMethod, HeatError>,
}

/// Chocolate and hot liquid.
pub(crate) struct MeltSums {
    pub(crate) asked: Melting,
    pub(crate) melted: Melted,
}

impl Heat {
    /// Works out everything, for the formula as large as it is made and pieces of this weight.
    pub(crate) fn of(asked: &Asked, made: &Formula, piece: Mass) -> Self {
        let (kitchen, settings) = (&asked.kitchen, &asked.sheet.heat);
        let of_kind = |kind| {
            let numbered = made.parts.iter().enumerate();
            numbered.filter(move |(_, own)| own.kind == kind)
        };
        Self {
            boiling: kitchen.boiling(),
            pastes: of_kind(PartKind::Paste)
                .filter_map(|(at, _)| Some((at, paste_sums(asked, made, at)?)))
                .collect(),
            bowl: bowl(asked, made),
            baking: baking(asked.sheet.bread, piece, kitchen, settings),
            melts: of_kind(PartKind::Topping)
                .map(|(at, own)| {
                    let asked = melting(own, kitchen, &settings.melt);
                    (at, asked.and_then(melt_sums))
                })
                .collect(),
            coolings: asked.heat.coolings.iter().map(cooling).collect(),
            boilings: asked
                .heat
                .boilings
                .iter()
                .map(|by| match by {
                    BoilsBy::Altitude(altitude) => boiling_at(*altitude),
                    BoilsBy::Pressure(pressure) => boiling_under(*pressure),
                })
                .collect(),
        }
    }
}

fn paste_sums(asked: &Asked, made: &Formula, at: usize) -> Option<Result<PasteSums, HeatError>> {
    let (kitchen, settings) = (&asked.kitchen, &asked.sheet.heat);
    let stirred = paste(made, at, kitchen, &settings.paste).transpose()?;
    let own = made.parts.get(at)?;
    Some(stirred.and_then(|stirred| {
        let cooked = cook(&stirred)?;
        let plan = cooling_plan(own, cooked.temperature, kitchen, &settings.cooling)?;
        Ok(PasteSums {
            cooled: plan.follow()?,
            cooked,
            plan,
        })
    }))
}

fn bowl(asked: &Asked, made: &Formula) -> Result<BowlSums, HeatError> {
    let (kitchen, settings) = (&asked.kitchen, &asked.sheet.heat);
    let bowlful = bowlful(made, kitchen, settings)?;
    let came = dough_temperature(&bowlful.dough)?;
    let liquid = liquid_for(
        &bowlful.dough,
        settings.dough,
        kitchen.surroundings().liquid,
    );
    let at_best = liquid.as_ref().ok().and_then(|liquid| {
        DoughQuestion::at_best(&bowlful, liquid, settings.dough, kitchen)?.remedies()
    });
    Ok(BowlSums {
        shares: shares(&bowlful, &came, settings.dough)?,
        liquid,
        at_best: at_best.unwrap_or_default(),
        ways: DoughQuestion::as_it_is(&bowlful, settings.dough, kitchen)
            .remedies()
            .unwrap_or_default(),
        factor: factor_method_for(&bowlful, kitchen, settings.dough),
        bowlful,
        came,
    })
}

fn melt_sums(asked: Melting) -> Result<MeltSums, HeatError> {
    Ok(MeltSums {
        melted: melt(&asked)?,
        asked,
    })
}

fn cooling(asked: &CoolingAsked) -> Result<Curve, HeatError> {
    follow(&asked.body, asked.start, &asked.stays)
}
