//! The user's own ingredient, from the label on its packet.

use leptos::prelude::*;

use crate::app::part::{Button, NumberBox, PickOne, TextBox};
use crate::app::state::{memo, use_app_state};
use crate::engine::ingredients::{Allergen, Food, Label, LabelLine, OwnFood, Role};
use crate::text::{ErrorText, format, name, read, tr};

/// The state of the form.
#[derive(Clone, Copy)]
struct Form {
    name: RwSignal<String>,
    role: RwSignal<Role>,
    label: RwSignal<Label>,
    allergens: RwSignal<Vec<Allergen>>,
}

/// A form for an ingredient of the user's own.
#[component]
pub fn OwnFoodForm(
    /// Called with the ingredient.
    on_done: Callback<Food>,
) -> impl IntoView {
    let form = Form {
        name: RwSignal::new(String::new()),
        role: RwSignal::new(Role::Flour),
        label: RwSignal::new(Label::default()),
        allergens: RwSignal::new(Vec::new()),
    };
    let roles = Role::ALL
        .map(|role| (role, name::role(role).to_owned()))
        .to_vec();
    view! {
        <TextBox id="own-name" label=tr!("Name") text=form.name on_input=move |typed| form.name.set(typed) max_length=OwnFood::NAME_LENGTH />
        <PickOne id="own-role" label=tr!("What it does in a dough") choices=Signal::stored(roles) selected=form.role on_select=move |role| form.role.set(role) />
        <p class="quiet">{tr!("From the packet, for 100 g. What it does not say is calculated, and marked.")}</p>
        <div class="fields">
            {LabelLine::ALL.map(|line| view! { <LabelBox form line /> }).into_iter().collect_view()}
        </div>
        <AllergenBoxes form />
        <UseOwnFood form on_done />
    }
}

/// One line of the label; an empty box leaves it unknown.
#[component]
fn LabelBox(
    /// The form.
    form: Form,
    /// Which line.
    line: LabelLine,
) -> impl IntoView {
    let state = use_app_state();
    let figure = memo(move || {
        let options = state.options.get();
        let share = form.label.with(|label| label.line(line));
        share
            .map(|share| format::box_share(share, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let share =
            read::optional(&text, options, read::share).map_err(|error| error.sentence(options))?;
        form.label
            .update(|label| *label = label.with_line(line, share));
        Ok(())
    };
    // Grams in 100 g are hundredths.
    view! { <NumberBox id=format!("label-{line:?}") label=name::label_line(line) unit="%" figure store=Callback::new(store) /> }
}

/// Allergens.
#[component]
fn AllergenBoxes(
    /// The form.
    form: Form,
) -> impl IntoView {
    let tick = move |allergen: Allergen, ticked: bool| {
        form.allergens.update(|allergens| {
            allergens.retain(|one| *one != allergen);
            if ticked {
                allergens.push(allergen);
            }
        });
    };
    let boxes = Allergen::ALL
        .map(|allergen| {
            view! {
                <label class="tick">
                    <input type="checkbox" on:change:target=move |event| tick(allergen, event.target().checked()) />
                    {name::allergen(allergen)}
                </label>
            }
        })
        .into_iter()
        .collect_view();
    view! {
        <details>
            <summary>{tr!("Allergens in it")}</summary>
            <div class="fields">{boxes}</div>
        </details>
    }
}

/// Accepts the ingredient, or reports why it cannot.
#[component]
fn UseOwnFood(
    /// The form.
    form: Form,
    /// Called with the ingredient.
    on_done: Callback<Food>,
) -> impl IntoView {
    let state = use_app_state();
    let error_text = RwSignal::new(String::new());
    let store = move |()| {
        let (name, role) = (form.name.get_untracked(), form.role.get_untracked());
        match OwnFood::new(
            &name,
            role,
            form.label.get_untracked(),
            form.allergens.get_untracked(),
        ) {
            Ok(food) => on_done.run(Food::Own(food)),
            Err(error) => error_text.set(error.sentence(state.options.get_untracked())),
        }
    };
    view! {
        <p class="error" role="alert">{error_text}</p>
        <Button label=tr!("Use it") class="primary" disabled=Signal::derive(move || state.is_stale()) on_tap=store />
    }
}
