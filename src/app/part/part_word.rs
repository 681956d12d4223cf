//! By what the page knows a part: its kind for the style sheets, its place for the focus.

use crate::engine::formula::PartKind;

/// The word by which the style sheets know a kind of part.
pub const fn part_word(kind: PartKind) -> &'static str {
    match kind {
        PartKind::Paste => "paste",
        PartKind::Preferment => "preferment",
        PartKind::Final => "final",
        PartKind::Filling => "filling",
        PartKind::Topping => "topping",
        PartKind::Wash => "wash",
    }
}

/// The id of the name of a part, which the focus is moved to.
pub fn part_id(part: usize) -> String {
    format!("part-{part}")
}
