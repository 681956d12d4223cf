//! Recipes of schema.org: each line of many documents against a table of what it means.

use std::collections::BTreeMap;

use softcrumb::engine::ingredients::Food;
use softcrumb::sheet::{Sheet, examples};
use softcrumb::storage::interchange::{
    Amount, ReadRecipe, RecipeError, RecipeNames, Understood, Unread, read_recipe, write_recipe,
};
use softcrumb::text::name;

const FOLDER: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/sheet/recipes/");

fn open(name: &str) -> ReadRecipe {
    let text = std::fs::read_to_string(format!("{FOLDER}{name}")).unwrap();
    read_recipe(&text, &RecipeNames::default()).unwrap_or_else(|error| panic!("{name}: {error}"))
}

/// The cells of a line of the table; only the ingredient's own line may be in quotes.
fn cells(line: &str) -> Vec<String> {
    let mut found = vec![String::new()];
    let mut quoted = false;
    for letter in line.chars() {
        match letter {
            '"' => quoted = !quoted,
            ',' if !quoted => found.push(String::new()),
            other => found.last_mut().unwrap().push(other),
        }
    }
    found
}

/// What became of a line, as the table has it: part, food or reason, grams.
fn told(read: &ReadRecipe, understood: &Understood) -> (String, String, Option<f64>) {
    match understood {
        Understood::Heading(heading) => (small(&heading.kind), "heading".into(), None),
        Understood::Line(at, found) => {
            let line = read.sheet.formula.line(*at).unwrap();
            assert_eq!(line.mass, found.mass);
            assert_eq!(line.food, found.food);
            let food = match &found.food {
                Food::Listed(listed) => listed.row().number.to_string(),
                Food::Own(own) => format!("own:{}", small(&own.role)),
            };
            let kind = read.sheet.formula.parts[at.part].kind;
            (small(&kind), food, Some(found.mass.grams()))
        }
        Understood::Not(Unread::NoWeight { .. }) => (String::new(), "NoWeight".into(), None),
        Understood::Not(other) => (String::new(), format!("{other:?}"), None),
    }
}

fn small(word: &impl std::fmt::Debug) -> String {
    format!("{word:?}").to_lowercase()
}

/// Source of the weights of cups and spoons: USDA ARS, Release 28 (2016), table of weights. The table
/// beside the documents was reckoned from it, to six figures, before they were read here.
#[test]
fn every_line_of_every_document_is_understood_as_the_table_says() {
    let table = std::fs::read_to_string(format!("{FOLDER}understood.csv")).unwrap();
    let mut documents: BTreeMap<String, Vec<Vec<String>>> = BTreeMap::new();
    for line in table.lines().skip(1) {
        let row = cells(line);
        documents.entry(row[0].clone()).or_default().push(row);
    }
    assert!(documents.len() >= 30, "{}", documents.len());
    let mut trouble = Vec::new();
    for (name, rows) in &documents {
        let read = open(name);
        assert_eq!(read.lines.len(), rows.len(), "{name}");
        for (line, row) in read.lines.iter().zip(rows) {
            let (part, food, grams) = told(&read, &line.understood);
            let wanted = row[4].parse::<f64>().ok();
            let near = match (grams, wanted) {
                (Some(grams), Some(wanted)) => (grams - wanted).abs() <= 1e-5 * wanted,
                (one, other) => one.is_none() && other.is_none(),
            };
            if line.text != row[1] || part != row[2] || food != row[3] || !near {
                trouble.push(format!(
                    "{name}: {row:?} but {:?} {part} {food} {grams:?}",
                    line.text
                ));
            }
        }
    }
    assert!(trouble.is_empty(), "{}", trouble.join("\n"));
}

#[test]
fn a_cup_is_marked_approximate_and_a_weight_is_not() {
    for line in open("cups_and_spoons.json").lines {
        let Understood::Line(_, found) = line.understood else {
            panic!("{}", line.text)
        };
        assert!(
            matches!(found.amount, Amount::Approximate { .. }),
            "{}",
            line.text
        );
    }
    for line in open("plain_grams.json").lines {
        let Understood::Line(_, found) = line.understood else {
            panic!("{}", line.text)
        };
        assert_eq!(found.amount, Amount::Weighed);
    }
}

#[test]
fn what_was_not_used_and_what_was_cut_is_shown() {
    let read = open("sections_of_instructions.json");
    assert_eq!(read.unused, ["prepTime", "author"]);
    assert!(read.sheet.note.contains("Pour the water"));
    assert!(!read.note_cut);
    let long = open("long_instructions.json");
    assert!(long.note_cut);
    assert!(long.sheet.note.chars().count() <= Sheet::NOTE_LENGTH);
    assert!(long.sheet.note.starts_with("A loaf that takes its time."));
}

