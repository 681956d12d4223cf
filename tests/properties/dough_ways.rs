//! What is offered for a dough that comes off cold or warm, in kitchens cold and warm.

use softcrumb::engine::heat::{DoughRemedy, DoughStep, dough_temperature};
use softcrumb::results::heat::{DoughQuestion, apply_remedy, mixer_load};
use softcrumb::sheet::{Kitchen, Sheet, examples};

use crate::heat_cases::celsius;

fn kitchen(room: f64) -> Kitchen {
    Kitchen {
        room: celsius(room),
        flour: Some(celsius(room - 1.0)),
        tap: celsius(room.min(20.0) - 6.0),
        ..Kitchen::default()
    }
}

fn offered(sheet: &Sheet, kitchen: &Kitchen) -> (f64, Vec<DoughRemedy>) {
    let load = mixer_load(&sheet.formula, kitchen, &sheet.heat).unwrap();
    let now = dough_temperature(&load.dough).unwrap().temperature;
    let question = DoughQuestion::as_it_is(&load, sheet.heat.dough, kitchen);
    (now.celsius(), question.remedies().unwrap())
}

/// Common practice, what a baker does first: for a cold dough warm milk or water, let what is cold
/// stand out, a warm bowl, a minute or two more of mixing; for a warm dough cold milk, ice for some
/// of the water, a cold bowl, mixing less. Flour is left as it is.
fn is_first(step: DoughStep, is_cold: bool) -> bool {
    match step {
        DoughStep::WarmLiquid { to } => is_cold && to <= celsius(40.0),
        DoughStep::StandOut { .. } | DoughStep::WarmBowl { .. } | DoughStep::MixLonger { .. } => {
            is_cold
        }
        DoughStep::ChillLiquid { .. }
        | DoughStep::Ice { .. }
        | DoughStep::ChillBowl { .. }
        | DoughStep::MixShorter { .. } => !is_cold,
        DoughStep::WarmFlour { .. } | DoughStep::ChillFlour { .. } => false,
    }
}

#[test]
fn the_first_remedy_is_one_that_a_baker_does_and_takes_the_dough_to_its_temperature() {
    let mut looked_at = 0;
    for (_, sheet) in examples() {
        for room in [17.0, 21.0, 28.0] {
            let kitchen = kitchen(room);
            let wanted = sheet.heat.dough.celsius();
            let (now, remedies) = offered(&sheet, &kitchen);
            let Some(first) = remedies.first() else {
                assert!((now - wanted).abs() <= 0.1, "{} {room}", sheet.name);
                continue;
            };
            let is_cold = now < wanted;
            assert!(
                is_first(first.step, is_cold),
                "{} {room}: {first:?}",
                sheet.name
            );
            // Flour comes only where nothing else reaches it.
            let others = remedies.iter().filter(|one| is_first(one.step, is_cold));
            let flour = remedies
                .iter()
                .any(|one| one.steps().any(|step| !is_first(step, is_cold)));
            let without = |one: &DoughRemedy| one.steps().all(|step| is_first(step, is_cold));
            assert!(
                !flour || !others.clone().any(|one| one.enough && without(one)),
                "{} {room}: {remedies:?}",
                sheet.name
            );
            // Where anything reaches it, the first one offered does.
            let reaches = remedies.iter().any(|one| one.enough);
            let off = (first.reaches.celsius() - wanted).abs();
            assert!(!reaches || off <= 1.0, "{} {room}: {first:?}", sheet.name);
            let limit = if reaches { 1.0 } else { 6.0 };
            assert!(
                off <= limit,
                "{} {room}: {first:?} for {wanted}",
                sheet.name
            );
            looked_at += 1;
        }
    }
    assert!(looked_at >= 8, "{looked_at}");
}

/// What is taken, one action though it be several things, brings the dough where it said.
#[test]
fn several_things_taken_as_one_action_reach_what_they_said() {
    let (mut taken, mut several, mut iced) = (0, 0, 0);
    for (_, sheet) in examples() {
        for room in [12.0, 14.0, 17.0, 21.0, 28.0, 33.0] {
            let kitchen = kitchen(room);
            let (_, remedies) = offered(&sheet, &kitchen);
            for remedy in &remedies {
                let (mut formula, mut settings) = (sheet.formula.clone(), sheet.heat.clone());
                let before = mixer_load(&formula, &kitchen, &settings).unwrap();
                apply_remedy(&mut formula, &mut settings, &before, remedy).unwrap();
                let after = mixer_load(&formula, &kitchen, &settings).unwrap();
                let now = dough_temperature(&after.dough).unwrap().temperature;
                let off = (now - remedy.reaches).kelvin().abs();
                assert!(off < 0.3, "{} {room}: {remedy:?} {now:?}", sheet.name);
                taken += 1;
                several += u32::from(remedy.steps().count() > 1);
                let is_ice = |step| matches!(step, DoughStep::Ice { .. });
                iced += u32::from(remedy.steps().any(is_ice));
            }
        }
    }
    assert!(
        taken >= 40 && several >= 2 && iced > 0,
        "{taken} {several} {iced}"
    );
}
