//! Heat in sentences: advice with numbers and a remedy.

use softcrumb::engine::heat::{
    HeatFrom, LiquidAnswer, Phase, RuleSet, cook, dough_remedies, dough_temperature, liquid_for,
    review,
};
use softcrumb::engine::quantity::{
    Altitude, Heat, Length, Minutes, Temperature, TemperatureChange, WarmingRate,
};
use softcrumb::results::heat::{cooling_plan, mixer_load, paste, shares, warming};
use softcrumb::sheet::Kitchen;
use softcrumb::sheet::{Sheet, examples};
use softcrumb::text::chart::{CoolingDrawing, bowl_balance, cooling_curve};
use softcrumb::text::heat::{self, Morning};
use softcrumb::text::read::{self, ReadError};
use softcrumb::text::{FormatOptions, MassUnit, TemperatureUnit, Units, format};

fn plain(text: &str) -> String {
    text.replace('\u{A0}', " ")
}

fn celsius(degrees: f64) -> Temperature {
    Temperature::from_celsius(degrees).unwrap()
}

fn minutes(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes).unwrap()
}

fn example() -> Sheet {
    examples().remove(0).1
}

fn cold() -> Kitchen {
    Kitchen {
        room: celsius(14.0),
        flour: Some(celsius(13.0)),
        tap: celsius(8.0),
        ..Kitchen::default()
    }
}

#[test]
fn an_unreachable_target_is_shown_with_the_best_and_ways_out() {
    let (sheet, kitchen) = (example(), cold());
    let bowl = mixer_load(&sheet.formula, &kitchen, &sheet.heat).unwrap();
    let answer = liquid_for(&bowl.dough, sheet.heat.dough, kitchen.surroundings().liquid).unwrap();
    let LiquidAnswer::OutOfReach(out) = &answer else {
        panic!("reached");
    };
    let at_best = bowl.dough.poured_at(out.best);
    let remedies = dough_remedies(&at_best, sheet.heat.dough, &kitchen.surroundings()).unwrap();
    let morning = Morning {
        load: &bowl,
        wanted: sheet.heat.dough,
        remedies: Some(&remedies),
        options: FormatOptions::default(),
    };
    let advice = heat::liquid(&answer, morning);
    assert_eq!(
        plain(&advice.means),
        "No whole milk temperature reaches 25 °C."
    );
    let to_do = plain(&advice.to_do);
    assert!(
        to_do.starts_with("At 40 °C, the warmest that yeast bears, the whole milk takes it to "),
        "{to_do}"
    );
    assert!(to_do.ends_with('.'), "{to_do}");
    assert!(
        to_do.contains("longer")
            || to_do.contains("out of the fridge")
            || to_do.contains("warm the"),
        "{to_do}"
    );
}

#[test]
fn the_balance_names_the_fridge_cold_parts_among_those_who_take() {
    let (sheet, kitchen) = (example(), cold());
    let bowl = mixer_load(&sheet.formula, &kitchen, &sheet.heat).unwrap();
    let came = dough_temperature(&bowl.dough).unwrap();
    let shares = shares(&bowl, &came, sheet.heat.dough).unwrap();
    let told = plain(&bowl_balance(
        &shares,
        &sheet.formula,
        &bowl,
        FormatOptions::default(),
    ));
    let (takes, brings) = told.split_once(" It is brought by ").unwrap();
    for cold in ["Scald −", "Night dough −", "whole milk −"] {
        assert!(takes.contains(cold), "{told}");
    }
    assert!(brings.contains("mixer +"), "{told}");
}

