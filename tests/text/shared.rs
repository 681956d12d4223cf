//! Sharing and importing: text, Markdown, steps, codes, recipes line by line.

use super::errors::told;
use super::format_options::{american, british, german};
use super::plain_speech::is_plain;
use softcrumb::engine::class::ClassSettings;
use softcrumb::engine::formula::PartKind;
use softcrumb::results::batch::{self, class};
use softcrumb::results::day::usual_list;
use softcrumb::sheet::{Kitchen, Pantry, examples};
use softcrumb::storage::interchange::{
    LinkPart, MeasureUnit, RecipeError, RecipeNames, SquareCodeError, Unread, read_recipe,
};
use softcrumb::storage::link;
use softcrumb::text::share::{
    CardList, CodeView, bench_card, card_steps, class_sheet, code, markdown, plain_text, recipe,
    shortened, steps,
};

/// With the words before the formula, 23 characters.
const PAGE: &str = "http://a.example/";

#[test]
fn plain_text_has_every_ingredient_with_its_weight() {
    for (_, sheet) in examples() {
        let text = plain_text(&sheet, british());
        assert!(text.starts_with(&sheet.name) && text.contains(sheet.note.as_str()));
        for part in &sheet.formula.parts {
            assert!(text.contains(&part.name));
            for line in &part.lines {
                assert!(text.contains(line.food.name()), "{text}");
            }
        }
        assert!(!text.contains("NaN"));
    }
    let (_, sheet) = examples().remove(0);
    assert!(
        plain_text(&sheet, british())
            .contains("  58\u{A0}g  Strong white bread flour, wheat, 12 % protein  (12.1\u{A0}%)")
    );
    assert!(plain_text(&sheet, german()).contains("8,6\u{A0}g  Salt"));
    assert!(plain_text(&sheet, american()).contains("oz  Salt"));
}

#[test]
fn markdown_is_a_table_with_its_own_characters_escaped() {
    let (_, mut sheet) = examples().remove(0);
    sheet.name = "A *bold* | <b>loaf</b>".to_owned();
    let text = markdown(&sheet, british());
    assert!(
        text.starts_with("# A \\*bold\\* \\| \\<b\\>loaf\\</b\\>\n"),
        "{text}"
    );
    let rows = text.lines().filter(|line| line.starts_with('|')).count();
    let lines: usize = sheet
        .formula
        .parts
        .iter()
        .map(|part| part.lines.len())
        .sum();
    assert_eq!(rows, lines + 2 * sheet.formula.parts.len());
    for row in text.lines().filter(|line| line.starts_with('|')) {
        assert_eq!(row.replace("\\|", "").matches('|').count(), 4, "{row}");
    }
}

#[test]
fn every_part_has_its_steps() {
    for (_, sheet) in examples() {
        let all = steps(&sheet, british());
        assert_eq!(all.len(), sheet.formula.parts.len());
        for sentence in all.iter().flatten() {
            is_plain(sentence);
        }
    }
}

#[test]
fn a_code_is_drawn_or_the_parts_to_leave_out_are_offered() {
    let (_, mut sheet) = examples().remove(0);
    let whole = |sheet: &softcrumb::sheet::Sheet| {
        format!("https://bread.example/#{}", link::write(sheet).unwrap())
    };
    let CodeView::Drawn { svg, says, .. } = code(&sheet, &whole(&sheet), british()) else {
        panic!("the example fits")
    };
    assert!(svg.starts_with("<svg ") && svg.ends_with("</svg>"));
    is_plain(&says);
    let words = (0_u32..2000).filter_map(|n| char::from_u32(0x4e00 + n * 7919 % 20_000));
    sheet.note = words.take(1500).collect();
    let CodeView::TooLong { says } = code(&sheet, &whole(&sheet), british()) else {
        panic!("the note is too long")
    };
    is_plain(&says);
    leaves_out_the_note_and_puts_it_back(&sheet);
}

fn leaves_out_the_note_and_puts_it_back(sheet: &softcrumb::sheet::Sheet) {
    let whole = shortened(sheet, &[], PAGE, british());
    assert_eq!(
        (whole[0].component, whole[0].is_out),
        (LinkPart::Note, false)
    );
    let says = &whole[0].says;
    assert!(says.starts_with("Leave out the note: "), "{says}");
    assert!(says.ends_with("less, which is enough for a code"), "{says}");
    let less = shortened(sheet, &[LinkPart::Note, LinkPart::Heat], PAGE, british());
    let gone: Vec<LinkPart> = less
        .iter()
        .filter(|one| one.is_out)
        .map(|one| one.component)
        .collect();
    assert_eq!(gone, [LinkPart::Note, LinkPart::Heat]);
    let back = less
        .iter()
        .find(|one| one.component == LinkPart::Note)
        .unwrap();
    // What leaving it out saves is what putting it back costs.
    let number = |says: &str| -> String { says.chars().filter(char::is_ascii_digit).collect() };
    let heat_out = LinkPart::Heat.left_out_of(sheet);
    let saved = link::length(&heat_out) - link::length(&LinkPart::Note.left_out_of(&heat_out));
    assert_eq!(number(&back.says), saved.to_string());
    assert!(!less.iter().any(|one| one.says.contains("enough")));
}

