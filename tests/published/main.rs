//! Answers held against printed tables and worked examples.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "helpers of a test binary are not 'in tests' to clippy"
)]

mod accuracy;
mod allergens;
mod bake;
mod bake_by_shape;
mod bakers_examples;
mod bakers_percentage;
mod batch;
mod boiling;
mod class_loaves;
mod composition;
mod conduction;
mod conduction_by_scipy;
mod cooling;
mod declared;
mod development;
mod dough_temperature;
mod factor_method;
mod ice_in_dough;
mod keeping;
mod loaf;
mod melt;
mod mixer_warming;
mod mixes;
mod numerics;
mod nutrition;
mod own_label;
mod paste;
mod printed;
mod rescue;
mod ripeness;
mod rise;
mod rise_of_doughs;
mod shopping;
mod specific_heat;
mod sugar_solution;
mod syrup;
mod table;
mod tin;
mod tin_rise;
mod tin_usual;
mod usual;
mod vessel_cooling;
mod water;
mod written_table;
