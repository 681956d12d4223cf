//! The oven: a programme of phases, and what each of them asks for.

use super::error::HeatError;
use crate::engine::quantity::{Minutes, Share, Temperature};
use crate::engine::working::{WorkingLine, given};

/// Where the heat comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum HeatFrom {
    /// From above.
    Top,
    /// From below.
    Bottom,
    /// From both.
    Both,
}

impl HeatFrom {
    /// Every way, in the order lists are shown.
    pub const ALL: [Self; 3] = [Self::Both, Self::Top, Self::Bottom];

    /// The heat it brings, of that from both: above or below alone brings half. Common practice.
    const fn heat(self) -> f64 {
        match self {
            Self::Both => 1.0,
            Self::Top | Self::Bottom => 0.5,
        }
    }
}

/// One stretch of a bake.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Phase {
    /// How long.
    pub minutes: Minutes,
    /// What the oven is set to.
    pub temperature: Temperature,
    /// Where its heat comes from.
    pub from: HeatFrom,
    /// Whether the fan runs.
    pub fan: bool,
}

/// What to do as a phase begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PhaseAdvice {
    /// Nothing.
    Leave,
    /// Cover with foil: a rich dough would brown too much by the end.
    Tent,
    /// Move a shelf down: top heat alone browns before the middle is done.
    MoveDown,
}

/// A phase seen in its place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReviewedPhase {
    /// The phase.
    pub phase: Phase,
    /// When it begins.
    pub begins: Minutes,
    /// When it ends.
    pub ends: Minutes,
    /// What a still oven would have to be set to.
    pub as_still: Temperature,
    /// What to do as it begins.
    pub advice: PhaseAdvice,
}

/// A whole programme seen at once.
#[derive(Clone, Debug, PartialEq)]
pub struct Programme {
    /// Its phases.
    pub phases: Vec<ReviewedPhase>,
    /// How long it takes.
    pub total: Minutes,
    /// The one setting of a still oven: the mean of the phases, each by its heat.
    pub mean_as_still: Temperature,
    /// The heat that its phases bring, of that of as many minutes from above and below.
    pub heat: Share,
}

/// How much lower a fan oven is set, K. Common practice: 15 to 20.
const FAN: f64 = 20.0;
/// Hotter than this from above, °C, a soft enriched top darkens in the second half. Common practice.
const DARKENS: f64 = 175.0;
/// Hotter than this from above alone, °C, the top is done before the middle. Common practice.
const TOP_ALONE: f64 = 190.0;

/// What a fan oven is set to in place of a still one: 20 K less. Common practice.
///
/// # Errors
/// [`HeatError::OffScale`] below −20 °C, which no oven is.
pub fn still_to_fan(still: Temperature) -> Result<Temperature, HeatError> {
    Ok(Temperature::from_celsius(still.celsius() - FAN)?)
}

/// What a still oven is set to in place of a fan one: 20 K more. Common practice.
///
/// # Errors
/// [`HeatError::OffScale`] above 330 °C.
pub fn fan_to_still(fan: Temperature) -> Result<Temperature, HeatError> {
    Ok(Temperature::from_celsius(fan.celsius() + FAN)?)
}

/// Looks a programme over: when phases begin, what a still oven would be set to, and what to do.
///
/// # Errors
/// [`HeatError::EmptyProgramme`] without a minute in it; [`HeatError::OffScale`] when it takes
/// longer than [`Minutes::RANGE`].
pub fn review(phases: &[Phase]) -> Result<Programme, HeatError> {
    let total: f64 = phases.iter().map(|phase| phase.minutes.minutes()).sum();
    if total <= 0.0 {
        return Err(HeatError::EmptyProgramme);
    }
    let mut begins = 0.0;
    let (mut degree_minutes, mut heated) = (0.0, 0.0);
    let mut reviewed = Vec::with_capacity(phases.len());
    for phase in phases {
        let ends = begins + phase.minutes.minutes();
        let as_still = if phase.fan {
            fan_to_still(phase.temperature)?
        } else {
            phase.temperature
        };
        let heat = phase.from.heat() * phase.minutes.minutes();
        degree_minutes += as_still.celsius() * heat;
        heated += heat;
        reviewed.push(ReviewedPhase {
            phase: *phase,
            begins: Minutes::from_minutes(begins)?,
            ends: Minutes::from_minutes(ends)?,
            as_still,
            advice: advice(phase.from, as_still.celsius(), ends / total),
        });
        begins = ends;
    }
    Ok(Programme {
        phases: reviewed,
        total: Minutes::from_minutes(total)?,
        mean_as_still: Temperature::from_celsius(degree_minutes / heated)?,
        heat: Share::from_fraction(heated / total)?,
    })
}

/// `done` is how much of the bake is over when the phase ends.
fn advice(from: HeatFrom, as_still: f64, done: f64) -> PhaseAdvice {
    match from {
        HeatFrom::Bottom => PhaseAdvice::Leave,
        HeatFrom::Top if as_still >= TOP_ALONE => PhaseAdvice::MoveDown,
        HeatFrom::Top | HeatFrom::Both => {
            if as_still >= DARKENS && done > 0.5 {
                PhaseAdvice::Tent
            } else {
                PhaseAdvice::Leave
            }
        }
    }
}

impl Programme {
    /// The same programme lasting this long in all, its phases in proportion and each a whole number
    /// of minutes, as a timer is set; one at least where there was any.
    ///
    /// # Errors
    /// [`HeatError::EmptyProgramme`] for no time; [`HeatError::OffScale`] when a phase leaves
    /// [`Minutes::RANGE`].
    pub fn lasting(&self, total: Minutes) -> Result<Self, HeatError> {
        let factor = total.minutes() / self.total.minutes();
        let scaled = self.phases.iter().map(|one| {
            let minutes = one.phase.minutes.minutes() * factor;
            let whole = libm::round(minutes).max(minutes.min(1.0));
            Ok(Phase {
                minutes: Minutes::from_minutes(whole)?,
                ..one.phase
            })
        });
        review(&scaled.collect::<Result<Vec<_>, HeatError>>()?)
    }

    /// How the one setting and the share of heat came about.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let (mut sum, mut total, mut whole) = (Vec::new(), Vec::new(), Vec::new());
        let (mut degrees, mut minutes) = (Vec::new(), Vec::new());
        for (place, one) in self.phases.iter().enumerate() {
            let [t, m, h] = ["T", "t", "h"].map(|letter| format!("{letter}{}", place + 1));
            sum.push(format!("{h} × {m} × {t}"));
            total.push(format!("{h} × {m}"));
            whole.push(m.clone());
            degrees.push(given(t, "as a still oven", one.as_still.celsius(), "°C"));
            minutes.push(given(m, "phase", one.phase.minutes.minutes(), "min"));
            minutes.push(given(h, "its heat", one.phase.from.heat(), ""));
        }
        degrees.extend(minutes.iter().cloned());
        let total = total.join(" + ");
        vec![
            WorkingLine {
                rule: format!("({}) / ({total})", sum.join(" + ")).into(),
                with: degrees,
                result: given("T", "one setting", self.mean_as_still.celsius(), "°C"),
                source: "mean by heat; fan 20 K lower, heat from one side half: common practice"
                    .into(),
            },
            WorkingLine {
                rule: format!("({total}) / ({})", whole.join(" + ")).into(),
                with: minutes,
                result: given("s", "heat of that from both", self.heat.fraction(), ""),
                source: "heat from one side half: common practice".into(),
            },
        ]
    }
}
