//! A visit: what a student needs of a shared formula, with nothing to set up.

mod cards;

pub use cards::VisitCards;
