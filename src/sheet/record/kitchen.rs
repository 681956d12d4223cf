//! Kitchens as records: one for a file, all of them for the browser's storage.

use crate::engine::heat::{Material, RuleSet};
use crate::engine::quantity::{Altitude, Division, Mass, Pressure, WarmingRate};
use crate::sheet::enum_names::{HEAT_FROM, MATERIALS, RULES, spelt};
use crate::sheet::kitchen::Kitchens;
use crate::sheet::plain;
use crate::sheet::{BoilsBy, Bowl, Kitchen, Mixer, Oven, Scales};

use super::envelope::{RECORD_LIMIT, begin, fields, kind, open};
use super::error::{RecordError, RecordFault};
use super::fields::{Fields, list, mass, minutes, number, short, temperature, truth, whole, word};
use super::print::Writer;
use super::tree::Tree;

const KIND: &str = "kitchen";
const KIND_OF_ALL: &str = "kitchens";
pub(super) const KNOWN_OF_ALL: &[&str] = &["chosen", "kitchens"];
pub(super) const KNOWN: &[&str] = &[
    "name",
    "scales",
    "room_c",
    "flour_c",
    "fridge_c",
    "tap_c",
    "altitude_m",
    "pressure_hpa",
    "bowls",
    "paste_bowl",
    "mixing_bowl",
    "mixer",
    "oven",
    "rules",
];

/// Writes one kitchen down as JSON.
#[must_use]
pub fn write_kitchen(kitchen: &Kitchen) -> String {
    body(kitchen, begin(KIND)).to_string()
}

/// Reads one kitchen from JSON; what is not there is as usual.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_kitchen(text: &str) -> Result<Kitchen, RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    read_body(&fields(&tree, KIND, KNOWN)?)
}

/// Writes all kitchens down as JSON, and which of them is chosen.
#[must_use]
pub fn write_kitchens(kitchens: &Kitchens) -> String {
    body_of_all(kitchens, begin(KIND_OF_ALL)).to_string()
}

pub(super) fn body_of_all<'t>(kitchens: &'t Kitchens, begun: Writer<'t>) -> Tree<'t> {
    begun
        .number("chosen", small(kitchens.chosen()))
        .list(
            "kitchens",
            kitchens.all().map(|one| body(one, Writer::new())),
        )
        .done()
}

/// Reads kitchens from JSON: the record of all, or of one.
///
/// # Errors
/// [`RecordError`] with the way to what is wrong.
pub fn read_kitchens(text: &str) -> Result<Kitchens, RecordError> {
    let tree = open(text, RECORD_LIMIT)?;
    if kind(&tree)? == KIND {
        return Ok(Kitchens::only(read_body(&fields(&tree, KIND, KNOWN)?)?));
    }
    read_all_body(&fields(&tree, KIND_OF_ALL, KNOWN_OF_ALL)?)
}

pub(super) fn read_all_body(fields: &Fields) -> Result<Kitchens, RecordError> {
    let chosen = fields.maybe("chosen", |tree| place(tree, Kitchens::MOST))?;
    let all = fields.needed("kitchens", |tree| {
        list(tree, Kitchens::MOST, |tree| {
            read_body(&Fields::of(tree, KNOWN)?)
        })
    })?;
    if all.is_empty() {
        return Err(RecordError::from(RecordFault::Missing).inside("kitchens"));
    }
    Ok(Kitchens::of(all, chosen.unwrap_or_default()))
}

pub(super) fn body<'t>(kitchen: &'t Kitchen, begun: Writer<'t>) -> Tree<'t> {
    let scales = Writer::new()
        .number("main_g", kitchen.scales.main.grams())
        .maybe("pocket_g", kitchen.scales.pocket.map(Mass::grams));
    let mixer = Writer::new()
        .number(
            "friction_k_per_min",
            kitchen.mixer.friction.kelvin_per_minute(),
        )
        .number("mixing_min", kitchen.mixer.minutes.minutes());
    let oven = Writer::new()
        .tree("fan", Tree::Truth(kitchen.oven.fan))
        .text("heat_from", spelt(kitchen.oven.from, HEAT_FROM));
    let begun = begun
        .text("name", plain::name(&kitchen.name, Kitchen::NAME_LENGTH))
        .tree("scales", scales.done())
        .number("room_c", kitchen.room.celsius())
        .number("flour_c", kitchen.flour.celsius())
        .number("fridge_c", kitchen.fridge.celsius())
        .number("tap_c", kitchen.tap.celsius());
    match kitchen.boils_by {
        BoilsBy::Altitude(altitude) => begun.number("altitude_m", altitude.metres()),
        BoilsBy::Pressure(pressure) => begun.number("pressure_hpa", pressure.hectopascals()),
    }
    .list("bowls", kitchen.bowls.iter().map(write_bowl))
    .maybe("paste_bowl", kitchen.paste_bowl.map(small))
    .maybe("mixing_bowl", kitchen.mixing_bowl.map(small))
    .tree("mixer", mixer.done())
    .tree("oven", oven.done())
    .text("rules", spelt(kitchen.rules, RULES))
    .done()
}

