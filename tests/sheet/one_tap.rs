//! What one tap or one typed number does: a dough at its wish, a bake as long as typed, a measured dough.

use softcrumb::engine::heat::LiquidAnswer;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::plan::{Change, Conflict};
use softcrumb::engine::quantity::{Minutes, Temperature};
use softcrumb::results::day::{ConflictedPlan, DayInput, of};
use softcrumb::results::heat::{
    DoughOffMixer, DoughQuestion, apply_remedy, offered_remedies, set_liquid_temperature,
    shown_phases, type_minutes,
};
use softcrumb::results::run::Run;
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Kitchen, Moment, Sheet, examples};

fn input<'i>(
    sheet: &'i Sheet,
    kitchen: &'i Kitchen,
    (settings, learnt, zone): (&'i DaySettings, &'i Learnt, &'i Zone),
) -> DayInput<'i> {
    DayInput {
        sheet,
        kitchen,
        settings,
        learnt,
        rounded: None,
        zone,
        now: Moment::from_milliseconds(1_774_634_400_000.0).unwrap(),
        bench: None,
    }
}

fn run(sheet: &Sheet) -> Run {
    let (settings, learnt, zone) = (DaySettings::default(), Learnt::default(), Zone::default());
    input(sheet, &Kitchen::default(), (&settings, &learnt, &zone)).run()
}

/// Common practice: a dough within half a degree of what is wanted is as wanted.
#[test]
fn the_first_remedy_that_is_offered_brings_the_dough_to_its_wish() {
    let mut offered = 0;
    for (_, mut sheet) in examples() {
        let before = run(&sheet);
        let mixing = before.mixing.as_ref().unwrap();
        let liquid = mixing.liquid.as_ref().unwrap();
        let wanted = sheet.heat.dough;
        let asked = DoughQuestion::at_best(&mixing.load, liquid, wanted, &Kitchen::default());
        if let Some(asked) = asked {
            let first = offered_remedies(&asked.remedies().unwrap())[0];
            let best = match liquid {
                LiquidAnswer::OutOfReach(out) => out.best,
                LiquidAnswer::At { liquid, .. } => *liquid,
            };
            set_liquid_temperature(&mut sheet.formula, best).unwrap();
            apply_remedy(&mut sheet.formula, &mut sheet.heat, &mixing.load, &first).unwrap();
            offered += 1;
        } else {
            let LiquidAnswer::At { liquid: at, .. } = liquid else {
                panic!("nothing is offered, though no liquid reaches the wish");
            };
            set_liquid_temperature(&mut sheet.formula, *at).unwrap();
        }
        let after = run(&sheet).dough.celsius();
        assert!((after - wanted.celsius()).abs() <= 0.5, "{after}");
    }
    assert!(offered > 0);
}

/// By definition: what is typed is what is shown, and the phases not typed stay as they were shown.
#[test]
fn typed_minutes_of_a_bake_are_its_minutes() {
    let (_, mut sheet) = examples().remove(0);
    let before = run(&sheet);
    assert_eq!(shown_phases(&before, &sheet.heat.bake), before.bake);
    let typed = Minutes::from_minutes(40.0).unwrap();
    let shown = shown_phases(&before, &sheet.heat.bake);
    type_minutes(&mut sheet.heat.bake, &shown, (0, typed));
    let after = run(&sheet);
    assert_eq!(shown_phases(&after, &sheet.heat.bake)[0], typed);
    assert_eq!(after.bake[0], typed);
}

#[test]
fn a_measured_dough_is_the_dough_of_heat() {
    let (_, sheet) = examples().remove(0);
    let mut measured = run(&sheet);
    measured.dough = Temperature::from_celsius(22.0).unwrap();
    measured.dough_basis = softcrumb::results::run::DoughBasis::Measured;
    let dough = DoughOffMixer::of(&measured, sheet.heat.dough).unwrap();
    assert!(dough.is_measured);
    assert_eq!(dough.between, [measured.dough; 2]);
}

/// A preferment of nearly three days on the bench cannot be ready tomorrow: the plan says so, and when.
#[test]
fn an_absurd_standing_time_is_answered() {
    let (_, sheet) = examples().remove(0);
    let mut settings = DaySettings::default();
    settings.rises.bench = Minutes::from_minutes(4011.0).unwrap();
    let (learnt, zone, kitchen) = (Learnt::default(), Zone::default(), Kitchen::default());
    let results = of(&input(&sheet, &kitchen, (&settings, &learnt, &zone))).unwrap();
    assert!(matches!(
        results.solved.conflicts[0],
        Conflict::TooLate { .. }
    ));
    let solutions = ConflictedPlan::of(&results).unwrap().solutions();
    assert!(
        solutions
            .iter()
            .any(|change| matches!(change, Change::TableLater(_)))
    );
    assert!(
        !solutions
            .iter()
            .any(|change| matches!(change, Change::TableEarlier(_)))
    );
}
