//! Nutrition as a table: what is in 100 g, in a piece, in a loaf.

use std::num::NonZeroU32;

use crate::engine::batch::Scaled;
use crate::engine::nutrition::{
    LabelLaw, Nutrients, Nutrition, NutritionError, declare, nutrition as worked_out,
};
use crate::engine::quantity::Mass;
use crate::engine::working::Line;
use crate::text::{format, format_options::FormatOptions, language::text, name, tr, tr_noop};

/// A row of the table.
#[derive(Clone, Debug, PartialEq)]
pub struct NutritionRow {
    /// What it is called.
    pub name: &'static str,
    /// One figure for each column.
    pub figures: Vec<String>,
    /// How the first figure came about.
    pub working: Vec<Line>,
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

/// Stands with every table.
const NOTE: &str = tr_noop!(
    "An estimate from composition tables and your labels, with only water lost in \
                    the oven. It is no label in law: for bread that is sold, ask your authority."
);

/// Nutrition of a batch, in so many `loaves` where that is another number than of pieces.
///
/// # Errors
/// [`NutritionError`] as the engine has it.
pub fn nutrition(
    scaled: &Scaled,
    loaves: Option<NonZeroU32>,
    law: LabelLaw,
    options: FormatOptions,
) -> Result<NutritionView, NutritionError> {
    let found = worked_out(scaled)?;
    let portions = portions(&found, loaves, options);
    let declared = portions
        .iter()
        .map(|(_, held)| declare(held, law))
        .collect::<Result<Vec<_>, _>>()?;
    let hundred = found.in_hundred_grams();
    let mut rows = vec![NutritionRow {
        name: tr!("Energy"),
        figures: declared
            .iter()
            .map(|(energy, _)| format::declared_energy(*energy, options))
            .collect(),
        working: hundred.working_of_energy(law, hundred.energy(law)?),
    }];
    let first = declared.first().map(|(_, lines)| lines.as_slice());
    for (at, line) in first.unwrap_or_default().iter().enumerate() {
        let figures = declared.iter().filter_map(|(_, lines)| lines.get(at));
        rows.push(NutritionRow {
            name: name::nutrient(line.nutrient, law),
            figures: figures
                .map(|line| format::declared(line.nutrient, line.declared, options))
                .collect(),
            working: found.working_of(line.nutrient),
        });
    }
    Ok(NutritionView {
        columns: portions.into_iter().map(|(column, _)| column).collect(),
        rows,
        note: text(NOTE),
    })
}

/// What each column is about, and what is in it.
fn portions(
    found: &Nutrition,
    loaves: Option<NonZeroU32>,
    options: FormatOptions,
) -> Vec<(String, Nutrients)> {
    let mut portions = vec![("100\u{A0}g".to_owned(), found.in_hundred_grams())];
    let mut add = |of: &str, (mass, held): (Mass, Nutrients)| {
        portions.push((
            tr!(
                "{of} of {value}",
                of = of,
                value = format::mass(mass, options)
            ),
            held,
        ));
    };
    add(tr!("a piece"), found.in_piece());
    if let Some(loaves) = loaves.filter(|loaves| *loaves != found.pieces) {
        add(tr!("a loaf"), found.in_one_of(loaves));
    }
    portions
}
