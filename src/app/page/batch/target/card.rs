//! The batch target: its kind, and its numbers.

use leptos::prelude::*;

use super::fields::{PIECES, of_kind};
use super::on_hand::OnHandPick;
use crate::app::page::BatchContext;
use crate::app::page::batch::make_formula::MakeFormula;
use crate::app::part::{AnswerRow, FieldBox, PickOne};
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::batch::TargetKind;
use crate::results::batch::target;
use crate::text::{batch_answer, name, tr};

/// The prefix of the ids of all target boxes.
const BOXES: &str = "wanted-";

/// The batch target, and what it comes to.
#[component]
pub fn TargetRow() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        context.read(|scaled| batch_answer::wanted(scaled, options))
    });
    view! {
        <AnswerRow title=tr!("How much?") answer>
            <div class="body">
                <TargetBoxes />
                <Lost />
                <MakeFormula />
            </div>
        </AnswerRow>
    }
}

/// Where dough and chocolate go on the way, said once.
#[component]
fn Lost() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let lost = memo(move || {
        let options = state.options.get();
        context.read_scaled(|scaled| batch_answer::lost(scaled, options))
    });
    view! { <p class="quiet follows">{lost}</p> }
}

/// The boxes of the batch target.
#[component]
pub fn TargetBoxes() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let kind = memo(move || state.with(|sheet| sheet.batch.wanted.kind()));
    let kinds: Vec<(TargetKind, String)> = TargetKind::ALL
        .into_iter()
        .map(|kind| (kind, name::target_kind(kind).to_owned()))
        .collect();
    let boxes = move || {
        let fields = of_kind(kind.get()).iter();
        fields
            .map(|field| view! { <FieldBox field=*field /> })
            .collect_view()
    };
    view! {
        <PickOne id="way" label=tr!("Scale by") choices=kinds selected=kind on_select=move |kind| choose(state, context, kind) />
        <Show when=move || kind.get() == TargetKind::OnHand>
            <OnHandPick />
        </Show>
        <div class="boxes">{boxes}</div>
        <Show when=move || !kind.get().counts_pieces()>
            <FieldBox field=PIECES />
        </Show>
    }
}

/// Chooses a kind of target: the last one of that kind, else the one for the same batch.
fn choose(state: AppState, context: BatchContext, kind: TargetKind) {
    let mut sheet = state.sheet();
    let kind_before = sheet.batch.wanted.kind();
    let mut previous = context.previous.get_untracked();
    previous.keep_only(state.open_id.get_untracked());
    previous.store(sheet.batch.wanted);
    let Some(wanted) = target::of_kind(&sheet, kind, previous.target(kind)) else {
        return;
    };
    let mut invalid = state.invalid_inputs.get_untracked();
    let of_boxes = invalid
        .extract_if(.., |id, _| id.starts_with(BOXES))
        .collect();
    previous.store_invalid_inputs(kind_before, of_boxes);
    invalid.extend(previous.take_invalid_inputs(kind));
    state.invalid_inputs.set(invalid);
    context.previous.set(previous);
    sheet.batch = target::with_pieces_kept(&sheet, wanted);
    state.put(sheet, None);
}
