//! The dough's temperature: what the liquid can do, and what else can.

use super::names::{self, standing_names};
use super::step::step;
use crate::engine::heat::{DoughRemedy, DoughTemperature, LiquidAnswer, OutOfReach};
use crate::engine::kitchen::Bowlful;
use crate::engine::quantity::Temperature;
use crate::words::{Advice, language::text, manner::Manner, message, picture::begun, say, write};

/// A bowl in the morning and what is wanted of it.
#[derive(Clone, Copy, Debug)]
pub struct Morning<'m> {
    /// The bowl.
    pub bowlful: &'m Bowlful,
    /// What is wanted.
    pub wanted: Temperature,
    /// How numbers are told.
    pub manner: Manner,
}

const SOURCE: &str = message!("balance of heat, Choi and Okos 1986; friction: common practice");

/// How many ways out are named in one sentence.
const NAMED: usize = 2;

/// What the liquids are called.
#[must_use]
pub fn liquid_name(bowlful: &Bowlful) -> String {
    names::liquid_name(bowlful)
}

/// What the liquid can do for the dough: how warm it must be, or that it cannot, and what else can.
#[must_use]
pub fn liquid(answer: &LiquidAnswer, morning: Morning) -> Advice {
    let degrees = |at| write::temperature(at, morning.manner);
    let name = names::liquid_name(morning.bowlful);
    match answer {
        LiquidAnswer::At { liquid, .. } => Advice {
            means: say!("{} at {}.", begun(&name), degrees(*liquid)).into(),
            to_do: say!(
                "With everything else as it stands, that brings the dough to {}.",
                degrees(morning.wanted)
            )
            .into(),
            source: text(SOURCE).into(),
        },
        LiquidAnswer::OutOfReach(out) => out_of_reach(out, &name, morning),
    }
}

fn out_of_reach(out: &OutOfReach, name: &str, morning: Morning) -> Advice {
    let degrees = |at| write::temperature(at, morning.manner);
    let too_cold = out.dough.temperature < morning.wanted;
    let best = if too_cold {
        say!(
            "At {}, the warmest that yeast bears, the {name} takes it to {}.",
            degrees(out.best),
            name,
            degrees(out.dough.temperature)
        )
    } else {
        say!(
            "Even at {} the {name} leaves it at {}.",
            degrees(out.best),
            name,
            degrees(out.dough.temperature)
        )
    };
    Advice {
        means: say!(
            "No {name} temperature reaches {}.",
            name,
            degrees(morning.wanted)
        )
        .into(),
        to_do: format!("{best} {}", ways_out(&out.remedies, morning)).into(),
        source: text(SOURCE).into(),
    }
}

/// What else can be done, in one sentence.
fn ways_out(remedies: &[DoughRemedy], morning: Morning) -> String {
    let standing = standing_names(morning.bowlful).unwrap_or_default();
    let said = |remedy: &DoughRemedy| step(remedy.step, &standing, morning.manner);
    let enough: Vec<String> = remedies
        .iter()
        .filter(|remedy| remedy.enough)
        .take(NAMED)
        .map(said)
        .collect();
    if !enough.is_empty() {
        return begun(&format!("{}.", enough.join(say!(", or "))));
    }
    let together: Vec<String> = remedies.iter().take(NAMED).map(said).collect();
    if together.is_empty() {
        return say!("Choose another dough temperature, or wait until the room is another.")
            .to_owned();
    }
    say!(
        "{}; one by itself is not enough. {}",
        begun(&together.join(say!(", and "))),
        say!("Or let it rise longer at the temperature it has.")
    )
}

/// What is left over when all in the bowl is as warm as is wanted.
#[must_use]
pub fn balance_sum(came: &DoughTemperature, wanted: Temperature, manner: Manner) -> String {
    let off = came.temperature - wanted;
    let (came, wanted) = (
        write::temperature(came.temperature, manner),
        write::temperature(wanted, manner),
    );
    let off_by = write::degrees_off(off, manner);
    if off.kelvin().abs() < 0.05 {
        say!("Together they make a dough of {came}, as wanted.", came)
    } else if off.kelvin() < 0.0 {
        say!(
            "Together they make a dough of {came}: {off_by} below the {wanted} wanted.",
            came,
            off_by,
            wanted
        )
    } else {
        say!(
            "Together they make a dough of {came}: {off_by} above the {wanted} wanted.",
            came,
            off_by,
            wanted
        )
    }
}
