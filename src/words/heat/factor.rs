//! The handbook's factor method, and why it differs from the balance of heat.

use crate::engine::heat::{FactorMethod, LiquidAnswer};
use crate::words::{manner::Manner, say, write};

/// What the handbook's sum comes to.
#[must_use]
pub fn factor_method(factor: &FactorMethod, manner: Manner) -> String {
    say!(
        "By the handbook’s sum the liquid should be at {}.",
        write::temperature(factor.water, manner)
    )
}

/// Why it differs from the balance of heat.
#[must_use]
pub fn factor_differs(answer: &LiquidAnswer, manner: Manner) -> String {
    let balance = match answer {
        LiquidAnswer::At { liquid, .. } => {
            say!(
                "The balance of heat says {}.",
                write::temperature(*liquid, manner)
            )
        }
        LiquidAnswer::OutOfReach(out) => match out.wanted {
            Some(wanted) => say!(
                "The balance of heat would need {}, which no dough may be given.",
                write::temperature(wanted, manner)
            ),
            None => say!("By the balance of heat no liquid could do it.").to_owned(),
        },
    };
    say!(
        "{balance} The sum gives every temperature the same weight, whatever it weighs in the \
         bowl, and leaves the bowl and flour’s own warming out; the less liquid there is, the \
         further it is off.",
        balance
    )
}
