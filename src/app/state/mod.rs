//! State: the open sheet, what of the page belongs to it, and how it is kept.

mod after_frame;
mod back;
mod change;
mod desk;
mod doors;
mod filing;
mod here;
mod keeping;
mod kitchens;
mod memo;
mod opening;
mod seen;
mod shelving;
mod speaking;
mod telling;
mod trial;
mod trial_kept;
mod unread;

pub use after_frame::after_frame;
pub use back::Stepped;
pub use desk::Desk;
pub use doors::{Opened, PickFor};
pub use here::{Figured, Keeps, State, is_newer};
pub use memo::memo;
