//! Tins in records: by themselves with their names, and in a batch.

use std::num::NonZeroU16;

use crate::engine::quantity::{Length, SpecificVolume};
use crate::engine::tin::{Across, Tin, TinShape, Tins};
use crate::sheet::{SavedTin, TinUse, plain};

use super::batch::count;
use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::{RecordError, RecordFault};
use super::fields::{Fields, factor, list, number, short, truth, word};
use super::print::Writer;
use super::tree::Tree;

const KIND: &str = "tins";

#[derive(Clone, Copy, PartialEq)]
enum Shape {
    Rectangle,
    Round,
    Ring,
    Muffin,
    Tray,
}

const SHAPES: &[(Shape, &str)] = &[
    (Shape::Rectangle, "rectangle"),
    (Shape::Round, "round"),
    (Shape::Ring, "ring"),
    (Shape::Muffin, "muffin"),
    (Shape::Tray, "tray"),
];

const TIN: [&str; 12] = [
    "name",
    "shape",
    "lidded",
    "top_long_m",
    "top_wide_m",
    "bottom_long_m",
    "bottom_wide_m",
    "top_m",
    "bottom_m",
    "tube_m",
    "deep_m",
    "cups",
];
const USE: [&str; 5] = ["tin", "count", "rows", "room_cm3_per_g", "rise"];

/// Writes the user's tins down as JSON.
#[must_use]
pub fn write_tins(tins: &[SavedTin]) -> String {
    list_of(tins, begin(KIND)).done().to_string()
}

pub(super) fn list_of<'t>(tins: &'t [SavedTin], begun: Writer<'t>) -> Writer<'t> {
    let kept = tins.iter().take(SavedTin::MOST).map(|saved| {
        let name = plain::name(&saved.name, SavedTin::NAME_LENGTH);
        write_tin(&saved.tin, Writer::new().text("name", name))
    });
    begun.list("tins", kept)
}

/// Reads the user's tins from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_tins(text: &str) -> Result<Vec<SavedTin>, RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    let fields = fields(&tree, KIND, &["tins"])?;
    fields.needed("tins", read_list)
}

pub(super) fn read_list(tree: &Tree) -> Result<Vec<SavedTin>, RecordError> {
    list(tree, SavedTin::MOST, read_saved)
}

fn read_saved(tree: &Tree) -> Result<SavedTin, RecordError> {
    let fields = Fields::of(tree, &TIN)?;
    let name = |tree: &Tree| short(tree, SavedTin::NAME_LENGTH, plain::name);
    Ok(SavedTin {
        name: fields.maybe("name", name)?.unwrap_or_default(),
        tin: read_tin(&fields)?,
    })
}

fn write_tin<'t>(tin: &Tin, begun: Writer<'t>) -> Tree<'t> {
    let of = |shape: &'static str| {
        begun
            .text("shape", shape)
            .tree("lidded", Tree::Truth(tin.lidded))
    };
    match tin.shape {
        TinShape::Rectangle { top, bottom, deep } => of("rectangle")
            .number("top_long_m", top.long.metres())
            .number("top_wide_m", top.wide.metres())
            .number("bottom_long_m", bottom.long.metres())
            .number("bottom_wide_m", bottom.wide.metres())
            .number("deep_m", deep.metres()),
        TinShape::Round { top, bottom, deep } => round(of("round"), top, bottom, deep),
        TinShape::Ring {
            top,
            bottom,
            tube,
            deep,
        } => round(of("ring"), top, bottom, deep).number("tube_m", tube.metres()),
        TinShape::Muffin {
            top,
            bottom,
            deep,
            cups,
        } => round(of("muffin"), top, bottom, deep).number("cups", cups.get()),
        TinShape::Tray { across } => of("tray")
            .number("bottom_long_m", across.long.metres())
            .number("bottom_wide_m", across.wide.metres()),
    }
    .done()
}

fn round(begun: Writer, top: Length, bottom: Length, deep: Length) -> Writer {
    begun
        .number("top_m", top.metres())
        .number("bottom_m", bottom.metres())
        .number("deep_m", deep.metres())
}

fn read_tin(fields: &Fields) -> Result<Tin, RecordError> {
    let of = |key| fields.needed(key, length);
    let side = |long, wide| {
        Ok::<_, RecordError>(Across {
            long: of(long)?,
            wide: of(wide)?,
        })
    };
    let shape = match fields.needed("shape", |tree| word(tree, SHAPES))? {
        Shape::Rectangle => TinShape::Rectangle {
            top: side("top_long_m", "top_wide_m")?,
            bottom: side("bottom_long_m", "bottom_wide_m")?,
            deep: of("deep_m")?,
        },
        Shape::Round => TinShape::Round {
            top: of("top_m")?,
            bottom: of("bottom_m")?,
            deep: of("deep_m")?,
        },
        Shape::Ring => TinShape::Ring {
            top: of("top_m")?,
            bottom: of("bottom_m")?,
            tube: of("tube_m")?,
            deep: of("deep_m")?,
        },
        Shape::Muffin => TinShape::Muffin {
            top: of("top_m")?,
            bottom: of("bottom_m")?,
            deep: of("deep_m")?,
            cups: fields.needed("cups", count)?,
        },
        Shape::Tray => TinShape::Tray {
            across: side("bottom_long_m", "bottom_wide_m")?,
        },
    };
    let lidded = fields.maybe("lidded", truth)?.unwrap_or(false);
    let tin = Tin::open(shape).map_err(|_| RecordFault::NoRoom)?;
    Ok(tin.with_lid(lidded))
}

pub(super) fn write_use(used: &TinUse) -> Tree<'static> {
    Writer::new()
        .tree("tin", write_tin(&used.tins.tin, Writer::new()))
        .number("count", used.tins.count.get())
        .maybe("rows", used.rows.map(|rows| f64::from(rows.get())))
        .maybe(
            "room_cm3_per_g",
            used.room.map(SpecificVolume::cubic_centimetres_per_gram),
        )
        .number("rise", used.rise.number())
        .done()
}

pub(super) fn read_use(tree: &Tree) -> Result<TinUse, RecordError> {
    let fields = Fields::of(tree, &USE)?;
    let tin = fields.needed("tin", |tree| read_tin(&Fields::of(tree, &TIN)?))?;
    let usual = TinUse::of(tin);
    let counted = fields.maybe("count", count)?;
    Ok(TinUse {
        tins: Tins {
            tin,
            count: counted.unwrap_or(NonZeroU16::MIN),
        },
        rows: fields.maybe("rows", count)?,
        room: fields.maybe("room_cm3_per_g", |tree| {
            Ok(SpecificVolume::from_cubic_centimetres_per_gram(number(
                tree,
            )?)?)
        })?,
        rise: fields.maybe("rise", factor)?.unwrap_or(usual.rise),
    })
}

fn length(tree: &Tree) -> Result<Length, RecordError> {
    Ok(Length::from_metres(number(tree)?)?)
}
