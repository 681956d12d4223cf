//! What the lines of a packet's label and the parts of a food are called.

use crate::engine::larder::{LabelLine, Part};

/// What a line of a label is called.
///
/// Source: Regulation (EU) 1169/2011, annex XV, for those it prints.
#[must_use]
pub const fn label_line(line: LabelLine) -> &'static str {
    match line {
        LabelLine::Fat => "Fat",
        LabelLine::Saturates => "of which saturates",
        LabelLine::Carbohydrate => "Carbohydrate",
        LabelLine::Sugars => "of which sugars",
        LabelLine::Fibre => "Fibre",
        LabelLine::Protein => "Protein",
        LabelLine::Salt => "Salt",
        LabelLine::Water => "Water",
        LabelLine::Cocoa => "Cocoa",
    }
}

/// What a part of a food is called.
#[must_use]
pub const fn part(part: Part) -> &'static str {
    match part {
        Part::Water => "Water",
        Part::Protein => "Protein",
        Part::Fat => "Fat",
        Part::Saturates => "Saturated fat",
        Part::Carbohydrate => "Carbohydrate, fibre included",
        Part::Sugars => "Sugars",
        Part::Starch => "Starch",
        Part::Fibre => "Fibre",
        Part::Ash => "Minerals (ash)",
        Part::Sodium => "Sodium",
        Part::Alcohol => "Alcohol",
    }
}
