//! The browser: one file a thing it can do, each a thin wrapper that decides nothing.

pub mod address;
pub mod alarm;
pub mod catalogue;
pub mod clipboard;
pub mod clock;
pub mod dialog;
pub mod file;
pub mod focus;
pub mod live_region;
pub mod locale;
pub mod number_boxes;
pub mod offline;
pub mod persist;
pub mod photo;
pub mod presses;
pub mod print;
pub mod random;
mod reflect;
pub mod screen;
pub mod share;
pub mod speech;
pub mod splash;
pub mod storage;
pub mod tabs;
pub mod theme;
pub mod visibility;
pub mod wake_lock;
