//! What the larder says must be named, against the law's list and the tables' own names.

use softcrumb::engine::ingredients::{Allergen, Ingredient, Listed, Source};

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
                row.allergens.contains(&Allergen::Milk),
                "{}, {}",
                row.name,
                row.detail
            );
        }
    }
}
