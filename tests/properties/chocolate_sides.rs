//! A filling and a syrup set from one side say the same from the other.

use softcrumb::engine::batch::scale;
use softcrumb::engine::chocolate::{
    Consistency, Flow, Syrup, set_filling, set_liquid, usual_filling, usual_syrup,
};
use softcrumb::engine::formula::{Formula, PartKind};
use softcrumb::engine::quantity::{Factor, Mass, Share, Temperature};
use softcrumb::sheet::examples;

use crate::batches::alike;

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

/// The first part of a kind.
fn first_of(formula: &Formula, kind: PartKind) -> usize {
    let parts = &formula.parts;
    parts.iter().position(|part| part.kind == kind).unwrap()
}

#[test]
fn a_filling_set_as_a_share_is_that_share_of_each_piece_of_any_batch() {
    let (_, sheet) = examples().into_iter().next().unwrap();
    let part = first_of(&sheet.formula, PartKind::Filling);
    for percent in [0.5, 7.0, 12.0, 40.0] {
        let share = Share::from_percent(percent).unwrap();
        let formula = set_filling(&sheet.formula, part, share).unwrap();
        for wanted in [0.3, 1.0, 4.0] {
            let batch = &sheet.batch;
            let times =
                softcrumb::engine::batch::BatchTarget::Times(Factor::from_number(wanted).unwrap());
            let scaled = scale(&formula, times, batch.losses, batch.pieces).unwrap();
            let of_dough = scaled.filling.share_of(scaled.needed).unwrap();
            alike(of_dough.percent(), percent, "filling on dough");
        }
    }
}

#[test]
fn liquid_is_set_from_ratio_and_thickness_and_read_back() {
    let (_, sheet) = examples().into_iter().next().unwrap();
    let part = first_of(&sheet.formula, PartKind::Topping);
    let warm = Temperature::from_celsius(40.0).unwrap();
    let syrup = |formula: &Formula| Syrup::of(&formula.parts[part], warm).unwrap();
    let now = syrup(&sheet.formula);
    for ratio in [0.5, 2.0, 3.25] {
        let liquid = now.liquid_at(Factor::from_number(ratio).unwrap()).unwrap();
        let set = set_liquid(&sheet.formula, part, liquid).unwrap();
        let read = syrup(&set).chocolate_for_one().unwrap();
        alike(read.number(), ratio, "chocolate to one of liquid");
    }
    for handling in [Consistency::Dips, Consistency::Drizzles, Consistency::Pipes] {
        let wished = handling.typical().unwrap();
        let needed = now.liquid_for(wished).unwrap();
        let set = set_liquid(&sheet.formula, part, needed.liquid).unwrap();
        let Flow::Flows { thickness, .. } = syrup(&set).flow else {
            panic!("{handling:?} does not flow");
        };
        assert!((thickness.pascal_seconds() / wished.pascal_seconds() - 1.0).abs() < 1e-3);
    }
    let dry = set_liquid(&sheet.formula, part, Mass::ZERO).unwrap();
    let poured = set_liquid(&dry, part, grams(21.0)).unwrap();
    alike(syrup(&poured).liquid.grams(), 21.0, "liquid from nothing");
}

/// Common practice: 7 to 10 g of filling in a piece of 85 g; a tablespoon of water to two ounces of
/// chocolate at the least (Corriher, *BakeWise*, 2008, from memory).
#[test]
fn what_is_offered_to_begin_with_is_usual() {
    let filling = usual_filling(grams(85.0), "Filling".to_owned()).unwrap();
    assert!(
        (7.0..=10.0).contains(&filling.mass().grams()),
        "{filling:?}"
    );
    for celsius in [25.0, 40.0, 60.0] {
        let warm = Temperature::from_celsius(celsius).unwrap();
        let syrup = usual_syrup(grams(900.0), "Syrup".to_owned(), warm)
            .unwrap()
            .unwrap();
        let Flow::Flows { handling, .. } = Syrup::of(&syrup, warm).unwrap().flow else {
            panic!("at {celsius} it does not flow");
        };
        let syrup = Syrup::of(&syrup, warm).unwrap();
        assert!(syrup.rule.met(), "{celsius}: {:?}", syrup.rule);
        // The rule may ask for more than a thread wants: then it runs a little thinner.
        assert!(
            handling <= Consistency::Drizzles && handling >= Consistency::Dips,
            "{handling:?}"
        );
    }
}
