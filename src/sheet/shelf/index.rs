//! The index of formulas: add, bin, restore, empty the bin.

use super::{ShelfEntry, Slot, Standing};
use crate::engine::quantity::Mass;
use crate::sheet::{Id, Moment, Sheet, plain};

/// The stored formulas, sorted by id.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shelf {
    pub(super) slots: Vec<Slot>,
}

impl Shelf {
    /// Most entries, those in the bin included.
    pub const MOST: usize = 20_000;
    /// Most deleted formulas that are recorded.
    pub const MOST_GONE: usize = 500;

    /// An index of these slots, in any order; none where a formula is there twice.
    #[must_use]
    pub fn of(mut slots: Vec<Slot>) -> Option<Self> {
        slots.sort_by(|one, other| one.entry.id.cmp(&other.entry.id));
        let doubled = slots
            .windows(2)
            .any(|pair| matches!(pair, [one, other] if one.entry.id == other.entry.id));
        (!doubled).then_some(Self { slots })
    }

    /// All slots, sorted by id.
    #[must_use]
    pub fn slots(&self) -> &[Slot] {
        &self.slots
    }

    /// Retains the slots for which `predicate` is true and returns the entries of the others.
    pub fn retain(&mut self, predicate: impl Fn(&Slot) -> bool) -> Vec<ShelfEntry> {
        let slots = std::mem::take(&mut self.slots);
        let (retained, lost): (Vec<_>, Vec<_>) = slots.into_iter().partition(predicate);
        self.slots = retained;
        lost.into_iter().map(|slot| slot.entry).collect()
    }

    /// The formulas on the shelf, the last changed first.
    #[must_use]
    pub fn shelved(&self) -> Vec<&ShelfEntry> {
        let mut entries: Vec<_> = self.standing(Standing::Shelved).map(|s| &s.entry).collect();
        entries.sort_by(|one, other| {
            let (one_at, other_at) = (one.changed, other.changed);
            let by_time = other_at.milliseconds().total_cmp(&one_at.milliseconds());
            by_time.then_with(|| one.id.cmp(&other.id))
        });
        entries
    }

    /// The formulas in the bin with the moment they were put there, the last first.
    #[must_use]
    pub fn binned(&self) -> Vec<(&ShelfEntry, Moment)> {
        let slots = self.standing(Standing::Binned);
        let mut entries: Vec<_> = slots.map(|slot| (&slot.entry, slot.since)).collect();
        entries.sort_by(|(_, one), (_, other)| other.milliseconds().total_cmp(&one.milliseconds()));
        entries
    }

    /// The entry of a formula on the shelf or in the bin.
    #[must_use]
    pub fn entry(&self, id: &Id) -> Option<&ShelfEntry> {
        let slot = self.slot(id)?;
        (slot.standing != Standing::Gone).then_some(&slot.entry)
    }

    /// The state of a formula; `None` if it is unknown.
    #[must_use]
    pub fn standing_of(&self, id: &Id) -> Option<Standing> {
        self.slot(id).map(|slot| slot.standing)
    }

    /// Adds a formula to the shelf, or updates its summary. Its record is stored separately.
    pub fn put(&mut self, id: &Id, sheet: &Sheet, now: Moment) {
        let entry = ShelfEntry {
            id: id.clone(),
            name: plain::name(&sheet.name, Sheet::NAME_LENGTH),
            dough: sheet.formula.dough(),
            changed: now,
        };
        self.place(entry, Standing::Shelved, now);
    }

    /// Moves a formula from the shelf into the bin. `false` if it is not on the shelf.
    pub fn bin(&mut self, id: &Id, now: Moment) -> bool {
        self.shift(id, Standing::Shelved, Standing::Binned, now)
    }

    /// Restores a formula from the bin. `false` if it is not in it.
    pub fn restore(&mut self, id: &Id, now: Moment) -> bool {
        self.shift(id, Standing::Binned, Standing::Shelved, now)
    }

    /// Empties the bin. Returns the ids whose records are to be deleted.
    pub fn empty_bin(&mut self, now: Moment) -> Vec<Id> {
        let binned: Vec<Id> = self
            .standing(Standing::Binned)
            .map(|s| s.entry.id.clone())
            .collect();
        for id in &binned {
            self.shift(id, Standing::Binned, Standing::Gone, now);
        }
        binned
    }

    fn shift(&mut self, id: &Id, from: Standing, to: Standing, now: Moment) -> bool {
        let Some(slot) = self.slot(id).filter(|slot| slot.standing == from) else {
            return false;
        };
        let mut entry = slot.entry.clone();
        if to == Standing::Gone {
            entry.name = String::new();
            entry.dough = Mass::ZERO;
        }
        self.place(entry, to, now);
        true
    }

    fn place(&mut self, entry: ShelfEntry, standing: Standing, now: Moment) {
        match self.find(&entry.id) {
            Ok(at) => {
                if let Some(slot) = self.slots.get_mut(at) {
                    let since = now.after(slot.since);
                    *slot = Slot {
                        entry,
                        standing,
                        since,
                    };
                }
            }
            Err(at) => self.slots.insert(
                at,
                Slot {
                    entry,
                    standing,
                    since: now,
                },
            ),
        }
    }

    fn standing(&self, standing: Standing) -> impl Iterator<Item = &Slot> {
        self.slots
            .iter()
            .filter(move |slot| slot.standing == standing)
    }

    fn slot(&self, id: &Id) -> Option<&Slot> {
        self.find(id).ok().and_then(|at| self.slots.get(at))
    }

    fn find(&self, id: &Id) -> Result<usize, usize> {
        self.slots.binary_search_by(|slot| slot.entry.id.cmp(id))
    }
}
