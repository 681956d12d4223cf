//! No argument brings the formula down: whatever comes through the doors gives numbers or a reason.

use proptest::prelude::*;
use softcrumb::engine::formula::{
    Basis, Bread, Compared, Figure, FigureTarget, Figures, Form, Formula, Hold, LineAt,
    WaterLedger, WhatIf, cautions, part_totals, percentage, reach, scald, set_mass, set_part_mass,
    set_part_share, set_paste_ratio, set_percentage, swap,
};
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::Mass;
use softcrumb::engine::working::WorkingLine;

use crate::dough::{any_mass, any_share, cases, places, wild};

const BASES: [Basis; 2] = [Basis::AllFlour, Basis::OwnPart];

proptest! {
    #![proptest_config(cases(crate::cases::cases(20_000)))]

    #[test]
    fn whatever_comes_through_the_doors_gives_numbers_or_a_reason(
        formula in wild(), part in 0..6usize, line in 0..6usize,
        share in any_share(), mass in any_mass(),
        figure in prop::sample::select(&Figure::ALL[..]),
    ) {
        let at = LineAt { part, line };
        let listed = |number| Food::Listed(Listed::numbered(number).unwrap());
        let mut changed = vec![
            set_mass(&formula, at, mass),
            set_part_share(&formula, part, share),
            set_paste_ratio(&formula, part, share),
            set_part_mass(&formula, part, mass),
            swap(&formula, at, listed(1), Hold::OwnWater),
            swap(&formula, at, listed(200), Hold::TrueWater(at)),
        ];
        changed.extend(BASES.map(|basis| set_percentage(&formula, at, basis, share)));
        changed.extend(WhatIf::ALL.map(|what_if| what_if.of(&formula)));
        for target in [
            FigureTarget::OfFlour(figure, share), FigureTarget::Moisture(share), FigureTarget::Weight(figure, mass),
        ] {
            changed.push(reach(&formula, target, at).map(|reached| {
                numbers_only(&reached.working());
                reached.formula
            }));
        }
        look_at(&formula);
        for result in changed.iter().flatten() {
            look_at(result);
            let compared = Compared::of(&formula, result, Form::AsMade);
            for (_, sides) in &compared.figures {
                assert!(sides.change().grams().is_finite());
            }
        }
    }
}

/// Every figure of a formula is a number, and its shares are numbers or have a reason.
fn look_at(formula: &Formula) {
    look_at_percentages(formula);
    for form in [Form::AsWritten, Form::AsMade] {
        look_at_figures(formula, form);
    }
    for bread in Bread::ALL {
        // Nothing can be a share of flour where there is none, or next to none.
        let figures = Figures::of(formula, Form::AsWritten);
        if cautions(formula, bread).is_err() {
            let mut shares = Figure::ALL.iter().map(|figure| figures.share(*figure));
            assert!(shares.any(|share| share.is_err()));
        } else {
            assert!(figures.mass(Figure::Flour) > Mass::ZERO);
        }
    }
}

fn look_at_percentages(formula: &Formula) {
    for place in places(formula) {
        let grams = formula.line(place).unwrap().mass.grams();
        assert!(Mass::RANGE.contains(&grams), "{grams}");
        for basis in BASES {
            if let Ok(found) = percentage(formula, place, basis) {
                numbers_only(&found.working());
            }
        }
    }
    for part in 0..formula.parts.len() {
        if let Ok(totals) = part_totals(formula, part) {
            numbers_only(&totals.working());
        }
    }
}

fn look_at_figures(formula: &Formula, form: Form) {
    let figures = Figures::of(formula, form);
    for figure in Figure::ALL {
        let grams = figures.mass(figure).grams();
        assert!(grams.is_finite() && grams >= 0.0, "{figure:?} {grams}");
    }
    for part in 0..formula.parts.len() {
        if let Ok(Some(scald)) = scald(formula, part, form) {
            numbers_only(&scald.working());
        }
    }
    if let Ok(ledger) = WaterLedger::of(formula, form) {
        numbers_only(&ledger.working());
    }
}

fn numbers_only(lines: &[WorkingLine]) {
    for line in lines {
        assert!(line.result.value.is_finite(), "{line:?}");
        let finite = line.with.iter().all(|given| given.value.is_finite());
        assert!(finite, "{line:?}");
    }
}
