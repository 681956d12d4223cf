//! Memos, build by one function so that the binary has their code once for each type of
//! value and not once for each closure.

use leptos::prelude::*;

/// A computation that runs again when one of its inputs changes.
type Compute<T> = Box<dyn Fn() -> T + Send + Sync>;

/// A value that follows its inputs, and notifies only when it differs.
pub fn memo<T>(compute: impl Fn() -> T + Send + Sync + 'static) -> Memo<T>
where
    T: PartialEq + Send + Sync + 'static,
{
    build(Box::new(compute))
}

#[inline(never)]
fn build<T>(compute: Compute<T>) -> Memo<T>
where
    T: PartialEq + Send + Sync + 'static,
{
    Memo::new(move |_| compute())
}
