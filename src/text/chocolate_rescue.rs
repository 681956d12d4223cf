//! A syrup that is thick or lumpy now: what is seen, and what helps.

use crate::engine::chocolate::SyrupLook;
use crate::results::chocolate::Rescue;
use crate::text::{Advice, FormatOptions, caution::celsius, format, tr};

/// What is seen, in words.
#[must_use]
pub fn look(look: SyrupLook) -> &'static str {
    match look {
        SyrupLook::TooThick => tr!("smooth, but it comes only when pressed"),
        SyrupLook::StaysPut => tr!("smooth, but it stays where the spoon puts it"),
        SyrupLook::Seized => tr!("stiff, dull and grainy"),
        SyrupLook::Lumpy => tr!("it runs, with lumps in it"),
    }
}

/// What helps, with grams of hot water or minutes over a bath.
#[must_use]
pub fn advice(rescue: &Rescue, options: FormatOptions) -> Advice {
    match rescue {
        Rescue::AddWater(water) => Advice {
            means: tr!(
                "{first} to {second} of hot water make it drizzle.",
                first = format::mass(water.from, options),
                second = format::mass(water.to, options)
            )
            .into(),
            to_do: tr!(
                "Warm it to {value} first, then stir the hot water in a little at a time, and stop when it runs.",
                value = celsius(40.0, options)
            )
            .into(),
            source: tr!("thickness by Krieger and Dougherty; common practice").into(),
        },
        Rescue::Bath(bath) => Advice {
            means: tr!(
                "{first} over a bath of {second} melt the lumps.",
                first = format::minutes_range(bath.from, bath.to, options),
                second = format::temperature(bath.bath, options)
            )
            .into(),
            to_do: tr!("Stir all the time: unstirred it takes the longer of the two. Let no steam in.")
                .into(),
            source: tr!("balance of heat; Beckett, Industrial Chocolate Manufacture and Use, 4th ed.")
                .into(),
        },
    }
}