#[test]
fn a_cooling_is_shown_with_its_verdict_and_its_times() {
    let (sheet, kitchen) = (example(), Kitchen::default());
    let asked = paste(&sheet.formula, 0, &kitchen, &sheet.heat.paste)
        .unwrap()
        .unwrap();
    let start = cook(&asked).unwrap().temperature;
    let mut settings = sheet.heat.cooling;
    settings.set_own(true);
    let plan = cooling_plan(&sheet.formula.parts[0], start, &kitchen, &settings).unwrap();
    let cooled = plan.simulate().unwrap();
    let verdict = heat::verdict(&cooled, RuleSet::Strictest, FormatOptions::default());
    assert_eq!(
        verdict.means,
        "It cools too slowly for the strictest of the rules."
    );
    assert!(
        plain(&verdict.to_do).contains("is allowed."),
        "{}",
        verdict.to_do
    );
    let advice = plan.advise().unwrap();
    for remedy in &advice.remedies {
        let said = plain(&heat::cooling_remedy(remedy, FormatOptions::default()));
        assert!(said.contains("in the middle after"), "{said}");
    }
    let told = cooling_curve(&cooled.slow, &plan.stays(), FormatOptions::default());
    assert!(told.contains("Fails, United Kingdom: from 63"), "{told}");
    let drawing = CoolingDrawing::of(&cooled.slow, &plan.stays(), FormatOptions::default());
    // Two limits bind: 8 °C soonest, 5 °C at last; the others are met when these are.
    assert_eq!(drawing.walls.len(), 2);
    assert!(drawing.walls.iter().any(|wall| !wall.passes));
    for wall in &drawing.walls {
        assert!((CoolingDrawing::LEFT..=CoolingDrawing::RIGHT).contains(&wall.x));
    }
}

#[test]
fn each_limit_is_shown_with_its_verdict() {
    let (sheet, kitchen) = (example(), Kitchen::default());
    let plan = cooling_plan(
        &sheet.formula.parts[0],
        celsius(75.0),
        &kitchen,
        &sheet.heat.cooling,
    )
    .unwrap();
    let cooled = plan.simulate().unwrap();
    for stage in &cooled.slow.stages {
        let said = plain(&heat::stage_verdict(stage, FormatOptions::default()));
        let begins = if stage.passes { "Passes, " } else { "Fails, " };
        assert!(said.starts_with(begins), "{said}");
        assert!(said.ends_with("is allowed."), "{said}");
    }
}

/// 180 °C is 356 °F; a fan oven is set 20 K lower (common practice), 160 °C, 320 °F.
#[test]
fn a_phase_is_shown_for_every_oven() {
    let phase = |fan, degrees| Phase {
        minutes: minutes(25.0),
        temperature: celsius(degrees),
        from: HeatFrom::Both,
        fan,
    };
    for asked in [phase(false, 180.0), phase(true, 160.0)] {
        let programme = review(&[asked]).unwrap();
        assert_eq!(
            plain(&heat::phase(&programme.phases[0], FormatOptions::default())),
            "0 min to 25 min, heat from above and below. Conventional oven: 180 °C (356 °F), fan oven \
             160 °C (320 °F)."
        );
    }
}

/// A difference of 3 K is 5.4 °F (NIST SP 811, B.9).
#[test]
fn how_far_to_trust_is_shown_in_the_users_degrees() {
    let fahrenheit = FormatOptions {
        units: Units {
            mass: MassUnit::Ounces,
            temperature: TemperatureUnit::Fahrenheit,
        },
        ..FormatOptions::default()
    };
    assert!(plain(&heat::trust_paste(FormatOptions::default())).contains("about 3 °C"));
    assert!(plain(&heat::trust_paste(fahrenheit)).contains("about 5.4 °F"));
}

#[test]
fn cold_parts_show_how_long_they_stand() {
    let (sheet, kitchen) = (example(), Kitchen::default());
    let all = warming(&sheet.formula, &kitchen).unwrap();
    assert_eq!(all.len(), 2);
    let said = plain(&heat::warming(&all[0], "Scald", FormatOptions::default()));
    assert!(said.starts_with("Scald, from 4 °C: 10 °C after "), "{said}");
    assert!(said.contains(", 15 °C after "), "{said}");
    assert!(heat::standing_long(&all).is_some());
    let frozen = Kitchen {
        room: celsius(5.0),
        ..kitchen
    };
    let none = warming(&sheet.formula, &frozen).unwrap();
    assert_eq!(
        plain(&heat::warming(&none[0], "Scald", FormatOptions::default())),
        "Scald, from 4 °C: this room is too cold to warm it."
    );
    assert!(heat::standing_long(&none).is_none());
}

