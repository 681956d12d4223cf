//! Dough divided, in words.

use super::sentence::listed;
use crate::engine::batch::{Divided, Portion};
use crate::text::{format, format_options::FormatOptions, tr};

/// "3 pieces of 71 g and 6 pieces of 70 g, which is 633 g in all."
#[must_use]
pub fn divided(divided: &Divided, options: FormatOptions) -> String {
    let weigh = |mass| format::mass_weighed(mass, divided.division, options);
    let portion = |portion: &Portion| {
        let noun = if portion.count == 1 {
            tr!("piece")
        } else {
            tr!("pieces")
        };
        let count = format::count(portion.count, options);
        tr!(
            "{count}\u{A0}{noun} of {value}",
            count = count,
            noun = noun,
            value = weigh(portion.each)
        )
    };
    let portions: Vec<String> = [&divided.heavier, &divided.lighter]
        .into_iter()
        .filter(|one| one.count > 0)
        .map(portion)
        .collect();
    let all = weigh(divided.division.times(divided.divisions));
    let portions = listed(&portions).unwrap_or_default();
    tr!(
        "{portions}, which is {all} in all.",
        portions = portions,
        all = all
    )
}
