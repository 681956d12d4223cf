//! Generated doughs: likely ones, to see what is held, and wild ones, to see what breaks.

use proptest::prelude::*;
use proptest::sample::select;
use proptest::test_runner::RngSeed;
use softcrumb::engine::formula::{Formula, Line, LineAt, Part, PartKind};
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::{Mass, Share};

/// The same cases on every run, so that a failure can be reproduced.
pub(crate) fn cases(cases: u32) -> ProptestConfig {
    ProptestConfig {
        cases,
        failure_persistence: None,
        rng_seed: RngSeed::Fixed(20_260_325),
        ..ProptestConfig::default()
    }
}

/// A dough of one to three pastes and preferments, then a final dough, then something on top.
pub(crate) fn likely() -> impl Strategy<Value = Formula> {
    let ahead = prop_oneof![Just(PartKind::Paste), Just(PartKind::Preferment)];
    let small = prop::collection::vec(
        (ahead, prop::collection::vec(line(likely_mass(80.0)), 1..5)),
        1..4,
    );
    let rest = prop::collection::vec(line(likely_mass(800.0)), 1..9);
    let on_top = prop::collection::vec(line(likely_mass(100.0)), 1..3);
    (small, rest, on_top, 100.0..1000.0f64).prop_map(|(small, mut rest, on_top, flour)| {
        let mut parts = Vec::new();
        rest.push(line_of(1, flour));
        rest.push(line_of(200, flour / 2.0));
        for (kind, mut lines) in small {
            lines.push(line_of(1, flour / 12.0));
            parts.push(part(kind, lines, Mass::ZERO));
        }
        parts.push(part(PartKind::Final, rest, Mass::ZERO));
        parts.push(part(PartKind::Topping, on_top, Mass::ZERO));
        Formula { parts }
    })
}

/// Any parts of anything, of any weight that a mass can have.
pub(crate) fn wild() -> impl Strategy<Value = Formula> {
    let lines = prop::collection::vec(line(any_mass()), 0..5);
    let one = (select(&PartKind::ALL[..]), lines, any_mass());
    prop::collection::vec(one, 0..5).prop_map(|parts| Formula {
        parts: parts
            .into_iter()
            .map(|(kind, lines, steam)| part(kind, lines, steam))
            .collect(),
    })
}

pub(crate) fn part(kind: PartKind, lines: Vec<Line>, steam: Mass) -> Part {
    Part {
        kind,
        name: String::new(),
        lines,
        steam,
        temperature: None,
    }
}

pub(crate) fn line_of(number: u16, grams: f64) -> Line {
    let food = Food::Listed(Listed::numbered(number).unwrap());
    Line::new(food, Mass::from_grams(grams).unwrap())
}

/// Half of all lines hold one of a few foods, so that parts share ingredients.
fn line(mass: impl Strategy<Value = Mass>) -> impl Strategy<Value = Line> {
    let all: Vec<Listed> = Listed::all().collect();
    let few: Vec<Listed> = [1, 41, 200, 300, 500, 600, 700, 800, 900, 901]
        .map(|number| Listed::numbered(number).unwrap())
        .to_vec();
    let flour = prop_oneof![8 => Just(None), 1 => any::<bool>().prop_map(Some)];
    let food = prop_oneof![select(few), select(all)];
    let poured = prop::option::weighted(0.1, likely_mass(500.0));
    (food, mass, flour, poured).prop_map(|(food, mass, counts_as_flour, poured)| Line {
        food: Food::Listed(food),
        mass,
        counts_as_flour,
        poured,
        temperature: None,
    })
}

fn likely_mass(most: f64) -> impl Strategy<Value = Mass> {
    prop_oneof![1 => Just(0.0), 3 => 0.01..5.0, 6 => 1.0..most]
        .prop_map(|grams| Mass::from_grams(grams).unwrap())
}

/// Any number as input; a refused one counts as nothing.
pub(crate) fn any_mass() -> impl Strategy<Value = Mass> {
    any_number().prop_map(|grams| Mass::from_grams(grams).unwrap_or_default())
}

/// Any number as input; a refused one counts as none.
pub(crate) fn any_share() -> impl Strategy<Value = Share> {
    any_number().prop_map(|fraction| Share::from_fraction(fraction).unwrap_or_default())
}

fn any_number() -> impl Strategy<Value = f64> {
    let ends = vec![
        0.0,
        -0.0,
        5e-324,
        1e-300,
        1e-12,
        1.0,
        1e6,
        1.000_001e6,
        1e8,
        1e300,
        -1.0,
        f64::NAN,
        f64::INFINITY,
        f64::NEG_INFINITY,
        f64::MAX,
    ];
    prop_oneof![
        select(ends),
        prop::num::f64::ANY,
        0.0..1000.0f64,
        (-320.0..7.0f64).prop_map(|power| libm::pow(10.0, power)),
    ]
}

/// A billionth of the larger, or of a gram.
pub(crate) fn close(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-9 * (1.0 + one.abs().max(other.abs()))
}

pub(crate) fn places(formula: &Formula) -> Vec<LineAt> {
    let parts = formula.parts.iter().enumerate();
    parts
        .flat_map(|(part, own)| (0..own.lines.len()).map(move |line| LineAt { part, line }))
        .collect()
}

pub(crate) fn pick<T: Copy>(from: &[T], nth: prop::sample::Index) -> T {
    from[nth.index(from.len())]
}

pub(crate) fn alike(one: &Line, other: &Line) -> bool {
    one.food == other.food && one.is_flour() == other.is_flour()
}

/// How much the dough holds of what is on a line.
pub(crate) fn overall(formula: &Formula, like: &Line) -> f64 {
    let lines = formula.dough_parts().flat_map(|part| &part.lines);
    lines
        .filter(|line| alike(line, like))
        .map(|line| line.mass.grams())
        .sum()
}

pub(crate) fn same_bread(one: &Formula, other: &Formula) -> bool {
    [one, other].iter().all(|formula| {
        let mut lines = formula.dough_parts().flat_map(|part| &part.lines);
        lines.all(|line| close(overall(one, line), overall(other, line)))
    })
}
