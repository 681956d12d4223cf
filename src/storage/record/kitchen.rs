//! Kitchens as records: one for a file, all of them for the browser's storage.

use serde::{Deserialize, Serialize};

use crate::engine::heat::{HeatFrom, Material, RuleSet};
use crate::engine::quantity::{Altitude, Mass, Pressure, Temperature};
use crate::sheet::Kitchens;
use crate::sheet::{BoilsBy, Bowl, Kitchen, Mixer, Oven, Scales};
use crate::storage::enum_names::{MATERIALS, RULES};

use super::error::{RecordError, RecordFault};
use super::number::{DivisionMass, Place};
use super::read::{converted, described};
use super::text::{List, Name, words};
use super::{Record, head, upgrade};

words! {
    Material: MATERIALS;
    RuleSet: RULES;
}

described! {
    Scales: ScalesRecord;
    Bowl: BowlRecord;
    Oven: OvenRecord;
}

converted! {
    Kitchen: KitchenRecord;
    Kitchens: KitchensRecord;
}

impl Record for Kitchen {
    const KIND: &'static str = "kitchen";
}

impl Record for Kitchens {
    const KIND: &'static str = "kitchens";

    /// The record of one kitchen is that of the only one.
    fn read(text: &str) -> Result<Self, RecordError> {
        let head = head::head(text, Self::LIMIT)?;
        upgrade::known(&head, Self::VERSION)?;
        if head.kind == Kitchen::KIND {
            return Kitchen::read(text).map(Self::only);
        }
        upgrade::is_a(&head, Self::KIND)?;
        upgrade::read(&head, Self::UPGRADES)
    }
}

/// What is not there is as usual.
#[derive(Deserialize, Serialize)]
#[serde(default, deny_unknown_fields)]
struct KitchenRecord {
    #[serde(with = "Name::<{ Kitchen::NAME_LENGTH }>")]
    name: String,
    scales: Scales,
    room_c: Temperature,
    /// Earlier releases wrote 20 °C where nothing was set: theirs stands.
    #[serde(skip_serializing_if = "Option::is_none")]
    flour_c: Option<Temperature>,
    fridge_c: Temperature,
    tap_c: Temperature,
    #[serde(skip_serializing_if = "Option::is_none")]
    altitude_m: Option<Altitude>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pressure_hpa: Option<Pressure>,
    #[serde(skip_serializing_if = "Option::is_none")]
    bowls: Option<Bowls>,
    #[serde(skip_serializing_if = "Option::is_none")]
    paste_bowl: Option<BowlPlace>,
    #[serde(skip_serializing_if = "Option::is_none")]
    mixing_bowl: Option<BowlPlace>,
    mixer: Mixer,
    oven: Oven,
    rules: RuleSet,
}

