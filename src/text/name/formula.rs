//! What parts, breads and the figures of a dough are called.

use crate::engine::formula::{Basis, Bread, Figure, Form, Part, PartKind, WhatIf};
use crate::text::tr;

/// What a part is called: its own name, else that of its kind.
#[must_use]
pub fn part(part: &Part) -> &str {
    if part.name.trim().is_empty() {
        part_kind(part.kind)
    } else {
        &part.name
    }
}

/// What a kind of part is called.
#[must_use]
pub fn part_kind(kind: PartKind) -> &'static str {
    match kind {
        PartKind::Paste => tr!("Scalded paste"),
        PartKind::Preferment => tr!("Preferment"),
        PartKind::Final => tr!("Final dough"),
        PartKind::Filling => tr!("Filling"),
        PartKind::Topping => tr!("Topping"),
        PartKind::Wash => tr!("Wash"),
    }
}

/// What a kind of bread is called.
#[must_use]
pub fn bread(bread: Bread) -> &'static str {
    match bread {
        Bread::SoftTin => tr!("Soft tin bread"),
        Bread::SweetBun => tr!("Sweet buns"),
        Bread::RichEgg => tr!("Rich egg dough"),
        Bread::PlainTin => tr!("Plain tin bread"),
        Bread::Rye => tr!("Bread with rye"),
    }
}

/// What a figure of the dough is called.
#[must_use]
pub fn figure(figure: Figure) -> &'static str {
    match figure {
        Figure::Dough => tr!("Dough"),
        Figure::Flour => tr!("Flour"),
        Figure::PrefermentedFlour => tr!("Flour in the preferment"),
        Figure::ScaldedFlour => tr!("Scalded flour"),
        Figure::Paste => tr!("Paste"),
        Figure::Preferment => tr!("Preferment"),
        Figure::PouredWater => tr!("Water added"),
        Figure::Liquids => tr!("All liquids"),
        Figure::TrueWater => tr!("True hydration"),
        Figure::TotalWater => tr!("Total moisture"),
        Figure::WaterInPaste => tr!("Water held in the paste"),
        Figure::WaterInPreferment => tr!("Water in the preferment"),
        Figure::WaterInFinal => tr!("Water free in the final mix"),
        Figure::Salt => tr!("Salt"),
        Figure::Yeast => tr!("Yeast"),
        Figure::FreshYeast => tr!("Yeast, as fresh yeast"),
        Figure::Sugar => tr!("Sugar"),
        Figure::Sugars => tr!("All sugars"),
        Figure::Fat => tr!("Fat"),
        Figure::MilkPowder => tr!("Milk powder"),
    }
}

/// What the percentages of lines are of.
#[must_use]
pub fn percentages(basis: Basis) -> &'static str {
    match basis {
        Basis::AllFlour => tr!("Percentages of all flour"),
        Basis::OwnPart => tr!("Percentages of the part’s own flour"),
    }
}

/// Which weights are counted.
#[must_use]
pub fn form(form: Form) -> &'static str {
    match form {
        Form::AsWritten => tr!("as written"),
        Form::AsMade => tr!("as actually made"),
    }
}

/// What a trial does.
#[must_use]
pub fn what_if(what_if: WhatIf) -> &'static str {
    match what_if {
        WhatIf::MoreWater => tr!("Hydration +2 %"),
        WhatIf::LessWater => tr!("Hydration −2 %"),
        WhatIf::MilkForWater => tr!("Half the water as milk"),
        WhatIf::WaterForMilk => tr!("Half the milk as water"),
        WhatIf::LessPaste => tr!("A quarter less paste"),
    }
}
