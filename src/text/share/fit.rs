//! The type size of a printed page: the largest at which it fits on one sheet of paper.

use super::card_steps::CardStep;
use super::page::{BenchCard, ClassSheet, Fit, Paper};
use crate::engine::numerics::{first_integer, float_from_usize};
use crate::storage::interchange::SquareCode;
use crate::text::day::numbered_steps;

/// Side of one module of a square code on paper, mm. Common practice: a phone reads 0.4 mm at arm's
/// length.
const SQUARE: f64 = 0.42;
/// One point, mm.
const POINT: f64 = 25.4 / 72.0;
/// One pixel of a style sheet, mm.
const PIXEL: f64 = 25.4 / 96.0;
/// Line height and padding of a table row, relative to the type size.
const LINE: f64 = 1.2;
const ROW: f64 = 1.3;
/// Mean width of a letter relative to its size in the usual screen fonts.
const LETTER: f64 = 0.48;
/// Type size of safety notes relative to the text.
const SAFETY: f64 = 0.9;
/// Type sizes are tried in quarter points.
const QUARTER: f64 = 4.0;

/// The least type size, points. At 0.9 of it small letters of the usual screen fonts, some 0.52 of
/// the type size, are 1.2 mm high.
///
/// Source: Regulation (EU) No 1169/2011, article 13(2), for what must be read on food.
pub const LEAST: f64 = 7.5;

impl Paper {
    /// The largest type that is sensible, points.
    const fn greatest(self) -> f64 {
        match self {
            Self::A5 => 12.0,
            Self::A4 => 14.0,
        }
    }

    /// Columns of weights on it.
    #[must_use]
    pub const fn columns(self) -> usize {
        match self {
            Self::A5 => 2,
            Self::A4 => 3,
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

/// A page as it was laid out at a type size, in pixels of its style sheet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PageSize {
    /// Its height.
    pub high: f64,
    /// The width of what is in it.
    pub wide: f64,
    /// The width it has.
    pub room: f64,
}

/// Side of a code on paper with its quiet zone, mm.
#[must_use]
pub fn code_side(code: &SquareCode) -> f64 {
    f64::from(code.side + 2 * SquareCode::MARGIN) * SQUARE
}

/// The first of some papers that holds a page, and the largest type at which it does, as `laid_out`
/// measures it; the last of them at the least size where none does.
pub fn fitted(papers: &[Paper], mut laid_out: impl FnMut(Paper, f64) -> PageSize) -> Fit {
    let found = papers.iter().find_map(|paper| {
        largest(*paper, |points| {
            let page = laid_out(*paper, points);
            page.high * PIXEL <= paper.size().1 && page.wide <= page.room
        })
    });
    found.unwrap_or(Fit {
        paper: papers.last().copied().unwrap_or(Paper::A4),
        points: LEAST,
        one_page: false,
    })
}

/// The layout with the largest type on a paper; `None` where not even the least fits.
fn largest(paper: Paper, mut fits: impl FnMut(f64) -> bool) -> Option<Fit> {
    let range = libm::round((paper.greatest() - LEAST) * QUARTER);
    let steps = (0..).take_while(|step| f64::from(*step) <= range);
    let last = i64::from(steps.last().unwrap_or(0));
    let size = |smaller: i64| {
        let smaller = i32::try_from(smaller).unwrap_or_default();
        paper.greatest() - f64::from(smaller) / QUARTER
    };
    let found = first_integer(0..=last, |smaller| fits(size(smaller)))?;
    Some(Fit {
        paper,
        points: size(found),
        one_page: true,
    })
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
        let letters = (width / (self.letter * times * LETTER)).max(1.0);
        let lines = text
            .lines()
            .map(|line| libm::ceil(float_from_usize(line.chars().count()) / letters).max(1.0));
        (lines.sum::<f64>().max(1.0) * LINE + 0.1) * self.letter * times
    }

    /// Height of notes and cautions, which run around the code; `notes` is their height at a width.
    fn around_code(&self, notes: impl Fn(f64) -> f64, cautions: &[String], code: f64) -> f64 {
        let text = |width: f64| {
            let each = cautions.iter();
            let each = each.map(|caution| self.paragraph(caution, width, SAFETY));
            notes(width) + each.sum::<f64>() + 0.5 * self.line()
        };
        let beside = text(self.width - code - 2.0);
        let around = text(self.width) + code * (code + 2.0) / self.width;
        beside.min(around).max(code)
    }

    /// Height of a table whose names may take two lines.
    fn rows(&self, rows: usize) -> f64 {
        float_from_usize(rows) * self.letter * ROW
    }

    /// Height of a step with what then runs by itself.
    fn step(&self, step: &CardStep) -> f64 {
        let mut text = format!("{}: {}", step.name, step.says);
        for (name, says) in &step.runs {
            text.push_str(name);
            text.push_str(says);
        }
        self.paragraph(&text, self.width * 0.96, 1.0)
    }
}

/// Estimates the layout before a page is laid out.
fn estimated(papers: &[Paper], height: impl Fn(&Set) -> f64) -> Fit {
    fitted(papers, |paper, points| {
        let (width, _) = paper.size();
        let set = Set {
            letter: points * POINT,
            width,
            columns: float_from_usize(paper.columns()),
        };
        PageSize {
            high: height(&set) / PIXEL,
            wide: width,
            room: width,
        }
    })
}

/// Estimates the layout of a card: A5 if it fits, else A4 or Letter.
pub(super) fn card(card: &BenchCard, code: f64) -> Fit {
    estimated(&[Paper::A5, Paper::A4], |set| {
        let rows = card.parts.iter().map(|part| part.lines.len() + 1);
        // Columns do not come out even.
        let tables = set.rows(rows.sum::<usize>() + 2) * 1.04 / set.columns;
        let steps = card.steps.iter().map(|step| set.step(step));
        let notes = |width: f64| {
            let each = card.notes.iter();
            let each =
                each.map(|(name, note)| set.paragraph(&format!("{name}: {note}"), width, 1.0));
            each.sum::<f64>() + set.paragraph(numbered_steps(), width, SAFETY)
        };
        let made = format!("{} {}", card.made, card.allergens);
        let head = 2.0 * set.line() + set.paragraph(&made, set.width, 1.0);
        head + tables + steps.sum::<f64>() + set.around_code(notes, &card.cautions, code)
    })
}

/// Estimates the layout of a class sheet.
pub(super) fn sheet(sheet: &ClassSheet, code: f64) -> Fit {
    estimated(&[Paper::A4], |set| {
        let headings = |rows: &Vec<super::page::SheetRow>| {
            let begun = rows.iter().filter(|row| row.begins.is_some());
            rows.len() + begun.count()
        };
        let blocks = sheet.tables.chunks(2);
        let rows = blocks.map(|block| block.iter().map(headings).max().unwrap_or_default() + 3);
        // Names in a half page take two lines here and there.
        let wraps = if sheet.tables.len() > 1 { 1.12 } else { 1.0 };
        let notes = sheet.notes.iter();
        let notes = notes.map(|note| set.paragraph(note, set.width * 0.9 / set.columns, 1.0));
        let notes = notes.sum::<f64>() / set.columns + 2.0 * set.line();
        let head = 3.5 * set.line() + set.paragraph(&sheet.allergens, set.width, 1.0);
        head + wraps * set.rows(rows.sum()) + set.around_code(|_| notes, &sheet.cautions, code)
    })
}
