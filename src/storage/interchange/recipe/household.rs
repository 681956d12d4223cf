//! Household weights: what a cup, a spoon or one of something weighs.

use super::measure::MeasureUnit;
use crate::engine::ingredients::{Listed, Role};
use crate::engine::quantity::Mass;

/// Grams in a cup, a tablespoon, a teaspoon, and in one of it; nought where the table has none.
struct Weights(u16, f64, f64, f64, f64);

/// By the ingredients' numbers.
///
/// Source: USDA ARS, *National Nutrient Database for Standard Reference*, Release 28 (2016), table
/// of weights, under the number each ingredient has there. A cup of brown sugar is packed,
/// of butter level, of chocolate in chips, of nuts chopped or whole as the table has it first; an
/// egg is large; a lemon or orange is its juice.
const WEIGHTS: &[Weights] = &[
    Weights(1, 137.0, 0.0, 0.0, 0.0),
    Weights(2, 125.0, 0.0, 0.0, 0.0),
    Weights(3, 137.0, 0.0, 0.0, 0.0),
    Weights(4, 120.0, 0.0, 0.0, 0.0),
    Weights(20, 167.0, 0.0, 0.0, 0.0),
    Weights(21, 115.0, 0.0, 0.0, 0.0),
    Weights(40, 102.0, 0.0, 0.0, 0.0),
    Weights(41, 102.0, 0.0, 0.0, 0.0),
    Weights(42, 128.0, 0.0, 0.0, 0.0),
    Weights(50, 158.0, 0.0, 0.0, 0.0),
    Weights(51, 158.0, 0.0, 0.0, 0.0),
    Weights(61, 81.0, 0.0, 0.0, 0.0),
    Weights(65, 162.0, 0.0, 0.0, 0.0),
    Weights(75, 160.0, 0.0, 0.0, 0.0),
    Weights(100, 128.0, 0.0, 0.0, 0.0),
    Weights(103, 152.0, 0.0, 0.0, 0.0),
    Weights(200, 237.0, 0.0, 0.0, 0.0),
    Weights(202, 237.0, 0.0, 0.0, 0.0),
    Weights(300, 244.0, 15.0, 0.0, 0.0),
    Weights(301, 244.0, 0.0, 0.0, 0.0),
    Weights(302, 244.0, 0.0, 0.0, 0.0),
    Weights(303, 245.0, 0.0, 0.0, 0.0),
    Weights(310, 245.0, 0.0, 0.0, 0.0),
    Weights(311, 245.0, 0.0, 0.0, 0.0),
    Weights(312, 245.0, 0.0, 0.0, 0.0),
    Weights(320, 242.0, 15.0, 0.0, 0.0),
    Weights(321, 239.0, 15.0, 0.0, 0.0),
    Weights(322, 238.0, 15.0, 0.0, 0.0),
    Weights(323, 230.0, 12.0, 0.0, 0.0),
    Weights(324, 232.0, 14.5, 0.0, 0.0),
    Weights(330, 252.0, 0.0, 0.0, 0.0),
    Weights(331, 306.0, 0.0, 0.0, 0.0),
    Weights(340, 128.0, 0.0, 0.0, 0.0),
    Weights(341, 120.0, 4.6, 0.0, 0.0),
    Weights(342, 68.0, 0.0, 0.0, 0.0),
    Weights(400, 243.0, 0.0, 0.0, 0.0),
    Weights(401, 243.0, 0.0, 0.0, 0.0),
    Weights(403, 240.0, 0.0, 0.0, 0.0),
    Weights(404, 262.0, 0.0, 0.0, 0.0),
    Weights(406, 226.0, 15.0, 0.0, 0.0),
    Weights(500, 227.0, 14.2, 0.0, 0.0),
    Weights(501, 227.0, 14.2, 0.0, 0.0),
    Weights(510, 227.0, 14.2, 0.0, 0.0),
    Weights(511, 227.0, 14.0, 4.7, 0.0),
    Weights(512, 205.0, 12.8, 0.0, 0.0),
    Weights(513, 205.0, 12.8, 0.0, 0.0),
    Weights(520, 218.0, 14.0, 4.5, 0.0),
    Weights(521, 218.0, 13.6, 4.5, 0.0),
    Weights(522, 216.0, 13.5, 4.5, 0.0),
    Weights(523, 218.0, 13.6, 4.5, 0.0),
    Weights(524, 218.0, 13.6, 4.5, 0.0),
    Weights(600, 243.0, 0.0, 0.0, 50.0),
    Weights(601, 243.0, 0.0, 0.0, 17.0),
    Weights(602, 243.0, 0.0, 0.0, 33.0),
    Weights(603, 0.0, 5.0, 0.0, 0.0),
    Weights(700, 200.0, 0.0, 4.2, 0.0),
    Weights(701, 220.0, 0.0, 4.6, 0.0),
    Weights(703, 120.0, 8.0, 2.5, 0.0),
    Weights(710, 339.0, 21.0, 0.0, 0.0),
    Weights(711, 337.0, 20.0, 0.0, 0.0),
    Weights(712, 315.0, 20.0, 0.0, 0.0),
    Weights(713, 341.0, 22.0, 0.0, 0.0),
    Weights(714, 328.0, 20.0, 0.0, 0.0),
    Weights(715, 332.0, 21.0, 0.0, 0.0),
    Weights(800, 292.0, 18.0, 6.0, 0.0),
    Weights(810, 0.0, 0.0, 4.6, 0.0),
    Weights(811, 0.0, 0.0, 4.6, 0.0),
    Weights(901, 0.0, 12.0, 4.0, 0.0),
    Weights(902, 0.0, 12.0, 4.0, 0.0),
    Weights(1004, 168.0, 0.0, 0.0, 0.0),
    Weights(1005, 132.0, 0.0, 0.0, 0.0),
    Weights(1010, 168.0, 0.0, 0.0, 0.0),
    Weights(1012, 170.0, 14.0, 0.0, 0.0),
    Weights(1020, 86.0, 5.4, 0.0, 0.0),
    Weights(1021, 86.0, 5.4, 0.0, 0.0),
    Weights(1022, 0.0, 5.4, 0.0, 0.0),
    Weights(1023, 218.0, 13.6, 4.5, 0.0),
    Weights(1100, 143.0, 0.0, 0.0, 0.0),
    Weights(1101, 145.0, 9.1, 0.0, 0.0),
    Weights(1102, 115.0, 0.0, 0.0, 0.0),
    Weights(1103, 117.0, 0.0, 0.0, 0.0),
    Weights(1104, 109.0, 0.0, 0.0, 0.0),
    Weights(1110, 144.0, 9.0, 0.0, 0.0),
    Weights(1111, 140.0, 0.0, 0.0, 0.0),
    Weights(1120, 258.0, 16.0, 0.0, 0.0),
    Weights(1200, 145.0, 0.0, 0.0, 0.0),
    Weights(1201, 130.0, 0.0, 0.0, 0.0),
    Weights(1202, 160.0, 0.0, 0.0, 0.0),
    Weights(1210, 248.0, 0.0, 0.0, 86.0),
    Weights(1211, 244.0, 0.0, 0.0, 48.0),
    Weights(1212, 0.0, 6.0, 2.0, 0.0),
    Weights(1220, 245.0, 0.0, 0.0, 0.0),
    Weights(1221, 245.0, 0.0, 0.0, 0.0),
    Weights(1222, 200.0, 0.0, 0.0, 0.0),
    Weights(1223, 328.0, 0.0, 0.0, 0.0),
    Weights(1224, 156.0, 0.0, 0.0, 0.0),
    Weights(1225, 156.0, 0.0, 0.0, 0.0),
    Weights(1226, 122.0, 0.0, 0.0, 0.0),
    Weights(1300, 0.0, 7.8, 2.6, 0.0),
    Weights(1301, 0.0, 5.8, 2.0, 0.0),
    Weights(1310, 208.0, 13.0, 4.2, 0.0),
    Weights(1311, 237.0, 0.0, 0.0, 0.0),
];

