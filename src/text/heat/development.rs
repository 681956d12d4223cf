//! Development: how long a dough is mixed until its gluten is developed, and what to look for.

use crate::engine::heat::Development;
use crate::text::{format, format_options::FormatOptions, language::text, tr, tr_noop};

/// What to look for.
const WINDOWPANE: &str = tr_noop!(
    "To see whether it is developed, stretch a piece thin: where it tears, the edge is smooth, not \
     ragged."
);

/// How long the dough is mixed until it is developed, with what to look for. It is held against the
/// dough that the usual mixing belongs to, so that one as warm as is wanted is never called cold.
#[must_use]
pub fn development(found: &Development, options: FormatOptions) -> String {
    let time = |minutes| format::minutes(minutes, options);
    let usual = time(found.usual);
    let [dough, warm] =
        [found.dough, Development::USUAL_AT].map(|at| format::near_temperature(at, options));
    let about = if found.too_cold {
        tr!(
            "Mixed until developed: a dough of {dough} is too cold. Warm it rather than mix it for \
             more than {most}.",
            dough = dough,
            most = time(found.minutes)
        )
    } else if found.minutes > found.usual {
        tr!(
            "Mixed until developed: about {minutes} ({range}). A dough of {dough} takes longer than \
             one of {warm}, which takes the usual {usual}.",
            minutes = time(found.minutes),
            range = range(found, options),
            dough = dough,
            warm = warm,
            usual = usual
        )
    } else if found.minutes < found.usual {
        tr!(
            "Mixed until developed: about {minutes} ({range}). A dough of {dough} takes less than \
             one of {warm}, which takes the usual {usual}.",
            minutes = time(found.minutes),
            range = range(found, options),
            dough = dough,
            warm = warm,
            usual = usual
        )
    } else {
        tr!(
            "Mixed until developed: about {minutes} ({range}), as usual.",
            minutes = usual,
            range = range(found, options)
        )
    };
    format!("{about} {}", text(WINDOWPANE))
}

fn range(found: &Development, options: FormatOptions) -> String {
    format::range(
        found.soonest.minutes(),
        found.latest.minutes(),
        1,
        tr!("min"),
        options,
    )
}
