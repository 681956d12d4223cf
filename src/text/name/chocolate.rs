//! What can be done with a syrup, and how it keeps.

use crate::engine::chocolate::{Consistency, Flow, Perishability};
use crate::text::tr;

/// What a thickness is for.
#[must_use]
pub fn handling(handling: Consistency) -> &'static str {
    match handling {
        Consistency::RunsThin => tr!("Pour"),
        Consistency::Dips => tr!("Dip or brush"),
        Consistency::Drizzles => tr!("Drizzle"),
        Consistency::Pipes => tr!("Pipe"),
        Consistency::Spreads => tr!("Spread"),
        Consistency::Stiff => tr!("Too stiff"),
    }
}

/// What a thickness looks like.
#[must_use]
pub fn handling_looks(handling: Consistency) -> &'static str {
    match handling {
        Consistency::RunsThin => tr!("runs off like milk and soaks in"),
        Consistency::Dips => tr!("coats what is dipped or brushed"),
        Consistency::Drizzles => tr!("runs from a bag or a spoon in a thread"),
        Consistency::Pipes => tr!("comes from a bag when pressed and keeps its line"),
        Consistency::Spreads => tr!("stays where the knife puts it"),
        Consistency::Stiff => tr!("is too stiff to work"),
    }
}

/// How a syrup behaves, in a word or two.
#[must_use]
pub fn flow(flow: Flow) -> &'static str {
    match flow {
        Flow::MeltedOnly => tr!("No water added"),
        Flow::Seized => tr!("Seizes"),
        Flow::Flows { handling: kind, .. } => handling(kind),
    }
}

/// How a syrup keeps.
#[must_use]
pub fn keeps_as(keeps: Perishability) -> &'static str {
    match keeps {
        Perishability::FreshFood => tr!("Keeps like fresh food"),
        Perishability::MouldsSlowly => tr!("Keeps longer, but can grow mould"),
    }
}
