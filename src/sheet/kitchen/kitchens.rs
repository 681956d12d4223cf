//! The user's kitchens by name, one of them chosen.

use super::Kitchen;

/// The user's kitchens, at least one, and which of them is chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct Kitchens {
    before: Vec<Kitchen>,
    current: Kitchen,
    after: Vec<Kitchen>,
}

impl Default for Kitchens {
    fn default() -> Self {
        Self::only(Kitchen::default())
    }
}

impl Kitchens {
    /// Most kitchens.
    pub const MOST: usize = 20;

    /// One kitchen, which is the chosen one.
    #[must_use]
    pub const fn only(kitchen: Kitchen) -> Self {
        Self {
            before: Vec::new(),
            current: kitchen,
            after: Vec::new(),
        }
    }

    /// Several kitchens of which the one at `chosen` is the chosen one, or else the first; the
    /// default kitchen if the list is empty.
    #[must_use]
    pub fn of(kitchens: Vec<Kitchen>, chosen: usize) -> Self {
        let chosen = if chosen < kitchens.len() { chosen } else { 0 };
        let mut before = kitchens;
        let mut from = before.split_off(chosen).into_iter();
        Self {
            current: from.next().unwrap_or_default(),
            after: from.collect(),
            before,
        }
    }

    /// The chosen kitchen.
    #[must_use]
    pub const fn current(&self) -> &Kitchen {
        &self.current
    }

    /// The chosen kitchen, mutable.
    pub const fn current_mut(&mut self) -> &mut Kitchen {
        &mut self.current
    }

    /// The index of the chosen kitchen.
    #[must_use]
    pub const fn chosen(&self) -> usize {
        self.before.len()
    }

    /// All of them, in the order they were added.
    pub fn all(&self) -> impl Iterator<Item = &Kitchen> {
        let current = std::iter::once(&self.current);
        self.before.iter().chain(current).chain(&self.after)
    }

    /// Chooses another; no change if there is no such kitchen.
    #[must_use]
    pub fn choose(self, chosen: usize) -> Self {
        let now = self.chosen();
        let all = self.into_list();
        let chosen = if chosen < all.len() { chosen } else { now };
        Self::of(all, chosen)
    }

    /// Adds a kitchen at the end and chooses it; no change at [`Self::MOST`].
    #[must_use]
    pub fn with(self, kitchen: Kitchen) -> Self {
        let mut all = self.into_list();
        if all.len() < Self::MOST {
            all.push(kitchen);
        }
        let last = all.len().saturating_sub(1);
        Self::of(all, last)
    }

    /// Removes the chosen kitchen and chooses the one before it; the last one is never removed.
    #[must_use]
    pub fn remove_here(self) -> Self {
        let now = self.chosen();
        let mut all = self.into_list();
        if all.len() > 1 {
            all.remove(now);
        }
        Self::of(all, now.saturating_sub(1))
    }

    fn into_list(self) -> Vec<Kitchen> {
        let current = std::iter::once(self.current);
        self.before
            .into_iter()
            .chain(current)
            .chain(self.after)
            .collect()
    }
}
