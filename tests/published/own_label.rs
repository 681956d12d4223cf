//! Ingredients known by their label alone, against the table that also measured the water.

use softcrumb::engine::ingredients::{Label, OwnFood, Role};
use softcrumb::engine::quantity::Share;

use crate::printed::agrees;
use crate::table::{CIQUAL, Row, SR28, figure, row_numbered, rows};

/// A food of the French table as its packet would print it: protein by 6.25, salt not sodium.
/// "-" is a line the packet leaves out.
fn by_label(row: &Row, role: Role, fibre: bool) -> OwnFood {
    let line = |head: &str| figure(&row[head]).map(|grams| Share::from_percent(grams).unwrap());
    let label = Label {
        fat: line("fat_g"),
        saturates: line("saturated_g"),
        carbohydrate: line("carbohydrate_available_g"),
        sugars: line("sugars_g"),
        fibre: line("fibre_g").filter(|_| fibre),
        protein: line("protein_6_25_g"),
        salt: line("salt_g"),
        water: None,
        cocoa: None,
    };
    OwnFood::new(&row["key"], role, label, vec![]).unwrap()
}

/// Foods of the French table that a baker may know by label alone.
const FOODS: [(u32, Role); 22] = [
    (9440, Role::Flour),      // soft wheat T45
    (9436, Role::Flour),      // wheat T55
    (9410, Role::Flour),      // wheat T110
    (9415, Role::Flour),      // wheat T150
    (9480, Role::Flour),      // spelt
    (9532, Role::Flour),      // rye T85
    (9510, Role::Flour),      // maize starch
    (4090, Role::Flour),      // potato starch
    (19023, Role::Liquid),    // whole milk
    (19041, Role::Liquid),    // semi-skimmed milk
    (18905, Role::Liquid),    // oat drink
    (18107, Role::Liquid),    // almond drink
    (16400, Role::Fat),       // butter
    (16403, Role::Fat),       // salted butter
    (22000, Role::Egg),       // egg
    (22001, Role::Egg),       // egg white
    (22002, Role::Egg),       // egg yolk
    (31008, Role::Sugar),     // honey
    (31034, Role::Sugar),     // maple syrup
    (31016, Role::Sugar),     // white sugar
    (15004, Role::Inclusion), // hazelnut
    (15000, Role::Inclusion), // almond
];

/// Source: ANSES, *Table Ciqual 2020*. The tolerance is wider than print, because a packet prints
/// no ash but salt and drops "< x" cells: 0.8 g in 100 g. And it counts protein as nitrogen times
/// 6.25 where the table's sum uses the food's own factor: that difference, from the table's two
/// protein columns (0.9 g in white flour, 2.6 and 3.8 g in nuts), comes off the water.
#[test]
fn water_by_label_is_the_table_s_within_0_8_grams() {
    let table = rows(CIQUAL);
    for (code, role) in FOODS {
        let row = row_numbered(&table, "alim_code", code);
        let cell = |head: &str| figure(&row[head]).unwrap();
        let counted_too_much = cell("protein_6_25_g") - cell("protein_jones_g");
        let water = by_label(row, role, true).composition().water.percent();
        let off = water + counted_too_much - cell("water_g");
        assert!(off.abs() <= 0.8, "{}: off by {off}", row["alim_nom_fr"]);
    }
}

/// Source: ANSES, *Table Ciqual 2020*: plain, plain above 70 %, milk, white. Chocolate is taken to
/// hold 1 g of water, whether its packet prints fibre or not; the table finds 0.7 to 1.1 g.
#[test]
fn a_chocolate_s_open_grams_are_not_taken_for_water() {
    let table = rows(CIQUAL);
    for code in [31005, 31074, 31004, 31010] {
        let row = row_numbered(&table, "alim_code", code);
        let printed = figure(&row["water_g"]).unwrap();
        for fibre in [true, false] {
            let water = by_label(row, Role::Chocolate, fibre).composition().water;
            let off = water.percent() - printed;
            let white_has_no_room = code == 31010 && water == Share::NONE;
            assert!(off.abs() <= 0.35 || white_has_no_room, "{code}: {off}");
        }
    }
}

/// Source: USDA ARS, *Release 28*, dark chocolates 19902, 19903, 19904, their cocoa share taken as
/// the middle of the range in their names. Sugars and fibre worked out from cocoa and fat alone
/// come within 3 g and 2 g in 100 g: half the width of those ranges is 5 to 7.5 g of cocoa.
#[test]
fn a_dark_chocolate_s_sugars_and_fibre_follow_from_cocoa_and_fat() {
    let table = rows(SR28);
    for (ndb, cocoa) in [(19902, 52.0), (19903, 64.5), (19904, 77.5)] {
        let row = row_numbered(&table, "ndb", ndb);
        let cell = |head: &str| figure(&row[head]).unwrap();
        let grams = |grams: f64| Share::from_percent(grams).ok();
        let label = Label {
            fat: grams(cell("fat_g")),
            protein: grams(cell("protein_g")),
            carbohydrate: grams(cell("carbohydrate_by_difference_g") - cell("fibre_g")),
            cocoa: grams(cocoa),
            ..Label::default()
        };
        let made_of = OwnFood::new("Bar", Role::Chocolate, label, vec![]).unwrap();
        let made_of = made_of.composition();
        let sugars = made_of.sugars.percent() - cell("sugars_total_g");
        let fibre = made_of.fibre.percent() - cell("fibre_g");
        assert!(sugars.abs() <= 3.0, "{ndb}: sugars off by {sugars}");
        assert!(fibre.abs() <= 2.0, "{ndb}: fibre off by {fibre}");
    }
}

/// Source: Regulation (EU) No 1169/2011, annex I, point 11: salt = sodium × 2.5. French table:
/// salted butter has 2.52 g of salt and 1010 mg of sodium in 100 g.
#[test]
fn sodium_is_salt_over_2_5() {
    let table = rows(CIQUAL);
    let butter = by_label(row_numbered(&table, "alim_code", 16403), Role::Fat, true);
    agrees(butter.composition().sodium.percent(), "1.01");
}

/// Source: ANSES, *Table Ciqual 2020*: carbohydrate without fibre on the label, with it in the
/// larder: 73.7 and 3.2 g in wheat flour T55; what sugars leave of it is starch, 72.2 g where the
/// table measured 67.6.
#[test]
fn fibre_goes_back_into_carbohydrate() {
    let table = rows(CIQUAL);
    let flour = by_label(row_numbered(&table, "alim_code", 9436), Role::Flour, true);
    agrees(flour.composition().carbohydrate.percent(), "76.9");
    agrees(flour.composition().starch.percent(), "72.2");
}
