//! Links that were cut, changed, forged or come from a later release: an error every time.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;

use crate::drawn::Draw;
use softcrumb::sheet::{Sheet, examples};
use softcrumb::storage::link::{self, LinkError};

/// Every single-bit flip of every character, those that leave no text left out.
fn flips(text: &str) -> impl Iterator<Item = String> {
    let bytes = text.as_bytes().to_vec();
    (0..bytes.len() * 8).filter_map(move |bit| {
        let mut flipped = bytes.clone();
        flipped[bit / 8] ^= 1 << (bit % 8);
        String::from_utf8(flipped).ok()
    })
}

fn is_refused_in_every_state(sheet: &Sheet) -> usize {
    let text = link::write(sheet).unwrap();
    let mut tried = 0;
    for flipped in flips(&text) {
        assert!(link::read(&flipped).is_err(), "opened: {flipped}");
        tried += 1;
    }
    for end in 0..text.len() {
        assert!(
            link::read(&text[..end]).is_err(),
            "opened: {}",
            &text[..end]
        );
        assert!(
            link::read(&text[end + 1..]).is_err(),
            "opened: {}",
            &text[end + 1..]
        );
        tried += 2;
    }
    tried
}

#[test]
fn every_flipped_bit_and_every_cut_of_the_examples_is_refused() {
    let tried: usize = examples()
        .iter()
        .map(|(_, sheet)| is_refused_in_every_state(sheet))
        .sum();
    assert!(tried > 5_000);
}

#[test]
fn every_flipped_bit_and_every_cut_of_drawn_sheets_is_refused() {
    let mut draw = Draw(3);
    let sheets = usize::try_from(crate::cases::cases(300)).unwrap();
    let tried: usize = (0..sheets)
        .map(|_| is_refused_in_every_state(&draw.sheet()))
        .sum();
    assert!(tried > sheets * 1_500, "{tried} of {sheets} sheets");
}

#[test]
fn letters_added_swapped_or_doubled_are_refused() {
    let text = link::write(&examples()[0].1).unwrap();
    let letters: Vec<char> = text.chars().collect();
    for at in 0..letters.len() - 1 {
        let mut doubled = letters.clone();
        doubled.insert(at, letters[at]);
        assert!(link::read(&doubled.iter().collect::<String>()).is_err());
        if letters[at] != letters[at + 1] {
            let mut swapped = letters.clone();
            swapped.swap(at, at + 1);
            assert!(link::read(&swapped.iter().collect::<String>()).is_err());
        }
    }
    for tail in ["A", "=", "==", "AAAA"] {
        assert!(link::read(&format!("{text}{tail}")).is_err(), "{tail:?}");
    }
}

/// What ends a sentence or wraps a link in a message is no part of it (RFC 3986, appendix C: such
/// delimiters and line breaks are to be left out).
#[test]
fn what_a_message_puts_behind_a_link_or_into_it_is_forgiven() {
    let sheet = &examples()[0].1;
    let text = link::write(sheet).unwrap();
    for tail in [
        ".",
        " ",
        "\n",
        "%20",
        ")",
        ").",
        "\"",
        "%22",
        "”",
        "%E2%80%9D",
        "。",
    ] {
        let read = link::read(&format!("{text}{tail}"));
        assert_eq!(read.as_ref(), Ok(sheet), "{tail:?}");
    }
    let (head, rest) = text.split_at(70);
    for broken in ["\n", "\r\n", "%0A", "%0D%0A"] {
        let read = link::read(&format!("{head}{broken}{rest}"));
        assert_eq!(read.as_ref(), Ok(sheet), "{broken:?}");
    }
}

/// The unused low bits of a last character: other spellings of the same bytes are refused.
#[test]
fn a_last_letter_with_stray_bits_is_refused() {
    let alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
    let mut draw = Draw(4);
    for _ in 0..50 {
        let text = link::write(&draw.sheet()).unwrap();
        let (head, last) = text.split_at(text.len() - 1);
        for other in alphabet.chars().filter(|c| !last.starts_with(*c)) {
            assert!(link::read(&format!("{head}{other}")).is_err());
        }
    }
}

/// Seals any bytes as a forger would.
fn forged(version: u8, form: u8, body: &[u8]) -> String {
    let [low, high] = u16::try_from(body.len()).unwrap().to_le_bytes();
    let mut bytes = vec![version, form, low, high];
    bytes.extend_from_slice(body);
    let check = crc::Crc::<u32>::new(&crc::CRC_32_ISO_HDLC).checksum(&bytes);
    bytes.extend_from_slice(&check.to_le_bytes());
    URL_SAFE_NO_PAD.encode(bytes)
}

#[test]
fn a_later_release_is_named_and_version_nought_is_refused() {
    let version = link::VERSION + 1;
    assert_eq!(
        link::read(&forged(version, 0, b"whatever")),
        Err(LinkError::Newer { version })
    );
    assert_eq!(
        link::read(&forged(0, 0, b"whatever")),
        Err(LinkError::Damaged)
    );
}

#[test]
fn what_is_no_link_says_so() {
    assert_eq!(link::read(""), Err(LinkError::Empty));
    assert_eq!(link::read("a b"), Err(LinkError::NotALink));
    assert_eq!(link::read("<script>"), Err(LinkError::NotALink));
    assert_eq!(link::read("hello"), Err(LinkError::Damaged));
    let long = "A".repeat(link::LONGEST + 1);
    let too_long = LinkError::TooLong {
        characters: long.len(),
        most: link::LONGEST,
    };
    assert_eq!(link::read(&long), Err(too_long));
}

#[test]
fn a_forged_body_never_opens_as_more_than_it_may_be() {
    // Deflate at its best packs a thousand to one: this would unpack to far more than the limit.
    let zeros = vec![0; 4_000_000];
    let bomb = miniz_oxide::deflate::compress_to_vec(&zeros, 9);
    assert_eq!(link::read(&forged(1, 1, &bomb)), Err(LinkError::Damaged));
    assert_eq!(
        link::read(&forged(1, 7, b"whatever")),
        Err(LinkError::Damaged)
    );
    // A list whose length says four thousand million items, and that holds none.
    assert_eq!(
        link::read(&forged(1, 0, &[0, 0, 255, 255, 255, 255, 15])),
        Err(LinkError::Damaged)
    );
}

#[test]
fn forged_bytes_are_refused_or_open_as_a_sheet_that_links_again() {
    let mut draw = Draw(5);
    let mut opened = 0;
    let tried = crate::cases::cases(20_000);
    for _ in 0..tried {
        let text = link::write(&draw.sheet()).unwrap();
        let bytes = URL_SAFE_NO_PAD.decode(text).unwrap();
        let mut body = bytes[4..bytes.len() - 4].to_vec();
        let form = bytes[1];
        for _ in 0..=draw.below(3) {
            let at = usize::try_from(draw.below(body.len() as u64)).unwrap();
            body[at] = u8::try_from(draw.below(256)).unwrap();
        }
        if let Ok(sheet) = link::read(&forged(1, form, &body)) {
            opened += 1;
            let again = link::read(&link::write(&sheet).unwrap());
            assert_eq!(again, Ok(sheet));
        }
    }
    assert!(opened > tried / 200, "{opened} of {tried} are sheets");
}
