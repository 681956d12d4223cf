//! Heat: a formula in a kitchen, from the temperatures it starts at to the bake.
