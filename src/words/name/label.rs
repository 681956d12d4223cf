//! What the lines of a packet's label and the parts of a food are called.

use crate::engine::larder::{LabelLine, Part};
use crate::words::say;

/// What a line of a label is called.
///
/// Source: Regulation (EU) 1169/2011, annex XV, for those it prints.
#[must_use]
pub fn label_line(line: LabelLine) -> &'static str {
    match line {
        LabelLine::Fat => say!("Fat"),
        LabelLine::Saturates => say!("of which saturates"),
        LabelLine::Carbohydrate => say!("Carbohydrate"),
        LabelLine::Sugars => say!("of which sugars"),
        LabelLine::Fibre => say!("Fibre"),
        LabelLine::Protein => say!("Protein"),
        LabelLine::Salt => say!("Salt"),
        LabelLine::Water => say!("Water"),
        LabelLine::Cocoa => say!("Cocoa"),
    }
}

/// What a part of a food is called.
#[must_use]
pub fn part(part: Part) -> &'static str {
    match part {
        Part::Water => say!("Water"),
        Part::Protein => say!("Protein"),
        Part::Fat => say!("Fat"),
        Part::Saturates => say!("Saturated fat"),
        Part::Carbohydrate => say!("Carbohydrate, fibre included"),
        Part::Sugars => say!("Sugars"),
        Part::Starch => say!("Starch"),
        Part::Fibre => say!("Fibre"),
        Part::Ash => say!("Minerals (ash)"),
        Part::Sodium => say!("Sodium"),
        Part::Alcohol => say!("Alcohol"),
    }
}
