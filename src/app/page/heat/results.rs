//! Answers about heat, shared by the place and its key figures; each is worked out again only
//! when what it rests on has changed.

use leptos::prelude::*;

use crate::app::page::BatchAnswers;
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::formula::{Formula, PartKind};
use crate::engine::heat::{
    CookedPaste, DoughTemperature, HeatError, LiquidAnswer, cook, dough_temperature, liquid_for,
};
use crate::engine::kitchen::{
    Baking, CoolingPlan, HeatSettings, HeatShare, Kitchen, MixerLoad, baking, bowlful,
    cooling_plan, paste, shares,
};
use crate::engine::quantity::{Mass, Temperature};
use crate::results::batch::scaled_formula;
use crate::sheet::Sheet;

/// A paste of the formula: where its part stands, and how it comes out.
pub type Cooked = (usize, Result<CookedPaste, HeatError>);

/// The bowl in the morning.
#[derive(Clone, PartialEq)]
pub struct Bowl {
    /// Everything in it.
    pub bowlful: MixerLoad,
    /// The dough it makes.
    pub came: DoughTemperature,
    /// Who brings heat, and who takes it.
    pub shares: Vec<HeatShare>,
    /// How warm the liquid should be.
    pub liquid: Result<LiquidAnswer, HeatError>,
}

/// What the formula as it is kept comes to in the same kitchen, while a trial is on.
#[derive(Clone, PartialEq)]
pub struct Before {
    /// How warm its dough comes off the mixer, where that can be worked out.
    pub dough: Option<Temperature>,
    /// Its pastes.
    pub pastes: Vec<Cooked>,
}

/// Answers about heat.
#[derive(Clone, Copy)]
pub struct HeatAnswers {
    /// The formula as large as it is made.
    pub made: Memo<Formula>,
    /// What the formula asks of heat.
    pub settings: Memo<HeatSettings>,
    /// Its pastes.
    pub pastes: Memo<Vec<Cooked>>,
    /// The bowl in the morning.
    pub bowl: Memo<Result<Bowl, HeatError>>,
    /// What there was before the trial, while one is on.
    pub before: Memo<Option<Before>>,
    /// The bake.
    pub baking: Memo<Result<Baking, HeatError>>,
    /// The parts that may be hot and have to be cooled: pastes, fillings, toppings.
    pub coolable: Memo<Vec<usize>>,
    /// Which of them was picked to be looked at.
    pub picked: RwSignal<Option<usize>>,
    /// Which of them is looked at.
    pub cools: Memo<Option<usize>>,
}

impl HeatAnswers {
    /// The answers that follow from the state of the page.
    pub fn of(state: AppState, batch: BatchAnswers) -> Self {
        let made = batch.made;
        let settings = memo(move || state.with(|sheet| sheet.heat.clone()));
        let asked = move |ask: fn(&Formula, &Kitchen, &HeatSettings) -> Result<Bowl, HeatError>| {
            made.with(|formula| {
                state
                    .kitchen
                    .with(|kitchen| settings.with(|settings| ask(formula, kitchen, settings)))
            })
        };
        let coolable = memo(move || state.with(|sheet| coolable(&sheet.formula)));
        let picked = RwSignal::new(None::<usize>);
        Self {
            made,
            settings,
            pastes: memo(move || {
                made.with(|formula| {
                    state.kitchen.with(|kitchen| {
                        settings.with(|settings| pastes(formula, kitchen, settings))
                    })
                })
            }),
            bowl: memo(move || asked(bowl)),
            before: memo(move || {
                let look = |saved: &Sheet| state.kitchen.with(|kitchen| before(saved, kitchen));
                state.is_trial().then(|| state.with_saved(look))
            }),
            baking: memo(move || {
                let bread = state.with(|sheet| sheet.bread);
                let piece = batch.read_scaled(|scaled| scaled.pieces.each);
                let piece = piece.unwrap_or_default();
                state.kitchen.with(|kitchen| {
                    settings.with(|settings| baking(bread, piece, kitchen, settings))
                })
            }),
            coolable,
            picked,
            cools: memo(move || {
                coolable.with(|parts| {
                    let picked = picked.get().filter(|picked| parts.contains(picked));
                    picked.or_else(|| parts.first().copied())
                })
            }),
        }
    }

