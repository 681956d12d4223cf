//! Parts: what places are made of.

mod advice_card;
mod answers;
mod button;
mod choice;
mod day_ribbon;
mod dialog;
mod dough_figure;
mod figure;
mod flow_curve;
mod icon;
mod number_box;
mod pick_one;
mod rise_curve;
mod stream_word;
mod text_box;
mod trial_bar;
mod water_ledger;
mod working_list;

pub use advice_card::AdviceCard;
pub use button::{Button, IconButton};
pub use choice::Choice;
pub use day_ribbon::DayRibbonPicture;
pub use dialog::{Dialog, TITLE};
pub use dough_figure::{MassFigure, MoistureFigure, ShareFigure};
pub use figure::{Figure, Shown};
pub use flow_curve::FlowCurve;
pub use icon::{Icon, Picture};
pub use number_box::NumberBox;
pub use pick_one::PickOne;
pub use rise_curve::RiseCurve;
pub use stream_word::stream_word;
pub use text_box::TextBox;
pub use trial_bar::TrialBar;
pub use water_ledger::WaterLedger;
pub use working_list::WorkingList;
