//! Tins, pantries and classes drawn at random.

use softcrumb::engine::class::{Ahead, ClassSettings, OvenSettings};
use softcrumb::engine::ingredients::{Allergen, Listed};
use softcrumb::engine::quantity::{Factor, Length, Minutes, Money, SpecificVolume};
use softcrumb::engine::tin::{Across, Tin, TinRise, TinShape, Tins};
use softcrumb::sheet::{FoodKey, Pantry, PantryItem, SavedTin, TinUse};

use crate::drawn::Draw;

impl Draw {
    fn side(&mut self) -> Length {
        let metres = match self.below(3) {
            0 => (1 + self.below(500)) as f64 / 1000.0,
            1 => (1 + self.below(99_999)) as f64 / 10_000.0,
            _ => self.one_of(&[1e-4, 10.0, 0.1 + 0.2, 1.0 / 3.0]),
        };
        Length::from_metres(metres).unwrap()
    }

    fn tin(&mut self) -> Tin {
        let across = |draw: &mut Self| Across {
            long: draw.side(),
            wide: draw.side(),
        };
        loop {
            let (top, bottom, deep) = (self.side(), self.side(), self.side());
            let shape = match self.below(5) {
                0 => TinShape::Rectangle {
                    top: across(self),
                    bottom: across(self),
                    deep,
                },
                1 => TinShape::Round { top, bottom, deep },
                2 => TinShape::Ring {
                    top,
                    bottom,
                    tube: self.side(),
                    deep,
                },
                3 => TinShape::Muffin {
                    top,
                    bottom,
                    deep,
                    cups: self.count(),
                },
                _ => TinShape::Tray {
                    across: across(self),
                },
            };
            // A ring whose tube fills it is no tin: draw again.
            if let Ok(tin) = Tin::open(shape) {
                return tin.with_lid(self.yes());
            }
        }
    }

    pub(crate) fn tin_use(&mut self) -> TinUse {
        let room = |draw: &mut Self| {
            let room = 0.5 + draw.below(1900) as f64 / 100.0;
            SpecificVolume::from_cubic_centimetres_per_gram(room).unwrap()
        };
        TinUse {
            tins: Tins {
                tin: self.tin(),
                count: self.count(),
            },
            rows: self.maybe(Self::count),
            room: self.maybe(room),
            rise: TinRise::Times(Factor::from_number(1.0 + self.fraction() * 5.0).unwrap()),
        }
    }

    pub(crate) fn tins(&mut self) -> Vec<SavedTin> {
        (0..self.below(9))
            .map(|_| SavedTin {
                name: self.text(60),
                tin: self.tin(),
            })
            .collect()
    }

    fn marked(&mut self) -> Vec<Allergen> {
        let mut all: Vec<Allergen> = Allergen::ALL.to_vec();
        all.retain(|_| self.below(8) == 0);
        all
    }

    pub(crate) fn pantry(&mut self) -> Pantry {
        let mut numbers: Vec<u16> = Listed::all().map(|listed| listed.row().number).collect();
        numbers.retain(|_| self.below(6) == 0);
        let listed = numbers.into_iter().map(FoodKey::Listed);
        let mut keys: Vec<FoodKey> = listed.collect();
        keys.push(FoodKey::Own(
            format!("own {}", self.text(40)).trim().to_owned(),
        ));
        let items = keys.into_iter().map(|food| PantryItem {
            food,
            holds: self.maybe(Self::mass),
            price: self.maybe(|draw| Money::from_amount(draw.below(9999) as f64 / 100.0).unwrap()),
            on_hand: self.mass(),
            contains: self.marked(),
            may_contain: self.marked(),
        });
        Pantry {
            items: items.collect(),
            currency: self.one_of(&["", "€", "kr", "£", "Kč", "¥ 円"]).to_owned(),
            kitchen: self.marked(),
        }
    }

    pub(crate) fn class(&mut self) -> ClassSettings {
        let minutes = |draw: &mut Self| Minutes::from_minutes(draw.below(8000) as f64 / 2.0);
        ClassSettings {
            students: self.count(),
            at_bench: self.count(),
            loaves: self.count(),
            loaf: self.mass(),
            of_batch: false,
            shown: u16::try_from(self.below(65_536)).unwrap(),
            oven: OvenSettings {
                places: self.count(),
                bake: minutes(self).unwrap(),
                between: minutes(self).unwrap(),
            },
            // A later setting: drawing it would change the frozen samples.
            ahead: Ahead::default(),
        }
    }
}
