//! Paper tells the weight of what is below the scale, and how to weigh it.

use softcrumb::engine::batch::ScaleReading;
use softcrumb::engine::class::ClassSettings;
use softcrumb::engine::formula::Line;
use softcrumb::engine::quantity::Division;
use softcrumb::results::batch::{self, class, class_batch, class_cards};
use softcrumb::results::day::usual_list;
use softcrumb::sheet::{Kitchen, Pantry, Scales, Sheet, examples};
use softcrumb::text;
use softcrumb::text::share::{
    BenchCard, CardList, bench_card, card_steps, class_bench_card, class_sheet, teacher_card,
};

use crate::format_options::british;
use crate::plain_speech::is_plain;

fn kitchen_scale() -> Scales {
    Scales {
        main: Division::ONE_GRAM.mass(),
        pocket: None,
    }
}

/// The first example as one bench of the class makes it: 450 g of dough.
fn of_a_bench() -> Sheet {
    let (_, mut sheet) = examples().remove(0);
    sheet.batch = class_batch::of_bench(&sheet, &ClassSettings::default());
    sheet
}

/// The yeast of the preferment as the formula has it, by the rule of three, in g.
fn yeast(sheet: &Sheet) -> f64 {
    let batch = batch::of(sheet, kitchen_scale());
    let rounded = batch.rounded.unwrap();
    let mut hidden = rounded.lines.iter();
    let hidden = hidden.find(|line| line.reading == ScaleReading::BelowScale);
    let at = hidden.unwrap().at;
    let flour = |lines: &[Line]| lines[0].mass.grams();
    let once = &sheet.formula.parts[at.part].lines;
    let made = &batch.formula.parts[at.part].lines;
    once[at.line].mass.grams() * flour(made) / flour(once)
}

fn tells(lines: &[(String, String)], notes: &str, yeast: f64) {
    let written = format!("{}\u{A0}g", (100.0 * yeast).round() / 100.0);
    let found = lines.iter().filter(|(_, shows)| shows.contains(&written));
    assert_eq!(found.count(), 1, "{written}: {lines:?}");
    assert!(lines.iter().all(|(_, shows)| !shows.contains("below")));
    // One to twenty, and what is weighed is 21 times the yeast: common practice.
    let solution = format!("weigh {:.0}\u{A0}g of that", 21.0 * yeast);
    for part in [
        "Instant yeast, Night dough",
        &written,
        "pocket scale",
        "stir 10\u{A0}g of yeast into 200\u{A0}g of water",
        &solution,
    ] {
        assert!(notes.contains(part), "{part}: {notes}");
    }
}

fn read(card: &BenchCard) -> (Vec<(String, String)>, String) {
    let lines = card.parts.iter().flat_map(|part| part.lines.clone());
    let notes = card.notes.iter().map(|(_, text)| text.as_str());
    (lines.collect(), notes.collect::<Vec<_>>().join("\n"))
}

#[test]
fn every_page_tells_the_yeast_that_no_kitchen_scale_shows() {
    let (sheet, settings, pantry) = (of_a_bench(), ClassSettings::default(), Pantry::default());
    let wanted = yeast(&sheet);
    assert!(wanted > 0.0 && wanted < 0.5, "{wanted}");

    let batch = batch::of(&sheet, kitchen_scale());
    let list = usual_list(&sheet, &Kitchen::default(), batch.rounded.as_ref());
    let steps = card_steps(&list, &sheet.formula, None, british());
    let list = CardList {
        list: &list,
        steps: &steps,
    };
    let card = bench_card(&sheet, &batch, list, (&pantry, None), british()).unwrap();
    let (lines, notes) = read(&card);
    tells(&lines, &notes, wanted);
    let told = card.notes.iter().flat_map(|(_, text)| text.lines());
    told.for_each(is_plain);

    let class = class::of(&sheet, &settings, kitchen_scale());
    let view = text::class::view(&class, british()).unwrap();
    let weights = class.weights.as_ref().unwrap();
    let own = class_cards::bench_cards(&sheet, &settings, weights).remove(0);
    let weighs = (&view.benches[own.bench], &own.rounded);
    let card = class_bench_card(&own.sheet, weighs, list, (&pantry, None), british());
    let (lines, notes) = read(&card);
    tells(&lines, &notes, wanted);

    let own = class_cards::teacher_card(&sheet, &settings, weights).unwrap();
    let weighs = (&view, Some(&own.rounded));
    let card = teacher_card(&own.sheet, weighs, list, (&pantry, None), british());
    let (lines, notes) = read(&card);
    tells(&lines, &notes, wanted);

    // Students and teacher weigh the same loaf: the way is told once.
    let paper = class_sheet(&sheet, &view, &pantry, None, british());
    let rows = paper.tables.iter().flatten();
    let cells = rows.map(|row| (row.food.clone(), row.cells[0].clone()));
    tells(&cells.collect::<Vec<_>>(), &paper.notes.join("\n"), wanted);
    let told = paper
        .notes
        .iter()
        .filter(|note| note.contains("too little"));
    assert_eq!(told.count(), 1);
}
