//! The pantry: pack, price, what is on hand, and what the packet says, ingredient by ingredient.

use leptos::prelude::*;

use crate::app::page::batch::allergens::Marked;
use crate::app::part::{Field, FieldBox, FieldData, FieldError, PickOne, no_unit, of_mass};
use crate::app::state::{WorkspaceStore, memo, use_app_state};
use crate::engine::ingredients::{Allergen, Food};
use crate::engine::quantity::Mass;
use crate::results::batch::shopping::ingredients;
use crate::sheet::PantryItem;
use crate::text::{format, name, read, read::ReadError, tr, tr_noop};

/// A chosen ingredient, and the notes on it.
#[component]
pub fn PantryBox() -> impl IntoView {
    let state = use_app_state();
    let foods = memo(move || state.with(|sheet| ingredients(&sheet.formula)));
    let chosen = RwSignal::new(0_usize);
    let choices = memo(move || {
        let named = |(at, food): (usize, &Food)| (at, name::food(food));
        foods.with(|foods| foods.iter().enumerate().map(named).collect::<Vec<_>>())
    });
    let food = memo(move || {
        foods.with(|foods| foods.get(chosen.get()).or_else(|| foods.first()).cloned())
    });
    provide_context(ItemSource {
        workspace: WorkspaceStore::from_context(),
        food,
    });
    view! {
        <h3>{tr!("Pantry")}</h3>
        <PickOne id="pantry-food" label=tr!("Ingredient") choices selected=chosen on_select=Callback::new(move |at| chosen.set(at)) />
        <div class="boxes">
            <FieldBox field=PACK />
            <FieldBox field=PRICE />
            <FieldBox field=ON_HAND />
        </div>
        <Packet id="packet-contains" label=tr!("Its packet says: contains") food select=|item| &item.contains set=|item, marked| item.contains = marked />
        <Packet id="packet-may" label=tr!("Its packet says: may contain") food select=|item| &item.may_contain set=|item, marked| item.may_contain = marked />
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
    select: fn(&PantryItem) -> &Vec<Allergen>,
    /// Changes them.
    set: fn(&mut PantryItem, Vec<Allergen>),
) -> impl IntoView {
    let workspace = WorkspaceStore::from_context();
    let selected = Signal::derive(move || {
        let food = food.get();
        workspace.pantry.with(|pantry| {
            let item = food.as_ref().and_then(|food| pantry.item(food));
            item.map(|item| select(item).clone()).unwrap_or_default()
        })
    });
    let changed = move |marked| {
        if let Some(food) = food.get_untracked() {
            workspace.pantry.change(|pantry| {
                if let Some(item) = pantry.item_mut(&food) {
                    set(item, marked);
                }
            });
        }
    };
    view! { <Marked id label selected changed=Callback::new(changed) /> }
}

/// The ingredient of the boxes, and where its item is stored.
#[derive(Clone, Copy)]
pub struct ItemSource {
    workspace: WorkspaceStore,
    food: Memo<Option<Food>>,
}

impl FieldData for PantryItem {
    type Source = ItemSource;
    type Error = ReadError;

    fn source() -> ItemSource {
        expect_context()
    }

    fn read(source: ItemSource, get: &dyn Fn(&Self) -> String) -> String {
        let food = source.food.get();
        source.workspace.pantry.with(|pantry| {
            let item = food.as_ref().and_then(|food| pantry.item(food));
            item.map(get).unwrap_or_default()
        })
    }

    fn change(
        source: ItemSource,
        _: &'static str,
        set: &dyn Fn(&mut Self) -> Result<(), ReadError>,
    ) -> Result<(), FieldError<ReadError>> {
        let Some(food) = source.food.get_untracked() else {
            return Ok(());
        };
        let mut pantry = source.workspace.pantry.get_untracked();
        if let Some(item) = pantry.item_mut(&food) {
            set(item)?;
        }
        source.workspace.pantry.change(|saved| *saved = pantry);
        Ok(())
    }
}

const PACK: Field<PantryItem> = Field {
    id: "pantry-pack",
    label: tr_noop!("One pack holds"),
    unit: of_mass,
    get: |item, _, options| {
        item.holds
            .map(|mass| format::box_mass(mass, options))
            .unwrap_or_default()
    },
    set: |item, text, options| {
        item.holds = read::optional(text, options, read::mass)?;
        // A pack that holds nothing is no pack.
        item.holds = item.holds.filter(|mass| *mass > Mass::ZERO);
        Ok(())
    },
};

const PRICE: Field<PantryItem> = Field {
    id: "pantry-price",
    label: tr_noop!("One pack costs"),
    unit: no_unit,
    get: |item, _, options| {
        item.price
            .map(|money| format::box_money(money, options))
            .unwrap_or_default()
    },
    set: |item, text, options| {
        item.price = read::optional(text, options, read::money)?;
        Ok(())
    },
};

const ON_HAND: Field<PantryItem> = Field {
    id: "pantry-on-hand",
    label: tr_noop!("In stock"),
    unit: of_mass,
    get: |item, _, options| format::box_mass(item.on_hand, options),
    set: |item, text, options| {
        item.on_hand = read::optional(text, options, read::mass)?.unwrap_or_default();
        Ok(())
    },
};
