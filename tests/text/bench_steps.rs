//! The sentence of every step at the bench, for every example: its figures are in it, and it is plain.

use softcrumb::engine::batch::{ScaleSettings, round};
use softcrumb::engine::formula::{Formula, PartKind};
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::engine::quantity::Division;
use softcrumb::results::batch::{self, scaled_formula};
use softcrumb::results::chocolate;
use softcrumb::results::day::{self as results, DayInput, bench_step};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Kitchen, Sheet, examples};
use softcrumb::text::{chocolate_answer, day, name};

use crate::days::friday;
use crate::format_options::british;
use crate::plain_speech::is_plain;

/// Each step with its sentence.
fn sentences(sheet: &Sheet) -> Vec<(StepAt, String)> {
    let scales = ScaleSettings {
        main: Division::ONE_GRAM,
        pocket: None,
    };
    let rounded = round(&scaled_formula(sheet), scales);
    let input = DayInput {
        sheet,
        kitchen: &Kitchen::default(),
        settings: &DaySettings::default(),
        learnt: &Learnt::default(),
        rounded: Some(&rounded),
        zone: &Zone::default(),
        now: friday(),
        bench: None,
    };
    let plan = results::of(&input).unwrap();
    let steps = plan.plan.steps().iter().map(|step| {
        let found = bench_step(&input, &plan, step.at).unwrap();
        let said = day::bench_sentence(&found, &sheet.formula, input.zone, british());
        (step.at, said.replace('\u{A0}', " "))
    });
    steps.collect()
}

#[test]
fn every_step_says_what_to_do() {
    for (id, sheet) in examples() {
        for (step, said) in sentences(&sheet) {
            assert!(!said.is_empty(), "{id:?} {step:?}");
            assert!(said.ends_with(['.', '!']), "{step:?}: {said}");
            is_plain(&said);
        }
    }
}

/// The weights are those of the example, 85 g of filling and 1 kg of dough among ten pieces, by
/// definition; 180 °C: common practice for a soft tin loaf.
#[test]
fn the_figures_of_a_step_are_in_its_sentence() {
    let sheet = examples().remove(0).1;
    let all = sentences(&sheet);
    let said = |work: StepKind| {
        let mut all = all.iter();
        all.find(|(step, _)| step.work == work).unwrap().1.as_str()
    };
    for (work, figure) in [
        (
            StepKind::Scald,
            "Pour 112 g of boiling water over both flours",
        ),
        (StepKind::CoolPaste, "In a bowl 15 cm across"),
        (StepKind::MixPreferment, "stands in the room for 40 min"),
        (StepKind::ChillPreferment, "It comes out Sat "),
        (
            StepKind::Mix,
            "Everything but the butter into the mixer, 9 min.",
        ),
        (StepKind::Bulk, "at 21 °C to about twice its size: between "),
        (StepKind::Divide, "Divide it into 10 pieces: "),
        (StepKind::Round, "Round 10 balls"),
        (
            StepKind::Shape,
            "g of dark chocolate inside each of the 10 pieces",
        ),
        (
            StepKind::Tin,
            "10 pieces into the greased tin, seam down: rows 2, in each 5.",
        ),
        (StepKind::Preheat, "180 °C, top and bottom heat"),
        (
            StepKind::Bake,
            "Into the oven: 180 °C, top and bottom heat, 3",
        ),
        (
            StepKind::Cool,
            "in the middle, out of the tin, onto a rack. Cut it from Sat 16:00 on.",
        ),
    ] {
        assert!(said(work).contains(figure), "{work:?}: {}", said(work));
    }
}

/// What is weighed less what stays in bag and bowl is in the pieces: mass kept, by definition.
#[test]
fn a_piece_gets_what_bag_and_bowl_leave_and_both_pages_say_it() {
    let sheet = examples().remove(0).1;
    let batch = batch::of(&sheet, Kitchen::default().scales);
    let scaled = batch.scaled.as_ref().unwrap();
    let part = sheet.formula.first_part(PartKind::Filling).unwrap();
    let made = scaled.formula.parts[part].mass().grams();
    let stays = sheet.batch.losses.topping.fraction();
    assert!(stays > 0.0);
    let each = made * (1.0 - stays) / 10.0;
    let written = format!("{each:.1}");
    let written = written.trim_end_matches(".0");

    let all = sentences(&sheet);
    let shape = all.iter().find(|(step, _)| step.work == StepKind::Shape);
    let said = &shape.unwrap().1;
    assert!(
        said.starts_with(&format!("{written} g of dark chocolate")),
        "{written}: {said}"
    );
    assert!(said.ends_with("7 % stays in the bag."), "{said}");
    let drizzled = all.iter().find(|(step, _)| step.work == StepKind::Drizzle);
    let drizzled = &drizzled.unwrap().1;
    assert!(
        drizzled.contains("7 % of the 87 g stays in the bowl"),
        "{drizzled}"
    );
    let fill = chocolate::filling(scaled, part).unwrap().unwrap();
    let answer = chocolate_answer::filling(&fill, british()).replace('\u{A0}', " ");
    assert!(
        answer.starts_with(&format!("{written} g in each piece")),
        "{answer}"
    );
}

/// A card sets the name before the sentence: the two do not begin alike, and a bake of one phase has
/// no number. Plain speech.
#[test]
fn a_name_is_not_said_twice_and_one_bake_has_no_number() {
    let step = |work, of| name::step_at(StepAt { work, of }, &Formula::default());
    for (_, sheet) in examples() {
        for (at, said) in sentences(&sheet) {
            let called = name::step_at(at, &sheet.formula);
            let same = called.contains(' ') && said.starts_with(&called);
            assert!(!same, "{called}: {said}");
        }
    }
    assert_eq!(step(StepKind::Bake, 0), "Bake");
    assert_eq!(step(StepKind::Bake, 1), "Bake, phase 2");
}
