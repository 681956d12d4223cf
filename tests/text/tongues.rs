//! The page's own catalogues: times, ranges, lists and ingredients as each language writes them.

use softcrumb::engine::formula::{Form, WaterLedger};
use softcrumb::engine::quantity::Minutes;
use softcrumb::sheet::{Language, examples};
use softcrumb::storage::interchange::read_recipe;
use softcrumb::text::chart::{water_bar, water_ledger};
use softcrumb::text::language::{Catalogue, set_catalogue};
use softcrumb::text::share::{recipe, recipe_names};
use softcrumb::text::{FormatOptions, format, line};

/// Runs `act` in a language of the page. A catalogue is in the gettext format.
fn in_language<T>(tag: &str, act: impl FnOnce() -> T) -> T {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/src/text/language/");
    let text = std::fs::read_to_string(format!("{folder}{tag}.po")).unwrap();
    let mut pairs: Vec<[String; 2]> = Vec::new();
    let mut at = 0;
    for written in text.lines() {
        let rest = match written.split_once(" \"") {
            Some(("msgid", rest)) => {
                pairs.push([String::new(), String::new()]);
                at = 0;
                rest
            }
            Some(("msgstr", rest)) => {
                at = 1;
                rest
            }
            _ => match written.strip_prefix('"') {
                Some(rest) => rest,
                None => continue,
            },
        };
        let own = rest.strip_suffix('"').unwrap().replace("\\\"", "\"");
        pairs.last_mut().unwrap()[at].push_str(&own);
    }
    let lines: String = pairs
        .iter()
        .filter(|[english, _]| !english.is_empty())
        .map(|[english, own]| format!("{english}\t{own}\n"))
        .collect();
    set_catalogue(Some(Catalogue::read(lines).unwrap()));
    let done = act();
    set_catalogue(None);
    done
}

fn minutes(minutes: f64) -> Minutes {
    Minutes::from_minutes(minutes).unwrap()
}

/// How times and ranges are written in each language: common practice.
#[test]
fn times_are_in_one_style() {
    let options = FormatOptions::default();
    let written = || {
        let all = [
            format::minutes(minutes(35.0), options),
            format::minutes(minutes(80.0), options),
            format::minutes(minutes(120.0), options),
            format::minutes_range(minutes(22.0), minutes(31.0), options),
        ];
        all.map(|text| text.replace('\u{A0}', " "))
    };
    assert_eq!(
        in_language("es", written),
        ["35 min", "1 h 20 min", "2 h", "22 a 31 min"]
    );
    assert_eq!(
        in_language("ja", written),
        ["35分", "1時間20分", "2時間", "22〜31分"]
    );
}

/// The names are those of the catalogues.
#[test]
fn the_water_ledger_names_ingredients_in_the_language_of_the_page() {
    let options = FormatOptions::default();
    let (_, sheet) = examples().into_iter().next().unwrap();
    let ledger = WaterLedger::of(&sheet.formula, Form::AsWritten).unwrap();
    for (tag, milk) in [("es", "Leche entera"), ("ja", "牛乳")] {
        let (said, rows) = in_language(tag, || {
            (
                water_ledger(&ledger, options),
                water_bar(&ledger, options).rows,
            )
        });
        assert!(
            said.contains(milk) && !said.contains("Whole milk"),
            "{said}"
        );
        assert!(rows.iter().any(|row| row.food == milk));
    }
    let lines = in_language("ja", || line::all_of_dough(&sheet.formula));
    assert!(lines[0].1.starts_with("強力粉(A・"), "{:?}", lines[0]);
}

/// A recipe that the page writes in its language is read back in it, each butter as itself.
#[test]
fn a_recipe_in_the_words_of_the_page_is_read_back() {
    for (tag, lines) in [
        (
            "es",
            [
                "100 g Mantequilla con sal, francesa, 2,5 % de sal",
                "2 cucharadas de azúcar",
            ],
        ),
        ("ja", ["100 g 無塩バター、脂肪83 %", "砂糖 大さじ2"]),
    ] {
        let text = serde_json::json!({ "@type": "Recipe", "recipeIngredient": lines });
        let (numbers, said) = in_language(tag, || {
            let read = read_recipe(&text.to_string(), &recipe_names()).unwrap();
            let foods = read.sheet.formula.parts[0]
                .lines
                .iter()
                .map(|line| line.food.clone());
            let numbers: Vec<_> = foods
                .map(|food| softcrumb::text::name::food(&food))
                .collect();
            (
                numbers,
                recipe(
                    &read,
                    FormatOptions {
                        language: Language::Spanish,
                        ..FormatOptions::default()
                    },
                ),
            )
        });
        let expected = if tag == "es" {
            [
                "Mantequilla con sal, francesa, 2,5 % de sal",
                "Azúcar blanco, común o fino",
            ]
        } else {
            ["無塩バター、脂肪83 %", "グラニュー糖、普通または微粒"]
        };
        assert_eq!(
            numbers.iter().map(String::as_str).collect::<Vec<_>>(),
            expected
        );
        assert!(
            !said.lines[1].says.contains("About"),
            "{}",
            said.lines[1].says
        );
    }
}
