//! The listed ingredients against the two composition tables they were read from.

use std::collections::BTreeSet;

use softcrumb::engine::ingredients::{Constituent, Ingredient, Listed, Source};
use softcrumb::engine::quantity::Share;

use crate::table::{CIQUAL, SR28, figure, row_numbered, rows};

fn larder() -> impl Iterator<Item = &'static Ingredient> {
    Listed::all().map(Listed::row)
}

/// Holds one part of one ingredient against its cell: the very figure, or named as worked out
/// where there is none (a part of nothing needs no figure).
fn same(row: &Ingredient, component: Constituent, cell: Option<f64>) {
    let ours = row.composition().component(component);
    let named = row.worked_out().any(|worked_out| worked_out == component);
    match cell {
        Some(printed) => {
            let off = (ours.percent() - printed).abs();
            assert!(
                off < 1e-9,
                "{} {component:?}: {} is not {printed}",
                row.name,
                ours.percent()
            );
            assert!(
                !named,
                "{} {component:?} is printed, not worked out",
                row.name
            );
        }
        None => assert!(
            named || ours == Share::NONE && nothing_to_tell(row, component),
            "{} {component:?} has no figure and nobody is told",
            row.name
        ),
    }
}

/// Whether a blank cell hides nothing: no saturates without fat, no alcohol outside drinks, no
/// starch where the larder's rule sees none.
fn nothing_to_tell(row: &Ingredient, component: Constituent) -> bool {
    component == Constituent::Alcohol
        || component == Constituent::Starch
        || component == Constituent::Saturates && row.composition().fat == Share::NONE
}

/// Source: USDA ARS, *National Nutrient Database for Standard Reference, Release 28* (2016).
#[test]
fn every_american_row_is_the_table_s_own() {
    const COLUMNS: [(Constituent, &str); 10] = [
        (Constituent::Water, "water_g"),
        (Constituent::Protein, "protein_g"),
        (Constituent::Fat, "fat_g"),
        (Constituent::Saturates, "saturated_fat_g"),
        (Constituent::Carbohydrate, "carbohydrate_by_difference_g"),
        (Constituent::Sugars, "sugars_total_g"),
        (Constituent::Starch, "starch_g"),
        (Constituent::Fibre, "fibre_g"),
        (Constituent::Ash, "ash_g"),
        (Constituent::Alcohol, "alcohol_g"),
    ];
    let table = rows(SR28);
    let mut held = 0;
    for row in larder() {
        let Source::UsdaSr28(ndb) = row.source else {
            continue;
        };
        let printed = row_numbered(&table, "ndb", ndb);
        for (component, head) in COLUMNS {
            same(row, component, figure(&printed[head]));
        }
        let sodium = figure(&printed["sodium_mg"]);
        same(
            row,
            Constituent::Sodium,
            sodium.map(|milligrams| milligrams / 1000.0),
        );
        held += 1;
    }
    assert!(held >= 80, "only {held} American rows");
}

/// Source: ANSES, *Table de composition nutritionnelle des aliments Ciqual 2020*. Its carbohydrate
/// leaves out fibre, polyols and organic acids, which are put back in.
#[test]
fn every_french_row_is_the_table_s_own() {
    const COLUMNS: [(Constituent, &str); 9] = [
        (Constituent::Water, "water_g"),
        (Constituent::Protein, "protein_jones_g"),
        (Constituent::Fat, "fat_g"),
        (Constituent::Saturates, "saturated_g"),
        (Constituent::Sugars, "sugars_g"),
        (Constituent::Starch, "starch_g"),
        (Constituent::Fibre, "fibre_g"),
        (Constituent::Ash, "ash_g"),
        (Constituent::Alcohol, "alcohol_g"),
    ];
    let table = rows(CIQUAL);
    let mut held = 0;
    for row in larder() {
        let Source::Ciqual2020(code) = row.source else {
            continue;
        };
        let printed = row_numbered(&table, "alim_code", code);
        for (component, head) in COLUMNS {
            same(row, component, figure(&printed[head]));
        }
        let sodium = figure(&printed["sodium_mg"]);
        same(
            row,
            Constituent::Sodium,
            sodium.map(|milligrams| milligrams / 1000.0),
        );
        let beside = ["fibre_g", "polyols_g", "organic_acids_g"];
        let beside = beside.map(|head| figure(&printed[head]).unwrap_or(0.0));
        let available = figure(&printed["carbohydrate_available_g"]);
        let by_difference = available.map(|grams| grams + beside.iter().sum::<f64>());
        same(row, Constituent::Carbohydrate, by_difference);
        held += 1;
    }
    assert!(held >= 20, "only {held} French rows");
}

