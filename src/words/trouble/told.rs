//! What it takes to be told in words.

use crate::engine::quantity::{Division, OutOfRange};
use crate::words::{manner::Manner, say, write};

/// Something that stands in the way, and can be told in words.
pub trait Trouble {
    /// What is wrong, and what to do: one sentence or a few, each ending with a full stop.
    fn sentence(&self, manner: Manner) -> String;
}

/// An answer too large or too small for any kitchen.
pub(super) fn off_scale() -> String {
    say!(
        "The answer is too large or too small for any scale. Look for \
                                    a weight with a nought too many, or one that is missing."
    )
    .to_owned()
}

/// A number that lies outside what its kind can be.
pub(super) fn number_outside(what: &str, out: &OutOfRange, manner: Manner) -> String {
    let number = |value| write::significant(value, 6, manner.numbers);
    let (least, most) = (number(*out.range.start()), number(*out.range.end()));
    let size = out.value.abs();
    // Beyond a million million the digits say less than the word.
    if size <= 1e12 {
        let value = number(out.value);
        say!(
            "{what} holds the number {value}, where {least} to {most} is possible.",
            what,
            value,
            least,
            most
        )
    } else {
        say!(
            "{what} holds a number far outside what is possible, {least} to {most}.",
            what,
            least,
            most
        )
    }
}

/// A size of a file in megabytes.
pub(super) fn megabytes(bytes: usize, manner: Manner) -> String {
    let bytes = u32::try_from(bytes).map_or(f64::from(u32::MAX), f64::from);
    format!(
        "{}\u{A0}MB",
        write::significant(bytes / 1e6, 2, manner.numbers)
    )
}

/// A step that no scale has.
pub(super) fn no_such_division(manner: Manner) -> String {
    let steps = Division::ALL.map(|one| write::plain(one.grams(), 2, manner.numbers));
    let [others @ .., last] = &steps;
    // Where the comma is the decimal mark it cannot part numbers too.
    let between = if manner.numbers.decimal == ',' {
        "; "
    } else {
        ", "
    };
    say!(
        "No scale steps by that. Type {} or {last}\u{A0}g.",
        others.join(between),
        last
    )
}
