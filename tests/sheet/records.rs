//! Records are read as they were written, to the last bit.

use crate::drawn::Draw;
use crate::written::write_file;
use softcrumb::engine::quantity::Mass;
use softcrumb::sheet::Sheet;
use softcrumb::sheet::{
    Id, Kitchen, Kitchens, Language, Moment, Scales, Settings, Theme, UnitSystem, Workspace,
    examples,
};
use softcrumb::storage::record::{FormulaFile, FormulaInFile, Record, is_newer};

#[test]
fn every_example_comes_back_and_says_what_it_is_first() {
    for (_, sheet) in examples() {
        let text = sheet.write();
        assert!(
            text.starts_with(r#"{"softcrumb":"formula","version":1,"#),
            "{text}"
        );
        assert_eq!(Sheet::read(&text), Ok(sheet));
    }
}

#[test]
fn drawn_sheets_come_back() {
    let mut draw = Draw(7);
    for _ in 0..crate::cases::cases(5_000) {
        let sheet = draw.sheet();
        assert_eq!(Sheet::read(&sheet.write()), Ok(sheet));
    }
}

#[test]
fn every_weight_comes_back_to_the_last_bit() {
    let mut draw = Draw(8);
    let mut sheet = examples().remove(0).1;
    for _ in 0..crate::cases::cases(20_000) {
        let mass = draw.mass();
        sheet.formula.parts[0].lines[0].mass = mass;
        let back = Sheet::read(&sheet.write()).unwrap();
        let back = back.formula.parts[0].lines[0].mass;
        assert_eq!(back.grams().to_bits(), mass.grams().to_bits());
    }
}

#[test]
fn a_byte_order_mark_and_spaces_between_do_no_harm() {
    let sheet = examples().remove(1).1;
    let text = sheet.write().replace(",\"", " ,\r\n\t\"");
    assert_eq!(Sheet::read(&format!("\u{feff}{text}\n")), Ok(sheet));
}

#[test]
fn kitchen_and_settings_come_back() {
    let grams = |g| Mass::from_grams(g).unwrap();
    for scales in [
        Scales {
            main: grams(1.0),
            pocket: None,
        },
        Scales {
            main: grams(5.0),
            pocket: Some(grams(0.01)),
        },
    ] {
        let kitchen = Kitchen {
            scales,
            ..Kitchen::default()
        };
        assert_eq!(Kitchen::read(&kitchen.write()), Ok(kitchen));
    }
    for units in [UnitSystem::Grams, UnitSystem::Ounces] {
        for theme in [Theme::Device, Theme::Light, Theme::Dark] {
            for language in [
                None,
                Some(Language::English),
                Some(Language::Spanish),
                Some(Language::Japanese),
            ] {
                let settings = Settings {
                    units,
                    theme,
                    language,
                };
                assert_eq!(Settings::read(&settings.write()), Ok(settings));
            }
        }
    }
}

#[test]
fn a_file_of_all_formulas_loses_nothing() {
    let mut draw = Draw(9);
    let moment = |ms| Moment::from_milliseconds(ms).unwrap();
    let filed: Vec<FormulaInFile> = (0..200)
        .map(|at| FormulaInFile {
            id: (at % 7 > 0).then(|| Id::from_random(draw.bits())),
            changed: (at % 5 > 0).then(|| moment(1.7e12 + f64::from(at))),
            binned: (at % 3 == 0).then(|| moment(1.8e12)),
            sheet: draw.sheet(),
        })
        .collect();
    let beside = Workspace {
        kitchens: Some(Kitchens::default()),
        ..Workspace::default()
    };
    let opened = FormulaFile::read(&write_file(&filed, &beside)).unwrap();
    assert_eq!(opened.formulas, filed);
    assert_eq!(opened.beside, beside);
    assert_eq!(opened.refused, []);
}

#[test]
fn the_record_of_one_formula_is_a_file_too() {
    let sheet = examples().remove(2).1;
    let opened = FormulaFile::read(&sheet.write()).unwrap();
    assert_eq!(opened.formulas.len(), 1);
    assert_eq!(opened.formulas[0].sheet, sheet);
}

#[test]
fn one_spoilt_formula_does_not_keep_the_others_shut() {
    let one = |(id, sheet)| FormulaInFile {
        id: Some(id),
        changed: None,
        binned: None,
        sheet,
    };
    let filed: Vec<FormulaInFile> = examples().into_iter().map(one).collect();
    let text =
        write_file(&filed, &Workspace::default()).replacen("\"mass_g\":430", "\"mass_g\":-430", 1);
    let opened = FormulaFile::read(&text).unwrap();
    assert_eq!(opened.formulas.len(), 3);
    assert_eq!(opened.refused.len(), 1);
    assert_eq!(
        opened.refused[0].path,
        "formulas[1].sheet.formula.streams[0].lines[0].mass_g"
    );
}

#[test]
fn a_record_of_a_newer_release_is_known_by_its_beginning() {
    let newer = |text: &str| text.replacen("\"version\":1", "\"version\":2", 1);
    let written = examples().remove(0).1.write();
    let compare = is_newer;
    let is_newer = |kept: &str| is_newer(kept, &written);
    for kept in [
        include_str!("samples/v1.formula.json"),
        include_str!("samples/v1.settings.json"),
        include_str!("samples/v1.shelf.json"),
    ] {
        assert!(!is_newer(kept));
        assert!(is_newer(&newer(kept)));
        assert!(!compare(&newer(kept), "lanternloaf"));
        assert!(is_newer(&newer(kept).replacen(':', " : ", 2)));
    }
    for text in ["", "rubbish", "{}", "{\"version\":\"9\"}", "{\"version\":}"] {
        assert!(!is_newer(text), "{text}");
    }
    // Inside a note the word means nothing: kind and version come first.
    let note = format!("{{\"note\":\"{}\\\"version\\\":9\"}}", "x".repeat(300));
    assert!(!is_newer(&note));
}
