//! State: the open sheet, what of the page belongs to it, and how it is kept.

mod after_frame;
mod change;
mod desk;
mod doors;
mod filing;
mod here;
mod keeping;
mod memo;
mod opening;
mod shelving;
mod trial;
mod unread;

pub use after_frame::after_frame;
pub use desk::Desk;
pub use doors::Opened;
pub use here::{Figured, Keeps, State, is_newer};
pub use memo::memo;