#[test]
fn the_yield_gives_the_pieces_where_it_is_a_number() {
    for (name, pieces) in [
        ("cups_and_spoons.json", 12),
        ("unicode_fractions.json", 8),
        ("property_values.json", 8),
        ("ranges.json", 2),
        ("metric_no_space.json", 1),
        ("words_for_numbers.json", 1),
    ] {
        assert_eq!(open(name).sheet.batch.pieces.get(), pieces, "{name}");
    }
}

/// Every formula comes back with its parts, foods and weights.
#[test]
fn what_was_written_is_read_back() {
    for (_, sheet) in examples() {
        let text = write_recipe(&sheet, &[], name::food);
        let read = read_recipe(&text, &RecipeNames::default()).unwrap();
        assert_eq!(read.sheet.name, sheet.name);
        assert_eq!(read.sheet.batch.pieces, sheet.batch.pieces);
        assert_eq!(read.sheet.note, sheet.note);
        // The imported nutrition of a piece is unused, because the page works it out itself.
        assert_eq!(read.unused, ["nutrition"]);
        let mut without_steam = sheet.formula.clone();
        for part in &mut without_steam.parts {
            part.steam = softcrumb::engine::quantity::Mass::ZERO;
        }
        assert_eq!(read.sheet.formula, without_steam);
    }
}

#[test]
fn what_is_no_recipe_is_refused_for_its_own_reason() {
    let deep = format!("{}{}", "[".repeat(100), "]".repeat(100));
    for (text, error) in [
        ("", RecipeError::NotJson { line: 1, column: 0 }),
        (
            "{\"@type\": \"Recipe\"",
            RecipeError::NotJson {
                line: 1,
                column: 18,
            },
        ),
        ("[]", RecipeError::NoRecipe),
        ("{\"@type\": \"Person\"}", RecipeError::NoRecipe),
        ("<html><script>1</script></html>", RecipeError::NoRecipe),
        ("{\"@type\": \"Recipe\"}", RecipeError::NoIngredients),
        (
            "{\"@type\": \"Recipe\", \"recipeIngredient\": [1, null, {}, []]}",
            RecipeError::NothingUnderstood,
        ),
        (
            "{\"@type\": \"Recipe\", \"recipeIngredient\": [\"salt\"]}",
            RecipeError::NothingUnderstood,
        ),
        (deep.as_str(), RecipeError::NoRecipe),
    ] {
        assert_eq!(
            read_recipe(text, &RecipeNames::default()).unwrap_err(),
            error,
            "{text}"
        );
    }
    let large = " ".repeat(4_000_001);
    assert!(matches!(
        read_recipe(&large, &RecipeNames::default()),
        Err(RecipeError::TooLarge { .. })
    ));
}

const HOSTILE: &[&str] = &[
    "999999999999999999999999 g flour",
    "1/0 cup flour",
    "1//2 g flour",
    "0 g flour",
    "-5 g flour",
    "((((((((1 g flour",
    "1 g",
    "g",
    "½½½ cup flour",
    "1e9 kg flour",
    "١٠٠ g flour",
    "1 cup\u{202e}flour",
    "1 - - 2 g flour",
    "2 (",
    ")",
    "….",
    "1 to g flour",
    "100 g =SUM(A1)",
    "12345678901234567890 cups milk",
    "5 g <script>alert(1)</script>",
    "1 cup sugar (or",
    "100 g \u{0}flour",
    "for the ",
    ":",
    "for the :",
    "Ünïcödé:",
];

/// Lines nobody would write: an answer or a refusal for each, and no number that is none.
#[test]
fn hostile_lines_are_answered() {
    for line in HOSTILE {
        let quoted = line.replace('\u{0}', "\\u0000");
        let text =
            format!("{{\"@type\":\"Recipe\",\"recipeIngredient\":[\"100 g flour\",\"{quoted}\"]}}");
        let read = read_recipe(&text, &RecipeNames::default())
            .unwrap_or_else(|error| panic!("{line}: {error}"));
        for part in &read.sheet.formula.parts {
            for one in &part.lines {
                assert!(
                    one.mass.grams().is_finite() && one.mass.grams() > 0.0,
                    "{line}"
                );
                assert!(!one.food.name().contains(['\u{202e}', '\u{0}']), "{line}");
            }
        }
    }
}

#[test]
fn more_lines_than_a_formula_has_are_shown_one_by_one() {
    let all = vec!["\"5 g salt\""; 260].join(",");
    let text = format!("{{\"@type\":\"Recipe\",\"recipeIngredient\":[{all}]}}");
    let read = read_recipe(&text, &RecipeNames::default()).unwrap();
    let left = read
        .lines
        .iter()
        .filter(|line| line.understood == Understood::Not(Unread::TooMany));
    assert_eq!(left.count(), 60);
}
