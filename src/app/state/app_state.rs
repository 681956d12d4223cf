//! The state of the page, handed to every part of it.

use std::collections::BTreeMap;
use std::sync::Arc;

use leptos::html::Dialog;
use leptos::prelude::*;

use super::displayed::{Displayed, follow_after_frame};
use super::{DialogKind, memo};
use crate::app::browser::locale;
use crate::app::browser::storage::StorageTrouble;
use crate::app::lazy::language;
use crate::engine::formula::{Basis, Figures};
use crate::results::formula;
use crate::sheet::record::{RecordError, RecordFault};
use crate::sheet::{self, History, Id, Kitchen, Kitchens, Place, Settings, Sheet, Shelf, Trial};
use crate::text::{FormatOptions, MassUnit, TemperatureUnit, Units};

/// What keeping came up against.
#[derive(Clone, Debug, PartialEq)]
pub enum SaveError {
    /// The browser would not.
    Storage(StorageTrouble),
    /// What stands under this key cannot be opened; it is left as it is.
    Record(String, RecordError),
}

/// The figures of the dough. In one, so that what shows a figure has one thing to follow.
#[derive(Clone, Debug, PartialEq)]
pub struct DisplayedFigures {
    /// As it stands.
    pub now: Figures,
    /// As it is kept, while a trial is on.
    pub saved: Option<Figures>,
}

/// The state of the page. Small enough to be copied into every closure.
#[derive(Clone, Copy)]
pub struct AppState {
    /// The sheet as it is kept, with the steps to it.
    pub history: RwSignal<History<Sheet>>,
    /// The sheet with changes that are not kept yet, with the steps to it.
    pub trial: RwSignal<Option<Trial>>,
    /// The number of the last step, whatever it changed.
    pub(super) revision: StoredValue<u64>,
    /// The sheet as it is kept.
    pub(super) saved: Memo<Arc<Sheet>>,
    /// The sheet as it stands: the trial where there is one.
    pub(super) current: Memo<Arc<Sheet>>,
    /// How figures and pages are shown.
    pub settings: RwSignal<Settings>,
    /// All kitchens and which of them is the one here, with the steps to it.
    pub kitchens: RwSignal<History<Kitchens>>,
    /// What is true of the kitchen here.
    pub kitchen: Memo<Kitchen>,
    /// How often another language has been chosen on this page.
    pub language_revision: RwSignal<u32>,
    /// How numbers are written and read here.
    pub options: Memo<FormatOptions>,
    /// What the page shows follows this: the sheets as they are now or, in a card that lies off the
    /// screen, as they were a frame ago.
    pub(super) displayed: Memo<Displayed>,
    /// The sheets as they were a frame ago.
    pub(super) deferred: RwSignal<Displayed>,
    /// Whether the card this belongs to is on the screen; none for what always follows at once.
    pub(super) is_visible: Option<RwSignal<bool>>,
    /// The figures of the dough.
    pub figures: Memo<DisplayedFigures>,
    /// Which flour is the hundred per cent.
    pub basis: RwSignal<Basis>,
    /// Where the user is.
    pub place: RwSignal<Place>,
    /// What the page has to say for a moment, of something that may be out of sight.
    pub toast: RwSignal<Option<(u64, &'static str)>>,
    /// What stands open over the page.
    pub opened: RwSignal<Option<DialogKind>>,
    /// The dialog it stands in.
    pub dialog: NodeRef<Dialog>,
    /// Texts that cannot be taken, by box: the text and what is in the way.
    pub invalid_inputs: RwSignal<BTreeMap<String, (String, String)>>,
    /// How often the boxes have been made to forget what was typed.
    pub input_resets: RwSignal<u32>,
    /// All formulas that are kept.
    pub shelf: RwSignal<Shelf>,
    /// Which of them is open; none for a visitor's copy, which is not kept.
    pub open_id: RwSignal<Option<Id>>,
    /// What keeping came up against, if anything.
    pub save_error: RwSignal<Option<SaveError>>,
    /// Whether the index is behind the open formula.
    pub index_dirty: StoredValue<bool>,
    /// Changes since formulas were last saved to a file.
    pub changes_since_backup: RwSignal<u32>,
    /// What is wrong with the link in the address, if anything.
    pub link_trouble: RwSignal<Option<String>>,
    /// Whether a newer version of the page stands ready.
    pub newer_version: RwSignal<bool>,
    /// What is said of timers that rang while the user was away from the bench.
    pub timer_alert: RwSignal<Option<String>>,
    /// What lives as long as the page.
    pub(super) root: StoredValue<Owner>,
}

impl AppState {
    /// The state of a page on which `sheet` stands.
    pub fn new(sheet: Sheet) -> Self {
        let history = RwSignal::new(History::new(sheet));
        let trial = RwSignal::new(None::<Trial>);
        let settings = RwSignal::new(Settings::default());
        let kitchens = RwSignal::new(History::new(Kitchens::default()));
        let language_revision = RwSignal::new(0);
        let now = |history: &History<Sheet>| Arc::new(history.now().clone());
        let saved = memo(move || history.with(now));
        let current = memo(move || {
            let tried = trial.with(|trial| trial.as_ref().map(|trial| now(&trial.steps)));
            tried.unwrap_or_else(|| saved.get())
        });
        let displayed = memo(move || Displayed {
            current: current.get(),
            saved: saved.get(),
            is_trial: trial.with(Option::is_some),
        });
        Self {
            history,
            trial,
            revision: StoredValue::new(0),
            saved,
            current,
            settings,
            kitchens,
            kitchen: memo(move || kitchens.with(|all| all.now().here().clone())),
            language_revision,
            options: memo(move || {
                language_revision.track();
                let settings = settings.get();
                FormatOptions {
                    numbers: locale::numbers(),
                    units: units(settings),
                    language: language::wanted(settings.language),
                }
            }),
            displayed,
            deferred: follow_after_frame(displayed),
            is_visible: None,
            figures: figures(displayed),
            basis: RwSignal::new(Basis::default()),
            place: RwSignal::new(Place::default()),
            toast: RwSignal::new(None),
            opened: RwSignal::new(None),
            dialog: NodeRef::new(),
            invalid_inputs: RwSignal::new(BTreeMap::new()),
            input_resets: RwSignal::new(0),
            shelf: RwSignal::new(Shelf::default()),
            open_id: RwSignal::new(None),
            save_error: RwSignal::new(None),
            index_dirty: StoredValue::new(false),
            changes_since_backup: RwSignal::new(0),
            link_trouble: RwSignal::new(None),
            newer_version: RwSignal::new(false),
            timer_alert: RwSignal::new(None),
            root: StoredValue::new(Owner::current().unwrap_or_default()),
        }
    }

