//! `AppState`: the open sheet, the state of the page around it, and their storage.

mod after_frame;
mod app_state;
mod backup;
mod card_scope;
mod change;
mod dialog_kind;
mod dialogs;
mod displayed;
mod drawing;
mod invalid_inputs;
mod journal;
mod journal_steps;
mod kitchens;
mod language;
mod library_index;
mod memo;
mod persisted;
mod persistence;
mod startup;
mod toast;
mod trial;
mod trial_storage;
mod undo;
mod unsaved;
mod workspace_store;
mod write_later;

pub use after_frame::after_frame;
pub use app_state::{AppState, SaveError, is_newer, use_app_state};
pub use dialog_kind::{DialogKind, PickFor};
pub use drawing::Drawing;
pub use memo::memo;
pub use persisted::{Persisted, stored};
pub use undo::Stepped;
pub use workspace_store::WorkspaceStore;