#[derive(Deserialize, Serialize)]
#[serde(transparent)]
struct Bowls(#[serde(with = "List::<{ Kitchen::MOST_BOWLS }>")] Vec<Bowl>);

#[derive(Clone, Copy, Deserialize, Serialize)]
#[serde(transparent)]
struct BowlPlace(#[serde(with = "Place::<{ Kitchen::MOST_BOWLS }>")] usize);

#[derive(Deserialize, Serialize)]
#[serde(remote = "Scales", deny_unknown_fields)]
struct ScalesRecord {
    #[serde(rename = "main_g", with = "DivisionMass")]
    main: Mass,
    #[serde(rename = "pocket_g", skip_serializing_if = "Option::is_none")]
    pocket: Option<Mass>,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Bowl", deny_unknown_fields)]
struct BowlRecord {
    #[serde(default, with = "Name::<{ Kitchen::NAME_LENGTH }>")]
    name: String,
    material: Material,
    #[serde(rename = "mass_g")]
    mass: Mass,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Oven", deny_unknown_fields)]
struct OvenRecord {
    fan: bool,
    #[serde(rename = "heat_from")]
    from: HeatFrom,
}

impl Default for KitchenRecord {
    /// The usual kitchen, with the keys that stand for each other left out.
    fn default() -> Self {
        let usual = Self::from(&Kitchen::default());
        Self {
            altitude_m: None,
            pressure_hpa: None,
            bowls: None,
            paste_bowl: None,
            mixing_bowl: None,
            ..usual
        }
    }
}

impl From<&Kitchen> for KitchenRecord {
    fn from(kitchen: &Kitchen) -> Self {
        let (altitude_m, pressure_hpa) = match kitchen.boils_by {
            BoilsBy::Altitude(altitude) => (Some(altitude), None),
            BoilsBy::Pressure(pressure) => (None, Some(pressure)),
        };
        Self {
            name: kitchen.name.clone(),
            scales: kitchen.scales,
            room_c: kitchen.room,
            flour_c: kitchen.flour,
            fridge_c: kitchen.fridge,
            tap_c: kitchen.tap,
            altitude_m,
            pressure_hpa,
            bowls: Some(Bowls(kitchen.bowls.clone())),
            paste_bowl: kitchen.paste_bowl.map(BowlPlace),
            mixing_bowl: kitchen.mixing_bowl.map(BowlPlace),
            mixer: kitchen.mixer,
            oven: kitchen.oven,
            rules: kitchen.rules,
        }
    }
}

impl TryFrom<KitchenRecord> for Kitchen {
    type Error = RecordError;

    fn try_from(record: KitchenRecord) -> Result<Self, RecordError> {
        let usual = Self::default();
        // Bowls that were given say themselves which is for what, even by saying nothing.
        let (bowls, paste_bowl, mixing_bowl) = match record.bowls {
            Some(bowls) => (bowls.0, None, None),
            None => (usual.bowls, usual.paste_bowl, usual.mixing_bowl),
        };
        let there = |key, place: Option<BowlPlace>| {
            let Some(BowlPlace(place)) = place else {
                return Ok(None);
            };
            let found = super::number::place(place, bowls.len());
            found.map(Some).map_err(|error| error.inside(key))
        };
        Ok(Self {
            name: record.name,
            scales: record.scales,
            room: record.room_c,
            flour: record.flour_c,
            fridge: record.fridge_c,
            tap: record.tap_c,
            boils_by: match (record.altitude_m, record.pressure_hpa) {
                (Some(_), Some(_)) => return Err(RecordFault::Twice.at("pressure_hpa")),
                (Some(altitude), None) => BoilsBy::Altitude(altitude),
                (None, Some(pressure)) => BoilsBy::Pressure(pressure),
                (None, None) => usual.boils_by,
            },
            paste_bowl: there("paste_bowl", record.paste_bowl)?.or(paste_bowl),
            mixing_bowl: there("mixing_bowl", record.mixing_bowl)?.or(mixing_bowl),
            bowls,
            mixer: record.mixer,
            oven: record.oven,
            rules: record.rules,
            cooling: usual.cooling,
        })
    }
}

#[derive(Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct KitchensRecord {
    #[serde(default, with = "Place::<{ Kitchens::MOST }>")]
    chosen: usize,
    #[serde(with = "List::<{ Kitchens::MOST }>")]
    kitchens: Vec<Kitchen>,
}

impl From<&Kitchens> for KitchensRecord {
    fn from(kitchens: &Kitchens) -> Self {
        Self {
            chosen: kitchens.chosen(),
            kitchens: kitchens.all().cloned().collect(),
        }
    }
}

impl TryFrom<KitchensRecord> for Kitchens {
    type Error = RecordError;

    fn try_from(record: KitchensRecord) -> Result<Self, RecordError> {
        if record.kitchens.is_empty() {
            return Err(RecordFault::Missing.at("kitchens"));
        }
        Ok(Self::of(record.kitchens, record.chosen))
    }
}
