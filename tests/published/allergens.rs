//! The allergens of the ingredients, against the law's list and the names in the tables.

use softcrumb::engine::ingredients::{Allergen, Food, Ingredient, Listed, Presence, Role, Source};
use softcrumb::engine::nutrition::{AllergenRow, LabelLaw};
use softcrumb::results::batch::allergens;
use softcrumb::sheet::{Pantry, examples};

use crate::table::{CIQUAL, Row, SR28, figure, row_numbered, rows};

/// Words in a table's name for a food, and what they tell.
const TELLING: &[(&str, Allergen)] = &[
    ("wheat", Allergen::Wheat),
    ("spelt", Allergen::Wheat),
    ("semolina", Allergen::Wheat),
    ("froment", Allergen::Wheat),
    ("épeautre", Allergen::Wheat),
    ("rye", Allergen::Rye),
    ("seigle", Allergen::Rye),
    ("barley", Allergen::Barley),
    ("malt", Allergen::Barley),
    ("oat", Allergen::Oats),
    ("avoine", Allergen::Oats),
    ("egg", Allergen::Eggs),
    ("milk,", Allergen::Milk),
    ("milk chocolate", Allergen::Milk),
    ("lait", Allergen::Milk),
    ("white chocolate", Allergen::Milk),
    ("cream", Allergen::Milk),
    ("yogurt", Allergen::Milk),
    ("butter, salted", Allergen::Milk),
    ("butter, without", Allergen::Milk),
    ("beurre à 8", Allergen::Milk),
    ("peanut", Allergen::Peanuts),
    ("soy", Allergen::Soybeans),
    ("almond", Allergen::Almonds),
    ("amande", Allergen::Almonds),
    ("hazelnut", Allergen::Hazelnuts),
    ("walnut", Allergen::Walnuts),
    ("pecan", Allergen::Pecans),
    ("sesame", Allergen::Sesame),
    ("sulfured", Allergen::Sulphites),
];

fn larder() -> impl Iterator<Item = &'static Ingredient> {
    Listed::all().map(Listed::row)
}

/// Source: Regulation (EU) No 1169/2011, annex II: fourteen groups. Cereals with gluten and nuts
/// are told apart kind by kind.
#[test]
fn all_fourteen_groups_of_annex_ii_can_be_named() {
    use Allergen as A;
    let groups: [&[A]; 14] = [
        &[A::Wheat, A::Rye, A::Barley, A::Oats],
        &[A::Crustaceans],
        &[A::Eggs],
        &[A::Fish],
        &[A::Peanuts],
        &[A::Soybeans],
        &[A::Milk],
        &[
            A::Almonds,
            A::Hazelnuts,
            A::Walnuts,
            A::Cashews,
            A::Pecans,
            A::BrazilNuts,
            A::Pistachios,
            A::Macadamias,
        ],
        &[A::Celery],
        &[A::Mustard],
        &[A::Sesame],
        &[A::Sulphites],
        &[A::Lupin],
        &[A::Molluscs],
    ];
    let named: Vec<_> = groups.concat();
    assert_eq!(named, A::ALL);
}

/// What the food's own name in the table says must be among its allergens.
#[test]
fn allergens_in_the_table_s_name_are_named() {
    let tables = (rows(SR28), rows(CIQUAL));
    for row in larder() {
        let name = name_in_table(&tables, row.source);
        for &(word, allergen) in TELLING {
            let plant = ["almond milk,", "coconut milk,", "soymilk"]
                .iter()
                .any(|drink| name.contains(drink));
            if name.contains(word) && !(plant && allergen == Allergen::Milk) {
                assert!(
                    row.allergens.contains(&allergen),
                    "{} holds {allergen:?}",
                    row.name
                );
            }
        }
    }
}

fn name_in_table(tables: &(Vec<Row>, Vec<Row>), source: Source) -> String {
    let name = match source {
        Source::UsdaSr28(ndb) => &row_numbered(&tables.0, "ndb", ndb)["description"],
        Source::Ciqual2020(code) => &row_numbered(&tables.1, "alim_code", code)["alim_nom_fr"],
        Source::Label => panic!("a row of the larder has a table"),
    };
    name.to_lowercase()
}

