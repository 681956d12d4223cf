//! One verdict on the syrup of a batch, melted as its steps melt it: whether it runs, and what is in
//! the way.

use super::ChocolateResults;
use crate::engine::chocolate::{Consistency, Flow};
use crate::engine::quantity::Mass;

/// What the syrup of a batch does once its chocolate is melted gently over hot water, as the steps of
/// the bench have it: smooth, so that only its thickness counts. What pouring hot liquid on cold
/// chocolate leaves is [`MeltResults`](super::MeltResults).
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SyrupVerdict {
    /// Melted chocolate with no water.
    MeltedOnly,
    /// It seizes.
    Seizes {
        /// The liquid that is missing; none where no amount helps.
        missing: Option<Mass>,
    },
    /// It is too stiff to work.
    Thick,
    /// It flows.
    Runs(Consistency),
}

impl ChocolateResults {
    /// The verdict on the syrup; none without a syrup, or where it cannot be worked out.
    ///
    /// ```
    /// use softcrumb::results::chocolate::SyrupVerdict;
    /// use softcrumb::results::{batch, chocolate};
    /// use softcrumb::sheet::{Kitchen, examples};
    ///
    /// let (_, sheet) = examples().remove(0);
    /// let kitchen = Kitchen::default();
    /// let batch = batch::of(&sheet, kitchen.scales);
    /// let results = chocolate::of(&sheet, &kitchen, &batch);
    /// assert!(!matches!(results.verdict(), Some(SyrupVerdict::Seizes { .. })));
    /// ```
    #[must_use]
    pub fn verdict(&self) -> Option<SyrupVerdict> {
        let syrup = &self.syrup.as_ref()?.as_ref().ok()?.syrup;
        Some(match syrup.flow {
            Flow::MeltedOnly => SyrupVerdict::MeltedOnly,
            Flow::Seized => SyrupVerdict::Seizes {
                missing: syrup.least_liquid.map(|least| least.less(syrup.liquid)),
            },
            Flow::Flows {
                handling: Consistency::Stiff,
                ..
            } => SyrupVerdict::Thick,
            Flow::Flows { handling, .. } => SyrupVerdict::Runs(handling),
        })
    }
}
