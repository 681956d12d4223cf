//! Ingredient: one row of the larder.

use super::printed::Printed;
use super::table::{Ciqual, Sr28, Starch};
use super::{Allergen, Composition, Constituent, Packet, Role, Source};

/// One row of the larder.
#[derive(Debug, PartialEq)]
pub struct Ingredient {
    /// The number it is kept under in records and links. Never reused, never changed.
    pub number: u16,
    /// Its name in the trade: "Bread flour".
    pub name: &'static str,
    /// What tells it from its neighbours: "white, 12 % protein"; may be empty.
    pub detail: &'static str,
    /// What it does in a dough.
    pub role: Role,
    /// What it is made of.
    printed: Printed,
    /// Whether the table itself gives starch; otherwise it is worked out from the rest.
    pub starch_from_table: bool,
    /// The parts the table leaves blank, counted as none or worked out; starch has its own flag.
    pub silent: &'static [Constituent],
    /// Cocoa share printed on such a packet, percent; zero for what has none.
    ///
    /// Where the food's name gives a range it is the middle of it.
    pub cocoa_percent: f64,
    /// What must be named: what the food is, or is made from, by its name in the table.
    pub allergens: &'static [Allergen],
    /// What the packets of a made-up food say beyond that; none for a single food.
    pub packet: Option<&'static Packet>,
    /// Where the composition was read.
    pub source: Source,
}

impl Ingredient {
    /// A row without its figures, which [`Self::sr28`] or [`Self::ciqual`] adds.
    pub(super) const fn new(
        number: u16,
        name: &'static str,
        detail: &'static str,
        role: Role,
    ) -> Self {
        Self {
            number,
            name,
            detail,
            role,
            printed: Printed::of(Sr28::EMPTY.composition()),
            starch_from_table: false,
            silent: &[],
            cocoa_percent: 0.0,
            allergens: &[],
            packet: None,
            source: Source::Label,
        }
    }

    /// Its line in the American table.
    pub(super) const fn sr28(mut self, ndb: u32, line: Sr28) -> Self {
        self.source = Source::UsdaSr28(ndb);
        self.printed = Printed::of(line.composition());
        self.starch_from_table = matches!(line.starch, Starch::Printed(_));
        self
    }

    /// Its line in the French table.
    pub(super) const fn ciqual(mut self, code: u32, line: Ciqual) -> Self {
        self.source = Source::Ciqual2020(code);
        self.printed = Printed::of(line.composition());
        self.starch_from_table = matches!(line.starch, Starch::Printed(_));
        self
    }

    /// What must be named.
    pub(super) const fn allergens(mut self, allergens: &'static [Allergen]) -> Self {
        self.allergens = allergens;
        self
    }

    /// What the packets of a made-up food say.
    pub(super) const fn packet(mut self, packet: &'static Packet) -> Self {
        self.packet = Some(packet);
        self
    }

    /// The cocoa share, percent.
    pub(super) const fn cocoa(mut self, percent: f64) -> Self {
        self.cocoa_percent = percent;
        self
    }

    /// The parts its table leaves blank.
    pub(super) const fn silent(mut self, components: &'static [Constituent]) -> Self {
        self.silent = components;
        self
    }

    /// What it is made of.
    #[must_use]
    pub const fn composition(&self) -> Composition {
        self.printed.composition()
    }

    /// The parts that are not printed in its table but worked out, or counted as none for want
    /// of a figure.
    pub fn worked_out(&self) -> impl Iterator<Item = Constituent> + use<> {
        let starch = !self.starch_from_table && self.composition().starch.fraction() > 0.0;
        let starch = starch.then_some(Constituent::Starch);
        self.silent.iter().copied().chain(starch)
    }
}
