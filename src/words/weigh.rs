//! Weighing: a line of the batch as it goes on the scale, and what the scale does to the dough.

use super::manner::Manner;
use super::write;
use crate::engine::batch::{Divided, Losses, Pieces, Portion, Rounded, RoundedLine, Shown};
use crate::words::say;

/// A line of the batch as it goes on the scale.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Weighed {
    /// What the scale shows: "312 g"; what is below it.
    pub shows: String,
    /// What is exact, and what rounding does.
    pub said: String,
    /// Whether the error passes what needs no thought.
    pub off: bool,
}

/// A line of the batch as it goes on the scale.
#[must_use]
pub fn line(line: &RoundedLine, manner: Manner) -> Weighed {
    let mut said = vec![say!("exact {}", write::mass(line.exact, manner))];
    let shows = match line.shown {
        Shown::AsWeighed => write::mass_weighed(line.weighed, line.division, manner),
        Shown::BelowScale => say!("below the scale").to_owned(),
    };
    if line.weighed != line.exact {
        let error = write::mass_change(line.error, manner);
        said.push(match line.error_share {
            Some(share) if line.cures.is_some() && line.shown == Shown::AsWeighed => {
                say!("{error}, {} off", error, write::share(share, manner))
            }
            Some(_) | None => error,
        });
    }
    said.extend(percentage(line, manner));
    if line.on_pocket_scale {
        said.push(say!("pocket scale").to_owned());
    }
    Weighed {
        shows,
        said: said.join(" · "),
        off: line.cures.is_some(),
    }
}

/// The baker's percentage, exact and as weighed where that differs to the eye.
fn percentage(line: &RoundedLine, manner: Manner) -> Option<String> {
    let exact = write::share(line.percent_exact?, manner);
    let weighed = write::share(line.percent_weighed?, manner);
    Some(if exact == weighed {
        exact
    } else {
        write::from_to(&exact, &weighed)
    })
}

/// The dough as weighed and what that changes: "901 g, −0.2 %".
#[must_use]
pub fn dough_change(rounded: &Rounded, manner: Manner) -> String {
    let weighed = write::mass(rounded.dough_weighed, manner);
    match write::relative_change(rounded.dough_exact, rounded.dough_weighed, manner) {
        Some(change) => format!("{weighed}, {change}"),
        None => weighed,
    }
}

/// What weighing does to the true water: "67.2 % → 67.1 %".
#[must_use]
pub fn water_change(rounded: &Rounded, manner: Manner) -> Option<String> {
    let exact = write::share(rounded.true_water_exact?, manner);
    let weighed = write::share(rounded.true_water_weighed?, manner);
    Some(if exact == weighed {
        weighed
    } else {
        write::from_to(&exact, &weighed)
    })
}

/// What dough is divided into: "9 × 70 g".
#[must_use]
pub fn pieces(pieces: &Pieces, manner: Manner) -> String {
    let count = write::count(pieces.count.get(), manner);
    format!("{count}\u{A0}×\u{A0}{}", write::mass(pieces.each, manner))
}

/// How dough is divided, at a glance: "4 of 71 g, 5 of 70 g".
#[must_use]
pub fn divided(divided: &Divided, manner: Manner) -> String {
    let portion = |portion: &Portion| {
        let each = write::mass_weighed(portion.each, divided.division, manner);
        say!("{} of {each}", write::count(portion.count, manner), each)
    };
    if divided.heavier.count == 0 {
        portion(&divided.lighter)
    } else {
        format!(
            "{}, {}",
            portion(&divided.heavier),
            portion(&divided.lighter)
        )
    }
}

/// Losses in a few words: "6 g and 0.5 % before the oven, 10.5 % in it".
#[must_use]
pub fn losses(losses: &Losses, manner: Manner) -> String {
    say!(
        "{} and {} before the oven, {} in it",
        write::mass(losses.residue, manner),
        write::share(losses.residue_share.plus(losses.dividing), manner),
        write::share(losses.bake, manner)
    )
}