const RECIPE: &str = r#"{"@type":"Recipe","name":"Test buns","recipeIngredient":["For the filling:",
"100 g dark chocolate","2 cups flour","1-2 tsp salt","100 g sour cherries","salt","1 cup kumquats"],
"prepTime":"PT1H"}"#;

#[test]
fn a_recipe_is_reported_line_by_line() {
    let read = read_recipe(RECIPE, &RecipeNames::default()).unwrap();
    for options in [british(), german(), american()] {
        let view = recipe(&read, options);
        is_plain(&view.title);
        view.lines.iter().for_each(|line| is_plain(&line.says));
        is_plain(&view.left_out.unwrap());
    }
    let view = recipe(&read, british());
    assert_eq!(
        view.title,
        "5 of 7 lines were understood, 2 of them only about: weigh those once."
    );
    assert_eq!(
        view.lines[2].says,
        "About 250\u{A0}g of Plain white flour, wheat, 10 % protein: 2 cups at 125\u{A0}g each (USDA, table of weights)."
    );
    assert!(
        view.lines[3].approximate
            && view.lines[3]
                .says
                .ends_with("The middle of the range was taken.")
    );
    assert_eq!(view.left_out.unwrap(), "Not taken over: prepTime.");
}

#[test]
fn every_error_of_codes_and_recipes_has_a_message() {
    told(&RecipeError::TooLarge {
        bytes: 9_000_000,
        most: 4_000_000,
    });
    told(&RecipeError::NotJson { line: 3, column: 9 });
    told(&RecipeError::NoRecipe);
    told(&RecipeError::NoIngredients);
    told(&RecipeError::NothingUnderstood);
    told(&SquareCodeError::TooLong {
        bytes: 2310,
        most: 1732,
    });
    told(&SquareCodeError::Empty);
    told(&Unread::NoAmount);
    told(&Unread::NoFood);
    told(&Unread::OffScale);
    told(&Unread::TooMany);
    for unit in [
        MeasureUnit::Cup,
        MeasureUnit::Tablespoon,
        MeasureUnit::Teaspoon,
        MeasureUnit::Millilitre,
        MeasureUnit::Stick,
        MeasureUnit::Packet,
        MeasureUnit::Whole,
    ] {
        told(&Unread::NoWeight {
            unit,
            food: "kumquats".to_owned(),
        });
    }
}

fn on_paper(
    at: usize,
    options: softcrumb::text::FormatOptions,
) -> (
    softcrumb::text::share::BenchCard,
    softcrumb::text::share::ClassSheet,
) {
    let (_, sheet) = examples().remove(at);
    let scales = Kitchen::default().scales;
    let class = class::of(&sheet, &ClassSettings::default(), scales);
    let told = softcrumb::text::class::view(&class, options).unwrap();
    let (batch, pantry) = (batch::of(&sheet, scales), Pantry::default());
    let list = usual_list(&sheet, &Kitchen::default(), batch.rounded.as_ref());
    let steps = card_steps(&list, &sheet.formula, None, options);
    let list = CardList {
        list: &list,
        steps: &steps,
    };
    (
        bench_card(&sheet, &batch, list, (&pantry, None), options).unwrap(),
        class_sheet(&sheet, &told, &pantry, None, options),
    )
}

#[test]
fn card_and_sheet_hold_every_ingredient_and_every_caution() {
    for at in 0..4 {
        let (_, sheet) = examples().remove(at);
        let lines: usize = sheet
            .formula
            .parts
            .iter()
            .map(|part| part.lines.len())
            .sum();
        for options in [british(), german(), american()] {
            let (card, paper) = on_paper(at, options);
            let weighed: usize = card.parts.iter().map(|part| part.lines.len()).sum();
            // What goes into the mixer whole has a row of its own there.
            let whole = sheet.formula.parts.iter();
            let ahead = [PartKind::Paste, PartKind::Preferment];
            let whole = whole.filter(|part| ahead.contains(&part.kind)).count();
            let rows = paper.tables.iter().flatten().filter(|row| !row.is_sum);
            assert_eq!((weighed, rows.count()), (lines + whole, lines));
            for step in &card.steps {
                is_plain(&step.says);
                step.runs.iter().for_each(|(_, says)| is_plain(says));
            }
            for row in paper.tables.iter().flatten() {
                assert_eq!(row.cells.len(), paper.columns.len());
                assert!(row.cells.iter().all(|cell| !cell.is_empty()), "{row:?}");
            }
            let begun = paper
                .tables
                .iter()
                .flatten()
                .filter(|row| row.begins.is_some())
                .count();
            assert_eq!(begun, sheet.formula.parts.len());
            for said in card.cautions.iter().chain(&paper.cautions) {
                is_plain(said);
            }
            is_plain(&card.allergens);
            assert!(card.cautions.len() >= 4 && card.cautions.len() == paper.cautions.len());
        }
    }
}
