//! Moving and removing lines and parts; the batch target follows its line.

use super::Sheet;
use crate::engine::batch::BatchTarget;
use crate::engine::formula::LineAt;
use crate::engine::quantity::Mass;

impl Sheet {
    /// Removes a line. `false` if there is no such line.
    pub fn remove_line(&mut self, at: LineAt) -> bool {
        let Some(own) = self.formula.parts.get_mut(at.part) else {
            return false;
        };
        if at.line >= own.lines.len() {
            return false;
        }
        own.lines.remove(at.line);
        self.follow(|one| match one.line.checked_sub(1) {
            _ if one == at => None,
            Some(before) if one.part == at.part && one.line > at.line => Some(LineAt {
                line: before,
                ..one
            }),
            Some(_) | None => Some(one),
        });
        true
    }

    /// Moves a line to the end of another part. `false` if there is no such line or part.
    pub fn move_line(&mut self, at: LineAt, to: usize) -> bool {
        let (Some(line), Some(end)) = (
            self.formula.line(at).cloned(),
            self.formula.parts.get(to).map(|own| own.lines.len()),
        ) else {
            return false;
        };
        if at.part == to {
            return false;
        }
        let asked = self.asked();
        self.remove_line(at);
        if let Some(own) = self.formula.parts.get_mut(to) {
            own.lines.push(line);
        }
        if let Some((asked_at, mass)) = asked
            && asked_at == at
        {
            let at = LineAt {
                part: to,
                line: end,
            };
            self.batch.wanted = BatchTarget::OnHand { at, mass };
        }
        true
    }

    /// Removes a part with its lines. `false` if there is no such part.
    pub fn remove_part(&mut self, part: usize) -> bool {
        if part >= self.formula.parts.len() {
            return false;
        }
        self.formula.parts.remove(part);
        self.follow(|one| match one.part.checked_sub(1) {
            _ if one.part == part => None,
            Some(before) if one.part > part => Some(LineAt {
                part: before,
                ..one
            }),
            Some(_) | None => Some(one),
        });
        true
    }

    /// Moves a part one place up. `false` if it is the first, or does not exist.
    pub fn part_earlier(&mut self, part: usize) -> bool {
        let Some(before) = part.checked_sub(1) else {
            return false;
        };
        if part >= self.formula.parts.len() {
            return false;
        }
        self.formula.parts.swap(before, part);
        self.follow(|one| {
            let part = match one.part {
                there if there == before => part,
                there if there == part => before,
                there => there,
            };
            Some(LineAt { part, ..one })
        });
        true
    }

    /// The line whose weight in stock is the batch target, if any.
    fn asked(&self) -> Option<(LineAt, Mass)> {
        match self.batch.wanted {
            BatchTarget::OnHand { at, mass } => Some((at, mass)),
            BatchTarget::Times(_)
            | BatchTarget::Dough(_)
            | BatchTarget::Pieces { .. }
            | BatchTarget::FlourOnHand(_)
            | BatchTarget::Class { .. } => None,
        }
    }

    /// Updates the batch target after its line has moved; without the line, the formula is made
    /// once.
    fn follow(&mut self, moved: impl FnOnce(LineAt) -> Option<LineAt>) {
        if let Some((at, mass)) = self.asked() {
            self.batch.wanted = match moved(at) {
                Some(at) => BatchTarget::OnHand { at, mass },
                None => BatchTarget::default(),
            };
        }
    }
}
