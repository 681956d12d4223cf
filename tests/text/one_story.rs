//! One story, one name, one number: what two places say of the same thing agrees.

use softcrumb::engine::chocolate::Lumps;
use softcrumb::engine::formula::{Figure, Figures, Form, PartKind};
use softcrumb::engine::heat::{HeatFrom, PhaseAdvice};
use softcrumb::engine::plan::{StepAt, StepKind};
use softcrumb::engine::quantity::Temperature;
use softcrumb::results::batch;
use softcrumb::results::chocolate::{self, SyrupVerdict};
use softcrumb::results::day::usual_list;
use softcrumb::sheet::{Kitchen, Sheet, examples};
use softcrumb::text::share::{card_steps, work};
use softcrumb::text::{chocolate_answer, format, heat as heat_text, name};

use crate::format_options::british;

fn celsius(degrees: f64) -> Temperature {
    Temperature::from_celsius(degrees).unwrap()
}

/// The names and sentences of the card's steps of a sheet.
fn card(sheet: &Sheet) -> Vec<(String, String)> {
    let kitchen = Kitchen::default();
    let made = batch::of(sheet, kitchen.scales);
    let list = usual_list(sheet, &kitchen, made.rounded.as_ref());
    let steps = card_steps(&list, &sheet.formula, None, british());
    let each = steps.into_iter().flat_map(|step| {
        let mut all = vec![(step.name, step.says)];
        all.extend(step.runs);
        all
    });
    each.map(|(name, says)| (name, says.replace('\u{A0}', " ")))
        .collect()
}

/// Common practice: chocolate that is melted gently over hot water is smooth, however cold it was;
/// warm liquid poured on it cold leaves lumps. The steps melt it over water, so that is the verdict.
#[test]
fn chocolate_is_judged_as_the_steps_melt_it() {
    let (_, mut sheet) = examples().remove(0);
    let kitchen = Kitchen {
        room: celsius(10.0),
        ..Kitchen::default()
    };
    sheet.heat.melt.liquid = Some(celsius(60.0));
    let made = batch::of(&sheet, kitchen.scales);
    let found = chocolate::of(&sheet, &kitchen, &made);
    let melted = found
        .melt
        .as_ref()
        .unwrap()
        .as_ref()
        .unwrap()
        .melted
        .clone();
    assert_eq!(melted.lumps, Lumps::Clear);
    let verdict = found.verdict().unwrap();
    assert!(matches!(verdict, SyrupVerdict::Runs(_)), "{verdict:?}");
    let said = chocolate_answer::melting(&melted, british());
    let (gently, poured) = said.split_once("poured on it instead").unwrap();
    assert!(gently.contains("Over hot water"), "{said}");
    assert!(poured.contains(name::lumps(Lumps::Clear)), "{said}");
    let steps = card(&sheet);
    let melt = steps.iter().find(|(name, _)| name.starts_with("Melt"));
    assert!(melt.unwrap().1.contains("gently over hot water"));
    assert!(heat_text::melt_gently().contains("gently over hot water"));
}

/// Common practice: a tent of foil stands clear of a glaze that is wet, and only where the top browns
/// too fast.
#[test]
fn foil_stands_clear_of_the_drizzle_and_says_when() {
    let said = heat_text::phase_advice(PhaseAdvice::Tent).unwrap();
    for part in ["too fast towards the end", "like a tent", "touches nothing"] {
        assert!(said.contains(part), "{said}");
    }
    assert_eq!(said.matches('.').count(), 1, "one sentence: {said}");
}

/// What Heat advises where paste and preferment come cold from the fridge: take them out before, and
/// warm the liquid. Common practice.
#[test]
fn the_note_of_the_example_and_its_steps_say_what_heat_advises() {
    let (_, sheet) = examples().remove(0);
    let steps = card(&sheet);
    let mix = steps
        .iter()
        .find(|(name, _)| name.contains("mix the dough"));
    let says = &mix.unwrap().1;
    assert!(
        says.contains("take what is in the fridge out earlier"),
        "{says}"
    );
    assert!(!sheet.note.contains("cold"), "{}", sheet.note);
    assert!(sheet.note.contains("Heat says when to take them out"));
    let all = work(&sheet).concat().join(" ");
    assert!(
        all.contains("Put Scald and Night dough into the mixer."),
        "{all}"
    );
}

/// A part has the name that was given to it: on its card, in the steps, on paper. Plain speech.
#[test]
fn steps_name_a_part_by_its_own_name() {
    for (id, sheet) in examples() {
        let steps = card(&sheet);
        for kind in [PartKind::Paste, PartKind::Preferment, PartKind::Wash] {
            let mut own = sheet.formula.parts.iter().filter(|part| part.kind == kind);
            let Some(own) = own.next() else { continue };
            let of_it = steps.iter().filter(|(name, _)| name.contains(&own.name));
            let least = if kind == PartKind::Wash { 1 } else { 3 };
            assert!(of_it.count() >= least, "{id:?} {}: {steps:?}", own.name);
        }
        for (name, _) in &steps {
            let lower = name.to_lowercase();
            assert!(
                !lower.contains("paste") && !lower.contains("preferment"),
                "{name}"
            );
        }
    }
    let (_, mut sheet) = examples().remove(0);
    let scald = StepAt {
        work: StepKind::Scald,
        of: 0,
    };
    assert_eq!(name::step_at(scald, &sheet.formula), "Make Scald");
    sheet.formula.parts[0].name.clear();
    assert_eq!(name::step_at(scald, &sheet.formula), "Scald the paste");
}

