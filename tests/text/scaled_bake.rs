//! What the minutes of a bake are scaled from, in words.

use softcrumb::engine::heat::BakedShape;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::quantity::{Mass, Minutes, Temperature};
use softcrumb::results::day::usual_run;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Kitchen, KnownBake, examples};
use softcrumb::text::heat;

use crate::format_options::british;

fn said(known: Option<KnownBake>) -> String {
    let (_, mut sheet) = examples().remove(0);
    sheet.heat.bake.known = known;
    let of_day = (&DaySettings::default(), &Learnt::default());
    let run = usual_run(&sheet, &Kitchen::default(), of_day);
    let time = run.baking.unwrap().time.unwrap();
    let said = heat::bake_time(&time, british()).means;
    said.replace('\u{A0}', " ")
}

/// Source: US Armed Forces recipe card D 009 00: 28 oz (794 g) of soft dough in a tin of 10.5 × 5 in, which
/// is 27 × 13 cm.
#[test]
fn the_minutes_name_the_bake_they_are_scaled_from_with_its_tin() {
    let known = KnownBake {
        minutes: Minutes::from_minutes(30.0).unwrap(),
        oven: Temperature::from_celsius(180.0).unwrap(),
        piece: Mass::from_grams(794.0).unwrap(),
        shape: Some(BakedShape::Loaf),
    };
    let own = said(Some(known));
    let from = "Scaled from 30 min at 180 °C for 794 g of dough in a tin of 27 cm × 13 cm.";
    assert!(own.ends_with(from), "{own}");
    let apart = said(Some(KnownBake {
        shape: Some(BakedShape::Apart),
        piece: Mass::from_grams(75.0).unwrap(),
        ..known
    }));
    let from = "Scaled from 30 min at 180 °C for pieces of 75 g that stand apart.";
    assert!(apart.ends_with(from), "{apart}");
    assert!(said(None).contains("of dough in a tin of "));
}
