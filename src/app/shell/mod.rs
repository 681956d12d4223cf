//! The shell: header, foot and navigation around every place.

mod app_root;
mod foot;
mod head;
mod key_figures;
mod opened;
mod places;

pub use app_root::AppRoot;
