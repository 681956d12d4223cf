//! The error of a value refused inside serde, which carries errors as text only: stored beside it.

use std::cell::RefCell;

use serde::de::Error;

use super::error::RecordError;

thread_local! {
    static REFUSED: RefCell<Option<RecordError>> = const { RefCell::new(None) };
}

/// The text of serde's error while ours waits beside it.
pub(super) const MARK: &str = "refused";

/// Puts an error beside serde's.
pub(super) fn refuse<E: Error>(error: impl Into<RecordError>) -> E {
    REFUSED.set(Some(error.into()));
    E::custom(MARK)
}

/// Takes the error that waits.
pub(super) fn take() -> Option<RecordError> {
    REFUSED.take()
}
