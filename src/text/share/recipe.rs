//! The report on an imported recipe, line by line.

use crate::engine::ingredients::Food;
use crate::engine::ingredients::Listed;
use crate::engine::numerics::saturating_u32;
use crate::storage::interchange::{
    Amount, Found, MeasureSource, ReadRecipe, RecipeNames, Understood,
};
use crate::text::{ErrorText, chart::stopped, format, format_options::FormatOptions, name, tr};

/// A line of an imported recipe and its result.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ImportedLine {
    /// The line as written.
    pub text: String,
    /// Its result.
    pub says: String,
    /// Whether it is in the formula, or is the heading of lines that are.
    pub is_imported: bool,
    /// Whether its weight is only approximate.
    pub approximate: bool,
}

/// The report on an imported recipe.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RecipeView {
    /// "9 of 11 lines were understood, 4 of them only about."
    pub title: String,
    /// Line by line.
    pub lines: Vec<ImportedLine>,
    /// Other notes.
    pub left_out: Option<String>,
}

/// What the page calls the ingredients, and what has no name in a recipe.
#[must_use]
pub fn recipe_names() -> RecipeNames {
    let foods = Listed::all().map(|listed| (name::food(&Food::Listed(listed)), listed));
    RecipeNames {
        recipe: tr!("Recipe").to_owned(),
        dough: tr!("Dough").to_owned(),
        foods: foods.collect(),
    }
}

/// Reports on each line of an imported recipe.
#[must_use]
pub fn recipe(read: &ReadRecipe, options: FormatOptions) -> RecipeView {
    let lines: Vec<ImportedLine> = read
        .lines
        .iter()
        .map(|line| {
            let (says, is_imported, approximate) = understood_text(&line.understood, options);
            let text = line.text.clone();
            ImportedLine {
                text,
                says,
                is_imported,
                approximate,
            }
        })
        .collect();
    RecipeView {
        title: title(&lines, options),
        left_out: left_out(read),
        lines,
    }
}

fn title(lines: &[ImportedLine], options: FormatOptions) -> String {
    let count = |wanted: &dyn Fn(&ImportedLine) -> bool| {
        saturating_u32(lines.iter().filter(|line| wanted(line)).count())
    };
    let is_imported = count(&|line| line.is_imported);
    let about = count(&|line| line.approximate);
    let whole = tr!(
        "{first} of {second} lines were understood",
        first = format::count(is_imported, options),
        second = format::count(count(&|_| true), options)
    );
    if about == 0 {
        stopped(&whole)
    } else {
        tr!(
            "{whole}, {value} of them only about: weigh those once.",
            whole = whole,
            value = format::count(about, options)
        )
    }
}

fn understood_text(understood: &Understood, options: FormatOptions) -> (String, bool, bool) {
    match understood {
        Understood::Heading(heading) => {
            let kind = name::part_kind(heading.kind).to_lowercase();
            (
                tr!("Heads the lines below it, as {kind}.", kind = kind),
                true,
                false,
            )
        }
        Understood::Line(_, found) => {
            let approximate = found.range || matches!(found.amount, Amount::Approximate { .. });
            (line(found, options), true, approximate)
        }
        Understood::Not(unread) => (unread.sentence(options), false, false),
    }
}

fn line(found: &Found, options: FormatOptions) -> String {
    let food = match &found.food {
        Food::Own(own) => tr!(
            "{value}, an ingredient of your own without figures yet",
            value = own.name
        ),
        Food::Listed(_) => name::food(&found.food),
    };
    let mass = format::mass(found.mass, options);
    let middle = || tr!(" The middle of the range was taken.");
    let range = found.range.then(middle).unwrap_or_default();
    match found.amount {
        Amount::Weighed => tr!(
            "{mass} of {food}.{range}",
            mass = mass,
            food = food,
            range = range
        ),
        Amount::Approximate {
            count,
            unit,
            each,
            source,
        } => {
            let (one, several) = name::measure(unit);
            let noun = if count > 1.0 { several } else { one };
            let count = format::significant(count, 3, options.numbers);
            let each = format::mass(each, options);
            tr!(
                "About {mass} of {food}: {count} {noun} at {each} each ({source}).{range}",
                mass = mass,
                food = food,
                count = count,
                noun = noun,
                each = each,
                source = read_in(source),
                range = range
            )
        }
    }
}

/// Where the weight of a measure was read.
fn read_in(source: MeasureSource) -> &'static str {
    match source {
        MeasureSource::Usda => tr!("USDA, table of weights"),
        MeasureSource::Kagawa => tr!("Kagawa Nutrition University, table of weights"),
        MeasureSource::Practice => tr!("common practice"),
    }
}

fn left_out(read: &ReadRecipe) -> Option<String> {
    let mut left = Vec::new();
    if read.note_cut {
        left.push(tr!("The note was too long and was cut short.").to_owned());
    }
    if !read.unused.is_empty() {
        left.push(tr!(
            "Not taken over: {value}.",
            value = read.unused.join(tr!(", "))
        ));
    }
    (!left.is_empty()).then(|| left.join(" "))
}
