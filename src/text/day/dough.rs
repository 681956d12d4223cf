//! The dough beside that of the reference rises, in sentences.

use crate::engine::quantity::{Factor, Share};
use crate::results::day::{Doughs, RiseSpeed, rise_speed};
use crate::text::{format, format_options::FormatOptions, tr};

/// How much faster or slower this dough rises, and what in it differs; `None` where it is as fast.
#[must_use]
pub fn yeast_activity(doughs: &Doughs, activity: Factor, options: FormatOptions) -> Option<String> {
    let by = |times: Factor| format::plain(times.number(), 2, options.numbers);
    let speed = match rise_speed(activity) {
        RiseSpeed::Same => return None,
        RiseSpeed::Faster(times) => tr!(
            "This dough rises {by} times as fast as the one the known rises are of.",
            by = by(times)
        ),
        RiseSpeed::Slower(times) => tr!(
            "This dough takes {by} times as long as the one the known rises are of.",
            by = by(times)
        ),
    };
    let mut sentences = vec![speed];
    sentences.extend(differences(doughs, options));
    Some(sentences.join(" "))
}

/// A sentence for yeast, sugar and salt each, where they read differently.
fn differences(doughs: &Doughs, options: FormatOptions) -> impl Iterator<Item = String> {
    let (now, then) = (&doughs.now, &doughs.reference);
    let differing = |old: Share, new: Share| {
        let (old, new) = (format::share(old, options), format::share(new, options));
        (old != new).then_some((old, new))
    };
    let yeast = differing(then.yeast, now.yeast).map(|(old, new)| {
        tr!(
            "It has {new} of yeast, as fresh, instead of {old}.",
            new = new,
            old = old
        )
    });
    let sugar = differing(then.sugar, now.sugar).map(|(old, new)| {
        tr!(
            "It has {new} of sugar instead of {old}.",
            new = new,
            old = old
        )
    });
    let salt = differing(then.salt, now.salt).map(|(old, new)| {
        tr!(
            "It has {new} of salt instead of {old}.",
            new = new,
            old = old
        )
    });
    [yeast, sugar, salt].into_iter().flatten()
}
