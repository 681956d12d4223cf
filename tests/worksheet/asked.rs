//! What is asked: one document, read through the same records as the page's.

use std::borrow::Cow;
use std::num::NonZeroU32;

use softcrumb::engine::formula::{FigureTarget, Formula, LineAt};
use softcrumb::engine::quantity::{Division, Mass, OutOfRange, Share, Viscosity};
use softcrumb::engine::rise::RiseSettings;
use softcrumb::sheet::{Kitchen, Sheet, examples};
use softcrumb::storage::{Json, Record};

use crate::asked_heat::HeatAsked;
use crate::class::{self, AskedClass};
use crate::day::{self, AskedDay};
use crate::error::ErrorText;
use crate::json_text::json_text;
use crate::spelling::figure;

/// The version of documents and results.
pub(crate) const VERSION: u32 = 1;

/// Everything asked in one document.
pub(crate) struct Asked {
    pub(crate) sheet: Sheet,
    pub(crate) kitchen: Kitchen,
    /// A formula to lay beside, as the older of the two.
    pub(crate) before: Option<Formula>,
    pub(crate) targets: Vec<(FigureTarget, LineAt)>,
    pub(crate) part_shares: Vec<(usize, Share)>,
    pub(crate) divide: Vec<(Mass, NonZeroU32, Division)>,
    pub(crate) thickness: Vec<Viscosity>,
    pub(crate) day: Option<AskedDay>,
    pub(crate) heat: HeatAsked,
    /// Heat is left out: only when formula, batch and chocolate are timed by themselves.
    pub(crate) without_heat: bool,
    pub(crate) class: AskedClass,
}

pub(crate) type Read<T> = Result<T, ErrorText>;

/// The keys a document may have.
const KEYS: &[&str] = &[
    "worksheet",
    "bread",
    "formula",
    "batch",
    "kitchen",
    "targets",
    "stream_shares",
    "divide",
    "thickness_pa_s",
    "before",
    "day",
    "heat",
    "coolings",
    "vessel_coolings",
    "boilings",
    "pantry",
    "class",
    "recipe",
    "hand_out",
];

impl Asked {
    /// The settings of the rises; the usual ones where no day is asked for.
    pub(crate) fn rises(&self) -> RiseSettings {
        let day = self.day.as_ref();
        day.map_or_else(RiseSettings::default, |day| day.settings.rises)
    }

    /// Only a sheet and a kitchen, nothing beside.
    pub(crate) fn plain(sheet: Sheet, kitchen: Kitchen) -> Self {
        Self {
            sheet,
            kitchen,
            before: None,
            targets: Vec::new(),
            part_shares: Vec::new(),
            divide: Vec::new(),
            thickness: Vec::new(),
            day: None,
            heat: HeatAsked::default(),
            without_heat: false,
            class: AskedClass::default(),
        }
    }

    /// Reads one document.
    pub(crate) fn read(line: &str) -> Read<Self> {
        let tree = Json::parse(line).map_err(|(line, column)| {
            let message = format!("not JSON at line {line}, column {column}");
            ErrorText::new("", "Damaged", &message)
        })?;
        let version = number(&tree, "worksheet")?;
        if version.total_cmp(&f64::from(VERSION)).is_ne() {
            let newer = version > f64::from(VERSION);
            let kind = if newer { "Newer" } else { "NoSuchVersion" };
            return Err(ErrorText::new("worksheet", kind, "this reads version 1"));
        }
        known(&tree, KEYS)?;
        let mut asked = Self::plain(sheet(&tree)?, kitchen(&tree)?);
        asked.before = before(&tree)?;
        asked.day = day::read(&tree)?;
        asked.heat = HeatAsked::read(&tree)?;
        asked.targets = each(&tree, "targets", target)?;
        asked.part_shares = each(&tree, "stream_shares", part_share)?;
        asked.divide = each(&tree, "divide", divide)?;
        asked.class = class::read(&tree)?;
        asked.thickness = each(&tree, "thickness_pa_s", |tree| {
            in_range("", Viscosity::from_pascal_seconds(plain_number(tree, "")?))
        })?;
        Ok(asked)
    }
}

