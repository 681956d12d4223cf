//! Trouble: what is wrong with a document, and where.

use std::fmt::{Debug, Display};

use serde_json::{Value, json};
use softcrumb::storage::record::RecordError;

use crate::spelling::name;

/// What is wrong, and where.
pub(crate) struct ErrorText {
    path: String,
    kind: String,
    message: String,
}

impl ErrorText {
    pub(crate) fn new(path: &str, kind: &str, message: &str) -> Self {
        let (path, kind, message) = (path.to_owned(), kind.to_owned(), message.to_owned());
        Self {
            path,
            kind,
            message,
        }
    }

    /// The same, seen from outside item `at` of the list `key`.
    pub(crate) fn inside(mut self, key: &str, at: usize) -> Self {
        let dot = if self.path.is_empty() { "" } else { "." };
        self.path = format!("{key}[{at}]{dot}{}", self.path);
        self
    }

    /// The same, seen from outside the field `key`.
    pub(crate) fn below(mut self, key: &str) -> Self {
        self.path = format!("{key}.{}", self.path);
        self
    }

    /// The same error, with the field `from` named `to`.
    pub(crate) fn renamed(mut self, from: &str, to: &str) -> Self {
        if let Some(rest) = self.path.strip_prefix(from) {
            self.path = format!("{to}{rest}");
        }
        self
    }

    /// The error of a record that lies at `inside`.
    pub(crate) fn of_record(error: &RecordError, inside: &str) -> Self {
        let path = match (inside, error.path.as_str()) {
            ("", path) => path.to_owned(),
            (inside, "") => inside.to_owned(),
            (inside, path) => format!("{inside}.{path}"),
        };
        Self {
            path,
            kind: name(&error.fault),
            message: error.fault.to_string(),
        }
    }

    /// The line of results for a document that cannot be read.
    pub(crate) fn to_json(&self) -> Value {
        json!({ "worksheet": crate::asked::VERSION, "error": {
            "path": self.path, "kind": self.kind, "message": self.message,
        }})
    }
}

/// An answer, or why there is none.
pub(crate) fn or_error<T, E: Debug + Display>(
    result: &Result<T, E>,
    path: &str,
    tell: impl FnOnce(&T) -> Value,
) -> Value {
    match result {
        Ok(answer) => tell(answer),
        Err(error) => json!({ "error": {
            "path": path, "kind": name(error), "message": error.to_string(),
        }}),
    }
}
