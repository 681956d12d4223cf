//! The answers of Chocolate's rows: one short sentence a row.

use crate::engine::chocolate::{Fill, Melted};
use crate::engine::formula::Formula;
use crate::engine::quantity::Temperature;
use crate::results::chocolate::SyrupVerdict;
use crate::text::{format, format_options::FormatOptions, name, tr};

/// What the syrup does: "At 40 °C it runs from a bag or a spoon in a thread".
#[must_use]
pub fn syrup(verdict: SyrupVerdict, at: Temperature, options: FormatOptions) -> String {
    let at = format::temperature(at, options);
    match verdict {
        SyrupVerdict::MeltedOnly => tr!("Melted chocolate: no water is added").to_owned(),
        SyrupVerdict::Seizes {
            missing: Some(missing),
        } => tr!(
            "It seizes: {missing} of liquid is missing",
            missing = format::mass(missing, options)
        ),
        SyrupVerdict::Seizes { missing: None } => {
            tr!("It seizes, however much of this liquid is poured").to_owned()
        }
        SyrupVerdict::Thick => tr!("Thick: at {at} it is too stiff to work", at = at),
        SyrupVerdict::Runs(handling) => tr!(
            "At {at} it {looks}",
            at = at,
            looks = name::handling_looks(handling)
        ),
    }
}

/// The same in a word or two.
#[must_use]
pub fn syrup_word(verdict: SyrupVerdict) -> &'static str {
    match verdict {
        SyrupVerdict::MeltedOnly => tr!("No water added"),
        SyrupVerdict::Seizes { .. } => tr!("Seizes"),
        SyrupVerdict::Thick => tr!("Too stiff"),
        SyrupVerdict::Runs(handling) => name::handling(handling),
    }
}

/// How the chocolate is melted: as the steps of the bench have it, then what the other way leaves.
/// "Over hot water, as in the steps: smooth. Poured on hot instead: 31.8 °C, clear lumps".
#[must_use]
pub fn melting(melted: &Melted, options: FormatOptions) -> String {
    tr!(
        "Over hot water, as in the steps: smooth. Hot liquid poured on it instead: {at}, {lumps}",
        at = format::temperature(melted.temperature, options),
        lumps = name::lumps(melted.lumps)
    )
}

/// The filling: "8 g in each piece, 86 g to make".
#[must_use]
pub fn filling(fill: &Fill, options: FormatOptions) -> String {
    tr!(
        "{each} in each piece, {all} to make",
        each = format::mass(fill.each, options),
        all = format::mass(fill.to_make, options)
    )
}

/// What is weighed of some parts: "Syrup: 92 g · Filling: 86 g".
#[must_use]
pub fn weighing(
    formula: &Formula,
    parts: impl Iterator<Item = usize>,
    options: FormatOptions,
) -> String {
    let own = parts.filter_map(|part| formula.parts.get(part));
    let own = own.map(|part| {
        format!(
            "{}: {}",
            name::part(part),
            format::mass(part.mass(), options)
        )
    });
    own.collect::<Vec<_>>().join(" · ")
}

/// Above the boxes of a part: whose weights they are, and what the batch takes of it. `made` is the
/// formula as large as the batch makes it; `None` where it has no such part.
#[must_use]
pub fn made_once(made: &Formula, part: usize, options: FormatOptions) -> Option<String> {
    let own = made.parts.get(part)?;
    Some(tr!(
        "{name} in the formula, made once. This batch takes {mass} in all.",
        name = own.name,
        mass = format::mass(own.mass(), options)
    ))
}
