//! What the formula's place says: the water bar, trials, comparing, searching.

use softcrumb::engine::formula::{Figure, FigureTarget, Form, LineAt, WaterLedger, WhatIf, reach};
use softcrumb::engine::ingredients::Listed;
use softcrumb::engine::quantity::{Mass, Share};
use softcrumb::sheet::{Language, Sheet, examples};
use softcrumb::text::chart::water_bar;
use softcrumb::text::{FormatOptions, compared, line, search, trial};

fn plain(text: &str) -> String {
    text.replace('\u{a0}', " ")
}

#[test]
fn the_bar_is_filled_from_end_to_end_without_gaps_or_overlaps() {
    for (_, sheet) in examples() {
        let ledger = WaterLedger::of(&sheet.formula, Form::AsWritten).unwrap();
        let bar = water_bar(&ledger, FormatOptions::default());
        assert_eq!(bar.segments.len(), bar.rows.len());
        let mut end = 0.0;
        for piece in &bar.segments {
            assert!((piece.from - end).abs() < 1e-9, "{}: {piece:?}", sheet.name);
            assert!(piece.wide > 0.0);
            end = piece.from + piece.wide;
        }
        assert!((end - 100.0).abs() < 1e-9, "{}: ends at {end}", sheet.name);
        let [added, all] = bar.marks.as_slice() else {
            panic!("two marks");
        };
        assert!(added.at <= all.at && (all.at - 100.0).abs() < 1e-9);
        assert!(added.says.starts_with("added ") && all.says.starts_with("true "));
    }
}

#[test]
fn the_pieces_of_a_part_stand_together_in_the_order_of_the_parts() {
    let sheet = examples().remove(0).1;
    let ledger = WaterLedger::of(&sheet.formula, Form::AsWritten).unwrap();
    let letters: String = water_bar(&ledger, FormatOptions::default())
        .segments
        .iter()
        .map(|piece| piece.letter)
        .collect();
    let mut sorted: Vec<char> = letters.chars().collect();
    sorted.sort_unstable();
    assert_eq!(letters, sorted.into_iter().collect::<String>());
    assert!(letters.starts_with('A') && letters.ends_with('C'));
}

#[test]
fn a_trial_says_which_weight_it_changes_and_how() {
    let kept = examples().remove(0).1;
    let mut attempt = kept.clone();
    assert_eq!(
        trial::changed(&kept, &attempt, FormatOptions::default()),
        "nothing is changed yet"
    );
    attempt.formula.parts[0].lines[2].mass = Mass::from_grams(120.0).unwrap();
    assert_eq!(
        plain(&trial::changed(&kept, &attempt, FormatOptions::default())),
        "Water in scalded paste, 112 g → 120 g"
    );
    let mut attempt: Sheet = kept.clone();
    attempt.formula = WhatIf::LessPaste.of(&kept.formula).unwrap();
    let said = trial::changed(&kept, &attempt, FormatOptions::default());
    assert!(said.ends_with("ingredients changed"), "{said}");
}

#[test]
fn formulas_side_by_side_give_every_figure_and_line_once() {
    let all = examples();
    let (mine, other) = (&all[0].1.formula, &all[2].1.formula);
    let rows = compared::rows(other, mine, FormatOptions::default());
    let salt = rows.iter().find(|row| row.name == "Salt").unwrap();
    assert_eq!(plain(&salt.new), "1.79 %");
    let same = compared::rows(mine, mine, FormatOptions::default());
    assert!(
        same.iter()
            .all(|row| row.old == row.new && ["no change", ""].contains(&row.difference.as_str()))
    );
}

#[test]
fn an_ingredient_is_found_by_the_beginning_of_any_of_its_words() {
    let found = |typed: &str| {
        Listed::all()
            .filter(|listed| search::finds(typed, *listed, Language::English))
            .map(|listed| listed.row().name)
            .collect::<Vec<_>>()
    };
    assert!(found("rye").iter().any(|name| name.contains("rye")));
    assert_eq!(found("MILK whol"), found("whol milk"));
    assert!(!found("milk").is_empty());
    assert!(found("qzx").is_empty());
    assert_eq!(found("").len(), Listed::all().count());
}

