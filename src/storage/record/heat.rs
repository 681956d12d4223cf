//! What a formula asks of heat, in a record; what is not there is as usual.

use serde::{Deserialize, Serialize};

use crate::engine::heat::{BakedShape, HeatFrom, Phase, Shape};
use crate::engine::quantity::{Length, Mass, Minutes, Temperature, TemperatureChange};
use crate::sheet::{
    BakeLength, BakeSettings, CoolingSettings, HeatSettings, KnownBake, MeltSettings, PasteSettings,
};
use crate::storage::enum_names::{BAKE_LENGTHS, BAKED_SHAPES, HEAT_FROM, SHAPES};

use super::read::described;
use super::text::{List, words};

words! {
    HeatFrom: HEAT_FROM;
    Shape: SHAPES;
    BakedShape: BAKED_SHAPES;
    BakeLength: BAKE_LENGTHS;
}

described! {
    HeatSettings: HeatRecord;
    PasteSettings: PasteRecord;
    CoolingSettings: CoolingRecord;
    BakeSettings: BakeRecord;
    Phase: PhaseRecord;
    KnownBake: KnownBakeRecord;
    MeltSettings: MeltRecord;
}

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

#[derive(Deserialize, Serialize)]
#[serde(
    remote = "CoolingSettings",
    default = "CoolingSettings::default",
    deny_unknown_fields
)]
struct CoolingRecord {
    #[serde(rename = "thick_m")]
    thick: Length,
    shape: Shape,
    lid: bool,
    #[serde(rename = "bench_min")]
    bench: Minutes,
    #[serde(rename = "ice_min")]
    ice: Minutes,
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
