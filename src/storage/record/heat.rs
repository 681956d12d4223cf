//! What a formula asks of heat, in a record; what is not there is as usual.

use serde::{Deserialize, Serialize};

use crate::engine::heat::{BakedShape, CoolingVessel, HeatFrom, Phase, Shape};
use crate::engine::quantity::{Length, Mass, Minutes, Temperature, TemperatureChange};
use crate::sheet::{
    BakeLength, BakeSettings, CoolingChoice, CoolingSettings, FormerBody, FormerCooling,
    HeatSettings, KnownBake, MeltSettings, PasteSettings,
};
use crate::storage::enum_names::{BAKE_LENGTHS, BAKED_SHAPES, COOLING_VESSELS, HEAT_FROM, SHAPES};

use super::error::RecordFault;
use super::read::{converted, described};
use super::text::{List, words};

words! {
    HeatFrom: HEAT_FROM;
    Shape: SHAPES;
    BakedShape: BAKED_SHAPES;
    BakeLength: BAKE_LENGTHS;
    CoolingVessel: COOLING_VESSELS;
}

described! {
    HeatSettings: HeatRecord;
    PasteSettings: PasteRecord;
    BakeSettings: BakeRecord;
    Phase: PhaseRecord;
    KnownBake: KnownBakeRecord;
    MeltSettings: MeltRecord;
}

converted! { CoolingSettings: CoolingRecord; }

#[derive(Deserialize, Serialize)]
#[serde(
    remote = "HeatSettings",
    default = "HeatSettings::default",
    deny_unknown_fields
)]
struct HeatRecord {
    #[serde(rename = "dough_c")]
    dough: Temperature,
    #[serde(rename = "mixing_min", skip_serializing_if = "Option::is_none")]
    mixing: Option<Minutes>,
    #[serde(rename = "standing_min")]
    standing: Minutes,
    #[serde(rename = "mixing_bowl_c", skip_serializing_if = "Option::is_none")]
    mixing_bowl: Option<Temperature>,
    paste: PasteSettings,
    cooling: CoolingSettings,
    bake: BakeSettings,
    melt: MeltSettings,
}

#[derive(Deserialize, Serialize)]
#[serde(
    remote = "PasteSettings",
    default = "PasteSettings::default",
    deny_unknown_fields
)]
struct PasteRecord {
    #[serde(rename = "bowl_c", skip_serializing_if = "Option::is_none")]
    bowl: Option<Temperature>,
    #[serde(rename = "drop_k")]
    drop: TemperatureChange,
}

/// A cooling: with a vessel as releases from the second on write it, else as the first did.
#[derive(Default, Deserialize, Serialize)]
#[serde(default, deny_unknown_fields)]
struct CoolingRecord {
    #[serde(skip_serializing_if = "Option::is_none")]
    thick_m: Option<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    shape: Option<Shape>,
    #[serde(skip_serializing_if = "Option::is_none")]
    vessel: Option<CoolingVessel>,
    #[serde(skip_serializing_if = "Option::is_none")]
    across_m: Option<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    lid: Option<bool>,
    #[serde(skip_serializing_if = "Option::is_none")]
    bench_min: Option<Minutes>,
    #[serde(skip_serializing_if = "Option::is_none")]
    ice_min: Option<Minutes>,
}

impl From<&CoolingSettings> for CoolingRecord {
    fn from(settings: &CoolingSettings) -> Self {
        if let Some(former) = settings.to_former() {
            return Self {
                thick_m: Some(former.body.thick),
                shape: Some(former.body.shape),
                lid: Some(former.lid),
                bench_min: Some(former.bench),
                ice_min: Some(former.ice),
                ..Self::default()
            };
        }
        let times = settings.own_times();
        Self {
            vessel: Some(settings.vessel),
            across_m: settings.across,
            lid: Some(settings.lid),
            bench_min: times.map(|(bench, _)| bench),
            ice_min: times.map(|(_, ice)| ice),
            ..Self::default()
        }
    }
}

