//! Collects the texts to translate from the page's source.

use anyhow::{Context, Result, anyhow};
use proc_macro2::{Delimiter, Literal, TokenStream, TokenTree};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// Every text, with the first file that holds it.
pub(crate) type Messages = BTreeMap<String, String>;

/// Every text below `src`: the marked ones of the text layer and the page, and the names that
/// the engine and the examples give to things, which `tr_dynamic` looks up.
pub(crate) fn all(src: &Path) -> Result<Messages> {
    let mut found = Messages::new();
    let sources: [(&str, Extract); 7] = [
        ("text", marked),
        ("app", marked),
        ("engine", names),
        ("sheet/examples.rs", names),
        ("sheet/new_sheet.rs", names),
        ("sheet/kitchen", names),
        ("results", names),
    ];
    for (below, extract) in sources {
        collect(&src.join(below), src, extract, &mut found)?;
    }
    Ok(found)
}

/// Extracts the texts of one file.
type Extract = fn(TokenStream, &mut Vec<String>) -> Result<()>;

fn collect(path: &Path, src: &Path, extract: Extract, found: &mut Messages) -> Result<()> {
    if path.is_dir() {
        let mut inside: Vec<_> = fs::read_dir(path)?.collect::<Result<_, _>>()?;
        inside.sort_by_key(fs::DirEntry::path);
        for entry in inside {
            collect(&entry.path(), src, extract, found)?;
        }
        return Ok(());
    }
    let is_rust = path.extension().is_some_and(|extension| extension == "rs");
    if !is_rust || path.ends_with("tests.rs") {
        return Ok(());
    }
    let name = path.strip_prefix(src)?.display().to_string();
    let tokens: TokenStream = fs::read_to_string(path)?
        .parse()
        .map_err(|error| anyhow!("{name} is not Rust: {error}"))?;
    let mut texts = Vec::new();
    extract(tokens, &mut texts).with_context(|| name.clone())?;
    for text in texts {
        found.entry(text).or_insert_with(|| name.clone());
    }
    Ok(())
}

/// Texts of `tr!(…)` and `tr_noop!(…)`.
fn marked(tokens: TokenStream, texts: &mut Vec<String>) -> Result<()> {
    let tokens: Vec<TokenTree> = tokens.into_iter().collect();
    for (at, token) in tokens.iter().enumerate() {
        let TokenTree::Group(group) = token else {
            continue;
        };
        let is_call = at >= 2 && is_bang(tokens.get(at - 1)) && is_macro(tokens.get(at - 2));
        if is_call && let Some(TokenTree::Literal(literal)) = group.stream().into_iter().next() {
            texts.push(text(&literal)?);
        }
        marked(group.stream(), texts)?;
    }
    Ok(())
}

fn is_bang(token: Option<&TokenTree>) -> bool {
    matches!(token, Some(TokenTree::Punct(mark)) if mark.as_char() == '!')
}

fn is_macro(token: Option<&TokenTree>) -> bool {
    matches!(token, Some(TokenTree::Ident(name)) if name == "tr" || name == "tr_noop")
}

/// Names of things: every string literal that reads like one, outside attributes and tests.
fn names(tokens: TokenStream, texts: &mut Vec<String>) -> Result<()> {
    let mut in_attribute = false;
    for token in tokens {
        match token {
            // This mark may begin an attribute, `#[…]` or `#![…]`.
            TokenTree::Punct(mark) => {
                in_attribute = mark.as_char() == '#' || (in_attribute && mark.as_char() == '!');
            }
            TokenTree::Group(group) => {
                let is_attribute = in_attribute && group.delimiter() == Delimiter::Bracket;
                in_attribute = false;
                if !is_attribute {
                    names(group.stream(), texts)?;
                } else if group.stream().to_string() == "cfg (test)" {
                    // Tests are at the end of a file.
                    return Ok(());
                }
            }
            TokenTree::Literal(literal) if literal.to_string().starts_with('"') => {
                let text = text(&literal)?;
                if is_name(&text) {
                    texts.push(text);
                }
            }
            TokenTree::Literal(_) | TokenTree::Ident(_) => {}
        }
    }
    Ok(())
}

/// Whether people read this text of the engine: it has a word, and is no rule, unit or key.
fn is_name(text: &str) -> bool {
    let has_word = text
        .as_bytes()
        .windows(3)
        .any(|three| three.iter().all(u8::is_ascii_lowercase));
    let is_rule = [" × ", " / ", " + ", " − ", "^"]
        .iter()
        .any(|sign| text.contains(sign));
    let is_code = !text.contains(' ') && (text.contains(['(', '{', '/']) || text.ends_with("loaf"));
    has_word && !is_rule && !is_code
}

/// The value of a string literal.
fn text(literal: &Literal) -> Result<String> {
    let read: syn::LitStr = syn::parse_str(&literal.to_string())
        .with_context(|| format!("{literal} is not a string"))?;
    Ok(read.value())
}

#[cfg(test)]
mod tests {
    use super::{marked, names};

    #[test]
    fn marked_texts_are_found_inside_other_macros() {
        let source = r#"fn a() { view! { <p title=tr!("One")>{tr!("Two \u{A0}{x}", x = x)}</p> } } const B: &str = tr_noop!("Three \
            and more"); const C: &str = "Four";"#;
        let mut texts = Vec::new();
        marked(source.parse().unwrap(), &mut texts).unwrap();
        assert_eq!(texts, ["One", "Two \u{A0}{x}", "Three and more"]);
    }

    #[test]
    fn names_of_the_engine_are_separated_from_rules_and_units() {
        let source = r#"#![doc = "none of this"] #[error("not this")] fn a() { given("m", "milk, whole", "g"); rule("max(a, 0) × b"); unit("mol/kg"); }
            #[cfg(test)] mod tests { const A: &str = "nor this"; }"#;
        let mut texts = Vec::new();
        names(source.parse().unwrap(), &mut texts).unwrap();
        assert_eq!(texts, ["milk, whole"]);
    }
}
