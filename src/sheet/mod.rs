//! Sheet: formulas with their batch, the kitchen, the day and the log of bakes, as typed data.
//!
//! Everything here is plain data; the layer `storage` writes it down and reads it back.

pub mod civil;
mod cooling_settings;
mod copy;
pub mod day;
mod examples;
mod formula_sheet;
mod heat_settings;
mod history;
mod id;
mod kitchen;
mod known_bake;
mod moment;
mod new_sheet;
mod pantry;
mod place;
pub mod plain;
mod reorder;
mod settings;
mod shelf;
mod tins;
mod trial;
mod workspace;

pub use cooling_settings::{CoolingChoice, CoolingSettings, FormerBody, FormerCooling};
pub use examples::examples;
pub use formula_sheet::{Batch, Sheet};
pub use heat_settings::{BakeLength, BakeSettings, HeatSettings, MeltSettings, PasteSettings};
pub use history::History;
pub use id::Id;
pub use kitchen::{BoilsBy, Bowl, Kitchen, Kitchens, Mixer, Oven, Scales};
pub use known_bake::KnownBake;
pub use moment::Moment;
pub use pantry::{FoodKey, Pantry, PantryItem};
pub use place::Place;
pub use settings::{Language, Settings, Theme, UnitSystem};
pub use shelf::{Shelf, ShelfEntry, Slot, Standing};
pub use tins::{SavedTin, TinUse};
pub use trial::Trial;
pub use workspace::{Added, Workspace};
