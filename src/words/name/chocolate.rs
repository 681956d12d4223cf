//! What can be done with a syrup, and how it keeps.

use crate::engine::chocolate::{Flow, Handling, KeepsAs};
use crate::words::say;

/// What a thickness is for.
#[must_use]
pub fn handling(handling: Handling) -> &'static str {
    match handling {
        Handling::RunsThin => say!("Runs thin"),
        Handling::Dips => say!("Dip or brush"),
        Handling::Drizzles => say!("Drizzle"),
        Handling::Pipes => say!("Pipe"),
        Handling::Spreads => say!("Spread"),
        Handling::Stiff => say!("Too stiff"),
    }
}

/// What a thickness looks like.
#[must_use]
pub fn handling_looks(handling: Handling) -> &'static str {
    match handling {
        Handling::RunsThin => say!("runs off like milk and soaks in"),
        Handling::Dips => say!("coats what is dipped or brushed"),
        Handling::Drizzles => say!("runs from a bag or a spoon in a thread"),
        Handling::Pipes => say!("comes from a bag when pressed and keeps its line"),
        Handling::Spreads => say!("stays where the knife puts it"),
        Handling::Stiff => say!("is too stiff to work"),
    }
}

/// How a syrup behaves, in a word or two.
#[must_use]
pub fn flow(flow: Flow) -> &'static str {
    match flow {
        Flow::MeltedOnly => say!("No water added"),
        Flow::Seized => say!("Seizes"),
        Flow::Flows { handling: kind, .. } => handling(kind),
    }
}

/// How a syrup keeps.
#[must_use]
pub fn keeps_as(keeps: KeepsAs) -> &'static str {
    match keeps {
        KeepsAs::FreshFood => say!("Keeps like fresh food"),
        KeepsAs::MouldsSlowly => say!("Keeps longer, but can grow mould"),
    }
}