/// A packet of dried yeast and a cake of fresh, a stick of butter.
///
/// Source: as [`WEIGHTS`].
const PACKETS: &[(u16, f64)] = &[(900, 17.0), (901, 7.2), (902, 7.2)];
const STICKS: &[(u16, f64)] = &[(500, 113.0), (501, 113.0), (510, 113.0), (511, 113.0)];

const TABLESPOONS_IN_CUP: f64 = 16.0;
const TEASPOONS_IN_TABLESPOON: f64 = 3.0;
/// The US cup, ml.
const CUP: f64 = 236.588_236_5;

/// What one of a measure weighs, for an ingredient of the table; none where the table does not say.
///
/// A spoon the table leaves out is a sixteenth, or a forty-eighth, of its cup; a millilitre its
/// part of the cup; a cup it leaves out is sixteen tablespoons.
pub(super) fn weight(number: u16, unit: MeasureUnit) -> Option<Mass> {
    let listed = |table: &[(u16, f64)]| {
        let found = table.iter().find(|(known, _)| *known == number);
        found.map(|(_, grams)| *grams)
    };
    let grams = match unit {
        MeasureUnit::Packet => listed(PACKETS)?,
        MeasureUnit::Stick => listed(STICKS)?,
        MeasureUnit::Cup
        | MeasureUnit::Tablespoon
        | MeasureUnit::Teaspoon
        | MeasureUnit::Millilitre
        | MeasureUnit::Whole => by_spoon(number, unit)?,
    };
    Mass::from_grams(grams).ok()
}

