//! Templates: texts with placeholders `{{name}}`.

use anyhow::{Result, bail};

/// Replaces each `{{name}}` of a template by its value; a name without a value is an error.
pub(crate) fn fill(template: &str, values: &[(&str, &str)]) -> Result<String> {
    let mut filled = template.to_owned();
    for (name, value) in values {
        filled = filled.replace(&format!("{{{{{name}}}}}"), value);
    }
    match filled.split_once("{{") {
        Some((_, rest)) => bail!(
            "there is no value for {{{{{}",
            rest.chars().take(20).collect::<String>()
        ),
        None => Ok(filled),
    }
}

#[cfg(test)]
mod tests {
    use super::fill;

    #[test]
    fn every_placeholder_is_replaced_or_named() {
        assert_eq!(
            fill("a {{b}} c {{b}}", &[("b", "x"), ("unused", "y")]).unwrap(),
            "a x c x"
        );
        assert!(
            fill("a {{c}}", &[("b", "x")])
                .unwrap_err()
                .to_string()
                .contains("{{c}}")
        );
    }
}
