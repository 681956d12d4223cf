//! Drawing: the page is drawn in steps, one a task, so that no task is long.

/// How far the page is drawn.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Drawing(usize);

impl Drawing {
    /// All of it is drawn.
    pub const WHOLE: Self = Self(usize::MAX);

    /// What fits the screen when a place is opened: shell, key figures, place and the two parts of a
    /// formula that a phone shows without scrolling. The rest follows after the frame.
    pub const SCREEN: Self = Self(5);

    /// The steps before the parts of the formula: shell, key figures, place.
    const BEFORE_PARTS: usize = 3;

    /// The steps by which a formula of so many parts is drawn, the last one left out.
    pub fn steps(parts: usize) -> impl Iterator<Item = Self> {
        (1..Self::BEFORE_PARTS.saturating_add(parts)).map(Self)
    }

    /// Whether the shell is drawn.
    pub const fn has_shell(self) -> bool {
        self.0 > 0
    }

    /// Whether the key figures are drawn.
    pub const fn has_key_figures(self) -> bool {
        self.0 > 1
    }

    /// Whether the place is drawn.
    pub const fn has_place(self) -> bool {
        self.0 >= Self::BEFORE_PARTS
    }

    /// How many parts of the formula are drawn.
    pub const fn parts(self) -> usize {
        self.0.saturating_sub(Self::BEFORE_PARTS)
    }
}
