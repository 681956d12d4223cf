//! Parts and lines: what a formula is written in.

use crate::engine::ingredients::{Composition, Food, Role};
use crate::engine::quantity::{Mass, Temperature};

/// What becomes of a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum PartKind {
    /// Flour scalded with hot water, cooled, then mixed in whole.
    Paste,
    /// Flour fermented ahead, then mixed in whole.
    Preferment,
    /// Everything else that goes into the mixer.
    Final,
    /// Goes inside the pieces; no part of the dough.
    Filling,
    /// Goes on top; no part of the dough.
    Topping,
    /// Brushed on; no part of the dough.
    Wash,
}

impl PartKind {
    /// Every kind, in the order of the work.
    pub const ALL: [Self; 6] = [
        Self::Paste,
        Self::Preferment,
        Self::Final,
        Self::Filling,
        Self::Topping,
        Self::Wash,
    ];

    /// Whether the part is part of the dough.
    #[must_use]
    pub const fn in_dough(self) -> bool {
        matches!(self, Self::Paste | Self::Preferment | Self::Final)
    }

    /// Whether the part is made ahead and mixed into the final dough.
    #[must_use]
    pub const fn is_made_ahead(self) -> bool {
        matches!(self, Self::Paste | Self::Preferment)
    }
}

/// One ingredient in one part.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// What it is.
    pub food: Food,
    /// How much the formula asks for.
    pub mass: Mass,
    /// Whether it counts as flour; `None` leaves it to the ingredient's role.
    pub counts_as_flour: Option<bool>,
    /// How much really went in, where a weighing missed.
    pub poured: Option<Mass>,
    /// How warm it goes in; `None` leaves it to the kitchen.
    pub temperature: Option<Temperature>,
}

impl Line {
    /// A line as the formula asks for it.
    #[must_use]
    pub fn new(food: Food, mass: Mass) -> Self {
        Self {
            food,
            mass,
            counts_as_flour: None,
            poured: None,
            temperature: None,
        }
    }

    /// Whether it counts as flour.
    #[must_use]
    pub fn is_flour(&self) -> bool {
        self.counts_as_flour
            .unwrap_or(self.food.role() == Role::Flour)
    }

    /// Whether it is plain water.
    #[must_use]
    pub fn is_water(&self) -> bool {
        self.food.role() == Role::Water && !self.is_flour()
    }

    /// Whether it is poured: water, milk and other liquids, eggs. Dried egg is not, nor is anything
    /// that counts as flour.
    #[must_use]
    pub fn is_liquid(&self) -> bool {
        if self.is_flour() {
            return false;
        }
        match self.food.role() {
            Role::Water | Role::Liquid => true,
            Role::Egg => self.food.composition().water > Composition::DRIED,
            Role::Flour
            | Role::Fat
            | Role::Sugar
            | Role::Salt
            | Role::Yeast
            | Role::Dairy
            | Role::Chocolate
            | Role::Inclusion => false,
        }
    }
}

/// Ingredients that are handled together.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// What becomes of it.
    pub kind: PartKind,
    /// As the user calls it.
    pub name: String,
    /// What is in it.
    pub lines: Vec<Line>,
    /// Water lost as steam, found by weighing a cooked paste.
    pub steam: Mass,
    /// How warm it goes into the final dough; `None` leaves it to the kitchen's fridge.
    pub temperature: Option<Temperature>,
}

impl Part {
    /// The weight of its lines, as the formula asks for them.
    #[must_use]
    pub fn mass(&self) -> Mass {
        self.lines.iter().map(|line| line.mass).sum()
    }

    /// A part with nothing in it.
    #[must_use]
    pub const fn empty(kind: PartKind, name: String) -> Self {
        Self {
            kind,
            name,
            lines: Vec::new(),
            steam: Mass::ZERO,
            temperature: None,
        }
    }

    /// The weight of what counts as flour in it.
    #[must_use]
    pub fn flour(&self) -> Mass {
        self.lines
            .iter()
            .filter(|line| line.is_flour())
            .map(|line| line.mass)
            .sum()
    }

    /// The weight of what is poured into it: water, other liquids, eggs.
    #[must_use]
    pub fn liquid(&self) -> Mass {
        self.lines
            .iter()
            .filter(|line| line.is_liquid())
            .map(|line| line.mass)
            .sum()
    }
}

/// Where a line stands: which part, and which line of it, both from zero.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct LineAt {
    /// Which part.
    pub part: usize,
    /// Which line of it.
    pub line: usize,
}

/// A whole formula: any number of pastes and preferments, a final dough, fillings and toppings.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Formula {
    /// Its parts, in the order of the work.
    pub parts: Vec<Part>,
}

impl Formula {
    /// The most parts a formula may have.
    pub const MOST_PARTS: usize = 12;
    /// The most lines a formula may have in all.
    pub const MOST_LINES: usize = 200;

    /// The parts that make up the dough.
    pub fn dough_parts(&self) -> impl Iterator<Item = &Part> {
        self.parts.iter().filter(|part| part.kind.in_dough())
    }

    /// The weight of the dough, as the formula asks for it.
    #[must_use]
    pub fn dough(&self) -> Mass {
        self.dough_parts().map(Part::mass).sum()
    }

    /// All flour of the dough, that of pastes and preferments included.
    #[must_use]
    pub fn flour(&self) -> Mass {
        self.dough_parts().map(Part::flour).sum()
    }

    /// Whether it may have one part more.
    #[must_use]
    pub const fn has_room_for_a_part(&self) -> bool {
        self.parts.len() < Self::MOST_PARTS
    }

    /// Whether it may have one line more.
    #[must_use]
    pub fn has_room(&self) -> bool {
        let lines: usize = self.parts.iter().map(|part| part.lines.len()).sum();
        lines < Self::MOST_LINES
    }

    /// The parts other than `part`, with their places.
    pub fn other_parts(&self, part: usize) -> impl Iterator<Item = (usize, &Part)> {
        let parts = self.parts.iter().enumerate();
        parts.filter(move |(place, _)| *place != part)
    }

    /// Every line with where it stands, in the order of the formula.
    pub fn lines(&self) -> impl Iterator<Item = (LineAt, &Line)> {
        let parts = self.parts.iter().enumerate();
        parts.flat_map(|(part, own)| {
            let lines = own.lines.iter().enumerate();
            lines.map(move |(line, own)| (LineAt { part, line }, own))
        })
    }

    /// The first part of a kind.
    #[must_use]
    pub fn first_part(&self, kind: PartKind) -> Option<usize> {
        self.parts.iter().position(|part| part.kind == kind)
    }

    /// Adds a part in the order of the work, after the others of its kind; returns its place.
    pub fn add_part(&mut self, part: Part) -> usize {
        let kind = part.kind;
        self.parts.push(part);
        self.parts.sort_by_key(|part| part.kind);
        let place = self.parts.iter().rposition(|own| own.kind == kind);
        place.unwrap_or_default()
    }

    /// The line that stands there.
    #[must_use]
    pub fn line(&self, at: LineAt) -> Option<&Line> {
        self.parts.get(at.part)?.lines.get(at.line)
    }

    /// The line that stands there, to be changed.
    pub fn line_mut(&mut self, at: LineAt) -> Option<&mut Line> {
        self.parts.get_mut(at.part)?.lines.get_mut(at.line)
    }
}
