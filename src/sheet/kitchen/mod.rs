//! Kitchens: each room with its equipment, and which of several is baked in.

mod equipment;
mod kitchens;
mod room;

pub use equipment::{Bowl, Mixer, Oven, Scales};
pub use kitchens::Kitchens;
pub use room::{BoilsBy, Kitchen};
