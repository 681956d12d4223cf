//! The figures of a dough as they are written, and where there are none.

use softcrumb::engine::formula::{Figure, Figures, Form, Formula};
use softcrumb::sheet::examples;
use softcrumb::text::DoughFigures;

use crate::format_options::british;

fn written(formula: &Formula) -> DoughFigures {
    let figures = Figures::of(formula, Form::AsWritten);
    DoughFigures::of(&figures, None, british())
}

/// By definition: there is no share of no flour, and no moisture of no dough; what is weighed weighs
/// nothing.
#[test]
fn a_formula_without_flour_has_no_share() {
    let empty = written(&Formula::default());
    assert!(
        Figure::ALL
            .iter()
            .all(|figure| empty.share(*figure).is_none())
    );
    assert_eq!(empty.moisture(), None);
    assert!(empty.mass(Figure::Dough).is_some());
    assert_eq!(empty.water_answer(), "no flour yet");
    assert_eq!(empty.others_answer(), "no flour yet");
}

/// By definition: a formula with flour has every figure, and the two sentences name theirs.
#[test]
fn a_formula_with_flour_has_every_share() {
    for (_, sheet) in examples() {
        let all = written(&sheet.formula);
        assert!(
            Figure::ALL
                .iter()
                .all(|figure| all.share(*figure).is_some())
        );
        let named = |answer: String, figures: &[Figure]| {
            let mut shares = figures.iter().filter_map(|figure| all.share(*figure));
            shares.all(|shown| answer.contains(&shown.value))
        };
        let water = [Figure::TrueWater, Figure::PouredWater];
        assert!(named(all.water_answer(), &water));
        assert!(named(all.others_answer(), &[Figure::Sugar, Figure::Fat]));
    }
}
