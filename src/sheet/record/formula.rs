//! The formula in a record: parts, lines, ingredients.

use crate::engine::formula::{Formula, Line, Part};
use crate::engine::ingredients::{Food, Listed};
use crate::engine::quantity::{Mass, Temperature};
use crate::sheet::enum_names::{PARTS, spelt};
use crate::sheet::formula_sheet::Sheet;
use crate::sheet::plain;

use super::error::{RecordError, RecordFault};
use super::fields::{Fields, list, mass, short, temperature, truth, whole, word};
use super::own;
use super::print::Writer;
use super::tree::Tree;

const LINE: &[&str] = &[
    "ingredient",
    "name",
    "own",
    "mass_g",
    "counts_as_flour",
    "poured_g",
    "at_c",
];

pub(super) fn write(formula: &Formula) -> Tree<'_> {
    Writer::new()
        .list("streams", formula.parts.iter().map(write_part))
        .done()
}

fn write_part(part: &Part) -> Tree<'_> {
    let steam = (part.steam > Mass::ZERO).then(|| part.steam.grams());
    Writer::new()
        .text("kind", spelt(part.kind, PARTS))
        .text("name", plain::name(&part.name, Sheet::PART_NAME_LENGTH))
        .maybe("steam_g", steam)
        .maybe("at_c", part.temperature.map(Temperature::celsius))
        .list("lines", part.lines.iter().map(write_line))
        .done()
}

fn write_line(line: &Line) -> Tree<'_> {
    let writer = match &line.food {
        Food::Listed(listed) => {
            let row = listed.row();
            Writer::new()
                .number("ingredient", row.number)
                .text("name", row.name)
        }
        Food::Own(food) => Writer::new().tree("own", own::write(food)),
    };
    let writer = writer.number("mass_g", line.mass.grams());
    let writer = match line.counts_as_flour {
        Some(counts) => writer.tree("counts_as_flour", Tree::Truth(counts)),
        None => writer,
    };
    writer
        .maybe("poured_g", line.poured.map(Mass::grams))
        .maybe("at_c", line.temperature.map(Temperature::celsius))
        .done()
}

pub(super) fn read(tree: &Tree) -> Result<Formula, RecordError> {
    let fields = Fields::of(tree, &["streams"])?;
    let parts = fields.needed("streams", |tree| list(tree, Formula::MOST_PARTS, read_part))?;
    let lines: usize = parts.iter().map(|part| part.lines.len()).sum();
    if lines > Formula::MOST_LINES {
        let most = Formula::MOST_LINES;
        return Err(RecordError::from(RecordFault::TooMany { most }).inside("streams"));
    }
    Ok(Formula { parts })
}

fn read_part(tree: &Tree) -> Result<Part, RecordError> {
    let fields = Fields::of(tree, &["kind", "name", "steam_g", "at_c", "lines"])?;
    Ok(Part {
        kind: fields.needed("kind", |tree| word(tree, PARTS))?,
        name: fields.needed("name", |tree| {
            short(tree, Sheet::PART_NAME_LENGTH, plain::name)
        })?,
        steam: fields.maybe("steam_g", mass)?.unwrap_or(Mass::ZERO),
        temperature: fields.maybe("at_c", temperature)?,
        lines: fields.needed("lines", |tree| list(tree, Formula::MOST_LINES, read_line))?,
    })
}

fn read_line(tree: &Tree) -> Result<Line, RecordError> {
    let fields = Fields::of(tree, LINE)?;
    let called = fields.maybe("name", |tree| short(tree, Sheet::NAME_LENGTH, plain::name))?;
    let own = fields.maybe("own", own::read)?;
    let listed = fields.maybe("ingredient", |tree| {
        listed(tree, called.unwrap_or_default())
    })?;
    let food = match (listed, own) {
        (Some(listed), None) => Food::Listed(listed),
        (None, Some(own)) => Food::Own(own),
        (None, None) => return Err(RecordError::from(RecordFault::Missing).inside("ingredient")),
        (Some(_), Some(_)) => return Err(RecordError::from(RecordFault::Twice).inside("own")),
    };
    Ok(Line {
        food,
        mass: fields.needed("mass_g", mass)?,
        counts_as_flour: fields.maybe("counts_as_flour", truth)?,
        poured: fields.maybe("poured_g", mass)?,
        temperature: fields.maybe("at_c", temperature)?,
    })
}

/// The larder's row: its number decides, `name` is for people.
fn listed(tree: &Tree, name: String) -> Result<Listed, RecordError> {
    let number = whole(tree, 0, u32::from(u16::MAX))?;
    let number = u16::try_from(number).unwrap_or(u16::MAX);
    Listed::numbered(number).map_err(|_| RecordFault::UnknownIngredient { number, name }.into())
}
