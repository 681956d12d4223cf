//! The log as a file: bakes with their photos, read from others' hands one by one.

use crate::sheet::Id;
use crate::sheet::day::{Bake, Log};

use super::bake;
use super::envelope::{FILE_LIMIT, begin, fields, open};
use super::error::{RecordError, RecordFault};
use super::fields::{Fields, list, text};
use super::log::{KIND, read_resets, written};
use super::print::Writer;
use super::shelf::id;
use super::tree::Tree;

/// A photo, by the bake it belongs to: the text of a `data:` address.
pub type Photo = (Id, String);

/// What a file of the log held.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LogFile {
    /// The bakes that could be read, and from when on they teach.
    pub log: Log,
    /// Their photos.
    pub photos: Vec<Photo>,
    /// What is wrong with the others, one by one.
    pub refused: Vec<RecordError>,
}

/// The most photos a file may have.
const MOST_PHOTOS: usize = Log::MOST;

/// Writes the log with its photos to the text of a file.
#[must_use]
pub fn write_log_file(log: &Log, photos: &[Photo]) -> String {
    let photo = |(bake, photo): &Photo| {
        Writer::new()
            .text("bake", bake.as_text().to_owned())
            .text("photo", photo.clone())
            .done()
    };
    written(log, begin(KIND))
        .list("photos", photos.iter().map(photo))
        .done()
        .to_string()
}

/// Reads a file of the log, or the log as it is kept. A bake or photo that cannot be read does not
/// stand in the way of the others.
///
/// # Errors
/// [`RecordError`] when nothing of the file can be read.
pub fn read_log_file(text: &str) -> Result<LogFile, RecordError> {
    let tree = open(text, FILE_LIMIT)?;
    let fields = fields(&tree, KIND, &["forgotten", "bakes", "photos"])?;
    let bakes = fields.needed("bakes", |tree| {
        list(tree, Log::MOST, |tree| Ok(bake::read(tree)))
    })?;
    let photos = fields.maybe("photos", |tree| {
        list(tree, MOST_PHOTOS, |tree| Ok(read_photo(tree)))
    })?;
    let resets = fields.maybe("forgotten", read_resets)?.unwrap_or_default();
    let mut refused = Vec::new();
    let mut bakes = good(bakes, "bakes", &mut refused);
    let mut photos = good(photos.unwrap_or_default(), "photos", &mut refused);
    photos.retain(|(of, _)| bakes.iter().any(|bake: &Bake| bake.id == *of));
    for bake in &mut bakes {
        bake.photo = photos.iter().any(|(of, _)| *of == bake.id);
    }
    Ok(LogFile {
        log: Log::of(bakes, resets),
        photos,
        refused,
    })
}

/// Those that could be read; the others are put among what was refused, with the way to them.
fn good<T>(read: Vec<Result<T, RecordError>>, key: &str, refused: &mut Vec<RecordError>) -> Vec<T> {
    let mut good = Vec::with_capacity(read.len());
    for (at, one) in read.into_iter().enumerate() {
        match one {
            Ok(one) => good.push(one),
            Err(error) => refused.push(error.item(at).inside(key)),
        }
    }
    good
}

fn read_photo(tree: &Tree) -> Result<Photo, RecordError> {
    let fields = Fields::of(tree, &["bake", "photo"])?;
    let photo = fields.needed("photo", |tree| {
        let photo = text(tree)?;
        if Bake::is_photo(photo) {
            Ok(photo.to_owned())
        } else {
            Err(RecordFault::NotAPhoto.into())
        }
    })?;
    Ok((fields.needed("bake", id)?, photo))
}
