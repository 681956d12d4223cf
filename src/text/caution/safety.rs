//! The usual safety cautions, each at the step where it matters.

use super::Advice;
use super::advice::{COMMON_PRACTICE, celsius};
use crate::text::{format_options::FormatOptions, language::text, tr, tr_noop};

/// Ends every safety caution.
pub const LOCAL_RULES: &str =
    tr_noop!("Your local food-safety rules and the maker’s instructions come first.");

/// A step of the work with a specific risk.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Hazard {
    /// Pouring boiling water on flour.
    Scalding,
    /// Cooling a cooked paste.
    CoolingPaste,
    /// Keeping paste, preferment and milk or egg doughs.
    KeepingCold,
    /// Tasting dough, handling flour and yeast.
    RawDough,
    /// Running a mixer.
    Mixing,
    /// Taking bread out of the oven.
    Baking,
    /// Melting chocolate, pouring syrup.
    HotChocolate,
    /// Giving bread to other people.
    Allergens,
}

impl Hazard {
    /// Every step, in the order of the work.
    pub const ALL: [Self; 8] = [
        Self::Scalding,
        Self::CoolingPaste,
        Self::KeepingCold,
        Self::RawDough,
        Self::Mixing,
        Self::Baking,
        Self::HotChocolate,
        Self::Allergens,
    ];
}

/// Returns the caution of a step.
#[must_use]
pub fn safety(step: Hazard, options: FormatOptions) -> Advice {
    let (means, to_do, source) = match step {
        Hazard::Scalding => SCALDING,
        Hazard::CoolingPaste => return cooling(options),
        Hazard::KeepingCold => return keeping(options),
        Hazard::RawDough => RAW,
        Hazard::Mixing => MIXING,
        Hazard::Baking => BAKING,
        Hazard::HotChocolate => CHOCOLATE,
        Hazard::Allergens => ALLERGENS,
    };
    Advice::new(text(means), text(to_do), source)
}

/// Returns the caution of a step in one line.
#[must_use]
pub fn safety_line(step: Hazard, options: FormatOptions) -> String {
    let line = match step {
        Hazard::Scalding => tr_noop!("Steam burns: deep bowl, lift the lid on the far side first"),
        Hazard::CoolingPaste => {
            tr_noop!("Cool it fast and covered: germs grow while it is lukewarm")
        }
        Hazard::KeepingCold => {
            let coldest = celsius(5.0, options);
            return tr!("Keep it covered at {value} or colder", value = coldest);
        }
        Hazard::RawDough => tr_noop!("Raw flour and egg: do not taste the dough"),
        Hazard::Mixing => tr_noop!("Turning hook: fingers, sleeves and hair away"),
        Hazard::Baking => tr_noop!("Hot tin, hotter filling: dry gloves, and let it cool"),
        Hazard::HotChocolate => tr_noop!("Hot chocolate sticks and burns: no bare hands"),
        Hazard::Allergens => tr_noop!("Read every packet, and tell everyone before they eat"),
    };
    text(line).to_owned()
}

/// First aid for burns.
const BURNS: &str = tr_noop!("Kent Fire and Rescue Service, First aid: burns and scalds");

type CautionTexts = (&'static str, &'static str, &'static str);

const SCALDING: CautionTexts = (
    tr_noop!("Boiling water, its steam and fresh paste burn skin at once."),
    tr_noop!(
        "Use a deep bowl on a flat, dry place, pour away from you, stir with a long spoon, and lift a \
     lid on the far side first. Cool a burn under cool running water for 20 minutes, and get help for a large one."
    ),
    BURNS,
);

/// Source of the limits: FDA, *Food Code 2022*, section 3-501.14(A).
fn cooling(options: FormatOptions) -> Advice {
    Advice::new(
        tr!(
            "Cooked flour paste is moist and mild: spores that outlive the scald can grow in it while \
         it is lukewarm."
        ),
        tr!(
            "Spread it thin, cover it, and cool it from {first} to {second} within 2 hours and to {third} within 6 \
             hours in all. Throw it away if it took longer.",
            first = celsius(57.0, options),
            second = celsius(21.0, options),
            third = celsius(5.0, options)
        ),
        tr!("FDA, Food Code 2022, section 3-501.14(A)"),
    )
}

/// Source of the limit: FDA, *Food Code 2022*, section 3-501.16(A).
fn keeping(options: FormatOptions) -> Advice {
    Advice::new(
        tr!("Paste, preferment, and doughs with milk or eggs do not keep in a warm room."),
        tr!(
            "Keep them covered at {value} or colder and take them out only for as long as the work \
             needs.",
            value = celsius(5.0, options)
        ),
        tr!("FDA, Food Code 2022, section 3-501.16(A)"),
    )
}

const RAW: CautionTexts = (
    tr_noop!(
        "Raw flour and raw eggs can carry germs, and a scald does not make all of a paste safe. \
     Yeast and flour dust can trouble the chest."
    ),
    tr_noop!(
        "Do not taste dough before it is baked, wash hands and tools after it, and tip flour gently."
    ),
    tr_noop!("FDA, Flour Is a Raw Food and Other Safety Facts (2024); flour dust: common practice"),
);

const MIXING: CautionTexts = (
    tr_noop!("A turning hook does not stop for fingers, sleeves or hair."),
    tr_noop!(
        "Keep the guard shut and tie hair back. Switch off and pull the plug before you scrape the \
     bowl or reach in."
    ),
    tr_noop!("Provision and Use of Work Equipment Regulations 1998 (UK), regulation 11"),
);

const BAKING: CautionTexts = (
    tr_noop!("Tins and oven air burn, and filling stays hotter than the crumb for a long while."),
    tr_noop!(
        "Use dry gloves, stand aside as you open the oven door, and let filled pieces cool before \
     anyone bites. Bread is done by the temperature in its middle, not by the clock."
    ),
    COMMON_PRACTICE,
);

const CHOCOLATE: CautionTexts = (
    tr_noop!("Melted chocolate and sugar syrup stick to skin and go on burning."),
    tr_noop!(
        "Keep children and bare hands away, keep the water bath below a simmer, never heat a tied \
     bag, and cool a burn under cool running water for 20 minutes."
    ),
    BURNS,
);

const ALLERGENS: CautionTexts = (
    tr_noop!(
        "Flour, milk, eggs, nuts, soya and sesame make some people very ill, even in traces. This \
     list goes by what is in the formula, not by what else was on the table or the packet."
    ),
    tr_noop!(
        "Read every packet, clean tools between doughs, and tell everyone who eats before they eat."
    ),
    tr_noop!("Regulation (EU) 1169/2011, article 9 and annex II"),
);
