//! Which texts the page can show, read from its own source.

use anyhow::{Context, Result, anyhow};
use proc_macro2::{Delimiter, Literal, TokenStream, TokenTree};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// Every text, with the first file that has it.
pub(crate) type Messages = BTreeMap<String, String>;

/// Every text below `src`: what is said or marked in words and page, and what the engine and the
/// examples call things, which `text::language::tr_dynamic` looks up.
pub(crate) fn all(src: &Path) -> Result<Messages> {
    let mut found = Messages::new();
    let places: [(&str, Look); 5] = [
        ("text", said),
        ("app", said),
        ("engine", called),
        ("sheet/examples.rs", called),
        ("sheet/scaled.rs", called),
    ];
    for (below, look) in places {
        gather(&src.join(below), src, look, &mut found)?;
    }
    Ok(found)
}

/// Picks the texts out of a file.
type Look = fn(TokenStream, &mut Vec<String>) -> Result<()>;

fn gather(path: &Path, src: &Path, look: Look, found: &mut Messages) -> Result<()> {
    if path.is_dir() {
        let mut inside: Vec<_> = fs::read_dir(path)?.collect::<Result<_, _>>()?;
        inside.sort_by_key(fs::DirEntry::path);
        for entry in inside {
            gather(&entry.path(), src, look, found)?;
        }
        return Ok(());
    }
    let is_rust = path.extension().is_some_and(|end| end == "rs");
    if !is_rust || path.ends_with("tests.rs") || path.ends_with("language/tr.rs") {
        return Ok(());
    }
    let name = path.strip_prefix(src)?.display().to_string();
    let tokens: TokenStream = fs::read_to_string(path)?
        .parse()
        .map_err(|trouble| anyhow!("{name} is not Rust: {trouble}"))?;
    let mut texts = Vec::new();
    look(tokens, &mut texts).with_context(|| name.clone())?;
    for text in texts {
        found.entry(text).or_insert_with(|| name.clone());
    }
    Ok(())
}

/// Texts inside `tr!(…)` and `tr_noop!(…)`.
fn said(tokens: TokenStream, texts: &mut Vec<String>) -> Result<()> {
    let tokens: Vec<TokenTree> = tokens.into_iter().collect();
    for (at, token) in tokens.iter().enumerate() {
        let TokenTree::Group(group) = token else {
            continue;
        };
        let is_said = at >= 2 && is_bang(tokens.get(at - 1)) && is_marked(tokens.get(at - 2));
        if is_said && let Some(TokenTree::Literal(literal)) = group.stream().into_iter().next() {
            texts.push(text(&literal)?);
        }
        said(group.stream(), texts)?;
    }
    Ok(())
}

fn is_bang(token: Option<&TokenTree>) -> bool {
    matches!(token, Some(TokenTree::Punct(mark)) if mark.as_char() == '!')
}

fn is_marked(token: Option<&TokenTree>) -> bool {
    matches!(token, Some(TokenTree::Ident(name)) if name == "tr" || name == "tr_noop")
}

/// Texts that are names of things: every literal with a word in it, outside attributes and tests.
fn called(tokens: TokenStream, texts: &mut Vec<String>) -> Result<()> {
    let mut in_attribute = false;
    for token in tokens {
        match token {
            // Of `#[…]` and `#![…]`.
            TokenTree::Punct(mark) => {
                in_attribute = mark.as_char() == '#' || (in_attribute && mark.as_char() == '!');
            }
            TokenTree::Group(group) => {
                let is_attribute = in_attribute && group.delimiter() == Delimiter::Bracket;
                in_attribute = false;
                if !is_attribute {
                    called(group.stream(), texts)?;
                } else if group.stream().to_string() == "cfg (test)" {
                    // Tests stand at the end of a file.
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

/// Whether a text of the engine is read by people: it has a word, and is no rule, unit or key.
fn is_name(text: &str) -> bool {
    let has_word = text
        .as_bytes()
        .windows(3)
        .any(|three| three.iter().all(u8::is_ascii_lowercase));
    let is_rule = [" × ", " / ", " + ", " − ", "^"]
        .iter()
        .any(|sign| text.contains(sign))
        || (!text.contains(' ') && text.contains(['(', '{']));
    let is_unit = text.contains('/') && !text.contains(' ');
    let is_key = text.ends_with("loaf") && !text.contains(' ');
    has_word && !is_rule && !is_unit && !is_key
}

/// The text of a literal, its escapes undone.
fn text(literal: &Literal) -> Result<String> {
    let read: syn::LitStr =
        syn::parse_str(&literal.to_string()).with_context(|| format!("{literal} is not a text"))?;
    Ok(read.value())
}

#[cfg(test)]
mod tests {
    use super::{called, said};

    #[test]
    fn what_is_said_is_found_wherever_it_stands() {
        let source = r#"fn a() { view! { <p title=tr!("One")>{tr!("Two \u{A0}{x}", x)}</p> } } const B: &str = tr_noop!("Three \
            and more"); const C: &str = "Four";"#;
        let mut texts = Vec::new();
        said(source.parse().unwrap(), &mut texts).unwrap();
        assert_eq!(texts, ["One", "Two \u{A0}{x}", "Three and more"]);
    }

    #[test]
    fn names_of_the_engine_are_told_from_rules_and_units() {
        let source = r#"#![doc = "none of this"] #[error("not this")] fn a() { given("m", "milk, whole", "g"); rule("max(a, 0) × b"); unit("mol/kg"); }
            #[cfg(test)] mod tests { const A: &str = "nor this"; }"#;
        let mut texts = Vec::new();
        called(source.parse().unwrap(), &mut texts).unwrap();
        assert_eq!(texts, ["milk, whole"]);
    }
}
