//! Fit: how large the letters of a printed page can be so that all of it stands on that one page.

use super::paper::{BenchCard, ClassSheet};
use crate::sheet::interchange::SquareCode;

/// How close together a page is set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Density {
    /// Large letters.
    Roomy,
    /// Middling ones.
    Close,
    /// The smallest that can be read on a bench.
    Closest,
}

/// A sheet of paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// The small one of the bench card.
    A5,
    /// A large one: what is printed here fits A4 and Letter.
    A4,
}

/// How a page is set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Fit {
    /// On what.
    pub paper: Paper,
    /// How close.
    pub density: Density,
    /// Whether all of it stands on one page then.
    pub one_page: bool,
}

const ALL: [Density; 3] = [Density::Roomy, Density::Close, Density::Closest];

/// A square of a code on paper, mm. Common practice: 0.4 mm are read by a phone at arm's length.
const SQUARE: f64 = 0.42;
/// A point in mm.
const POINT: f64 = 25.4 / 72.0;
/// Line height, and what a row of a table has around it, in parts of the letter.
const LINE: f64 = 1.25;
const ROW: f64 = 1.55;
/// How wide a letter is, in parts of its height; the widest of the usual screen faces.
const LETTER: f64 = 0.56;
/// Safety notes are set smaller.
const SAFETY: f64 = 0.78;
/// Room that a page keeps for what is not counted.
const SLACK: f64 = 0.94;

impl Density {
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

    /// Width and height that can be printed on, mm; of the large one what A4 and Letter share.
    const fn size(self) -> (f64, f64) {
        match self {
            Self::A5 => (132.0, 194.0),
            Self::A4 => (190.0, 259.0),
        }
    }
}

/// The side of a code on paper with its quiet margin, mm.
#[must_use]
pub fn code_side(code: &SquareCode) -> f64 {
    f64::from(code.side + 2 * SquareCode::MARGIN) * SQUARE
}

/// A page as it is measured: its letters, its width, how many columns lists have.
struct Set {
    letter: f64,
    width: f64,
    columns: f64,
}

impl Set {
    fn line(&self) -> f64 {
        self.letter * LINE
    }

    /// The height of a paragraph, so many times the width of the page, its letters so much smaller.
    fn paragraph(&self, text: &str, width: f64, times: f64) -> f64 {
        let letters = (self.width * width / (self.letter * times * LETTER)).max(1.0);
        let lines = libm::ceil(counted(text.chars().count()) / letters).max(1.0);
        (lines * LINE + 0.25) * self.letter * times
    }

    /// The height of notes in columns, their letters so much smaller.
    fn notes(&self, notes: &[String], times: f64) -> f64 {
        let width = 0.92 / self.columns;
        let each = notes.iter().map(|note| self.paragraph(note, width, times));
        each.sum::<f64>() / self.columns + self.line() * times
    }

    /// The rows of a table, where a name may take two lines.
    fn rows(&self, rows: usize) -> f64 {
        counted(rows) * self.letter * ROW
    }
}

fn counted(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::MAX, f64::from)
}

/// The first way of setting that holds what `height` measures.
fn first(papers: &[Paper], height: impl Fn(&Set) -> f64) -> Fit {
    let ways = papers
        .iter()
        .flat_map(|paper| ALL.map(|density| (*paper, density)));
    let fits = |(paper, density): &(Paper, Density)| {
        let (width, high) = paper.size();
        let letter = density.points() * POINT;
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
        density: Density::Closest,
        one_page: false,
    };
    if let Some((paper, density)) = ways.into_iter().find(fits) {
        last = Fit {
            paper,
            density,
            one_page: true,
        };
    }
    last
}

/// How a bench card is set: small where it fits, else large.
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

/// How a class sheet is set.
pub(super) fn sheet(sheet: &ClassSheet, code: f64) -> Fit {
    first(&[Paper::A4], |set| {
        let tables = sheet.tables.iter().map(Vec::len).max().unwrap_or_default();
        // Heads of columns take up to four lines, and names in a half page two here and there.
        let wraps = if sheet.tables.len() > 1 { 1.1 } else { 1.0 };
        let parts = sheet.tables.iter().flatten();
        let begun = parts.filter(|row| row.begins.is_some()).count();
        let rows =
            wraps * set.rows(tables + 4) + set.rows(begun) / counted(sheet.tables.len().max(1));
        let head = 3.0 * set.line() + set.paragraph(&sheet.allergens, 0.7, 1.0);
        head.max(code) + rows + set.notes(&sheet.notes, 1.0) + set.notes(&sheet.cautions, SAFETY)
    })
}
