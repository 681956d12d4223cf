//! Links: how long they are, and how large their square codes, for a small formula, the examples
//! and the largest there may be.

use softcrumb::engine::formula::{Formula, Line, Part};
use softcrumb::sheet::{Sheet, examples};
use softcrumb::storage::interchange::{SquareCode, square_code};
use softcrumb::storage::link;

/// The address before the text of a link, as a small host may have it.
const ADDRESS: &str = "https://bread.example/softcrumb/#loaf=";

/// The lines to print.
pub(crate) fn lines() -> Vec<String> {
    let mut all: Vec<(String, Sheet)> = examples()
        .into_iter()
        .map(|(_, sheet)| (format!("example “{}”", sheet.name), sheet))
        .collect();
    if let Some((_, first)) = all.first().cloned() {
        all.insert(
            0,
            ("small: flour, water, salt, yeast".to_owned(), small(&first)),
        );
        let large = large(&first);
        let mut noted = large.clone();
        noted.note = "Let the dough rest longer on cold days; see the class notes. "
            .chars()
            .cycle()
            .take(Sheet::NOTE_LENGTH)
            .collect();
        let count = large.formula.parts.iter().map(|one| one.lines.len());
        let count: usize = count.sum();
        all.push((format!("large: {count} ingredients"), large));
        all.push(("the same with a full note".to_owned(), noted));
    }
    all.iter()
        .map(|(name, sheet)| to_json(name, sheet))
        .collect()
}

fn to_json(name: &str, sheet: &Sheet) -> String {
    let Ok(text) = link::write(sheet) else {
        return format!("{name:<44} {:>5} characters: no link", link::length(sheet));
    };
    let whole = format!("{ADDRESS}{text}");
    let code = square_code(&whole).map_or_else(|_| "no code".to_owned(), |code| size(&code));
    format!(
        "{name:<44} {:>5} characters, {:>5} with the address; {code}",
        text.len(),
        whole.len()
    )
}

fn size(code: &SquareCode) -> String {
    let (side, version, level) = (code.side, code.version, code.level);
    format!("code of {side} × {side}, version {version}, level {level:?}")
}

/// Four lines of the first example's final dough, nothing else.
fn small(of: &Sheet) -> Sheet {
    let mut sheet = of.emptied();
    let dough = of.formula.parts.iter().find(|one| one.lines.len() > 3);
    let lines = dough.map(|own| own.lines.iter().take(4).cloned().collect());
    if let Some(own) = sheet.formula.parts.first_mut() {
        own.lines = lines.unwrap_or_default();
    }
    sheet.batch.tin = None;
    sheet
}

/// As many parts and ingredients as there may be, each weight another.
fn large(of: &Sheet) -> Sheet {
    let mut sheet = of.clone();
    let all: Vec<Line> = of
        .formula
        .parts
        .iter()
        .flat_map(|one| one.lines.clone())
        .collect();
    let parts: Vec<Part> = of.formula.parts.clone();
    let mut made: Vec<Part> = parts
        .into_iter()
        .cycle()
        .take(Formula::MOST_PARTS)
        .map(|part| Part {
            lines: Vec::new(),
            ..part
        })
        .collect();
    let places = made.len().max(1);
    for (at, line) in all
        .into_iter()
        .cycle()
        .take(Formula::MOST_LINES)
        .enumerate()
    {
        let mut line = line;
        let more = f64::from(u32::try_from(at).unwrap_or(0)) * 0.5;
        let mass = softcrumb::engine::quantity::Mass::from_grams(line.mass.grams() + more);
        line.mass = mass.unwrap_or(line.mass);
        if let Some(part) = made.get_mut(at % places) {
            part.lines.push(line);
        }
    }
    sheet.formula = Formula { parts: made };
    sheet
}
