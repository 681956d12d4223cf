//! The word by which the style sheets know a kind of stream.

use crate::engine::formula::StreamKind;

/// The word by which the style sheets know a kind of stream.
pub const fn stream_word(kind: StreamKind) -> &'static str {
    match kind {
        StreamKind::Paste => "paste",
        StreamKind::Preferment => "preferment",
        StreamKind::Final => "final",
        StreamKind::Filling => "filling",
        StreamKind::Topping => "topping",
        StreamKind::Wash => "wash",
    }
}
