//! The kinds of dialog: what each is about, as data.

use crate::engine::formula::{Figure, LineAt};
use crate::engine::working::Line;
use crate::text::{name, tr};

/// What stands open over the page.
#[derive(Clone)]
pub enum DialogKind {
    /// How a figure came about.
    Working {
        /// What the figure is.
        title: String,
        /// The figure as it is shown.
        value: String,
        /// The steps.
        lines: Vec<Line>,
    },
    /// How a figure of the dough came about: of its flour or by weight; its moisture where none.
    OfDough {
        /// Which figure.
        figure: Option<Figure>,
        /// The figure as it is shown.
        value: String,
    },
    /// What can be done with a line.
    Line(LineAt),
    /// What can be done with a part.
    Part(usize),
    /// A new part.
    AddPart,
    /// Picking an ingredient.
    Pick {
        /// What it is for: "Add to Scalded paste".
        title: String,
        /// What is done with it.
        pick_for: PickFor,
    },
    /// The formulas that are kept.
    Shelf,
    /// Handing the formula out.
    HandOut,
    /// Settings.
    Settings,
}

/// What is done with an ingredient once it is picked. The view that asks for it may be gone by then.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PickFor {
    /// A new line of this part, without a weight.
    NewLine(usize),
    /// This line's ingredient in place of the present one.
    Swap(LineAt),
}

impl DialogKind {
    /// The title of the dialog.
    pub fn title(&self) -> String {
        match self {
            Self::Working { title, .. } | Self::Pick { title, .. } => title.clone(),
            Self::OfDough { figure, .. } => {
                name::figure(figure.unwrap_or(Figure::TotalWater)).to_owned()
            }
            Self::Line(_) => tr!("This ingredient").to_owned(),
            Self::Part(_) => tr!("This stream").to_owned(),
            Self::AddPart => tr!("Add a stream").to_owned(),
            Self::Shelf => tr!("Shelf").to_owned(),
            Self::HandOut => tr!("Hand out").to_owned(),
            Self::Settings => tr!("Settings").to_owned(),
        }
    }
}
