//! The oven: conversions, scaling and core temperature.

use softcrumb::engine::formula::Bread;
use softcrumb::engine::heat::{
    BakeSetting, BakedBody, BakedShape, Crumb, HeatFrom, Phase, PhaseAdvice, bake_time, boiling_at,
    core_target, fan_to_still, review, still_to_fan,
};
use softcrumb::engine::quantity::{Altitude, Mass, Minutes, Share, Temperature};

use crate::printed::agrees;

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn minutes(m: f64) -> Minutes {
    Minutes::from_minutes(m).unwrap()
}

/// Some 800 g of dough in a tin, in an oven with heat from above and below.
fn setting(oven: f64) -> BakeSetting {
    BakeSetting {
        baked: BakedBody::known(Bread::SoftTin, BakedShape::Loaf, grams(800.0)).unwrap(),
        oven: celsius(oven),
        heat: Share::WHOLE,
        dough: celsius(28.0),
        core: celsius(92.0),
    }
}

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

/// Common practice: a fan oven is set 20 °C lower.
#[test]
fn a_fan_oven_is_set_20_lower() {
    agrees(still_to_fan(celsius(180.0)).unwrap().celsius(), "160");
    agrees(fan_to_still(celsius(160.0)).unwrap().celsius(), "180");
}

#[test]
fn a_hotter_oven_bakes_faster_and_one_cooler_than_the_core_never() {
    let of = |oven| bake_time(minutes(30.0), &setting(180.0), &setting(oven));
    assert!(of(200.0).unwrap().likely < of(170.0).unwrap().likely);
    agrees(of(180.0).unwrap().likely.minutes(), "30.00");
    assert!(of(90.0).is_err());
    // Half the heat takes twice as long.
    let half = BakeSetting {
        heat: Share::from_percent(50.0).unwrap(),
        ..setting(180.0)
    };
    let half = bake_time(minutes(30.0), &setting(180.0), &half).unwrap();
    agrees(half.likely.minutes(), "60.00");
}

/// Source: boiling points by IAPWS-95: at 3000 m water boils at 89.98 °C, so no core gets to the 91
/// that a soft loaf may have at sea level.
#[test]
fn altitude_caps_the_core() {
    let at = |metres| {
        let boils = boiling_at(Altitude::from_metres(metres).unwrap())
            .unwrap()
            .temperature;
        core_target(Crumb::SoftEnriched, boils).unwrap()
    };
    assert!(!at(0.0).capped);
    assert!(at(3000.0).capped);
    assert!(at(3000.0).to.celsius() < 89.98);
    agrees(at(0.0).to.celsius(), "91");
}

#[test]
fn phases_follow_one_another_and_the_last_hot_one_is_tented() {
    let phase = |m, t, from, fan| Phase {
        minutes: minutes(m),
        temperature: celsius(t),
        from,
        fan,
    };
    let programme = review(&[
        phase(8.0, 170.0, HeatFrom::Bottom, false),
        phase(10.0, 160.0, HeatFrom::Both, true),
        phase(4.0, 200.0, HeatFrom::Top, false),
    ])
    .unwrap();
    agrees(programme.total.minutes(), "22");
    let seen: Vec<_> = programme.phases.iter().map(|one| one.advice).collect();
    assert_eq!(
        seen,
        [PhaseAdvice::Leave, PhaseAdvice::Tent, PhaseAdvice::MoveDown]
    );
    agrees(programme.phases[1].as_still.celsius(), "180");
    agrees(programme.phases[2].begins.minutes(), "18");
    // (170·4 + 180·10 + 200·2) / 16: heat from one side brings half. Common practice.
    agrees(programme.mean_as_still.celsius(), "180.0");
    // (4 + 10 + 2) / 22
    agrees(programme.heat.percent(), "72.73");
    let longer = programme.lasting(minutes(33.0)).unwrap();
    agrees(longer.phases[2].begins.minutes(), "27.00");
    agrees(longer.mean_as_still.celsius(), "180.0");
    assert!(review(&[]).is_err());
}