fn write_bowl(bowl: &Bowl) -> Tree<'_> {
    Writer::new()
        .text("name", plain::name(&bowl.name, Kitchen::NAME_LENGTH))
        .text("material", spelt(bowl.material, MATERIALS))
        .number("mass_g", bowl.mass.grams())
        .done()
}

pub(super) fn read_body(fields: &Fields) -> Result<Kitchen, RecordError> {
    let usual = Kitchen::default();
    let bowls = fields.maybe("bowls", |tree| list(tree, Kitchen::MOST_BOWLS, read_bowl))?;
    // Bowls that were given say themselves which is for what, even by saying nothing.
    let (bowls, paste_bowl, mixing_bowl) = match bowls {
        Some(bowls) => (bowls, None, None),
        None => (usual.bowls, usual.paste_bowl, usual.mixing_bowl),
    };
    let bowl = |tree: &Tree| place(tree, bowls.len());
    Ok(Kitchen {
        name: fields
            .maybe("name", |tree| {
                short(tree, Kitchen::NAME_LENGTH, plain::name)
            })?
            .unwrap_or(usual.name),
        scales: fields.maybe("scales", read_scales)?.unwrap_or(usual.scales),
        room: fields.maybe("room_c", temperature)?.unwrap_or(usual.room),
        flour: fields.maybe("flour_c", temperature)?.unwrap_or(usual.flour),
        fridge: fields
            .maybe("fridge_c", temperature)?
            .unwrap_or(usual.fridge),
        tap: fields.maybe("tap_c", temperature)?.unwrap_or(usual.tap),
        boils_by: read_boils_by(fields)?.unwrap_or(usual.boils_by),
        paste_bowl: fields.maybe("paste_bowl", bowl)?.or(paste_bowl),
        mixing_bowl: fields.maybe("mixing_bowl", bowl)?.or(mixing_bowl),
        bowls,
        mixer: fields.maybe("mixer", read_mixer)?.unwrap_or(usual.mixer),
        oven: fields.maybe("oven", read_oven)?.unwrap_or(usual.oven),
        rules: fields
            .maybe("rules", |tree| word::<RuleSet>(tree, RULES))?
            .unwrap_or(usual.rules),
    })
}

fn read_boils_by(fields: &Fields) -> Result<Option<BoilsBy>, RecordError> {
    let altitude = fields.maybe("altitude_m", |tree| {
        Ok(Altitude::from_metres(number(tree)?)?)
    })?;
    let pressure = fields.maybe("pressure_hpa", |tree| {
        Ok(Pressure::from_hectopascals(number(tree)?)?)
    })?;
    match (altitude, pressure) {
        (Some(_), Some(_)) => Err(RecordError::from(RecordFault::Twice).inside("pressure_hpa")),
        (Some(altitude), None) => Ok(Some(BoilsBy::Altitude(altitude))),
        (None, pressure) => Ok(pressure.map(BoilsBy::Pressure)),
    }
}

fn read_scales(tree: &Tree) -> Result<Scales, RecordError> {
    let fields = Fields::of(tree, &["main_g", "pocket_g"])?;
    Ok(Scales {
        main: fields.needed("main_g", division)?,
        pocket: fields.maybe("pocket_g", division)?,
    })
}

fn read_bowl(tree: &Tree) -> Result<Bowl, RecordError> {
    let fields = Fields::of(tree, &["name", "material", "mass_g"])?;
    let name = fields.maybe("name", |tree| {
        short(tree, Kitchen::NAME_LENGTH, plain::name)
    })?;
    Ok(Bowl {
        name: name.unwrap_or_default(),
        material: fields.needed("material", |tree| word::<Material>(tree, MATERIALS))?,
        mass: fields.needed("mass_g", mass)?,
    })
}

fn read_mixer(tree: &Tree) -> Result<Mixer, RecordError> {
    let fields = Fields::of(tree, &["friction_k_per_min", "mixing_min"])?;
    Ok(Mixer {
        friction: fields.needed("friction_k_per_min", |tree| {
            Ok(WarmingRate::from_kelvin_per_minute(number(tree)?)?)
        })?,
        minutes: fields.needed("mixing_min", minutes)?,
    })
}

fn read_oven(tree: &Tree) -> Result<Oven, RecordError> {
    let fields = Fields::of(tree, &["fan", "heat_from"])?;
    Ok(Oven {
        fan: fields.needed("fan", truth)?,
        from: fields.needed("heat_from", |tree| word(tree, HEAT_FROM))?,
    })
}

/// A division that scales are made with.
fn division(tree: &Tree) -> Result<Mass, RecordError> {
    Ok(Division::from_mass(mass(tree)?)?.mass())
}

/// A place in a list of `length`.
fn place(tree: &Tree, length: usize) -> Result<usize, RecordError> {
    let most = u32::try_from(length).unwrap_or(u32::MAX).saturating_sub(1);
    Ok(usize::try_from(whole(tree, 0, most)?).unwrap_or(usize::MAX))
}

fn small(at: usize) -> f64 {
    u32::try_from(at).map_or(0.0, f64::from)
}
