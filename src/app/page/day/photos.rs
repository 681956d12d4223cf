//! The photos of bakes, each stored under the bake's own key; bounded in all, so that they never
//! crowd out what cannot be taken again.

use crate::app::browser::storage::{self, StorageError};
use crate::sheet::Id;
use crate::sheet::day::{Bake, Log};
use crate::storage::key;
use crate::storage::record::Photo;

/// The most characters of all photos together: a third of what a browser keeps.
const MOST: usize = 1_600_000;

/// The photo of a bake.
pub fn photo(bake: &Id) -> Option<String> {
    let saved = storage::get(&key::of_photo(bake)).ok().flatten()?;
    Bake::is_photo(&saved).then_some(saved)
}

/// Saves a photo for a bake, in place of the one it may have.
///
/// # Errors
/// [`StorageError::Full`] where there are as many as there may be; the storage's error.
pub fn save(bake: &Id, photo: &str) -> Result<(), StorageError> {
    let key = key::of_photo(bake);
    let others = storage::length_of_all(|other| key::is_photo(other) && other != key);
    if others.saturating_add(photo.len()) > MOST {
        return Err(StorageError::Full);
    }
    storage::set(&key, photo)
}

/// Takes the photo of a bake away.
pub fn remove(bake: &Id) {
    storage::remove(&key::of_photo(bake));
}

/// All photos of a log.
pub fn all(log: &Log) -> Vec<Photo> {
    let with = log.bakes().iter().filter(|bake| bake.photo);
    with.filter_map(|bake| Some((bake.id.clone(), photo(&bake.id)?)))
        .collect()
}
