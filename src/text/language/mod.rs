//! Translation: every text of the page in the user's language, from one catalogue a language.
//!
//! The English text is written where it is used and is the message's own key: `tr!("The paste comes
//! to {hot}.", hot = hot)`. The other languages' catalogues are beside this file in the gettext
//! format (`*.po`); the build fails where one lacks a message. English needs none.

mod catalogue;
mod languages;
mod tr;
mod translate;

pub use catalogue::{Catalogue, CatalogueError};
pub(crate) use tr::{check_places, tr, tr_noop};
pub use translate::{filled, set_catalogue, text, tr_dynamic};
