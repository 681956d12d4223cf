//! Source: the table and number a composition was read from.

/// Where a composition was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Source {
    /// USDA National Nutrient Database for Standard Reference, Release 28 (2016), NDB number.
    UsdaSr28(u32),
    /// ANSES, Table Ciqual 2020, food code (Licence Ouverte).
    Ciqual2020(u32),
    /// A packet's label, typed in by the user.
    Label,
}
