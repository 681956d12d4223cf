//! The log as a file: it comes back whole, bakes are not doubled, damage is answered one by one.

use softcrumb::sheet::Id;
use softcrumb::sheet::day::{Bake, Log, Resets};
use softcrumb::storage::record::{LogFile, Record, RecordFault};

use crate::days::{bake, log};
use crate::written::write_log_file;

const PHOTO: &str = "data:image/jpeg;base64,/9j/4AAQSkZJRg==";

/// The log of `days` with a photo of its second bake.
fn with_photo() -> (Log, Vec<(Id, String)>) {
    let mut log = log();
    let mut second = bake(2);
    second.photo = true;
    log.put(second.clone());
    (log, vec![(second.id, PHOTO.to_owned())])
}

#[test]
fn the_log_and_its_photos_come_back_whole() {
    let (log, photos) = with_photo();
    let found = LogFile::read(&write_log_file(&log, &photos)).unwrap();
    assert_eq!(
        (found.log, found.photos, found.refused),
        (log, photos, vec![])
    );
    let nothing = LogFile::read(&write_log_file(&Log::default(), &[])).unwrap();
    assert_eq!(nothing.log, Log::default());
    // The stored log is a file too, and both are read by the same reader.
    let kept = LogFile::read(&Record::write(&crate::days::log())).unwrap();
    assert_eq!(kept.log, crate::days::log());
}

#[test]
fn a_log_of_the_most_bakes_comes_back_whole() {
    let log = Log::of((0..2000).map(bake).collect(), Resets::default());
    let found = LogFile::read(&write_log_file(&log, &[])).unwrap();
    assert_eq!(found.log.bakes().len(), Log::MOST);
    assert_eq!(found.log, log);
}

#[test]
fn bakes_that_are_there_are_not_doubled_and_stay_as_they_are() {
    let mut here = log();
    let mut own = bake(1);
    own.note = "Mine".to_owned();
    here.put(own);
    let resets = here.resets;
    let file = Log::of(vec![bake(1), bake(2), bake(3)], Resets::default());
    let imported = here.import(file.clone());
    assert_eq!(
        (imported.added, imported.there, imported.no_room),
        (vec![bake(3).id], 2, 0)
    );
    assert_eq!(here.bakes().len(), 3);
    assert_eq!(here.bakes()[0].note, "Mine");
    assert_eq!(
        here.resets, resets,
        "a file of others does not make ours forget"
    );
    let again = here.import(file);
    assert_eq!((again.added.len(), again.there), (0, 3));
    let began: Vec<f64> = here
        .bakes()
        .iter()
        .map(|bake| bake.began.milliseconds())
        .collect();
    assert!(began.is_sorted());
    let mut empty = Log::default();
    empty.import(log());
    assert_eq!(empty, log(), "an empty log takes all of it over");
}

#[test]
fn a_full_log_loses_none_of_its_own() {
    let mut here = Log::of((0..1999).map(bake).collect(), Resets::default());
    let file = Log::of((5000..5003).map(bake).collect(), Resets::default());
    let imported = here.import(file);
    assert_eq!((imported.added.len(), imported.no_room), (1, 2));
    assert_eq!(imported.added, [bake(5002).id], "the newest of them");
    assert_eq!(here.bakes().len(), Log::MOST);
    assert_eq!(here.bakes()[0].id, bake(0).id);
}

#[test]
fn every_cut_of_a_file_is_refused_and_never_stops_the_page() {
    let (log, photos) = with_photo();
    let text = write_log_file(&log, &photos);
    for (end, _) in text.char_indices() {
        assert!(LogFile::read(&text[..end]).is_err(), "{end}");
    }
}

/// One byte changed to another, everywhere: what can still be read is within its bounds.
#[test]
fn a_file_with_any_one_byte_changed_is_read_within_bounds_or_refused() {
    let (log, photos) = with_photo();
    let text = write_log_file(&log, &photos);
    for at in 0..text.len() {
        for other in [b'0', b'9', b'"', b'{', b'-', b'e', b'x', 0xFF] {
            let mut bytes = text.clone().into_bytes();
            bytes[at] = other;
            let changed = String::from_utf8_lossy(&bytes);
            if let Ok(found) = LogFile::read(&changed) {
                assert!(found.log.bakes().len() <= 2);
                for bake in found.log.bakes() {
                    assert!(bake.note.chars().count() <= Bake::NOTE_LENGTH);
                    let has = found.photos.iter().any(|(of, _)| *of == bake.id);
                    assert_eq!(bake.photo, has);
                }
                assert!(found.photos.iter().all(|(_, photo)| Bake::is_photo(photo)));
            }
        }
    }
}

#[test]
fn a_bad_bake_or_photo_does_not_stand_in_the_way_of_the_others() {
    let (log, photos) = with_photo();
    let text = write_log_file(&log, &photos);
    let refused = |from: &str, to: &str| {
        assert!(text.contains(from), "{from}");
        let found = LogFile::read(&text.replacen(from, to, 1)).unwrap();
        let paths: Vec<String> = found
            .refused
            .iter()
            .map(|error| error.path.clone())
            .collect();
        (found, paths)
    };
    let (found, paths) = refused("\"dough_c\":25.5", "\"dough_c\":\"warm\"");
    assert_eq!(paths, ["bakes[0].noted.dough_c"]);
    assert_eq!(found.log.bakes().len(), 1);
    let (_, paths) = refused("\"began_ms\":", "\"x\":1,\"began_ms\":");
    assert_eq!(paths, ["bakes[0].x"]);
    for photo in [
        "data:text/html;base64,AAAA",
        "javascript:alert(1)",
        "data:image/jpeg;base64,A\\\" onload=\\\"x",
        "https://elsewhere.example/a.jpg",
    ] {
        let (found, paths) = refused(PHOTO, photo);
        assert_eq!(paths, ["photos[0].photo"]);
        assert_eq!(found.refused[0].fault, RecordFault::NotAPhoto);
        assert!(found.log.bakes().iter().all(|bake| !bake.photo));
    }
    // A photo of no bake of the file is left out.
    let stray = vec![(Id::from_random(77), PHOTO.to_owned())];
    let found = LogFile::read(&write_log_file(&log, &stray)).unwrap();
    assert_eq!(found.photos, []);
}

#[test]
fn files_of_other_kinds_and_of_newer_releases_are_distinguished() {
    let text = log().write();
    let fault = |text: &str| LogFile::read(text).unwrap_err().fault;
    assert_eq!(fault(""), RecordFault::Empty);
    assert!(matches!(fault("{}"), RecordFault::NotOurs));
    assert!(matches!(
        fault(&text.replacen("\"log\"", "\"formulas\"", 1)),
        RecordFault::OtherKind { .. }
    ));
    assert_eq!(
        fault(&text.replacen("\"version\":1", "\"version\":7", 1)),
        RecordFault::Newer { version: 7 }
    );
    let huge = " ".repeat(12_000_001);
    assert!(matches!(fault(&huge), RecordFault::TooLarge { .. }));
    assert!(Log::read(&text).is_ok());
    let deep = "[".repeat(200_000);
    assert!(LogFile::read(&deep).is_err());
}
