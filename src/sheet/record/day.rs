//! What a formula's plan goes by, as a record; what is not there is as usual.

use std::num::NonZeroU16;

use crate::engine::plan::{Edit, Loads, Step, StepAt, StepKind};
use crate::sheet::civil::Clock;
use crate::sheet::day::{DaySettings, Fridge, Sleep, Target};
use crate::sheet::enum_names::{WORKS, spelt};
use crate::sheet::{Moment, plain};

use super::envelope::{RECORD_LIMIT, begin, fields, open};
use super::error::{RecordError, RecordFault};
use super::fields::{Fields, list, minutes, short, truth, whole, word};
use super::print::Writer;
use super::rises;
use super::shelf::moment;
use super::tree::Tree;

const KIND: &str = "day";
pub(super) const KNOWN: &[&str] = &[
    "rises",
    "table_ms",
    "from_ms",
    "sleep",
    "fridge",
    "one_pair_of_hands",
    "loads",
    "between_loads_min",
    "staggered",
    "edits",
];

/// How a step is changed, by the word it is kept under.
#[derive(Clone, Copy, PartialEq)]
enum Change {
    Duration,
    LeftOut,
    Sooner,
    Added,
}

const CHANGES: &[(Change, &str)] = &[
    (Change::Duration, "lasts"),
    (Change::LeftOut, "left_out"),
    (Change::Sooner, "sooner"),
    (Change::Added, "added"),
];

/// Writes what a plan goes by down as JSON.
#[must_use]
pub fn write_day(settings: &DaySettings) -> String {
    body(settings, begin(KIND)).to_string()
}

pub(super) fn body<'t>(settings: &'t DaySettings, begun: Writer<'t>) -> Tree<'t> {
    let begun = begun.tree("rises", rises::write(&settings.rises));
    let begun = match settings.target {
        Target::Open => begun,
        Target::Table(at) => begun.number("table_ms", at.milliseconds()),
        Target::From(at) => begun.number("from_ms", at.milliseconds()),
    };
    let fridge = Writer::new()
        .number("least_min", settings.fridge.least.minutes())
        .number("most_min", settings.fridge.most.minutes());
    // A sleep that is not there is told apart from one that was never asked for.
    let sleep = settings.sleep.map_or(Tree::Truth(false), |sleep| {
        Writer::new()
            .number("from_min", sleep.from.minutes())
            .number("until_min", sleep.until.minutes())
            .done()
    });
    let begun = begun
        .tree("sleep", sleep)
        .tree("fridge", fridge.done())
        .tree("one_pair_of_hands", Tree::Truth(settings.one_pair_of_hands));
    write_loads(settings.loads, begun)
        .list("edits", settings.edits.iter().map(write_edit))
        .done()
}

/// A step by its work, and which of several alike.
pub(super) fn write_step<'t>(step: StepAt, begun: Writer<'t>) -> Writer<'t> {
    begun
        .text("work", spelt(step.work, WORKS))
        .number("of", step.of)
}

pub(super) fn write_edit(edit: &Edit) -> Tree<'_> {
    let change = |word, step| write_step(step, Writer::new().text("change", word));
    match edit {
        Edit::Duration { step, minutes } => {
            change("lasts", *step).number("minutes", minutes.minutes())
        }
        Edit::LeftOut { step } => change("left_out", *step),
        Edit::Sooner { step } => change("sooner", *step),
        Edit::Added {
            after,
            number,
            name,
            minutes,
            hands,
        } => change("added", *after)
            .number("number", *number)
            .text("name", plain::name(name, Step::NAME_LENGTH))
            .number("minutes", minutes.minutes())
            .number("hands_min", hands.minutes()),
    }
    .done()
}

/// Reads what a plan goes by from JSON.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_day(text: &str) -> Result<DaySettings, RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    read_body(&fields(&tree, KIND, KNOWN)?)
}

pub(super) fn read_body(fields: &Fields) -> Result<DaySettings, RecordError> {
    let usual = DaySettings::default();
    Ok(DaySettings {
        rises: fields.maybe("rises", rises::read)?.unwrap_or_default(),
        target: read_target(fields)?,
        sleep: fields.maybe("sleep", read_sleep)?.unwrap_or(usual.sleep),
        fridge: fields.maybe("fridge", read_fridge)?.unwrap_or(usual.fridge),
        one_pair_of_hands: fields
            .maybe("one_pair_of_hands", truth)?
            .unwrap_or(usual.one_pair_of_hands),
        loads: read_loads(fields)?,
        edits: fields
            .maybe("edits", |tree| list(tree, Edit::MOST, read_edit))?
            .unwrap_or_default(),
    })
}