/// The record of that kind, made of some fields of the document: read like any other record, so
/// that a field twice or a number out of range is found there.
pub(crate) fn record(kind: &'static str, fields: Vec<(Cow<'_, str>, Json<'_>)>) -> String {
    let mut all = vec![
        ("softcrumb".into(), Json::Text(kind.into())),
        ("version".into(), Json::Number(1.0)),
    ];
    all.extend(fields);
    json_text(&Json::Fields(all))
}

/// The default of a batch that is left out: the formula once, without losses.
const BATCH: &str = r#"{"wanted":{"by":"times","times":1},"losses":{},"pieces":1,"syrup_at_c":40}"#;

fn sheet(tree: &Json) -> Read<Sheet> {
    let once = Json::parse(BATCH).unwrap_or(Json::Nothing);
    let mut fields = vec![
        ("name".into(), Json::Text("".into())),
        ("note".into(), Json::Text("".into())),
        (
            "bread".into(),
            get(tree, "bread")
                .cloned()
                .unwrap_or(Json::Text("soft_tin".into())),
        ),
        ("batch".into(), get(tree, "batch").cloned().unwrap_or(once)),
    ];
    fields.extend(get(tree, "formula").map(|formula| ("formula".into(), formula.clone())));
    fields.extend(get(tree, "heat").map(|heat| ("heat".into(), heat.clone())));
    Sheet::read(&record("formula", fields)).map_err(|error| ErrorText::of_record(&error, ""))
}

/// The older formula, under `before` as the other is under `formula`.
fn before(tree: &Json) -> Read<Option<Formula>> {
    let Some(before) = get(tree, "before") else {
        return Ok(None);
    };
    let document = Json::Fields(vec![("formula".into(), before.clone())]);
    let inside = |error: ErrorText| error.renamed("formula", "before");
    sheet(&document)
        .map(|sheet| Some(sheet.formula))
        .map_err(inside)
}

fn kitchen(tree: &Json) -> Read<Kitchen> {
    match get(tree, "kitchen") {
        None => Ok(Kitchen::default()),
        Some(Json::Fields(fields)) => Kitchen::read(&record("kitchen", fields.clone()))
            .map_err(|error| ErrorText::of_record(&error, "kitchen")),
        Some(_) => Err(ErrorText::new("kitchen", "WrongType", "expected fields")),
    }
}

fn target(tree: &Json) -> Read<(FigureTarget, LineAt)> {
    known(tree, &["figure", "share", "mass_g", "stream", "line"])?;
    let Some(Json::Text(word)) = get(tree, "figure") else {
        return Err(ErrorText::new(
            "figure",
            "Missing",
            "expected a figure's name",
        ));
    };
    let share = || in_range("share", Share::from_fraction(number(tree, "share")?));
    let target = match (figure(word), get(tree, "mass_g")) {
        (Some(figure), Some(_)) => {
            let mass = Mass::from_grams(number(tree, "mass_g")?);
            FigureTarget::Weight(figure, in_range("mass_g", mass)?)
        }
        (Some(figure), None) => FigureTarget::OfFlour(figure, share()?),
        (None, _) if word == "moisture" => FigureTarget::Moisture(share()?),
        (None, _) => return Err(ErrorText::new("figure", "UnknownWord", word)),
    };
    let at = LineAt {
        part: place(tree, "stream")?,
        line: place(tree, "line")?,
    };
    Ok((target, at))
}

fn part_share(tree: &Json) -> Read<(usize, Share)> {
    known(tree, &["stream", "share"])?;
    let share = Share::from_fraction(number(tree, "share")?);
    Ok((place(tree, "stream")?, in_range("share", share)?))
}

fn divide(tree: &Json) -> Read<(Mass, NonZeroU32, Division)> {
    known(tree, &["dough_g", "pieces", "division_g"])?;
    let dough = in_range("dough_g", Mass::from_grams(number(tree, "dough_g")?))?;
    let pieces = u32::try_from(place(tree, "pieces")?)
        .ok()
        .and_then(NonZeroU32::new);
    let pieces = pieces.ok_or_else(|| ErrorText::new("pieces", "OutOfRange", "1 to 65535"))?;
    let division = in_range("division_g", Mass::from_grams(number(tree, "division_g")?))?;
    let division = Division::from_mass(division)
        .map_err(|error| ErrorText::new("division_g", "NoSuchDivision", &error.to_string()))?;
    Ok((dough, pieces, division))
}