/// Source: as above. By-difference carbohydrate closes the sum; the exceptions are as published:
/// in Release 28 compressed yeast 99.2, coconut oil 99.12, baking soda 37.1 (its carbon dioxide
/// and water are no ash). What a table prints for a whole food may miss 100 by 0.6 through
/// rounding and "< x" cells (oat drink 99.4).
#[test]
fn parts_add_up_to_a_hundred_grams_but_for_the_published_exceptions() {
    for row in larder() {
        let made_of = row.composition();
        let sum = [
            made_of.water,
            made_of.protein,
            made_of.fat,
            made_of.carbohydrate,
            made_of.ash,
            made_of.alcohol,
        ];
        let sum: f64 = sum.iter().map(|component| component.percent()).sum();
        let (expected, allowed) = match row.source {
            Source::UsdaSr28(18374) => (99.2, 0.005),
            Source::UsdaSr28(4047) => (99.12, 0.005),
            Source::UsdaSr28(18372) => (37.1, 0.005),
            Source::UsdaSr28(_) | Source::Ciqual2020(_) | Source::Label => (100.0, 0.6 + 1e-9),
        };
        assert!(
            (sum - expected).abs() <= allowed,
            "{} adds up to {sum}",
            row.name
        );
    }
}

/// Source: as above: starch printed in the table is kept; elsewhere, in foods that hold starch,
/// it is carbohydrate less fibre less sugars (the French table's carbohydrate has no fibre in it).
#[test]
fn starch_is_printed_or_what_fibre_and_sugars_leave() {
    let (american, french) = (rows(SR28), rows(CIQUAL));
    for row in larder() {
        let starch = row.composition().starch;
        if row.starch_from_table || starch == Share::NONE {
            continue;
        }
        let rest = match row.source {
            Source::UsdaSr28(ndb) => {
                let printed = row_numbered(&american, "ndb", ndb);
                let cell = |head: &str| figure(&printed[head]).unwrap_or(0.0);
                cell("carbohydrate_by_difference_g") - cell("fibre_g") - cell("sugars_total_g")
            }
            Source::Ciqual2020(code) => {
                let printed = row_numbered(&french, "alim_code", code);
                let cell = |head: &str| figure(&printed[head]).unwrap_or(0.0);
                cell("carbohydrate_available_g") - cell("sugars_g")
            }
            Source::Label => panic!("a row of the larder has a table"),
        };
        let off = (starch.percent() - rest).abs();
        assert!(off < 1e-9, "{}: starch is off by {off}", row.name);
    }
    for cereal in larder().filter(|row| row.number < 200 && row.name != "Wheat gluten") {
        assert!(
            cereal.composition().starch.percent() > 25.0,
            "{} has no starch",
            cereal.name
        );
    }
}

/// Parts inside other parts are never larger, but where Release 28 itself prints them so:
/// measured lactose of fluid milks and cream against carbohydrate by difference.
#[test]
fn sugars_pass_carbohydrate_only_in_the_milks_that_print_it() {
    let mut passing = BTreeSet::new();
    for row in larder() {
        let made_of = row.composition();
        assert!(made_of.saturates <= made_of.fat, "{} saturates", row.name);
        assert!(made_of.fibre <= made_of.carbohydrate, "{} fibre", row.name);
        // A few milligrams of sodium lie below the last digit of ash, or its "< 0,25".
        let sodium = made_of.sodium.percent();
        assert!(
            sodium <= made_of.ash.percent() + 0.03,
            "{} sodium",
            row.name
        );
        if made_of.sugars > made_of.carbohydrate {
            passing.insert(row.number);
        }
    }
    assert_eq!(passing, BTreeSet::from([300, 301, 302, 303, 322]));
}

#[test]
fn every_number_finds_its_own_row_and_no_other() {
    let mut last = 0;
    for listed in Listed::all() {
        let row = listed.row();
        assert!(row.number > last, "{} is out of order", row.number);
        last = row.number;
        assert_eq!(Listed::numbered(row.number).unwrap().row().name, row.name);
    }
    let found = (0..=u16::MAX).filter(|number| Listed::numbered(*number).is_ok());
    assert_eq!(found.count(), Listed::all().count());
    assert!(Listed::all().count() >= 90);
}

#[test]
fn name_and_detail_together_tell_every_row_from_the_others() {
    let told: BTreeSet<_> = larder().map(|row| (row.name, row.detail)).collect();
    assert_eq!(told.len(), larder().count());
}
