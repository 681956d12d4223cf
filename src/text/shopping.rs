//! The shopping list: what is needed, how many packs, what it costs, and as text to share.

use crate::engine::quantity::Money;
use crate::engine::shopping::ShoppingItem;
use crate::engine::working::WorkingLine;
use crate::results::batch::shopping::ShoppingResults;
use crate::text::{allergens, format, format_options::FormatOptions, name, tr};

/// A row of the list.
#[derive(Clone, Debug, PartialEq)]
pub struct ShoppingRow {
    /// The ingredient.
    pub name: String,
    /// What is needed: "1.2 kg".
    pub needed: String,
    /// What to buy: "2 packs of 1 kg, 800 g left over"; "from the tap".
    pub buy: String,
    /// What its packet usually says of allergens; none for a single food.
    pub packet: Option<String>,
    /// What the part that is used costs; empty where the price is not known.
    pub cost: String,
    /// The steps that lead to its packs and its cost; none where no pack is known.
    pub working: Vec<WorkingLine>,
}

/// The shopping list with its cost.
#[derive(Clone, Debug, PartialEq)]
pub struct ShoppingView {
    /// Ingredient by ingredient.
    pub rows: Vec<ShoppingRow>,
    /// What everything that is used costs.
    pub used: String,
    /// What one piece costs.
    pub each: String,
    /// What is paid for whole packs.
    pub paid: String,
    /// What is missing from the cost, where prices are.
    pub missing: Option<String>,
    /// Whom it is for, where that is the class.
    pub of_class: Option<&'static str>,
    /// The list as text.
    pub text: String,
    /// The step that leads to the whole cost.
    pub working: Vec<WorkingLine>,
}

/// The shopping list of a batch, its cost in a currency as the user calls it.
#[must_use]
pub fn view(shopping: &ShoppingResults, currency: &str, options: FormatOptions) -> ShoppingView {
    let list = &shopping.list;
    let rows: Vec<ShoppingRow> = list
        .items
        .iter()
        .map(|item| row(item, currency, options))
        .collect();
    let bought = list
        .items
        .iter()
        .zip(&rows)
        .filter(|(item, _)| !item.from_tap());
    let text = bought
        .map(|(_, row)| format!("{}: {}\n", row.name, text_of(row)))
        .collect();
    let money = |amount: Option<Money>| match amount {
        Some(amount) => format::money(amount, currency, options),
        None => tr!("no price yet").to_owned(),
    };
    ShoppingView {
        used: money(shopping.used),
        each: money(shopping.each),
        paid: money(shopping.paid),
        missing: missing(list.unpriced, options),
        of_class: shopping.of_class.then(|| {
            tr!("For the whole class: the sum of what every bench weighs, each rounded by its own scale and with its own rest in the bowl. “What to weigh” above is for one batch.")
        }),
        text,
        working: shopping.used.iter().map(|_| list.working()).collect(),
        rows,
    }
}

/// The note on ingredients without a price.
fn missing(unpriced: u32, options: FormatOptions) -> Option<String> {
    let (count, are) = match unpriced {
        0 => return None,
        1 => (tr!("One ingredient has").to_owned(), tr!("it is")),
        more => (
            tr!(
                "{value} ingredients have",
                value = format::count(more, options)
            ),
            tr!("they are"),
        ),
    };
    Some(tr!(
        "{count} no price yet, so {are} not in the cost. Give pack and price in the pantry.",
        count = count,
        are = are
    ))
}

fn row(item: &ShoppingItem, currency: &str, options: FormatOptions) -> ShoppingRow {
    let buy = match (item.packs, item.pack) {
        (Some(0), _) => tr!("there is enough").to_owned(),
        (Some(packs), Some(pack)) => {
            let noun = if packs == 1 {
                tr!("pack")
            } else {
                tr!("packs")
            };
            let mut buy = tr!(
                "{first}\u{A0}{noun} of {second}",
                first = format::count(packs, options),
                noun = noun,
                second = format::mass(pack, options)
            );
            if let Some(left) = item.left {
                buy.push_str(&tr!(
                    ", {value} left over",
                    value = format::mass(left, options)
                ));
            }
            buy
        }
        _ if item.from_tap() => tr!("from the tap").to_owned(),
        _ => format::mass(item.to_buy, options),
    };
    ShoppingRow {
        name: name::food(&item.food),
        needed: format::mass(item.needed, options),
        buy,
        packet: allergens::of_packet(&item.food),
        cost: item
            .used
            .map(|cost| format::money(cost, currency, options))
            .unwrap_or_default(),
        working: item.working(),
    }
}

fn text_of(row: &ShoppingRow) -> String {
    let amount = if row.buy == row.needed {
        row.needed.clone()
    } else {
        tr!(
            "{first} needed, {second}",
            first = row.needed,
            second = row.buy
        )
    };
    match &row.packet {
        Some(packet) => format!("{amount}. {packet}"),
        None => amount,
    }
}
