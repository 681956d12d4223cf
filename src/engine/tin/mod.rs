//! Tins: their volume, the dough they take, how pieces lie in them.

mod capacity;
mod convert;
mod dough_height;
mod error;
mod filling;
mod grid;
mod layout;
mod measure;
mod round_layout;
mod shape;
mod spot;
mod usual;
mod usual_rise;
mod working;

pub use capacity::Capacity;
pub use convert::{Converted, convert};
pub use dough_height::{DoughHeight, dough_height};
pub use error::TinError;
pub use filling::{Filling, Fullness, filling};
pub use grid::{Grid, MOST_PIECES, grids};
pub use layout::{Between, Layout, Outline, layout};
pub use measure::{TinKind, TinMeasure};
pub use shape::{Across, Tin, TinShape, Tins};
pub use spot::PiecePosition;
pub use usual::{DOUGH_SPECIFIC_VOLUME, UsualSpecificVolume};
pub use usual_rise::{LAID_IN, TinRise};
