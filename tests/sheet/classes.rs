//! Tins, pantry and class as records: they are read as written, and damaged ones are reported.

use softcrumb::engine::class::{Ahead, ClassSettings};
use softcrumb::engine::ingredients::Allergen;
use softcrumb::engine::nutrition::LabelLaw;
use softcrumb::engine::quantity::{Mass, Money};
use softcrumb::results::batch::{allergens, scale, shopping};
use softcrumb::sheet::Sheet;
use softcrumb::sheet::{FoodKey, Pantry, examples};
use softcrumb::storage::record::{Record, RecordError, RecordFault};

use crate::drawn::Draw;
use crate::written::{read_tins, write_tins};

const TINS: &str = include_str!("samples/v1.tins.json");
const PANTRY: &str = include_str!("samples/v1.pantry.json");
const CLASS: &str = include_str!("samples/v1.class.json");

#[test]
fn drawn_ones_of_each_come_back() {
    let mut draw = Draw(77);
    for _ in 0..crate::cases::cases(2_000) {
        let tins = draw.tins();
        assert_eq!(read_tins(&write_tins(&tins)), Ok(tins));
        let pantry = draw.pantry();
        assert_eq!(Pantry::read(&pantry.write()), Ok(pantry));
        let class = draw.class();
        assert_eq!(ClassSettings::read(&class.write()), Ok(class));
    }
}

#[test]
fn the_frozen_samples_open_and_are_written_again_as_they_were() {
    let tins = read_tins(TINS).unwrap();
    assert_eq!(tins.len(), 5);
    assert_eq!(write_tins(&tins), TINS.trim_end());
    let pantry = Pantry::read(PANTRY).unwrap();
    assert_eq!(pantry.currency, "kr");
    assert_eq!(
        pantry.items[1].food,
        FoodKey::Own("Mill No. 7 dark bar".to_owned())
    );
    assert_eq!(pantry.write(), PANTRY.trim_end());
    let class = ClassSettings::read(CLASS).unwrap();
    assert_eq!((class.students.get(), class.at_bench.get()), (13, 2));
    assert_eq!(class.write(), CLASS.trim_end());
}

