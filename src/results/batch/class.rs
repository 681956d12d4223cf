//! The class: what each bench weighs, everything together, bowls, and the loads of the oven.

use std::num::{NonZeroU16, NonZeroU32};

use super::batch_results::{divisions, shown_or_exact};
use super::class_batch::loaf;
use crate::engine::batch::{Rounded, ScaleReading, ScaleSettings, round, round_sum};
use crate::engine::class::{
    BowlNeed, BowlPortion, Class, ClassError, ClassSettings, OvenPlan, bowls, portions, sum,
};
use crate::engine::class::{class, oven};
use crate::engine::formula::{Formula, LineAt};
use crate::engine::quantity::{Mass, Minutes};
use crate::engine::tin::{Fullness, Tins, filling};
use crate::engine::working::WorkingLine;
use crate::sheet::{Scales, Sheet};

/// A class and its oven.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassResults {
    /// What the benches weigh.
    pub weights: Result<ClassWeights, ClassError>,
    /// The loads of the oven.
    pub oven: Result<OvenPlan, ClassError>,
}

/// What the benches of a class weigh.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassWeights {
    /// The benches, and everything together, exact.
    pub class: Class,
    /// Each kind of bench as the scales show it, in the order of [`Class::benches`].
    pub benches: Vec<Rounded>,
    /// What the teacher weighs for all as the scales show it, where the teacher makes it ahead.
    pub bowl: Option<Rounded>,
    /// What the benches take from the teacher's bowl, part by part.
    pub portions: Vec<BowlPortion>,
    /// Everything together: the sum of what the scales show at each bench and for the bowl.
    pub total: Rounded,
    /// The bowls of the benches.
    pub bowls: Vec<BowlNeed>,
    /// Lines of which a bench's scale shows nothing: their total is of what is exact.
    pub below_scale: Vec<LineAt>,
}

/// The longest a shaped dough may wait for the oven before it rises too far. Common practice.
const LONGEST_WAIT: Minutes = Minutes::known(20.0);

/// Shares a sheet's formula out among the benches of a class, and its loaves among oven loads.
///
/// ```
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::batch::class;
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let class = class::of(&sheet, &ClassSettings::default(), Kitchen::default().scales);
///
/// // Twelve students and the teacher make a loaf each; six go into the oven at once.
/// assert_eq!(class.weights.unwrap().class.loaves, 13);
/// assert_eq!(class.oven.unwrap().loads.len(), 3);
/// ```
#[must_use]
pub fn of(sheet: &Sheet, settings: &ClassSettings, scales: Scales) -> ClassResults {
    let loaves = NonZeroU32::new(settings.loaves_in_all()).unwrap_or(NonZeroU32::MIN);
    ClassResults {
        weights: weights(sheet, settings, divisions(scales)),
        oven: oven(loaves, settings.oven),
    }
}

fn weights(
    sheet: &Sheet,
    settings: &ClassSettings,
    weighing: ScaleSettings,
) -> Result<ClassWeights, ClassError> {
    let batch = &sheet.batch;
    let class = class(&sheet.formula, *settings, batch.losses, batch.pieces)?;
    let benches = class.benches.iter();
    let benches: Vec<Rounded> = benches
        .map(|bench| round(&bench.weighs, weighing))
        .collect();
    let bowl = class.bowl.as_ref().map(|bowl| round(bowl, weighing));
    let weighed_out: Vec<Formula> = benches.iter().map(shown_or_exact).collect();
    let counted = class.benches.iter().zip(&weighed_out);
    let counted = counted.map(|(bench, formula)| (bench.count.get(), formula));
    let weighed: Vec<(u32, &Formula)> = counted
        .chain(bowl.iter().map(|bowl| (1, &bowl.formula)))
        .collect();
    let weighed = sum(&class.total, &weighed)?;
    let below_scale = below_scale(&benches);
    let portions = match &bowl {
        Some(bowl) => portions(&class, &bowl.formula, weighing)?,
        None => Vec::new(),
    };
    Ok(ClassWeights {
        total: with_exact(
            round_sum(&class.total, &weighed, weighing),
            &weighed,
            &below_scale,
        ),
        bowls: bowls(&class),
        below_scale,
        bowl,
        portions,
        benches,
        class,
    })
}