/// What one of a measure weighs where a tablespoon holds 15 ml, a teaspoon 5 ml and a cup `cup` ml, by
/// the density of the food; another measure as it is.
pub(super) fn metric(number: u16, unit: MeasureUnit, cup: f64) -> Option<Mass> {
    let millilitres = match unit {
        MeasureUnit::Cup => cup,
        MeasureUnit::Tablespoon => 15.0,
        MeasureUnit::Teaspoon => 5.0,
        MeasureUnit::Millilitre | MeasureUnit::Stick | MeasureUnit::Packet | MeasureUnit::Whole => {
            return weight(number, unit);
        }
    };
    let one = weight(number, MeasureUnit::Millilitre)?;
    Mass::from_grams(one.grams() * millilitres).ok()
}

/// What a millilitre of a liquid weighs that the table leaves out, by the densities of what it is made
/// of at 20 °C, 1/ρ = Σ xᵢ/ρᵢ: water 997, protein 1319, fat 917, carbohydrate 1593 kg/m³.
///
/// Source: Choi and Okos (1986), as in ASHRAE Handbook, Refrigeration (2006), table 9.1.
fn by_density(number: u16) -> Option<f64> {
    let listed = Listed::numbered(number).ok()?;
    if listed.row().role != Role::Liquid {
        return None;
    }
    let made_of = crate::engine::ingredients::Food::Listed(listed).composition();
    let parts = [
        (made_of.water, 0.997),
        (made_of.protein, 1.319),
        (made_of.fat, 0.917),
        (made_of.carbohydrate, 1.593),
    ];
    let volume: f64 = parts
        .iter()
        .map(|(share, density)| share.fraction() / density)
        .sum();
    let share: f64 = parts.iter().map(|(share, _)| share.fraction()).sum();
    // What else is in it, as alcohol is, has another density.
    (share > 0.9).then(|| share / volume)
}

fn by_spoon(number: u16, unit: MeasureUnit) -> Option<f64> {
    if unit == MeasureUnit::Millilitre && !WEIGHTS.iter().any(|weights| weights.0 == number) {
        return by_density(number);
    }
    let Weights(_, cup, tablespoon, teaspoon, whole) =
        WEIGHTS.iter().find(|weights| weights.0 == number)?;
    let first = |all: [f64; 3]| all.into_iter().find(|grams| *grams > 0.0);
    let tablespoons = first([
        *tablespoon,
        cup / TABLESPOONS_IN_CUP,
        teaspoon * TEASPOONS_IN_TABLESPOON,
    ]);
    let cups = first([*cup, tablespoons.unwrap_or(0.0) * TABLESPOONS_IN_CUP, 0.0]);
    match unit {
        MeasureUnit::Cup => cups,
        MeasureUnit::Tablespoon => tablespoons,
        MeasureUnit::Teaspoon => first([
            *teaspoon,
            tablespoons.unwrap_or(0.0) / TEASPOONS_IN_TABLESPOON,
            0.0,
        ]),
        MeasureUnit::Millilitre => cups.map(|grams| grams / CUP),
        MeasureUnit::Whole => first([*whole, 0.0, 0.0]),
        MeasureUnit::Stick | MeasureUnit::Packet => None,
    }
}