#[test]
fn what_is_not_there_is_as_usual() {
    let class = ClassSettings::read(r#"{"softcrumb":"class","version":1}"#);
    // Earlier releases meant 450 g.
    let usual = ClassSettings::default();
    assert_eq!(class, Ok(usual.with_loaf(usual.loaf)));
    let pantry = Pantry::read(r#"{"softcrumb":"pantry","version":1,"items":[]}"#);
    assert_eq!(pantry, Ok(Pantry::default()));
    let tins = read_tins(r#"{"softcrumb":"tins","version":1,"tins":[]}"#);
    assert_eq!(tins, Ok(Vec::new()));
}

fn spoilt<T: std::fmt::Debug>(
    text: &str,
    (from, to): (&str, &str),
    read: impl Fn(&str) -> Result<T, RecordError>,
) -> (String, RecordFault) {
    assert!(text.contains(from), "{from}");
    let error = read(&text.replacen(from, to, 1)).unwrap_err();
    (error.path, error.fault)
}

/// A number outside its range, at that place.
fn number(path: &str, found: (String, RecordFault)) {
    assert_eq!(found.0, path);
    let outside = matches!(found.1, RecordFault::OutOfRange(_));
    assert!(outside, "{:?}", found.1);
}

#[test]
fn what_is_spoilt_in_a_tin_is_named_with_the_way_to_it() {
    let deep = |to| spoilt(TINS, ("\"deep_m\":0.095", to), read_tins);
    number("tins[0].deep_m", deep("\"deep_m\":-1"));
    number("tins[0].deep_m", deep("\"deep_m\":0"));
    number("tins[0].deep_m", deep("\"deep_m\":1e9"));
    assert_eq!(
        deep("\"depth_m\":1"),
        ("tins[0].depth_m".to_owned(), RecordFault::UnknownField)
    );
    let ring = spoilt(TINS, ("\"tube_m\":0.06", "\"tube_m\":0.2"), read_tins);
    assert_eq!(ring, ("tins[2]".to_owned(), RecordFault::NoRoom));
    let shape = spoilt(
        TINS,
        ("\"shape\":\"tray\"", "\"shape\":\"heart\""),
        read_tins,
    );
    assert!(matches!(shape.1, RecordFault::UnknownWord { .. }));
}

#[test]
fn what_is_spoilt_in_pantry_and_class_is_named_with_the_way_to_it() {
    number(
        "items[0].price",
        spoilt(PANTRY, ("\"price\":24.5", "\"price\":-1"), Pantry::read),
    );
    let own = spoilt(
        PANTRY,
        ("\"ingredient\":1,", "\"ingredient\":1,\"own\":\"x\","),
        Pantry::read,
    );
    assert_eq!(own, ("items[0].own".to_owned(), RecordFault::Twice));
    let nut = spoilt(PANTRY, ("\"hazelnuts\"", "\"acorns\""), Pantry::read);
    assert!(matches!(nut.1, RecordFault::UnknownWord { .. }));
    number(
        "at_bench",
        spoilt(
            CLASS,
            ("\"at_bench\":2", "\"at_bench\":0"),
            ClassSettings::read,
        ),
    );
    let half = spoilt(
        CLASS,
        ("\"students\":13", "\"students\":12.5"),
        ClassSettings::read,
    );
    assert!(matches!(half.1, RecordFault::NotWhole { .. }));
}

#[test]
fn an_ingredient_stands_in_the_pantry_once() {
    let item = r#"{"ingredient":1,"contains":[],"may_contain":[]}"#;
    let text = format!(r#"{{"softcrumb":"pantry","version":1,"items":[{item},{item}]}}"#);
    let error = Pantry::read(&text).unwrap_err();
    assert_eq!(
        (error.path.as_str(), error.fault),
        ("items[1]", RecordFault::Twice)
    );
}

#[test]
fn one_kind_of_record_is_not_taken_for_another() {
    for text in [TINS, PANTRY, CLASS] {
        let kinds = [
            read_tins(text).is_ok(),
            Pantry::read(text).is_ok(),
            ClassSettings::read(text).is_ok(),
        ];
        assert_eq!(kinds.iter().filter(|one| **one).count(), 1);
        assert!(Sheet::read(text).is_err());
        let newer = text.replacen("\"version\":1", "\"version\":2", 1);
        let fault = read_tins(&newer).unwrap_err().fault;
        assert_eq!(fault, RecordFault::Newer { version: 2 });
    }
}

#[test]
fn the_pantry_knows_the_foods_of_a_formula() {
    let (_, sheet) = examples().remove(0);
    let formula = &sheet.formula;
    let flour = &formula.parts[0].lines[0].food;
    let mut pantry = Pantry::default();
    let item = pantry.item_mut(flour).unwrap();
    item.holds = Mass::from_grams(1500.0).ok();
    item.price = Money::from_amount(2.8).ok();
    item.may_contain = vec![Allergen::Lupin];
    assert_eq!(pantry.items.len(), 1);
    pantry.item_mut(flour).unwrap().on_hand = Mass::from_grams(200.0).unwrap();
    assert_eq!(pantry.items.len(), 1);
    let bought = shopping::of(&scale(&sheet).unwrap(), &pantry).unwrap();
    let known = bought.list.items.iter().filter(|item| item.pack.is_some());
    let known: Vec<_> = known.map(|item| (&item.food, item.on_hand)).collect();
    assert_eq!(known, [(flour, Mass::from_grams(200.0).unwrap())]);
    let found = allergens::of(formula, &pantry, LabelLaw::Eu);
    let possible = found.rows.iter().filter(|row| !row.contained());
    let possible: Vec<_> = possible.map(|row| row.allergen).collect();
    assert!(possible.contains(&Allergen::Lupin));
}

/// A formula saved before there were tins opens without one.
#[test]
fn a_formula_without_a_tin_opens() {
    let (_, mut sheet) = examples().remove(0);
    sheet.batch.tin = None;
    let text = sheet.write();
    assert!(!text.contains("\"tin\""));
    assert_eq!(Sheet::read(&text), Ok(sheet));
}

/// The way of working is stored where it is not the usual one; an older record has the usual one.
#[test]
fn a_class_stores_who_makes_paste_and_preferment() {
    let usual = ClassSettings::default();
    assert!(!usual.write().contains("ahead"));
    let bowl = ClassSettings {
        ahead: Ahead::TeacherBowl,
        ..usual
    };
    assert!(bowl.write().contains(r#""ahead":"teacher_bowl""#));
    for one in [usual, bowl] {
        assert_eq!(ClassSettings::read(&one.write()), Ok(one));
    }
}

/// What nobody has set follows the batch, and is stored so; an older record's mass stands, as does one
/// that is typed, be it the usual one.
#[test]
fn a_class_stores_whether_its_loaf_was_set() {
    let untouched = ClassSettings::default();
    assert!(untouched.of_batch);
    let typed = untouched.with_loaf(untouched.loaf);
    assert!(!typed.write().contains("loaf_of_batch"));
    assert!(untouched.write().contains(r#""loaf_of_batch":true"#));
    for one in [untouched, typed] {
        assert_eq!(ClassSettings::read(&one.write()), Ok(one));
    }
    // The last release wrote no such key.
    let written = untouched.write().replace(r#","loaf_of_batch":true"#, "");
    assert_eq!(ClassSettings::read(&written), Ok(typed));
    // A formula of 371 g in a tin, shared and kept: a loaf of its class has 371 g.
    let (_, mut sheet) = examples().remove(0);
    let shared = Mass::from_grams(371.0).unwrap();
    sheet.batch.wanted = softcrumb::engine::batch::BatchTarget::Dough(shared);
    let own = softcrumb::results::batch::class_batch::with_own_loaf;
    assert!((own(&sheet, untouched).loaf.grams() - 371.0).abs() < 1e-6);
    assert_eq!(own(&sheet, typed).loaf, typed.loaf);
}
