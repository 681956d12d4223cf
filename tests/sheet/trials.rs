//! Trials: what is tried is kept apart from what it began from, and comes back with it.

use crate::drawn::Draw;
use softcrumb::sheet::Sheet;
use softcrumb::sheet::{Id, Trial, examples};
use softcrumb::storage::key;
use softcrumb::storage::record::{Record, SavedTrial, is_newer};

#[test]
fn a_drawn_trial_comes_back_with_what_it_began_from() {
    let mut draw = Draw(61);
    for _ in 0..500 {
        let (base, tried) = (draw.sheet(), draw.sheet());
        let trial = Trial::again(base.clone(), tried.clone(), 3);
        let text = SavedTrial::of(&trial).write();
        assert!(text.starts_with(r#"{"softcrumb":"trial","version":1,"#));
        assert_eq!(SavedTrial::read(&text), Ok(SavedTrial { base, tried }));
    }
}

#[test]
fn a_trial_cut_short_anywhere_is_an_error_and_never_a_formula() {
    let (_, base) = examples().remove(0);
    let text = SavedTrial::of(&Trial::on(base.clone(), 1)).write();
    for (end, _) in text.char_indices() {
        assert!(SavedTrial::read(&text[..end]).is_err(), "cut at {end}");
    }
    assert!(
        Sheet::read(&text).is_err(),
        "a trial is not taken for a formula"
    );
    assert!(
        SavedTrial::read(&base.write()).is_err(),
        "nor the other way"
    );
    let newer = text.replace("\"version\":1", "\"version\":99");
    assert!(is_newer(&newer, &text) && !is_newer(&text, &newer) && !is_newer(&text, &text));
}

#[test]
fn a_trial_taken_up_again_goes_back_to_where_it_began_in_one_step() {
    let all = examples();
    let (base, tried) = (all[0].1.clone(), all[1].1.clone());
    let mut trial = Trial::again(base.clone(), tried.clone(), 5);
    assert_eq!((trial.steps.now(), trial.last()), (&tried, 5));
    assert!(!trial.has_diverged(&base));
    assert!(
        trial.has_diverged(&tried),
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
