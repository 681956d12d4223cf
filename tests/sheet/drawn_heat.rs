//! Kitchens, and what formulas ask of heat, drawn at random from a plain seed.

use softcrumb::engine::heat::{HeatFrom, Material, Phase, PrintedFactor, RuleSet, Shape};
use softcrumb::engine::quantity::{
    Altitude, Division, Length, Minutes, Pressure, Temperature, TemperatureChange, WarmingRate,
};
use softcrumb::sheet::{
    BakeLength, BakeSettings, BoilsBy, Bowl, CoolingSettings, FormerBody, FormerCooling,
    HeatSettings, Kitchen, KnownBake, MeltSettings, Mixer, Oven, PasteSettings, Scales,
};

use crate::drawn::Draw;

impl Draw {
    pub(crate) fn temperature(&mut self) -> Temperature {
        let celsius = match self.below(2) {
            0 => -40.0 + self.below(3_900) as f64 / 10.0,
            _ => -40.0 + self.fraction() * 390.0,
        };
        Temperature::from_celsius(celsius).unwrap()
    }

    fn minutes(&mut self) -> Minutes {
        let minutes = match self.below(2) {
            0 => self.below(1_000) as f64,
            _ => self.fraction() * 86_400.0,
        };
        Minutes::from_minutes(minutes).unwrap()
    }

    fn length(&mut self) -> Length {
        Length::from_metres(1e-4 + self.fraction() * 9.9).unwrap()
    }

    pub(crate) fn heat(&mut self) -> HeatSettings {
        if self.below(3) == 0 {
            return HeatSettings::default();
        }
        let phases = (0..self.below(9)).map(|_| self.phase()).collect();
        HeatSettings {
            dough: self.temperature(),
            mixing: self.maybe(Self::minutes),
            standing: self.minutes(),
            mixing_bowl: self.maybe(Self::temperature),
            paste: PasteSettings {
                bowl: self.maybe(Self::temperature),
                drop: TemperatureChange::from_kelvin(self.fraction() * 20.0).unwrap(),
            },
            cooling: CoolingSettings::from_former(FormerCooling {
                body: FormerBody {
                    thick: self.length(),
                    shape: self.one_of(&Shape::ALL),
                },
                lid: self.yes(),
                bench: self.minutes(),
                ice: self.minutes(),
            }),
            bake: BakeSettings {
                phases,
                known: Some(KnownBake {
                    minutes: self.minutes(),
                    oven: self.temperature(),
                    piece: self.mass(),
                    shape: None,
                }),
                length: BakeLength::Predicted,
            },
            melt: MeltSettings {
                chocolate: self.maybe(Self::temperature),
                liquid: self.maybe(Self::temperature),
                bowl: self.maybe(Self::temperature),
                pieces: self.length(),
            },
        }
    }

    fn phase(&mut self) -> Phase {
        Phase {
            minutes: self.minutes(),
            temperature: self.temperature(),
            from: self.one_of(&HeatFrom::ALL),
            fan: self.yes(),
        }
    }

    fn bowls(&mut self) -> Vec<Bowl> {
        (0..self.below(13))
            .map(|_| Bowl {
                name: self.text(60),
                material: self.one_of(&Material::ALL),
                mass: self.mass(),
            })
            .collect()
    }

    pub(crate) fn kitchen(&mut self) -> Kitchen {
        let bowls = self.bowls();
        let places: Vec<usize> = (0..bowls.len()).collect();
        let mut place = || match self.below(2) {
            0 if !places.is_empty() => Some(self.one_of(&places)),
            _ => None,
        };
        let (paste_bowl, mixing_bowl) = (place(), place());
        Kitchen {
            cooling: softcrumb::engine::heat::CoolingFactors::default(),
            name: self.text(60),
            scales: Scales {
                main: self.one_of(&Division::ALL).mass(),
                pocket: self.maybe(|draw| draw.one_of(&Division::ALL).mass()),
            },
            room: self.temperature(),
            flour: Some(self.temperature()),
            fridge: self.temperature(),
            tap: self.temperature(),
            boils_by: if self.yes() {
                BoilsBy::Altitude(Altitude::from_metres(self.fraction() * 6000.0).unwrap())
            } else {
                let pressure = 400.0 + self.fraction() * 800.0;
                BoilsBy::Pressure(Pressure::from_hectopascals(pressure).unwrap())
            },
            bowls,
            paste_bowl,
            mixing_bowl,
            mixer: self.mixer(),
            oven: Oven {
                fan: self.yes(),
                from: self.one_of(&HeatFrom::ALL),
            },
            rules: self.one_of(&RuleSet::ALL),
        }
    }

    /// A mixer whose friction is the user's own, 1 K/min among them.
    fn mixer(&mut self) -> Mixer {
        Mixer {
            friction: if self.yes() {
                WarmingRate::from_kelvin_per_minute(self.fraction() * 20.0).unwrap()
            } else {
                WarmingRate::from_kelvin_per_minute(1.0).unwrap()
            },
            friction_spread: if self.yes() {
                WarmingRate::from_kelvin_per_minute(self.fraction()).unwrap()
            } else {
                Mixer::default().friction_spread
            },
            minutes: self.minutes(),
            printed: self.one_of(&PrintedFactor::ALL),
        }
    }
}
