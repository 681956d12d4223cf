//! The document: finding the recipe in linked data, and taking its fields apart.

use std::borrow::Cow;

use super::plain_html::plain;
use crate::storage::Json;

/// How deep nested lists and graphs are looked into.
const DEEPEST: u8 = 12;

/// The field of an object; the first where it is there twice.
pub(super) fn field<'t>(tree: &'t Json<'t>, wanted: &str) -> Option<&'t Json<'t>> {
    let Json::Fields(fields) = tree else {
        return None;
    };
    let short = |key: &Cow<str>| {
        key == wanted
            || key.strip_prefix("schema:") == Some(wanted)
            || key.strip_prefix("http://schema.org/") == Some(wanted)
            || key.strip_prefix("https://schema.org/") == Some(wanted)
    };
    fields
        .iter()
        .find(|(key, _)| short(key))
        .map(|(_, value)| value)
}

/// The first recipe anywhere in the tree.
pub(super) fn recipe<'t>(tree: &'t Json<'t>) -> Option<&'t Json<'t>> {
    within(tree, DEEPEST)
}

fn within<'t>(tree: &'t Json<'t>, deeper: u8) -> Option<&'t Json<'t>> {
    let deeper = deeper.checked_sub(1)?;
    match tree {
        Json::List(items) => items.iter().find_map(|item| within(item, deeper)),
        Json::Fields(fields) => {
            if is_a(tree, "Recipe") {
                return Some(tree);
            }
            fields.iter().find_map(|(_, value)| within(value, deeper))
        }
        Json::Nothing | Json::Truth(_) | Json::Number(_) | Json::Text(_) => None,
    }
}

/// Whether an object is of a type, alone or among others.
pub(super) fn is_a(tree: &Json, wanted: &str) -> bool {
    let named = |tree: &Json| {
        let Json::Text(text) = tree else {
            return false;
        };
        text.rsplit(['/', ':', '#']).next() == Some(wanted)
    };
    match field(tree, "@type") {
        Some(Json::List(types)) => types.iter().any(named),
        Some(one) => named(one),
        None => false,
    }
}

/// Every text in a field: one, a list of them, or objects that carry one.
pub(super) fn texts(tree: Option<&Json>) -> Vec<String> {
    let mut found = Vec::new();
    if let Some(tree) = tree {
        collect(tree, &mut found, DEEPEST);
    }
    found.retain(|text| !text.is_empty());
    found
}

fn collect(tree: &Json, found: &mut Vec<String>, deeper: u8) {
    let Some(deeper) = deeper.checked_sub(1) else {
        return;
    };
    match tree {
        Json::Text(text) => found.extend(text.lines().map(plain)),
        Json::Number(number) => found.push(number.to_string()),
        Json::List(items) => {
            for item in items {
                collect(item, found, deeper);
            }
        }
        Json::Fields(_) => {
            if let Some(amount) = amount_of(tree) {
                found.push(amount);
                return;
            }
            let carries = ["itemListElement", "item", "text", "name", "@value"];
            if let Some(inside) = carries.iter().find_map(|key| field(tree, key)) {
                collect(inside, found, deeper);
            }
        }
        Json::Nothing | Json::Truth(_) => {}
    }
}

/// `PropertyValue` and the like as a line: "500 g flour".
fn amount_of(tree: &Json) -> Option<String> {
    let name = texts(field(tree, "name")).into_iter().next()?;
    let (value, unit) = match field(tree, "requiredQuantity") {
        Some(inside @ Json::Fields(_)) => (field(inside, "value"), inside),
        _ => (field(tree, "value"), tree),
    };
    let value = texts(value).into_iter().next()?;
    let unit = texts(field(unit, "unitText").or_else(|| field(unit, "unitCode")));
    let unit = unit.first().map_or("", |unit| match unit.as_str() {
        "GRM" => "g",
        "KGM" => "kg",
        "MLT" => "ml",
        "LTR" => "l",
        "ONZ" => "oz",
        "LBR" => "lb",
        other => other,
    });
    Some(format!("{value} {unit} {name}").replace("  ", " "))
}
