//! The pantry as a record: packs, prices, and what packets say of allergens.

use crate::engine::ingredients::Allergen;
use crate::engine::quantity::{Mass, Money};
use crate::sheet::enum_names::{ALLERGENS, spelt};
use crate::sheet::{FoodKey, Pantry, PantryItem, plain};

use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::{RecordError, RecordFault};
use super::fields::{Fields, list, mass, number, short, whole, word};
use super::print::Writer;
use super::tree::Tree;

const KIND: &str = "pantry";
const OWN_LENGTH: usize = crate::engine::ingredients::OwnFood::NAME_LENGTH;
pub(super) const KNOWN: &[&str] = &["currency", "items", "kitchen"];
const ITEM: [&str; 7] = [
    "ingredient",
    "own",
    "pack_g",
    "price",
    "on_hand_g",
    "contains",
    "may_contain",
];

/// Writes the pantry down as JSON.
#[must_use]
pub fn write_pantry(pantry: &Pantry) -> String {
    body(pantry, begin(KIND)).to_string()
}

pub(super) fn body<'t>(pantry: &'t Pantry, begun: Writer<'t>) -> Tree<'t> {
    let items = pantry.items.iter().take(Pantry::MOST).map(write_item);
    begun
        .text(
            "currency",
            plain::name(&pantry.currency, Pantry::CURRENCY_LENGTH),
        )
        .list("items", items)
        .tree("kitchen", allergens(&pantry.kitchen))
        .done()
}

fn write_item(item: &PantryItem) -> Tree<'_> {
    let begun = match &item.food {
        FoodKey::Listed(ingredient) => Writer::new().number("ingredient", *ingredient),
        FoodKey::Own(name) => Writer::new().text("own", name.as_str()),
    };
    let on_hand = (item.on_hand > Mass::ZERO).then(|| item.on_hand.grams());
    begun
        .maybe("pack_g", item.holds.map(Mass::grams))
        .maybe("price", item.price.map(Money::amount))
        .maybe("on_hand_g", on_hand)
        .tree("contains", allergens(&item.contains))
        .tree("may_contain", allergens(&item.may_contain))
        .done()
}

/// Each once, in the order of the law.
fn allergens(marked: &[Allergen]) -> Tree<'static> {
    let all = Allergen::ALL.into_iter().filter(|one| marked.contains(one));
    Tree::List(
        all.map(|one| Tree::Text(spelt(one, ALLERGENS).into()))
            .collect(),
    )
}

/// Reads the pantry from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_pantry(text: &str) -> Result<Pantry, RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    read_body(&fields(&tree, KIND, KNOWN)?)
}

pub(super) fn read_body(fields: &Fields) -> Result<Pantry, RecordError> {
    let currency = |tree: &Tree| short(tree, Pantry::CURRENCY_LENGTH, plain::name);
    let items = fields.needed("items", |tree| list(tree, Pantry::MOST, read_item))?;
    for (at, item) in items.iter().enumerate() {
        if items.iter().take(at).any(|before| before.food == item.food) {
            let twice = RecordError::from(RecordFault::Twice);
            return Err(twice.item(at).inside("items"));
        }
    }
    Ok(Pantry {
        currency: fields.maybe("currency", currency)?.unwrap_or_default(),
        items,
        kitchen: fields.maybe("kitchen", read_allergens)?.unwrap_or_default(),
    })
}

fn read_item(tree: &Tree) -> Result<PantryItem, RecordError> {
    let fields = Fields::of(tree, &ITEM)?;
    let listed = fields.maybe("ingredient", |tree| {
        let number = whole(tree, 0, u32::from(u16::MAX))?;
        Ok(FoodKey::Listed(u16::try_from(number).unwrap_or(u16::MAX)))
    })?;
    let own = fields.maybe("own", |tree| {
        Ok(FoodKey::Own(short(tree, OWN_LENGTH, plain::name)?))
    })?;
    let food = match (listed, own) {
        (Some(food), None) | (None, Some(food)) => food,
        (None, None) => return Err(RecordError::from(RecordFault::Missing).inside("ingredient")),
        (Some(_), Some(_)) => return Err(RecordError::from(RecordFault::Twice).inside("own")),
    };
    let money = |tree: &Tree| Ok(Money::from_amount(number(tree)?)?);
    Ok(PantryItem {
        food,
        holds: fields.maybe("pack_g", mass)?,
        price: fields.maybe("price", money)?,
        on_hand: fields.maybe("on_hand_g", mass)?.unwrap_or_default(),
        contains: fields
            .maybe("contains", read_allergens)?
            .unwrap_or_default(),
        may_contain: fields
            .maybe("may_contain", read_allergens)?
            .unwrap_or_default(),
    })
}

/// Each once, in the order of the law.
fn read_allergens(tree: &Tree) -> Result<Vec<Allergen>, RecordError> {
    let marked = list(tree, 2 * Allergen::ALL.len(), |tree| word(tree, ALLERGENS))?;
    let all = Allergen::ALL.into_iter();
    Ok(all.filter(|one| marked.contains(one)).collect())
}
