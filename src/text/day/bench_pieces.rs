//! The sentences of the steps at the bench between the two rises, and of what goes on top.

use std::num::{NonZeroU16, NonZeroU32};

use crate::engine::formula::{Formula, LineAt};
use crate::engine::quantity::{Mass, Share};
use crate::results::day::BenchStep;
use crate::text::{format, format_options::FormatOptions, name, tr, weighing};

/// The sentence of a step of the pieces; `None` for other steps.
pub(super) fn pieces(
    step: &BenchStep,
    formula: &Formula,
    options: FormatOptions,
) -> Option<String> {
    let count = |number: u32| format::count(number, options);
    if let BenchStep::Divide { pieces, divided } = step {
        let each = divided.as_ref().map_or_else(
            || format::mass(pieces.each, options),
            |divided| weighing::divided(divided, options),
        );
        return Some(match pieces.count.get() {
            1 => tr!("It stays in one piece: {each}.", each = each),
            many => tr!(
                "Divide it into {count} pieces: {each}.",
                count = count(many),
                each = each
            ),
        });
    }
    if let BenchStep::Round { pieces } = step {
        return Some(match pieces.get() {
            1 => tr!("Round the dough into a ball and cover it.").to_owned(),
            many => tr!("Round {count} balls and cover them.", count = count(many)),
        });
    }
    if let BenchStep::Rest { minutes } = step {
        return Some(tr!(
            "The pieces rest, covered, for {minutes}.",
            minutes = format::minutes(*minutes, options)
        ));
    }
    if let BenchStep::Shape {
        pieces,
        filling,
        stays,
    } = step
    {
        return Some(shape(*pieces, (*filling, *stays), formula, options));
    }
    if let BenchStep::Tin { pieces, tins, rows } = step {
        return Some(tin(*pieces, *tins, *rows, options));
    }
    on_top(step, options)
}

/// Chocolate on top.
fn on_top(step: &BenchStep, options: FormatOptions) -> Option<String> {
    if let BenchStep::Melt { all } = step {
        return Some(tr!(
            "Melt it gently over hot water, stirring, until it runs: {all} in all.",
            all = format::mass(*all, options)
        ));
    }
    if let BenchStep::Drizzle { all, stays } = step {
        let all = format::mass(*all, options);
        return Some(if stays.fraction() > 0.0 {
            tr!(
                "Drizzle the chocolate over the risen dough; {share} of the {all} stays in the bowl.",
                share = format::share(*stays, options),
                all = all
            )
        } else {
            tr!(
                "Drizzle all {all} of the chocolate over the risen dough.",
                all = all
            )
        });
    }
    None
}

/// Why more filling is weighed than goes in; `None` where it is no more.
fn stays_in_bag(stays: Share, options: FormatOptions) -> Option<String> {
    (stays.fraction() > 0.0).then(|| {
        tr!(
            "{share} stays in the bag.",
            share = format::share(stays, options)
        )
    })
}

fn shape(
    pieces: NonZeroU32,
    (filling, stays): (Option<(Mass, Option<LineAt>)>, Share),
    formula: &Formula,
    options: FormatOptions,
) -> String {
    let count = format::count(pieces.get(), options);
    match (filling, pieces.get()) {
        (Some((each, line)), _) => {
            let what = line.map(|line| line_name(line, formula).to_lowercase());
            let filled = tr!(
                "{each} of {what} inside each of the {count} pieces. Close them well.",
                each = format::mass(each, options),
                what = what.unwrap_or_else(|| tr!("filling").to_owned()),
                count = count
            );
            match stays_in_bag(stays, options) {
                Some(stays) => format!("{filled} {stays}"),
                None => filled,
            }
        }
        (None, 1) => tr!("Shape it as long as the tin.").to_owned(),
        (None, _) => tr!("Shape {count} pieces, tight and even.", count = count),
    }
}

fn tin(
    pieces: NonZeroU32,
    tins: Option<NonZeroU16>,
    rows: Option<(NonZeroU16, NonZeroU16)>,
    options: FormatOptions,
) -> String {
    let count = |number: u32| format::count(number, options);
    let tins = tins.map_or(1, NonZeroU16::get);
    match (pieces.get(), rows) {
        (1, _) => tr!("Into the greased tin, seam down.").to_owned(),
        (many, Some((rows, columns))) if tins == 1 => tr!(
            "{count} pieces into the greased tin, seam down: rows {rows}, in each {columns}.",
            count = count(many),
            rows = count(u32::from(rows.get())),
            columns = count(u32::from(columns.get()))
        ),
        (many, _) => tr!(
            "{count} pieces into the greased tins ({tins}), seam down, side by side.",
            count = count(many),
            tins = count(u32::from(tins))
        ),
    }
}

/// The name of a line's food; empty where there is no such line.
pub(super) fn line_name(at: LineAt, formula: &Formula) -> String {
    let line = formula.line(at);
    line.map_or_else(String::new, |line| {
        name::food_short(&line.food).into_owned()
    })
}
