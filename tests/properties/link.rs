//! Links, records and addresses: any text at all is answered, and what opens says the same again.

use std::num::NonZeroU16;

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use proptest::prelude::*;
use softcrumb::engine::batch::{BatchTarget, Losses};
use softcrumb::engine::formula::{Bread, Formula};
use softcrumb::engine::quantity::{Factor, Share, Temperature};
use softcrumb::sheet::{Batch, HeatSettings, Id, Kitchen, Settings, Sheet, Shelf, plain};
use softcrumb::storage::record::{FormulaFile, Record};
use softcrumb::storage::{Fragment, key, link};

use super::dough::{cases, likely};

fn sheet_of(formula: Formula, times: f64, lost: f64, pieces: u16) -> Sheet {
    Sheet {
        name: "Generated".to_owned(),
        bread: Bread::Rye,
        formula,
        batch: Batch {
            wanted: BatchTarget::Times(Factor::from_number(times).unwrap()),
            losses: Losses {
                bake: Share::from_fraction(lost).unwrap(),
                ..Losses::default()
            },
            pieces: NonZeroU16::new(pieces).unwrap(),
            syrup_at: Temperature::from_celsius(lost * 100.0).unwrap(),
            tin: None,
        },
        heat: HeatSettings::default(),
        note: String::new(),
    }
}

/// A link of these bytes, its length and checksum as they should be.
fn sealed(version: u8, form: u8, body: &[u8]) -> String {
    let [low, high] = u16::try_from(body.len()).unwrap().to_le_bytes();
    let mut bytes = vec![version, form, low, high];
    bytes.extend_from_slice(body);
    let check = crc::Crc::<u32>::new(&crc::CRC_32_ISO_HDLC).checksum(&bytes);
    bytes.extend_from_slice(&check.to_le_bytes());
    URL_SAFE_NO_PAD.encode(bytes)
}

proptest! {
    #![proptest_config(cases(crate::cases::cases(3_000)))]

    #[test]
    fn generated_doughs_open_from_link_and_record(
        formula in likely(),
        times in 1e-6..1e6f64,
        lost in 0.0..1.0f64,
        pieces in 1..=u16::MAX,
    ) {
        let sheet = sheet_of(formula, times, lost, pieces);
        let text = link::write(&sheet).unwrap();
        prop_assert_eq!(link::read(&text), Ok(sheet.clone()));
        prop_assert_eq!(Sheet::read(&sheet.write()), Ok(sheet));
    }

    #[test]
    fn two_flipped_bits_of_a_link_never_open_another_formula(
        formula in likely(),
        one in (any::<prop::sample::Index>(), 0..7u32),
        other in (any::<prop::sample::Index>(), 0..7u32),
    ) {
        let sheet = sheet_of(formula, 1.0, 0.1, 8);
        let text = link::write(&sheet).unwrap();
        let mut bytes = text.clone().into_bytes();
        for (at, bit) in [one, other] {
            let at = at.index(bytes.len());
            bytes[at] ^= 1 << bit;
        }
        let flipped = String::from_utf8(bytes).unwrap();
        prop_assert!(flipped == text || link::read(&flipped).is_err());
    }

    #[test]
    fn a_link_of_any_sealed_bytes_is_answered(
        version in 0..4u8,
        form in 0..3u8,
        body in prop::collection::vec(any::<u8>(), 0..300),
    ) {
        if let Ok(sheet) = link::read(&sealed(version, form, &body)) {
            prop_assert!((1..=link::VERSION).contains(&version));
            prop_assert_eq!(link::read(&link::write(&sheet).unwrap()), Ok(sheet));
        }
    }

    #[test]
    fn any_text_is_answered_by_every_reader(text in any::<String>()) {
        prop_assert!(link::read(&text).is_err());
        prop_assert!(Sheet::read(&text).is_err());
        prop_assert!(Kitchen::read(&text).is_err());
        prop_assert!(Settings::read(&text).is_err());
        prop_assert!(Shelf::read(&text).is_err());
        prop_assert!(FormulaFile::read(&text).is_err());
        prop_assert_eq!(key::formula_of(&text), None);
        let again = Fragment::read(&Fragment::read(&text).write());
        let unknown_is_dropped = [Fragment::Empty, Fragment::read(&text)];
        prop_assert!(unknown_is_dropped.contains(&again));
    }

    #[test]
    fn any_json_is_answered(text in r#"[\[\]{}:,"a-z0-9eE+.\\ -]{0,120}"#) {
        prop_assert!(Sheet::read(&text).is_err());
        prop_assert!(FormulaFile::read(&text).is_err());
    }

    #[test]
    fn a_plain_name_is_plain_already(text in any::<String>(), most in 0..100usize) {
        let once = plain::name(&text, most);
        prop_assert!(once.chars().count() <= most);
        prop_assert!(!once.chars().any(char::is_control));
        prop_assert_eq!(plain::name(&once, most), once);
        let note = plain::note(&text, most);
        prop_assert_eq!(plain::note(&note, most), note);
    }

    #[test]
    fn every_id_made_is_an_id(bits in any::<u64>()) {
        let id = Id::from_random(bits);
        prop_assert_eq!(Id::from_text(id.as_text()), Some(id));
    }
}
