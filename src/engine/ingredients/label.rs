//! Label: what a packet says per 100 g.

use crate::engine::quantity::Share;

/// What a packet's label gives, per 100 g. What it leaves out is `None` and worked out.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Label {
    /// Fat.
    pub fat: Option<Share>,
    /// Saturates.
    pub saturates: Option<Share>,
    /// Carbohydrate, fibre not included, as European labels print it.
    pub carbohydrate: Option<Share>,
    /// Sugars.
    pub sugars: Option<Share>,
    /// Fibre.
    pub fibre: Option<Share>,
    /// Protein.
    pub protein: Option<Share>,
    /// Salt.
    pub salt: Option<Share>,
    /// Water, where it is known.
    pub water: Option<Share>,
    /// Cocoa solids, for chocolate.
    pub cocoa: Option<Share>,
}

/// One line of a label.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum LabelLine {
    /// Fat.
    Fat,
    /// Saturates.
    Saturates,
    /// Carbohydrate.
    Carbohydrate,
    /// Sugars.
    Sugars,
    /// Fibre.
    Fibre,
    /// Protein.
    Protein,
    /// Salt.
    Salt,
    /// Water.
    Water,
    /// Cocoa solids.
    Cocoa,
}

impl LabelLine {
    /// Every line, in the order European labels print them, water and cocoa last.
    pub const ALL: [Self; 9] = [
        Self::Fat,
        Self::Saturates,
        Self::Carbohydrate,
        Self::Sugars,
        Self::Fibre,
        Self::Protein,
        Self::Salt,
        Self::Water,
        Self::Cocoa,
    ];
}

impl Label {
    /// What it says on one line.
    #[must_use]
    pub const fn line(&self, line: LabelLine) -> Option<Share> {
        match line {
            LabelLine::Fat => self.fat,
            LabelLine::Saturates => self.saturates,
            LabelLine::Carbohydrate => self.carbohydrate,
            LabelLine::Sugars => self.sugars,
            LabelLine::Fibre => self.fibre,
            LabelLine::Protein => self.protein,
            LabelLine::Salt => self.salt,
            LabelLine::Water => self.water,
            LabelLine::Cocoa => self.cocoa,
        }
    }

    /// The label with another share on one line; `None` where it says nothing there.
    #[must_use]
    pub const fn with_line(mut self, line: LabelLine, share: Option<Share>) -> Self {
        match line {
            LabelLine::Fat => self.fat = share,
            LabelLine::Saturates => self.saturates = share,
            LabelLine::Carbohydrate => self.carbohydrate = share,
            LabelLine::Sugars => self.sugars = share,
            LabelLine::Fibre => self.fibre = share,
            LabelLine::Protein => self.protein = share,
            LabelLine::Salt => self.salt = share,
            LabelLine::Water => self.water = share,
            LabelLine::Cocoa => self.cocoa = share,
        }
        self
    }

    /// The share on one line; none where it says nothing, never more than all.
    pub(super) fn known(&self, line: LabelLine) -> Share {
        match self.line(line) {
            Some(share) if share > Share::WHOLE => Share::WHOLE,
            Some(share) => share,
            None => Share::NONE,
        }
    }
}
