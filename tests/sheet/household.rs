//! Cups and spoons against the published table of weights, row by row.

use softcrumb::engine::ingredients::{Food, Ingredient, Listed, Source};
use softcrumb::engine::quantity::Mass;
use softcrumb::storage::interchange::{
    Amount, MeasureUnit, RecipeNames, Understood, Unread, in_measures, read_recipe,
};

const TABLE: &str = include_str!("../published/data/household_weights.csv");

/// NDB number, amount, measure, grams; the measure may be in quotes.
fn rows() -> impl Iterator<Item = (u32, f64, String, f64)> {
    TABLE.lines().skip(1).filter_map(|line| {
        let mut cells = vec![String::new()];
        let mut quoted = false;
        for letter in line.chars() {
            match letter {
                '"' => quoted = !quoted,
                ',' if !quoted => cells.push(String::new()),
                other => cells.last_mut()?.push(other),
            }
        }
        let [_, ndb, amount, measure, grams, ..] = cells.as_slice() else {
            return None;
        };
        Some((
            ndb.parse().ok()?,
            amount.parse().ok()?,
            measure.clone(),
            grams.parse().ok()?,
        ))
    })
}

/// How a recipe would write a measure of the table, where ours means the same.
fn written(measure: &str) -> Option<&'static str> {
    Some(match measure {
        "cup" | "cup (8 fl oz)" | "serving 8 fl oz" | "cup packed" | "cup unsifted"
        | "cup, chopped" | "cup, whole" | "cup, mashed" | "cup (not packed)" => "cup",
        "cup chips" | "cup chips (6 oz package)" | "cup, fluid (yields 2 cups whipped)" => "cup",
        "tbsp" | "tablespoon" | "tbsp unsifted" | "tbsp, ground" | "serving 1 tbsp" => "tbsp",
        "tsp" | "tsp packed" | "tsp, ground" => "tsp",
        "stick" => "stick",
        "packet" | "cake (0.6 oz)" => "packet",
        "large" | "lemon yields" | "fruit yields" => "",
        _ => return None,
    })
}

fn grams_of(line: &str) -> Result<f64, Unread> {
    let text = format!("{{\"@type\":\"Recipe\",\"recipeIngredient\":[\"1 g salt\",\"{line}\"]}}");
    match read_recipe(&text, &RecipeNames::default())
        .unwrap()
        .lines
        .remove(1)
        .understood
    {
        Understood::Line(_, found) => {
            assert!(matches!(found.amount, Amount::Approximate { .. }), "{line}");
            Ok(found.mass.grams())
        }
        Understood::Not(unread) => Err(unread),
        Understood::Heading(_) => panic!("{line}"),
    }
}

/// The line a recipe would have for a measure of the table; none where ours means another.
fn line(row: &Ingredient, amount: f64, measure: &str) -> Option<String> {
    let word = written(measure)?;
    let whole_nut = measure == "cup, whole" && row.name == "Hazelnuts";
    let large_potato = measure == "large" && row.number > 700;
    // A cup of grain is no cup of its flour.
    if row.detail.contains("grain") || whole_nut || large_potato {
        return None;
    }
    Some(match (word, row.detail) {
        ("", _) => format!("{amount} {}", row.name),
        (word, "") => format!("{amount} {word} {}", row.name),
        (word, detail) => format!("{amount} {word} {}, {detail}", row.name),
    })
}

/// Source: USDA ARS, Release 28 (2016), table of weights, under the number of each food. Where it
/// gives a part of a cup, its grams are rounded to half of the last digit printed.
#[test]
fn every_measure_of_the_table_weighs_what_is_printed() {
    let mut seen = 0;
    let mut trouble = Vec::new();
    for row in Listed::all().map(Listed::row) {
        let Source::UsdaSr28(number) = row.source else {
            continue;
        };
        for (_, amount, measure, grams) in rows().filter(|found| found.0 == number) {
            let Some(line) = line(row, amount, &measure) else {
                continue;
            };
            let exact = (amount - 1.0).abs() < 1e-9;
            let allowed = if exact { 1e-9 * grams } else { 0.5 };
            match grams_of(&line) {
                Ok(found) if (found - grams).abs() <= allowed => seen += 1,
                other => trouble.push(format!("{line}: {grams} printed, {other:?}")),
            }
        }
    }
    assert!(trouble.is_empty(), "{}", trouble.join("\n"));
    assert!(seen > 100, "{seen}");
}

