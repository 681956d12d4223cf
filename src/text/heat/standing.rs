//! Standing out in the morning: how long each cold part takes, and when that is too long.

use crate::results::heat::{Warming, is_long_standing};
use crate::text::{format, format_options::FormatOptions, tr};

/// How one cold part warms: "Scald, from 4 °C: 10 °C after 35 min, 15 °C after 1 h 12 min."
#[must_use]
pub fn warming(warming: &Warming, name: &str, options: FormatOptions) -> String {
    let times: Vec<String> = warming
        .times
        .iter()
        .map(|(warm, minutes)| {
            tr!(
                "{first} after {second}",
                first = format::temperature(*warm, options),
                second = format::minutes(*minutes, options)
            )
        })
        .collect();
    let from = format::temperature(warming.starts, options);
    if times.is_empty() {
        return tr!(
            "{name}, from {from}: this room is too cold to warm it.",
            name = name,
            from = from
        );
    }
    tr!(
        "{name}, from {from}: {value}.",
        name = name,
        from = from,
        value = times.join(tr!(", "))
    )
}

/// The caution where any of them takes long.
#[must_use]
pub fn standing_long(all: &[Warming]) -> Option<&'static str> {
    is_long_standing(all).then_some(tr!(
        "More than two hours in the room is a risk for milk and eggs, and a preferment goes on \
         rising: rather warm the liquid or mix longer."
    ))
}
