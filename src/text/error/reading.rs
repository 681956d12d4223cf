//! Messages for text that cannot be read as a number.

use super::ErrorText;
use crate::text::{
    format,
    format_options::{FormatOptions, NumberStyle},
    read::{Limit, Measure, ReadError},
    tr,
};

impl ErrorText for ReadError {
    #[allow(clippy::too_many_lines, reason = "one arm for each trouble")]
    fn sentence(&self, options: FormatOptions) -> String {
        match self {
            Self::Empty => tr!("Nothing is typed here. Type a number.").to_owned(),
            Self::NotANumber => tr!(
                "No number can be made out here. Type digits, such as 120 or {value}.",
                value = bare(0.5, options)
            ),
            Self::TwoNumbers => tr!("There is more than one number here. Keep one.").to_owned(),
            Self::TwoPoints => {
                tr!("There is more than one comma or point here. Keep one, for the decimals.")
                    .to_owned()
            }
            Self::Unclear { grouped, decimal } => tr!(
                "This may mean {first} or {second}. Type it as one of these.",
                first = bare(*grouped, options),
                second = bare(*decimal, options)
            ),
            Self::TooManyDigits { most } => {
                tr!(
                    "That is more than {most} digits, more than any scale shows. Type fewer.",
                    most = most
                )
            }
            Self::Minus => tr!("This cannot be less than nothing. Remove the minus.").to_owned(),
            Self::OverNought => {
                tr!("A fraction needs more than 0 under its line. Type it like 1/2.").to_owned()
            }
            Self::NotWhole => {
                tr!("Only whole ones count here. Type a whole number, such as 9.").to_owned()
            }
            Self::UnknownUnit { wanted } => tr!(
                "The word with the number is not a unit known here. {value}",
                value = how_to_type(*wanted)
            ),
            Self::OtherUnit { wanted, got } => other_unit(*wanted, *got),
            Self::TooLarge { most } => tr!(
                "That is more than can be worked with here. The most is {value}.",
                value = limit(*most, options)
            ),
            Self::TooSmall { least } => tr!(
                "That is less than can be worked with here. The least is {value}.",
                value = limit(*least, options)
            ),
        }
    }
}

/// Says that the unit measures something else.
fn other_unit(wanted: Measure, got: Measure) -> String {
    let to_do = how_to_type(wanted);
    if wanted == Measure::Mass && got == Measure::Volume {
        tr!(
            "A volume does not say what it weighs. Put it on the scale; {value}",
            value = lower(to_do)
        )
    } else {
        tr!(
            "That is {first}, and {second} is wanted here. {to_do}",
            first = kind(got),
            second = kind(wanted),
            to_do = to_do
        )
    }
}

/// Names what a number measures.
fn kind(measure: Measure) -> &'static str {
    match measure {
        Measure::Mass => tr!("a weight"),
        Measure::Share => tr!("a percentage"),
        Measure::Temperature => tr!("a temperature"),
        Measure::Times => tr!("a number of times"),
        Measure::Count => tr!("a number of things"),
        Measure::Thickness => tr!("a thickness"),
        Measure::Volume => tr!("a volume"),
        Measure::Time => tr!("a time"),
        Measure::Length => tr!("a length"),
        Measure::Pressure => tr!("a pressure"),
    }
}

/// Returns an example of each kind.
fn how_to_type(measure: Measure) -> &'static str {
    match measure {
        Measure::Mass => tr!("Type the number alone, or with g, kg, oz or lb."),
        Measure::Share => tr!("Type the number alone, or with %."),
        Measure::Temperature => tr!("Type the number alone, or with °C or °F."),
        Measure::Times => tr!("Type the number alone, or with ×."),
        Measure::Thickness => tr!("Type the number alone, or with Pa·s."),
        Measure::Time => tr!("Type the number alone, or with min or h."),
        Measure::Length => tr!("Type the number alone, or with mm, cm, m, in or ft."),
        Measure::Pressure => tr!("Type the number alone, or with hPa."),
        Measure::Count | Measure::Volume => tr!("Type the number alone."),
    }
}

/// Appends a clause after a semicolon.
fn lower(sentence: &str) -> String {
    let mut characters = sentence.chars();
    let first = characters
        .next()
        .map(|first| first.to_lowercase().to_string());
    format!("{}{}", first.unwrap_or_default(), characters.as_str())
}

/// Formats a limit.
fn limit(limit: Limit, options: FormatOptions) -> String {
    match limit {
        Limit::Mass(mass) => format::mass(mass, options),
        Limit::Share(share) => format::share(share, options),
        Limit::Temperature(temperature) => format::temperature(temperature, options),
        Limit::Times(factor) => format::factor(factor, options),
        Limit::Count(count) => format::count(count, options),
        Limit::Thickness(viscosity) => format::viscosity(viscosity, options),
        Limit::Minutes(minutes) => format::minutes(minutes, options),
        Limit::Length(length) => format::thickness(length, options),
        Limit::Altitude(altitude) => format::altitude(altitude, options),
        Limit::Pressure(pressure) => format::pressure(pressure, options),
        Limit::Rate(rate) => format::warming_rate(rate, options),
        Limit::Degrees(change) => format::degrees_off(change, options),
    }
}

/// Formats a number as it can be typed.
fn bare(number: f64, options: FormatOptions) -> String {
    let style = NumberStyle {
        group: None,
        ..options.numbers
    };
    format::plain(number, 9, style)
}
