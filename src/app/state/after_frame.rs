//! Runs slow work after the frame, 40 ms after its input changed.

use std::time::Duration;

use leptos::prelude::*;

/// The answer to `question`, worked out after the frame. The last one is shown until the next is
/// there; a question that is overtaken is never worked out.
pub fn after_frame<Q, A>(
    question: Memo<Option<Q>>,
    work: fn(&Q) -> Option<A>,
) -> RwSignal<Option<A>>
where
    Q: Clone + PartialEq + Send + Sync + 'static,
    A: Send + Sync + 'static,
{
    let answer = RwSignal::new(None);
    let asked_last = StoredValue::new(0_u32);
    Effect::new(move |_| {
        let asked = question.get();
        let revision = asked_last.get_value().wrapping_add(1);
        asked_last.set_value(revision);
        set_timeout(
            move || {
                // The user may have left the place that asked.
                if asked_last.try_get_value() == Some(revision) {
                    drop(answer.try_set(asked.as_ref().and_then(work)));
                }
            },
            Duration::from_millis(40),
        );
    });
    answer
}
