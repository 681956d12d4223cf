//! A value of the page's state that can be followed.
//!
//! The library's own signal has all of its code once for each type of value; here only reading and
//! writing are, and following is there once.

use leptos::prelude::*;

/// A value that is copied into closures, read, changed and followed.
pub struct Held<T> {
    value: StoredValue<T>,
    changed: Trigger,
}

impl<T> Clone for Held<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Held<T> {}

impl<T: Send + Sync + 'static> Held<T> {
    /// Holds a value as long as the owner that is there now.
    pub fn new(value: T) -> Self {
        Self {
            value: StoredValue::new(value),
            changed: Trigger::new(),
        }
    }

    /// Follows it.
    pub fn track(self) {
        self.changed.track();
    }

    /// Has everyone that follows it read it again.
    pub fn notify(self) {
        self.changed.notify();
    }

    /// Reads it, and follows it.
    pub fn with<O>(self, read: impl FnOnce(&T) -> O) -> O {
        self.track();
        self.value.with_value(read)
    }

    /// Reads it once.
    pub fn with_untracked<O>(self, read: impl FnOnce(&T) -> O) -> O {
        self.value.with_value(read)
    }

    /// Replaces it.
    pub fn set(self, value: T) {
        self.value.set_value(value);
        self.notify();
    }

    /// Changes it.
    pub fn update(self, change: impl FnOnce(&mut T)) {
        self.value.update_value(change);
        self.notify();
    }

    /// Changes it without a word to those who follow it.
    pub fn update_untracked(self, change: impl FnOnce(&mut T)) {
        self.value.update_value(change);
    }

    /// Changes it, and returns what `change` does; none where its owner is gone.
    pub fn try_update<O>(self, change: impl FnOnce(&mut T) -> O) -> Option<O> {
        let result = self.value.try_update_value(change);
        self.notify();
        result
    }
}

impl<T: Clone + Send + Sync + 'static> Held<T> {
    /// A copy, which is followed.
    pub fn get(self) -> T {
        self.with(T::clone)
    }

    /// A copy, read once.
    pub fn get_untracked(self) -> T {
        self.with_untracked(T::clone)
    }
}

impl<T: Clone + Send + Sync + 'static> From<Held<T>> for Signal<T> {
    fn from(held: Held<T>) -> Self {
        Self::derive(move || held.get())
    }
}
