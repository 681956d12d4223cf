//! What a formula asks of heat, in a record; what is not there is as usual.

use crate::engine::heat::Phase;
use crate::engine::quantity::{Length, Minutes, Temperature, TemperatureChange};
use crate::sheet::enum_names::{HEAT_FROM, SHAPES, spelt};
use crate::sheet::{
    BakeSettings, CoolingSettings, HeatSettings, KnownBake, MeltSettings, PasteSettings,
};

use super::error::RecordError;
use super::fields::{Fields, list, mass, minutes, number, temperature, truth, word};
use super::print::Writer;
use super::tree::Tree;

const KNOWN: &[&str] = &[
    "dough_c",
    "mixing_min",
    "standing_min",
    "mixing_bowl_c",
    "paste",
    "cooling",
    "bake",
    "melt",
];

pub(super) fn write(settings: &HeatSettings) -> Tree<'static> {
    let degrees = |at: Option<Temperature>| at.map(Temperature::celsius);
    let (paste, cooling, melt) = (&settings.paste, &settings.cooling, &settings.melt);
    let stirred = Writer::new()
        .maybe("bowl_c", degrees(paste.bowl))
        .number("drop_k", paste.drop.kelvin());
    let cooled = Writer::new()
        .number("thick_m", cooling.thick.metres())
        .text("shape", spelt(cooling.shape, SHAPES))
        .tree("lid", Tree::Truth(cooling.lid))
        .number("bench_min", cooling.bench.minutes())
        .number("ice_min", cooling.ice.minutes());
    let melted = Writer::new()
        .maybe("chocolate_c", degrees(melt.chocolate))
        .maybe("liquid_c", degrees(melt.liquid))
        .maybe("bowl_c", degrees(melt.bowl))
        .number("pieces_m", melt.pieces.metres());
    Writer::new()
        .number("dough_c", settings.dough.celsius())
        .maybe("mixing_min", settings.mixing.map(Minutes::minutes))
        .number("standing_min", settings.standing.minutes())
        .maybe("mixing_bowl_c", degrees(settings.mixing_bowl))
        .tree("paste", stirred.done())
        .tree("cooling", cooled.done())
        .tree("bake", write_bake(&settings.bake))
        .tree("melt", melted.done())
        .done()
}

fn write_bake(bake: &BakeSettings) -> Tree<'static> {
    let phases = bake.phases.iter().map(|phase| {
        Writer::new()
            .number("minutes", phase.minutes.minutes())
            .number("oven_c", phase.temperature.celsius())
            .text("heat_from", spelt(phase.from, HEAT_FROM))
            .tree("fan", Tree::Truth(phase.fan))
            .done()
    });
    let known = Writer::new()
        .number("minutes", bake.known.minutes.minutes())
        .number("oven_c", bake.known.oven.celsius())
        .number("piece_g", bake.known.piece.grams());
    Writer::new()
        .list("phases", phases)
        .tree("known", known.done())
        .done()
}

pub(super) fn read(tree: &Tree) -> Result<HeatSettings, RecordError> {
    let fields = Fields::of(tree, KNOWN)?;
    let usual = HeatSettings::default();
    Ok(HeatSettings {
        dough: fields.maybe("dough_c", temperature)?.unwrap_or(usual.dough),
        mixing: fields.maybe("mixing_min", minutes)?,
        standing: fields
            .maybe("standing_min", minutes)?
            .unwrap_or(usual.standing),
        mixing_bowl: fields.maybe("mixing_bowl_c", temperature)?,
        paste: fields.maybe("paste", read_paste)?.unwrap_or_default(),
        cooling: fields.maybe("cooling", read_cooling)?.unwrap_or_default(),
        bake: fields.maybe("bake", read_bake)?.unwrap_or_default(),
        melt: fields.maybe("melt", read_melt)?.unwrap_or_default(),
    })
}

fn read_paste(tree: &Tree) -> Result<PasteSettings, RecordError> {
    let fields = Fields::of(tree, &["bowl_c", "drop_k"])?;
    let drop = |tree: &Tree| Ok(TemperatureChange::from_kelvin(number(tree)?)?);
    Ok(PasteSettings {
        bowl: fields.maybe("bowl_c", temperature)?,
        drop: fields
            .maybe("drop_k", drop)?
            .unwrap_or(PasteSettings::default().drop),
    })
}

fn read_cooling(tree: &Tree) -> Result<CoolingSettings, RecordError> {
    let fields = Fields::of(tree, &["thick_m", "shape", "lid", "bench_min", "ice_min"])?;
    let usual = CoolingSettings::default();
    Ok(CoolingSettings {
        thick: fields.maybe("thick_m", length)?.unwrap_or(usual.thick),
        shape: fields
            .maybe("shape", |tree| word(tree, SHAPES))?
            .unwrap_or(usual.shape),
        lid: fields.maybe("lid", truth)?.unwrap_or(usual.lid),
        bench: fields.maybe("bench_min", minutes)?.unwrap_or(usual.bench),
        ice: fields.maybe("ice_min", minutes)?.unwrap_or(usual.ice),
    })
}

fn read_bake(tree: &Tree) -> Result<BakeSettings, RecordError> {
    let fields = Fields::of(tree, &["phases", "known"])?;
    let usual = BakeSettings::default();
    let phases = fields.maybe("phases", |tree| {
        list(tree, BakeSettings::MOST_PHASES, read_phase)
    })?;
    Ok(BakeSettings {
        phases: phases.unwrap_or(usual.phases),
        known: fields.maybe("known", read_known)?.unwrap_or(usual.known),
    })
}

fn read_phase(tree: &Tree) -> Result<Phase, RecordError> {
    let fields = Fields::of(tree, &["minutes", "oven_c", "heat_from", "fan"])?;
    Ok(Phase {
        minutes: fields.needed("minutes", minutes)?,
        temperature: fields.needed("oven_c", temperature)?,
        from: fields.needed("heat_from", |tree| word(tree, HEAT_FROM))?,
        fan: fields.needed("fan", truth)?,
    })
}

fn read_known(tree: &Tree) -> Result<KnownBake, RecordError> {
    let fields = Fields::of(tree, &["minutes", "oven_c", "piece_g"])?;
    Ok(KnownBake {
        minutes: fields.needed("minutes", minutes)?,
        oven: fields.needed("oven_c", temperature)?,
        piece: fields.needed("piece_g", mass)?,
    })
}

fn read_melt(tree: &Tree) -> Result<MeltSettings, RecordError> {
    let fields = Fields::of(tree, &["chocolate_c", "liquid_c", "bowl_c", "pieces_m"])?;
    Ok(MeltSettings {
        chocolate: fields.maybe("chocolate_c", temperature)?,
        liquid: fields.maybe("liquid_c", temperature)?,
        bowl: fields.maybe("bowl_c", temperature)?,
        pieces: fields
            .maybe("pieces_m", length)?
            .unwrap_or(MeltSettings::default().pieces),
    })
}

fn length(tree: &Tree) -> Result<Length, RecordError> {
    Ok(Length::from_metres(number(tree)?)?)
}
