//! Sheets, kitchens and days with every field set, spelt out: what the frozen samples were read as.

use softcrumb::engine::batch::{BatchTarget, Losses};
use softcrumb::engine::formula::{Bread, Formula, Line, LineAt, Part, PartKind};
use softcrumb::engine::heat::{HeatFrom, Material, Phase, RuleSet, Shape};
use softcrumb::engine::ingredients::{Allergen, Food, Label, Listed, OwnFood, Role};
use softcrumb::engine::quantity::{
    Altitude, Factor, Length, Mass, Pressure, Share, SpecificVolume, Temperature,
    TemperatureChange, WarmingRate,
};
use softcrumb::engine::tin::{Tin, TinRise, TinShape, Tins};
use softcrumb::sheet::{
    BakeLength, BakeSettings, BoilsBy, Bowl, CoolingSettings, FormerBody, FormerCooling,
    HeatSettings, Kitchen, KnownBake, MeltSettings, Mixer, Oven, PasteSettings, Scales,
};
use softcrumb::sheet::{Batch, Sheet, TinUse};

use crate::days::minutes;

fn grams(g: f64) -> Mass {
    Mass::from_grams(g).unwrap()
}

fn celsius(c: f64) -> Temperature {
    Temperature::from_celsius(c).unwrap()
}

fn metres(m: f64) -> Length {
    Length::from_metres(m).unwrap()
}

fn share(fraction: f64) -> Share {
    Share::from_fraction(fraction).unwrap()
}

fn own_food() -> OwnFood {
    let label = Label {
        fat: Some(share(0.301)),
        saturates: Some(share(0.182)),
        carbohydrate: Some(share(0.4405)),
        sugars: Some(share(0.39)),
        fibre: Some(share(0.07)),
        protein: Some(share(0.061)),
        salt: Some(share(0.0023)),
        water: Some(share(0.012)),
        cocoa: Some(share(0.515)),
    };
    let allergens = Allergen::ALL.to_vec();
    OwnFood::new(
        "Bar of the \"corner\" shop",
        Role::Chocolate,
        label,
        allergens,
    )
    .unwrap()
}

fn line(food: Food, mass: f64) -> Line {
    Line {
        food,
        mass: grams(mass),
        counts_as_flour: None,
        poured: None,
        temperature: None,
    }
}

fn listed(number: u16, mass: f64) -> Line {
    line(Food::Listed(Listed::numbered(number).unwrap()), mass)
}

fn part(kind: PartKind, name: &str, lines: Vec<Line>) -> Part {
    Part {
        kind,
        name: name.to_owned(),
        lines,
        steam: Mass::ZERO,
        temperature: None,
    }
}

/// A formula with every field that there is.
#[allow(
    clippy::too_many_lines,
    reason = "one value with every field set, a line a field"
)]
pub(crate) fn sheet() -> Sheet {
    let mut paste = part(
        PartKind::Paste,
        "Paste",
        vec![listed(1, 47.5), listed(200, 212.0)],
    );
    paste.steam = grams(6.25);
    paste.lines[1].poured = Some(grams(210.0));
    paste.lines[1].temperature = Some(celsius(99.5));
    let mut last = part(
        PartKind::Final,
        "Dough of the evening",
        vec![listed(1, 405.0), listed(22, 7.0), listed(902, 4.0 / 3.0)],
    );
    last.temperature = Some(celsius(-3.5));
    last.lines[1].counts_as_flour = Some(true);
    last.lines[0].counts_as_flour = Some(false);
    let before = part(
        PartKind::Preferment,
        "",
        vec![listed(1, 130.0), listed(200, 80.25)],
    );
    let filling = part(
        PartKind::Filling,
        "F",
        vec![line(Food::Own(own_food()), 88.0)],
    );
    let topping = part(
        PartKind::Topping,
        "T",
        vec![line(Food::Own(own_food()), 1e-9)],
    );
    let wash = part(PartKind::Wash, "卵", vec![listed(601, 18.5)]);
    Sheet {
        name: "Everything on a board".to_owned(),
        bread: Bread::RichEgg,
        formula: Formula {
            parts: vec![paste, before, last, filling, topping, wash],
        },
        batch: batch(),
        heat: heat(),
        note: "One\ttab,\ntwo lines, \\ and / and 🍞.".to_owned(),
    }
}

