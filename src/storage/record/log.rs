//! The log of bakes as a record.

use serde::{Deserialize, Serialize};

use crate::sheet::Moment;
use crate::sheet::day::{Bake, Log, Resets};

use super::read::{converted, described};
use super::text::List;
use super::{FILE_LIMIT, Record};

described! { Resets: ResetsRecord; }

converted! { Log: LogRecord; }

impl Record for Log {
    const KIND: &'static str = "log";
    const LIMIT: usize = FILE_LIMIT;
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct LogRecord {
    #[serde(default)]
    forgotten: Resets,
    #[serde(with = "List::<{ Log::MOST }>")]
    bakes: Vec<Bake>,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Resets", deny_unknown_fields)]
struct ResetsRecord {
    #[serde(rename = "friction_ms", skip_serializing_if = "Option::is_none")]
    friction: Option<Moment>,
    #[serde(rename = "losses_ms", skip_serializing_if = "Option::is_none")]
    losses: Option<Moment>,
    #[serde(rename = "rises_ms", skip_serializing_if = "Option::is_none")]
    rises: Option<Moment>,
    #[serde(rename = "oven_ms", skip_serializing_if = "Option::is_none")]
    oven: Option<Moment>,
}

impl From<&Log> for LogRecord {
    fn from(log: &Log) -> Self {
        Self {
            forgotten: log.resets,
            bakes: log.bakes().to_vec(),
        }
    }
}

impl From<LogRecord> for Log {
    fn from(record: LogRecord) -> Self {
        Self::of(record.bakes, record.forgotten)
    }
}
