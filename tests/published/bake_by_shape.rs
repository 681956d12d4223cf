//! Baking times and cooling of bread, against printed bakes of its shape and mass.

use softcrumb::engine::formula::Bread;
use softcrumb::engine::heat::{BakeTime, BakedBody, BakedShape, HeatFrom, Phase, cool_loaf};
use softcrumb::engine::quantity::{Length, Mass, Minutes, Temperature};
use softcrumb::engine::tin::{Across, Tin, TinKind, TinShape};
use softcrumb::results::heat::{Baking, InOven, baking};
use softcrumb::sheet::{BakeLength, HeatSettings, Kitchen, KnownBake};

use crate::accuracy::{lies_in, note_range};
use crate::printed::agrees;

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn minutes(m: f64) -> Minutes {
    Minutes::from_minutes(m).unwrap()
}

/// A rectangular tin with straight sides, in inches.
fn tin_in_inches(long: f64, wide: f64, deep: f64) -> Tin {
    let length = |inches: f64| Length::from_metres(inches * 0.0254).unwrap();
    let across = Across {
        long: length(long),
        wide: length(wide),
    };
    let shape = TinShape::Rectangle {
        top: across,
        bottom: across,
        deep: length(deep),
    };
    Tin::open(shape).unwrap()
}

fn in_tin(tin: Tin, dough: f64, piece: f64) -> InOven {
    InOven {
        bread: Bread::SoftTin,
        tin: Some(tin),
        in_tin: grams(dough),
        piece: grams(piece),
        dough: InOven::PROOFED,
    }
}

fn apart(bread: Bread, piece: f64) -> InOven {
    InOven {
        bread,
        tin: None,
        in_tin: grams(piece * 12.0),
        piece: grams(piece),
        dough: InOven::PROOFED,
    }
}

fn phase(at: f64) -> Phase {
    Phase {
        minutes: minutes(25.0),
        temperature: celsius(at),
        from: HeatFrom::Both,
        fan: false,
    }
}

/// The bake in one phase, from a known bake or the usual one.
fn bake(in_oven: InOven, phases: Vec<Phase>, known: Option<KnownBake>) -> Baking {
    let mut settings = HeatSettings::default();
    settings.bake.phases = phases;
    settings.bake.known = known;
    baking(&in_oven, &Kitchen::default(), &settings, None).unwrap()
}

fn time(in_oven: InOven, at: f64) -> BakeTime {
    bake(in_oven, vec![phase(at)], None).time.unwrap()
}

#[track_caller]
fn overlaps(time: &BakeTime, from: f64, to: f64) {
    let (ours, until) = (time.from.minutes(), time.to.minutes());
    note_range(time.likely.minutes(), from, to);
    assert!(ours <= to && from <= until, "{ours} to {until}: {time:?}");
    assert!(until / ours <= 1.2 / 0.8 + 1e-9);
}

/// Common practice: a soft tin loaf of 700 to 900 g takes 30 to 35 min at 180 °C.
#[test]
pub(crate) fn soft_loaves_of_700_to_900_g_take_30_to_35_min() {
    for dough in [700.0_f64, 800.0, 900.0] {
        // The dough bakes in a tin scaled to it, then in one tin for every mass.
        let scale = (dough / 794.0).cbrt();
        let own = tin_in_inches(10.5 * scale, 5.0 * scale, 3.5 * scale);
        let likely = time(in_tin(own, dough, dough), 180.0).likely.minutes();
        lies_in(likely, &(30.0..=35.0), 1.0);
        let one = tin_in_inches(10.5, 5.0, 3.5);
        overlaps(&time(in_tin(one, dough, dough), 180.0), 30.0, 35.0);
    }
}

/// Common practice: filled buns of 60 to 90 g that stand apart take 15 to 18 min at 180 °C.
#[test]
pub(crate) fn buns_of_60_to_90_g_take_15_to_18_min() {
    for piece in [60.0, 75.0, 90.0] {
        let bun = time(apart(Bread::SweetBun, piece), 180.0);
        let likely = bun.likely.minutes();
        lies_in(likely, &(15.0..=18.0), 1.0);
        overlaps(&bun, 15.0, 18.0);
    }
    let cups = TinKind::Cups.tin();
    let in_cups = time(in_tin(cups, 12.0 * 75.0, 75.0), 180.0);
    agrees(in_cups.likely.minutes(), "16.0");
}

