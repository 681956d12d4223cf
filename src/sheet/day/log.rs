//! The log: bakes that were made, oldest first, and from when on they teach.

use super::bake::Bake;
use crate::engine::learn::Observation;
use crate::sheet::{Id, Moment};

/// From when on bakes teach, where what was learnt has been forgotten on purpose.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Resets {
    /// The mixer.
    pub friction: Option<Moment>,
    /// Losses, steam among them.
    pub losses: Option<Moment>,
    /// Rises.
    pub rises: Option<Moment>,
    /// The oven, and what passes heat elsewhere.
    pub oven: Option<Moment>,
}

/// The result of importing bakes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LogImport {
    /// Those that were added.
    pub added: Vec<Id>,
    /// How many were there already; they are left unchanged.
    pub there: u32,
    /// How many had no room.
    pub no_room: u32,
}

/// The log.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Log {
    bakes: Vec<Bake>,
    /// From when on bakes teach.
    pub resets: Resets,
}

impl Log {
    /// The greatest number of bakes in the log.
    pub const MOST: usize = 2000;

    /// Takes bakes in any order. Of two with the same id the later in the list is kept.
    #[must_use]
    pub fn of(bakes: Vec<Bake>, resets: Resets) -> Self {
        let mut log = Self {
            bakes: Vec::with_capacity(bakes.len()),
            resets,
        };
        let mut seen = std::collections::BTreeSet::new();
        for bake in bakes.into_iter().rev() {
            if seen.insert(bake.id.clone()) {
                log.bakes.push(bake);
            }
        }
        log.bakes.reverse();
        log.sort();
        log
    }

    /// The bakes, oldest first.
    #[must_use]
    pub fn bakes(&self) -> &[Bake] {
        &self.bakes
    }

    /// A bake by its id.
    #[must_use]
    pub fn bake(&self, id: &Id) -> Option<&Bake> {
        self.bakes.iter().find(|bake| bake.id == *id)
    }

    /// Adds a bake, or replaces the one with its id; drops the oldest where there are
    /// too many.
    pub fn put(&mut self, bake: Bake) {
        self.bakes.retain(|other| other.id != bake.id);
        self.bakes.push(bake);
        self.sort();
        let over = self.bakes.len().saturating_sub(Self::MOST);
        self.bakes.drain(..over);
    }

    /// Imports the bakes of another log, the newest first while there is room. Own bakes are left
    /// unchanged; the start of learning is adopted only where there were no bakes.
    pub fn import(&mut self, other: Self) -> LogImport {
        if self.bakes.is_empty() {
            self.resets = other.resets;
        }
        let own: std::collections::BTreeSet<Id> =
            self.bakes.iter().map(|bake| bake.id.clone()).collect();
        let mut imported = LogImport::default();
        for bake in other.bakes.into_iter().rev() {
            if own.contains(&bake.id) {
                imported.there = imported.there.saturating_add(1);
            } else if self.bakes.len() < Self::MOST {
                imported.added.push(bake.id.clone());
                self.bakes.push(bake);
            } else {
                imported.no_room = imported.no_room.saturating_add(1);
            }
        }
        self.sort();
        imported
    }

    /// Notes of each bake that is said to have a photo whether there is one.
    pub fn look_for_photos(&mut self, is_there: impl Fn(&Id) -> bool) {
        for bake in &mut self.bakes {
            bake.photo = bake.photo && is_there(&bake.id);
        }
    }

    /// Removes a bake and returns it.
    pub fn take(&mut self, id: &Id) -> Option<Bake> {
        let place = self.bakes.iter().position(|bake| bake.id == *id)?;
        Some(self.bakes.remove(place))
    }

    fn sort(&mut self) {
        let began = |bake: &Bake| bake.began.milliseconds();
        self.bakes
            .sort_by(|one, other| began(one).total_cmp(&began(other)));
    }

    /// What the bakes of a kitchen noted, as far as they still teach: rises those of the formula
    /// only, all else whatever was baked.
    #[must_use]
    pub fn noted(&self, kitchen: &str, formula: Option<&Id>) -> Vec<Observation> {
        let own = self.bakes.iter().filter(|bake| bake.kitchen == kitchen);
        own.map(|bake| self.as_far_as_it_teaches(bake, formula))
            .collect()
    }

    fn as_far_as_it_teaches(&self, bake: &Bake, formula: Option<&Id>) -> Observation {
        let since = |reset: Option<Moment>| reset.is_none_or(|reset| bake.began >= reset);
        let mut noted = bake.noted;
        if !since(self.resets.friction) {
            noted.unmixed = None;
        }
        if !since(self.resets.losses) {
            noted.bowl = None;
            noted.oven_loss = None;
            noted.steam = None;
        }
        let own = formula.is_some() && bake.formula.as_ref() == formula;
        if !own || !since(self.resets.rises) {
            noted.bulk = None;
            noted.proof = None;
        }
        if !since(self.resets.oven) {
            noted.bake = None;
            noted.cooling = None;
        }
        noted
    }
}
