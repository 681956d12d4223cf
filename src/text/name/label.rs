//! What the lines of a packet's label and the parts of a food are called.

use crate::engine::ingredients::{LabelLine, Part};
use crate::text::tr;

/// What a line of a label is called.
///
/// Source: Regulation (EU) 1169/2011, annex XV, for those it prints.
#[must_use]
pub fn label_line(line: LabelLine) -> &'static str {
    match line {
        LabelLine::Fat => tr!("Fat"),
        LabelLine::Saturates => tr!("of which saturates"),
        LabelLine::Carbohydrate => tr!("Carbohydrate"),
        LabelLine::Sugars => tr!("of which sugars"),
        LabelLine::Fibre => tr!("Fibre"),
        LabelLine::Protein => tr!("Protein"),
        LabelLine::Salt => tr!("Salt"),
        LabelLine::Water => tr!("Water"),
        LabelLine::Cocoa => tr!("Cocoa"),
    }
}

/// What a part of a food is called.
#[must_use]
pub fn component(component: Part) -> &'static str {
    match component {
        Part::Water => tr!("Water"),
        Part::Protein => tr!("Protein"),
        Part::Fat => tr!("Fat"),
        Part::Saturates => tr!("Saturated fat"),
        Part::Carbohydrate => tr!("Carbohydrate, fibre included"),
        Part::Sugars => tr!("Sugars"),
        Part::Starch => tr!("Starch"),
        Part::Fibre => tr!("Fibre"),
        Part::Ash => tr!("Minerals (ash)"),
        Part::Sodium => tr!("Sodium"),
        Part::Alcohol => tr!("Alcohol"),
    }
}
