//! The summary of a bake that was finished: what was predicted, what happened, what the next bake
//! assumes.

use leptos::prelude::*;

use super::bench_heading::STEP_HEADING;
use super::learnt_card::FrictionOffer;
use super::results::Day;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::results::day::{SummaryRow, bake_summary};
use crate::text::{day as day_text, tr};

/// The summary, shown once after the end.
#[component]
pub fn SummaryView() -> impl IntoView {
    let day = Day::from_context();
    let rows = memo(move || {
        let rows = day.finished.with(|finished| {
            let finished = finished.as_ref()?;
            day.read(|next| bake_summary(&finished.planned, finished.dough, &finished.bake, next))
        });
        rows.unwrap_or_default()
    });
    let found = memo(move || {
        let options = day.state.options.get();
        day.finished.with(|finished| {
            let bake = &finished.as_ref()?.bake;
            let weighed = day_text::weighed_otherwise(bake, options).into_iter();
            let found = day_text::findings(&bake.found, options);
            Some(weighed.chain(found).collect::<Vec<_>>().join(" "))
        })
    });
    let [predicted, happened, next] = [tr!("predicted"), tr!("happened"), tr!("next bake")];
    let row = move |row: SummaryRow| {
        let options = day.state.options.get();
        let figure = move |figure| day_text::summary_figure(figure, options);
        view! {
            // A table for those who hear it, however it is laid out.
            <tr role="row">
                <th role="rowheader" scope="row">{day_text::summary_name(&row)}</th>
                <td role="cell" data-column=predicted>{figure(row.predicted)}</td>
                <td role="cell" data-column=happened>{figure(row.happened)}</td>
                <td role="cell" data-column=next>{figure(row.next)}</td>
            </tr>
        }
    };
    view! {
        <section class="card kept" aria-label=tr!("Saved to the log")>
            <header>
                <h2 id=STEP_HEADING tabindex="-1">{tr!("Saved to the log")}</h2>
            </header>
            <div class="body">
                <table class="summary" role="table">
                    <thead role="rowgroup">
                        <tr role="row">
                            <td role="cell"></td>
                            <th role="columnheader" scope="col">{predicted}</th>
                            <th role="columnheader" scope="col">{happened}</th>
                            <th role="columnheader" scope="col">{next}</th>
                        </tr>
                    </thead>
                    <tbody role="rowgroup">{move || rows.get().into_iter().map(row).collect_view()}</tbody>
                </table>
                <p>{found}</p>
            </div>
            <FrictionOffer />
            <div class="body">
                <div class="buttons">
                    <Button label=tr!("To the plan") class="primary" on_tap=move |()| day.finished.set(None) />
                </div>
            </div>
        </section>
    }
}