/// A total in which some lines are summed exactly, as `summed` has them.
fn with_exact(mut total: Rounded, summed: &Formula, lines: &[LineAt]) -> Rounded {
    for at in lines {
        let Some(mass) = summed.line(*at).map(|line| line.mass) else {
            continue;
        };
        let own = total.formula.parts.get_mut(at.part);
        if let Some(own) = own.and_then(|part| part.lines.get_mut(at.line)) {
            own.mass = mass;
        }
        for line in total.lines.iter_mut().filter(|line| line.at == *at) {
            line.weighed = mass;
        }
    }
    total
}

/// Lines of which the scale of a bench shows nothing, each once.
fn below_scale(benches: &[Rounded]) -> Vec<LineAt> {
    let lines = benches.iter().flat_map(|bench| &bench.lines);
    let mut found: Vec<LineAt> = Vec::new();
    for line in lines.filter(|line| line.reading == ScaleReading::BelowScale) {
        if !found.contains(&line.at) {
            found.push(line.at);
        }
    }
    found
}

impl ClassResults {
    /// Returns the steps that lead to the loaves of the class, the portions in g from the teacher's bowl
    /// and the minutes of the oven.
    ///
    /// ```
    /// use softcrumb::engine::class::ClassSettings;
    /// use softcrumb::results::batch::class;
    /// use softcrumb::sheet::{Kitchen, examples};
    ///
    /// let (_, sheet) = examples().remove(0);
    /// let class = class::of(&sheet, &ClassSettings::default(), Kitchen::default().scales);
    /// // Twelve students and the teacher make a loaf each.
    /// assert_eq!(class.working()[0].result.value, 13.0);
    /// ```
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let mut lines = Vec::new();
        if let Ok(weights) = &self.weights {
            lines.extend(weights.class.working());
            lines.extend(weights.portions.iter().flat_map(BowlPortion::working));
        }
        if let Ok(oven) = &self.oven {
            lines.extend(oven.working());
        }
        lines
    }
}

/// Returns the dough in g for a loaf of the batch and of the class, where they differ by more than
/// 0.5 g. A loaf is what one tin holds; without a tin it is a piece.
#[must_use]
pub fn loaf_difference(sheet: &Sheet, settings: &ClassSettings) -> Option<(Mass, Mass)> {
    let made = loaf(sheet)?;
    let differs = (made.grams() - settings.loaf.grams()).abs() > 0.5;
    differs.then_some((made, settings.loaf))
}

/// The dough that is usual in a tin of the sheet and the class's loaf, where that does not suit the tin.
///
/// ```
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::batch::class;
/// use softcrumb::sheet::examples;
///
/// // A tin of 3.62 l takes some 929 g (3.9 cm³/g, common practice): 450 g stay low in it.
/// let (_, sheet) = examples().remove(0);
/// let (tin, loaf) = class::tin_difference(&sheet, &ClassSettings::default()).unwrap();
/// assert!(tin.grams() > 900.0 && loaf.grams() == 450.0);
/// ```
#[must_use]
pub fn tin_difference(sheet: &Sheet, settings: &ClassSettings) -> Option<(Mass, Mass)> {
    let used = sheet.batch.tin?;
    let one = Tins {
        count: NonZeroU16::MIN,
        ..used.tins
    };
    let filled = filling(one, sheet.bread, used.room, Some(settings.loaf)).ok()?;
    (filled.fullness? != Fullness::Right).then_some((filled.each, settings.loaf))
}

/// When the last load goes in, where dough begun with the first load would wait too long for it.
///
/// ```
/// use softcrumb::engine::class::ClassSettings;
/// use softcrumb::results::batch::class;
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let class = class::of(&sheet, &ClassSettings::default(), Kitchen::default().scales);
/// // Three loads one after the other: the last waits too long.
/// assert!(class::late_load(&class.oven?).is_some());
/// # Ok::<(), softcrumb::engine::class::ClassError>(())
/// ```
#[must_use]
pub fn late_load(oven: &OvenPlan) -> Option<Minutes> {
    let last = oven.loads.last().map_or(Minutes::ZERO, |load| load.goes_in);
    oven.waits_longer_than(LONGEST_WAIT).then_some(last)
}
