//! What streams, breads and the figures of a dough are called.

use crate::engine::formula::{Basis, Bread, Figure, Form, StreamKind, WhatIf};

/// What a kind of stream is called.
#[must_use]
pub const fn stream_kind(kind: StreamKind) -> &'static str {
    match kind {
        StreamKind::Paste => "Scalded paste",
        StreamKind::Preferment => "Preferment",
        StreamKind::Final => "Final dough",
        StreamKind::Filling => "Filling",
        StreamKind::Topping => "Topping",
        StreamKind::Wash => "Wash",
    }
}

/// What a kind of bread is called.
#[must_use]
pub const fn bread(bread: Bread) -> &'static str {
    match bread {
        Bread::SoftTin => "Soft tin bread",
        Bread::SweetBun => "Sweet buns",
        Bread::RichEgg => "Rich egg dough",
        Bread::PlainTin => "Plain tin bread",
        Bread::Rye => "Bread with rye",
    }
}

/// What a figure of the dough is called.
#[must_use]
pub const fn figure(figure: Figure) -> &'static str {
    match figure {
        Figure::Dough => "Dough",
        Figure::Flour => "Flour",
        Figure::PrefermentedFlour => "Flour in the preferment",
        Figure::ScaldedFlour => "Scalded flour",
        Figure::Paste => "Paste",
        Figure::Preferment => "Preferment",
        Figure::PouredWater => "Water poured",
        Figure::Liquids => "All liquids",
        Figure::TrueWater => "True water",
        Figure::TotalWater => "Total moisture",
        Figure::WaterInPaste => "Water held in the paste",
        Figure::WaterInPreferment => "Water in the preferment",
        Figure::WaterInFinal => "Water free in the final mix",
        Figure::Salt => "Salt",
        Figure::Yeast => "Yeast",
        Figure::FreshYeast => "Yeast, as fresh yeast",
        Figure::Sugar => "Sugar",
        Figure::Sugars => "All sugars",
        Figure::Fat => "Fat",
        Figure::MilkPowder => "Milk powder",
    }
}

/// Which flour counts as the hundred per cent.
#[must_use]
pub const fn basis(basis: Basis) -> &'static str {
    match basis {
        Basis::AllFlour => "of all flour",
        Basis::OwnStream => "of its stream’s flour",
    }
}

/// Which weights are counted.
#[must_use]
pub const fn form(form: Form) -> &'static str {
    match form {
        Form::AsWritten => "as written",
        Form::AsMade => "as it was made, with steam and missed weighings",
    }
}

/// What a trial does.
#[must_use]
pub const fn what_if(what_if: WhatIf) -> &'static str {
    match what_if {
        WhatIf::MoreWater => "Two points more water",
        WhatIf::LessWater => "Two points less water",
        WhatIf::MilkForWater => "Milk for half the water",
        WhatIf::WaterForMilk => "Water for half the milk",
        WhatIf::LessPaste => "A quarter less paste",
    }
}
