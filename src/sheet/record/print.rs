//! Printing a tree as JSON: compact, keys in the order given, every number exact.

use std::borrow::Cow;
use std::fmt::{Display, Formatter, Result, Write};

use super::Tree;

impl Display for Tree<'_> {
    /// The shortest digits that read back to the same `f64`; never an exponent.
    fn fmt(&self, f: &mut Formatter) -> Result {
        match self {
            Self::Nothing => f.write_str("null"),
            Self::Truth(truth) => write!(f, "{truth}"),
            Self::Number(number) if number.is_finite() => write!(f, "{number}"),
            Self::Number(_) => f.write_str("null"),
            Self::Text(text) => print_text(f, text),
            Self::List(items) => {
                f.write_char('[')?;
                for (at, item) in items.iter().enumerate() {
                    comma(f, at)?;
                    item.fmt(f)?;
                }
                f.write_char(']')
            }
            Self::Fields(fields) => {
                f.write_char('{')?;
                for (at, (key, value)) in fields.iter().enumerate() {
                    comma(f, at)?;
                    print_text(f, key)?;
                    f.write_char(':')?;
                    value.fmt(f)?;
                }
                f.write_char('}')
            }
        }
    }
}

fn comma(f: &mut Formatter, at: usize) -> Result {
    if at > 0 { f.write_char(',') } else { Ok(()) }
}

/// A JSON string: quotes, backslashes and control characters escaped (RFC 8259, section 7).
fn print_text(f: &mut Formatter, text: &str) -> Result {
    f.write_char('"')?;
    for letter in text.chars() {
        match letter {
            '"' | '\\' => write!(f, "\\{letter}")?,
            '\u{0}'..='\u{1f}' => write!(f, "\\u{:04x}", u32::from(letter))?,
            _ => f.write_char(letter)?,
        }
    }
    f.write_char('"')
}

/// Keys with their values, those without a value left out.
pub(super) struct Writer<'t>(Vec<(Cow<'t, str>, Tree<'t>)>);

impl<'t> Writer<'t> {
    pub(super) const fn new() -> Self {
        Self(Vec::new())
    }

    pub(super) fn tree(mut self, key: &'static str, value: Tree<'t>) -> Self {
        self.0.push((Cow::Borrowed(key), value));
        self
    }

    pub(super) fn text(self, key: &'static str, text: impl Into<Cow<'t, str>>) -> Self {
        self.tree(key, Tree::Text(text.into()))
    }

    pub(super) fn number(self, key: &'static str, number: impl Into<f64>) -> Self {
        self.tree(key, Tree::Number(number.into()))
    }

    pub(super) fn maybe(self, key: &'static str, number: Option<f64>) -> Self {
        match number {
            Some(number) => self.number(key, number),
            None => self,
        }
    }

    pub(super) fn maybe_tree(self, key: &'static str, value: Option<Tree<'t>>) -> Self {
        match value {
            Some(value) => self.tree(key, value),
            None => self,
        }
    }

    pub(super) fn list(self, key: &'static str, items: impl Iterator<Item = Tree<'t>>) -> Self {
        self.tree(key, Tree::List(items.collect()))
    }

    pub(super) fn done(self) -> Tree<'t> {
        Tree::Fields(self.0)
    }
}
