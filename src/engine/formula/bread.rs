//! Bread: the kind of dough, which decides what is usual for it.

/// A kind of bread, by what it is made with.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Bread {
    /// Soft enriched tin bread, with milk, some butter and sugar.
    #[default]
    SoftTin,
    /// Filled or plain sweet buns.
    SweetBun,
    /// Rich dough: much butter, eggs.
    RichEgg,
    /// Plain tin bread: little or no fat and sugar.
    PlainTin,
    /// A dough with a good part of rye.
    Rye,
}

impl Bread {
    /// Every kind, in the order lists are shown.
    pub const ALL: [Self; 5] = [
        Self::SoftTin,
        Self::SweetBun,
        Self::RichEgg,
        Self::PlainTin,
        Self::Rye,
    ];
}
