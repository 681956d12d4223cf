//! The water that ingredients bring, and yeast by its dry matter, against printed tables.

use softcrumb::engine::formula::{
    Bread, Caution, Figure, Figures, Form, Formula, Line, Part, PartKind, cautions,
};
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::Mass;

use crate::printed::{agrees, agrees_within, number};

const STRONG_FLOUR: u16 = 1;
const WATER: u16 = 200;

fn dough(kind: PartKind, lines: &[(u16, &str)]) -> Formula {
    let line = |&(numbered, printed): &(u16, &str)| {
        let food = Food::Listed(Listed::numbered(numbered).unwrap());
        Line::new(food, Mass::from_grams(number(printed)).unwrap())
    };
    Formula {
        parts: vec![Part {
            kind,
            name: String::new(),
            lines: lines.iter().map(line).collect(),
            steam: Mass::ZERO,
            temperature: None,
        }],
    }
}

/// Source: USDA SR28, NDB 01077 (whole milk), 01145 (butter), 01123 (egg), 19296 (honey),
/// 20083 (bread flour, 13.36 g of water in 100 g): on 100 g of flour, 100 g of each.
#[test]
fn an_ingredient_brings_the_water_that_its_table_prints() {
    for (numbered, printed) in [
        (300, "88.13"),
        (500, "17.94"),
        (600, "76.15"),
        (710, "17.10"),
    ] {
        let formula = dough(PartKind::Final, &[(STRONG_FLOUR, "100"), (numbered, "100")]);
        let figures = Figures::of(&formula, Form::AsWritten);
        agrees(figures.share(Figure::TrueWater).unwrap().percent(), printed);
        let with_flours_own = figures.share(Figure::TotalWater).unwrap().percent();
        agrees(with_flours_own - 13.36, printed);
        agrees(figures.share(Figure::PouredWater).unwrap().percent(), "0");
    }
}

/// Source: AACC Approved Method 89-01.01: compressed yeast has about 30 % of dry matter, active
/// dry 92 % and instant 95 %. Our table has 31 and 94.9 % (USDA SR28), one row for both dry
/// kinds, so four parts in a hundred are allowed between the two.
#[test]
fn dried_yeast_counts_as_the_fresh_yeast_with_its_dry_matter() {
    let fresh = |numbered: u16| {
        let formula = dough(PartKind::Final, &[(STRONG_FLOUR, "100"), (numbered, "1")]);
        let share = Figures::of(&formula, Form::AsWritten).share(Figure::FreshYeast);
        share.unwrap().percent()
    };
    agrees_within(fresh(900), "1", 1e-9);
    agrees_within(fresh(901), "3.067", 0.04 * 3.067);
    agrees_within(fresh(902), "3.167", 0.04 * 3.167);
}

/// Source: Donovan 1979, *Biopolymers* 18:263–275: all starch gelatinises in one stage from
/// 1.5 g of water to 1 g of starch. An even scald of wheat flour stands just above that, as a
/// general encyclopaedia's "Water roux" has it working; three parts of water to four do not.
#[test]
fn a_paste_that_is_too_dry_to_gelatinise_is_named() {
    let dry = |water: &str| {
        let formula = dough(PartKind::Paste, &[(STRONG_FLOUR, "100"), (WATER, water)]);
        let found = cautions(&formula, Bread::SoftTin).unwrap();
        found.into_iter().find_map(|caution| {
            if let Caution::PasteTooDry {
                water_to_starch, ..
            } = caution
            {
                Some(water_to_starch.fraction())
            } else {
                None
            }
        })
    };
    assert_eq!(dry("500"), None);
    assert_eq!(dry("100"), None);
    let found = dry("75").unwrap();
    assert!((1.2..1.5).contains(&found), "{found}");
}

/// Source: Marek and Bushuk 1967, *Cereal Chemistry* 44:300–307: less gas above 5 % of sugar.
#[test]
fn sugar_that_slows_yeast_is_named_from_five_per_cent() {
    let slowed = |sugar: &str| {
        let formula = dough(
            PartKind::Final,
            &[(STRONG_FLOUR, "100"), (WATER, "60"), (700, sugar)],
        );
        cautions(&formula, Bread::SoftTin)
            .unwrap()
            .iter()
            .any(|caution| matches!(caution, Caution::SugarSlowsYeast { .. }))
    };
    assert!(!slowed("5"));
    assert!(slowed("5.1"));
}
