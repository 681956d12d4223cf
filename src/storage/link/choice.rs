//! Choices in a link, each by a number of its own. A number, once released, is never changed: a
//! new choice takes the next one.

use crate::engine::formula::{Bread, PartKind};
use crate::engine::heat::{BakedShape, CoolingVessel, HeatFrom, Shape};
use crate::engine::ingredients::{Allergen, Role};
use crate::sheet::BakeLength;

use super::LinkError;

/// A choice with a number in links.
pub(super) trait Choice: Sized {
    /// Its number.
    fn number(self) -> u8;

    /// The choice of a number.
    fn numbered(number: u8) -> Result<Self, LinkError>;
}

/// Choices with all their numbers; one that is left out does not compile.
macro_rules! choices {
    ($($choice:ident { $($variant:ident = $number:literal,)+ })+) => {$(
        impl Choice for $choice {
            fn number(self) -> u8 {
                match self {
                    $(Self::$variant => $number,)+
                }
            }

            fn numbered(number: u8) -> Result<Self, LinkError> {
                match number {
                    $($number => Ok(Self::$variant),)+
                    _ => Err(LinkError::Damaged),
                }
            }
        }
    )+};
}

choices! {
    Bread {
        SoftTin = 0,
        SweetBun = 1,
        RichEgg = 2,
        PlainTin = 3,
        Rye = 4,
    }
    PartKind {
        Paste = 0,
        Preferment = 1,
        Final = 2,
        Filling = 3,
        Topping = 4,
        Wash = 5,
    }
    CoolingVessel {
        Bowl = 0,
        Dish = 1,
        Tray = 2,
        Jar = 3,
        Bag = 4,
    }
    Role {
        Flour = 0,
        Water = 1,
        Liquid = 2,
        Fat = 3,
        Sugar = 4,
        Salt = 5,
        Yeast = 6,
        Dairy = 7,
        Egg = 8,
        Chocolate = 9,
        Inclusion = 10,
    }
    Allergen {
        Wheat = 0,
        Rye = 1,
        Barley = 2,
        Oats = 3,
        Crustaceans = 4,
        Eggs = 5,
        Fish = 6,
        Peanuts = 7,
        Soybeans = 8,
        Milk = 9,
        Almonds = 10,
        Hazelnuts = 11,
        Walnuts = 12,
        Cashews = 13,
        Pecans = 14,
        BrazilNuts = 15,
        Pistachios = 16,
        Macadamias = 17,
        Celery = 18,
        Mustard = 19,
        Sesame = 20,
        Sulphites = 21,
        Lupin = 22,
        Molluscs = 23,
    }
    Shape {
        Slab = 0,
        Cylinder = 1,
        Sphere = 2,
    }
    BakedShape {
        Loaf = 0,
        Apart = 1,
    }
    BakeLength {
        Predicted = 0,
        Programme = 1,
    }
    HeatFrom {
        Both = 0,
        Top = 1,
        Bottom = 2,
    }
}
