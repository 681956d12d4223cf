//! The name of a saved file: the formula's own, in letters that every device takes.

/// Most letters of a formula's name in a file's.
const MOST: usize = 60;

/// A file's name: the formula's in small letters, digits and hyphens, the date, the ending.
///
/// ```
/// use softcrumb::text::share::file_name;
///
/// let name = file_name("Milk loaf / №\u{a0}2", "2026-11-30", "json");
/// assert_eq!(name, "milk-loaf-2-2026-11-30.json");
/// assert_eq!(file_name("***", "2026-11-30", "csv"), "softcrumb-2026-11-30.csv");
/// ```
#[must_use]
pub fn file_name(formula: &str, date: &str, ending: &str) -> String {
    let words = formula.split(|letter: char| !letter.is_alphanumeric());
    let words: Vec<&str> = words.filter(|word| !word.is_empty()).collect();
    let name: String = words.join("-").to_lowercase().chars().take(MOST).collect();
    let name = name.trim_end_matches('-');
    let name = if name.is_empty() { "softcrumb" } else { name };
    format!("{name}-{date}.{ending}")
}
