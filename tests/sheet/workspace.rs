//! A file of everything: what is kept beside the formulas comes back whole, and is joined without
//! loss to what is here.

use softcrumb::engine::quantity::Mass;
use softcrumb::sheet::day::{DaySettings, Log, Resets};
use softcrumb::sheet::{Added, FoodKey, Id, Kitchen, Kitchens, Pantry, PantryItem, Workspace};
use softcrumb::storage::record::{FormulaFile, Record};

use crate::days;
use crate::drawn::Draw;
use crate::written::write_file;

fn drawn(draw: &mut Draw) -> Workspace {
    let kitchens = Kitchens::of(vec![draw.kitchen(), draw.kitchen()], 1);
    Workspace {
        kitchens: draw.yes().then_some(kitchens),
        tins: draw.tins(),
        pantry: draw.pantry(),
        class: draw.yes().then(|| draw.class()),
        days: vec![(Id::from_random(draw.bits()), days::settings())],
        log: days::log(),
    }
}

#[test]
fn a_file_of_everything_loses_nothing() {
    let mut draw = Draw(41);
    for _ in 0..300 {
        let beside = drawn(&mut draw);
        let opened = FormulaFile::read(&write_file(&[], &beside)).unwrap();
        assert_eq!(opened.refused, []);
        assert_eq!(opened.beside, beside);
        assert_eq!(Workspace::default().joined_by(&beside).0, beside);
    }
    let nothing = write_file(&[], &Workspace::default());
    assert_eq!(
        nothing,
        r#"{"softcrumb":"formulas","version":1,"formulas":[]}"#
    );
}

/// What a file of the first releases has, a frozen sample of it, and one of now.
#[test]
fn older_files_open_and_this_release_s_own_stays_as_it_is() {
    let old = FormulaFile::read(include_str!("samples/v1.formulas.json")).unwrap();
    let kitchens = old.beside.kitchens.unwrap();
    assert_eq!(kitchens.all().count(), 1);
    assert_ne!(kitchens.current(), &Kitchen::default());
    let text = include_str!("samples/v1.everything.json");
    let opened = FormulaFile::read(text).unwrap();
    assert_eq!(opened.refused, []);
    assert_eq!(opened.beside.tins.len(), 5);
    assert_eq!(opened.beside.pantry.items.len(), 2);
    assert_eq!(opened.beside.class.unwrap().students.get(), 13);
    assert_eq!(opened.beside.log.bakes().len(), 2);
    assert_eq!(
        write_file(&opened.formulas, &opened.beside),
        text.trim_end()
    );
}

#[test]
fn one_spoilt_part_is_named_and_does_not_keep_the_others_shut() {
    let text = include_str!("samples/v1.everything.json");
    for (right, wrong, path) in [
        ("\"pack_g\":2000", "\"pack_g\":-1", "pantry.items[0].pack_g"),
        ("\"students\":13", "\"students\":0", "class.students"),
        (
            "\"shape\":\"rectangle\"",
            "\"shape\":\"bag\"",
            "tins[0].shape",
        ),
        ("\"chosen\":1", "\"chosen\":99", "kitchens.chosen"),
    ] {
        let spoilt = text.replacen(right, wrong, 1);
        assert_ne!(spoilt, text, "{right}");
        let opened = FormulaFile::read(&spoilt).unwrap();
        assert_eq!(opened.formulas.len(), 2);
        let paths: Vec<&str> = opened.refused.iter().map(|one| one.path.as_str()).collect();
        assert_eq!(paths, [path]);
    }
}

#[test]
fn taking_the_same_in_twice_adds_nothing_the_second_time() {
    let mut draw = Draw(43);
    for _ in 0..200 {
        let (current, file) = (drawn(&mut draw), drawn(&mut draw));
        let (joined, _) = current.clone().joined_by(&file);
        let (again, added) = joined.clone().joined_by(&file);
        assert_eq!(added, Added::default());
        assert_eq!(again, joined);
        // The records of this device are still there.
        assert!(current.tins.iter().all(|tin| joined.tins.contains(tin)));
        for item in &current.pantry.items {
            let found = joined.pantry.items.iter().find(|one| one.food == item.food);
            let found = found.unwrap();
            assert_eq!(found.price, item.price.or(found.price));
            assert!(item.contains.iter().all(|one| found.contains.contains(one)));
        }
    }
}

#[test]
fn what_is_here_stays_and_what_is_missing_is_filled_in() {
    let item = |price: Option<f64>, on_hand: f64| PantryItem {
        food: FoodKey::Own("Mill bar".to_owned()),
        holds: None,
        price: price.map(|amount| softcrumb::engine::quantity::Money::from_amount(amount).unwrap()),
        on_hand: Mass::from_grams(on_hand).unwrap(),
        contains: Vec::new(),
        may_contain: Vec::new(),
    };
    let of = |item: PantryItem, currency: &str| Workspace {
        pantry: Pantry {
            currency: currency.to_owned(),
            items: vec![item],
            kitchen: Vec::new(),
        },
        ..Workspace::default()
    };
    let (joined, added) = of(item(Some(4.0), 0.0), "").joined_by(&of(item(Some(9.0), 80.0), "kr"));
    assert_eq!(joined, of(item(Some(4.0), 80.0), "kr"));
    assert_eq!((added.foods, added.tins), (1, 0));
}

/// A log that was forgotten on purpose stays forgotten, and a plan that was made here is kept.
#[test]
fn a_plan_and_a_log_of_here_are_not_written_over() {
    let id = Id::from_random(5);
    let current = Workspace {
        days: vec![(id.clone(), DaySettings::default())],
        log: Log::of(vec![days::bake(1)], Resets::default()),
        ..Workspace::default()
    };
    let file = Workspace {
        days: vec![(id.clone(), days::settings())],
        log: days::log(),
        ..Workspace::default()
    };
    let (joined, added) = current.joined_by(&file);
    assert_eq!(joined.days, [(id, DaySettings::default())]);
    assert_eq!(joined.log.bakes().len(), 2);
    assert_eq!(joined.log.resets, Resets::default());
    assert_eq!((added.bakes, added.days), (1, 0));
}
