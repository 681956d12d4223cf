//! Cautions about fillings and syrups.

use super::cautions::{g, is_whole, p};
use super::format_options::british;
use super::of_source::has_every_variant;
use softcrumb::engine::chocolate::{
    ChocolatePart, FillAsked, FillCaution, Portioned, Syrup, SyrupCaution, SyrupModel, fill,
};
use softcrumb::engine::ingredients::Listed;
use softcrumb::engine::quantity::{Share, Temperature};
use softcrumb::text::caution;

/// Water in g on 100 g of the first listed chocolate.
fn syrup(water: f64, celsius: f64) -> Syrup {
    let named = |name: &str| {
        Listed::all()
            .find(|listed| listed.row().name.starts_with(name))
            .unwrap_or_else(|| panic!("no {name}"))
            .row()
            .composition()
    };
    Syrup::from_parts(
        &[ChocolatePart {
            composition: named("Dark chocolate"),
            mass: g(100.0),
            cocoa: Some(p(70.0)),
        }],
        &[Portioned {
            composition: named("Water"),
            mass: g(water),
        }],
        Temperature::from_celsius(celsius).unwrap(),
        SyrupModel::default(),
    )
    .unwrap()
}

#[test]
fn cautions_about_chocolate_are_shown() {
    let temperature = Temperature::from_celsius(5.0).unwrap();
    let all = [
        SyrupCaution::WithinAFactorOfTwo,
        SyrupCaution::OutsideTable { temperature },
        SyrupCaution::SetsAtThisTemperature { temperature },
        SyrupCaution::SugarLeft {
            undissolved: g(4.0),
        },
        SyrupCaution::NearSeizing { slack: p(3.0) },
        SyrupCaution::Alcohol { alcohol: g(5.0) },
    ];
    let source = include_str!("../../src/engine/chocolate/syrup_caution.rs");
    has_every_variant(&all, "SyrupCaution", source);
    for caution in &all {
        is_whole(&caution::syrup(caution, british()));
    }
    let heavy = fill(
        FillAsked::Each(g(20.0)),
        9.try_into().unwrap(),
        g(85.0),
        Share::NONE,
    )
    .unwrap();
    let source = include_str!("../../src/engine/chocolate/fill.rs");
    has_every_variant(&[FillCaution::Heavy], "FillCaution", source);
    is_whole(&caution::fill(FillCaution::Heavy, &heavy, british()));
}

#[test]
fn the_handbook_rule_speaks_only_where_it_is_not_met() {
    let little = caution::minimum_water(&syrup(20.0, 40.0).rule, british()).unwrap();
    is_whole(&little);
    assert!(
        little.means.contains("39\u{A0}g of water"),
        "{}",
        little.means
    );
    assert_eq!(
        caution::minimum_water(&syrup(45.0, 40.0).rule, british()),
        None
    );
}

#[test]
fn keeping_is_shown_either_way() {
    for water in [8.0, 40.0, 300.0] {
        is_whole(&caution::keeping(&syrup(water, 40.0).keeping, british()));
    }
}
