//! A visit: what a student needs of a shared formula, with nothing to set up.

mod cards;
mod how_many;
mod notice;
mod steps;

pub use cards::VisitCards;
pub use notice::VisitNotice;
