//! Nutrition as a table: what is in 100 g, in a piece, in a loaf.

use crate::engine::working::WorkingLine;
use crate::results::batch::nutrition::{NutritionPortion, NutritionResults, PortionKind};
use crate::text::{format, format_options::FormatOptions, language::text, name, tr, tr_noop};

/// A row of the table.
#[derive(Clone, Debug, PartialEq)]
pub struct NutritionRow {
    /// Its name.
    pub name: &'static str,
    /// One figure for each column.
    pub figures: Vec<String>,
    /// The steps that lead to the first figure.
    pub working: Vec<WorkingLine>,
}

/// Nutrition as a table.
#[derive(Clone, Debug, PartialEq)]
pub struct NutritionView {
    /// What each column is about: "100 g", "a piece of 82 g".
    pub columns: Vec<String>,
    /// Energy, then each nutrient in the order of the law.
    pub rows: Vec<NutritionRow>,
    /// What it is, and what it is not.
    pub note: &'static str,
}

/// The note below every table.
const NOTE: &str = tr_noop!(
    "An estimate from composition tables and your labels, with only water lost in \
                    the oven. It is no label in law: for bread that is sold, ask your authority."
);

/// The nutrition of a batch as a table.
#[must_use]
pub fn view(found: &NutritionResults, options: FormatOptions) -> NutritionView {
    let energies = found.portions().map(|portion| portion.energy);
    let mut rows = vec![NutritionRow {
        name: tr!("Energy"),
        figures: energies
            .map(|energy| format::declared_energy(energy, options))
            .collect(),
        working: found.energy_working(),
    }];
    for (at, line) in found.hundred_grams.lines.iter().enumerate() {
        let lines = found.portions().filter_map(|portion| portion.lines.get(at));
        rows.push(NutritionRow {
            name: name::nutrient(line.nutrient, found.law),
            figures: lines
                .map(|line| format::declared(line.nutrient, line.declared, options))
                .collect(),
            working: found.working_of(line.nutrient),
        });
    }
    let columns = found.portions().map(|portion| column(portion, options));
    NutritionView {
        columns: columns.collect(),
        rows,
        note: text(NOTE),
    }
}

/// What a portion is: "100 g", "a piece of 82 g".
fn column(portion: &NutritionPortion, options: FormatOptions) -> String {
    let of = match portion.kind {
        PortionKind::HundredGrams => return "100\u{A0}g".to_owned(),
        PortionKind::Piece => tr!("a piece"),
        PortionKind::Loaf => tr!("a loaf"),
    };
    tr!(
        "{of} of {value}",
        of = of,
        value = format::mass(portion.mass, options)
    )
}
