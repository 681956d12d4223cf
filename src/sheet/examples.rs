//! The example formulas of a first visit. Invented for this project: the evening class, the mill
//! and the formulas belong to nobody.

use std::num::NonZeroU16;

use super::{BakeSettings, Batch, HeatSettings, Id, KnownBake, Sheet, TinUse};
use crate::engine::batch::{BatchTarget, Losses};
use crate::engine::formula::{Bread, Formula, Line, Part, PartKind};
use crate::engine::heat::BakedShape;
use crate::engine::ingredients::{Food, Listed};
use crate::engine::quantity::{Length, Mass, Share, Temperature};
use crate::engine::tin::{Across, Tin, TinShape};

/// An example: its id, name, bread, pieces, note, parts.
type Example = (
    &'static str,
    &'static str,
    Bread,
    u16,
    &'static str,
    &'static [ExamplePart],
);

/// A part: kind, name, steam in g, lines as the ingredient's number and g.
type ExamplePart = (PartKind, &'static str, f64, &'static [(u16, f64)]);

const CHOCOLATE_LOAF: Example = (
    "lanternloaf",
    "Lantern Lane chocolate loaf",
    Bread::SoftTin,
    10,
    "Lantern Lane evening class, first week. Scald and preferment the night before; Heat says \
     when to take them out. Ten balls, chocolate inside each, close together in one tin.",
    &[
        (
            PartKind::Paste,
            "Scald",
            5.0,
            &[(1, 58.0), (41, 14.0), (200, 112.0)],
        ),
        (
            PartKind::Preferment,
            "Night dough",
            0.0,
            &[(1, 144.0), (200, 74.0), (902, 0.6)],
        ),
        (
            PartKind::Final,
            "Final dough",
            0.0,
            &[
                (1, 264.0),
                (300, 112.0),
                (601, 34.0),
                (700, 53.0),
                (500, 43.0),
                (340, 14.0),
                (800, 8.6),
                (902, 3.4),
            ],
        ),
        (PartKind::Filling, "Inside each ball", 0.0, &[(1001, 85.0)]),
        (
            PartKind::Topping,
            "Chocolate and water",
            0.0,
            &[(1000, 64.0), (200, 18.0)],
        ),
    ],
);

const PLAIN_LOAF: Example = (
    "plainloaf",
    "Toast loaf for the class",
    Bread::PlainTin,
    1,
    "The plain one to compare with: straight dough, one long piece in the tin.",
    &[(
        PartKind::Final,
        "Dough",
        0.0,
        &[
            (1, 430.0),
            (4, 62.0),
            (200, 316.0),
            (500, 11.0),
            (700, 6.0),
            (800, 9.2),
            (902, 4.3),
        ],
    )],
);

const EGG_LOAF: Example = (
    "eggloaf",
    "Egg and butter loaf",
    Bread::RichEgg,
    8,
    "Third week: what eggs and much butter do. Butter goes in last, and cold.",
    &[
        (
            PartKind::Preferment,
            "Milk starter",
            0.0,
            &[(1, 88.0), (300, 60.0), (902, 1.1)],
        ),
        (
            PartKind::Final,
            "Final dough",
            0.0,
            &[
                (1, 296.0),
                (600, 168.0),
                (300, 34.0),
                (700, 56.0),
                (500, 138.0),
                (800, 7.2),
                (902, 5.6),
            ],
        ),
        (PartKind::Wash, "Egg wash", 0.0, &[(600, 22.0), (300, 7.0)]),
    ],
);

const RYE_LOAF: Example = (
    "ryeloaf",
    "Rye scald loaf",
    Bread::Rye,
    1,
    "Last week: all of the paste is rye. It stays moist for days.",
    &[
        (
            PartKind::Paste,
            "Rye scald",
            7.0,
            &[(41, 92.0), (200, 196.0)],
        ),
        (
            PartKind::Preferment,
            "Night dough",
            0.0,
            &[(1, 118.0), (200, 66.0), (902, 0.5)],
        ),
        (
            PartKind::Final,
            "Final dough",
            0.0,
            &[
                (1, 222.0),
                (40, 58.0),
                (200, 76.0),
                (711, 19.0),
                (520, 11.0),
                (800, 9.4),
                (902, 3.2),
            ],
        ),
    ],
);

