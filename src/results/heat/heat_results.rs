//! All results about heat that the page shows at once.

use super::baking::Baking;
use super::cooling_result::{CoolingResult, coolable};
use super::dough_off_mixer::DoughOffMixer;
use super::mixing::MixingResult;
use super::paste_cooling::paste_coolings;
use super::paste_result::{PasteResult, pastes};
use crate::engine::formula::Formula;
use crate::engine::heat::{Boiling, CookedPaste, HeatError};
use crate::engine::quantity::Temperature;
use crate::results::run::Run;
use crate::sheet::{HeatSettings, Kitchen};

/// What the results about heat follow from.
#[derive(Clone, Copy, Debug)]
pub struct HeatInput<'i> {
    /// The formula, as large as it is made.
    pub formula: &'i Formula,
    /// The settings of heat.
    pub settings: &'i HeatSettings,
    /// The kitchen.
    pub kitchen: &'i Kitchen,
    /// The part whose cooling the user picked.
    pub picked: Option<usize>,
    /// The run of this dough.
    pub run: &'i Run,
}

/// All results about heat that the page shows at once.
#[derive(Clone, Debug, PartialEq)]
pub struct HeatResults {
    /// Where water boils.
    pub boiling: Result<Boiling, HeatError>,
    /// The mix.
    pub mixing: Result<MixingResult, HeatError>,
    /// The dough off the mixer: measured, or worked out; `None` where neither can be had.
    pub dough: Option<DoughOffMixer>,
    /// The pastes.
    pub pastes: Vec<PasteResult>,
    /// The parts that may be hot and have to be cooled.
    pub coolable: Vec<usize>,
    /// The cooling of the one that was picked, or of the first; `None` where nothing is to cool.
    pub cooling: Option<CoolingResult>,
    /// The bake.
    pub baking: Result<Baking, HeatError>,
}

impl HeatResults {
    /// Works out everything that is shown at once.
    ///
    /// ```
    /// use softcrumb::engine::learn::Learnt;
    /// use softcrumb::engine::rise::RiseSettings;
    /// use softcrumb::results::batch;
    /// use softcrumb::results::heat::{HeatInput, HeatResults, InOven};
    /// use softcrumb::results::run::{Run, RunInput};
    /// use softcrumb::sheet::{Kitchen, examples};
    ///
    /// let (_, sheet) = examples().remove(0);
    /// let scaled = batch::scale(&sheet)?;
    /// let run = Run::of(&RunInput {
    ///     formula: &sheet.formula,
    ///     kitchen: &Kitchen::default(),
    ///     heat: &sheet.heat,
    ///     rises: &RiseSettings::default(),
    ///     pieces: 9,
    ///     learnt: &Learnt::default(),
    ///     in_oven: InOven::of(&sheet, Some(&scaled), InOven::PROOFED),
    ///     measured_dough: None,
    ///     planned: None,
    /// });
    /// let results = HeatResults::of(&HeatInput {
    ///     formula: &sheet.formula,
    ///     settings: &sheet.heat,
    ///     kitchen: &Kitchen::default(),
    ///     picked: None,
    ///     run: &run,
    /// });
    /// let dough = results.mixing?.dough.temperature;
    /// assert!((10.0..35.0).contains(&dough.celsius()));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn of(input: &HeatInput) -> Self {
        let HeatInput {
            formula, settings, ..
        } = *input;
        let kitchen = &input.run.kitchen(input.kitchen);
        let followed = paste_coolings(formula, kitchen, settings, &input.run.coolings);
        let pastes = pastes(formula, kitchen, settings, &followed);
        let coolable = coolable(formula);
        let picked = input.picked.filter(|picked| coolable.contains(picked));
        let cooled = picked.or_else(|| coolable.first().copied());
        Self {
            boiling: kitchen.boiling(),
            mixing: input.run.mixing.clone(),
            dough: DoughOffMixer::of(input.run, settings.dough),
            cooling: cooled.map(|part| {
                let known = (pastes.as_slice(), followed.as_slice());
                CoolingResult::of(formula, part, known, kitchen, &settings.cooling)
            }),
            pastes,
            coolable,
            baking: input.run.baking.clone(),
        }
    }

    /// Returns the paste of a part, where it can be worked out.
    #[must_use]
    pub fn paste(&self, part: usize) -> Option<&CookedPaste> {
        self.paste_result(part)?.cooked.as_ref().ok()
    }

    /// Returns the result of the paste of a part; `None` where the part is no paste.
    #[must_use]
    pub fn paste_result(&self, part: usize) -> Option<&PasteResult> {
        self.pastes.iter().find(|paste| paste.part == part)
    }

    /// Returns the first paste that misses the temperature its flour must reach.
    #[must_use]
    pub fn short_paste(&self) -> Option<&CookedPaste> {
        let cooked = self
            .pastes
            .iter()
            .filter_map(|paste| paste.cooked.as_ref().ok());
        cooked
            .into_iter()
            .find(|cooked| !cooked.remedies.is_empty())
    }
}

/// The results of a saved formula beside which a trial is shown.
#[derive(Clone, Debug, PartialEq)]
pub struct HeatBefore {
    /// The temperature of its dough off the mixer, where that can be worked out.
    pub dough: Option<Temperature>,
    /// Its pastes.
    pub pastes: Vec<PasteResult>,
}

impl HeatBefore {
    /// Returns the results of a saved formula at the size of its batch.
    #[must_use]
    pub fn of(formula: &Formula, kitchen: &Kitchen, settings: &HeatSettings, run: &Run) -> Self {
        let mixing = run.mixing.as_ref();
        let kitchen = &run.kitchen(kitchen);
        let followed = paste_coolings(formula, kitchen, settings, &run.coolings);
        Self {
            dough: mixing.ok().map(|mixing| mixing.dough.temperature),
            pastes: pastes(formula, kitchen, settings, &followed),
        }
    }

    /// Returns the paste of a part, where it can be worked out.
    #[must_use]
    pub fn paste(&self, part: usize) -> Option<&CookedPaste> {
        let found = self.pastes.iter().find(|paste| paste.part == part);
        found?.cooked.as_ref().ok()
    }
}
