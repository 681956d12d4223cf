//! Arranging: lines and streams moved or taken away, with the batch still asking for the same.

use super::Sheet;
use crate::engine::batch::Wanted;
use crate::engine::formula::LineAt;
use crate::engine::quantity::Mass;

impl Sheet {
    /// Takes a line away. `false` when it is not there.
    pub fn remove_line(&mut self, at: LineAt) -> bool {
        let Some(own) = self.formula.streams.get_mut(at.stream) else {
            return false;
        };
        if at.line >= own.lines.len() {
            return false;
        }
        own.lines.remove(at.line);
        self.follow(|one| match one.line.checked_sub(1) {
            _ if one == at => None,
            Some(before) if one.stream == at.stream && one.line > at.line => Some(LineAt {
                line: before,
                ..one
            }),
            Some(_) | None => Some(one),
        });
        true
    }

    /// Moves a line to the end of another stream. `false` when either is not there.
    pub fn move_line(&mut self, at: LineAt, to: usize) -> bool {
        let (Some(line), Some(end)) = (
            self.formula.line(at).cloned(),
            self.formula.streams.get(to).map(|own| own.lines.len()),
        ) else {
            return false;
        };
        if at.stream == to {
            return false;
        }
        let asked = self.asked();
        self.remove_line(at);
        if let Some(own) = self.formula.streams.get_mut(to) {
            own.lines.push(line);
        }
        if let Some((asked_at, mass)) = asked
            && asked_at == at
        {
            let at = LineAt {
                stream: to,
                line: end,
            };
            self.batch.wanted = Wanted::OnHand { at, mass };
        }
        true
    }

    /// Takes a stream away with all that is in it. `false` when it is not there.
    pub fn remove_stream(&mut self, stream: usize) -> bool {
        if stream >= self.formula.streams.len() {
            return false;
        }
        self.formula.streams.remove(stream);
        self.follow(|one| match one.stream.checked_sub(1) {
            _ if one.stream == stream => None,
            Some(before) if one.stream > stream => Some(LineAt {
                stream: before,
                ..one
            }),
            Some(_) | None => Some(one),
        });
        true
    }

    /// Puts a stream one place earlier. `false` when it is the first, or not there.
    pub fn stream_earlier(&mut self, stream: usize) -> bool {
        let Some(before) = stream.checked_sub(1) else {
            return false;
        };
        if stream >= self.formula.streams.len() {
            return false;
        }
        self.formula.streams.swap(before, stream);
        self.follow(|one| {
            let stream = match one.stream {
                there if there == before => stream,
                there if there == stream => before,
                there => there,
            };
            Some(LineAt { stream, ..one })
        });
        true
    }

    /// The line whose weight on hand the batch goes by, where it does.
    fn asked(&self) -> Option<(LineAt, Mass)> {
        match self.batch.wanted {
            Wanted::OnHand { at, mass } => Some((at, mass)),
            Wanted::Times(_)
            | Wanted::Dough(_)
            | Wanted::Pieces { .. }
            | Wanted::FlourOnHand(_)
            | Wanted::Class { .. } => None,
        }
    }

    /// Lets the batch follow its line; where that is gone, the formula is made once.
    fn follow(&mut self, moved: impl FnOnce(LineAt) -> Option<LineAt>) {
        if let Some((at, mass)) = self.asked() {
            self.batch.wanted = match moved(at) {
                Some(at) => Wanted::OnHand { at, mass },
                None => Wanted::default(),
            };
        }
    }
}
