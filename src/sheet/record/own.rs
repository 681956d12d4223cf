//! The user's own ingredients in a record, and what their labels say.

use crate::engine::ingredients::{Allergen, Label, OwnFood};
use crate::engine::quantity::Share;
use crate::sheet::enum_names::{ALLERGENS, ROLES, spelt};
use crate::sheet::plain;

use super::error::RecordError;
use super::fields::{Fields, list, share, short, word};
use super::print::Writer;
use super::tree::Tree;

const LABEL: &[&str] = &[
    "fat_share",
    "saturates_share",
    "carbohydrate_share",
    "sugars_share",
    "fibre_share",
    "protein_share",
    "salt_share",
    "water_share",
    "cocoa_share",
];

pub(super) fn write(food: &OwnFood) -> Tree<'_> {
    let allergens = food
        .allergens
        .iter()
        .map(|a| Tree::Text(spelt(*a, ALLERGENS).into()));
    Writer::new()
        .text("name", plain::name(&food.name, OwnFood::NAME_LENGTH))
        .text("role", spelt(food.role, ROLES))
        .tree("label", write_label(&food.label))
        .list("allergens", allergens)
        .done()
}

fn write_label(label: &Label) -> Tree<'static> {
    let fraction = |share: Option<Share>| share.map(Share::fraction);
    Writer::new()
        .maybe("fat_share", fraction(label.fat))
        .maybe("saturates_share", fraction(label.saturates))
        .maybe("carbohydrate_share", fraction(label.carbohydrate))
        .maybe("sugars_share", fraction(label.sugars))
        .maybe("fibre_share", fraction(label.fibre))
        .maybe("protein_share", fraction(label.protein))
        .maybe("salt_share", fraction(label.salt))
        .maybe("water_share", fraction(label.water))
        .maybe("cocoa_share", fraction(label.cocoa))
        .done()
}

pub(super) fn read(tree: &Tree) -> Result<OwnFood, RecordError> {
    let fields = Fields::of(tree, &["name", "role", "label", "allergens"])?;
    let allergens = |tree| list(tree, Allergen::ALL.len(), |tree| word(tree, ALLERGENS));
    let name = fields.needed("name", |tree| {
        short(tree, OwnFood::NAME_LENGTH, plain::name)
    })?;
    Ok(OwnFood::new(
        &name,
        fields.needed("role", |tree| word(tree, ROLES))?,
        fields.needed("label", read_label)?,
        fields.needed("allergens", allergens)?,
    )?)
}

fn read_label(tree: &Tree) -> Result<Label, RecordError> {
    let fields = Fields::of(tree, LABEL)?;
    Ok(Label {
        fat: fields.maybe("fat_share", share)?,
        saturates: fields.maybe("saturates_share", share)?,
        carbohydrate: fields.maybe("carbohydrate_share", share)?,
        sugars: fields.maybe("sugars_share", share)?,
        fibre: fields.maybe("fibre_share", share)?,
        protein: fields.maybe("protein_share", share)?,
        salt: fields.maybe("salt_share", share)?,
        water: fields.maybe("water_share", share)?,
        cocoa: fields.maybe("cocoa_share", share)?,
    })
}
