//! A release that does not exist yet: links hold one optional field more, and an enum a variant
//! more. Every link that was ever written opens there as what it is.

use serde::{Deserialize, Serialize};

use super::number::Short;
use super::packed::Packed;
use super::tagged::tagged;
use super::{LAYOUTS, Layout, LinkError, VERSION, frame, read, read_by, unpack, whole};
use crate::engine::heat::BakedShape;
use crate::sheet::{BakeLength, KnownBake, Sheet};

/// The third version: here the first, and after it a field that may be left out.
#[derive(Deserialize, Serialize)]
struct Third {
    first: Packed,
    hydration: Option<Short>,
}

/// What that release makes of a link.
type Found = (Sheet, Option<Short>);

fn third(body: &[u8]) -> Result<Found, LinkError> {
    let Third { first, hydration } = whole(body)?;
    Ok((unpack::sheet(first)?, hydration))
}

fn second(body: &[u8]) -> Result<Found, LinkError> {
    Ok((super::second(body)?, None))
}

fn first(body: &[u8]) -> Result<Found, LinkError> {
    Ok((super::first(body)?, None))
}

const NEXT: [Layout<Found>; 3] = [first, second, third];

const FROZEN: [&str; 4] = [
    include_str!("../../../tests/sheet/samples/v1.links.txt"),
    include_str!("../../../tests/sheet/samples/v1.examples.links.txt"),
    include_str!("../../../tests/sheet/samples/v1.full.links.txt"),
    include_str!("../../../tests/sheet/samples/v1.drawn.links.txt"),
];

#[test]
fn every_frozen_link_opens_in_a_release_with_one_field_more() {
    let mut opened = 0;
    for link in FROZEN.iter().flat_map(|links| links.lines()) {
        let sheet = read(link).unwrap();
        assert_eq!(read_by(link, &NEXT), Ok((sheet, None)));
        opened += 1;
    }
    assert_eq!(opened, 67);
}

#[test]
fn a_link_with_the_field_opens_there_and_is_newer_here() {
    for link in FROZEN.iter().flat_map(|links| links.lines()) {
        let sheet = read(link).unwrap();
        for hydration in [None, Some(Short::of(0.675))] {
            let body = postcard::to_allocvec(&Third {
                first: Packed::of(&sheet),
                hydration,
            });
            // The longest of the frozen links has no room for more; as it is, it stays short
            // enough.
            let text = frame::spelt(3, &body.unwrap());
            assert_eq!(read_by(&text, &NEXT), Ok((sheet.clone(), hydration)));
            assert_eq!(read(&text), Err(LinkError::Newer { version: 3 }));
        }
    }
}

/// The frozen links hold nothing that came later: each is written in its first version again.
#[test]
fn what_came_later_is_read_as_it_was_written() {
    for link in FROZEN.iter().flat_map(|links| links.lines()) {
        let mut sheet = read(link).unwrap();
        assert_eq!(super::write(&sheet).as_deref(), Ok(link));
        sheet.heat.bake.length = BakeLength::Programme;
        for shape in BakedShape::ALL {
            // The very figures of the former default are kept too, once the shape is told.
            sheet.heat.bake.known = Some(KnownBake {
                shape: Some(shape),
                ..KnownBake::FORMER
            });
            let body = super::body(&sheet).unwrap();
            assert_eq!(body.0, VERSION);
            assert_eq!(super::second(&body.1).as_ref(), Ok(&sheet));
        }
    }
}

#[test]
fn this_release_writes_the_last_of_its_layouts() {
    assert_eq!(LAYOUTS.len(), usize::from(VERSION));
}

tagged! {
    #[derive(Debug, PartialEq)]
    enum Today {
        0 => One(value: u8),
        1 => Two(value: u16),
    }
}

tagged! {
    #[derive(Debug, PartialEq)]
    enum Tomorrow {
        2 => New(value: u8, other: Short),
        1 => Two(value: u16),
        0 => One(value: u8),
    }
}

/// As serde's own derive writes it, which is how the first releases wrote.
#[derive(Serialize)]
enum Derived {
    One(u8),
    Two(u16),
}

#[test]
fn a_variant_more_changes_no_number_that_was_written() {
    let bytes = |value: &Derived| postcard::to_allocvec(value).unwrap();
    for (written, today, tomorrow) in [
        (bytes(&Derived::One(7)), Today::One(7), Tomorrow::One(7)),
        (
            bytes(&Derived::Two(700)),
            Today::Two(700),
            Tomorrow::Two(700),
        ),
    ] {
        assert_eq!(postcard::to_allocvec(&today).unwrap(), written);
        assert_eq!(postcard::to_allocvec(&tomorrow).unwrap(), written);
        assert_eq!(whole::<Today>(&written).unwrap(), today);
        assert_eq!(whole::<Tomorrow>(&written).unwrap(), tomorrow);
    }
    let new = postcard::to_allocvec(&Tomorrow::New(1, Short::of(2.5))).unwrap();
    assert!(whole::<Today>(&new).is_err());
    assert_eq!(
        whole::<Tomorrow>(&new),
        Ok(Tomorrow::New(1, Short::of(2.5)))
    );
}
