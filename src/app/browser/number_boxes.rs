//! Number boxes: a box that is entered selects its content, and Enter goes on to the next one.

use std::cell::RefCell;
use std::mem;
use std::rc::Rc;

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Event, HtmlInputElement, KeyboardEvent};

/// Every box for a number.
const BOXES: &str = "input[inputmode=decimal]";

/// The box for a number that an event is about.
fn target(event: &Event) -> Option<HtmlInputElement> {
    let input: HtmlInputElement = event.target()?.dyn_into().ok()?;
    input.matches(BOXES).is_ok_and(|is| is).then_some(input)
}

/// Follows the boxes as long as the page lives. `entered` is called when one is entered.
pub fn watch(entered: impl Fn() + 'static) {
    // The box that was entered and in which nothing has been done yet.
    let fresh = Rc::new(RefCell::new(None::<HtmlInputElement>));
    let (on_click, on_key) = (Rc::clone(&fresh), Rc::clone(&fresh));
    mem::forget(window_event_listener_untyped("focusin", move |event| {
        let input = target(&event);
        if let Some(input) = &input {
            entered();
            input.select();
        }
        fresh.replace(input);
    }));
    // The tap by which a box was entered has placed the caret: its content is selected again.
    mem::forget(window_event_listener_untyped("click", move |event| {
        if let Some(input) = target(&event).filter(|input| on_click.take().as_ref() == Some(input))
        {
            input.select();
        }
    }));
    mem::forget(window_event_listener_untyped("keydown", move |event| {
        on_key.take();
        let is_enter = |key: &&KeyboardEvent| key.key() == "Enter";
        if event
            .dyn_ref::<KeyboardEvent>()
            .as_ref()
            .is_some_and(is_enter)
            && let Some(input) = target(&event)
        {
            event.prevent_default();
            to_next(&input);
        }
    }));
}

/// Moves the focus to the next box of the same kind, such as the weight of the next line; after the
/// last one, to whichever is next.
fn to_next(input: &HtmlInputElement) {
    let id = input.id();
    let kind = id.split('-').next().unwrap_or_default();
    let own_kind = format!("{BOXES}[id^=\"{kind}-\"]");
    if !next_of(input, &own_kind) {
        next_of(input, BOXES);
    }
}

/// Moves the focus to the next box that is shown; `false` where there is none.
fn next_of(input: &HtmlInputElement, boxes: &str) -> bool {
    // A dialog's boxes are by themselves.
    let around = input.closest("dialog, main").ok().flatten();
    let Some(all) = around.and_then(|around| around.query_selector_all(boxes).ok()) else {
        return false;
    };
    let all = (0..all.length()).filter_map(|at| all.get(at)?.dyn_into::<HtmlInputElement>().ok());
    let mut later = all.skip_while(|one| one != input).skip(1);
    later.any(|next| {
        let _refused = next.focus();
        document().active_element().as_ref() == Some(&next)
    })
}