/// Source: USDA ARS, Release 28: where the table measured milk sugar in a chocolate, milk is named.
#[test]
fn milk_is_named_where_the_table_finds_milk_sugar_in_chocolate() {
    let table = rows(SR28);
    for row in larder().filter(|row| (1000..1100).contains(&row.number)) {
        let Source::UsdaSr28(ndb) = row.source else {
            continue;
        };
        if figure(&row_numbered(&table, "ndb", ndb)["lactose_g"]).is_some_and(|grams| grams > 0.0) {
            assert!(
                presence(row.number, Allergen::Milk) <= Some(Presence::Usual),
                "{}, {}",
                row.name,
                row.detail
            );
            assert!(presence(row.number, Allergen::Milk).is_some());
        }
    }
}

fn food(number: u16) -> Food {
    Food::Listed(Listed::numbered(number).unwrap())
}

fn presence(number: u16, allergen: Allergen) -> Option<Presence> {
    food(number).presence(allergen)
}

/// Source: FDA survey of dark chocolate, 2013–14: of 88 bars that did not list milk, 51 held it.
#[test]
fn no_dark_chocolate_is_silent_of_milk() {
    for number in [1000, 1001, 1002, 1003, 1004, 1005] {
        let milk = presence(number, Allergen::Milk);
        assert!(
            milk == Some(Presence::Usual) || milk == Some(Presence::Possible),
            "{number}: {milk:?}"
        );
    }
}

/// Source: label of a hazelnut spread: hazelnuts 13 %, skimmed milk powder 8.7 %; label of a mixed
/// milk chocolate: milk, soya lecithin, hazelnut, almond. Margarine with whey, buttermilk or soya
/// lecithin: common practice.
#[test]
fn spreads_milk_chocolate_and_margarine_name_what_their_packets_name() {
    use Allergen as A;
    use Presence as P;
    let labels = [
        (1030, A::Hazelnuts, P::Contains),
        (1030, A::Milk, P::Usual),
        (1030, A::Soybeans, P::Usual),
        (1010, A::Milk, P::Contains),
        (1010, A::Soybeans, P::Usual),
        (1010, A::Hazelnuts, P::Possible),
        (1010, A::Almonds, P::Possible),
        (510, A::Milk, P::Possible),
        (510, A::Soybeans, P::Possible),
    ];
    for (number, allergen, wanted) in labels {
        assert_eq!(
            presence(number, allergen),
            Some(wanted),
            "{number} {allergen:?}"
        );
    }
}

/// Common practice: the maker decides what is in chocolate, spread, margarine, shortening, plant
/// drinks and baking powder, so nothing that the packet does not exclude is none.
#[test]
fn only_single_foods_are_silent() {
    let single = [1020, 1021, 1022, 1023];
    for row in larder() {
        let made_up = (row.role == Role::Chocolate && !single.contains(&row.number))
            || (400..500).contains(&row.number)
            || [510, 511, 512, 811].contains(&row.number);
        let flour_milk_or_egg = [Role::Flour, Role::Egg, Role::Dairy, Role::Water];
        for allergen in Allergen::ALL {
            let known = food(row.number).presence(allergen);
            assert!(!made_up || known.is_some(), "{} {allergen:?}", row.name);
            if flour_milk_or_egg.contains(&row.role) {
                assert!(
                    matches!(known, None | Some(Presence::Contains)),
                    "{}",
                    row.name
                );
            }
        }
    }
}

/// Regulation (EU) No 1169/2011, annex II: a bread with chocolate is not said to be free of soya or
/// nuts before the packet is read.
#[test]
fn a_bread_with_chocolate_has_no_silent_allergen_until_its_packet_is_read() {
    let (_, sheet) = examples().remove(0);
    let has_chocolate = |food: &Food| food.role() == Role::Chocolate;
    let lines = sheet.formula.parts.iter().flat_map(|part| &part.lines);
    let chocolate: Vec<Food> = lines
        .map(|line| line.food.clone())
        .filter(has_chocolate)
        .collect();
    assert!(!chocolate.is_empty());
    let mut pantry = Pantry::default();
    let before = allergens::of(&sheet.formula, &pantry, LabelLaw::Eu);
    assert!(!before.unread.is_empty());
    for food in &chocolate {
        pantry.item_mut(food).unwrap().contains = vec![Allergen::Soybeans];
    }
    let after = allergens::of(&sheet.formula, &pantry, LabelLaw::Eu);
    let is = |wanted| move |row: &AllergenRow| row.allergen == wanted;
    assert!(after.contained().any(is(Allergen::Soybeans)));
    assert!(after.unread.is_empty());
    assert!(!after.rows.iter().any(is(Allergen::Lupin)));
}
