//! Dialogs that open over a place.

mod add_part;
mod dialog_content;
mod import_file;
mod import_recipe;
mod line_menu;
mod own_food;
mod paper_content;
mod paper_pages;
mod part_menu;
mod picked;
mod picker;
mod settings;
mod share;
mod share_code;
mod share_content;
mod share_link;
mod share_paper;
mod share_text;
mod shelf;

pub use add_part::{AddPart, NewParts};
pub use dialog_content::DialogContent;
pub use line_menu::LineMenu;
pub use own_food::OwnFoodForm;
pub use part_menu::PartMenu;
pub use picker::Picker;
pub use settings::SettingsDialog;
pub use share::ShareDialog;
pub use shelf::ShelfDialog;
