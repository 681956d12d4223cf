//! What a formula asks of heat, packed for a link. This layout is version 1: frozen.

use serde::{Deserialize, Serialize};

use crate::engine::formula::{Formula, LineAt};
use crate::engine::heat::{HeatFrom, Phase};
use crate::engine::quantity::{Length, Mass, Minutes, Temperature, TemperatureChange};
use crate::sheet::{
    BakeLength, BakeSettings, HeatSettings, KnownBake, MeltSettings, PasteSettings,
};

use super::LinkError;
use super::choice::Choice;
use super::cooling::PackedCooling;
use super::number::Short;

type Unpacked<T> = Result<T, LinkError>;

#[derive(Debug, Deserialize, PartialEq, Serialize)]
pub(super) struct PackedHeat {
    dough: Short,
    mixing: Option<Short>,
    standing: Short,
    mixing_bowl: Option<Short>,
    paste_bowl: Option<Short>,
    drop: Short,
    thick: Short,
    shape: u8,
    lid: bool,
    bench: Short,
    ice: Short,
    phases: Vec<PackedPhase>,
    /// Minutes, oven, piece.
    known: [Short; 3],
    chocolate: Option<Short>,
    liquid: Option<Short>,
    melting_bowl: Option<Short>,
    pieces: Short,
}

#[derive(Debug, Deserialize, PartialEq, Serialize)]
struct PackedPhase {
    minutes: Short,
    oven: Short,
    from: u8,
    fan: bool,
}

/// The temperature of a line as it goes in, or of a whole part where there is no line.
#[derive(Debug, Deserialize, PartialEq, Serialize)]
pub(super) struct PackedWarmth {
    part: u8,
    line: Option<u8>,
    at: Short,
}

impl PackedHeat {
    /// Nothing where all is as usual.
    pub(super) fn of(settings: &HeatSettings) -> Option<Self> {
        (*settings != HeatSettings::default()).then(|| Self::all_of(settings))
    }

    fn all_of(settings: &HeatSettings) -> Self {
        let known = settings.bake.known.unwrap_or(KnownBake::FORMER);
        let packed = PackedCooling::of(&settings.cooling);
        Self {
            dough: degrees(settings.dough),
            mixing: settings.mixing.map(time),
            standing: time(settings.standing),
            mixing_bowl: settings.mixing_bowl.map(degrees),
            paste_bowl: settings.paste.bowl.map(degrees),
            drop: Short::of(settings.paste.drop.kelvin()),
            thick: packed.thick,
            shape: packed.shape,
            lid: packed.lid,
            bench: packed.bench,
            ice: packed.ice,
            phases: settings.bake.phases.iter().map(PackedPhase::of).collect(),
            known: [
                time(known.minutes),
                degrees(known.oven),
                Short::of(known.piece.grams()),
            ],
            chocolate: settings.melt.chocolate.map(degrees),
            liquid: settings.melt.liquid.map(degrees),
            melting_bowl: settings.melt.bowl.map(degrees),
            pieces: Short::of(settings.melt.pieces.metres()),
        }
    }

    /// The known bake, its shape not told.
    pub(super) fn known_bake(&self) -> Unpacked<KnownBake> {
        let [minutes, oven, piece] = self.known;
        Ok(KnownBake {
            minutes: minutes_of(minutes)?,
            oven: temperature(oven)?,
            piece: Mass::from_grams(piece.value())?,
            shape: None,
        })
    }

    pub(super) fn settings(self) -> Unpacked<HeatSettings> {
        if self.phases.len() > BakeSettings::MOST_PHASES {
            return Err(LinkError::TooMany);
        }
        let known = self.known_bake()?;
        let cooling = PackedCooling {
            thick: self.thick,
            shape: self.shape,
            lid: self.lid,
            bench: self.bench,
            ice: self.ice,
        };
        let phases = self.phases.iter().map(PackedPhase::phase);
        Ok(HeatSettings {
            dough: temperature(self.dough)?,
            mixing: self.mixing.map(minutes_of).transpose()?,
            standing: minutes_of(self.standing)?,
            mixing_bowl: self.mixing_bowl.map(temperature).transpose()?,
            paste: PasteSettings {
                bowl: self.paste_bowl.map(temperature).transpose()?,
                drop: TemperatureChange::from_kelvin(self.drop.value())?,
            },
            cooling: cooling.settings()?,
            bake: BakeSettings {
                phases: phases.collect::<Unpacked<_>>()?,
                known: (known != KnownBake::FORMER).then_some(known),
                length: BakeLength::default(),
            },
            melt: MeltSettings {
                chocolate: self.chocolate.map(temperature).transpose()?,
                liquid: self.liquid.map(temperature).transpose()?,
                bowl: self.melting_bowl.map(temperature).transpose()?,
                pieces: Length::from_metres(self.pieces.value())?,
            },
        })
    }
}

impl PackedPhase {
    fn of(phase: &Phase) -> Self {
        Self {
            minutes: time(phase.minutes),
            oven: degrees(phase.temperature),
            from: phase.from.number(),
            fan: phase.fan,
        }
    }

    fn phase(&self) -> Unpacked<Phase> {
        Ok(Phase {
            minutes: minutes_of(self.minutes)?,
            temperature: temperature(self.oven)?,
            from: HeatFrom::numbered(self.from)?,
            fan: self.fan,
        })
    }
}

impl PackedWarmth {
    /// The temperatures of a formula's own, where it has some.
    pub(super) fn all_of(formula: &Formula) -> Vec<Self> {
        let mut found = Vec::new();
        for (part, own) in (0_u8..).zip(&formula.parts) {
            let whole = own.temperature.map(|at| (None, at));
            let numbered = (0_u8..=u8::MAX).zip(&own.lines);
            let lines = numbered.filter_map(|(line, own)| Some((Some(line), own.temperature?)));
            found.extend(whole.into_iter().chain(lines).map(|(line, at)| Self {
                part,
                line,
                at: degrees(at),
            }));
        }
        found
    }

    /// Sets it on its line or part.
    pub(super) fn put(&self, formula: &mut Formula) -> Unpacked<()> {
        let part = usize::from(self.part);
        let at = Some(temperature(self.at)?);
        match self.line.map(usize::from) {
            Some(line) => {
                let line = formula.line_mut(LineAt { part, line });
                line.ok_or(LinkError::Damaged)?.temperature = at;
            }
            None => {
                let own = formula.parts.get_mut(part);
                own.ok_or(LinkError::Damaged)?.temperature = at;
            }
        }
        Ok(())
    }
}

fn degrees(at: Temperature) -> Short {
    Short::of(at.celsius())
}

fn time(minutes: Minutes) -> Short {
    Short::of(minutes.minutes())
}

fn temperature(short: Short) -> Unpacked<Temperature> {
    Ok(Temperature::from_celsius(short.value())?)
}

fn minutes_of(short: Short) -> Unpacked<Minutes> {
    Ok(Minutes::from_minutes(short.value())?)
}
