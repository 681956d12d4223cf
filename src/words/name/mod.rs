//! Names: what things are called on the page, in one place, so that another language can come.

mod batch;
mod formula;
mod larder;
mod place;

pub use batch::{wanted, wanted_kind};
pub use formula::{basis, bread, figure, form, stream_kind};
pub use larder::{allergen, allergen_list, role, source};
pub use place::{Place, place, place_asks};