#[test]
fn times_heights_and_heat_print_with_their_units() {
    let options = FormatOptions::default();
    let cases = [
        (format::minutes(minutes(50.0), options), "50 min"),
        (format::minutes(minutes(112.0), options), "1 h 52 min"),
        (format::minutes(minutes(360.0), options), "6 h"),
        (format::minutes(minutes(4.25), options), "4.3 min"),
        (format::about_minutes(minutes(47.2), options), "50 min"),
        (format::about_minutes(minutes(4.2), options), "5 min"),
        (
            format::heat(Heat::from_joules(-15_130.0), options),
            "−15.1 kJ",
        ),
        (
            format::heat(Heat::from_joules(24_600.0), options),
            "+24.6 kJ",
        ),
        (format::heat(Heat::from_joules(-3.0), options), "0 kJ"),
        (
            format::thickness(Length::from_metres(0.03).unwrap(), options),
            "3 cm",
        ),
        (
            format::altitude(Altitude::from_metres(1250.0).unwrap(), options),
            "1250 m",
        ),
        (
            format::warming_rate(WarmingRate::from_kelvin_per_minute(1.0).unwrap(), options),
            "1 °C/min",
        ),
        (
            format::degrees_off(TemperatureChange::from_kelvin(-2.0).unwrap(), options),
            "2 °C",
        ),
    ];
    for (said, wanted) in cases {
        assert_eq!(plain(&said), wanted);
    }
}

/// 1 in is 2.54 cm, 1 ft is 0.3048 m (NIST SP 811); a degree Fahrenheit is 5/9 K.
#[test]
fn times_heights_and_pressures_are_read_as_people_type_them() {
    let grams = FormatOptions::default();
    let ounces = FormatOptions {
        units: Units {
            mass: MassUnit::Ounces,
            temperature: TemperatureUnit::Fahrenheit,
        },
        ..grams
    };
    let close = |one: f64, other: f64| assert!((one - other).abs() < 1e-9, "{one} {other}");
    close(read::minutes("1 h 20 min", grams).unwrap().minutes(), 80.0);
    close(read::minutes("1,5 h", grams).unwrap().minutes(), 90.0);
    close(read::minutes("45", grams).unwrap().minutes(), 45.0);
    close(read::thickness("25 mm", grams).unwrap().metres(), 0.025);
    close(read::thickness("3", grams).unwrap().metres(), 0.03);
    close(read::thickness("1", ounces).unwrap().metres(), 0.0254);
    close(read::altitude("-300", grams).unwrap().metres(), -300.0);
    close(read::altitude("1000", ounces).unwrap().metres(), 304.8);
    close(
        read::pressure("101.3 kPa", grams).unwrap().hectopascals(),
        1013.0,
    );
    close(
        read::warming_rate("1.8", ounces)
            .unwrap()
            .kelvin_per_minute(),
        1.0,
    );
    close(read::degrees_lost("2", grams).unwrap().kelvin(), 2.0);
    for (text, options) in [
        ("-5", grams),
        ("", grams),
        ("x", grams),
        ("5 g", grams),
        ("1e99", grams),
    ] {
        assert!(read::minutes(text, options).is_err(), "{text}");
        assert!(read::thickness(text, options).is_err(), "{text}");
        assert!(read::pressure(text, options).is_err(), "{text}");
        assert!(read::warming_rate(text, options).is_err(), "{text}");
        assert!(read::degrees_lost(text, options).is_err(), "{text}");
    }
    assert!(matches!(
        read::altitude("9000", grams),
        Err(ReadError::TooLarge { .. })
    ));
}
