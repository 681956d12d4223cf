//! Source: the table and number a composition was read from.

/// Where a composition was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Source {
    /// USDA ARS, *National Nutrient Database for Standard Reference*, Release 28 (2016): the
    /// table's NDB number. In the public domain.
    UsdaSr28(u32),
    /// ANSES, *Table de composition nutritionnelle des aliments Ciqual 2020*: the table's food
    /// code. Under the Licence Ouverte.
    Ciqual2020(u32),
    /// A packet's label, typed in by the user.
    Label,
}
