//! Parts in columns: as even as they can be, and a part that is split says its name again.

use std::ops::Range;

use crate::text::tr;
use crate::text::weighing::PartWeights;

/// The fewest lines of a part that may stand alone at the end or the head of a column.
const FEWEST: usize = 2;
/// Rows by which a column may be longer so that no part is split.
const WHOLE: usize = 1;
/// The most rows of a column: a page holds no more at the least type size.
const MOST_ROWS: usize = 46;

/// The name of a part that was begun elsewhere: "Paste, continued".
#[must_use]
pub(super) fn continued(name: &str) -> String {
    tr!("{name}, continued", name = name)
}

/// Some lines of a part.
#[derive(Clone)]
struct Piece<'p> {
    part: &'p PartWeights,
    lines: Range<usize>,
}

impl Piece<'_> {
    /// Its lines and its name.
    fn rows(&self) -> usize {
        self.lines.len().saturating_add(1)
    }

    fn written(&self) -> PartWeights {
        let lines = self.part.lines.get(self.lines.clone());
        PartWeights {
            name: if self.lines.start == 0 {
                self.part.name.clone()
            } else {
                continued(&self.part.name)
            },
            lines: lines.unwrap_or_default().to_vec(),
            total: self.part.total.clone(),
        }
    }

    /// Takes as many lines from its head as there is room for under its name; none where one of
    /// the two pieces would be too short.
    fn split(&mut self, room: usize) -> Option<Self> {
        let all = self.lines.len();
        let fitting = room.saturating_sub(1).min(all.saturating_sub(FEWEST));
        (fitting >= FEWEST).then(|| self.split_at(fitting))
    }

    fn split_at(&mut self, lines: usize) -> Self {
        let end = self.lines.start.saturating_add(lines).min(self.lines.end);
        let head = Self {
            part: self.part,
            lines: self.lines.start..end,
        };
        self.lines.start = end;
        head
    }
}

/// Parts in columns side by side. What is more than a page holds begins again below, in columns of
/// its own.
#[must_use]
pub fn blocks(parts: &[PartWeights], columns: usize) -> Vec<Vec<Vec<PartWeights>>> {
    let all = parts.iter().map(|part| Piece {
        part,
        lines: 0..part.lines.len(),
    });
    let (mut rest, columns) = (all.collect::<Vec<_>>(), columns.max(1));
    let mut blocks = Vec::new();
    while !rest.is_empty() {
        let block = cut(&mut rest, MOST_ROWS.saturating_mul(columns), true);
        let laid = in_columns(&block, columns).into_iter();
        let written = laid.map(|column| column.iter().map(Piece::written).collect());
        blocks.push(written.collect());
    }
    blocks
}

/// Pieces in so many columns, as even as they can be.
fn in_columns<'p>(pieces: &[Piece<'p>], columns: usize) -> Vec<Vec<Piece<'p>>> {
    let total: usize = pieces.iter().map(Piece::rows).sum();
    let even = total.div_ceil(columns).max(1);
    let most = total.saturating_add(columns);
    let laid = |splits: bool| {
        let all = (even..=most).map(|height| (height, laid_out(pieces, columns, height, splits)));
        let mut fits = all.filter_map(|(height, found)| Some((height, found?)));
        fits.next()
    };
    match (laid(true), laid(false)) {
        (Some((split, _)), Some((whole, found))) if whole <= split.saturating_add(WHOLE) => found,
        (Some((_, found)), _) | (None, Some((_, found))) => found,
        (None, None) => vec![pieces.to_vec()],
    }
}

/// Pieces in columns of at most so many rows each; `None` where they take more columns.
fn laid_out<'p>(
    pieces: &[Piece<'p>],
    columns: usize,
    height: usize,
    splits: bool,
) -> Option<Vec<Vec<Piece<'p>>>> {
    let mut rest = pieces.to_vec();
    let mut found = Vec::new();
    while !rest.is_empty() {
        let column = cut(&mut rest, height, splits);
        let rows: usize = column.iter().map(Piece::rows).sum();
        if rows > height || found.len() >= columns {
            return None;
        }
        found.push(column);
    }
    Some(found)
}

/// Takes as many rows from the head of some pieces; at least a piece of one.
fn cut<'p>(rest: &mut Vec<Piece<'p>>, height: usize, splits: bool) -> Vec<Piece<'p>> {
    let mut taken = Vec::new();
    let mut room = height;
    while let Some(piece) = rest.first_mut() {
        let needs = piece.rows();
        if needs <= room {
            room = room.saturating_sub(needs);
            taken.push(rest.remove(0));
            continue;
        }
        if let Some(head) = splits.then(|| piece.split(room)).flatten() {
            taken.push(head);
        } else if taken.is_empty() {
            taken.push(rest.remove(0));
        }
        break;
    }
    taken
}