impl TryFrom<CoolingRecord> for CoolingSettings {
    type Error = RecordFault;

    fn try_from(record: CoolingRecord) -> Result<Self, RecordFault> {
        let usual = FormerCooling::default();
        let lid = record.lid.unwrap_or(usual.lid);
        let Some(vessel) = record.vessel else {
            if record.across_m.is_some() {
                return Err(RecordFault::UnknownField);
            }
            return Ok(Self::from_former(FormerCooling {
                body: FormerBody {
                    thick: record.thick_m.unwrap_or(usual.body.thick),
                    shape: record.shape.unwrap_or(usual.body.shape),
                },
                lid,
                bench: record.bench_min.unwrap_or(usual.bench),
                ice: record.ice_min.unwrap_or(usual.ice),
            }));
        };
        if record.thick_m.is_some() || record.shape.is_some() {
            return Err(RecordFault::UnknownField);
        }
        let way = match (record.bench_min, record.ice_min) {
            (None, None) => CoolingChoice::Quickest,
            (bench, ice) => CoolingChoice::Own {
                bench: bench.unwrap_or(Minutes::ZERO),
                ice: ice.unwrap_or(Minutes::ZERO),
            },
        };
        Ok(Self {
            vessel,
            across: record.across_m,
            lid,
            way,
            former: None,
        })
    }
}

#[derive(Deserialize, Serialize)]
#[serde(
    remote = "BakeSettings",
    default = "BakeSettings::default",
    deny_unknown_fields
)]
struct BakeRecord {
    #[serde(with = "List::<{ BakeSettings::MOST_PHASES }>")]
    phases: Vec<Phase>,
    #[serde(with = "known_or_usual")]
    known: Option<KnownBake>,
    #[serde(skip_serializing_if = "is_predicted")]
    length: BakeLength,
}

/// As always written: the bake that earlier releases began with means the usual one.
mod known_or_usual {
    use serde::{Deserialize, Deserializer, Serialize, Serializer};

    use crate::sheet::KnownBake;

    pub(super) fn serialize<S: Serializer>(
        known: &Option<KnownBake>,
        into: S,
    ) -> Result<S::Ok, S::Error> {
        known.unwrap_or(KnownBake::FORMER).serialize(into)
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(
        from: D,
    ) -> Result<Option<KnownBake>, D::Error> {
        let known = KnownBake::deserialize(from)?;
        Ok((known != KnownBake::FORMER).then_some(known))
    }
}

#[allow(
    clippy::trivially_copy_pass_by_ref,
    reason = "the signature is that of skip_serializing_if"
)]
fn is_predicted(length: &BakeLength) -> bool {
    *length == BakeLength::Predicted
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "Phase", deny_unknown_fields)]
struct PhaseRecord {
    minutes: Minutes,
    #[serde(rename = "oven_c")]
    temperature: Temperature,
    #[serde(rename = "heat_from")]
    from: HeatFrom,
    fan: bool,
}

#[derive(Deserialize, Serialize)]
#[serde(remote = "KnownBake", deny_unknown_fields)]
struct KnownBakeRecord {
    minutes: Minutes,
    #[serde(rename = "oven_c")]
    oven: Temperature,
    #[serde(rename = "piece_g")]
    piece: Mass,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    shape: Option<BakedShape>,
}

#[derive(Deserialize, Serialize)]
#[serde(
    remote = "MeltSettings",
    default = "MeltSettings::default",
    deny_unknown_fields
)]
struct MeltRecord {
    #[serde(rename = "chocolate_c", skip_serializing_if = "Option::is_none")]
    chocolate: Option<Temperature>,
    #[serde(rename = "liquid_c", skip_serializing_if = "Option::is_none")]
    liquid: Option<Temperature>,
    #[serde(rename = "bowl_c", skip_serializing_if = "Option::is_none")]
    bowl: Option<Temperature>,
    #[serde(rename = "pieces_m")]
    pieces: Length,
}
