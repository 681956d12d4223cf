//! The largest type size at which a printed page fits on one sheet.

use super::page::{BenchCard, ClassSheet, Fit, Paper, TypeSize};
use crate::engine::numerics::float_from_usize;
use crate::storage::interchange::SquareCode;

const ALL: [TypeSize; 3] = [TypeSize::Roomy, TypeSize::Close, TypeSize::Closest];

/// Side of one module of a square code on paper, mm. Common practice: a phone reads 0.4 mm at arm's
/// length.
const SQUARE: f64 = 0.42;
/// One point, mm.
const POINT: f64 = 25.4 / 72.0;
/// Line height and padding of a table row, relative to the type size.
const LINE: f64 = 1.25;
const ROW: f64 = 1.55;
/// Mean width of a letter relative to its size, for the widest of the usual screen fonts.
const LETTER: f64 = 0.56;
/// Type size of safety notes relative to the text.
const SAFETY: f64 = 0.78;
/// Reserve for what is not measured, relative to the page.
const SLACK: f64 = 0.94;

impl TypeSize {
    const fn points(self) -> f64 {
        match self {
            Self::Roomy => 9.0,
            Self::Close => 8.0,
            Self::Closest => 6.5,
        }
    }
}

impl Paper {
    const fn columns(self) -> f64 {
        match self {
            Self::A5 => 2.0,
            Self::A4 => 3.0,
        }
    }

    /// Printable width and height, mm.
    const fn size(self) -> (f64, f64) {
        match self {
            Self::A5 => (132.0, 194.0),
            Self::A4 => (190.0, 259.0),
        }
    }
}

/// Side of a code on paper with its quiet zone, mm.
#[must_use]
pub fn code_side(code: &SquareCode) -> f64 {
    f64::from(code.side + 2 * SquareCode::MARGIN) * SQUARE
}

/// Measures of a page: type size, width, columns of its lists.
struct Set {
    letter: f64,
    width: f64,
    columns: f64,
}

impl Set {
    fn line(&self) -> f64 {
        self.letter * LINE
    }

    /// Height of a paragraph of a given width and relative type size.
    fn paragraph(&self, text: &str, width: f64, times: f64) -> f64 {
        let letters = (self.width * width / (self.letter * times * LETTER)).max(1.0);
        let lines = libm::ceil(float_from_usize(text.chars().count()) / letters).max(1.0);
        (lines * LINE + 0.25) * self.letter * times
    }

    /// Height of notes in columns at a relative type size.
    fn notes(&self, notes: &[String], times: f64) -> f64 {
        let width = 0.92 / self.columns;
        let each = notes.iter().map(|note| self.paragraph(note, width, times));
        each.sum::<f64>() / self.columns + self.line() * times
    }

    /// Height of a table whose names may take two lines.
    fn rows(&self, rows: usize) -> f64 {
        float_from_usize(rows) * self.letter * ROW
    }
}

/// Finds the first layout that holds the height which `height` measures.
fn first(papers: &[Paper], height: impl Fn(&Set) -> f64) -> Fit {
    let layouts = papers
        .iter()
        .flat_map(|paper| ALL.map(|type_size| (*paper, type_size)));
    let fits = |(paper, type_size): &(Paper, TypeSize)| {
        let (width, high) = paper.size();
        let letter = type_size.points() * POINT;
        let columns = paper.columns();
        let set = Set {
            letter,
            width,
            columns,
        };
        height(&set) <= high * SLACK
    };
    let mut last = Fit {
        paper: Paper::A4,
        type_size: TypeSize::Closest,
        one_page: false,
    };
    if let Some((paper, type_size)) = layouts.into_iter().find(fits) {
        last = Fit {
            paper,
            type_size,
            one_page: true,
        };
    }
    last
}

/// Finds the layout of a bench card: A5 if it fits, else A4 or Letter.
pub(super) fn card(card: &BenchCard, code: f64) -> Fit {
    first(&[Paper::A5, Paper::A4], |set| {
        let rows = card.parts.iter().map(|part| part.lines.len() + 2);
        // Columns do not come out even.
        let tables = set.rows(rows.sum()) * 1.04 / set.columns;
        let steps = card.steps.iter().map(|(name, work)| {
            let text = format!("{name}: {}", work.join(" "));
            set.paragraph(&text, 1.0, 1.0)
        });
        let head = 3.0 * set.line() + set.paragraph(&card.allergens, 0.6, 1.0);
        head.max(code) + tables + steps.sum::<f64>() + set.notes(&card.cautions, SAFETY)
    })
}

/// Finds the layout of a class sheet.
pub(super) fn sheet(sheet: &ClassSheet, code: f64) -> Fit {
    first(&[Paper::A4], |set| {
        let tables = sheet.tables.iter().map(Vec::len).max().unwrap_or_default();
        // Heads of columns take up to four lines, and names in a half page two here and there.
        let wraps = if sheet.tables.len() > 1 { 1.1 } else { 1.0 };
        let parts = sheet.tables.iter().flatten();
        let headings = parts.filter(|row| row.begins.is_some()).count();
        let rows = wraps * set.rows(tables + 4)
            + set.rows(headings) / float_from_usize(sheet.tables.len().max(1));
        let head = 3.0 * set.line() + set.paragraph(&sheet.allergens, 0.7, 1.0);
        head.max(code) + rows + set.notes(&sheet.notes, 1.0) + set.notes(&sheet.cautions, SAFETY)
    })
}
