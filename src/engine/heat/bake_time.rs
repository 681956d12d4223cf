//! How long to bake, from a bake that is known: conduction into what stands in the oven now,
//! against conduction into what stood there then.

use super::baked_shape::BakedBody;
use super::error::HeatError;
use super::loaf_body::LoafBody;
use crate::engine::quantity::{Factor, Minutes, Share, Temperature};
use crate::engine::working::{WorkingLine, given};

/// What decides how long a bake takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BakeSetting {
    /// What stands in the oven.
    pub baked: BakedBody,
    /// The oven, as a still one.
    pub oven: Temperature,
    /// The heat it brings, of that of a still oven heated from above and below.
    pub heat: Share,
    /// The dough as it goes in.
    pub dough: Temperature,
    /// The middle as it comes out.
    pub core: Temperature,
}

/// How long a bake takes: a hint, the core temperature is the test.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BakeTime {
    /// The time of the known bake.
    pub known: Minutes,
    /// The known bake.
    pub from_bake: BakeSetting,
    /// This bake.
    pub to_bake: BakeSetting,
    /// The time by conduction of the known bake, with heat from above and below.
    pub known_model: Minutes,
    /// The time by conduction of this bake, with heat from above and below.
    pub new_model: Minutes,
    /// The time that the comparison says.
    pub compared: Minutes,
    /// How many times as long it takes in this oven, as its log has taught; `None` without one.
    pub oven: Option<Factor>,
    /// The likely time.
    pub likely: Minutes,
    /// How far the time may be off, of itself.
    pub spread: Share,
    /// From.
    pub from: Minutes,
    /// To.
    pub to: Minutes,
}

/// What ovens and doughs differ by where the same is baked again. Common practice: printed times of
/// one bread are 30 to 35 min, or 15 to 18.
const SPREAD: f64 = 0.1;
/// What is added for a bake e times as long or as short as the known one. Common practice: printed
/// times for rolls of one mass differ by a third.
const SPREAD_BY_RATIO: f64 = 0.15;
/// The widest a time may be off, where shapes differ too.
const WIDEST: f64 = 0.2;

const CONDUCTION: &str =
    "conduction: Carslaw and Jaeger, Conduction of Heat in Solids, §1.15 (product of solutions)";

/// How long a bake takes, from one that is known.
///
/// `t = k·(M/s)/(K/r)`: k the known time, M and K the times by conduction of both bodies in ovens
/// heated from above and below ([`LoafBody::bakes_in`](super::LoafBody::bakes_in)), s and r the
/// shares of that heat that the ovens bring. The range is a tenth either way, and wider the more the
/// bakes differ: `√(0.1² + (0.15·ln(M/K))²)`, at most a fifth, which is also taken where one bakes
/// in a tin and the other apart.
///
/// # Errors
/// [`HeatError::OvenTooCool`] where an oven is not hotter than what its core is to reach, or the
/// dough not cooler; [`HeatError::EmptyProgramme`] where an oven brings no heat;
/// [`HeatError::OffScale`] when the time leaves its range.
pub fn bake_time(
    known: Minutes,
    from: &BakeSetting,
    to: &BakeSetting,
) -> Result<BakeTime, HeatError> {
    let (known_model, new_model) = (from.model()?, to.model()?);
    let heats = (from.heat.fraction(), to.heat.fraction());
    if heats.0 <= 0.0 || heats.1 <= 0.0 {
        return Err(HeatError::EmptyProgramme);
    }
    let ratio = new_model.minutes() / known_model.minutes();
    let likely = known.minutes() * ratio * heats.0 / heats.1;
    let spread = if from.baked.shape == to.baked.shape {
        let unlike = SPREAD_BY_RATIO * libm::log(ratio);
        libm::sqrt(SPREAD * SPREAD + unlike * unlike).min(WIDEST)
    } else {
        WIDEST
    };
    let compared = Minutes::from_minutes(likely)?;
    Ok(BakeTime {
        known,
        from_bake: *from,
        to_bake: *to,
        known_model,
        new_model,
        compared,
        oven: None,
        likely: compared,
        spread: Share::from_fraction(spread)?,
        from: Minutes::from_minutes(likely * (1.0 - spread))?,
        to: Minutes::from_minutes(likely * (1.0 + spread))?,
    })
}

