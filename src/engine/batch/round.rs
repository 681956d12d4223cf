//! Rounding: each line as the scale can show it, and what that changes.

use super::weighing_aid::{Scales, WeighingAids, aids};
use crate::engine::formula::{Figure, Figures, Form, Formula, Line, LineAt};
use crate::engine::ingredients::Role;
use crate::engine::quantity::{Division, Mass, MassChange, NoSuchDivision, Share};

/// The divisions of the scales.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ScaleSettings {
    /// The kitchen scale.
    pub main: Division,
    /// The pocket scale for yeast and salt, where there is one.
    pub pocket: Option<Division>,
}

impl ScaleSettings {
    /// Takes the divisions as masses.
    ///
    /// # Errors
    /// [`NoSuchDivision`] when either is none of [`Division::ALL`].
    pub fn from_masses(main: Mass, pocket: Option<Mass>) -> Result<Self, NoSuchDivision> {
        Ok(Self {
            main: Division::from_mass(main)?,
            pocket: pocket.map(Division::from_mass).transpose()?,
        })
    }

    /// The scale an ingredient is weighed on, and whether it is the pocket scale.
    #[must_use]
    pub fn for_role(self, role: Role) -> (Division, bool) {
        match (role, self.pocket) {
            (Role::Yeast | Role::Salt, Some(pocket)) => (pocket, true),
            _ => (self.main, false),
        }
    }
}

/// What a scale shows of a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ScaleReading {
    /// The scale shows it.
    AsWeighed,
    /// It is less than half a division: the scale would show nothing.
    BelowScale,
}

/// One line as the scale shows it.
#[derive(Clone, Debug, PartialEq)]
pub struct RoundedLine {
    /// Which line.
    pub at: LineAt,
    /// The exact mass.
    pub exact: Mass,
    /// The division of the scale it is weighed on.
    pub division: Division,
    /// Whether that is the pocket scale.
    pub on_pocket_scale: bool,
    /// The mass to weigh; nothing when [`ScaleReading::BelowScale`].
    pub weighed: Mass,
    /// What the scale shows of it.
    pub reading: ScaleReading,
    /// Weighed less exact; never more than half a division either way.
    pub error: MassChange,
    /// The size of the error as a share of the exact mass; none where nothing is asked for.
    pub error_share: Option<Share>,
    /// Baker's percentage on all flour of the dough, exact.
    pub percent_exact: Option<Share>,
    /// Baker's percentage on all flour of the dough, as weighed.
    pub percent_weighed: Option<Share>,
    /// What helps, where the error passes [`WeighingAids::MOST_ERROR`].
    pub aids: Option<WeighingAids>,
}

impl RoundedLine {
    /// More of an error than this is told where no mark opens to its aid, as on paper. Common practice: a
    /// tenth more or less yeast is a rise a tenth faster or slower.
    const FAR_OFF: f64 = 0.1;

    /// Whether what the scale shows of it is far off, or nothing.
    #[must_use]
    pub fn is_far_off(&self) -> bool {
        let off = self.error_share.map_or(0.0, Share::fraction);
        self.reading == ScaleReading::BelowScale || off > Self::FAR_OFF
    }
}

/// A formula as the scales show it.
#[derive(Clone, Debug, PartialEq)]
pub struct Rounded {
    /// The scales.
    pub weighing: ScaleSettings,
    /// Every line, part by part.
    pub lines: Vec<RoundedLine>,
    /// The formula with every line as weighed.
    pub formula: Formula,
    /// Dough, exact.
    pub dough_exact: Mass,
    /// Dough, as weighed.
    pub dough_weighed: Mass,
    /// Flour, exact.
    pub flour_exact: Mass,
    /// Flour, as weighed.
    pub flour_weighed: Mass,
    /// All water by composition, flour's own left out, exact.
    pub water_exact: Mass,
    /// The same, as weighed.
    pub water_weighed: Mass,
    /// True water on flour, exact; none without flour.
    pub true_water_exact: Option<Share>,
    /// True water on flour, as weighed; none without flour.
    pub true_water_weighed: Option<Share>,
}

impl Rounded {
    /// One line; none where the formula has no such line.
    #[must_use]
    pub fn line(&self, at: LineAt) -> Option<&RoundedLine> {
        self.lines.iter().find(|line| line.at == at)
    }

    /// The lines whose error passes 2 %.
    pub fn with_aids(&self) -> impl Iterator<Item = &RoundedLine> {
        self.lines.iter().filter(|line| line.aids.is_some())
    }
}

