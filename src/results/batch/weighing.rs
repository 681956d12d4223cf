//! What to weigh: part by part, with the working of each weight and help for what is too little
//! for the scale.

use super::{BatchResults, is_told};
use crate::engine::batch::{ScaleReading, Scaled, SolutionAid};
use crate::engine::formula::{Formula, LineAt, PartKind};
use crate::engine::quantity::{Mass, Share};
use crate::engine::working::WorkingLine;

/// A part with something to weigh.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct PartToWeigh {
    /// Which part of the formula.
    pub part: usize,
    /// What becomes of it.
    pub kind: PartKind,
    /// Its name.
    pub name: String,
    /// Its lines.
    pub lines: Vec<LineAt>,
}

/// A line whose rounding error asks for an aid.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct HardToWeigh {
    /// Which line.
    pub at: LineAt,
    /// Whether the scale would show nothing of it.
    pub below_scale: bool,
}

/// Every part of a formula that has lines.
///
/// ```
/// use softcrumb::results::batch::weighing;
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let parts = weighing::parts_to_weigh(&sheet.formula);
/// assert_eq!(parts[0].lines.len(), sheet.formula.parts[0].lines.len());
/// ```
#[must_use]
pub fn parts_to_weigh(formula: &Formula) -> Vec<PartToWeigh> {
    let numbered = formula.parts.iter().enumerate();
    let parts = numbered.map(|(part, own)| PartToWeigh {
        part,
        kind: own.kind,
        name: own.name.clone(),
        lines: (0..own.lines.len())
            .map(|line| LineAt { part, line })
            .collect(),
    });
    parts.filter(|part| !part.lines.is_empty()).collect()
}

/// Why rows of the weighing list add up to more than a figure of the batch or the formula.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeighsMore {
    /// What leaves the pastes as steam: all that is weighed in is that much more than the dough to mix.
    pub steam: Option<Mass>,
    /// What of filling, topping and wash stays in bag and bowl, and is made besides.
    pub stays: Option<Share>,
}

/// Why the weights of a batch add up to more than its dough, or than the formula times its factor.
///
/// ```
/// use softcrumb::results::batch::{scale, weighing};
/// use softcrumb::sheet::examples;
///
/// let (_, sheet) = examples().remove(0);
/// let scaled = scale(&sheet).unwrap();
/// let more = weighing::weighs_more(&scaled);
/// // Its paste loses steam, and chocolate stays in bag and bowl.
/// assert_eq!(more.steam, Some(scaled.steam));
/// assert_eq!(more.stays, Some(scaled.losses.topping));
/// ```
#[must_use]
pub fn weighs_more(scaled: &Scaled) -> WeighsMore {
    let mut parts = scaled.formula.parts.iter();
    let beside = parts.any(|part| !part.kind.in_dough() && is_told(part.mass()));
    let stays = scaled.losses.topping;
    WeighsMore {
        steam: Some(scaled.steam).filter(|steam| is_told(*steam)),
        stays: Some(stays).filter(|stays| beside && stays.fraction() > 0.0),
    }
}

impl BatchResults {
    /// Returns the lines whose rounding error is so large that a weighing aid is advised.
    #[must_use]
    pub fn hard_to_weigh(&self) -> Vec<HardToWeigh> {
        let lines = self.rounded.iter().flat_map(|rounded| rounded.with_aids());
        let hard = lines.map(|line| HardToWeigh {
            at: line.at,
            below_scale: line.reading == ScaleReading::BelowScale,
        });
        hard.collect()
    }

    /// Whether the scale would show nothing of a line.
    #[must_use]
    pub fn shows_too_little(&self) -> bool {
        let mut lines = self.rounded.iter().flat_map(|rounded| rounded.with_aids());
        lines.any(|line| line.reading == ScaleReading::BelowScale)
    }

    /// The steps from a line's weight in the formula `original` to what the scale shows.
    #[must_use]
    pub fn weighing_working(&self, original: &Formula, at: LineAt) -> Vec<WorkingLine> {
        let scaled = self.scaled.as_ref().ok();
        let exact = scaled.and_then(|scaled| scaled.line_working(original, at));
        let rounded = self.rounded.as_ref();
        let rounded = rounded.map(|rounded| rounded.line_working(at));
        exact
            .into_iter()
            .chain(rounded.unwrap_or_default())
            .collect()
    }

    /// Returns the steps that lead to what the scale shows of a line, in g, and to the aids for it.
    #[must_use]
    pub fn aid_working(&self, at: LineAt) -> Vec<WorkingLine> {
        let Some(rounded) = &self.rounded else {
            return Vec::new();
        };
        let mut lines = rounded.line_working(at);
        if let Some(aids) = rounded.line(at).and_then(|line| line.aids) {
            let pocket = aids.pocket_scale.iter();
            lines.extend(pocket.flat_map(|scale| scale.working()));
            if let Some(SolutionAid::Take(solution)) = aids.solution {
                lines.extend(solution.working());
            }
        }
        lines
    }
}
