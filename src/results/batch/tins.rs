//! Tins: how much dough they take, how high it rises in them, how the pieces lie.

use std::num::{NonZeroU16, NonZeroU32};

use super::small_mass::is_told;
use crate::engine::batch::{BatchTarget, Scaled};
use crate::engine::quantity::Mass;
use crate::engine::tin::{
    Converted, DoughHeight, Filling, Fullness, Layout, Tin, TinError, Tins, convert, dough_height,
    filling, layout,
};
use crate::sheet::{Batch, SavedTin, Sheet, TinUse};

/// The tins of a batch.
#[derive(Clone, Debug, PartialEq)]
pub struct TinResults {
    /// Tins and the layout of the formula in them.
    pub used: TinUse,
    /// How much dough the tins take, and whether the batch suits them.
    pub filling: Result<Filling, TinError>,
    /// How high the risen dough reaches.
    pub height: Result<DoughHeight, TinError>,
    /// Where the pieces lie in one tin.
    pub layout: Result<Layout, TinError>,
    /// The dough of one piece.
    pub each: Mass,
    /// The pieces of the batch, where they do not share out evenly among the tins.
    pub uneven: Option<NonZeroU32>,
}

impl TinResults {
    /// Whether the batch suits the tins; none where that is not known.
    #[must_use]
    pub fn suits(&self) -> Option<bool> {
        let fullness = self.filling.as_ref().ok()?.fullness?;
        Some(fullness == Fullness::Right)
    }

    /// The dough that the tins take, where the batch has another.
    #[must_use]
    pub fn another_dough(&self) -> Option<Mass> {
        let filling = self.filling.as_ref().ok()?;
        let there = filling.there?;
        is_told((filling.all - there).size()).then_some(filling.all)
    }
}

/// The tins of a batch; none where the sheet names none.
///
/// Where pieces do not share out evenly, the layout is that of a tin with one piece more.
///
/// ```
/// use softcrumb::engine::tin::Fullness;
/// use softcrumb::results::batch::{self, tins};
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let scaled = batch::scale(&sheet).unwrap();
/// let tins = tins::of(&sheet, &scaled).unwrap();
///
/// assert_eq!(tins.filling.unwrap().fullness, Some(Fullness::Right));
/// assert_eq!(tins.uneven, None);
/// ```
#[must_use]
pub fn of(sheet: &Sheet, scaled: &Scaled) -> Option<TinResults> {
    let used = sheet.batch.tin?;
    let tin = &used.tins.tin;
    let pieces = scaled.pieces.count.get();
    let tins = u32::from(used.tins.count.get());
    let in_one = u16::try_from(pieces.div_ceil(tins)).ok();
    let in_one = in_one.and_then(NonZeroU16::new).unwrap_or(NonZeroU16::MAX);
    let dough_in_one = Mass::from_grams(scaled.needed.grams() / f64::from(tins));
    let dough_in_one = dough_in_one.unwrap_or_default();
    let rise = used.rise.factor(tin, dough_in_one, sheet.bread);
    Some(TinResults {
        used,
        filling: filling(used.tins, sheet.bread, used.room, Some(scaled.needed)),
        height: dough_height(tin, dough_in_one, rise),
        layout: layout(tin, in_one, used.rows, scaled.pieces.each, rise),
        each: scaled.pieces.each,
        uneven: (!pieces.is_multiple_of(tins)).then_some(scaled.pieces.count),
    })
}

/// The dough that fills as many of another tin just as full; none where no tin is used now.
///
/// ```
/// use softcrumb::results::batch::{self, tins};
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let scaled = batch::scale(&sheet).unwrap();
/// let same = sheet.batch.tin.unwrap().tins.tin;
///
/// let carried = tins::carried_over(&sheet, &scaled, same).unwrap().unwrap();
/// assert_eq!(carried.now, scaled.needed);
/// ```
///
/// # Errors
/// [`TinError`] between a tray and a tin, for a ring whose tube fills it, or when the dough leaves
/// its range.
pub fn carried_over(
    sheet: &Sheet,
    scaled: &Scaled,
    to: Tin,
) -> Result<Option<Converted>, TinError> {
    let Some(used) = sheet.batch.tin else {
        return Ok(None);
    };
    let to = Tins {
        tin: to,
        count: used.tins.count,
    };
    convert(used.tins, to, scaled.needed).map(Some)
}

/// Returns whether a batch is still the one that was carried over.
#[must_use]
pub fn is_carried(batch: &Batch, carried: &Converted) -> bool {
    let in_tins = batch.tin.is_some_and(|used| used.tins == carried.to);
    in_tins && batch.wanted == BatchTarget::Dough(carried.now)
}

/// The batch in as many of another tin, of so much dough where that is given.
///
/// ```
/// use softcrumb::engine::tin::TinKind;
/// use softcrumb::results::batch::tins;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let batch = tins::in_tin(&sheet.batch, TinKind::Round.tin(), None);
///
/// assert_eq!(batch.tin.unwrap().tins.tin.kind(), TinKind::Round);
/// assert_eq!(batch.wanted, sheet.batch.wanted);
/// ```
#[must_use]
pub fn in_tin(batch: &Batch, tin: Tin, dough: Option<Mass>) -> Batch {
    let mut changed = batch.clone();
    let mut used = batch.tin.unwrap_or_else(|| TinUse::of(tin));
    used.tins.tin = tin;
    changed.tin = Some(used);
    if let Some(dough) = dough {
        changed.wanted = BatchTarget::Dough(dough);
    }
    changed
}

/// Returns whether a tin is among the saved ones.
#[must_use]
pub fn is_saved(tin: &Tin, saved: &[SavedTin]) -> bool {
    saved.iter().any(|one| one.tin == *tin)
}