    /// The answers of this page, worked out from when they are first asked for.
    pub fn here() -> Self {
        use_app_state().page_singleton(|state| Self::of(state, BatchAnswers::here()))
    }

    /// How the part that is looked at cools; none where it is not known how hot it is.
    pub fn cooling_plan(self, state: AppState) -> Option<Result<CoolingPlan, HeatError>> {
        let part = self.cools.get()?;
        let cooked = self.read_paste(part, |paste| paste.temperature);
        let start =
            cooked.or_else(|| state.with(|sheet| sheet.formula.parts.get(part)?.temperature))?;
        let cooling = self.settings.with(|settings| settings.cooling);
        self.made.with(|formula| {
            let own = formula.parts.get(part)?;
            Some(
                state
                    .kitchen
                    .with(|kitchen| cooling_plan(own, start, kitchen, &cooling)),
            )
        })
    }

    /// Something of the bowl, where it can be worked out.
    pub fn read_bowl<T>(self, look: impl FnOnce(&Bowl) -> T) -> Option<T> {
        self.bowl.with(|bowl| bowl.as_ref().ok().map(look))
    }

    /// Something of the paste of a part, where it can be worked out.
    pub fn read_paste<T>(self, part: usize, look: impl FnOnce(&CookedPaste) -> T) -> Option<T> {
        self.pastes.with(|pastes| {
            let found = pastes.iter().find(|(at, _)| *at == part);
            found.and_then(|(_, cooked)| cooked.as_ref().ok()).map(look)
        })
    }

    /// Looks at the paste of a part as it was before the trial, where one is on.
    pub fn with_paste_before<T>(
        self,
        part: usize,
        look: impl FnOnce(Option<&CookedPaste>) -> T,
    ) -> T {
        self.before.with(|before| {
            let mut pastes = before.iter().flat_map(|before| &before.pastes);
            let found = pastes.find(|(at, _)| *at == part);
            look(found.and_then(|(_, cooked)| cooked.as_ref().ok()))
        })
    }

    /// Where the first paste stands, where there is one.
    pub fn first_paste(self) -> Option<usize> {
        self.pastes
            .with(|pastes| pastes.first().map(|(part, _)| *part))
    }
}

/// Parts with something in them that is cooked, or may be.
fn coolable(formula: &Formula) -> Vec<usize> {
    let numbered = formula.parts.iter().enumerate();
    let hot = numbered.filter(|(_, own)| match own.kind {
        PartKind::Paste | PartKind::Filling | PartKind::Topping => own.mass() > Mass::ZERO,
        PartKind::Preferment | PartKind::Final | PartKind::Wash => false,
    });
    hot.map(|(part, _)| part).collect()
}

fn pastes(formula: &Formula, kitchen: &Kitchen, settings: &HeatSettings) -> Vec<Cooked> {
    let numbered = formula.parts.iter().enumerate();
    numbered
        .filter(|(_, own)| own.kind == PartKind::Paste)
        .filter_map(|(part, _)| {
            let asked = paste(formula, part, kitchen, &settings.paste).transpose()?;
            Some((part, asked.and_then(|asked| cook(&asked))))
        })
        .collect()
}

fn before(saved: &Sheet, kitchen: &Kitchen) -> Before {
    let made = scaled_formula(saved);
    let bowl = bowl(&made, kitchen, &saved.heat);
    Before {
        dough: bowl.ok().map(|bowl| bowl.came.temperature),
        pastes: pastes(&made, kitchen, &saved.heat),
    }
}

fn bowl(formula: &Formula, kitchen: &Kitchen, settings: &HeatSettings) -> Result<Bowl, HeatError> {
    let bowlful = bowlful(formula, kitchen, settings)?;
    let came = dough_temperature(&bowlful.dough)?;
    Ok(Bowl {
        shares: shares(&bowlful, &came, settings.dough)?,
        liquid: liquid_for(
            &bowlful.dough,
            settings.dough,
            kitchen.surroundings().liquid,
        ),
        bowlful,
        came,
    })
}