/// An object with these keys only, each at most once.
pub(crate) fn known(tree: &Json, keys: &[&str]) -> Read<()> {
    let Json::Fields(fields) = tree else {
        return Err(ErrorText::new("", "WrongType", "expected fields"));
    };
    for (at, (key, _)) in fields.iter().enumerate() {
        if !keys.contains(&key.as_ref()) {
            return Err(ErrorText::new(key, "UnknownField", "unknown field"));
        }
        if fields.iter().take(at).any(|(before, _)| before == key) {
            return Err(ErrorText::new(key, "Twice", "there twice"));
        }
    }
    Ok(())
}

pub(crate) fn get<'t>(tree: &'t Json<'t>, wanted: &str) -> Option<&'t Json<'t>> {
    let Json::Fields(fields) = tree else {
        return None;
    };
    let found = fields.iter().find(|(key, _)| key == wanted);
    found.map(|(_, value)| value)
}

/// The most items that a list of a document may hold.
pub(crate) const MOST: usize = 1000;

/// Every item of a list that may be left out; no more than [`MOST`].
pub(crate) fn each<T>(tree: &Json, key: &str, read: impl Fn(&Json) -> Read<T>) -> Read<Vec<T>> {
    let items = match get(tree, key) {
        None => return Ok(Vec::new()),
        Some(Json::List(items)) if items.len() > MOST => {
            let message = format!("{} items are more than {MOST}", items.len());
            return Err(ErrorText::new(key, "TooMany", &message));
        }
        Some(Json::List(items)) => items.iter().enumerate(),
        Some(_) => return Err(ErrorText::new(key, "WrongType", "expected a list")),
    };
    let inside = |(at, item)| read(item).map_err(|error: ErrorText| error.inside(key, at));
    items.map(inside).collect()
}

pub(crate) fn number(tree: &Json, key: &str) -> Read<f64> {
    let value = get(tree, key).ok_or_else(|| ErrorText::new(key, "Missing", "missing"))?;
    plain_number(value, key)
}

fn plain_number(tree: &Json, path: &str) -> Read<f64> {
    if let Json::Number(number) = tree {
        Ok(*number)
    } else {
        Err(ErrorText::new(path, "WrongType", "expected a number"))
    }
}

pub(crate) fn in_range<T>(path: &str, made: Result<T, OutOfRange>) -> Read<T> {
    made.map_err(|error| ErrorText::new(path, "OutOfRange", &error.to_string()))
}

/// A whole number from zero to 65535.
fn place(tree: &Json, key: &str) -> Read<usize> {
    let value = number(tree, key)?;
    let found = (0..=u16::MAX).find(|at| f64::from(*at).total_cmp(&value).is_eq());
    let found = found.ok_or_else(|| ErrorText::new(key, "OutOfRange", "0 to 65535, whole"));
    found.map(usize::from)
}

/// The first example as a document, for a start.
pub(crate) fn example() -> String {
    let sheet = Record::write(&examples().remove(0).1);
    let kitchen = Kitchen::default().write();
    let (sheet, kitchen) = (Json::parse(&sheet), Json::parse(&kitchen));
    let (Ok(sheet), Ok(kitchen)) = (sheet, kitchen) else {
        return String::new();
    };
    let mut fields = vec![("worksheet".into(), Json::Number(f64::from(VERSION)))];
    for key in ["bread", "formula", "batch", "heat"] {
        fields.extend(get(&sheet, key).map(|value| (key.into(), value.clone())));
    }
    if let Json::Fields(kitchen) = kitchen {
        let own = kitchen
            .into_iter()
            .filter(|(key, _)| !matches!(key.as_ref(), "softcrumb" | "version"));
        fields.push(("kitchen".into(), Json::Fields(own.collect())));
    }
    json_text(&Json::Fields(fields))
}
