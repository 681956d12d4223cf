//! The batch in a record: what is wanted, what is lost.

use std::num::NonZeroU16;

use crate::engine::batch::{BatchTarget, Losses};
use crate::engine::formula::{Formula, LineAt};
use crate::sheet::formula_sheet::Batch;

use super::error::RecordError;
use super::fields::{Fields, factor, mass, share, temperature, whole, word};
use super::print::Writer;
use super::tin;
use super::tree::Tree;

/// What can be wanted, by the word it is kept under.
#[derive(Clone, Copy, PartialEq)]
enum Way {
    Times,
    Dough,
    Pieces,
    Flour,
    OnHand,
    Class,
}

const WAYS: &[(Way, &str)] = &[
    (Way::Times, "times"),
    (Way::Dough, "dough"),
    (Way::Pieces, "pieces"),
    (Way::Flour, "flour_on_hand"),
    (Way::OnHand, "on_hand"),
    (Way::Class, "class"),
];

const WANTED: &[&str] = &[
    "by", "times", "dough_g", "count", "each_g", "flour_g", "stream", "line", "mass_g", "students",
    "loaves", "loaf_g",
];

pub(super) fn write(batch: &Batch) -> Tree<'static> {
    let losses = &batch.losses;
    let lost = Writer::new()
        .number("residue_g", losses.residue.grams())
        .number("residue_share", losses.residue_share.fraction())
        .number("dividing_share", losses.dividing.fraction())
        .number("bake_share", losses.bake.fraction())
        .number("topping_share", losses.topping.fraction());
    Writer::new()
        .tree("wanted", write_wanted(batch.wanted))
        .tree("losses", lost.done())
        .number("pieces", batch.pieces.get())
        .number("syrup_at_c", batch.syrup_at.celsius())
        .maybe_tree("tin", batch.tin.as_ref().map(tin::write_use))
        .done()
}

fn write_wanted(wanted: BatchTarget) -> Tree<'static> {
    let by = |word| Writer::new().text("by", word);
    match wanted {
        BatchTarget::Times(factor) => by("times").number("times", factor.number()),
        BatchTarget::Dough(mass) => by("dough").number("dough_g", mass.grams()),
        BatchTarget::Pieces { count, each } => by("pieces")
            .number("count", count.get())
            .number("each_g", each.grams()),
        BatchTarget::FlourOnHand(mass) => by("flour_on_hand").number("flour_g", mass.grams()),
        BatchTarget::OnHand { at, mass } => by("on_hand")
            .number("stream", place(at.part))
            .number("line", place(at.line))
            .number("mass_g", mass.grams()),
        BatchTarget::Class {
            students,
            loaves,
            loaf,
        } => by("class")
            .number("students", students.get())
            .number("loaves", loaves.get())
            .number("loaf_g", loaf.grams()),
    }
    .done()
}

pub(super) fn read(tree: &Tree) -> Result<Batch, RecordError> {
    let fields = Fields::of(tree, &["wanted", "losses", "pieces", "syrup_at_c", "tin"])?;
    Ok(Batch {
        wanted: fields.needed("wanted", read_wanted)?,
        losses: fields.needed("losses", read_losses)?,
        pieces: fields.needed("pieces", count)?,
        syrup_at: fields.needed("syrup_at_c", temperature)?,
        tin: fields.maybe("tin", tin::read_use)?,
    })
}

fn read_losses(tree: &Tree) -> Result<Losses, RecordError> {
    let known = &[
        "residue_g",
        "residue_share",
        "dividing_share",
        "bake_share",
        "topping_share",
    ];
    let fields = Fields::of(tree, known)?;
    Ok(Losses {
        residue: fields.maybe("residue_g", mass)?.unwrap_or_default(),
        residue_share: fields.maybe("residue_share", share)?.unwrap_or_default(),
        dividing: fields.maybe("dividing_share", share)?.unwrap_or_default(),
        bake: fields.maybe("bake_share", share)?.unwrap_or_default(),
        topping: fields.maybe("topping_share", share)?.unwrap_or_default(),
    })
}

fn read_wanted(tree: &Tree) -> Result<BatchTarget, RecordError> {
    let fields = Fields::of(tree, WANTED)?;
    Ok(match fields.needed("by", |tree| word(tree, WAYS))? {
        Way::Times => BatchTarget::Times(fields.needed("times", factor)?),
        Way::Dough => BatchTarget::Dough(fields.needed("dough_g", mass)?),
        Way::Pieces => BatchTarget::Pieces {
            count: fields.needed("count", count)?,
            each: fields.needed("each_g", mass)?,
        },
        Way::Flour => BatchTarget::FlourOnHand(fields.needed("flour_g", mass)?),
        Way::OnHand => BatchTarget::OnHand {
            at: LineAt {
                part: fields.needed("stream", |tree| index(tree, Formula::MOST_PARTS))?,
                line: fields.needed("line", |tree| index(tree, Formula::MOST_LINES))?,
            },
            mass: fields.needed("mass_g", mass)?,
        },
        Way::Class => BatchTarget::Class {
            students: fields.needed("students", count)?,
            loaves: fields.needed("loaves", count)?,
            loaf: fields.needed("loaf_g", mass)?,
        },
    })
}

/// One or more, up to what sixteen bits hold.
pub(super) fn count(tree: &Tree) -> Result<NonZeroU16, RecordError> {
    let count = whole(tree, 1, u32::from(u16::MAX))?;
    Ok(u16::try_from(count)
        .ok()
        .and_then(NonZeroU16::new)
        .unwrap_or(NonZeroU16::MIN))
}

/// A place in a list that may have up to `most` items.
fn index(tree: &Tree, most: usize) -> Result<usize, RecordError> {
    let most = u32::try_from(most).unwrap_or(u32::MAX).saturating_sub(1);
    Ok(usize::try_from(whole(tree, 0, most)?).unwrap_or(usize::MAX))
}

fn place(at: usize) -> u32 {
    u32::try_from(at).unwrap_or(u32::MAX)
}