/// Returns the four examples: the one that opens first, a plain dough, one with eggs, one with a
/// rye scald. Each has a fixed id, so that two pages opened at once do not add them twice.
#[must_use]
pub fn examples() -> Vec<(Id, Sheet)> {
    let all = [CHOCOLATE_LOAF, PLAIN_LOAF, EGG_LOAF, RYE_LOAF];
    all.iter().filter_map(set_out).collect()
}

fn set_out((id, name, bread, pieces, note, components): &Example) -> Option<(Id, Sheet)> {
    let parts = components.iter().map(part).collect::<Option<Vec<_>>>()?;
    let batch = Batch {
        wanted: BatchTarget::default(),
        losses: losses()?,
        pieces: NonZeroU16::new(*pieces)?,
        syrup_at: Temperature::from_celsius(40.0).ok()?,
        tin: Some(TinUse::of(tin(id)?)),
    };
    let sheet = Sheet {
        name: (*name).to_owned(),
        bread: *bread,
        formula: Formula { parts },
        batch,
        heat: HeatSettings {
            bake: bake(*bread),
            ..HeatSettings::default()
        },
        note: (*note).to_owned(),
    };
    Some((Id::from_text(id)?, sheet))
}

/// The programme: plain and rye loaves as hot and as long as such a loaf usually bakes.
fn bake(bread: Bread) -> BakeSettings {
    let mut bake = BakeSettings::default();
    let usual = KnownBake::usual(bread, BakedShape::Loaf);
    for phase in &mut bake.phases {
        match bread {
            Bread::PlainTin | Bread::Rye => {
                (phase.minutes, phase.temperature) = (usual.minutes, usual.oven);
            }
            Bread::SoftTin | Bread::SweetBun | Bread::RichEgg => {}
        }
    }
    bake
}

fn part((kind, name, steam, lines): &ExamplePart) -> Option<Part> {
    let lines = lines.iter().map(|(number, grams)| {
        let food = Food::Listed(Listed::numbered(*number).ok()?);
        Some(Line::new(food, mass(*grams)?))
    });
    Some(Part {
        kind: *kind,
        name: (*name).to_owned(),
        lines: lines.collect::<Option<_>>()?,
        steam: mass(*steam)?,
        temperature: None,
    })
}

/// Losses in a class: dough left in the bowl and on the scraper, water lost in the oven.
fn losses() -> Option<Losses> {
    Some(Losses {
        residue: mass(6.0)?,
        residue_share: Share::NONE,
        dividing: Share::from_percent(0.5).ok()?,
        bake: Share::from_percent(10.5).ok()?,
        topping: Share::from_percent(7.0).ok()?,
    })
}

fn mass(grams: f64) -> Option<Mass> {
    Mass::from_grams(grams).ok()
}

/// The tin of each example, inside, mm: rim, bottom, depth. Invented to fit the dough.
fn tin(id: &str) -> Option<Tin> {
    let across = |(long, wide)| {
        Some(Across {
            long: mm(long)?,
            wide: mm(wide)?,
        })
    };
    let flared = |top, bottom, deep| {
        Some(TinShape::Rectangle {
            top: across(top)?,
            bottom: across(bottom)?,
            deep: mm(deep)?,
        })
    };
    let shape = match id {
        "lanternloaf" => flared((310, 130), (300, 120), 95)?,
        "plainloaf" => flared((245, 112), (235, 104), 126)?,
        "eggloaf" => TinShape::Round {
            top: mm(220)?,
            bottom: mm(200)?,
            deep: mm(80)?,
        },
        _ => flared((200, 100), (190, 92), 118)?,
    };
    Tin::open(shape).ok()
}

fn mm(millimetres: u16) -> Option<Length> {
    Length::from_metres(f64::from(millimetres) / 1000.0).ok()
}
