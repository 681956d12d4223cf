//! One line of working.

use std::borrow::Cow;

/// A letter with its number and unit.
#[derive(Clone, Debug, PartialEq)]
pub struct Given {
    /// The letter, as in the rule: letters and digits, beginning with a letter.
    pub letter: Cow<'static, str>,
    /// What the letter stands for, where the rule alone does not say: "milk", "flour".
    pub of: Cow<'static, str>,
    /// The number, in `unit`.
    pub value: f64,
    /// The unit as printed: "g", "%", "Pa·s"; empty for a plain number.
    pub unit: &'static str,
}

/// One step: `rule` with the numbers of `with` gives `result`.
#[derive(Clone, Debug, PartialEq)]
pub struct WorkingLine {
    /// The right-hand side in letters: sums, products, quotients, powers (`^`), brackets,
    /// and the functions `sqrt`, `exp`, `ln`, `log10`, `min`, `max`, `round`.
    pub rule: Cow<'static, str>,
    /// The numbers put in, one for each letter of the rule.
    pub with: Vec<Given>,
    /// The answer.
    pub result: Given,
    /// The work it is taken from, "common practice", or "by definition".
    pub source: Cow<'static, str>,
}

/// A letter with its number and unit.
#[must_use]
pub fn given(
    letter: impl Into<Cow<'static, str>>,
    of: impl Into<Cow<'static, str>>,
    value: f64,
    unit: &'static str,
) -> Given {
    Given {
        letter: letter.into(),
        of: of.into(),
        value,
        unit,
    }
}
