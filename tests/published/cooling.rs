//! Cooling against the rules of food safety.

use softcrumb::engine::heat::{
    Air, Body, Cooling, CoolingRemedy, Matter, RuleSet, Shape, advise, cool, stand,
};
use softcrumb::engine::quantity::{Length, Mass, Minutes, Temperature};

use crate::printed::{agrees, agrees_within};

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn minutes(m: f64) -> Minutes {
    Minutes::from_minutes(m).unwrap()
}

/// A heap of paste, 80 % water, this far from its middle to its surface.
fn heap(radius: f64) -> Body {
    let flour = softcrumb::engine::ingredients::Listed::numbered(1)
        .unwrap()
        .row()
        .composition();
    let components = [
        (Mass::from_grams(20.0).unwrap(), Matter::of(&flour).unwrap()),
        (Mass::from_grams(80.0).unwrap(), Matter::WATER),
    ];
    let food = Matter::blend(&components).unwrap();
    let half = Length::from_metres(radius).unwrap();
    let mass = Mass::from_grams(300.0).unwrap();
    Body::of(
        &food,
        mass,
        Shape::Sphere,
        half,
        (celsius(75.0), celsius(4.0)),
    )
    .unwrap()
}

fn cooling(radius: f64, on_bench: f64, rules: RuleSet) -> Cooling {
    Cooling {
        body: heap(radius),
        start: celsius(75.0),
        bench: Air::still(celsius(20.0)),
        on_bench: minutes(on_bench),
        fridge: Air::still(celsius(4.0)),
        rules,
    }
}

/// Source: FDA, *Food Code* 2022, 3-501.14(A): 57 to 21 °C within 2 hours, and to 5 °C within 6
/// hours in all.
#[test]
fn the_food_code_has_its_two_stages() {
    let stages: Vec<_> = RuleSet::UnitedStates.stages().collect();
    assert_eq!(stages.len(), 2);
    agrees(stages[0].from.celsius(), "57");
    agrees(stages[0].to.celsius(), "21");
    agrees(stages[0].within.hours(), "2");
    agrees(stages[1].to.celsius(), "5");
    agrees(stages[1].within.hours(), "6");
}

/// Common practice: a heap of hot paste left on the bench is not cold in time, the same put in the
/// fridge is; the rule set decides.
#[test]
fn left_on_the_bench_a_heap_fails_and_in_the_fridge_it_passes_one_rule_and_not_another() {
    assert!(
        !cool(&cooling(0.025, 240.0, RuleSet::UnitedStates))
            .unwrap()
            .passes
    );
    assert!(
        cool(&cooling(0.025, 0.0, RuleSet::UnitedStates))
            .unwrap()
            .passes
    );
    assert!(!cool(&cooling(0.025, 0.0, RuleSet::France)).unwrap().passes);
    assert!(
        !cool(&cooling(0.025, 0.0, RuleSet::Strictest))
            .unwrap()
            .passes
    );
}

/// The longest stay on the bench that passes: a minute more fails.
#[test]
fn a_minute_longer_on_the_bench_than_told_fails() {
    let advice = advise(&cooling(0.025, 0.0, RuleSet::UnitedStates)).unwrap();
    let most = advice.bench_at_most.unwrap().minutes();
    assert!(most >= 1.0, "{most}");
    assert!(
        cool(&cooling(0.025, most, RuleSet::UnitedStates))
            .unwrap()
            .passes
    );
    assert!(
        !cool(&cooling(0.025, most + 1.0, RuleSet::UnitedStates))
            .unwrap()
            .passes
    );
}

/// What is offered passes, can be done in a kitchen, and the quickest stands first. Common practice:
/// a layer of a centimetre at least, on what an oven's tray holds.
#[test]
fn what_makes_a_deep_bowl_pass_can_be_done_and_is_ranked_by_time() {
    for rules in RuleSet::ALL {
        let deep = cooling(0.06, 30.0, rules);
        assert!(!cool(&deep).unwrap().passes);
        let remedies = advise(&deep).unwrap().remedies;
        assert!(!remedies.is_empty(), "{rules:?}");
        let mut last = 0.0;
        for remedy in &remedies {
            assert!(remedy.cooled().passes);
            let cold = remedy.cooled().cold().unwrap().minutes();
            assert!(cold >= last, "{rules:?}: {cold} after {last}");
            last = cold;
            if let CoolingRemedy::Spread { laid, .. } = remedy {
                let (thick, long, wide) =
                    (laid.thick.metres(), laid.long.metres(), laid.wide.metres());
                assert!(thick >= 0.01 && long <= 0.401 && wide <= 0.301 && laid.trays <= 4);
                let spread = thick * long * wide * f64::from(laid.trays);
                let body = deep.body;
                let room = body.mass.grams() / 1000.0 / body.density.kilograms_per_cubic_metre();
                assert!((spread / room - 1.0).abs() < 1e-9);
            }
        }
        if rules == RuleSet::UnitedStates {
            assert_eq!(remedies.len(), 3, "a tray, ice water, smaller bowls");
        }
    }
}

/// A preferment of 300 g stands 60 to 150 minutes from the fridge to 15 °C in a room of 20. Common
/// practice says one to two hours for such a piece.
#[test]
fn a_cold_preferment_stands_an_hour_or_two() {
    let stood = stand(
        &heap(0.04),
        celsius(4.0),
        Air::still(celsius(20.0)),
        celsius(15.0),
    )
    .unwrap();
    assert!(
        (60.0..150.0).contains(&stood.minutes.minutes()),
        "{:?}",
        stood.minutes
    );
    let at = stood
        .curve
        .at(stood.minutes, softcrumb::engine::heat::Probe::Mean)
        .unwrap();
    agrees_within(at.celsius(), "15", 0.01);
    assert!(
        stand(
            &heap(0.04),
            celsius(4.0),
            Air::still(celsius(14.0)),
            celsius(15.0)
        )
        .is_err()
    );
}
