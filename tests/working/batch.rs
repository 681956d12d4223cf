//! The working of scaling, rounding, aids and dividing.

use std::num::{NonZeroU16, NonZeroU32};

use softcrumb::engine::batch::{
    BatchTarget, Losses, ScaleSettings, Scaled, SolutionAid, divide, round, scale,
};
use softcrumb::engine::formula::{Formula, Line, LineAt, Part, PartKind};
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::{Division, Factor, Mass, Share};

use crate::rule_evaluator::adds_up;

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

fn percent(percent: f64) -> Share {
    Share::from_percent(percent).unwrap()
}

fn count(count: u16) -> NonZeroU16 {
    NonZeroU16::new(count).unwrap()
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

/// Flour 1, water 200, milk 300, butter 500, sugar 700, salt 800, dried yeast 902, chocolate 1000.
fn formula() -> Formula {
    Formula {
        parts: vec![
            part(PartKind::Paste, 3.0, &[(1, 31.0), (200, 93.0)]),
            part(
                PartKind::Preferment,
                0.0,
                &[(1, 120.0), (200, 66.0), (902, 0.31)],
            ),
            part(
                PartKind::Final,
                0.0,
                &[
                    (1, 260.0),
                    (300, 101.0),
                    (700, 41.0),
                    (800, 7.7),
                    (902, 2.9),
                    (500, 47.0),
                ],
            ),
            part(PartKind::Filling, 0.0, &[(1000, 72.0)]),
            part(PartKind::Topping, 0.0, &[(1000, 52.0), (200, 14.0)]),
        ],
    }
}

fn losses() -> Losses {
    Losses {
        residue: grams(6.0),
        residue_share: percent(1.2),
        dividing: percent(0.7),
        bake: percent(11.0),
        topping: percent(8.0),
    }
}

fn every_wish() -> Vec<BatchTarget> {
    let mut settings = vec![
        BatchTarget::Times(Factor::from_number(2.5).unwrap()),
        BatchTarget::Dough(grams(1480.0)),
        BatchTarget::Pieces {
            count: count(9),
            each: grams(70.0),
        },
        BatchTarget::FlourOnHand(grams(777.0)),
        BatchTarget::Class {
            students: count(7),
            loaves: count(2),
            loaf: grams(510.0),
        },
    ];
    for (part, line) in [(0, 1), (2, 5), (3, 0), (4, 0)] {
        settings.push(BatchTarget::OnHand {
            at: LineAt { part, line },
            mass: grams(180.0),
        });
    }
    settings
}

fn every_place(scaled: &Scaled) -> Vec<LineAt> {
    let parts = scaled.formula.parts.iter().enumerate();
    parts
        .flat_map(|(part, own)| (0..own.lines.len()).map(move |line| LineAt { part, line }))
        .collect()
}

#[test]
fn scaling_adds_up_for_every_wish_with_losses_and_without() {
    let formula = formula();
    for wish in every_wish() {
        for losses in [losses(), Losses::default()] {
            let scaled = scale(&formula, wish, losses, count(8)).unwrap();
            adds_up(&scaled.working());
            for at in every_place(&scaled) {
                adds_up(&[scaled.line_working(&formula, at).unwrap()]);
            }
        }
    }
}

#[test]
fn rounding_and_its_cures_add_up_on_every_scale() {
    let scaled = scale(&formula(), BatchTarget::default(), losses(), count(8)).unwrap();
    let mut solutions = 0;
    for main in Division::ALL {
        for pocket in [None, Some(Division::ALL[0]), Some(Division::ALL[3])] {
            let rounded = round(&scaled.formula, ScaleSettings { main, pocket });
            adds_up(&rounded.working());
            for line in &rounded.lines {
                adds_up(&rounded.line_working(line.at));
                let Some(aids) = line.aids else { continue };
                if let Some(scale) = aids.pocket_scale {
                    adds_up(&scale.working());
                }
                if let Some(SolutionAid::Take(solution)) = aids.solution {
                    adds_up(&solution.working());
                    solutions += 1;
                }
            }
        }
    }
    assert!(solutions > 3, "only {solutions} yeast solutions were seen");
}

#[test]
fn dividing_adds_up() {
    for (dough, pieces) in [(853.4, 9), (100.0, 7), (1000.0, 10), (12.34, 3)] {
        for division in Division::ALL {
            if let Ok(divided) = divide(grams(dough), NonZeroU32::new(pieces).unwrap(), division) {
                adds_up(&divided.working());
            }
        }
    }
}
