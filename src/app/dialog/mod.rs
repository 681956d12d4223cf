//! Dialogs: what may stand open over a place.

mod add_part;
mod share_code;
mod share_link;
mod share;
mod share_paper;
mod share_text;
mod share_fold;
mod line_menu;
mod dialog_content;
mod own_food;
mod paper_pages;
mod picker;
mod settings;
mod shelf;
mod part_menu;
mod import_file;
mod import_recipe;

pub use add_part::AddPart;
pub use share_code::HandMore;
pub use share::HandOutDialog;
pub use line_menu::LineMenu;
pub use dialog_content::Over;
pub use own_food::OwnFoodForm;
pub use picker::Picker;
pub use settings::SettingsDialog;
pub use shelf::ShelfDialog;
pub use part_menu::PartMenu;
