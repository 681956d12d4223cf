//! What is printed: the cards and the class sheet of what the open dialog shares.

use leptos::prelude::*;

use super::share_content::{ShareContent, full_link};
use crate::app::page::Day;
use crate::app::state::{AppState, WorkspaceStore};
use crate::engine::batch::Rounded;
use crate::engine::class::{Ahead, ClassSettings, OvenPlan};
use crate::results::batch;
use crate::results::batch::class::{self, ClassResults};
use crate::results::batch::class_cards::{self, ClassCard};
use crate::results::day::{
    DayInput, ListedStep, as_the_run_bakes, evening_list, first_load, plan_list, usual_list,
};
use crate::sheet::civil::Zone;
use crate::sheet::day::Target;
use crate::sheet::{Moment, Sheet};
use crate::storage::interchange::{SquareCode, square_code};
use crate::text;
use crate::text::share::{
    BenchCard, CardList, ClassSheet, bench_card, card_steps, class_bench_card, class_sheet,
    teacher_card, with_loads,
};

/// A page to print.
#[derive(Clone, PartialEq)]
pub enum Paged {
    /// A card.
    Card(BenchCard),
    /// The sheet of the class.
    Sheet(ClassSheet),
}

/// The day that cards follow: its settings and what was learnt, with a clock where a time is set.
#[derive(Clone, Copy)]
struct Dated {
    day: Day,
    has_time: bool,
}

impl Dated {
    /// The day of the formula that is open.
    fn opened() -> Self {
        let day = Day::from_context();
        day.open();
        let has_time = day
            .settings
            .with_untracked(|settings| settings.target != Target::Open);
        Self { day, has_time }
    }

    fn list(self, sheet: &Sheet, rounded: &Rounded) -> Vec<ListedStep> {
        let day = self.day;
        let (kitchen, settings, learnt) = (
            day.state.kitchen.get(),
            day.settings.get(),
            day.learnt.get(),
        );
        // Without a time of its own the plan is that of any evening, not of the minute of printing.
        if !self.has_time {
            return evening_list(sheet, &kitchen, Some(rounded), (&settings, &learnt));
        }
        plan_list(&DayInput {
            sheet,
            kitchen: &kitchen,
            settings: &settings,
            learnt: &learnt,
            rounded: Some(rounded),
            zone: &day.zone.get_value(),
            now: Moment::from_instant(day.minute.get()),
            bench: None,
        })
    }

    fn zone(self) -> Option<Zone> {
        self.has_time.then(|| self.day.zone.get_value())
    }

    /// Between when the bread is ready, where the plan has a time of its own.
    fn ready(self) -> Option<String> {
        let options = self.day.state.options.get();
        let ready = self.day.read(|results| {
            self.day
                .zone
                .with_value(|zone| text::day::ready(results, zone, options))
        });
        ready.flatten().filter(|_| self.has_time)
    }
}

/// What every card is made with.
#[derive(Clone, Copy)]
struct Making {
    state: AppState,
    dated: Option<Dated>,
}

impl Making {
    /// Calls `make` with the steps of a sheet, as `select` leaves them, and its code; the steps say what
    /// the loads of a class mean for one loaf.
    fn card<T>(
        self,
        sheet: &Sheet,
        rounded: &Rounded,
        (select, oven): (
            impl Fn(Vec<ListedStep>) -> Vec<ListedStep>,
            Option<&OvenPlan>,
        ),
        make: impl FnOnce(CardList, Option<&SquareCode>) -> T,
    ) -> T {
        let list = match self.dated {
            Some(dated) => dated.list(sheet, rounded),
            None => {
                let kitchen = self.state.kitchen.get();
                usual_list(sheet, &kitchen, Some(rounded))
            }
        };
        let list = select(list);
        let zone = self.dated.and_then(Dated::zone);
        let options = self.state.options.get();
        let mut steps = card_steps(&list, &sheet.formula, zone.as_ref(), options);
        if let Some(oven) = oven {
            with_loads(&mut steps, &list, oven, options);
        }
        let list = CardList {
            list: &list,
            steps: &steps,
        };
        make(list, code_of(sheet).as_ref())
    }

    /// The card with when the bread is ready.
    fn ready(self, card: BenchCard, sheet: &Sheet) -> BenchCard {
        match self.dated.and_then(Dated::ready) {
            Some(ready) => card.with_ready(&ready, code_of(sheet).as_ref()),
            None => card,
        }
    }

    /// The card of the shared sheet, which is what its code opens.
    fn of_batch(self, sheet: &Sheet) -> Option<BenchCard> {
        let (options, workspace) = (self.state.options.get(), WorkspaceStore::from_context());
        let batch = batch::of(sheet, self.state.kitchen.with(|kitchen| kitchen.scales));
        let rounded = batch.rounded.clone()?;
        let card = self.card(sheet, &rounded, (|list| list, None), |list, code| {
            workspace
                .pantry
                .with(|pantry| bench_card(sheet, &batch, list, (pantry, code), options))
        })?;
        Some(self.ready(card, sheet))
    }