/// Common practice: a bake in phases is set by where the heat comes from, "top and bottom, then bottom".
#[test]
fn each_of_several_phases_is_named_by_its_heat() {
    let (_, mut sheet) = examples().remove(0);
    let bakes = |sheet: &Sheet| {
        let steps = card(sheet).into_iter().map(|(name, _)| name);
        steps
            .filter(|name| name.starts_with("Bake"))
            .collect::<Vec<_>>()
    };
    assert_eq!(bakes(&sheet), ["Bake"]);
    let mut second = sheet.heat.bake.phases[0];
    second.from = HeatFrom::Bottom;
    sheet.heat.bake.phases.push(second);
    assert_eq!(
        bakes(&sheet),
        ["Bake, top and bottom heat", "Bake, bottom heat"]
    );
}

/// One quantity has as many digits in a box as beside it. By definition.
#[test]
fn a_figure_has_the_same_digits_in_its_box() {
    for (_, sheet) in examples() {
        let figures = Figures::of(&sheet.formula, Form::AsWritten);
        for figure in Figure::ALL {
            let share = figures.share(figure).unwrap();
            let shown = format::share(share, british()).replace(',', "");
            let boxed = format::box_figure(share, british());
            if share.percent() >= 0.01 {
                assert_eq!(
                    shown.split('\u{A0}').next(),
                    Some(boxed.as_str()),
                    "{figure:?}"
                );
            }
        }
    }
    // 64.75 and more is 64.8 or 64.7 everywhere, never 64.75.
    let figures = Figures::of(&examples()[0].1.formula, Form::AsWritten);
    let water = figures.share(Figure::TrueWater).unwrap();
    let boxed = format::box_figure(water, british());
    assert_eq!(boxed.split_once('.').unwrap().1.len(), 1, "{boxed}");
}

/// The gap between a number and its unit is one no-break space in every row (SI brochure, 9th ed.,
/// 5.4.3), while decimal signs stand below each other.
#[test]
fn figures_in_a_column_have_the_same_gap_before_their_unit() {
    let cells = ["117 g", "0.3 g", "2.45 g", "–"].map(|cell| cell.replace(' ', "\u{A0}"));
    let written = format::in_line(&cells, british());
    let wide = |cell: &str| {
        let behind = cell
            .split_once('\u{A0}')
            .unwrap()
            .1
            .trim_end_matches('\u{2060}');
        let digits = cell
            .split_once('.')
            .map_or(0, |(_, rest)| rest.find('\u{A0}').unwrap() + 1);
        behind.chars().count() + digits
    };
    for (cell, given) in written.iter().zip(&cells) {
        assert!(cell.starts_with(given.as_str()), "{cell:?}");
    }
    let places: Vec<usize> = written[..3].iter().map(|cell| wide(cell)).collect();
    assert_eq!(places, [5, 5, 5].map(|_| places[0]), "{written:?}");
}

/// The texts of a catalogue, each with its translation.
fn catalogue(text: &str) -> Vec<(String, String)> {
    let joined = |lines: &str| -> String {
        let lines = lines.lines().map(str::trim);
        let quoted = lines.filter_map(|line| line.rsplit_once('"')?.0.split_once('"'));
        quoted.map(|(_, words)| words).collect()
    };
    let entries = text.split("\nmsgid ").skip(1);
    let entries = entries.filter_map(|entry| {
        let (english, rest) = entry.split_once("\nmsgstr ")?;
        let (translated, _) = rest.split_once("\n\n").unwrap_or((rest, ""));
        Some((joined(english), joined(translated)))
    });
    entries.collect()
}

/// "Mesa" is where bread is eaten, "mesa de trabajo" where dough is made; "tanda" is what is made at
/// once, "hornada" what the oven takes at once, "horneado" a bake. Common practice of bakers in Spain.
#[test]
fn spanish_has_one_word_for_bench_batch_load_and_bake() {
    let all = catalogue(include_str!("../../src/text/language/es.po"));
    assert!(all.len() > 2000, "{}", all.len());
    for (english, spanish) in all {
        let (said, asked) = (spanish.to_lowercase(), english.to_lowercase());
        let tables = said.matches("mesa").count() - said.matches("mesa de trabajo").count();
        assert!(
            tables == 0 || asked.contains("table"),
            "{english}: {spanish}"
        );
        if said.contains("hornada") {
            assert!(asked.contains("load"), "{english}: {spanish}");
        }
        if said.contains("tanda") {
            assert!(asked.contains("batch"), "{english}: {spanish}");
        }
    }
}
