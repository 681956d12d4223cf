//! What can be done with a syrup, and how it keeps.

use crate::engine::chocolate::{Flow, Handling, KeepsAs};

/// What a thickness is for.
#[must_use]
pub const fn handling(handling: Handling) -> &'static str {
    match handling {
        Handling::RunsThin => "Runs thin",
        Handling::Dips => "Dip or brush",
        Handling::Drizzles => "Drizzle",
        Handling::Pipes => "Pipe",
        Handling::Spreads => "Spread",
        Handling::Stiff => "Too stiff",
    }
}

/// What a thickness looks like.
#[must_use]
pub const fn handling_looks(handling: Handling) -> &'static str {
    match handling {
        Handling::RunsThin => "runs off like milk and soaks in",
        Handling::Dips => "coats what is dipped or brushed",
        Handling::Drizzles => "runs from a bag or a spoon in a thread",
        Handling::Pipes => "comes from a bag when pressed and keeps its line",
        Handling::Spreads => "stays where the knife puts it",
        Handling::Stiff => "is too stiff to work",
    }
}

/// How a syrup behaves, in a word or two.
#[must_use]
pub const fn flow(flow: Flow) -> &'static str {
    match flow {
        Flow::MeltedOnly => "No water added",
        Flow::Seized => "Seizes",
        Flow::Flows { handling: kind, .. } => handling(kind),
    }
}

/// How a syrup keeps.
#[must_use]
pub const fn keeps_as(keeps: KeepsAs) -> &'static str {
    match keeps {
        KeepsAs::FreshFood => "Keeps like fresh food",
        KeepsAs::MouldsSlowly => "Keeps longer, but can grow mould",
    }
}
