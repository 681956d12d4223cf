//! The word by which the style sheets know a kind of part.

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
