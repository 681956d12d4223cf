//! Sheets drawn at random, and from a plain seed.

use std::num::NonZeroU16;

use softcrumb::engine::batch::{BatchTarget, Losses};
use softcrumb::engine::formula::{Bread, Formula, Line, LineAt, Part, PartKind};
use softcrumb::engine::ingredients::{Allergen, Food, Label, Listed, OwnFood, Role};
use softcrumb::engine::quantity::{Factor, Mass, Share, Temperature};
use softcrumb::sheet::{Batch, Sheet};

/// Steele, Lea and Flood's `SplitMix64` (2014): the same draws on every machine.
pub(crate) struct Draw(pub(crate) u64);

impl Draw {
    pub(crate) fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let z = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    pub(crate) fn below(&mut self, most: u64) -> u64 {
        self.bits() % most
    }

    pub(crate) fn one_of<T: Clone>(&mut self, all: &[T]) -> T {
        all[usize::try_from(self.below(all.len() as u64)).unwrap()].clone()
    }

    pub(crate) fn fraction(&mut self) -> f64 {
        (self.bits() >> 11) as f64 / (1_u64 << 53) as f64
    }

    pub(crate) fn yes(&mut self) -> bool {
        self.below(2) == 1
    }

    pub(crate) fn mass(&mut self) -> Mass {
        let grams = match self.below(5) {
            0 => self.below(2_000) as f64,
            1 => self.below(100_000) as f64 / 100.0,
            2 => self.below(64) as f64 * 28.349_523_125 / 4.0,
            3 => self.fraction() * 1_000_000.0,
            _ => self.one_of(&[0.0, 0.01, 1_000_000.0, 1e-9, 0.1 + 0.2]),
        };
        Mass::from_grams(grams).unwrap()
    }

    fn share(&mut self) -> Share {
        match self.below(3) {
            0 => Share::from_percent(self.below(10_000) as f64 / 100.0).unwrap(),
            1 => Share::from_fraction(self.fraction()).unwrap(),
            _ => Share::NONE,
        }
    }

    pub(crate) fn maybe<T>(&mut self, draw: impl Fn(&mut Self) -> T) -> Option<T> {
        if self.yes() { Some(draw(self)) } else { None }
    }

    pub(crate) fn text(&mut self, most: u64) -> String {
        let letters: Vec<char> = "abc XYZ 09 é ß ñ 漢字 خبز לחם <b>&\"'\\/{}[]%🍞"
            .chars()
            .collect();
        let length = self.below(most + 1);
        let drawn: String = (0..length).map(|_| self.one_of(&letters)).collect();
        drawn.trim().to_owned()
    }

    /// A share of at most so many per cent, as a label prints it or of any size.
    fn at_most(&mut self, percent: f64) -> Share {
        let percent = match self.below(2) {
            0 => (self.fraction() * percent * 10.0).floor() / 10.0,
            _ => self.fraction() * percent,
        };
        Share::from_percent(percent).unwrap()
    }

    fn own_food(&mut self) -> OwnFood {
        let fat = self.maybe(|draw| draw.at_most(30.0));
        let carbohydrate = self.maybe(|draw| draw.at_most(30.0));
        let label = Label {
            fat,
            saturates: self.maybe(|draw| draw.at_most(fat.map_or(10.0, Share::percent))),
            carbohydrate,
            sugars: self.maybe(|draw| draw.at_most(carbohydrate.map_or(10.0, Share::percent))),
            fibre: self.maybe(|draw| draw.at_most(10.0)),
            protein: self.maybe(|draw| draw.at_most(10.0)),
            salt: self.maybe(|draw| draw.at_most(3.0)),
            water: self.maybe(|draw| draw.at_most(15.0)),
            cocoa: self.maybe(|draw| draw.at_most(60.0)),
        };
        let allergens = (0..self.below(4))
            .map(|_| self.one_of(&Allergen::ALL))
            .collect();
        let name = format!("own {}", self.text(50));
        OwnFood::new(name.trim(), self.one_of(&Role::ALL), label, allergens).unwrap()
    }

    fn line(&mut self, own: &[OwnFood]) -> Line {
        let listed: Vec<Listed> = Listed::all().collect();
        let food = if own.is_empty() || self.below(5) > 0 {
            Food::Listed(self.one_of(&listed))
        } else {
            Food::Own(self.one_of(own))
        };
        Line {
            food,
            mass: self.mass(),
            counts_as_flour: if self.below(6) == 0 {
                Some(self.yes())
            } else {
                None
            },
            poured: if self.below(6) == 0 {
                Some(self.mass())
            } else {
                None
            },
            temperature: self.rarely_a_temperature(),
        }
    }

    fn part(&mut self, own: &[OwnFood]) -> Part {
        Part {
            kind: self.one_of(&PartKind::ALL),
            name: self.text(60),
            lines: (0..self.below(9)).map(|_| self.line(own)).collect(),
            steam: if self.below(4) == 0 {
                self.mass()
            } else {
                Mass::ZERO
            },
            temperature: self.rarely_a_temperature(),
        }
    }

    fn rarely_a_temperature(&mut self) -> Option<Temperature> {
        if self.below(6) == 0 {
            Some(self.temperature())
        } else {
            None
        }
    }

    pub(crate) fn count(&mut self) -> NonZeroU16 {
        NonZeroU16::new(u16::try_from(1 + self.below(65_535)).unwrap()).unwrap()
    }

    fn wanted(&mut self) -> BatchTarget {
        match self.below(6) {
            0 => BatchTarget::Times(Factor::from_number(1e-6 + self.fraction() * 10.0).unwrap()),
            1 => BatchTarget::Dough(self.mass()),
            2 => BatchTarget::Pieces {
                count: self.count(),
                each: self.mass(),
            },
            3 => BatchTarget::FlourOnHand(self.mass()),
            4 => BatchTarget::OnHand {
                at: LineAt {
                    part: usize::try_from(self.below(12)).unwrap(),
                    line: usize::try_from(self.below(200)).unwrap(),
                },
                mass: self.mass(),
            },
            _ => BatchTarget::Class {
                students: self.count(),
                loaves: self.count(),
                loaf: self.mass(),
            },
        }
    }

    pub(crate) fn sheet(&mut self) -> Sheet {
        let own: Vec<OwnFood> = (0..self.below(3)).map(|_| self.own_food()).collect();
        let parts = (0..self.below(7)).map(|_| self.part(&own)).collect();
        let losses = Losses {
            residue: self.mass(),
            residue_share: self.share(),
            dividing: self.share(),
            bake: self.share(),
            topping: self.share(),
        };
        let syrup_at = -40.0 + self.below(39_001) as f64 / 100.0;
        Sheet {
            name: self.text(80),
            bread: self.one_of(&Bread::ALL),
            formula: Formula { parts },
            batch: Batch {
                wanted: self.wanted(),
                losses,
                pieces: self.count(),
                syrup_at: Temperature::from_celsius(syrup_at).unwrap(),
                tin: self.maybe(Self::tin_use),
            },
            heat: self.heat(),
            note: self.text(200),
        }
    }
}
