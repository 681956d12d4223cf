//! The shelf: nothing is lost, whatever two pages do to it.

use crate::drawn::Draw;
use softcrumb::sheet::{Id, Moment, Shelf, Standing, examples};
use softcrumb::storage::record::{Record, RecordFault};
use softcrumb::storage::{key, repair};

fn at(ms: u32) -> Moment {
    Moment::from_milliseconds(f64::from(ms)).unwrap()
}

fn id(text: &str) -> Id {
    Id::from_text(text).unwrap()
}

fn shelf_of_examples() -> Shelf {
    let mut shelf = Shelf::default();
    for (n, (id, sheet)) in examples().iter().enumerate() {
        shelf.put(id, sheet, at(1_000 + u32::try_from(n).unwrap()));
    }
    shelf
}

/// A shelf after some changes drawn at random, among few ids and moments so that they collide.
fn drawn(draw: &mut Draw) -> Shelf {
    let mut shelf = Shelf::default();
    for _ in 0..draw.below(12) {
        let (_, sheet) = draw.one_of(&examples());
        let id = id(draw.one_of(&["a", "b", "c", "d"]));
        let now = at(u32::try_from(draw.below(6)).unwrap());
        match draw.below(4) {
            0 => drop(shelf.bin(&id, now)),
            1 => drop(shelf.restore(&id, now)),
            2 => drop(shelf.empty_bin(now)),
            _ => shelf.put(&id, &sheet, now),
        }
    }
    shelf
}

#[test]
fn the_last_changed_stands_first() {
    let shelf = shelf_of_examples();
    let ids: Vec<&str> = shelf
        .shelved()
        .iter()
        .map(|entry| entry.id.as_text())
        .collect();
    assert_eq!(ids, ["ryeloaf", "eggloaf", "plainloaf", "lanternloaf"]);
    let entry = shelf.entry(&id("plainloaf")).unwrap();
    assert_eq!(entry.name, "Toast loaf for the class");
    assert!((entry.dough.grams() - 838.5).abs() < 1e-9);
}

#[test]
fn the_bin_gives_back_what_was_put_in_until_it_is_emptied() {
    let mut shelf = shelf_of_examples();
    let rye = id("ryeloaf");
    assert!(shelf.bin(&rye, at(2_000)));
    assert!(!shelf.bin(&rye, at(2_001)));
    assert_eq!(shelf.binned(), [(shelf.entry(&rye).unwrap(), at(2_000))]);
    assert!(shelf.restore(&rye, at(2_002)));
    assert_eq!(shelf.shelved().len(), 4);
    shelf.bin(&rye, at(2_003));
    assert_eq!(shelf.empty_bin(at(2_004)), std::slice::from_ref(&rye));
    assert_eq!(shelf.standing_of(&rye), Some(Standing::Gone));
    assert_eq!(shelf.entry(&rye), None);
    assert!(!shelf.restore(&rye, at(2_005)));
}

#[test]
fn what_one_page_removed_the_other_does_not_bring_back() {
    let before = shelf_of_examples();
    let (mut mine, mut theirs) = (before.clone(), before);
    let egg = id("eggloaf");
    mine.bin(&egg, at(3_000));
    mine.empty_bin(at(3_001));
    theirs.put(&id("new"), &examples()[0].1, at(3_002));
    let both = mine.merge(theirs);
    assert_eq!(both.entry(&egg), None);
    assert!(both.entry(&id("new")).is_some());
}

#[test]
fn a_change_after_the_removal_wins() {
    let before = shelf_of_examples();
    let (mut mine, mut theirs) = (before.clone(), before);
    let egg = id("eggloaf");
    mine.bin(&egg, at(3_000));
    theirs.put(&egg, &examples()[2].1, at(3_001));
    assert_eq!(
        mine.merge(theirs).standing_of(&egg),
        Some(Standing::Shelved)
    );
}

#[test]
fn a_clock_set_back_does_not_undo_the_last_change() {
    let mut mine = shelf_of_examples();
    let before = mine.clone();
    let egg = id("eggloaf");
    assert!(mine.bin(&egg, at(5)));
    assert_eq!(mine.merge(before).standing_of(&egg), Some(Standing::Binned));
}

#[test]
fn merging_gives_the_same_whatever_the_order() {
    let mut draw = Draw(10);
    for _ in 0..crate::cases::cases(5_000) {
        let (a, b, c) = (drawn(&mut draw), drawn(&mut draw), drawn(&mut draw));
        let ab = a.clone().merge(b.clone());
        assert_eq!(ab, b.clone().merge(a.clone()));
        assert_eq!(ab.clone().merge(b.clone()), ab);
        assert_eq!(ab.merge(c.clone()), a.merge(b.merge(c)));
    }
}

