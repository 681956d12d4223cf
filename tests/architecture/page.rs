//! The page decides nothing: arithmetic, thresholds and searches lie in the layers to its left.

use std::collections::BTreeSet;

use proc_macro2::{LineColumn, Spacing, TokenStream, TokenTree};
use syn::parse::{ParseStream, Parser};
use syn::spanned::Spanned;
use syn::visit::Visit;
use syn::{BinOp, Expr, Lit};

use crate::files::below;

/// Places of a file that work something out, each once.
#[derive(Default)]
struct Decisions {
    found: BTreeSet<(LineColumn, String)>,
}

impl<'ast> Visit<'ast> for Decisions {
    fn visit_expr_binary(&mut self, expr: &'ast syn::ExprBinary) {
        let is_arithmetic = matches!(
            expr.op,
            BinOp::Add(_)
                | BinOp::Sub(_)
                | BinOp::Mul(_)
                | BinOp::Div(_)
                | BinOp::Rem(_)
                | BinOp::AddAssign(_)
                | BinOp::SubAssign(_)
                | BinOp::MulAssign(_)
                | BinOp::DivAssign(_)
        );
        let is_comparison = matches!(
            expr.op,
            BinOp::Lt(_) | BinOp::Le(_) | BinOp::Gt(_) | BinOp::Ge(_)
        );
        let has_fraction = [&expr.left, &expr.right]
            .into_iter()
            .any(|side| is_fraction(side));
        if is_arithmetic || (is_comparison && has_fraction) {
            let at = expr.op.span().start();
            self.found.insert((at, "works something out".to_owned()));
        }
        syn::visit::visit_expr_binary(self, expr);
    }

    fn visit_expr_method_call(&mut self, call: &'ast syn::ExprMethodCall) {
        let name = call.method.to_string();
        let is_search = [
            "find",
            "find_map",
            "position",
            "filter",
            "rposition",
            "take",
        ]
        .contains(&name.as_str());
        let over = receiver_text(&call.receiver);
        if is_search
            && ["parts", "lines", "streams"]
                .iter()
                .any(|list| over.contains(list))
        {
            let at = call.method.span().start();
            self.found.insert((at, format!("searches {over}")));
        }
        syn::visit::visit_expr_method_call(self, call);
    }

    fn visit_macro(&mut self, call: &'ast syn::Macro) {
        let name = call.path.segments.last().map(|one| one.ident.to_string());
        if name.as_deref() == Some("view") {
            self.visit_view(call.tokens.clone());
        } else {
            let list = syn::punctuated::Punctuated::<Expr, syn::Token![,]>::parse_terminated;
            if let Ok(arguments) = list.parse2(call.tokens.clone()) {
                arguments.iter().for_each(|one| self.visit_expr(one));
            }
        }
    }
}

impl Decisions {
    /// Visits the Rust code in a `view!`: each block, and the value of each attribute.
    fn visit_view(&mut self, tokens: TokenStream) {
        let tokens: Vec<TokenTree> = tokens.into_iter().collect();
        for (place, token) in tokens.iter().enumerate() {
            match token {
                TokenTree::Group(_) => {
                    if let Ok(block) = syn::parse2::<syn::Block>(token.clone().into()) {
                        self.visit_block(&block);
                    }
                }
                TokenTree::Punct(equals) if equals.as_char() == '=' => {
                    let first = |input: ParseStream| {
                        let expr = input.parse::<Expr>()?;
                        input.parse::<TokenStream>()?;
                        Ok(expr)
                    };
                    let value = attribute_value(&tokens[place + 1..]);
                    // A block as value is met as a group.
                    if let Ok(expr) = first.parse2(value)
                        && !matches!(expr, Expr::Block(_))
                    {
                        self.visit_expr(&expr);
                    }
                }
                _ => {}
            }
        }
    }
}

/// The tokens after an attribute's `=` up to the end of its tag.
fn attribute_value(after: &[TokenTree]) -> TokenStream {
    let mut value = Vec::new();
    let mut is_arrow = false;
    for (place, token) in after.iter().enumerate() {
        if let TokenTree::Punct(mark) = token {
            let next = after.get(place + 1);
            let closes = matches!(next, Some(TokenTree::Punct(next)) if next.as_char() == '>');
            if (mark.as_char() == '/' && closes) || (mark.as_char() == '>' && !is_arrow) {
                break;
            }
            is_arrow = mark.as_char() == '-' && mark.spacing() == Spacing::Joint;
        } else {
            is_arrow = false;
        }
        value.push(token.clone());
    }
    value.into_iter().collect()
}

fn is_fraction(expr: &Expr) -> bool {
    matches!(expr, Expr::Lit(lit) if matches!(lit.lit, Lit::Float(_)))
}

/// The names a chain of calls is made on: `sheet.formula.parts.iter()`.
fn receiver_text(expr: &Expr) -> String {
    match expr {
        Expr::MethodCall(call) => format!("{}.{}()", receiver_text(&call.receiver), call.method),
        Expr::Field(field) => {
            let syn::Member::Named(name) = &field.member else {
                return receiver_text(&field.base);
            };
            format!("{}.{name}", receiver_text(&field.base))
        }
        Expr::Path(path) => path
            .path
            .segments
            .last()
            .map(|one| one.ident.to_string())
            .unwrap_or_default(),
        Expr::Reference(reference) => receiver_text(&reference.expr),
        _ => String::new(),
    }
}

#[test]
fn the_page_works_nothing_out() {
    let mut found = Vec::new();
    for file in below("src/app", &[".rs"]) {
        // These files wrap the browser's interfaces, with their waiting times and sizes of pictures.
        if file.path.starts_with("src/app/browser/") {
            continue;
        }
        let mut decisions = Decisions::default();
        decisions.visit_file(&syn::parse_file(&file.text).unwrap());
        let places = decisions.found.iter();
        found.extend(places.map(|(at, what)| format!("{}:{} {what}", file.path, at.line)));
    }
    assert!(
        found.is_empty(),
        "{} places:\n{}",
        found.len(),
        found.join("\n")
    );
}

#[test]
fn arithmetic_thresholds_and_searches_are_seen() {
    let text = "fn f(sheet: &Sheet) { let a = b + c; if a > 0.5 {} let p = sheet.formula.parts.iter().position(g); if n > 3 {} }";
    let mut decisions = Decisions::default();
    decisions.visit_file(&syn::parse_file(text).unwrap());
    assert_eq!(decisions.found.len(), 3);
    let view = "fn f() { view! { <p aria-live=\"off\" class:on=move || n - 1 > 0>{move || view! { <b>{a * b}</b> }}</p> \
                <Row at=place + 1 on_tap=move |()| -> bool { list.lines.iter().find(f) } /> } }";
    let mut decisions = Decisions::default();
    decisions.visit_file(&syn::parse_file(view).unwrap());
    assert_eq!(decisions.found.len(), 4);
}
