//! The kinds of dialog: what each is about, as data.

use crate::engine::formula::{Figure, LineAt};
use crate::engine::working::WorkingLine;
use crate::text::{name, tr};

/// A dialog.
#[derive(Clone)]
pub enum DialogKind {
    /// The working of a figure.
    Working {
        /// What the figure is.
        title: String,
        /// The figure as it is shown.
        value: String,
        /// The steps.
        lines: Vec<WorkingLine>,
    },
    /// The working of a figure of the dough: of its flour or by weight; of its moisture where none.
    DoughFigure {
        /// Which figure.
        figure: Option<Figure>,
        /// The figure as it is shown.
        value: String,
    },
    /// The menu of a line.
    Line(LineAt),
    /// The menu of a part.
    Part(usize),
    /// A new part.
    AddPart,
    /// The parts of a new formula.
    NewParts,
    /// Name, kind of bread and note.
    About,
    /// Picking an ingredient.
    Pick {
        /// What it is for: "Add to Scalded paste".
        title: String,
        /// What is done with it.
        pick_for: PickFor,
    },
    /// The stored formulas.
    Shelf,
    /// Sharing and importing.
    Share,
    /// Settings.
    Settings,
}

/// The use of an ingredient once it is picked; the view that asked may have been removed by then.
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
            Self::DoughFigure { figure, .. } => {
                name::figure(figure.unwrap_or(Figure::TotalWater)).to_owned()
            }
            Self::Line(_) => tr!("This ingredient").to_owned(),
            Self::Part(_) => tr!("This part").to_owned(),
            Self::AddPart | Self::NewParts => tr!("Add a part").to_owned(),
            Self::About => tr!("About it").to_owned(),
            Self::Shelf => tr!("Shelf").to_owned(),
            Self::Share => tr!("Share").to_owned(),
            Self::Settings => tr!("Settings").to_owned(),
        }
    }
}
