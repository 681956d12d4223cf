//! The class of one document: pantry, class and a recipe to be read.

use softcrumb::engine::class::ClassSettings;
use softcrumb::sheet::Pantry;
use softcrumb::storage::{Json, Record, RecordError};

use crate::asked::{get, record};
use crate::error::ErrorText;

/// What is asked beside the batch.
#[derive(Default)]
pub(crate) struct AskedClass {
    pub(crate) pantry: Pantry,
    pub(crate) settings: Option<ClassSettings>,
    pub(crate) recipe: Option<String>,
    pub(crate) share: bool,
}

/// Reads `pantry`, `class` and `recipe`, each of which may be left out.
pub(crate) fn read(tree: &Json) -> Result<AskedClass, ErrorText> {
    let recipe = match get(tree, "recipe") {
        None => None,
        Some(Json::Text(text)) => Some(text.clone().into_owned()),
        Some(_) => return Err(ErrorText::new("recipe", "WrongType", "expected a text")),
    };
    let share = matches!(get(tree, "hand_out"), Some(Json::Truth(true)));
    Ok(AskedClass {
        share,
        pantry: component(tree, "pantry", Pantry::read)?.unwrap_or_default(),
        settings: component(tree, "class", ClassSettings::read)?,
        recipe,
    })
}

fn component<T>(
    tree: &Json,
    key: &'static str,
    read: impl Fn(&str) -> Result<T, RecordError>,
) -> Result<Option<T>, ErrorText> {
    match get(tree, key) {
        None => Ok(None),
        Some(Json::Fields(fields)) => read(&record(key, fields.clone()))
            .map(Some)
            .map_err(|error| ErrorText::of_record(&error, key)),
        Some(_) => Err(ErrorText::new(key, "WrongType", "expected fields")),
    }
}
