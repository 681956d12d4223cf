//! The dough's temperature: what the liquid can do, and what else can.

use super::names::{self, standing_names};
use super::step;
use crate::engine::heat::{DoughRemedy, DoughTemperature, LiquidAnswer, OutOfReach};
use crate::engine::quantity::Temperature;
use crate::results::heat::{DoughOffset, MixerLoad, NamedRemedies, dough_offset, named_remedies};
use crate::text::{
    Advice,
    chart::{capitalized, stopped},
    format,
    format_options::FormatOptions,
    language::text,
    tr, tr_noop,
};

/// A bowl in the morning and what is wanted of it.
#[derive(Clone, Copy, Debug)]
pub struct Morning<'m> {
    /// The bowl.
    pub load: &'m MixerLoad,
    /// What is wanted.
    pub wanted: Temperature,
    /// The remedies with the liquid at its best; `None` until they are worked out.
    pub remedies: Option<&'m [DoughRemedy]>,
    /// The format of numbers.
    pub options: FormatOptions,
}

const SOURCE: &str = tr_noop!(
    "balance of heat, Choi and Okos 1986; friction: printed factors, or this kitchen’s log"
);

/// What the liquids are called.
#[must_use]
pub fn liquid_name(load: &MixerLoad) -> String {
    names::liquid_name(load)
}

/// The liquid at a temperature: "Whole milk at 42.8 °C".
#[must_use]
pub fn liquid_at(load: &MixerLoad, at: Temperature, options: FormatOptions) -> String {
    tr!(
        "{first} at {second}",
        first = capitalized(&names::liquid_name(load)),
        second = format::temperature(at.to_half_degree(), options)
    )
}

/// The temperature that the liquid needs; where none reaches the target, the remedies.
#[must_use]
pub fn liquid(answer: &LiquidAnswer, morning: Morning) -> Advice {
    let degrees = |at| format::temperature(at, morning.options);
    let name = names::liquid_name(morning.load);
    match answer {
        LiquidAnswer::At { liquid, .. } => Advice {
            means: tr!(
                "{first} at {second}.",
                first = capitalized(&name),
                second = degrees(liquid.to_half_degree())
            )
            .into(),
            to_do: tr!(
                "With everything else as it stands, that brings the dough to {value}.",
                value = degrees(morning.wanted)
            )
            .into(),
            source: text(SOURCE).into(),
        },
        LiquidAnswer::OutOfReach(out) => out_of_reach(out, &name, morning),
    }
}

fn out_of_reach(out: &OutOfReach, name: &str, morning: Morning) -> Advice {
    let degrees = |at| format::temperature(at, morning.options);
    let too_cold = out.dough.temperature < morning.wanted;
    let best = if too_cold {
        tr!(
            "At {first}, the warmest that yeast bears, the {name} takes it to {second}.",
            first = degrees(out.best),
            name = name,
            second = degrees(out.dough.temperature)
        )
    } else {
        tr!(
            "Even at {first} the {name} leaves it at {second}.",
            first = degrees(out.best),
            name = name,
            second = degrees(out.dough.temperature)
        )
    };
    Advice {
        means: tr!(
            "No {name} temperature reaches {value}.",
            name = name,
            value = degrees(morning.wanted)
        )
        .into(),
        to_do: match morning.remedies {
            Some(remedies) => format!("{best} {}", ways_out(remedies, morning)).into(),
            None => best.into(),
        },
        source: text(SOURCE).into(),
    }
}

/// The remedies, in one sentence.
fn ways_out(remedies: &[DoughRemedy], morning: Morning) -> String {
    let standing = standing_names(morning.load).unwrap_or_default();
    let joined = |remedies: Vec<DoughRemedy>, between: &str| {
        let all = remedies.iter();
        let steps: Vec<String> = all
            .map(|remedy| step::steps(remedy, &standing, morning.options))
            .collect();
        steps.join(between)
    };
    match named_remedies(remedies) {
        NamedRemedies::Enough(enough) => stopped(&joined(enough, tr!(", or "))),
        NamedRemedies::Together(together) => tr!(
            "{first}; one by itself is not enough. {second}",
            first = capitalized(&joined(together, tr!(", and "))),
            second = tr!("Or let it rise longer at the temperature it has.")
        ),
        NamedRemedies::None => {
            tr!("Choose another dough temperature, or wait until the room is another.").to_owned()
        }
    }
}

/// The temperature of the dough with its range: "about 23.5 °C (21 to 26)".
#[must_use]
pub fn dough_temperature(dough: &DoughTemperature, options: FormatOptions) -> String {
    format::about_temperature(dough.temperature, (dough.low, dough.high), options)
}

/// The temperature of the dough, and how far it is from the wanted one.
#[must_use]
pub fn balance_sum(
    dough: &DoughTemperature,
    wanted: Temperature,
    options: FormatOptions,
) -> String {
    let offset = dough_offset(dough.temperature, wanted);
    let (dough, wanted) = (
        dough_temperature(dough, options),
        format::temperature(wanted, options),
    );
    match offset {
        DoughOffset::AsWanted => tr!(
            "Together they make a dough of {came}, as wanted.",
            came = dough
        ),
        DoughOffset::Below(by) => tr!(
            "Together they make a dough of {came}: {off_by} below the {wanted} wanted.",
            came = dough,
            off_by = format::degrees_off(by, options),
            wanted = wanted
        ),
        DoughOffset::Above(by) => tr!(
            "Together they make a dough of {came}: {off_by} above the {wanted} wanted.",
            came = dough,
            off_by = format::degrees_off(by, options),
            wanted = wanted
        ),
    }
}
