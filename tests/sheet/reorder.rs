//! Lines and parts moved or taken away: the batch goes on asking for the same ingredient.

use softcrumb::engine::batch::BatchTarget;
use softcrumb::engine::formula::LineAt;
use softcrumb::engine::quantity::Mass;
use softcrumb::sheet::{Sheet, examples};

const fn at(part: usize, line: usize) -> LineAt {
    LineAt { part, line }
}

/// The first example, with a batch that goes by the ingredient at `there`.
fn asking(there: LineAt) -> Sheet {
    let mut sheet = examples().remove(0).1;
    let mass = Mass::from_grams(180.0).unwrap();
    sheet.batch.wanted = BatchTarget::OnHand { at: there, mass };
    sheet
}

fn asked(sheet: &Sheet) -> Option<String> {
    let BatchTarget::OnHand { at, .. } = sheet.batch.wanted else {
        return None;
    };
    Some(sheet.formula.line(at)?.food.name().to_owned())
}

#[test]
fn whatever_is_moved_or_removed_the_batch_asks_for_the_same_ingredient_or_for_none() {
    let places: Vec<LineAt> = (0..3)
        .flat_map(|part| (0..20).map(move |line| at(part, line)))
        .filter(|there| asking(*there).formula.line(*there).is_some())
        .collect();
    assert!(places.len() > 8, "the example has its lines");
    for asks in &places {
        let before = asked(&asking(*asks));
        for touched in &places {
            let mut sheet = asking(*asks);
            assert!(sheet.remove_line(*touched));
            let gone = asks == touched;
            assert_eq!(asked(&sheet), before.clone().filter(|_| !gone));

            let mut sheet = asking(*asks);
            let mass = sheet.formula.dough();
            let to = (touched.part + 1) % 3;
            assert!(sheet.move_line(*touched, to));
            assert_eq!(asked(&sheet), before);
            assert!((sheet.formula.dough().grams() - mass.grams()).abs() < 1e-9);
        }
        for part in 0..3 {
            let mut sheet = asking(*asks);
            assert!(sheet.remove_part(part));
            assert_eq!(asked(&sheet), before.clone().filter(|_| asks.part != part));
            let mut sheet = asking(*asks);
            assert_eq!(sheet.part_earlier(part), part > 0);
            assert_eq!(asked(&sheet), before);
        }
    }
}

#[test]
fn what_is_not_there_is_left_alone() {
    let mut sheet = asking(at(0, 0));
    let before = sheet.clone();
    assert!(!sheet.remove_line(at(0, 99)));
    assert!(!sheet.remove_line(at(99, 0)));
    assert!(!sheet.move_line(at(0, 0), 0));
    assert!(!sheet.move_line(at(0, 0), 99));
    assert!(!sheet.remove_part(99));
    assert!(!sheet.part_earlier(99));
    assert_eq!(sheet, before);
}
