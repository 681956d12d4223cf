//! A visit: what a student needs of a formula that was handed to them, with nothing to set up.

mod cards;

pub use cards::VisitCards;
