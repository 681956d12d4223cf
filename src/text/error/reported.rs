//! The trait of errors that have a message.

use crate::engine::numerics::float_from_usize;
use crate::engine::quantity::{Division, OutOfRange};
use crate::text::{format, format_options::FormatOptions, tr};

/// An error with a message for the user.
pub trait ErrorText {
    /// Returns what is wrong and what to do, in one sentence or a few, each with a full stop.
    fn sentence(&self, options: FormatOptions) -> String;
}

/// Message for a result too large or too small for any kitchen.
pub(super) fn off_scale() -> String {
    tr!(
        "The answer is too large or too small for any scale. Look for \
                                    a weight with a nought too many, or one that is missing."
    )
    .to_owned()
}

/// Message for a number outside the range of its quantity.
pub(super) fn number_outside(what: &str, out: &OutOfRange, options: FormatOptions) -> String {
    let number = |value| format::significant(value, 6, options.numbers);
    let (least, most) = (number(*out.range.start()), number(*out.range.end()));
    let size = out.value.abs();
    // Beyond a million million the digits say less than the word.
    if size <= 1e12 {
        let value = number(out.value);
        tr!(
            "{what} holds the number {value}, where {least} to {most} is possible.",
            what = what,
            value = value,
            least = least,
            most = most
        )
    } else {
        tr!(
            "{what} holds a number far outside what is possible, {least} to {most}.",
            what = what,
            least = least,
            most = most
        )
    }
}

/// Formats a file size in megabytes.
pub(super) fn megabytes(bytes: usize, options: FormatOptions) -> String {
    let bytes = float_from_usize(bytes);
    format!(
        "{}\u{A0}MB",
        format::significant(bytes / 1e6, 2, options.numbers)
    )
}

/// Message for a division that no scale has.
pub(super) fn no_such_division(options: FormatOptions) -> String {
    let steps = Division::ALL.map(|one| format::plain(one.grams(), 2, options.numbers));
    let [others @ .., last] = &steps;
    // Where the comma is the decimal mark it cannot part numbers too.
    let between = if options.numbers.decimal == ',' {
        "; "
    } else {
        ", "
    };
    tr!(
        "No scale steps by that. Type {value} or {last}\u{A0}g.",
        value = others.join(between),
        last = last
    )
}
