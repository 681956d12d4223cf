//! The balance of the bowl: one bar for each who brings heat or takes it, and the same in words.

use crate::engine::formula::{Formula, PartKind};
use crate::engine::quantity::Heat;
use crate::results::heat::{HeatShare, HeatSource, MixerLoad};
use crate::text::{format, format_options::FormatOptions, heat, tr};

use super::sentence::{capitalized, listed};

/// One bar.
#[derive(Clone, Debug, PartialEq)]
pub struct BalanceBar {
    /// Who.
    pub name: String,
    /// Its temperature as it goes in; empty for what has no mass.
    pub at: String,
    /// The heat, with its sign.
    pub heat: String,
    /// The part it is, where it is one.
    pub part: Option<PartKind>,
    /// Where the bar begins, on a field of 100 with nought in the middle.
    pub x: f64,
    /// How wide it is.
    pub width: f64,
    /// Whether it brings heat.
    pub brings: bool,
}

/// Half of the field.
const HALF: f64 = 50.0;

/// The bars, in the order things stand in the formula, then bowl, flour and mixer.
#[must_use]
pub fn balance_bars(
    shares: &[HeatShare],
    formula: &Formula,
    bowlful: &MixerLoad,
    options: FormatOptions,
) -> Vec<BalanceBar> {
    let most = shares
        .iter()
        .map(|share| share.heat.joules().abs())
        .fold(1.0, f64::max);
    shares
        .iter()
        .map(|share| {
            let width = HALF * share.heat.joules().abs() / most;
            let brings = share.heat >= Heat::ZERO;
            BalanceBar {
                name: heat::giver(share.giver, formula, bowlful),
                at: share
                    .temperature
                    .map_or_else(String::new, |at| format::temperature(at, options)),
                heat: format::heat(share.heat, options),
                part: kind(share.giver, formula),
                x: if brings { HALF } else { HALF - width },
                width,
                brings,
            }
        })
        .collect()
}

fn kind(giver: HeatSource, formula: &Formula) -> Option<PartKind> {
    if let HeatSource::Part(part) = giver {
        formula.parts.get(part).map(|own| own.kind)
    } else {
        None
    }
}

/// The balance in words: who takes heat, and who brings it.
#[must_use]
pub fn bowl_balance(
    shares: &[HeatShare],
    formula: &Formula,
    bowlful: &MixerLoad,
    options: FormatOptions,
) -> String {
    let wording = |brings: bool| -> Option<String> {
        let some: Vec<String> = shares
            .iter()
            .filter(|share| (share.heat >= Heat::ZERO) == brings)
            .map(|share| {
                let name = heat::giver(share.giver, formula, bowlful);
                format!("{name} {}", format::heat(share.heat, options))
            })
            .collect();
        listed(&some)
    };
    let takes = wording(false).map(|all| tr!("Heat is taken by {all}.", all = all));
    let brings = wording(true).map(|all| tr!("It is brought by {all}.", all = all));
    let sentences: Vec<String> = [takes, brings].into_iter().flatten().collect();
    capitalized(&sentences.join(" "))
}
