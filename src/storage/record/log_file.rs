//! The log as a file: bakes with their photos, each read on its own.

use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::sheet::Id;
use crate::sheet::day::{Bake, Log, Resets};

use super::each::{Each, good};
use super::error::{RecordError, RecordFault};
use super::read::{converted, described};
use super::refused::refuse;
use super::text::List;
use super::{FILE_LIMIT, Record};

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

converted! { LogFile: LogFileRecord; }

described! { PhotoRecord: PhotoRecord; }

/// The stored log is a file too. A bake or photo that cannot be read is left out; the others are
/// read.
impl Record for LogFile {
    const KIND: &'static str = Log::KIND;
    const LIMIT: usize = FILE_LIMIT;
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct LogFileRecord {
    #[serde(default)]
    forgotten: Resets,
    #[serde(with = "List::<{ Log::MOST }>")]
    bakes: Vec<Each<Bake>>,
    #[serde(default, with = "List::<MOST_PHOTOS>")]
    photos: Vec<Each<PhotoRecord>>,
}

#[derive(Debug, Deserialize, Serialize)]
#[serde(remote = "Self", deny_unknown_fields)]
struct PhotoRecord {
    bake: Id,
    #[serde(with = "Picture")]
    photo: String,
}

/// A small picture as the text of a `data:` address.
struct Picture;

impl Picture {
    fn serialize<S: Serializer>(photo: &str, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_str(photo)
    }

    fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<String, D::Error> {
        let photo = String::deserialize(from)?;
        if Bake::is_photo(&photo) {
            Ok(photo)
        } else {
            Err(refuse(RecordFault::NotAPhoto))
        }
    }
}

impl From<&LogFile> for LogFileRecord {
    fn from(file: &LogFile) -> Self {
        let bakes = file.log.bakes().iter();
        let photo = |(bake, photo): &Photo| PhotoRecord {
            bake: bake.clone(),
            photo: photo.clone(),
        };
        Self {
            forgotten: file.log.resets,
            bakes: bakes.map(|bake| Each(Ok(bake.clone()))).collect(),
            photos: file.photos.iter().map(|one| Each(Ok(photo(one)))).collect(),
        }
    }
}

impl From<LogFileRecord> for LogFile {
    fn from(record: LogFileRecord) -> Self {
        let mut refused = Vec::new();
        let mut bakes = good(record.bakes, "bakes", &mut refused);
        let photos = good(record.photos, "photos", &mut refused);
        let mut photos: Vec<Photo> = photos
            .into_iter()
            .map(|PhotoRecord { bake, photo }| (bake, photo))
            .collect();
        photos.retain(|(of, _)| bakes.iter().any(|bake: &Bake| bake.id == *of));
        for bake in &mut bakes {
            bake.photo = photos.iter().any(|(of, _)| *of == bake.id);
        }
        Self {
            log: Log::of(bakes, record.forgotten),
            photos,
            refused,
        }
    }
}