    /// A card of each kind of bench of the students.
    fn of_class(self, sheet: &Sheet, settings: &ClassSettings) -> Vec<BenchCard> {
        let (options, workspace) = (self.state.options.get(), WorkspaceStore::from_context());
        let class = results_of(self.state, sheet, settings);
        let (Ok(view), Ok(weights)) = (text::class::view(&class, options), &class.weights) else {
            return Vec::new();
        };
        let own = settings.ahead == Ahead::EachBench;
        let keeps = |list: Vec<ListedStep>| {
            let own_load = first_load(list).into_iter();
            let kept = own_load.filter(|one| own || !class_cards::is_ahead(one.step.at));
            kept.collect()
        };
        let made = |card: ClassCard| {
            let bench = view.benches.get(card.bench)?;
            let page = self.card(
                &card.sheet,
                &card.rounded,
                (keeps, class.oven.as_ref().ok()),
                |list, code| {
                    workspace.pantry.with(|pantry| {
                        let weighs = (bench, &card.rounded);
                        class_bench_card(&card.sheet, weighs, list, (pantry, code), options)
                    })
                },
            );
            Some(self.ready(page, &card.sheet))
        };
        let cards = class_cards::bench_cards(sheet, settings, weights).into_iter();
        cards.filter_map(made).collect()
    }

    fn of_teacher(self, sheet: &Sheet, settings: &ClassSettings) -> Option<BenchCard> {
        let (options, workspace) = (self.state.options.get(), WorkspaceStore::from_context());
        let class = results_of(self.state, sheet, settings);
        let view = text::class::view(&class, options).ok()?;
        let weights = class.weights.as_ref().ok()?;
        let own = class_cards::teacher_card(sheet, settings, weights);
        let (made, rounded) = match &own {
            Some(own) => (&own.sheet, Some(&own.rounded)),
            None => (sheet, None),
        };
        let weighs = rounded.unwrap_or(&weights.total);
        let page = self.card(made, weighs, (|list| list, None), |list, code| {
            workspace
                .pantry
                .with(|pantry| teacher_card(made, (&view, rounded), list, (pantry, code), options))
        });
        Some(self.ready(page, made))
    }
}

/// The card of which is told before it is printed whether it fits; its steps are the usual ones.
pub fn first_card(state: AppState, content: ShareContent) -> Option<BenchCard> {
    let making = Making { state, dated: None };
    cards(making, content).into_iter().next()
}

/// The cards of the bench: one, or one of each kind of bench of a class.
pub fn bench_cards(state: AppState, content: ShareContent) -> Vec<Paged> {
    let dated = Some(Dated::opened());
    let cards = cards(Making { state, dated }, content);
    cards.into_iter().map(Paged::Card).collect()
}

fn cards(making: Making, content: ShareContent) -> Vec<BenchCard> {
    let sheet = content.sheet();
    match content.class().filter(|_| !content.whole_class.get()) {
        Some(class) => making.of_class(&sheet, &class),
        None => making.of_batch(&sheet).into_iter().collect(),
    }
}

/// The teacher's card.
pub fn teachers_card(state: AppState, content: ShareContent) -> Vec<Paged> {
    let settings = WorkspaceStore::from_context().class();
    let dated = Some(Dated::opened());
    let card = Making { state, dated }.of_teacher(&content.sheet(), &settings);
    card.map(Paged::Card).into_iter().collect()
}

/// The sheet of the class.
pub fn class_paper(state: AppState, content: ShareContent) -> Option<ClassSheet> {
    let (options, workspace) = (state.options.get(), WorkspaceStore::from_context());
    let sheet = content.sheet();
    let settings = workspace.class();
    let class = results_of(state, &sheet, &settings);
    let view = text::class::view(&class, options).ok()?;
    let whole = content.class().is_some() && content.whole_class.get();
    let code = code_of(&class_cards::opened(&sheet, &settings, whole));
    let paper = workspace
        .pantry
        .with(|pantry| class_sheet(&sheet, &view, pantry, code.as_ref(), options));
    Some(paper)
}

fn results_of(state: AppState, sheet: &Sheet, settings: &ClassSettings) -> ClassResults {
    let day = Day::from_context();
    let (planned, learnt) = (day.settings.get(), day.learnt.get());
    state.kitchen.with(|kitchen| {
        let settings = as_the_run_bakes(sheet, *settings, kitchen, (&planned, &learnt));
        class::of(sheet, &settings, kitchen.scales)
    })
}

/// The square code of a sheet's link; none where that is too long.
fn code_of(sheet: &Sheet) -> Option<SquareCode> {
    square_code(&full_link(sheet).ok()?).ok()
}
