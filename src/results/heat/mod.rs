//! Heat: a formula in a kitchen, from the temperatures it starts at to the bake.

mod remedies;

pub use remedies::DoughQuestion;
