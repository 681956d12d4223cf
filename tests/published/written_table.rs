//! A table that a test writes into `DEVELOPERS.md`, and that fails when it is out of date.

use std::fmt::Write;
use std::path::Path;

/// The head of a column.
pub(crate) struct Column {
    head: &'static str,
    is_number: bool,
}

impl Column {
    /// A column of texts.
    pub(crate) const fn text(head: &'static str) -> Self {
        Self {
            head,
            is_number: false,
        }
    }

    /// A column of numbers, set to the right.
    pub(crate) const fn number(head: &'static str) -> Self {
        Self {
            head,
            is_number: true,
        }
    }
}

/// Holds the table between the markers of this name against these rows, or writes it where
/// `SOFTCRUMB_TABLES` is set.
pub(crate) fn check(name: &str, columns: &[Column], rows: &[Vec<String>]) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("DEVELOPERS.md");
    let document = std::fs::read_to_string(&path).unwrap();
    let (start, end) = (
        format!("<!-- table: {name} -->\n"),
        format!("<!-- end of table: {name} -->\n"),
    );
    let (before, rest) = document
        .split_once(&start)
        .expect("no marker for the table");
    let (written, after) = rest.split_once(&end).expect("no end marker for the table");
    let table = markdown(columns, rows);
    if std::env::var_os("SOFTCRUMB_TABLES").is_some() {
        let whole = format!("{before}{start}{table}{end}{after}");
        std::fs::write(&path, whole).unwrap();
        return;
    }
    assert_eq!(
        written, table,
        "DEVELOPERS.md is out of date: SOFTCRUMB_TABLES=1 cargo test up_to_date"
    );
}

fn markdown(columns: &[Column], rows: &[Vec<String>]) -> String {
    let mut table = String::new();
    let heads: Vec<&str> = columns.iter().map(|column| column.head).collect();
    writeln!(table, "| {} |", heads.join(" | ")).unwrap();
    let rules: Vec<&str> = columns
        .iter()
        .map(|column| if column.is_number { "---:" } else { "---" })
        .collect();
    writeln!(table, "| {} |", rules.join(" | ")).unwrap();
    for row in rows {
        writeln!(table, "| {} |", row.join(" | ")).unwrap();
    }
    table
}
