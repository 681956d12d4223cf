//! What is made ready before the dough is mixed, in a sentence.

use super::bench_pieces::line_name;
use crate::engine::formula::Formula;
use crate::results::day::BeforeMixing;
use crate::sheet::civil::Zone;
use crate::text::{chart::listed, format, format_options::FormatOptions, name, tr};

/// "Before that, at 8:30: whole milk to 40 °C, bowl to 40 °C. Take Scald and Night dough out of the
/// fridge."
#[must_use]
pub fn before_mixing(
    before: &BeforeMixing,
    formula: &Formula,
    zone: &Zone,
    options: FormatOptions,
) -> String {
    let lines = before.lines.iter();
    let mut things: Vec<String> = lines
        .map(|(at, to)| {
            tr!(
                "{what} to {warm}",
                what = line_name(*at, formula),
                warm = format::temperature(*to, options)
            )
        })
        .collect();
    things.extend(before.bowl.map(|bowl| {
        tr!(
            "the bowl to {warm}",
            warm = format::temperature(bowl, options)
        )
    }));
    let bring = tr!(
        "Before that, at {time}, bring {things}.",
        time = format::clock_at(before.at, zone),
        things = listed(&things).unwrap_or_default()
    );
    let parts = before
        .out
        .iter()
        .filter_map(|part| formula.parts.get(*part));
    let parts: Vec<String> = parts.map(|part| name::part(part).to_owned()).collect();
    match listed(&parts) {
        Some(parts) => {
            let out = tr!("Take {parts} out of the fridge then.", parts = parts);
            format!("{bring} {out}")
        }
        None => bring,
    }
}
