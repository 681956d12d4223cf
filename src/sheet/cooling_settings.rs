//! Cooling settings: what a hot paste cools in, and by which way.

use crate::engine::heat::{CoolingVessel, Shape};
use crate::engine::quantity::{Length, Minutes};

/// How a hot paste is cooled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoolingSettings {
    /// What it cools in.
    pub vessel: CoolingVessel,
    /// How wide that is; `None` leaves it to the amount.
    pub across: Option<Length>,
    /// Whether a lid or film covers it on the bench.
    pub lid: bool,
    /// By which way.
    pub way: CoolingChoice,
    /// Its body as an earlier release stored it, from which the vessel was found; written again as
    /// it was read while nothing else is changed.
    pub former: Option<FormerBody>,
}

/// By which way a hot paste is cooled; the fridge follows in each.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum CoolingChoice {
    /// The least work that meets the kitchen's rules.
    #[default]
    Quickest,
    /// The user's own times.
    Own {
        /// On the bench.
        bench: Minutes,
        /// In ice water after that.
        ice: Minutes,
    },
}

/// A cooling body as the first releases stored it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FormerBody {
    /// How thick it is through the middle.
    pub thick: Length,
    /// Its shape.
    pub shape: Shape,
}

/// A whole cooling as the first releases stored it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FormerCooling {
    /// The body.
    pub body: FormerBody,
    /// Whether a lid with air under it covers it.
    pub lid: bool,
    /// Its time on the bench.
    pub bench: Minutes,
    /// Its time in ice water after that.
    pub ice: Minutes,
}

impl Default for CoolingSettings {
    /// In its bowl, covered, by the quickest way that meets the rules.
    fn default() -> Self {
        Self {
            vessel: CoolingVessel::Bowl,
            across: None,
            lid: true,
            way: CoolingChoice::Quickest,
            former: None,
        }
    }
}

impl Default for FormerCooling {
    /// The default of the first releases: 3 cm thick in a dish under a lid, half an hour on the
    /// bench, then the fridge.
    fn default() -> Self {
        Self {
            body: FormerBody {
                thick: Length::known(0.03),
                shape: Shape::Slab,
            },
            lid: true,
            bench: Minutes::known(30.0),
            ice: Minutes::ZERO,
        }
    }
}

impl FormerBody {
    /// The vessel it was most likely in: the one whose usual depth comes nearest.
    #[must_use]
    pub fn vessel(&self) -> CoolingVessel {
        const FLAT: [CoolingVessel; 3] = [
            CoolingVessel::Bowl,
            CoolingVessel::Dish,
            CoolingVessel::Tray,
        ];
        let away =
            |vessel: &CoolingVessel| (vessel.usual_depth().metres() - self.thick.metres()).abs();
        let nearest = FLAT
            .into_iter()
            .min_by(|one, other| away(one).total_cmp(&away(other)));
        match self.shape {
            Shape::Slab => nearest.unwrap_or_default(),
            Shape::Cylinder => CoolingVessel::Jar,
            Shape::Sphere => CoolingVessel::Bowl,
        }
    }
}

impl CoolingSettings {
    /// The settings of a cooling that an earlier release stored: its default becomes today's, any
    /// other keeps its times, in the vessel whose depth comes nearest.
    #[must_use]
    pub fn from_former(former: FormerCooling) -> Self {
        if former == FormerCooling::default() {
            return Self::default();
        }
        Self {
            vessel: former.body.vessel(),
            across: None,
            lid: former.lid,
            way: CoolingChoice::Own {
                bench: former.bench,
                ice: former.ice,
            },
            former: Some(former.body),
        }
    }

    /// As an earlier release stored it, where that says all of it.
    #[must_use]
    pub fn to_former(&self) -> Option<FormerCooling> {
        let former = match (self.way, self.former) {
            (CoolingChoice::Own { bench, ice }, Some(body)) => FormerCooling {
                body,
                lid: self.lid,
                bench,
                ice,
            },
            (CoolingChoice::Quickest, _) | (_, None) => FormerCooling::default(),
        };
        (Self::from_former(former) == *self).then_some(former)
    }

    /// The user's own times; none where the quickest way is taken.
    #[must_use]
    pub const fn own_times(&self) -> Option<(Minutes, Minutes)> {
        match self.way {
            CoolingChoice::Quickest => None,
            CoolingChoice::Own { bench, ice } => Some((bench, ice)),
        }
    }

    /// Sets the vessel; its width is the usual one again.
    pub const fn set_vessel(&mut self, vessel: CoolingVessel) {
        self.vessel = vessel;
        self.across = None;
        self.former = None;
    }

    /// Sets the width.
    pub const fn set_across(&mut self, across: Option<Length>) {
        self.across = across;
        self.former = None;
    }

    /// Sets whether the user's own times hold; they begin with those of the first releases.
    pub const fn set_own(&mut self, own: bool) {
        self.way = if own {
            CoolingChoice::Own {
                bench: Minutes::known(30.0),
                ice: Minutes::ZERO,
            }
        } else {
            self.former = None;
            CoolingChoice::Quickest
        };
    }

    /// Sets the user's own time on the bench.
    pub const fn set_bench(&mut self, minutes: Minutes) {
        let ice = match self.way {
            CoolingChoice::Quickest => Minutes::ZERO,
            CoolingChoice::Own { ice, .. } => ice,
        };
        self.way = CoolingChoice::Own {
            bench: minutes,
            ice,
        };
    }

    /// Sets the user's own time in ice water.
    pub const fn set_ice(&mut self, minutes: Minutes) {
        let bench = match self.way {
            CoolingChoice::Quickest => Minutes::ZERO,
            CoolingChoice::Own { bench, .. } => bench,
        };
        self.way = CoolingChoice::Own {
            bench,
            ice: minutes,
        };
    }
}