/// What is as usual is left out.
fn write_loads<'t>(loads: Loads, begun: Writer<'t>) -> Writer<'t> {
    let usual = Loads::of(loads.count);
    let between = (loads.between != usual.between).then(|| loads.between.minutes());
    begun
        .number("loads", loads.count.get())
        .maybe("between_loads_min", between)
        .maybe_tree("staggered", loads.staggered.then_some(Tree::Truth(true)))
}

fn read_loads(fields: &Fields) -> Result<Loads, RecordError> {
    let counted = fields.maybe("loads", count)?;
    let usual = Loads::of(counted.unwrap_or(NonZeroU16::MIN));
    Ok(Loads {
        between: fields
            .maybe("between_loads_min", minutes)?
            .unwrap_or(usual.between),
        staggered: fields.maybe("staggered", truth)?.unwrap_or_default(),
        ..usual
    })
}

fn read_target(fields: &Fields) -> Result<Target, RecordError> {
    let (table, from) = (
        fields.maybe("table_ms", moment)?,
        fields.maybe("from_ms", moment)?,
    );
    match (table, from) {
        (Some(_), Some(_)) => Err(RecordError::from(RecordFault::Twice).inside("from_ms")),
        (Some(at), None) => Ok(Target::Table(at)),
        (None, Some(at)) => Ok(Target::From(at)),
        (None, None) => Ok(Target::Open),
    }
}

fn read_sleep(tree: &Tree) -> Result<Option<Sleep>, RecordError> {
    if matches!(tree, Tree::Truth(false)) {
        return Ok(None);
    }
    let fields = Fields::of(tree, &["from_min", "until_min"])?;
    Ok(Some(Sleep {
        from: fields.needed("from_min", clock)?,
        until: fields.needed("until_min", clock)?,
    }))
}

fn read_fridge(tree: &Tree) -> Result<Fridge, RecordError> {
    let fields = Fields::of(tree, &["least_min", "most_min"])?;
    Ok(Fridge {
        least: fields.needed("least_min", minutes)?,
        most: fields.needed("most_min", minutes)?,
    })
}

pub(super) fn read_step(fields: &Fields) -> Result<StepAt, RecordError> {
    Ok(StepAt {
        work: fields.needed("work", |tree| word::<StepKind>(tree, WORKS))?,
        of: fields.needed("of", small)?,
    })
}

pub(super) fn read_edit(tree: &Tree) -> Result<Edit, RecordError> {
    let known = [
        "change",
        "work",
        "of",
        "minutes",
        "number",
        "name",
        "hands_min",
    ];
    let fields = Fields::of(tree, &known)?;
    let step = read_step(&fields)?;
    Ok(match fields.needed("change", |tree| word(tree, CHANGES))? {
        Change::Duration => Edit::Duration {
            step,
            minutes: fields.needed("minutes", minutes)?,
        },
        Change::LeftOut => Edit::LeftOut { step },
        Change::Sooner => Edit::Sooner { step },
        Change::Added => Edit::Added {
            after: step,
            number: fields.needed("number", small)?,
            name: fields.needed("name", |tree| short(tree, Step::NAME_LENGTH, plain::name))?,
            minutes: fields.needed("minutes", minutes)?,
            hands: fields.needed("hands_min", minutes)?,
        },
    })
}

fn clock(tree: &Tree) -> Result<Clock, RecordError> {
    let most = u32::from(Clock::DAY) - 1;
    let minutes = u16::try_from(whole(tree, 0, most)?).unwrap_or(0);
    Ok(Clock::from_minutes(minutes).unwrap_or_default())
}

pub(super) fn small(tree: &Tree) -> Result<u16, RecordError> {
    Ok(u16::try_from(whole(tree, 0, u32::from(u16::MAX))?).unwrap_or(u16::MAX))
}

fn count(tree: &Tree) -> Result<NonZeroU16, RecordError> {
    let count = u16::try_from(whole(tree, 1, 99)?).unwrap_or(1);
    Ok(NonZeroU16::new(count).unwrap_or(NonZeroU16::MIN))
}

/// A moment that may be left out, for the writer.
pub(super) fn maybe_ms(at: Option<Moment>) -> Option<f64> {
    at.map(Moment::milliseconds)
}
