//! What the source says there is, so that no list of a test can forget a part of it.

use std::collections::BTreeSet;
use std::fmt::Debug;

use syn::parse::ParseStream;
use syn::visit::Visit;
use syn::{Ident, Item, ItemFn, LitStr, Macro};

/// Checks that `all` has every variant of the enum `name` in the source text `file`.
#[track_caller]
pub(crate) fn has_every_variant<T: Debug>(all: &[T], name: &str, file: &str) {
    let items = syn::parse_file(file).unwrap().items;
    let variants = items.into_iter().find_map(|item| {
        if let Item::Enum(found) = item
            && found.ident == name
        {
            Some(found.variants)
        } else {
            None
        }
    });
    let wanted: BTreeSet<String> = variants
        .unwrap_or_else(|| panic!("no enum {name}"))
        .iter()
        .map(|variant| variant.ident.to_string())
        .collect();
    let seen: BTreeSet<String> = all.iter().map(variant_of).collect();
    assert_eq!(seen, wanted, "variants of {name}");
}

fn variant_of(value: &impl Debug) -> String {
    let shown = format!("{value:?}");
    shown
        .chars()
        .take_while(|letter| letter.is_alphanumeric())
        .collect()
}

/// The texts that each function of the source text `file` can show, by the function's name.
pub(crate) fn texts_of(file: &str) -> Vec<(String, String)> {
    let mut found = Texts::default();
    found.visit_file(&syn::parse_file(file).unwrap());
    found.texts
}

#[derive(Default)]
struct Texts {
    within: Vec<Ident>,
    texts: Vec<(String, String)>,
}

impl<'ast> Visit<'ast> for Texts {
    fn visit_item_fn(&mut self, item: &'ast ItemFn) {
        self.within.push(item.sig.ident.clone());
        syn::visit::visit_item_fn(self, item);
        self.within.pop();
    }

    fn visit_macro(&mut self, called: &'ast Macro) {
        if called.path.is_ident("tr") {
            let first = |input: ParseStream<'_>| -> syn::Result<LitStr> {
                let text = input.parse()?;
                input.parse::<proc_macro2::TokenStream>()?;
                Ok(text)
            };
            let text = called.parse_body_with(first).unwrap().value();
            let function = self.within.last().unwrap().to_string();
            self.texts.push((function, text));
        }
    }
}

/// A text with 3 in every place that takes a value.
pub(crate) fn filled(text: &str) -> String {
    let mut filled = String::new();
    for (nth, piece) in text.split('{').enumerate() {
        match piece.split_once('}') {
            Some((_, rest)) if nth > 0 => {
                filled.push('3');
                filled.push_str(rest);
            }
            _ => filled.push_str(piece),
        }
    }
    filled
}