impl BakeSetting {
    /// The time by conduction, heat coming from above and below; above zero.
    fn model(&self) -> Result<Minutes, HeatError> {
        let (oven, core) = (self.oven, self.core);
        let time = self.baked.body.bakes_in(oven, self.dough, core)?;
        if time > Minutes::ZERO {
            Ok(time)
        } else {
            Err(HeatError::OvenTooCool { oven, core })
        }
    }
}

impl BakeTime {
    /// The same bake in an oven whose bakes were so many times as long as expected, and lay within
    /// such a share of that; a fifth at the most, as without a log.
    ///
    /// `T = c·f`: c the time by comparison, f the factor.
    ///
    /// # Errors
    /// [`HeatError::OffScale`] when the time leaves its range.
    pub fn in_an_oven(&self, oven: Factor, spread: Share) -> Result<Self, HeatError> {
        let likely = self.compared.minutes() * oven.number();
        let off = spread.fraction().min(WIDEST);
        Ok(Self {
            oven: Some(oven),
            likely: Minutes::from_minutes(likely)?,
            spread: Share::from_fraction(off)?,
            from: Minutes::from_minutes(likely * (1.0 - off))?,
            to: Minutes::from_minutes(likely * (1.0 + off))?,
            ..*self
        })
    }

    /// The working, line by line: the height of what is baked, how warm its middle is after the time by
    /// conduction, and the known time scaled.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let scaled = WorkingLine {
            rule: "t × (M / s) / (K / r)".into(),
            with: vec![
                given("t", "known bake", self.known.minutes(), "min"),
                given("M", "this by conduction", self.new_model.minutes(), "min"),
                given("s", "its heat", self.to_bake.heat.fraction(), ""),
                given(
                    "K",
                    "known by conduction",
                    self.known_model.minutes(),
                    "min",
                ),
                given("r", "its heat", self.from_bake.heat.fraction(), ""),
            ],
            result: given("T", "this bake", self.compared.minutes(), "min"),
            source: CONDUCTION.into(),
        };
        let in_this_oven = self.oven.map(|oven| WorkingLine {
            rule: "T × f".into(),
            with: vec![
                given("T", "this bake", self.compared.minutes(), "min"),
                given("f", "this oven against expected", oven.number(), ""),
            ],
            result: given("B", "this bake in this oven", self.likely.minutes(), "min"),
            source: "your own bakes".into(),
        });
        let mut lines = vec![
            self.from_bake.baked.working(),
            self.from_bake.middle_after(self.known_model),
            self.to_bake.baked.working(),
            self.to_bake.middle_after(self.new_model),
            scaled,
        ];
        lines.extend(in_this_oven);
        lines
    }
}

impl BakeSetting {
    /// How warm the middle is after a time: what each direction leaves of the first difference,
    /// multiplied.
    fn middle_after(&self, time: Minutes) -> WorkingLine {
        let ways = self.baked.body.left_by_direction(time);
        let (dough, oven) = (self.dough.celsius(), self.oven.celsius());
        let left: f64 = ways.iter().product();
        let letters = ["a", "b", "c"];
        let rule: Vec<&str> = letters.iter().take(ways.len()).copied().collect();
        let mut with = vec![
            given("D", "dough", dough, "°C"),
            given("O", "oven", oven, "°C"),
        ];
        let names = match self.baked.body {
            LoafBody::Bar { .. } => [
                "left by the length",
                "left by the width",
                "left by the height",
            ],
            LoafBody::Round { .. } => ["left by the width", "left by the height", ""],
        };
        let shares = letters.into_iter().zip(names).zip(&ways);
        with.extend(shares.map(|((letter, of), share)| given(letter, of, *share, "")));
        WorkingLine {
            rule: format!("D + (O − D) × (1 − {})", rule.join(" × ")).into(),
            with,
            result: given(
                "C",
                "middle by then",
                dough + (oven - dough) * (1.0 - left),
                "°C",
            ),
            source: CONDUCTION.into(),
        }
    }
}