#[test]
fn the_index_comes_back_from_its_record() {
    let mut draw = Draw(11);
    for _ in 0..crate::cases::cases(2_000) {
        let shelf = drawn(&mut draw);
        assert_eq!(Shelf::read(&shelf.write()), Ok(shelf));
    }
}

#[test]
fn a_lost_index_is_made_anew_from_the_records() {
    let texts: Vec<(Id, String)> = examples()
        .iter()
        .map(|(id, sheet)| (id.clone(), sheet.write()))
        .collect();
    let records = || texts.iter().map(|(id, text)| (id.clone(), text.as_str()));
    let repaired = repair(Shelf::default(), records(), at(9));
    assert_eq!(repaired.unread, []);
    assert_eq!(repaired.missing, []);
    let names = |shelf: &Shelf| -> Vec<String> {
        shelf
            .shelved()
            .iter()
            .map(|entry| entry.name.clone())
            .collect()
    };
    let mut expected = names(&shelf_of_examples());
    let mut got = names(&repaired.shelf);
    expected.sort();
    got.sort();
    assert_eq!(got, expected);
    assert_eq!(
        repair(repaired.shelf.clone(), records(), at(10)).shelf,
        repaired.shelf
    );
}

#[test]
fn a_record_that_cannot_be_opened_and_one_that_is_missing_are_both_reported() {
    let shelf = shelf_of_examples();
    let newer = r#"{"softcrumb":"formula","version":2}"#;
    let repaired = repair(
        shelf,
        [(id("later"), newer), (id("eggloaf"), "not looked at")],
        at(9),
    );
    assert_eq!(repaired.unread.len(), 1);
    assert_eq!(
        repaired.unread[0].1.fault,
        RecordFault::Newer { version: 2 }
    );
    assert_eq!(repaired.missing.len(), 3);
    assert_eq!(repaired.shelf.shelved().len(), 1);
}

#[test]
fn a_damaged_index_is_refused_and_not_half_read() {
    let text = shelf_of_examples().write();
    for (from, to) in [
        ("\"id\":\"eggloaf\"", "\"id\":\"../x\""),
        ("\"id\":\"eggloaf\"", "\"id\":\"ryeloaf\""),
        ("\"place\":\"shelf\"", "\"place\":\"attic\""),
        ("\"since_ms\":1000", "\"since_ms\":-1"),
        ("\"changed_ms\":1000", "\"changed_ms\":1e300"),
    ] {
        assert!(text.contains(from));
        assert!(Shelf::read(&text.replacen(from, to, 1)).is_err(), "{to}");
    }
    for end in (0..text.len()).filter(|end| text.is_char_boundary(*end)) {
        assert!(Shelf::read(&text[..end]).is_err());
    }
}

#[test]
fn the_index_forgets_old_removals_but_never_a_formula() {
    let mut shelf = Shelf::default();
    let sheet = examples().remove(0).1;
    for n in 0..700_u32 {
        let id = Id::from_random(u64::from(n));
        shelf.put(&id, &sheet, at(n * 10));
        if n >= 100 {
            shelf.bin(&id, at(n * 10 + 1));
            shelf.empty_bin(at(n * 10 + 2));
        }
    }
    let back = Shelf::read(&shelf.write()).unwrap();
    assert_eq!(back.shelved().len(), 100);
    assert_eq!(back.standing_of(&Id::from_random(100)), None);
    assert_eq!(
        back.standing_of(&Id::from_random(699)),
        Some(Standing::Gone)
    );
}

#[test]
fn keys_and_ids_read_back() {
    let mut draw = Draw(12);
    for _ in 0..1_000 {
        let id = Id::from_random(draw.bits());
        assert_eq!(Id::from_text(id.as_text()), Some(id.clone()));
        assert_eq!(key::formula_of(&key::of_formula(&id)), Some(id));
    }
    for text in ["", "A", "a1", "a b", "é", "abcdefghijklmnopqrstuvwxyz2"] {
        assert_eq!(Id::from_text(text), None, "{text}");
    }
    for other in [
        key::SHELF,
        key::KITCHEN,
        key::SETTINGS,
        key::OPEN,
        "softcrumb.formula.",
    ] {
        assert_eq!(key::formula_of(other), None);
    }
}
