//! Standing out in the morning: how long each cold stream takes, and when that is too long.

use crate::engine::kitchen::Warming;
use crate::words::{manner::Manner, say, write};

/// From here on standing is a risk, min.
const LONG: f64 = 120.0;

/// How one cold stream warms: "Scald, from 4 °C: 10 °C after 35 min, 15 °C after 1 h 12 min."
#[must_use]
pub fn warming(warming: &Warming, name: &str, manner: Manner) -> String {
    let times: Vec<String> = warming
        .times
        .iter()
        .map(|(warm, minutes)| {
            say!(
                "{} after {}",
                write::temperature(*warm, manner),
                write::minutes(*minutes, manner)
            )
        })
        .collect();
    let from = write::temperature(warming.starts, manner);
    if times.is_empty() {
        return say!(
            "{name}, from {from}: this room is too cold to warm it.",
            name,
            from
        );
    }
    say!(
        "{name}, from {from}: {}.",
        name,
        from,
        times.join(say!(", "))
    )
}

/// What is said where any of them takes long.
#[must_use]
pub fn standing_long(all: &[Warming]) -> Option<&'static str> {
    let mut times = all.iter().flat_map(|one| &one.times);
    times
        .any(|(_, minutes)| minutes.minutes() > LONG)
        .then_some(say!(
            "More than two hours in the room is a risk for milk and eggs, and a preferment goes on \
         rising: rather warm the liquid or mix longer."
        ))
}
