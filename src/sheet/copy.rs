//! A copy of a sheet, under a name of its own.

use super::{Sheet, plain};

impl Sheet {
    /// The same sheet under its name with the next number that no name in `taken` has: "Loaf (2)".
    /// A long name is cut before its number.
    ///
    /// ```
    /// use softcrumb::sheet::examples;
    ///
    /// let (_, mut sheet) = examples().remove(0);
    /// sheet.name = "Loaf".to_owned();
    /// let second = sheet.copied(&["Loaf"]);
    /// assert_eq!(second.name, "Loaf (2)");
    /// assert_eq!(second.copied(&["Loaf", "Loaf (2)"]).name, "Loaf (3)");
    /// ```
    #[must_use]
    pub fn copied(&self, taken: &[&str]) -> Self {
        let base = without_number(&self.name);
        let numbered = |number: usize| {
            let number = format!(" ({number})");
            let room = Self::NAME_LENGTH.saturating_sub(number.chars().count());
            format!("{}{number}", plain::name(base, room))
        };
        // One more than the names that are taken is always free.
        let numbers = 2..=taken.len().saturating_add(2);
        let mut free = numbers
            .map(numbered)
            .filter(|name| !taken.contains(&name.as_str()));
        let mut copy = self.clone();
        copy.name = free.next().unwrap_or_else(|| self.name.clone());
        copy
    }
}

impl Sheet {
    /// The same sheet, as [`Sheet::copied`] where a name in `taken` is its own.
    #[must_use]
    pub fn named_apart(&self, taken: &[&str]) -> Self {
        if taken.contains(&self.name.as_str()) {
            self.copied(taken)
        } else {
            self.clone()
        }
    }

    /// Whether `stored` is this sheet, under its name or that of a copy of it.
    ///
    /// ```
    /// use softcrumb::sheet::examples;
    ///
    /// let (_, sheet) = examples().remove(0);
    /// let stored = sheet.named_apart(&[sheet.name.as_str()]);
    /// assert_ne!(stored.name, sheet.name);
    /// assert!(sheet.is_stored_as(&stored));
    /// ```
    #[must_use]
    pub fn is_stored_as(&self, stored: &Self) -> bool {
        let own =
            stored.name == self.name || without_number(&stored.name) == without_number(&self.name);
        own && stored.clone().renamed(&self.name) == *self
    }

    fn renamed(mut self, name: &str) -> Self {
        name.clone_into(&mut self.name);
        self
    }
}

/// A name without the number that a copy has.
fn without_number(name: &str) -> &str {
    let digits = |text: &&str| text.chars().all(|one| one.is_ascii_digit());
    let numbered = name
        .strip_suffix(')')
        .and_then(|open| open.rsplit_once(" ("));
    match numbered {
        Some((base, number)) if !number.is_empty() && digits(&number) => base,
        Some(_) | None => name,
    }
}
