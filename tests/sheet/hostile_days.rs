//! Records of the day that are damaged, doubled or out of range: each is answered, with the way.

use softcrumb::engine::plan::{Edit, StepKind};
use softcrumb::sheet::day::Bench;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::day::Log;
use softcrumb::storage::record::{Record, RecordError, RecordFault};

use crate::days::{bench, log, settings, step};

#[test]
fn every_cut_of_a_record_is_refused() {
    for text in [settings().write(), log().write(), bench().write()] {
        for (end, _) in text.char_indices() {
            let cut = &text[..end];
            let opened = [
                DaySettings::read(cut).is_ok(),
                Log::read(cut).is_ok(),
                Bench::read(cut).is_ok(),
            ];
            assert_eq!(opened, [false; 3], "{cut}");
        }
    }
}

#[track_caller]
fn refused<T: std::fmt::Debug>(read: Result<T, RecordError>, path: &str) -> RecordFault {
    let error = read.unwrap_err();
    assert_eq!(error.path, path, "{error}");
    error.fault
}

#[test]
fn what_cannot_be_is_named_with_the_way_to_it() {
    let day = |from: &str, to: &str| DaySettings::read(&settings().write().replacen(from, to, 1));
    refused(
        day("\"from_min\":1335", "\"from_min\":1440"),
        "sleep.from_min",
    );
    refused(day("\"loads\":3", "\"loads\":0"), "loads");
    refused(day("\"loads\":3", "\"loads\":1e9"), "loads");
    refused(
        day("\"work\":\"rest\"", "\"work\":\"nap\""),
        "edits[0].work",
    );
    refused(
        day("\"change\":\"sooner\"", "\"change\":\"x\""),
        "edits[2].change",
    );
    refused(day("\"number\":4,", ""), "edits[3].number");
    refused(
        day("\"table_ms\":", "\"from_ms\":1,\"table_ms\":"),
        "from_ms",
    );
    refused(day("\"at_c\":26", "\"at_c\":2600"), "rises.bulk.at_c");
    refused(
        day("\"yeast_share\":0.025", "\"yeast_share\":0"),
        "rises.dough.yeast_share",
    );
}

#[test]
fn what_cannot_be_of_log_and_bench_is_named_with_the_way_to_it() {
    let log = |from: &str, to: &str| Log::read(&log().write().replacen(from, to, 1));
    let bench = |from: &str, to: &str| Bench::read(&bench().write().replacen(from, to, 1));
    refused(
        log("\"dough_c\":25.5", "\"dough_c\":\"warm\""),
        "bakes[0].noted.dough_c",
    );
    refused(log("\"began_ms\":", "\"x\":1,\"began_ms\":"), "bakes[0].x");
    refused(
        log("\"began_ms\":", "\"began_ms\":-1,\"x\":"),
        "bakes[0].began_ms",
    );
    refused(
        bench("\"lasts_min\":61.5", "\"lasts_min\":-1"),
        "promised[0].lasts_min",
    );
    refused(
        bench("\"stream\":0,\"at_c\"", "\"stream\":-1,\"at_c\""),
        "measured[0].stream",
    );
    refused(
        bench("\"minutes\":75", "\"minutes\":\"long\""),
        "edits[0].minutes",
    );
    refused(
        bench("\"mass_g\":118", "\"mass_g\":-1"),
        "weighed[1].mass_g",
    );
    refused(bench("\"line\":1", "\"line\":1.5"), "weighed[1].line");
    refused(
        bench("\"ends_ms\":1774900200500", "\"ends_ms\":1e300"),
        "timers[0].ends_ms",
    );
}

#[test]
fn what_is_newer_or_too_much_is_shown() {
    let day = |from: &str, to: &str| DaySettings::read(&settings().write().replacen(from, to, 1));
    let newer = day("\"version\":1", "\"version\":2");
    assert_eq!(refused(newer, "version"), RecordFault::Newer { version: 2 });
    assert!(Log::read(&settings().write()).is_err());
    let many = vec![
        Edit::LeftOut {
            step: step(StepKind::Own, 1)
        };
        61
    ];
    let many = DaySettings {
        edits: many,
        ..settings()
    };
    assert_eq!(
        refused(DaySettings::read(&many.write()), "edits"),
        RecordFault::TooMany { most: 60 }
    );
}
