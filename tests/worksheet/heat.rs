//! Heat: every question of heat for one document, and bare coolings and boilings that are asked.

use softcrumb::engine::batch::Scaled;
use softcrumb::engine::chocolate::{Melted, Melting, melt};
use softcrumb::engine::formula::{Formula, PartKind};
use softcrumb::engine::heat::{
    Boiling, Curve, DoughRemedy, HeatError, boiling_at, boiling_under, simulate, simulate_in_vessel,
};
use softcrumb::engine::learn::Learnt;
use softcrumb::results::heat::{
    CoolingResult, DoughQuestion, HeatInput, HeatResults, InOven, MixingResult, PasteCooling,
    melting,
};
use softcrumb::results::run::{Run, RunInput};
use softcrumb::sheet::BoilsBy;

use crate::asked::Asked;
use crate::asked_heat::CoolingAsked;
use crate::asked_vessel::VesselAsked;

/// Everything about heat that follows from one document.
pub(crate) struct Heat {
    pub(crate) run: Run,
    pub(crate) results: HeatResults,
    /// The cooling of each paste, in the order of the pastes. What makes it pass is worked out
    /// where it is printed: that is slow, and the page too works it out after the frame.
    pub(crate) paste_coolings: Vec<CoolingResult>,
    pub(crate) remedies: Remedies,
    pub(crate) melts: Vec<(usize, Result<MeltSums, HeatError>)>,
    pub(crate) coolings: Vec<Result<Curve, HeatError>>,
    pub(crate) vessel_coolings: Vec<Result<Curve, HeatError>>,
    pub(crate) boilings: Vec<Result<Boiling, HeatError>>,
}

/// What else brings the dough to its temperature.
#[derive(Default)]
pub(crate) struct Remedies {
    /// With the liquid at its best, where none is in reach.
    pub(crate) at_best: Vec<DoughRemedy>,
    /// With the liquid as it is.
    pub(crate) as_it_is: Vec<DoughRemedy>,
}

/// Chocolate and hot liquid.
pub(crate) struct MeltSums {
    pub(crate) asked: Melting,
    pub(crate) melted: Melted,
}

impl Heat {
    /// Works out everything, for the formula as large as it is made.
    pub(crate) fn of(asked: &Asked, formula: &Formula, made: Option<&Scaled>) -> Self {
        let (kitchen, settings) = (&asked.kitchen, &asked.sheet.heat);
        let run = Run::of(&RunInput {
            formula,
            kitchen,
            heat: settings,
            rises: &asked.rises(),
            pieces: asked.sheet.batch.pieces.get(),
            learnt: &Learnt::default(),
            in_oven: InOven::of(&asked.sheet, made, InOven::PROOFED),
            measured_dough: None,
            planned: None,
        });
        let results = HeatResults::of(&HeatInput {
            formula,
            settings,
            kitchen,
            picked: None,
            run: &run,
        });
        let toppings = formula.parts.iter().enumerate();
        let toppings = toppings.filter(|(_, own)| own.kind == PartKind::Topping);
        Self {
            paste_coolings: paste_coolings(asked, formula, &results, &run.coolings),
            remedies: results
                .mixing
                .as_ref()
                .map(|mixing| remedies(asked, mixing))
                .unwrap_or_default(),
            melts: toppings
                .map(|(at, own)| {
                    let asked = melting(own, kitchen, &settings.melt);
                    (at, asked.and_then(melt_sums))
                })
                .collect(),
            coolings: asked.heat.coolings.iter().map(cooling).collect(),
            vessel_coolings: asked.heat.vessel_coolings.iter().map(in_vessel).collect(),
            boilings: asked.heat.boilings.iter().map(boiling).collect(),
            results,
            run,
        }
    }
}

fn paste_coolings(
    asked: &Asked,
    formula: &Formula,
    results: &HeatResults,
    followed: &[PasteCooling],
) -> Vec<CoolingResult> {
    let (kitchen, settings) = (&asked.kitchen, &asked.sheet.heat.cooling);
    let shown = |part| results.cooling.as_ref().filter(|one| one.part == part);
    let pastes = results.pastes.iter();
    pastes
        .map(|paste| {
            let known = (results.pastes.as_slice(), followed);
            let of = || CoolingResult::of(formula, paste.part, known, kitchen, settings);
            shown(paste.part).cloned().unwrap_or_else(of)
        })
        .collect()
}

fn remedies(asked: &Asked, mixing: &MixingResult) -> Remedies {
    let (kitchen, wanted) = (&asked.kitchen, asked.sheet.heat.dough);
    let at_best = mixing.liquid.as_ref().ok().and_then(|liquid| {
        DoughQuestion::at_best(&mixing.load, liquid, wanted, kitchen)?.remedies()
    });
    let as_it_is = DoughQuestion::as_it_is(&mixing.load, wanted, kitchen).remedies();
    Remedies {
        at_best: at_best.unwrap_or_default(),
        as_it_is: as_it_is.unwrap_or_default(),
    }
}

fn melt_sums(asked: Melting) -> Result<MeltSums, HeatError> {
    Ok(MeltSums {
        melted: melt(&asked)?,
        asked,
    })
}

fn boiling(by: &BoilsBy) -> Result<Boiling, HeatError> {
    match by {
        BoilsBy::Altitude(altitude) => boiling_at(*altitude),
        BoilsBy::Pressure(pressure) => boiling_under(*pressure),
    }
}

fn cooling(asked: &CoolingAsked) -> Result<Curve, HeatError> {
    simulate(&asked.body, asked.start, &asked.stays)
}

fn in_vessel(asked: &VesselAsked) -> Result<Curve, HeatError> {
    Ok(simulate_in_vessel(&asked.filling, asked.start, &asked.stays)?.curve)
}
