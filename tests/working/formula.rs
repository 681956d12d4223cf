//! The working of percentages, part totals, water, targets and comparisons.

use softcrumb::engine::formula::{
    Basis, Caution, Figure, FigureTarget, Form, Formula, Line, LineAt, Part, PartKind, WaterLedger,
    part_totals, percentage, reach, scald,
};
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::{Mass, Share};

use softcrumb::results::formula::{
    Adjuster, adjusted_working, adjusters, caution_working, cautions, figures, nudged,
    part_working, try_adjusted,
};
use softcrumb::sheet::{Sheet, examples};

use crate::rule_evaluator::adds_up;

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

fn part(kind: PartKind, steam: f64, lines: &[(u16, f64)]) -> Part {
    let line = |&(number, mass): &(u16, f64)| {
        Line::new(Food::Listed(Listed::numbered(number).unwrap()), grams(mass))
    };
    Part {
        kind,
        name: String::new(),
        lines: lines.iter().map(line).collect(),
        steam: grams(steam),
        temperature: None,
    }
}

/// Flour 1, rye 41, water 200, milk 300, butter 500, egg 600, sugar 700, salt 800, fresh yeast 900.
fn three_parts() -> Formula {
    let mut formula = Formula {
        parts: vec![
            part(PartKind::Paste, 6.5, &[(1, 40.0), (200, 120.0)]),
            part(
                PartKind::Preferment,
                0.0,
                &[(1, 90.0), (41, 30.0), (300, 66.0), (900, 0.8)],
            ),
            part(
                PartKind::Final,
                0.0,
                &[
                    (1, 240.0),
                    (300, 70.0),
                    (200, 22.0),
                    (600, 52.0),
                    (700, 44.0),
                    (800, 7.4),
                    (900, 9.0),
                    (500, 48.0),
                ],
            ),
            part(PartKind::Topping, 0.0, &[(700, 20.0), (200, 20.0)]),
        ],
    };
    formula.parts[0].lines[1].poured = Some(grams(118.0));
    formula
}

fn every_place(formula: &Formula) -> Vec<LineAt> {
    let parts = formula.parts.iter().enumerate();
    parts
        .flat_map(|(part, own)| (0..own.lines.len()).map(move |line| LineAt { part, line }))
        .collect()
}

#[test]
fn percentages_add_up_both_ways() {
    let formula = three_parts();
    for at in every_place(&formula) {
        adds_up(&percentage(&formula, at, Basis::AllFlour).unwrap().working());
        if let Ok(own) = percentage(&formula, at, Basis::OwnPart) {
            adds_up(&own.working());
        }
    }
}

#[test]
fn every_figure_of_the_dough_adds_up() {
    let formula = three_parts();
    for figure in Figure::ALL {
        adds_up(&figure.working(&formula));
        adds_up(&figure.working(&Formula::default()));
    }
}

#[test]
fn what_gives_way_can_be_made_to() {
    let formula = three_parts();
    for figure in [Figure::TrueWater, Figure::Salt, Figure::Sugar, Figure::Fat] {
        let at = figure.gives_way(&formula).unwrap();
        let wanted = Share::from_percent(90.0).unwrap();
        let reached = reach(&formula, FigureTarget::OfFlour(figure, wanted), at);
        assert!(reached.is_ok(), "{figure:?} at {at:?}: {reached:?}");
    }
}

#[test]
fn part_totals_add_up() {
    let formula = three_parts();
    for part in 0..formula.parts.len() {
        adds_up(&part_totals(&formula, part).unwrap().working());
    }
}

#[test]
fn the_water_ledger_adds_up_as_written_and_as_made() {
    for form in [Form::AsWritten, Form::AsMade] {
        let ledger = WaterLedger::of(&three_parts(), form).unwrap();
        let working = ledger.working();
        assert_eq!(working.len(), 6);
        adds_up(&working);
    }
}

#[test]
fn a_scald_adds_up_as_written_and_as_made() {
    let formula = three_parts();
    for form in [Form::AsWritten, Form::AsMade] {
        adds_up(&scald(&formula, 0, form).unwrap().unwrap().working());
    }
}

