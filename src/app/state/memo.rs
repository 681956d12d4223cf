//! Memos: built in one place, so that the page carries their machinery once for each kind of
//! value and not once for each closure.

use leptos::prelude::*;

/// Compute that is done again when what it looked at changes.
type Compute<T> = Box<dyn Fn() -> T + Send + Sync>;

/// A value that follows what it was worked out from, and tells only when it differs.
pub fn memo<T>(work: impl Fn() -> T + Send + Sync + 'static) -> Memo<T>
where
    T: PartialEq + Send + Sync + 'static,
{
    built(Box::new(work))
}

#[inline(never)]
fn built<T>(work: Compute<T>) -> Memo<T>
where
    T: PartialEq + Send + Sync + 'static,
{
    Memo::new(move |_| work())
}
