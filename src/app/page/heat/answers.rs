//! Answers about heat, shared by the place and its key figures; each is worked out again only
//! when what it rests on has changed.

use leptos::prelude::*;

use crate::app::page::{BatchAnswers, made};
use crate::app::state::{State, memo};
use crate::engine::formula::{Formula, StreamKind};
use crate::engine::heat::{
    CookedPaste, DoughTemperature, HeatError, LiquidAnswer, cook, dough_temperature, liquid_for,
};
use crate::engine::kitchen::{
    Baking, Bowlful, CoolingPlan, HeatShare, HeatWishes, Kitchen, baking, bowlful, cooling_plan,
    paste, shares,
};
use crate::engine::quantity::{Mass, Temperature};
use crate::sheet::Sheet;

/// A paste of the formula: where its stream stands, and how it comes out.
pub type Cooked = (usize, Result<CookedPaste, HeatError>);

/// The bowl in the morning.
#[derive(Clone, PartialEq)]
pub struct Bowl {
    /// Everything in it.
    pub bowlful: Bowlful,
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
    pub wishes: Memo<HeatWishes>,
    /// Its pastes.
    pub pastes: Memo<Vec<Cooked>>,
    /// The bowl in the morning.
    pub bowl: Memo<Result<Bowl, HeatError>>,
    /// What there was before the trial, while one is on.
    pub before: Memo<Option<Before>>,
    /// The bake.
    pub baking: Memo<Result<Baking, HeatError>>,
    /// The streams that may be hot and have to be cooled: pastes, fillings, toppings.
    pub coolable: Memo<Vec<usize>>,
    /// Which of them was picked to be looked at.
    pub picked: RwSignal<Option<usize>>,
    /// Which of them is looked at.
    pub cools: Memo<Option<usize>>,
}

impl HeatAnswers {
    /// The answers that follow from the state of the page.
    pub fn of(state: State, batch: BatchAnswers) -> Self {
        let made = batch.made;
        let wishes = memo(move || state.with(|sheet| sheet.heat.clone()));
        let asked = move |ask: fn(&Formula, &Kitchen, &HeatWishes) -> Result<Bowl, HeatError>| {
            made.with(|formula| {
                state
                    .kitchen
                    .with(|kitchen| wishes.with(|wishes| ask(formula, kitchen, wishes)))
            })
        };
        let coolable = memo(move || state.with(|sheet| coolable(&sheet.formula)));
        let picked = RwSignal::new(None::<usize>);
        Self {
            made,
            wishes,
            pastes: memo(move || {
                made.with(|formula| {
                    state
                        .kitchen
                        .with(|kitchen| wishes.with(|wishes| pastes(formula, kitchen, wishes)))
                })
            }),
            bowl: memo(move || asked(bowl)),
            before: memo(move || {
                let look = |kept: &Sheet| state.kitchen.with(|kitchen| before(kept, kitchen));
                state.is_trial().then(|| state.with_kept(look))
            }),
            baking: memo(move || {
                let bread = state.with(|sheet| sheet.bread);
                let piece = batch.scaled.with(|scaled| {
                    scaled
                        .as_ref()
                        .map(|scaled| scaled.pieces.each)
                        .unwrap_or_default()
                });
                state
                    .kitchen
                    .with(|kitchen| wishes.with(|wishes| baking(bread, piece, kitchen, wishes)))
            }),
            coolable,
            picked,
            cools: memo(move || {
                coolable.with(|streams| {
                    let picked = picked.get().filter(|picked| streams.contains(picked));
                    picked.or_else(|| streams.first().copied())
                })
            }),
        }
    }

    /// The answers of this page, worked out from when they are first asked for.
    pub fn here() -> Self {
        State::here().for_good(|state| Self::of(state, BatchAnswers::here()))
    }

    /// How the stream that is looked at cools; none where it is not known how hot it is.
    pub fn cooling_plan(self, state: State) -> Option<Result<CoolingPlan, HeatError>> {
        let stream = self.cools.get()?;
        let cooked = self.read_paste(stream, |paste| paste.temperature);
        let start = cooked
            .or_else(|| state.with(|sheet| sheet.formula.streams.get(stream)?.temperature))?;
        let cooling = self.wishes.with(|wishes| wishes.cooling);
        self.made.with(|formula| {
            let own = formula.streams.get(stream)?;
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

    /// Something of the paste of a stream, where it can be worked out.
    pub fn read_paste<T>(self, stream: usize, look: impl FnOnce(&CookedPaste) -> T) -> Option<T> {
        self.pastes.with(|pastes| {
            let found = pastes.iter().find(|(at, _)| *at == stream);
            found.and_then(|(_, cooked)| cooked.as_ref().ok()).map(look)
        })
    }

    /// Looks at the paste of a stream as it was before the trial, where one is on.
    pub fn with_paste_before<T>(
        self,
        stream: usize,
        look: impl FnOnce(Option<&CookedPaste>) -> T,
    ) -> T {
        self.before.with(|before| {
            let mut pastes = before.iter().flat_map(|before| &before.pastes);
            let found = pastes.find(|(at, _)| *at == stream);
            look(found.and_then(|(_, cooked)| cooked.as_ref().ok()))
        })
    }

    /// Where the first paste stands, where there is one.
    pub fn first_paste(self) -> Option<usize> {
        self.pastes
            .with(|pastes| pastes.first().map(|(stream, _)| *stream))
    }
}

/// Streams with something in them that is cooked, or may be.
fn coolable(formula: &Formula) -> Vec<usize> {
    let numbered = formula.streams.iter().enumerate();
    let hot = numbered.filter(|(_, own)| match own.kind {
        StreamKind::Paste | StreamKind::Filling | StreamKind::Topping => own.mass() > Mass::ZERO,
        StreamKind::Preferment | StreamKind::Final | StreamKind::Wash => false,
    });
    hot.map(|(stream, _)| stream).collect()
}

fn pastes(formula: &Formula, kitchen: &Kitchen, wishes: &HeatWishes) -> Vec<Cooked> {
    let numbered = formula.streams.iter().enumerate();
    numbered
        .filter(|(_, own)| own.kind == StreamKind::Paste)
        .filter_map(|(stream, _)| {
            let asked = paste(formula, stream, kitchen, &wishes.paste).transpose()?;
            Some((stream, asked.and_then(|asked| cook(&asked))))
        })
        .collect()
}

fn before(kept: &Sheet, kitchen: &Kitchen) -> Before {
    let made = made(kept);
    let bowl = bowl(&made, kitchen, &kept.heat);
    Before {
        dough: bowl.ok().map(|bowl| bowl.came.temperature),
        pastes: pastes(&made, kitchen, &kept.heat),
    }
}

fn bowl(formula: &Formula, kitchen: &Kitchen, wishes: &HeatWishes) -> Result<Bowl, HeatError> {
    let bowlful = bowlful(formula, kitchen, wishes)?;
    let came = dough_temperature(&bowlful.dough)?;
    let around = kitchen.surroundings();
    Ok(Bowl {
        shares: shares(&bowlful, &came, wishes.dough)?,
        liquid: liquid_for(&bowlful.dough, wishes.dough, &around),
        bowlful,
        came,
    })
}