#[test]
fn parts_are_lettered_and_lines_of_the_dough_named() {
    assert_eq!(
        [line::mark(0), line::mark(2), line::mark(99)],
        ['A', 'C', '·']
    );
    let formula = examples().remove(0).1.formula;
    let named = line::all_of_dough(&formula);
    assert!(named.iter().all(|(at, _)| at.part < 3));
    let (at, says) = &named[0];
    assert_eq!(*at, LineAt { part: 0, line: 0 });
    assert_eq!(says, "Strong white bread flour (A, Scald)");
}

#[test]
fn what_gives_way_brings_the_figure_there() {
    let formula = examples().remove(0).1.formula;
    for figure in [Figure::TrueWater, Figure::Salt, Figure::Fat, Figure::Sugar] {
        let at = figure.gives_way(&formula).unwrap();
        let wanted = Share::from_percent(66.0).unwrap();
        let reached = reach(&formula, FigureTarget::OfFlour(figure, wanted), at).unwrap();
        assert_ne!(reached.before, reached.after, "{figure:?}");
    }
}

/// What people type for foods, and the food that must come first: common practice.
#[test]
fn search_finds_what_people_type_the_exact_word_first() {
    for (typed, first) in [
        ("all-purpose", "Plain white flour"),
        ("plain", "Plain white flour"),
        ("caster", "White sugar"),
        ("dried yeast", "Active dry yeast"),
        ("double cream", "Rich whipping cream"),
        ("chips", "Semisweet chocolate"),
        ("golden syrup", "Corn syrup"),
        ("eggs", "Egg"),
        ("butter", "Butter, unsalted"),
        ("salt", "Salt"),
        ("water", "Water"),
    ] {
        let found = search::ingredients(typed, Language::English);
        assert_eq!(found[0].row().name, first, "{typed}");
    }
    assert!(search::hint("sourdough").is_some());
    assert!(search::ingredients("unobtainium", Language::English).is_empty());
}

/// Other words for foods in Spanish and Japanese: common practice. The names are those of the table.
#[test]
fn search_finds_what_people_type_in_spanish_and_japanese() {
    for (language, typed, first) in [
        (
            Language::Spanish,
            "harina de fuerza",
            "Strong white bread flour",
        ),
        (Language::Spanish, "azucar", "White sugar"),
        (Language::Spanish, "azúcar glas", "Icing sugar"),
        (Language::Spanish, "maicena", "Cornflour"),
        (Language::Spanish, "levadura fresca", "Fresh yeast"),
        (Language::Spanish, "mantequilla", "Butter, unsalted"),
        (Language::Spanish, "nata", "Whipping cream"),
        (Language::Spanish, "sal", "Salt"),
        (Language::Spanish, "cacao", "Cocoa powder"),
        (Language::Japanese, "強力粉", "Strong white bread flour"),
        (Language::Japanese, "砂糖", "White sugar"),
        (Language::Japanese, "バター", "Butter, unsalted"),
        (Language::Japanese, "ばたー", "Butter, unsalted"),
        (Language::Japanese, "たまご", "Egg"),
        (Language::Japanese, "ドライイースト", "Instant yeast"),
        (Language::Japanese, "スキムミルク", "Skimmed milk powder"),
        (Language::Japanese, "ココア", "Cocoa powder"),
        (Language::Japanese, "塩", "Salt"),
    ] {
        let found = search::ingredients(typed, language);
        assert_eq!(found[0].row().name, first, "{typed}");
    }
    assert!(search::hint("masa madre").is_some());
    assert!(search::ingredients("無い物", Language::Japanese).is_empty());
}