#[test]
fn targets_add_up() {
    let formula = three_parts();
    let share = |percent: f64| Share::from_percent(percent).unwrap();
    let water = LineAt { part: 2, line: 2 };
    let flour = LineAt { part: 2, line: 0 };
    for (target, at) in [
        (FigureTarget::OfFlour(Figure::TrueWater, share(76.0)), water),
        (FigureTarget::OfFlour(Figure::TrueWater, share(76.0)), flour),
        (
            FigureTarget::OfFlour(Figure::ScaldedFlour, share(12.0)),
            flour,
        ),
        (FigureTarget::Moisture(share(45.0)), water),
        (FigureTarget::Weight(Figure::Dough, grams(900.0)), water),
    ] {
        let reached = reach(&formula, target, at).unwrap();
        adds_up(&reached.working());
    }
}

/// A sheet of the examples with other weights.
fn sheet_of(formula: Formula) -> Sheet {
    let (_, sheet) = examples().remove(0);
    sheet.with_formula(formula)
}

/// School arithmetic: each caution opens the steps of its own figure.
#[test]
fn every_caution_but_raw_flour_adds_up_to_its_figure() {
    let mut formula = three_parts();
    // Dry paste: 40 g of water to 80 g of flour; much sugar and salt; little fat.
    formula.parts[0] = part(PartKind::Paste, 0.0, &[(1, 80.0), (200, 40.0)]);
    formula.parts[2].lines[4].mass = grams(90.0);
    formula.parts[2].lines[5].mass = grams(20.0);
    let sheet = sheet_of(formula);
    let found = cautions(&sheet).unwrap();
    let is = |kind: fn(&Caution) -> bool| found.iter().any(kind);
    assert!(is(|one| matches!(one, Caution::PasteTooDry { .. })));
    assert!(is(|one| matches!(one, Caution::SugarSlowsYeast { .. })));
    assert!(is(|one| matches!(one, Caution::SaltSlowsYeast { .. })));
    for caution in &found {
        let working = caution_working(&sheet, caution);
        let wanted = match caution {
            Caution::Outside { value, .. } => value.percent(),
            Caution::SugarSlowsYeast { sugar, .. } => sugar.percent(),
            Caution::SaltSlowsYeast { salt, .. } => salt.percent(),
            Caution::MuchMilkPowder { powder, .. } => powder.percent(),
            Caution::PasteTooDry {
                water_to_starch, ..
            } => water_to_starch.fraction(),
            Caution::RawFlour => {
                assert!(working.is_empty());
                continue;
            }
        };
        adds_up(&working);
        let last = working.last().unwrap().result.value;
        assert!((last - wanted).abs() < 1e-9, "{caution:?}: {last}");
    }
}

/// School arithmetic: the step ends with the weight that the tried formula has.
#[test]
fn what_makes_up_the_difference_adds_up_to_its_weight() {
    let sheet = sheet_of(three_parts());
    for figure in [Figure::TrueWater, Figure::Salt, Figure::Sugar] {
        let now = figures(&sheet).share(figure).unwrap();
        let more = nudged(now, true);
        for adjuster in adjusters(&sheet, figure) {
            assert!(adjusted_working(&sheet, figure, now, adjuster).is_empty());
            let Ok(tried) = try_adjusted(&sheet, figure, more, adjuster) else {
                continue;
            };
            let working = adjusted_working(&sheet, figure, more, adjuster);
            adds_up(&working);
            let weighs = working.last().unwrap().result.value;
            let has = |line: &Line| (line.mass.grams() - weighs).abs() < 1e-9;
            assert!(tried.formula.lines().any(|(_, line)| has(line)), "{weighs}");
            if let Adjuster::Line(at) = adjuster {
                assert!(has(tried.formula.line(at).unwrap()));
            }
        }
    }
}

/// School arithmetic: three steps for a part with flour, none for one that is not there.
#[test]
fn the_figures_of_a_part_of_a_sheet_add_up() {
    let sheet = sheet_of(three_parts());
    let working = part_working(&sheet, 0);
    assert_eq!(working.len(), 3);
    adds_up(&working);
    assert!(part_working(&sheet, 9).is_empty());
}