fn batch() -> Batch {
    let tin = Tin::open(TinShape::Ring {
        top: metres(0.24),
        bottom: metres(0.195),
        tube: metres(0.0625),
        deep: metres(0.085),
    });
    Batch {
        wanted: BatchTarget::OnHand {
            at: LineAt { part: 2, line: 1 },
            mass: grams(11.5),
        },
        losses: Losses {
            residue: grams(9.5),
            residue_share: share(0.0125),
            dividing: share(0.0075),
            bake: share(0.1125),
            topping: share(0.065),
        },
        pieces: 12.try_into().unwrap(),
        syrup_at: celsius(41.5),
        tin: Some(TinUse {
            tins: Tins {
                tin: tin.unwrap().with_lid(true),
                count: 3.try_into().unwrap(),
            },
            rows: Some(2.try_into().unwrap()),
            room: Some(SpecificVolume::from_cubic_centimetres_per_gram(4.35).unwrap()),
            rise: TinRise::Times(Factor::from_number(2.65).unwrap()),
        }),
    }
}

#[allow(
    clippy::too_many_lines,
    reason = "one value with every field set, a line a field"
)]
fn heat() -> HeatSettings {
    let phase = |m: f64, at: f64, from, fan| Phase {
        minutes: minutes(m),
        temperature: celsius(at),
        from,
        fan,
    };
    HeatSettings {
        dough: celsius(25.5),
        mixing: Some(minutes(10.5)),
        standing: minutes(35.0),
        mixing_bowl: Some(celsius(18.5)),
        paste: PasteSettings {
            bowl: Some(celsius(60.0)),
            drop: TemperatureChange::from_kelvin(3.25).unwrap(),
        },
        cooling: CoolingSettings::from_former(FormerCooling {
            body: FormerBody {
                thick: metres(0.045),
                shape: Shape::Cylinder,
            },
            lid: false,
            bench: minutes(25.0),
            ice: minutes(12.5),
        }),
        bake: BakeSettings {
            phases: vec![
                phase(12.0, 190.0, HeatFrom::Top, true),
                phase(8.0, 170.0, HeatFrom::Bottom, false),
                phase(5.0, 160.0, HeatFrom::Both, true),
            ],
            known: Some(KnownBake {
                minutes: minutes(23.0),
                oven: celsius(185.0),
                piece: grams(95.0),
                shape: None,
            }),
            length: BakeLength::Predicted,
        },
        melt: MeltSettings {
            chocolate: Some(celsius(19.5)),
            liquid: Some(celsius(88.0)),
            bowl: Some(celsius(41.0)),
            pieces: metres(0.0075),
        },
    }
}

/// A kitchen with every field that there is, at a height or under a pressure.
pub(crate) fn kitchen(boils_by: BoilsBy) -> Kitchen {
    let bowl = |(material, mass): (Material, f64)| Bowl {
        name: format!("Bowl of {mass} g"),
        material,
        mass: grams(mass),
    };
    let masses = [310.0, 455.5, 600.0, 720.0, 845.0, 910.0, 1005.0];
    Kitchen {
        cooling: softcrumb::engine::heat::CoolingFactors::default(),
        name: "Under the roof".to_owned(),
        scales: Scales {
            main: grams(2.0),
            pocket: Some(grams(0.1)),
        },
        room: celsius(24.5),
        flour: Some(celsius(23.0)),
        fridge: celsius(2.5),
        tap: celsius(12.5),
        boils_by,
        bowls: Material::ALL.into_iter().zip(masses).map(bowl).collect(),
        paste_bowl: Some(6),
        mixing_bowl: Some(2),
        mixer: Mixer {
            friction: WarmingRate::from_kelvin_per_minute(0.85).unwrap(),
            minutes: minutes(9.5),
            ..Mixer::default()
        },
        oven: Oven {
            fan: true,
            from: HeatFrom::Top,
        },
        rules: RuleSet::UnitedKingdom,
    }
}

pub(crate) fn high() -> Kitchen {
    kitchen(BoilsBy::Altitude(Altitude::from_metres(1625.5).unwrap()))
}

pub(crate) fn stormy() -> Kitchen {
    kitchen(BoilsBy::Pressure(
        Pressure::from_hectopascals(987.25).unwrap(),
    ))
}

/// The usual kitchen as releases stored it that knew no flour as warm as the room.
pub(crate) fn former_kitchen() -> Kitchen {
    Kitchen {
        flour: Some(celsius(20.0)),
        ..Kitchen::default()
    }
}
