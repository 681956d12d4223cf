//! The texts of another language are a file, loaded when the language is first used.

use std::cell::RefCell;

use crate::app::browser::{catalogue, locale};
use crate::sheet::Language;
use crate::text::language::{Catalogue, set_catalogue};

thread_local! {
    /// Loaded catalogues.
    static LOADED: RefCell<Vec<(Language, &'static Catalogue)>> = const { RefCell::new(Vec::new()) };
}

/// The language that is wanted: the one chosen, else the first the browser asks for.
pub fn wanted(chosen: Option<Language>) -> Language {
    chosen.unwrap_or_else(|| {
        let tags = locale::wanted();
        Language::first_of(tags.iter().map(String::as_str))
    })
}

/// Switches to a language. `false` where its texts cannot be loaded; then nothing changes.
///
/// Numbers and dates follow the browser, unless the language was chosen here.
pub async fn load(chosen: Option<Language>) -> bool {
    let language = wanted(chosen);
    let catalogue = match language {
        Language::English => None,
        Language::Spanish | Language::Japanese => {
            let Some(catalogue) = load_one(language).await else {
                return false;
            };
            Some(catalogue)
        }
    };
    set_catalogue(catalogue);
    locale::choose(chosen.map(Language::tag));
    locale::mark(language.tag(), language.direction());
    true
}

/// The catalogue of a language, loaded once.
async fn load_one(language: Language) -> Option<&'static Catalogue> {
    let known = LOADED.with_borrow(|loaded| {
        let found = loaded.iter().find(|(own, _)| *own == language);
        found.map(|(_, catalogue)| *catalogue)
    });
    if known.is_some() {
        return known;
    }
    let read = Catalogue::read(catalogue::fetch(language.tag()).await?).ok()?;
    LOADED.with_borrow_mut(|loaded| loaded.push((language, read)));
    Some(read)
}
