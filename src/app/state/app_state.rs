//! The state of the page, passed to every component.

use std::collections::BTreeMap;
use std::sync::Arc;

use leptos::html::Dialog;
use leptos::prelude::*;

use super::displayed::{Displayed, figures, follow_after_frame};
use super::drawing::Drawing;
use super::journal::Journal;
use super::unsaved::Unsaved;
use super::{DialogKind, memo};
use crate::app::browser::clock::Debounce;
use crate::app::browser::locale;
use crate::app::browser::storage::StorageError;
use crate::app::lazy::language;
use crate::engine::formula::Basis;
use crate::sheet::{self, History, Id, Kitchen, Kitchens, Place, Settings, Sheet, Shelf, Trial};
use crate::storage::record::{RecordError, RecordFault};
use crate::text::{DoughFigures, FormatOptions, MassUnit, TemperatureUnit, Units};

/// Why something was not saved or cannot be opened.
#[derive(Clone, Debug, PartialEq)]
pub enum SaveError {
    /// From the browser's storage.
    Storage(StorageError),
    /// The record under this key cannot be opened; it is left unchanged.
    Record(String, RecordError),
}

/// The state of the page. Small enough to be copied into every closure.
#[derive(Clone, Copy)]
pub struct AppState {
    /// The saved sheet, with its undo steps.
    pub history: RwSignal<History<Sheet>>,
    /// The trial: changes that are not saved, with their undo steps.
    pub trial: RwSignal<Option<Trial>>,
    /// The number of the last step, whatever it changed.
    pub(super) revision: StoredValue<u64>,
    /// The saved sheet.
    pub(super) saved: Memo<Arc<Sheet>>,
    /// The current sheet: that of the trial, if there is one.
    pub(super) current: Memo<Arc<Sheet>>,
    /// How figures and pages are shown.
    pub settings: RwSignal<Settings>,
    /// All kitchens and which of them is in use, with undo steps.
    pub kitchens: RwSignal<History<Kitchens>>,
    /// The steps that changed what is stored beside formula and kitchen.
    pub(super) journal: RwSignal<Journal>,
    /// The kitchen in use.
    pub kitchen: Memo<Kitchen>,
    /// How often another language has been chosen on this page.
    pub language_revision: RwSignal<u32>,
    /// How numbers are written and read here.
    pub options: Memo<FormatOptions>,
    /// The page shows these: the sheets as they are now or, in a card that is off the
    /// screen, as they were a frame ago.
    pub(super) displayed: Memo<Displayed>,
    /// The sheets as they were a frame ago.
    pub(super) deferred: RwSignal<Displayed>,
    /// Whether the card this belongs to follows at once; none for what always does.
    pub(super) is_now: Option<RwSignal<bool>>,
    /// The figures of the dough, written out.
    pub figures: Memo<DoughFigures>,
    /// How far the page is drawn, while it is being drawn first.
    pub drawing: RwSignal<Drawing>,
    /// Which flour is the hundred per cent.
    pub basis: RwSignal<Basis>,
    /// The place that is shown.
    pub place: RwSignal<Place>,
    /// A sentence shown for some seconds, with its number.
    pub toast: RwSignal<Option<(u64, &'static str)>>,
    /// The open dialog.
    pub opened: RwSignal<Option<DialogKind>>,
    /// The dialog element.
    pub dialog: NodeRef<Dialog>,
    /// Texts that cannot be stored, by box, each with the reason.
    pub invalid_inputs: RwSignal<BTreeMap<String, (String, String)>>,
    /// How often the boxes were reset to their figures.
    pub input_resets: RwSignal<u32>,
    /// The index of the stored formulas.
    pub shelf: RwSignal<Shelf>,
    /// What is written after the frame.
    pub(super) unsaved: Unsaved,
    /// Whether a write after the frame is on its way.
    pub(super) is_write_asked: StoredValue<bool>,
    /// The saved sheet as storage has it.
    pub(super) stored: StoredValue<Option<Arc<Sheet>>>,
    /// The id of the open formula; none for a visitor's copy, which is not stored.
    pub open_id: RwSignal<Option<Id>>,
    /// The last save error, if any.
    pub save_error: RwSignal<Option<SaveError>>,
    /// Whether the index has still to be written for the open formula.
    pub index_dirty: StoredValue<bool>,
    /// Delays writing the index while the user types.
    pub(super) index_debounce: Debounce,
    /// Delays writing the address while the user types.
    pub(super) address_debounce: Debounce,
    /// Changes since formulas were last saved to a file.
    pub changes_since_backup: RwSignal<u32>,
    /// Why the link in the address cannot be opened, if so.
    pub link_error: RwSignal<Option<String>>,
    /// Whether a newer version of the page is installed.
    pub newer_version: RwSignal<bool>,
    /// The notice of timers that are over while the bench is not shown.
    pub timer_alert: RwSignal<Option<String>>,
    /// Whether a bake under way was found as the page began, and has still to be told of.
    pub bake_waits: RwSignal<bool>,
    /// The owner of everything that lives as long as the page.
    pub(super) root: StoredValue<Owner>,
}

impl AppState {
    /// The state of a page that shows `sheet`.
    pub fn new(sheet: Sheet) -> Self {
        let history = RwSignal::new(History::new(sheet));
        let trial = RwSignal::new(None::<Trial>);
        let settings = RwSignal::new(Settings::default());
        let kitchens = RwSignal::new(History::new(Kitchens::default()));
        let language_revision = RwSignal::new(0);
        let saved = memo(move || history.with(History::shared));
        let current = memo(move || {
            let tried = trial.with(|trial| trial.as_ref().map(|trial| trial.steps.shared()));
            tried.unwrap_or_else(|| saved.get())
        });
        let displayed = memo(move || Displayed {
            current: current.get(),
            saved: saved.get(),
            is_trial: trial.with(Option::is_some),
        });
        let options = memo(move || {
            language_revision.track();
            let settings = settings.get();
            FormatOptions {
                numbers: locale::numbers(),
                units: units(settings),
                language: language::wanted(settings.language),
            }
        });
        Self {
            history,
            trial,
            revision: StoredValue::new(0),
            saved,
            current,
            settings,
            kitchens,
            journal: RwSignal::new(Journal::default()),
            kitchen: memo(move || kitchens.with(|all| all.now().current().clone())),
            language_revision,
            options,
            displayed,
            deferred: follow_after_frame(displayed),
            is_now: None,
            figures: figures(displayed, options),
            drawing: RwSignal::new(Drawing::default()),
            basis: RwSignal::new(Basis::default()),
            place: RwSignal::new(Place::default()),
            toast: RwSignal::new(None),
            opened: RwSignal::new(None),
            dialog: NodeRef::new(),
            invalid_inputs: RwSignal::new(BTreeMap::new()),
            input_resets: RwSignal::new(0),
            unsaved: Unsaved::default(),
            is_write_asked: StoredValue::new(false),
            stored: StoredValue::new(None),
            shelf: RwSignal::new(Shelf::default()),
            open_id: RwSignal::new(None),
            save_error: RwSignal::new(None),
            index_dirty: StoredValue::new(false),
            index_debounce: Debounce::default(),
            address_debounce: Debounce::default(),
            changes_since_backup: RwSignal::new(0),
            link_error: RwSignal::new(None),
            newer_version: RwSignal::new(false),
            timer_alert: RwSignal::new(None),
            bake_waits: RwSignal::new(false),
            root: StoredValue::new(Owner::current().unwrap_or_default()),
        }
    }

    /// Looks from the page itself, for what goes on after something was waited for: nothing of the
    /// page is around it then.
    pub fn with_root_owner<T>(self, run: impl FnOnce() -> T) -> T {
        self.root.get_value().with(run)
    }

    /// A value of which the page has one, created at first use: for the page, whichever
    /// card asks.
    pub fn page_singleton<T: Clone + Send + Sync + 'static>(self, make: fn(Self) -> T) -> T {
        // Looked up from the root: a task that was waiting has no owner of its own, and would make
        // a second one.
        self.root.get_value().with(|| {
            use_context().unwrap_or_else(|| {
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

/// The units of a setting.
const fn units(settings: Settings) -> Units {
    match settings.units {
        sheet::UnitSystem::Grams => Units {
            mass: MassUnit::Grams,
            temperature: TemperatureUnit::Celsius,
        },
        sheet::UnitSystem::Ounces => Units {
            mass: MassUnit::Ounces,
            temperature: TemperatureUnit::Fahrenheit,
        },
    }
}

/// Whether a record was written by a newer release, and so is not to be touched.
pub const fn is_newer(error: &RecordError) -> bool {
    matches!(error.fault, RecordFault::Newer { .. })
}