/// Source: US Armed Forces recipe card D 009 00: 28 oz of dough in a tin of 10.5 × 5 × 3.5 in, or
/// 25 oz in one of 9 × 4.5 × 2.75 in, 5 min at 450 °F and 25 to 30 min at 375 °F, together 197 °C
/// on the mean.
#[test]
pub(crate) fn both_tins_of_the_card_take_its_time() {
    overlaps(
        &time(in_tin(tin_in_inches(10.5, 5.0, 3.5), 794.0, 794.0), 197.0),
        30.0,
        35.0,
    );
    overlaps(
        &time(in_tin(tin_in_inches(9.0, 4.5, 2.75), 709.0, 709.0), 197.0),
        30.0,
        35.0,
    );
}

/// Source: US Department of Agriculture, school recipes (1988): rolls of 2 oz, 57 g, 18 to 20 min at
/// 400 °F. Institutional recipe cards: dinner rolls of 1½ to 2 oz 15 min at 400 °F.
#[test]
pub(crate) fn from_rolls_of_57_g_lighter_ones_take_what_is_printed() {
    let known = KnownBake {
        minutes: minutes(19.0),
        oven: celsius(204.0),
        piece: grams(57.0),
        shape: Some(BakedShape::Apart),
    };
    let of = |piece| {
        let baking = bake(
            apart(Bread::PlainTin, piece),
            vec![phase(204.0)],
            Some(known),
        );
        baking.time.unwrap()
    };
    agrees(of(57.0).likely.minutes(), "19.00");
    overlaps(&of(43.0), 15.0, 15.0);
    assert!(of(43.0).likely.minutes() < 17.0);
    // Each kind of bread has a known bake of its own.
    assert_eq!(
        KnownBake::usual(Bread::PlainTin, BakedShape::Apart),
        known,
        "the usual bake of plain rolls"
    );
}

/// Common practice: the same dough in the same tin as 1, 5 or 10 pieces that touch bakes in about
/// the same time; apart it takes about half.
#[test]
fn one_five_or_ten_pieces_that_touch_take_the_same_time() {
    let tin = tin_in_inches(12.0, 5.0, 3.7);
    let of = |piece: f64| time(in_tin(tin, 900.0, piece), 180.0).likely.minutes();
    let one = of(900.0);
    for pieces in [5.0, 10.0] {
        let ratio = of(900.0 / pieces) / one;
        assert!((0.85..=1.15).contains(&ratio), "{ratio}");
    }
    let free = time(apart(Bread::SoftTin, 90.0), 180.0).likely.minutes();
    assert!((0.4..=0.6).contains(&(free / one)), "{}", free / one);
}

/// Common practice: heat from below alone brings about half of that from both sides, so that a third
/// of the bake from below makes it a fifth longer; a fan oven 20 °C lower bakes as fast.
#[test]
fn phases_count_by_the_heat_they_bring() {
    let loaf = in_tin(tin_in_inches(10.5, 5.0, 3.5), 800.0, 800.0);
    let both = bake(loaf, vec![phase(180.0)], None).time.unwrap();
    let below = Phase {
        from: HeatFrom::Bottom,
        ..phase(180.0)
    };
    let phases = vec![phase(180.0), phase(180.0), below];
    let mixed = bake(loaf, phases, None);
    let ratio = mixed.time.clone().unwrap().likely.minutes() / both.likely.minutes();
    agrees(ratio, "1.200");
    // The plan keeps the proportions of the phases.
    let planned = mixed.planned.unwrap();
    agrees(
        planned.phases[2].begins.minutes() / planned.total.minutes(),
        "0.667",
    );
    let fan = Phase {
        fan: true,
        ..phase(160.0)
    };
    let fan = bake(loaf, vec![fan], None).time.unwrap();
    assert_eq!(fan.likely, both.likely);
}