    /// Looks from the page itself, for what goes on after something was waited for: nothing of the
    /// page is around it then.
    pub fn with_root_owner<T>(self, look: impl FnOnce() -> T) -> T {
        self.root.get_value().with(look)
    }

    /// Something the page has one of, made when it is first asked for: for the page, whichever
    /// card asks.
    pub fn page_singleton<T: Clone + Send + Sync + 'static>(self, make: fn(Self) -> T) -> T {
        use_context().unwrap_or_else(|| {
            self.root.get_value().with(|| {
                let made = make(use_app_state());
                provide_context(made.clone());
                made
            })
        })
    }
}

/// The state of this page.
///
/// Only where the page is around: in a component, an effect or [`AppState::with_root_owner`].
pub fn use_app_state() -> AppState {
    expect_context::<AppState>()
}

/// The figures of what is displayed.
pub(super) fn figures(displayed: Memo<Displayed>) -> Memo<DisplayedFigures> {
    memo(move || {
        displayed.with(|displayed| DisplayedFigures {
            now: formula::figures(&displayed.current),
            saved: displayed
                .is_trial
                .then(|| formula::figures(&displayed.saved)),
        })
    })
}

/// The units a setting stands for.
const fn units(settings: Settings) -> Units {
    match settings.units {
        sheet::Units::Grams => Units {
            mass: MassUnit::Grams,
            temperature: TemperatureUnit::Celsius,
        },
        sheet::Units::Ounces => Units {
            mass: MassUnit::Ounces,
            temperature: TemperatureUnit::Fahrenheit,
        },
    }
}

/// Whether a record was written by a newer release, and so is not to be touched.
pub const fn is_newer(error: &RecordError) -> bool {
    matches!(error.fault, RecordFault::Newer { .. })
}
