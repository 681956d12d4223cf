//! Dough divided, in words.

use super::sentence::listed;
use crate::engine::batch::{Divided, Portion};
use crate::words::{manner::Manner, say, write};

/// "3 pieces of 71 g and 6 pieces of 70 g, which is 633 g in all."
#[must_use]
pub fn divided(divided: &Divided, manner: Manner) -> String {
    let weigh = |mass| write::mass_weighed(mass, divided.division, manner);
    let portion = |portion: &Portion| {
        let noun = if portion.count == 1 {
            say!("piece")
        } else {
            say!("pieces")
        };
        let count = write::count(portion.count, manner);
        say!(
            "{count}\u{A0}{noun} of {}",
            count,
            noun,
            weigh(portion.each)
        )
    };
    let portions: Vec<String> = [&divided.heavier, &divided.lighter]
        .into_iter()
        .filter(|one| one.count > 0)
        .map(portion)
        .collect();
    let all = weigh(divided.division.times(divided.divisions));
    let portions = listed(&portions).unwrap_or_default();
    say!("{portions}, which is {all} in all.", portions, all)
}
