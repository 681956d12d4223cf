//! Shopping: packs, rests and costs of worked examples.

use softcrumb::engine::formula::Formula;
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::{Mass, Money};
use softcrumb::engine::shopping::{Need, Pack, ShoppingError, needs, shopping};
use softcrumb::sheet::examples;

use crate::printed::{agrees, agrees_within};

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

fn money(amount: f64) -> Option<Money> {
    Money::from_amount(amount).ok()
}

fn food(number: u16) -> Food {
    Food::Listed(Listed::numbered(number).unwrap())
}

fn need(number: u16, mass: f64) -> Need {
    let (food, mass) = (food(number), grams(mass));
    Need { food, mass }
}

fn pack(number: u16, holds: f64, price: Option<Money>, on_hand: f64) -> Pack {
    Pack {
        food: food(number),
        holds: Some(grams(holds)),
        price,
        on_hand: grams(on_hand),
    }
}

/// Source: cost per portion = price ÷ weight bought × weight used, as taught in recipe costing
/// (common practice): 3.20 for 1.5 kg, 420 g used, costs 0.896.
#[test]
fn what_is_used_costs_its_share_of_a_pack() {
    let packs = [pack(1, 1500.0, money(3.20), 0.0)];
    let list = shopping(vec![need(1, 420.0)], &packs).unwrap();
    agrees(list.used.amount(), "0.896");
    agrees(list.paid.amount(), "3.20");
    assert_eq!(list.items[0].packs, Some(1));
    agrees(list.items[0].left.unwrap().grams(), "1080");
    agrees_within(list.used.among(12).amount(), "0.0746667", 1e-6);
}

#[test]
fn packs_are_whole_and_what_is_on_hand_is_taken_first() {
    let cases = [
        (2999.0, 0.0, 3),
        (3000.0, 0.0, 3),
        (3000.1, 0.0, 4),
        (3000.0, 500.0, 3),
        (3000.0, 1000.0, 2),
        (300.0, 300.0, 0),
        (300.0, 900.0, 0),
        (0.01, 0.0, 1),
    ];
    for (needed, there, packs) in cases {
        let packed = [pack(1, 1000.0, money(2.0), there)];
        let list = shopping(vec![need(1, needed)], &packed).unwrap();
        let item = &list.items[0];
        assert_eq!(item.packs, Some(packs), "{needed} {there}");
        let left = there + f64::from(packs) * 1000.0 - needed;
        assert!((item.left.unwrap().grams() - left).abs() < 1e-9);
        agrees_within(
            item.used.unwrap().amount(),
            &format!("{}", needed / 500.0),
            1e-9,
        );
    }
}

/// Three times 0.1 g is three packs of 0.1 g, whatever binary fractions say.
#[test]
fn binary_fractions_buy_no_pack_too_many() {
    let tenth: f64 = [0.1, 0.1, 0.1].iter().sum();
    let list = shopping(vec![need(902, tenth)], &[pack(902, 0.1, None, 0.0)]).unwrap();
    assert_eq!(list.items[0].packs, Some(3));
}

#[test]
fn each_ingredient_stands_on_the_list_once_with_all_it_is_needed_for() {
    for (_, sheet) in examples() {
        let list = needs(&sheet.formula);
        let parts = sheet.formula.parts.iter();
        let all: f64 = parts.map(|part| part.mass().grams()).sum();
        let sum: f64 = list.iter().map(|need| need.mass.grams()).sum();
        assert!((all - sum).abs() < 1e-9);
        for (at, need) in list.iter().enumerate() {
            assert!(
                list.iter()
                    .skip(at + 1)
                    .all(|other| other.food != need.food)
            );
        }
    }
    assert!(needs(&Formula::default()).is_empty());
}

#[test]
fn water_from_the_tap_is_weighed_but_neither_bought_nor_unpriced() {
    let needs = vec![need(200, 300.0), need(1, 500.0)];
    let list = shopping(needs, &[]).unwrap();
    assert!(list.items[0].from_tap());
    assert_eq!(list.unpriced, 1);
    assert_eq!(list.items[0].packs, None);
    assert_eq!(list.used, Money::NONE);
}

#[test]
fn a_pack_that_holds_nothing_is_refused_by_name() {
    let refused = shopping(vec![need(1, 5.0)], &[pack(1, 0.0, None, 0.0)]);
    assert!(matches!(refused, Err(ShoppingError::EmptyPack { name }) if name == food(1).name()));
}