/// Rounds every line of a formula (as a rule one that was scaled) to its scale's division.
///
/// A mass goes to the nearest division, half a division up. Yeast and salt go on the pocket scale
/// where there is one. True water leaves out flour's own moisture, by convention, and steam.
///
/// Source: rounding to the nearest (by definition); the 2 % that asks for an aid is common
/// practice.
#[must_use]
pub fn round(exact: &Formula, weighing: ScaleSettings) -> Rounded {
    let mut formula = exact.clone();
    for line in formula.parts.iter_mut().flat_map(|part| &mut part.lines) {
        // What was poured belongs to an earlier batch.
        line.poured = None;
    }
    for line in formula.parts.iter_mut().flat_map(|part| &mut part.lines) {
        let (division, _) = weighing.for_role(line.food.role());
        line.mass = division.nearest(line.mass);
    }
    rounded(exact, formula, weighing)
}

/// What several weighings of the same lines come to: `exact` is the sum of what they are of,
/// `weighed` of what the scales show. Its errors are the sums of theirs, and nothing helps against
/// them here: each is weighed by itself.
///
/// Source: by definition.
#[must_use]
pub fn round_sum(exact: &Formula, weighed: &Formula, weighing: ScaleSettings) -> Rounded {
    let mut weighed = weighed.clone();
    for line in weighed.parts.iter_mut().flat_map(|part| &mut part.lines) {
        // A sum of whole divisions is one, but for the last binary place.
        let (division, _) = weighing.for_role(line.food.role());
        line.mass = division.nearest(line.mass);
    }
    let mut sum = rounded(exact, weighed, weighing);
    for line in &mut sum.lines {
        line.aids = None;
    }
    sum
}

/// A formula and what the scales show of it, side by side.
fn rounded(exact: &Formula, formula: Formula, weighing: ScaleSettings) -> Rounded {
    let mut unpoured = exact.clone();
    for line in unpoured.parts.iter_mut().flat_map(|part| &mut part.lines) {
        line.poured = None;
    }
    let water_exact = Figures::of(&unpoured, Form::AsMade).mass(Figure::TrueWater);
    let (flour_exact, flour_weighed) = (exact.flour(), formula.flour());
    let water_weighed = Figures::of(&formula, Form::AsMade).mass(Figure::TrueWater);
    Rounded {
        weighing,
        lines: rounded_lines(exact, &formula, weighing),
        dough_exact: exact.dough(),
        dough_weighed: formula.dough(),
        formula,
        flour_exact,
        flour_weighed,
        water_exact,
        water_weighed,
        true_water_exact: water_exact.share_of(flour_exact),
        true_water_weighed: water_weighed.share_of(flour_weighed),
    }
}

/// Every line as its scale shows it, part by part.
fn rounded_lines(exact: &Formula, weighed: &Formula, weighing: ScaleSettings) -> Vec<RoundedLine> {
    let (flour_exact, flour_weighed) = (exact.flour(), weighed.flour());
    let mut lines = Vec::new();
    for (part_index, part) in exact.parts.iter().enumerate() {
        for (line_index, line) in part.lines.iter().enumerate() {
            let at = LineAt {
                part: part_index,
                line: line_index,
            };
            let weighs = weighed.line(at).map_or(Mass::ZERO, |line| line.mass);
            let mut rounded = one_line(at, line, weighs, weighing);
            if part.kind.in_dough() {
                rounded.percent_exact = rounded.exact.share_of(flour_exact);
                rounded.percent_weighed = rounded.weighed.share_of(flour_weighed);
            }
            let error = rounded.error_share.map_or(0.0, Share::fraction);
            if error > WeighingAids::MOST_ERROR {
                let scales = Scales {
                    line: rounded.division,
                    main: weighing.main,
                };
                rounded.aids = Some(aids(part, line, scales));
            }
            lines.push(rounded);
        }
    }
    lines
}

/// One line as its scale shows it, percentages and aids still open.
fn one_line(at: LineAt, line: &Line, weighed: Mass, weighing: ScaleSettings) -> RoundedLine {
    let (division, on_pocket_scale) = weighing.for_role(line.food.role());
    let exact = line.mass;
    let error = weighed - exact;
    let reading = if exact > Mass::ZERO && weighed <= Mass::ZERO {
        ScaleReading::BelowScale
    } else {
        ScaleReading::AsWeighed
    };
    RoundedLine {
        at,
        exact,
        division,
        on_pocket_scale,
        weighed,
        reading,
        error,
        error_share: error.size().share_of(exact),
        percent_exact: None,
        percent_weighed: None,
        aids: None,
    }
}
