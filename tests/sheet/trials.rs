//! Trials: what is tried is kept apart from what it began from, and comes back with it.

use crate::drawn::Draw;
use softcrumb::sheet::record::{is_newer, read_sheet, read_trial, write_sheet, write_trial};
use softcrumb::sheet::{Id, Trial, examples, key};

#[test]
fn a_drawn_trial_comes_back_with_what_it_began_from() {
    let mut draw = Draw(61);
    for _ in 0..500 {
        let (base, tried) = (draw.sheet(), draw.sheet());
        let trial = Trial::again(base.clone(), tried.clone(), 3);
        let text = write_trial(&trial);
        assert!(text.starts_with(r#"{"softcrumb":"trial","version":1,"#));
        assert_eq!(read_trial(&text), Ok((base, tried)));
    }
}

#[test]
fn a_trial_cut_short_anywhere_is_an_error_and_never_a_formula() {
    let (_, base) = examples().remove(0);
    let text = write_trial(&Trial::on(base.clone(), 1));
    for (end, _) in text.char_indices() {
        assert!(read_trial(&text[..end]).is_err(), "cut at {end}");
    }
    assert!(
        read_sheet(&text).is_err(),
        "a trial is not taken for a formula"
    );
    assert!(
        read_trial(&write_sheet(&base)).is_err(),
        "nor the other way"
    );
    assert!(is_newer(&text.replace("\"version\":1", "\"version\":99")));
}

#[test]
fn a_trial_taken_up_again_goes_back_to_where_it_began_in_one_step() {
    let all = examples();
    let (base, tried) = (all[0].1.clone(), all[1].1.clone());
    let mut trial = Trial::again(base.clone(), tried.clone(), 5);
    assert_eq!((trial.steps.now(), trial.last()), (&tried, 5));
    assert!(!trial.is_parted(&base));
    assert!(
        trial.is_parted(&tried),
        "what is kept was changed meanwhile"
    );
    assert!(trial.steps.undo());
    assert_eq!(trial.steps.now(), &base);
    assert!(!trial.steps.can_undo());
}

#[test]
fn each_page_keeps_its_trial_under_a_key_of_its_own() {
    let id = |text| Id::from_text(text).unwrap();
    let (formula, other) = (id("bread"), id("breadb"));
    let key = key::of_trial(Some(&formula), &id("one"));
    assert_ne!(key, key::of_trial(Some(&formula), &id("two")));
    assert!(key.starts_with(&key::of_trials(Some(&formula))));
    assert!(!key::of_trial(Some(&other), &id("one")).starts_with(&key::of_trials(Some(&formula))));
    assert!(!key.starts_with(&key::of_trials(None)));
    assert!(key::is_ours(&key) && key::formula_of(&key).is_none());
}
