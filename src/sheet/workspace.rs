//! The workspace: everything stored besides formulas, and merging two of them without loss.

use super::day::{DaySettings, Log};
use super::pantry::{Pantry, PantryItem};
use super::{Id, Kitchens, SavedTin};
use crate::engine::class::ClassSettings;
use crate::engine::ingredients::Allergen;
use crate::engine::quantity::Mass;

/// Everything stored besides formulas.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Workspace {
    /// The kitchens.
    pub kitchens: Option<Kitchens>,
    /// The user's tins.
    pub tins: Vec<SavedTin>,
    /// Packs, prices, and what packets say.
    pub pantry: Pantry,
    /// The settings of the class.
    pub class: Option<ClassSettings>,
    /// The plans that were changed, each with its formula.
    pub days: Vec<(Id, DaySettings)>,
    /// The log of bakes.
    pub log: Log,
}

/// What an import added.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Added {
    /// Kitchens.
    pub kitchens: usize,
    /// Tins.
    pub tins: usize,
    /// Ingredients of the pantry.
    pub foods: usize,
    /// The settings of a class.
    pub class: bool,
    /// Plans.
    pub days: usize,
    /// Bakes of the log.
    pub bakes: usize,
}

impl Workspace {
    /// Adds what `other` has and this workspace lacks. Own data is kept; data still at its default
    /// is replaced.
    #[must_use]
    pub fn joined_by(mut self, other: &Self) -> (Self, Added) {
        let mut added = Added::default();
        if let Some(theirs) = &other.kitchens {
            added.kitchens = self.join_kitchens(theirs);
        }
        for saved in &other.tins {
            let is_there = self.tins.iter().any(|own| own.tin == saved.tin);
            if !is_there && self.tins.len() < SavedTin::MOST {
                self.tins.push(saved.clone());
                added.tins += 1;
            }
        }
        added.foods = self.pantry.join(&other.pantry);
        let untouched = self.class.is_none_or(|own| own == ClassSettings::default());
        if untouched && other.class.is_some() && other.class != self.class {
            self.class = other.class;
            added.class = true;
        }
        for (id, settings) in &other.days {
            if !self.days.iter().any(|(own, _)| own == id) {
                self.days.push((id.clone(), settings.clone()));
                added.days += 1;
            }
        }
        if self.log.bakes().is_empty() {
            self.log.resets = other.log.resets;
        }
        for bake in other.log.bakes() {
            if !self.log.bakes().iter().any(|own| own.id == bake.id) {
                self.log.put(bake.clone());
                added.bakes += 1;
            }
        }
        (self, added)
    }

    /// Adds kitchens; returns how many were new.
    fn join_kitchens(&mut self, theirs: &Kitchens) -> usize {
        let untouched = Kitchens::default();
        let own = self.kitchens.take().unwrap_or_default();
        if own == untouched {
            let new = usize::from(*theirs != untouched) * theirs.all().count();
            self.kitchens = Some(theirs.clone());
            return new;
        }
        let (chosen, before) = (own.chosen(), own.all().count());
        let mut joined = own;
        for kitchen in theirs.all() {
            if !joined.all().any(|one| one == kitchen) {
                joined = joined.with(kitchen.clone());
            }
        }
        let new = joined.all().count().saturating_sub(before);
        self.kitchens = Some(joined.choose(chosen));
        new
    }
}

impl Pantry {
    /// Adds what another pantry notes and this one does not; returns for how many ingredients.
    fn join(&mut self, other: &Self) -> usize {
        if self.currency.is_empty() {
            self.currency.clone_from(&other.currency);
        }
        take_over(&mut self.kitchen, &other.kitchen);
        let mut new = 0;
        for item in &other.items {
            let room = self.items.len() < Self::MOST;
            let found = self.items.iter_mut().find(|own| own.food == item.food);
            if let Some(own) = found {
                new += usize::from(own.join(item));
            } else if room {
                self.items.push(item.clone());
                new += 1;
            }
        }
        new
    }
}

impl PantryItem {
    /// Adds what is not noted here; returns whether anything was.
    fn join(&mut self, other: &Self) -> bool {
        let before = self.clone();
        self.holds = self.holds.or(other.holds);
        self.price = self.price.or(other.price);
        if self.on_hand <= Mass::ZERO {
            self.on_hand = other.on_hand;
        }
        take_over(&mut self.contains, &other.contains);
        take_over(&mut self.may_contain, &other.may_contain);
        *self != before
    }
}

fn take_over(own: &mut Vec<Allergen>, theirs: &[Allergen]) {
    let new = theirs.iter().filter(|one| !own.contains(one));
    let new: Vec<Allergen> = new.copied().collect();
    own.extend(new);
}