#[test]
fn the_plan_may_take_the_minutes_of_the_programme() {
    let loaf = in_tin(tin_in_inches(10.5, 5.0, 3.5), 800.0, 800.0);
    let mut settings = HeatSettings::default();
    settings.bake.length = BakeLength::Programme;
    let typed = baking(&loaf, &Kitchen::default(), &settings, None).unwrap();
    agrees(typed.planned.unwrap().total.minutes(), "25");
}

/// Source: bakery trade encyclopedia, cooling (95 °C to 35 to 40 °C within 2 h by size); common
/// practice: tin loaves wait 1½ to 3 h, buns less, rye longest.
#[test]
pub(crate) fn bread_cools_as_long_as_the_trade_waits() {
    let loaf = BakedBody::known(Bread::SoftTin, BakedShape::Loaf, grams(800.0)).unwrap();
    let bun = BakedBody::apart(Bread::SoftTin, grams(75.0)).unwrap();
    let of = |body: &BakedBody, bread| {
        cool_loaf(&body.body, bread, celsius(21.0), celsius(93.0)).unwrap()
    };
    let soft = of(&loaf, Bread::SoftTin);
    lies_in(soft.by_conduction.minutes(), &(75.0..=120.0), 0.0);
    lies_in(soft.likely.minutes(), &(90.0..=180.0), 0.0);
    assert!(soft.from.minutes() <= 90.0 && (165.0..=195.0).contains(&soft.to.minutes()));
    let rye = of(&loaf, Bread::Rye);
    agrees(rye.likely.minutes() / soft.likely.minutes(), "1.50");
    let bun = of(&bun, Bread::SweetBun);
    lies_in(bun.likely.minutes(), &(20.0..=60.0), 0.0);
    // A room at 30 °C or above never cools it to that.
    assert!(cool_loaf(&loaf.body, Bread::SoftTin, celsius(31.0), celsius(93.0)).is_err());
}

#[test]
fn every_tin_has_a_body_that_bakes() {
    for kind in TinKind::ALL {
        let own = in_tin(kind.tin(), 700.0, 70.0);
        let shape = own.baked().unwrap().shape;
        let is_apart = matches!(kind, TinKind::Cups | TinKind::Tray);
        assert_eq!(shape == BakedShape::Apart, is_apart, "{kind:?}");
        assert!(time(own, 180.0).likely > Minutes::ZERO);
        assert!(in_tin(kind.tin(), 0.0, 0.0).baked().is_err());
    }
}

/// Common practice: a soft loaf of some 450 g takes 25 to 35 min at 180 °C, whichever tin it stands in.
/// The example's tin of 3.62 l takes 929 g: 450 g bake in it as a loaf of their own, not as a sheet on its
/// bottom. US Armed Forces recipe D 009 00: 794 and 709 g take the same 30 to 35 min.
#[test]
pub(crate) fn a_small_loaf_in_a_large_tin_bakes_as_a_loaf_of_its_own() {
    let large = tin_in_inches(12.0, 4.92, 3.74);
    let small = time(in_tin(large, 450.0, 450.0), 180.0);
    lies_in(small.likely.minutes(), &(25.0..=35.0), 0.0);
    let suits = small.to_bake.baked.suits.unwrap();
    assert!((800.0..=900.0).contains(&suits.grams()), "{suits:?}");
    let scale = (450.0_f64 / 794.0).cbrt();
    let own = tin_in_inches(10.5 * scale, 5.0 * scale, 3.5 * scale);
    let own = time(in_tin(own, 450.0, 450.0), 180.0);
    lies_in(own.likely.minutes(), &(25.0..=35.0), 0.0);
    assert_eq!(own.to_bake.baked.suits, None);
    // More dough never bakes sooner, and no mass jumps where the tin begins to suit it.
    let times = (40..=95).map(|grams| {
        let grams = f64::from(grams) * 10.0;
        time(in_tin(large, grams, grams), 180.0).likely.minutes()
    });
    let times: Vec<f64> = times.collect();
    for two in times.windows(2) {
        assert!((-0.7..=1.2).contains(&(two[1] - two[0])), "{two:?}");
    }
}
