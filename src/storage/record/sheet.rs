//! One formula with its batch as a record.

use serde::{Deserialize, Serialize};

use crate::engine::formula::{Bread, Formula};
use crate::sheet::HeatSettings;
use crate::sheet::{Batch, Sheet};
use crate::storage::enum_names::BREADS;

use super::Record;
use super::read::described;
use super::text::{Name, Note, words};

words! { Bread: BREADS; }

described! { Sheet: SheetRecord; }

impl Record for Sheet {
    const KIND: &'static str = "formula";
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Sheet", deny_unknown_fields)]
struct SheetRecord {
    #[serde(with = "Name::<{ Sheet::NAME_LENGTH }>")]
    name: String,
    bread: Bread,
    formula: Formula,
    batch: Batch,
    /// Formulas of the first releases ask nothing of heat.
    #[serde(default)]
    heat: HeatSettings,
    #[serde(with = "Note::<{ Sheet::NOTE_LENGTH }>")]
    note: String,
}
