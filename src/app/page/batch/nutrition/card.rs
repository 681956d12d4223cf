//! Nutrition: a table by one of two laws, each row opening to its working.

use leptos::prelude::*;

use crate::app::page::BatchContext;
use crate::app::part::{AnswerRow, Choice};
use crate::app::state::{DialogKind, WorkspaceStore, memo, use_app_state};
use crate::engine::nutrition::LabelLaw;
use crate::results::batch::nutrition;
use crate::text::{
    self, ErrorText, batch_answer, name,
    nutrition::{NutritionRow, NutritionView},
    tr,
};

/// What is in the bread.
#[component]
pub fn NutritionCard() -> impl IntoView {
    let state = use_app_state();
    let workspace = WorkspaceStore::from_context();
    let context = BatchContext::from_context();
    let answer = memo(move || {
        let (options, law) = (state.options.get(), workspace.law.get());
        let found =
            state.with(|sheet| context.read_scaled(|scaled| nutrition::of(sheet, scaled, law)));
        match found {
            Some(Ok(found)) => batch_answer::nutrition(&found, options),
            Some(Err(_)) | None => tr!("not known").to_owned(),
        }
    });
    view! {
        <AnswerRow tucked=true title=tr!("Nutrition, an estimate") answer>
            <Content />
        </AnswerRow>
    }
}

/// The law, and the table by it.
#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let workspace = WorkspaceStore::from_context();
    let context = BatchContext::from_context();
    let view = memo(move || {
        let (options, law) = (state.options.get(), workspace.law.get());
        let found =
            state.with(|sheet| context.read_scaled(|scaled| nutrition::of(sheet, scaled, law)))?;
        let view = found.map(|found| text::nutrition::view(&found, options));
        Some(view.map_err(|error| error.sentence(options)))
    });
    let laws = LabelLaw::ALL.map(|law| (law, name::law(law))).to_vec();
    view! {
        <div class="body">
            <Choice id="label-law" label=tr!("Rounded and named by the law of") choices=laws selected=workspace.law on_select=Callback::new(move |law| workspace.law.set(law)) />
            {move || match view.get() {
                Some(Ok(view)) => view! { <Table view /> }.into_any(),
                Some(Err(says)) => view! { <p>{says}</p> }.into_any(),
                None => ().into_any(),
            }}
        </div>
    }
}

#[component]
fn Table(
    /// Its content.
    view: NutritionView,
) -> impl IntoView {
    let state = use_app_state();
    let heads = view
        .columns
        .iter()
        .map(|head| view! { <th scope="col">{head.clone()}</th> })
        .collect_view();
    let row = move |row: NutritionRow| {
        let value = row.figures.first().cloned().unwrap_or_default();
        let NutritionRow {
            name,
            figures,
            working,
        } = row;
        let open = move |_| {
            state.open(DialogKind::Working {
                title: name.to_owned(),
                value: value.clone(),
                lines: working.clone(),
            });
        };
        let cells = figures
            .into_iter()
            .map(|figure| view! { <td>{figure}</td> })
            .collect_view();
        view! {
            <tr>
                <th scope="row"><button type="button" class="row-opens" aria-haspopup="dialog" on:click=open>{name}</button></th>
                {cells}
            </tr>
        }
    };
    view! {
        <div class="table-holds">
            <table class="label-table">
                <thead><tr><td></td>{heads}</tr></thead>
                <tbody>{view.rows.into_iter().map(row).collect_view()}</tbody>
            </table>
        </div>
        <p class="quiet">{view.note}</p>
    }
}
