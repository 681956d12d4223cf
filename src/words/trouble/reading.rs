//! What was typed and cannot be read, in words.

use super::Trouble;
use crate::words::{
    manner::{Manner, NumberStyle},
    read::{Limit, Measure, ReadError},
    say, write,
};

impl Trouble for ReadError {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, manner: Manner) -> String {
        match self {
            Self::Empty => say!("Nothing is typed here. Type a number.").to_owned(),
            Self::NotANumber => say!(
                "No number can be made out here. Type digits, such as 120 or {}.",
                bare(0.5, manner)
            ),
            Self::TwoNumbers => say!("There is more than one number here. Keep one.").to_owned(),
            Self::TwoPoints => {
                say!("There is more than one comma or point here. Keep one, for the decimals.")
                    .to_owned()
            }
            Self::Unclear { grouped, decimal } => say!(
                "This may mean {} or {}. Type it as one of these.",
                bare(*grouped, manner),
                bare(*decimal, manner)
            ),
            Self::TooManyDigits { most } => {
                say!(
                    "That is more than {most} digits, more than any scale shows. Type fewer.",
                    most
                )
            }
            Self::Minus => {
                say!("This cannot be less than nothing. Take the minus away.").to_owned()
            }
            Self::OverNought => {
                say!("A fraction needs more than 0 under its line. Type it like 1/2.").to_owned()
            }
            Self::NotWhole => {
                say!("Only whole ones count here. Type a whole number, such as 9.").to_owned()
            }
            Self::NoSuchDivision => super::told::no_such_division(manner),
            Self::UnknownUnit { wanted } => say!(
                "The word with the number is not a unit known here. {}",
                how_to_type(*wanted)
            ),
            Self::OtherUnit { wanted, got } => other_unit(*wanted, *got),
            Self::TooLarge { most } => say!(
                "That is more than can be worked with here. The most is {}.",
                limit(*most, manner)
            ),
            Self::TooSmall { least } => say!(
                "That is less than can be worked with here. The least is {}.",
                limit(*least, manner)
            ),
        }
    }
}

/// A number of another kind than asked for.
fn other_unit(wanted: Measure, got: Measure) -> String {
    let to_do = how_to_type(wanted);
    if wanted == Measure::Mass && got == Measure::Volume {
        say!(
            "A volume does not say what it weighs. Put it on the scale; {}",
            lower(to_do)
        )
    } else {
        say!(
            "That is {}, and {} is wanted here. {to_do}",
            kind(got),
            kind(wanted),
            to_do
        )
    }
}

/// The kind of thing a number counts.
fn kind(measure: Measure) -> &'static str {
    match measure {
        Measure::Mass => say!("a weight"),
        Measure::Share => say!("a percentage"),
        Measure::Temperature => say!("a temperature"),
        Measure::Times => say!("a number of times"),
        Measure::Count => say!("a number of things"),
        Measure::Thickness => say!("a thickness"),
        Measure::Volume => say!("a volume"),
        Measure::Time => say!("a time"),
        Measure::Length => say!("a length"),
        Measure::Pressure => say!("a pressure"),
    }
}

/// How each kind is typed.
fn how_to_type(measure: Measure) -> &'static str {
    match measure {
        Measure::Mass => say!("Type the number alone, or with g, kg, oz or lb."),
        Measure::Share => say!("Type the number alone, or with %."),
        Measure::Temperature => say!("Type the number alone, or with °C or °F."),
        Measure::Times => say!("Type the number alone, or with ×."),
        Measure::Thickness => say!("Type the number alone, or with Pa·s."),
        Measure::Time => say!("Type the number alone, or with min or h."),
        Measure::Length => say!("Type the number alone, or with mm, cm, m, in or ft."),
        Measure::Pressure => say!("Type the number alone, or with hPa."),
        Measure::Count | Measure::Volume => say!("Type the number alone."),
    }
}

/// A sentence to go on with, after a semicolon.
fn lower(sentence: &str) -> String {
    let mut characters = sentence.chars();
    let first = characters
        .next()
        .map(|first| first.to_lowercase().to_string());
    format!("{}{}", first.unwrap_or_default(), characters.as_str())
}

/// The most or least that is taken, printed.
fn limit(limit: Limit, manner: Manner) -> String {
    match limit {
        Limit::Mass(mass) => write::mass(mass, manner),
        Limit::Share(share) => write::share(share, manner),
        Limit::Temperature(temperature) => write::temperature(temperature, manner),
        Limit::Times(factor) => write::factor(factor, manner),
        Limit::Count(count) => write::count(count, manner),
        Limit::Thickness(viscosity) => write::viscosity(viscosity, manner),
        Limit::Minutes(minutes) => write::minutes(minutes, manner),
        Limit::Length(length) => write::thickness(length, manner),
        Limit::Altitude(altitude) => write::altitude(altitude, manner),
        Limit::Pressure(pressure) => write::pressure(pressure, manner),
        Limit::Rate(rate) => write::warming_rate(rate, manner),
        Limit::Degrees(change) => write::degrees_off(change, manner),
    }
}

/// A number as it can be typed.
fn bare(number: f64, manner: Manner) -> String {
    let style = NumberStyle {
        group: None,
        ..manner.numbers
    };
    write::plain(number, 9, style)
}
