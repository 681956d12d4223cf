//! The usual bake of a dough: of its kind of bread, its shape and, for soft loaves, its mass.

use crate::engine::formula::Bread;
use crate::engine::heat::BakedShape;
use crate::engine::quantity::{Mass, Minutes};
use crate::sheet::KnownBake;

/// A small soft loaf and how long it bakes at 180 °C. Common practice: some 450 g take 25 to 30 min.
const SMALL: (Mass, f64) = (Mass::known(450.0), 28.0);

/// The usual bake of a kind of bread in a shape; of a soft loaf of 450 to 800 g that of its own mass,
/// to the minute: `t = s·(m/g)^e` between 28 min for 450 g and the usual bake of 800 g.
///
/// Source: common practice.
///
/// ```
/// use softcrumb::engine::{formula::Bread, heat::BakedShape, quantity::Mass};
/// use softcrumb::results::heat::usual_bake;
///
/// let of = |grams| {
///     let mass = Mass::from_grams(grams).unwrap();
///     usual_bake(Bread::SoftTin, BakedShape::Loaf, mass).minutes.minutes()
/// };
/// assert_eq!([of(450.0), of(600.0), of(800.0), of(900.0)], [28.0, 30.0, 32.0, 32.0]);
/// ```
#[must_use]
pub fn usual_bake(bread: Bread, shape: BakedShape, mass: Mass) -> KnownBake {
    let usual = KnownBake::usual(bread, shape);
    let is_soft = match bread {
        Bread::SoftTin | Bread::SweetBun | Bread::RichEgg => true,
        Bread::PlainTin | Bread::Rye => false,
    };
    if shape == BakedShape::Apart || !is_soft || mass >= usual.piece {
        return usual;
    }
    let (small, takes) = SMALL;
    let piece = if mass < small { small } else { mass };
    let of = |mass: Mass| libm::log(mass.grams() / small.grams());
    let longer = libm::log(usual.minutes.minutes() / takes) / of(usual.piece);
    let minutes = libm::round(takes * libm::exp(longer * of(piece)));
    Minutes::from_minutes(minutes).map_or(usual, |minutes| KnownBake {
        minutes,
        piece,
        ..usual
    })
}
