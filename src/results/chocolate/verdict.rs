//! One verdict on the syrup of a batch: whether it runs, and what is in the way.

use super::ChocolateResults;
use crate::engine::chocolate::{Consistency, Flow, Lumps};
use crate::engine::quantity::{Mass, Temperature};

/// What the syrup of a batch does, taking its thickness and its melting together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SyrupVerdict {
    /// Melted chocolate with no water.
    MeltedOnly,
    /// It seizes.
    Seizes {
        /// The liquid that is missing; none where no amount helps.
        missing: Option<Mass>,
    },
    /// It is smooth only once it has been melted further.
    Lumpy {
        /// The temperature at which chocolate and liquid settle.
        settles: Temperature,
        /// What it does once it is smooth.
        once_smooth: Consistency,
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
        let melted = self.melt.as_ref().and_then(|melt| melt.as_ref().ok());
        let lumpy = melted.filter(|melt| melt.melted.lumps == Lumps::Clear);
        Some(match (syrup.flow, lumpy) {
            (Flow::MeltedOnly, _) => SyrupVerdict::MeltedOnly,
            (Flow::Seized, _) => SyrupVerdict::Seizes {
                missing: syrup.least_liquid.map(|least| least.less(syrup.liquid)),
            },
            (Flow::Flows { handling, .. }, Some(melt)) => SyrupVerdict::Lumpy {
                settles: melt.melted.temperature,
                once_smooth: handling,
            },
            (
                Flow::Flows {
                    handling: Consistency::Stiff,
                    ..
                },
                None,
            ) => SyrupVerdict::Thick,
            (Flow::Flows { handling, .. }, None) => SyrupVerdict::Runs(handling),
        })
    }
}
