//! Links: a formula opens as it was shared.

use crate::drawn::Draw;
use softcrumb::sheet::examples;
use softcrumb::storage::link;

#[test]
fn every_example_opens_from_its_link() {
    for (_, sheet) in examples() {
        let text = link::write(&sheet).unwrap();
        assert_eq!(link::read(&text), Ok(sheet));
    }
}

#[test]
fn drawn_sheets_open_from_their_links() {
    let mut draw = Draw(1);
    for _ in 0..crate::cases::cases(5_000) {
        let sheet = draw.sheet();
        let text = link::write(&sheet).unwrap();
        let ours = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == '_';
        assert!(text.chars().all(ours));
        assert_eq!(link::read(&text), Ok(sheet));
    }
}

#[test]
fn a_sheet_too_large_for_a_link_is_refused_and_not_cut() {
    let mut draw = Draw(2);
    let mut sheet = draw.sheet();
    // Two thousand letters without any pattern: no packing brings them under 6,000 bytes.
    let mut letter =
        |_| char::from_u32(0x2_0000 + u32::try_from(draw.below(0xa6d0)).unwrap()).unwrap();
    sheet.note = (0..2_000).map(&mut letter).collect();
    sheet.name = (0..80).map(&mut letter).collect();
    for part in &mut sheet.formula.parts {
        part.name = (0..60).map(&mut letter).collect();
    }
    let error = link::write(&sheet).unwrap_err();
    assert!(
        matches!(
            error,
            link::LinkError::TooLong {
                most: link::LONGEST,
                ..
            }
        ),
        "{error}"
    );
}

/// Source of the checksum's check value: Ross Williams, "A painless guide to CRC error detection
/// algorithms" (1993), CRC-32 of "123456789" is CBF43926; the seal uses that same algorithm.
#[test]
fn the_seal_is_the_crc_32_it_says_it_is() {
    use base64::Engine;
    let crc = crc::Crc::<u32>::new(&crc::CRC_32_ISO_HDLC);
    assert_eq!(crc.checksum(b"123456789"), 0xcbf4_3926);
    let text = link::write(&examples()[0].1).unwrap();
    let bytes = base64::engine::general_purpose::URL_SAFE_NO_PAD
        .decode(text)
        .unwrap();
    let (sealed, check) = bytes.split_at(bytes.len() - 4);
    assert_eq!(crc.checksum(sealed).to_le_bytes(), check);
    assert!((1..=link::VERSION).contains(&sealed[0]));
}
