//! Bakes of anything in any tin: an answer or a refusal, and more dough is never done sooner.

use proptest::prelude::*;
use proptest::sample::select;
use softcrumb::engine::formula::Bread;
use softcrumb::engine::heat::{BakedBody, BakedShape, HeatFrom, Phase, cool_loaf};
use softcrumb::engine::quantity::Mass;
use softcrumb::engine::tin::{TinKind, TinRise, dough_height};
use softcrumb::results::heat::{Baking, InOven, baking};
use softcrumb::sheet::{HeatSettings, Kitchen, KnownBake};

use crate::cases::cases;
use crate::heat_cases::{celsius, grams, minutes};

fn any_kind() -> impl Strategy<Value = Option<TinKind>> {
    prop_oneof![1 => Just(None), 5 => select(&TinKind::ALL[..]).prop_map(Some)]
}

fn any_phase() -> impl Strategy<Value = Phase> {
    let from = select(&HeatFrom::ALL[..]);
    (0.0..120.0f64, 20.0..320.0f64, from, any::<bool>()).prop_map(|(m, at, from, fan)| Phase {
        minutes: minutes(m),
        temperature: celsius(at),
        from,
        fan,
    })
}

fn any_known() -> impl Strategy<Value = Option<KnownBake>> {
    let shape = prop_oneof![Just(None), select(&BakedShape::ALL[..]).prop_map(Some)];
    let known = (0.0..300.0f64, 20.0..320.0f64, 0.0..5000.0f64, shape);
    prop::option::of(known.prop_map(|(m, at, g, shape)| KnownBake {
        minutes: minutes(m),
        oven: celsius(at),
        piece: grams(g),
        shape,
    }))
}

fn in_oven(kind: Option<TinKind>, bread: Bread, dough: f64, pieces: f64) -> InOven {
    InOven {
        bread,
        tin: kind.map(TinKind::tin),
        in_tin: grams(dough),
        piece: grams(dough / pieces),
        dough: InOven::PROOFED,
    }
}

fn bake(in_oven: &InOven, phases: Vec<Phase>, known: Option<KnownBake>) -> Baking {
    let mut settings = HeatSettings::default();
    settings.bake.phases = phases;
    settings.bake.known = known;
    baking(in_oven, &Kitchen::default(), &settings, None).unwrap()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(cases(4000)))]

    #[test]
    fn every_bake_is_answered_within_its_range(
        kind in any_kind(),
        bread in select(&Bread::ALL[..]),
        dough in prop_oneof![Just(0.0), 0.1..20_000.0f64],
        pieces in 1..60u8,
        warm in -10.0..60.0f64,
        phases in prop::collection::vec(any_phase(), 0..8),
        known in any_known(),
    ) {
        let mut own = in_oven(kind, bread, dough, f64::from(pieces));
        own.dough = celsius(warm);
        let bake = bake(&own, phases, known);
        if let Ok(time) = &bake.time {
            prop_assert!(time.from <= time.likely && time.likely <= time.to);
            prop_assert!(time.spread.fraction() <= 0.2);
            let planned = bake.planned.unwrap();
            // Whole minutes, one at least in every phase that has any.
            let off = (planned.total.minutes() - time.likely.minutes()).abs();
            prop_assert!(off <= 8.0, "{off}");
        } else {
            prop_assert_eq!(bake.planned, bake.programme);
        }
        if let Ok(cooling) = bake.cooling {
            prop_assert!(cooling.from <= cooling.likely && cooling.likely <= cooling.to);
        }
    }

    #[test]
    fn more_dough_is_never_done_sooner_and_a_hotter_oven_never_later(
        kind in any_kind(),
        dough in 60.0..2000.0f64,
        more in 1.0..2.0f64,
        oven in 120.0..250.0f64,
        hotter in 0.0..60.0f64,
    ) {
        let at = |t: f64| vec![Phase {
            minutes: minutes(20.0),
            temperature: celsius(t),
            from: HeatFrom::Both,
            fan: false,
        }];
        let known = Some(KnownBake::usual(Bread::SoftTin, BakedShape::Loaf));
        let of = |mass: f64, t| {
            let bake = bake(&in_oven(kind, Bread::SoftTin, mass, 4.0), at(t), known);
            (bake.time.unwrap().likely, bake.cooling.unwrap().from)
        };
        let (one, other) = (of(dough, oven), of(dough * more, oven));
        prop_assert!(one.0 <= other.0 && one.1 <= other.1);
        let (cooler, hot) = (of(dough, oven), of(dough, oven + hotter));
        prop_assert!(hot.0 <= cooler.0);
    }

    #[test]
    fn the_usual_rise_stands_at_85_percent_or_at_a_limit_of_the_dough(
        kind in select(&TinKind::ALL[..]),
        bread in select(&Bread::ALL[..]),
        dough in 1.0..3000.0f64,
    ) {
        let (tin, dough) = (kind.tin(), grams(dough));
        let rise = TinRise::Usual.factor(&tin, dough, bread);
        if let Ok(height) = dough_height(&tin, dough, rise) {
            let a_gram = height.risen.cubic_centimetres() / dough.grams();
            let at_limit = [1.6, 2.2, 2.5, 3.2, 3.6].iter().any(|one| (a_gram - one).abs() < 1e-6);
            let of_rim = height.of_rim.fraction();
            prop_assert!((of_rim - 0.85).abs() < 1e-6 || at_limit, "{of_rim} {a_gram}");
        } else {
            prop_assert_eq!(kind, TinKind::Tray);
        }
    }

    #[test]
    fn rye_cools_longest(dough in 30.0..2000.0f64, room in 0.0..29.0f64) {
        let body = BakedBody::known(Bread::SoftTin, BakedShape::Loaf, grams(dough)).unwrap().body;
        let of = |bread| cool_loaf(&body, bread, celsius(room), celsius(95.0)).unwrap().likely;
        for bread in Bread::ALL {
            prop_assert!(of(bread) <= of(Bread::Rye));
        }
        prop_assert!(BakedBody::known(Bread::SoftTin, BakedShape::Loaf, Mass::ZERO).is_err());
    }
}
