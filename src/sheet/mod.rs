//! What is kept: formulas with their batch, the kitchen, the day and the log of bakes, as typed data.
//!
//! Everything here is plain data; it is written down by `record` (JSON) and `link` (a link's
//! fragment), and read back through the same constructors as typing.

pub mod calendar;
pub mod civil;
pub mod csv;
pub mod day;
mod enum_names;
mod examples;
mod formula_sheet;
mod fragment;
mod heat_settings;
mod history;
mod id;
pub mod interchange;
pub mod key;
mod kitchen;
pub mod link;
mod moment;
mod new_sheet;
mod pantry;
pub mod plain;
pub mod record;
mod reorder;
mod settings;
mod shelf;
mod tins;
mod trial;
mod workspace;

pub use examples::examples;
pub use formula_sheet::{Batch, Sheet};
pub use fragment::{Fragment, Place};
pub use heat_settings::{
    BakeSettings, CoolingSettings, HeatSettings, KnownBake, MeltSettings, PasteSettings,
};
pub use history::History;
pub use id::Id;
pub use kitchen::{BoilsBy, Bowl, Kitchen, Kitchens, Mixer, Oven, Scales};
pub use moment::Moment;
pub use pantry::{FoodKey, Pantry, PantryItem};
pub use settings::{Language, Settings, Theme, Units};
pub use shelf::{Repaired, Shelf, ShelfEntry, Standing};
pub use tins::{SavedTin, TinUse};
pub use trial::Trial;
pub use workspace::{Added, Workspace};
