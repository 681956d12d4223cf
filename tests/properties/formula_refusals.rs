//! What cannot be done is refused with its own reason, and the formula is left alone.

use softcrumb::engine::formula::{
    Basis, Figure, FigureTarget, Form, Formula, FormulaError, Hold, LineAt, PartKind, WaterLedger,
    WhatIf, part_totals, percentage, reach, scald, set_mass, set_part_mass, set_part_share,
    set_paste_ratio, set_percentage, swap,
};
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::{Mass, Share};

use crate::dough::{line_of, part};

const PASTE: usize = 0;
const FINAL: usize = 1;
const TOPPING: usize = 2;
const FLOUR: LineAt = at(FINAL, 0);
const WATER: LineAt = at(FINAL, 1);
const OIL: LineAt = at(FINAL, 2);

const fn at(part: usize, line: usize) -> LineAt {
    LineAt { part, line }
}

fn percent(percent: f64) -> Share {
    Share::from_percent(percent).unwrap()
}

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

/// Paste: 20 g of rye and 80 g of water. Final: 380 g of wheat, 150 g of water, 12 g of oil.
fn dough() -> Formula {
    let none = Mass::ZERO;
    Formula {
        parts: vec![
            part(
                PartKind::Paste,
                vec![line_of(41, 20.0), line_of(200, 80.0)],
                grams(4.0),
            ),
            part(
                PartKind::Final,
                vec![line_of(1, 380.0), line_of(200, 150.0), line_of(521, 12.0)],
                none,
            ),
            part(PartKind::Topping, vec![line_of(700, 10.0)], none),
        ],
    }
}

fn below_zero<T: std::fmt::Debug>(result: Result<T, FormulaError>, named: &str, missing: f64) {
    match result {
        Err(FormulaError::BelowZero { food, short }) => {
            assert_eq!(food, named);
            assert!((short.grams() - missing).abs() < 1e-9, "{short:?}");
        }
        other => panic!("{other:?}"),
    }
}

fn cannot_move<T: std::fmt::Debug>(result: Result<T, FormulaError>, named: &str) {
    let food = named.to_owned();
    assert_eq!(result.map(drop), Err(FormulaError::CannotMove { food }));
}

#[test]
fn what_the_final_dough_has_not_got_cannot_be_taken_from_it() {
    // Twice the paste needs 20 g more of rye, and the final dough has none.
    let refused = set_part_share(&dough(), PASTE, percent(10.0));
    below_zero(refused, "Medium rye flour", 20.0);
    // 12 to 1 is 240 g of water, 160 g more: the final dough has 150 g.
    let refused = set_paste_ratio(&dough(), PASTE, percent(1200.0));
    below_zero(refused, "Water", 10.0);
}

#[test]
fn what_is_given_back_gets_a_line_of_its_own() {
    let halved = set_part_share(&dough(), PASTE, percent(2.5)).unwrap();
    let rye = &halved.parts[FINAL].lines[3];
    assert_eq!(rye.food, dough().parts[PASTE].lines[0].food);
    assert_eq!(rye.mass, grams(10.0));
    assert_eq!(halved.line(WATER).unwrap().mass, grams(190.0));
}

#[test]
fn a_paste_without_water_is_given_the_final_dough_s() {
    let mut dry = dough();
    dry.parts[PASTE].lines.pop();
    let poured = set_paste_ratio(&dry, PASTE, percent(500.0)).unwrap();
    assert_eq!(poured.parts[PASTE].lines[1].mass, grams(100.0));
    assert_eq!(poured.line(WATER).unwrap().mass, grams(50.0));
    dry.parts[FINAL].lines.remove(1);
    let refused = set_paste_ratio(&dry, PASTE, percent(500.0));
    assert_eq!(refused, Err(FormulaError::NothingIn { part: PASTE }));
}

#[test]
fn only_what_is_made_ahead_has_a_share() {
    for part in [FINAL, TOPPING] {
        let refused = Err(FormulaError::NotMadeAhead { part });
        assert_eq!(set_part_share(&dough(), part, percent(5.0)), refused);
        assert_eq!(set_paste_ratio(&dough(), part, percent(5.0)), refused);
        let refused = scald(&dough(), part, Form::AsMade);
        assert_eq!(refused, Err(FormulaError::NotMadeAhead { part }));
    }
    let mut alone = dough();
    alone.parts.truncate(1);
    let refused = set_part_share(&alone, PASTE, percent(50.0));
    assert_eq!(refused, Err(FormulaError::NoFinalDough));
}

#[test]
fn a_full_formula_takes_no_line_more() {
    let mut full = dough();
    let room = Formula::MOST_LINES - 6;
    let filling = vec![line_of(700, 1.0); room];
    full.parts
        .push(part(PartKind::Filling, filling, Mass::ZERO));
    assert!(!full.has_room());
    let refused = Err(FormulaError::TooManyLines);
    assert_eq!(set_part_share(&full, PASTE, percent(2.5)), refused);
    assert_eq!(WhatIf::MilkForWater.of(&full), refused);
}

