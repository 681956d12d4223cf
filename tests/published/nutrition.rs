//! Nutrition: energy against a table's own EU column, losses in water only, allergens by law.

use std::collections::BTreeSet;

use softcrumb::engine::batch::{Losses, Scaled, scale};
use softcrumb::engine::formula::{Formula, LineAt};
use softcrumb::engine::ingredients::{Allergen, Food, Listed};
use softcrumb::engine::nutrition::{
    AllergenSource, EuGroup, FoodMark, LabelLaw, Marks, Nutrients, NutritionError, UsMajor,
    allergens, energy_eu, energy_us, nutrition,
};
use softcrumb::engine::quantity::{Mass, Share};
use softcrumb::sheet::{Sheet, examples};

use crate::accuracy::note;
use crate::printed::{agrees_within, number};
use crate::table::{CIQUAL, Row, figure, rows};

fn grams(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

fn printed(row: &Row, head: &str) -> Mass {
    grams(figure(&row[head]).unwrap_or(0.0))
}

fn of_row(row: &Row) -> Nutrients {
    Nutrients {
        fat: printed(row, "fat_g"),
        saturates: printed(row, "saturated_g"),
        carbohydrate: printed(row, "carbohydrate_available_g"),
        sugars: printed(row, "sugars_g"),
        fibre: printed(row, "fibre_g"),
        protein: printed(row, "protein_6_25_g"),
        sodium: Mass::ZERO,
        alcohol: printed(row, "alcohol_g"),
    }
}

/// Source: ANSES, *Table Ciqual 2020*, column "Énergie, Règlement UE N° 1169/2011 (kcal/100 g)".
/// Polyols and organic acids, which our compositions leave out, are added here by annex XIV (2.4 and
/// 3 kcal a gram). The table reckons from figures before rounding: two units of a last digit may
/// move the answer by 0.6 kcal. Cream and oat drink are left out: "< x" cells stand in them.
#[test]
pub(crate) fn eu_energy_agrees_with_the_table_s_own() {
    let mut seen = 0;
    for row in rows(CIQUAL) {
        let Some(table) = figure(&row["energy_eu_kcal"]) else {
            continue;
        };
        let left_out = 2.4 * figure(&row["polyols_g"]).unwrap_or(0.0)
            + 3.0 * figure(&row["organic_acids_g"]).unwrap_or(0.0);
        let ours = energy_eu(&of_row(&row)).unwrap().kilocalories() + left_out;
        if (ours - table).abs() > 0.6 {
            let name = &row["alim_nom_fr"];
            let known = name.starts_with("Crème") || name.contains("avoine");
            assert!(known, "{name}: {ours} beside {table}");
        } else {
            note(ours, table);
            seen += 1;
        }
    }
    assert!(seen >= 32, "{seen}");
}

/// Source: the same table's kilojoules, printed to three figures.
#[test]
pub(crate) fn kilojoules_go_by_their_own_factors() {
    let table = rows(CIQUAL);
    let brioche = table.iter().find(|row| row["alim_code"] == "7742").unwrap();
    let energy = energy_eu(&of_row(brioche)).unwrap();
    agrees_within(energy.kilojoules(), "1570", 5.0);
    agrees_within(energy.kilocalories(), "374", 0.6);
    let printed = number(&brioche["energy_eu_kj"]);
    assert!((energy.kilojoules() - printed).abs() < 5.0);
}

type Nutrient = fn(&mut Nutrients) -> &mut Mass;

/// Source: Regulation (EU) No 1169/2011, annex XIV: a gram of each by itself.
#[test]
pub(crate) fn a_gram_of_each_brings_what_annex_xiv_says() {
    let cases: [(Nutrient, &str, &str); 8] = [
        (|n| &mut n.carbohydrate, "17", "4"),
        (|n| &mut n.protein, "17", "4"),
        (|n| &mut n.fat, "37", "9"),
        (|n| &mut n.fibre, "8", "2"),
        (|n| &mut n.alcohol, "29", "7"),
        (|n| &mut n.sugars, "0", "0"),
        (|n| &mut n.saturates, "0", "0"),
        (|n| &mut n.sodium, "0", "0"),
    ];
    for (of, kilojoules, kilocalories) in cases {
        let mut held = Nutrients::default();
        *of(&mut held) = grams(1.0);
        let energy = energy_eu(&held).unwrap();
        agrees_within(energy.kilojoules(), kilojoules, 1e-12);
        agrees_within(energy.kilocalories(), kilocalories, 1e-12);
    }
    let fibre = Nutrients {
        fibre: grams(1.0),
        ..Nutrients::default()
    };
    agrees_within(energy_us(&fibre).unwrap().kilocalories(), "0", 1e-12);
}

fn made(sheet: &Sheet, bake: f64) -> Scaled {
    let losses = Losses {
        bake: Share::from_percent(bake).unwrap(),
        ..sheet.batch.losses
    };
    scale(
        &sheet.formula,
        sheet.batch.wanted,
        losses,
        sheet.batch.pieces,
    )
    .unwrap()
}

/// What the oven takes is water: a piece holds the same, a hundred grams hold more.
#[test]
fn baking_takes_water_only() {
    for (_, sheet) in examples() {
        let (light, heavy) = (made(&sheet, 12.0), made(&sheet, 0.0));
        let (baked, raw) = (nutrition(&light).unwrap(), nutrition(&heavy).unwrap());
        assert_eq!(baked.all, raw.all);
        let lost = raw.mass.grams() - baked.mass.grams();
        assert!((lost - light.lost_baking.grams()).abs() < 1e-9);
        let grows = raw.mass.grams() / baked.mass.grams();
        let fat = |one: Nutrients| one.fat.grams();
        let found = fat(baked.in_hundred_grams()) / fat(raw.in_hundred_grams());
        assert!((found - grows).abs() < 1e-9);
        let (mass, piece) = baked.in_piece();
        let count = f64::from(baked.pieces.get());
        assert!((mass.grams() * count - baked.mass.grams()).abs() < 1e-9);
        assert!((piece.protein.grams() * count - baked.all.protein.grams()).abs() < 1e-9);
    }
}

#[test]
fn an_oven_that_takes_more_than_the_water_is_refused() {
    let (_, sheet) = examples().remove(0);
    let refused = nutrition(&made(&sheet, 60.0));
    assert!(matches!(refused, Err(NutritionError::MoreThanWater { .. })));
}

/// Source: ANSES, *Table Ciqual 2020*, food 7742, baker's brioche: 374 kcal, fat 14.7 g, protein 9.8 g.
/// The example's egg loaf is another brioche with less butter: it lies within a fifth.
#[test]
fn the_egg_loaf_is_like_a_brioche_of_the_table() {
    let (_, sheet) = examples().remove(2);
    let held = nutrition(&made(&sheet, 10.0)).unwrap().in_hundred_grams();
    let energy = energy_eu(&held).unwrap().kilocalories();
    agrees_within(energy, "374", 75.0);
    assert!((8.0..=11.5).contains(&held.protein.grams()), "{held:?}");
}

/// Source: Regulation (EU) No 1169/2011, annex II: fourteen groups, in this order.
#[test]
fn fourteen_groups_and_nine_majors_are_whole() {
    let groups: Vec<EuGroup> = Allergen::ALL.map(EuGroup::of).to_vec();
    assert!(groups.is_sorted(), "annex II's order is kept");
    assert_eq!(
        groups.into_iter().collect::<BTreeSet<_>>(),
        EuGroup::ALL.into()
    );
    let majors: BTreeSet<UsMajor> = Allergen::ALL.into_iter().filter_map(UsMajor::of).collect();
    assert_eq!(majors, UsMajor::ALL.into());
}

/// Source: 21 USC 321(qq) with the FASTER Act of 2021: milk, eggs, fish, crustacean shellfish, tree
/// nuts, peanuts, wheat, soybeans, sesame. Rye, barley, oats and the rest are not among them.
#[test]
fn the_us_names_nine_and_leaves_out_the_rest() {
    use Allergen as A;
    let out = [
        A::Rye,
        A::Barley,
        A::Oats,
        A::Celery,
        A::Mustard,
        A::Sulphites,
        A::Lupin,
        A::Molluscs,
    ];
    for allergen in Allergen::ALL {
        assert_eq!(
            UsMajor::of(allergen).is_none(),
            out.contains(&allergen),
            "{allergen:?}"
        );
    }
    assert_eq!(UsMajor::of(A::Cashews), Some(UsMajor::TreeNuts));
    assert_eq!(UsMajor::of(A::Sesame), Some(UsMajor::Sesame));
}

fn one_line(number: u16) -> Formula {
    let mut formula = examples().remove(0).1.formula;
    formula.parts.truncate(1);
    formula.parts[0].lines.truncate(1);
    formula.parts[0].lines[0].food = Food::Listed(Listed::numbered(number).unwrap());
    formula
}

#[test]
fn marks_add_to_what_the_ingredient_says_and_may_contain_stays_apart() {
    // White sugar has no allergens of its own.
    let (formula, at) = (one_line(700), LineAt { part: 0, line: 0 });
    let food = formula.line(at).unwrap().food.clone();
    let marks = Marks {
        foods: vec![FoodMark {
            food,
            contains: vec![Allergen::Soybeans],
            may_contain: vec![Allergen::Hazelnuts, Allergen::Soybeans],
        }],
        kitchen: vec![Allergen::Sesame, Allergen::Rye],
    };
    let plain = allergens(&formula, &Marks::default(), LabelLaw::Eu);
    let all = allergens(&formula, &marks, LabelLaw::Eu);
    assert_eq!(all.len(), plain.len() + 4);
    let row = |wanted| all.iter().find(|row| row.allergen == wanted).unwrap();
    assert_eq!(
        row(Allergen::Soybeans).sources,
        [AllergenSource::Marked(at)]
    );
    assert!(row(Allergen::Soybeans).contained());
    assert!(!row(Allergen::Hazelnuts).contained());
    assert_eq!(row(Allergen::Sesame).sources, [AllergenSource::Kitchen]);
    let us = allergens(&formula, &marks, LabelLaw::Us);
    assert!(us.iter().all(|row| row.allergen != Allergen::Rye));
    assert_eq!(us.len(), all.len() - 1);
}

/// Wheat and milk are in every example, eggs in one, rye in two; all told by the lines that hold them.
#[test]
fn the_examples_name_what_they_hold() {
    let named: Vec<Vec<Allergen>> = examples()
        .iter()
        .map(|(_, sheet)| {
            let rows = allergens(&sheet.formula, &Marks::default(), LabelLaw::Eu);
            rows.iter().map(|row| row.allergen).collect()
        })
        .collect();
    assert!(named.iter().all(|one| one.contains(&Allergen::Wheat)));
    assert!(named[2].contains(&Allergen::Eggs) && named[3].contains(&Allergen::Rye));
    assert_eq!(named[2].len(), 3);
}
