//! The shell: what stands around every place.

mod foot;
mod head;
mod key_figures;
mod opened;
mod places;
mod app_root;

pub use app_root::Whole;
