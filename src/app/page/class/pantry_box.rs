//! The pantry: pack, price, what is on hand, and what the packet says, ingredient by ingredient.

use leptos::prelude::*;

use super::allergen_card::Marked;
use crate::app::part::{NumberBox, PickOne};
use crate::app::state::{WorkspaceStore, memo, use_app_state};
use crate::engine::ingredients::{Allergen, Food};
use crate::engine::quantity::Mass;
use crate::engine::shopping::needs;
use crate::sheet::PantryItem;
use crate::text::{
    FormatOptions, Trouble, format, language::text, name, read, read::ReadError, tr, tr_noop,
};

/// The ingredient that is looked at, and what is known of it.
#[component]
pub fn PantryBox() -> impl IntoView {
    let state = use_app_state();
    let foods = memo(move || {
        let all = state.with(|sheet| needs(&sheet.formula));
        all.into_iter().map(|need| need.food).collect::<Vec<Food>>()
    });
    let chosen = RwSignal::new(0_usize);
    let answers = memo(move || {
        let named = |(at, food): (usize, &Food)| (at, name::food(food));
        foods.with(|foods| foods.iter().enumerate().map(named).collect::<Vec<_>>())
    });
    let food = memo(move || {
        foods.with(|foods| foods.get(chosen.get()).or_else(|| foods.first()).cloned())
    });
    view! {
        <h3>{tr!("Pantry")}</h3>
        <PickOne id="pantry-food" label=tr!("Ingredient") answers holds=chosen chosen=Callback::new(move |at| chosen.set(at)) />
        <div class="boxes">
            <ItemBox field=PACK food />
            <ItemBox field=PRICE food />
            <ItemBox field=ON_HAND food />
        </div>
        <Packet id="packet-contains" label=tr!("Its packet says: contains") food look=|item| &item.contains set=|item, marked| item.contains = marked />
        <Packet id="packet-may" label=tr!("Its packet says: may contain") food look=|item| &item.may_contain set=|item, marked| item.may_contain = marked />
    }
}

/// What a packet says of allergens.
#[component]
fn Packet(
    /// Unique on the page.
    id: &'static str,
    /// What it says.
    label: &'static str,
    /// The ingredient.
    food: Memo<Option<Food>>,
    /// The allergens of an item.
    look: fn(&PantryItem) -> &Vec<Allergen>,
    /// Changes them.
    set: fn(&mut PantryItem, Vec<Allergen>),
) -> impl IntoView {
    let desk = WorkspaceStore::here();
    let holds = Signal::derive(move || {
        let food = food.get();
        desk.pantry.with(|pantry| {
            let item = food.as_ref().and_then(|food| pantry.item(food));
            item.map(|item| look(item).clone()).unwrap_or_default()
        })
    });
    let changed = move |marked| {
        if let Some(food) = food.get_untracked() {
            desk.set_pantry(|pantry| {
                if let Some(item) = pantry.item_mut(&food) {
                    set(item, marked);
                }
            });
        }
    };
    view! { <Marked id label holds changed=Callback::new(changed) /> }
}

/// A number of an item.
#[derive(Clone, Copy)]
struct ItemField {
    id: &'static str,
    label: &'static str,
    is_mass: bool,
    look: fn(&PantryItem, FormatOptions) -> String,
    set: fn(&mut PantryItem, &str, FormatOptions) -> Result<(), ReadError>,
}

const PACK: ItemField = ItemField {
    id: "pantry-pack",
    label: tr_noop!("One pack holds"),
    is_mass: true,
    look: |item, options| {
        item.holds
            .map(|mass| format::box_mass(mass, options))
            .unwrap_or_default()
    },
    set: |item, text, options| {
        item.holds = unless_empty(text, |text| read::mass(text, options))?;
        // A pack that holds nothing is no pack.
        item.holds = item.holds.filter(|mass| *mass > Mass::ZERO);
        Ok(())
    },
};

const PRICE: ItemField = ItemField {
    id: "pantry-price",
    label: tr_noop!("One pack costs"),
    is_mass: false,
    look: |item, options| {
        item.price
            .map(|money| format::box_money(money, options))
            .unwrap_or_default()
    },
    set: |item, text, options| {
        item.price = unless_empty(text, |text| read::money(text, options))?;
        Ok(())
    },
};

const ON_HAND: ItemField = ItemField {
    id: "pantry-on-hand",
    label: tr_noop!("There is already"),
    is_mass: true,
    look: |item, options| format::box_mass(item.on_hand, options),
    set: |item, text, options| {
        item.on_hand = unless_empty(text, |text| read::mass(text, options))?.unwrap_or_default();
        Ok(())
    },
};

fn unless_empty<T>(
    text: &str,
    read: impl FnOnce(&str) -> Result<T, ReadError>,
) -> Result<Option<T>, ReadError> {
    if text.trim().is_empty() {
        Ok(None)
    } else {
        read(text).map(Some)
    }
}

#[component]
fn ItemBox(
    /// Which number.
    field: ItemField,
    /// Of which ingredient.
    food: Memo<Option<Food>>,
) -> impl IntoView {
    let state = use_app_state();
    let desk = WorkspaceStore::here();
    let figure = memo(move || {
        let (options, food) = (state.options.get(), food.get());
        desk.pantry.with(|pantry| {
            let item = food.as_ref().and_then(|food| pantry.item(food));
            item.map(|item| (field.look)(item, options))
                .unwrap_or_default()
        })
    });
    let take = move |text: String| {
        let options = state.options.get_untracked();
        let Some(food) = food.get_untracked() else {
            return Ok(());
        };
        let mut pantry = desk.pantry.get_untracked();
        if let Some(item) = pantry.item_mut(&food) {
            (field.set)(item, &text, options).map_err(|error| error.sentence(options))?;
        }
        desk.set_pantry(|saved| *saved = pantry);
        Ok(())
    };
    let unit = Signal::derive(move || {
        if field.is_mass {
            state.options.get().units.mass.symbol()
        } else {
            ""
        }
    });
    view! { <NumberBox id=field.id label=text(field.label) unit figure take=Callback::new(take) /> }
}
