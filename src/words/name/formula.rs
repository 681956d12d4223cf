//! What streams, breads and the figures of a dough are called.

use crate::engine::formula::{Basis, Bread, Figure, Form, StreamKind, WhatIf};
use crate::words::say;

/// What a kind of stream is called.
#[must_use]
pub fn stream_kind(kind: StreamKind) -> &'static str {
    match kind {
        StreamKind::Paste => say!("Scalded paste"),
        StreamKind::Preferment => say!("Preferment"),
        StreamKind::Final => say!("Final dough"),
        StreamKind::Filling => say!("Filling"),
        StreamKind::Topping => say!("Topping"),
        StreamKind::Wash => say!("Wash"),
    }
}

/// What a kind of bread is called.
#[must_use]
pub fn bread(bread: Bread) -> &'static str {
    match bread {
        Bread::SoftTin => say!("Soft tin bread"),
        Bread::SweetBun => say!("Sweet buns"),
        Bread::RichEgg => say!("Rich egg dough"),
        Bread::PlainTin => say!("Plain tin bread"),
        Bread::Rye => say!("Bread with rye"),
    }
}

/// What a figure of the dough is called.
#[must_use]
pub fn figure(figure: Figure) -> &'static str {
    match figure {
        Figure::Dough => say!("Dough"),
        Figure::Flour => say!("Flour"),
        Figure::PrefermentedFlour => say!("Flour in the preferment"),
        Figure::ScaldedFlour => say!("Scalded flour"),
        Figure::Paste => say!("Paste"),
        Figure::Preferment => say!("Preferment"),
        Figure::PouredWater => say!("Water poured"),
        Figure::Liquids => say!("All liquids"),
        Figure::TrueWater => say!("True water"),
        Figure::TotalWater => say!("Total moisture"),
        Figure::WaterInPaste => say!("Water held in the paste"),
        Figure::WaterInPreferment => say!("Water in the preferment"),
        Figure::WaterInFinal => say!("Water free in the final mix"),
        Figure::Salt => say!("Salt"),
        Figure::Yeast => say!("Yeast"),
        Figure::FreshYeast => say!("Yeast, as fresh yeast"),
        Figure::Sugar => say!("Sugar"),
        Figure::Sugars => say!("All sugars"),
        Figure::Fat => say!("Fat"),
        Figure::MilkPowder => say!("Milk powder"),
    }
}

/// Which flour counts as the hundred per cent.
#[must_use]
pub fn basis(basis: Basis) -> &'static str {
    match basis {
        Basis::AllFlour => say!("of all flour"),
        Basis::OwnStream => say!("of its stream’s flour"),
    }
}

/// Which weights are counted.
#[must_use]
pub fn form(form: Form) -> &'static str {
    match form {
        Form::AsWritten => say!("as written"),
        Form::AsMade => say!("as it was made, with steam and missed weighings"),
    }
}

/// What a trial does.
#[must_use]
pub fn what_if(what_if: WhatIf) -> &'static str {
    match what_if {
        WhatIf::MoreWater => say!("Two points more water"),
        WhatIf::LessWater => say!("Two points less water"),
        WhatIf::MilkForWater => say!("Milk for half the water"),
        WhatIf::WaterForMilk => say!("Water for half the milk"),
        WhatIf::LessPaste => say!("A quarter less paste"),
    }
}
