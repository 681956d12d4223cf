//! What is usual for a bread, against published formulas of that kind.

use softcrumb::engine::formula::{Bread, Caution, Figure, Formula, Line, Part, PartKind, cautions};
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::Mass;

use crate::printed::number;

fn part(kind: PartKind, lines: &[(u16, &str)]) -> Part {
    let line = |&(numbered, printed): &(u16, &str)| {
        let food = Food::Listed(Listed::numbered(numbered).unwrap());
        Line::new(food, Mass::from_grams(number(printed)).unwrap())
    };
    Part {
        kind,
        name: String::new(),
        lines: lines.iter().map(line).collect(),
        steam: Mass::ZERO,
        temperature: None,
    }
}

fn unusual(formula: &Formula, bread: Bread) -> Vec<Figure> {
    let outside = |caution| {
        if let Caution::Outside { usual, .. } = caution {
            Some(usual.figure)
        } else {
            None
        }
    };
    let found = cautions(formula, bread).unwrap();
    found.into_iter().filter_map(outside).collect()
}

/// Source: professional cookery textbook, "Brioche" (sponge method, 70 % of butter).
fn brioche() -> Formula {
    let sponge = [(300, "60"), (900, "15"), (2, "60")];
    let rest = [
        (600, "150"),
        (2, "240"),
        (700, "15"),
        (800, "6"),
        (500, "210"),
    ];
    Formula {
        parts: vec![
            part(PartKind::Preferment, &sponge),
            part(PartKind::Final, &rest),
        ],
    }
}

/// Source: "Sponge and dough", after Cauvain and Young, *Technology of Breadmaking*, table 2.3.
fn sponge_and_dough() -> Formula {
    let sponge = [(1, "65"), (200, "40"), (900, "2.4")];
    let rest = [
        (1, "35"),
        (200, "25"),
        (700, "6"),
        (341, "3"),
        (512, "3"),
        (800, "2.3"),
    ];
    Formula {
        parts: vec![
            part(PartKind::Preferment, &sponge),
            part(PartKind::Final, &rest),
        ],
    }
}

#[test]
fn published_breads_are_usual_for_their_kind() {
    assert_eq!(unusual(&brioche(), Bread::RichEgg), []);
    assert_eq!(unusual(&sponge_and_dough(), Bread::PlainTin), []);
}

#[test]
fn a_rich_dough_is_unusual_for_a_plain_tin() {
    assert_eq!(
        unusual(&brioche(), Bread::PlainTin),
        [Figure::FreshYeast, Figure::Fat]
    );
}

#[test]
fn every_range_runs_upwards_and_says_where_it_is_from() {
    for bread in Bread::ALL {
        for usual in bread.usual() {
            assert!(usual.low < usual.high, "{usual:?}");
            assert!(!usual.source.is_empty());
        }
    }
}
