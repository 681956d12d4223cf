//! State: the open sheet, what of the page belongs to it, and how it is kept.

mod after_frame;
mod undo;
mod change;
mod workspace_store;
mod dialogs;
mod backup;
mod app_state;
mod persistence;
mod kitchens;
mod memo;
mod startup;
mod displayed;
mod library_index;
mod language;
mod toast;
mod trial;
mod trial_storage;
mod invalid_inputs;

pub use after_frame::after_frame;
pub use undo::Stepped;
pub use workspace_store::WorkspaceStore;
pub use dialogs::DialogKind;
pub use app_state::{DisplayedFigures, SaveError, State, is_newer};
pub use memo::memo;
