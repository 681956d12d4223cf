//! Undo and redo.

use crate::drawn::Draw;
use softcrumb::sheet::{History, Sheet, examples};

fn named(name: &str) -> Sheet {
    let mut sheet = examples().remove(0).1;
    name.clone_into(&mut sheet.name);
    sheet
}

#[test]
fn a_number_typed_digit_by_digit_is_one_step() {
    let mut history = History::new(named("start"));
    for digits in ["1", "12", "125"] {
        history.change(named(digits), Some("weight of butter"), 0);
    }
    history.change(named("other"), Some("weight of salt"), 1);
    assert!(history.undo());
    assert_eq!(history.now().name, "125");
    assert!(history.undo());
    assert_eq!(history.now().name, "start");
    assert!(!history.undo());
    assert!(history.redo());
    assert_eq!(history.now().name, "125");
}

/// Common practice of text entry: a number typed key by key is the number pasted.
#[test]
fn each_key_of_an_entry_begins_from_what_was_there_when_the_box_was_entered() {
    let mut history = History::new(named("start"));
    for digits in ["1", "12"] {
        assert_eq!(history.entered("salt").name, "start");
        history.change(named(digits), Some("salt"), 0);
    }
    assert_eq!(history.entered("butter").name, "12");
    history.change(named("start"), Some("salt"), 0);
    assert!(!history.can_undo(), "typed back, nothing is left to undo");
    history.change(named("3"), Some("salt"), 1);
    history.end_step();
    assert_eq!(history.entered("salt").name, "3");
}

#[test]
fn leaving_the_box_ends_the_step() {
    let mut history = History::new(named("start"));
    history.change(named("1"), Some("salt"), 0);
    history.end_step();
    history.change(named("2"), Some("salt"), 0);
    assert!(history.undo());
    assert_eq!(history.now().name, "1");
}

#[test]
fn a_change_after_undo_drops_what_was_undone_and_no_change_drops_nothing() {
    let mut history = History::new(named("start"));
    history.change(named("1"), None, 0);
    history.undo();
    history.change(named("start"), None, 0);
    assert!(history.can_redo());
    history.change(named("2"), None, 0);
    assert!(!history.can_redo());
    assert!(!history.redo());
    assert_eq!(history.now().name, "2");
}

#[test]
fn a_hundred_steps_are_stored() {
    let mut history = History::new(named("0"));
    for step in 1..=250 {
        history.change(named(&step.to_string()), None, step);
    }
    let mut steps = 0;
    while history.undo() {
        steps += 1;
    }
    assert_eq!(steps, History::<Sheet>::MOST);
    assert_eq!(history.now().name, "150");
}

#[test]
fn undoing_everything_and_redoing_it_ends_where_it_began() {
    let mut draw = Draw(6);
    for _ in 0..50 {
        let mut history = History::new(draw.sheet());
        for _ in 0..draw.below(90) {
            history.change(draw.sheet(), None, 0);
        }
        let now = history.now().clone();
        while history.undo() {}
        while history.redo() {}
        assert_eq!(*history.now(), now);
    }
}

#[test]
fn of_two_histories_the_step_made_last_is_known_by_its_number() {
    let mut formula = History::new("dough");
    let mut kitchen = History::new(21);
    formula.change("more milk", None, 1);
    kitchen.change(14, Some("room"), 2);
    kitchen.change(13, Some("room"), 3);
    formula.change("less salt", None, 4);
    assert_eq!((formula.last(), kitchen.last()), (Some(4), Some(2)));
    assert!(formula.undo() && kitchen.undo() && formula.undo());
    assert_eq!((*formula.now(), *kitchen.now()), ("dough", 21));
    // What was undone last is done again first: it has the lowest number.
    assert_eq!((formula.next(), kitchen.next()), (Some(1), Some(2)));
    assert!(formula.redo());
    assert_eq!((formula.last(), formula.next()), (Some(1), Some(4)));
    kitchen.forget_undone();
    assert_eq!(kitchen.next(), None);
    assert!(!kitchen.redo());
}
