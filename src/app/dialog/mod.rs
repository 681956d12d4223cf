//! Dialogs: what may stand open over a place.

mod add_stream;
mod hand_code;
mod hand_link;
mod hand_out;
mod hand_paper;
mod hand_text;
mod handed;
mod line_menu;
mod over;
mod own_food;
mod paper_pages;
mod picked;
mod picker;
mod settings;
mod shelf;
mod stream_menu;
mod take_in;
mod take_recipe;

pub use add_stream::AddStream;
pub use hand_code::HandMore;
pub use hand_out::HandOutDialog;
pub use line_menu::LineMenu;
pub use over::Over;
pub use own_food::OwnFoodForm;
pub use picker::Picker;
pub use settings::SettingsDialog;
pub use shelf::ShelfDialog;
pub use stream_menu::StreamMenu;
