//! The handbook's factor method, and why it differs from the balance of heat.

use crate::engine::heat::{LiquidAnswer, PrintedFactor};
use crate::text::{format, format_options::FormatOptions, tr};

/// What a printed friction factor means.
#[must_use]
pub fn printed_factor(printed: PrintedFactor, options: FormatOptions) -> String {
    tr!(
        "Friction factor {factor}, as printed. A third of it, about {third}, is all that mixing and \
         the flour’s own warming are to add.",
        factor = format::degrees_off(printed.factor(), options),
        third = format::degrees_off(printed.warming(), options)
    )
}

/// Why it differs from the balance of heat.
#[must_use]
pub fn factor_differs(answer: &LiquidAnswer, options: FormatOptions) -> String {
    let balance = match answer {
        LiquidAnswer::At { liquid, .. } => {
            tr!(
                "The balance of heat says {value}.",
                value = format::temperature(*liquid, options)
            )
        }
        LiquidAnswer::OutOfReach(out) => match out.wanted {
            Some(wanted) => tr!(
                "The balance of heat would need {value}, which no dough may be given.",
                value = format::temperature(wanted, options)
            ),
            None => tr!("By the balance of heat no liquid could do it.").to_owned(),
        },
    };
    tr!(
        "{balance} The sum gives every temperature the same weight, whatever it weighs in the \
         bowl, and one printed factor stands for mixer, bowl and flour’s own warming; the less \
         liquid there is, the further it is off.",
        balance = balance
    )
}
