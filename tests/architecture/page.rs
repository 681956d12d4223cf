//! The page decides nothing: arithmetic, thresholds and searches lie in the layers to its left.

use syn::spanned::Spanned;
use syn::visit::Visit;
use syn::{BinOp, Expr, Lit};

use crate::files::below;

/// Places that still wait to be moved; none may be added.
const OPEN: usize = 0;

/// Lines of a file that work something out.
#[derive(Default)]
struct Decisions {
    lines: Vec<(usize, String)>,
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
            let line = expr.op.span().start().line;
            self.lines.push((line, "works something out".to_owned()));
        }
        syn::visit::visit_expr_binary(self, expr);
    }

    fn visit_expr_method_call(&mut self, call: &'ast syn::ExprMethodCall) {
        let name = call.method.to_string();
        let is_search =
            ["find", "find_map", "position", "filter", "rposition"].contains(&name.as_str());
        let over = receiver_text(&call.receiver);
        if is_search
            && ["parts", "lines", "streams"]
                .iter()
                .any(|list| over.contains(list))
        {
            let line = call.method.span().start().line;
            self.lines.push((line, format!("searches {over}")));
        }
        syn::visit::visit_expr_method_call(self, call);
    }
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
        // One interface of the browser each: waiting times and sizes of pictures are theirs.
        if file.path.starts_with("src/app/browser/") {
            continue;
        }
        let mut decisions = Decisions::default();
        decisions.visit_file(&syn::parse_file(&file.text).unwrap());
        let lines = decisions.lines.iter();
        found.extend(lines.map(|(line, what)| format!("{}:{line} {what}", file.path)));
    }
    assert!(
        found.len() <= OPEN,
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
    assert_eq!(decisions.lines.len(), 3);
}