/// Source: USDA ARS, Release 28 (2016), table of weights: a cup of bread flour 137 g, of sugar 200 g, of
/// milk 244 g; a tablespoon of salt 18 g, a teaspoon 6 g; a large egg without its shell 50 g.
#[test]
fn weights_are_shown_in_cups_and_spoons_to_the_half_tablespoon() {
    use MeasureUnit::{Cup, Tablespoon, Teaspoon, Whole};
    for (number, grams, wanted) in [
        (1, 137.0, vec![(Cup, 4)]),
        // 1¾ cups are 239.75 g; a tablespoon is 8.5625 g.
        (1, 248.3, vec![(Cup, 7), (Tablespoon, 4)]),
        (700, 50.0, vec![(Cup, 1)]),
        (800, 9.0, vec![(Teaspoon, 6)]),
        (800, 18.0, vec![(Tablespoon, 4)]),
        (600, 125.0, vec![(Whole, 10)]),
    ] {
        let found = Listed::all().find(|listed| listed.row().number == number);
        let food = Food::Listed(found.unwrap());
        let mass = Mass::from_grams(grams).unwrap();
        assert_eq!(
            in_measures(&food, mass),
            Some(wanted),
            "{grams} g of {food:?}"
        );
    }
}

/// What is told in measures, read back as a recipe has it, is within half a tablespoon of the weight.
#[test]
fn measures_come_back_as_about_the_weight_they_show() {
    let mut seen = 0;
    for listed in Listed::all() {
        let food = Food::Listed(listed);
        for grams in [3.0, 11.0, 42.5, 130.0, 333.0, 1200.0] {
            let mass = Mass::from_grams(grams).unwrap();
            let Some(components) = in_measures(&food, mass) else {
                continue;
            };
            let told = components.iter().map(|(unit, quarters)| {
                let word = word_for(*unit);
                weigh(&listed, &format!("{} {word}", f64::from(*quarters) / 4.0))
            });
            let told = told.sum::<Result<f64, Unread>>();
            let (Ok(off), Ok(told)) = (weigh(&listed, least_of(components[0].0)), told) else {
                continue;
            };
            assert!(
                (told - grams).abs() <= off * 1.000_001,
                "{grams} g of {food:?}: {components:?}"
            );
            seen += 1;
        }
    }
    assert!(seen > 200, "{seen}");
}

/// Sixteen tablespoons are a cup and three teaspoons a tablespoon, where the table has only one of them.
#[test]
fn spoons_the_table_leaves_out_are_parts_of_its_cup() {
    for (line, grams) in [
        ("1 tbsp bread flour", 137.0 / 16.0),
        ("1 tsp bread flour", 137.0 / 48.0),
        ("1 tsp milk", 5.0),
        ("1 cup active dry yeast", 192.0),
        ("100 ml honey", 339.0 / 2.365_882_365),
    ] {
        let found = grams_of(line).unwrap();
        assert!((found - grams).abs() < 1e-9 * grams, "{line}: {found}");
    }
    let unknown = grams_of("1 cup kumquats");
    assert!(matches!(unknown, Err(Unread::NoWeight { .. })));
}

/// What a recipe that asks for so much of an ingredient is read as, g.
fn weigh(listed: &Listed, amount: &str) -> Result<f64, Unread> {
    let row = listed.row();
    if row.detail.is_empty() {
        return grams_of(&format!("{amount} {}", row.name));
    }
    grams_of(&format!("{amount} {}, {}", row.name, row.detail))
}

/// Half of the least that is told beside a measure.
const fn least_of(unit: MeasureUnit) -> &'static str {
    match unit {
        MeasureUnit::Teaspoon => "1/8 tsp",
        MeasureUnit::Whole => "1/8",
        MeasureUnit::Cup
        | MeasureUnit::Tablespoon
        | MeasureUnit::Millilitre
        | MeasureUnit::Stick
        | MeasureUnit::Packet => "1/4 tbsp",
    }
}

const fn word_for(unit: MeasureUnit) -> &'static str {
    match unit {
        MeasureUnit::Cup => "cup",
        MeasureUnit::Tablespoon => "tbsp",
        MeasureUnit::Teaspoon => "tsp",
        MeasureUnit::Millilitre | MeasureUnit::Stick | MeasureUnit::Packet | MeasureUnit::Whole => {
            ""
        }
    }
}