#[test]
fn a_target_is_refused_for_what_stands_in_its_way() {
    let water = |share| FigureTarget::OfFlour(Figure::TrueWater, percent(share));
    // 80 g of water in the paste are 20 % already: 18 % would need 8 g less than none.
    below_zero(reach(&dough(), water(18.0), WATER), "Water", 8.0);
    // Oil brings no water.
    cannot_move(reach(&dough(), water(60.0), OIL), "Sunflower oil");
    // All flour is all flour, however much there is.
    let all = FigureTarget::OfFlour(Figure::Flour, percent(90.0));
    cannot_move(reach(&dough(), all, FLOUR), "Strong white bread flour");
    // More wheat makes the rye's share smaller, never larger than the whole.
    let scalded = |share| FigureTarget::OfFlour(Figure::ScaldedFlour, percent(share));
    below_zero(
        reach(&dough(), scalded(150.0), FLOUR),
        "Strong white bread flour",
        20.0 / 3.0,
    );
    // More rye makes it larger, but never the whole while there is wheat.
    cannot_move(
        reach(&dough(), scalded(150.0), at(PASTE, 0)),
        "Medium rye flour",
    );
    cannot_move(
        reach(&dough(), scalded(100.0), at(PASTE, 0)),
        "Medium rye flour",
    );
    // What lies on top is no part of the dough.
    cannot_move(reach(&dough(), water(60.0), at(TOPPING, 0)), "White sugar");
    let light = FigureTarget::Weight(Figure::Dough, grams(400.0));
    below_zero(reach(&dough(), light, WATER), "Water", 92.0);
}

#[test]
fn a_percentage_is_refused_where_it_has_no_meaning() {
    let mut flourless = dough();
    flourless.parts.remove(0);
    flourless.parts[0].lines.remove(0);
    let refused = percentage(&flourless, at(0, 0), Basis::AllFlour);
    assert_eq!(refused, Err(FormulaError::NoFlour));
    assert_eq!(part_totals(&flourless, 0), Err(FormulaError::NoFlour));
    assert_eq!(
        WaterLedger::of(&flourless, Form::AsWritten),
        Err(FormulaError::NoFlour)
    );
    let refused = percentage(&dough(), at(TOPPING, 0), Basis::OwnPart);
    assert_eq!(refused, Err(FormulaError::NoFlourIn { part: TOPPING }));
    // The only flour of its part is all of it; beside another it is never the whole.
    let only = set_percentage(&dough(), FLOUR, Basis::OwnPart, percent(90.0));
    cannot_move(only, "Strong white bread flour");
    let whole = set_percentage(&dough(), FLOUR, Basis::AllFlour, percent(100.0));
    cannot_move(whole, "Strong white bread flour");
    let half = set_percentage(&dough(), FLOUR, Basis::AllFlour, percent(50.0)).unwrap();
    assert_eq!(half.line(FLOUR).unwrap().mass, grams(20.0));
}

#[test]
fn what_is_not_there_is_named_by_its_place() {
    let nowhere = at(7, 0);
    let no_line = FormulaError::NoSuchLine { at: nowhere };
    let no_part = FormulaError::NoSuchPart { part: 7 };
    let oil = Food::Listed(Listed::numbered(521).unwrap());
    let target = FigureTarget::Weight(Figure::Dough, grams(1.0));
    for refused in [
        set_mass(&dough(), nowhere, grams(1.0)),
        set_percentage(&dough(), nowhere, Basis::AllFlour, percent(1.0)),
        swap(&dough(), nowhere, oil.clone(), Hold::Weight),
        reach(&dough(), target, nowhere).map(|reached| reached.formula),
    ] {
        assert_eq!(refused, Err(no_line.clone()));
    }
    for refused in [
        set_part_share(&dough(), 7, percent(1.0)),
        set_paste_ratio(&dough(), 7, percent(1.0)),
        set_part_mass(&dough(), 7, grams(1.0)),
    ] {
        assert_eq!(refused, Err(no_part.clone()));
    }
    cannot_move(swap(&dough(), WATER, oil, Hold::OwnWater), "Sunflower oil");
}

#[test]
fn a_trial_without_its_ingredient_is_refused() {
    let mut dry = dough();
    dry.parts.truncate(2);
    dry.parts.remove(PASTE);
    dry.parts[0].lines.remove(1);
    for what_if in WhatIf::ALL {
        if what_if != WhatIf::MoreWater {
            assert_eq!(what_if.of(&dry), Err(FormulaError::NothingGivesWay));
        }
    }
    // Two points of 380 g of flour: water can be poured where there was none.
    let poured = WhatIf::MoreWater.of(&dry).unwrap();
    let water = poured.parts[0].lines.last().unwrap();
    assert!(water.is_water() && (water.mass.grams() - 7.6).abs() < 1e-9);
    dry.parts.clear();
    assert_eq!(WhatIf::MoreWater.of(&dry), Err(FormulaError::NoFinalDough));
}

#[test]
fn steam_and_a_missed_weighing_show_only_in_what_was_made() {
    let mut made = dough();
    made.parts[PASTE].lines[1].poured = Some(grams(78.0));
    let written = WaterLedger::of(&made, Form::AsWritten).unwrap();
    let as_made = WaterLedger::of(&made, Form::AsMade).unwrap();
    let paste = |ledger: &WaterLedger| ledger.in_paste.mass.grams();
    assert!((paste(&written) - 80.0).abs() < 1e-9);
    assert!((paste(&as_made) - 74.0).abs() < 1e-9);
    assert!((as_made.poured.mass.grams() - 228.0).abs() < 1e-9);
    assert!((written.dough.grams() - as_made.dough.grams() - 6.0).abs() < 1e-9);
    let ratio = |form| scald(&made, PASTE, form).unwrap().unwrap();
    let (dry, wet) = (ratio(Form::AsMade), ratio(Form::AsWritten));
    let fell = (wet.water_to_starch - dry.water_to_starch).fraction();
    assert!((fell * dry.starch.grams() - 6.0).abs() < 1e-9);
}
