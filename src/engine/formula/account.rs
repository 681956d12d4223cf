//! The account of one figure: which line brings how much of it.

use std::borrow::Cow;

use super::figure::Contribution;
use super::water::name;
use super::{Figure, Figures, Form, Formula, LineAt};
use crate::engine::quantity::{Mass, Share};
use crate::engine::working::{Given, Line, given};

/// What one line brings to a figure.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// Where the line stands.
    pub at: LineAt,
    /// What it is called.
    pub food: Cow<'static, str>,
    /// The weight of the line.
    pub mass: Mass,
    /// How much of the figure a gram of it brings.
    pub brings: Share,
}

/// How one figure of a dough comes about.
#[derive(Clone, Debug, PartialEq)]
pub struct Account {
    /// Which figure.
    pub figure: Figure,
    /// The lines that bring some of it, in the order of the formula.
    pub entries: Vec<Entry>,
    /// The steam that is missing from it.
    pub steam: Mass,
    /// The figure.
    pub mass: Mass,
    /// All flour of the dough.
    pub flour: Mass,
    /// The figure on the flour, where there is flour.
    pub share: Option<Share>,
}

impl Account {
    /// How a figure of a formula's dough comes about.
    #[must_use]
    pub fn of(formula: &Formula, figure: Figure, form: Form) -> Self {
        let figures = Figures::of(formula, form);
        let mass = figures.mass(figure);
        let flour = figures.mass(Figure::Flour);
        Self {
            figure,
            entries: entries(formula, figure, form),
            steam: figures.steam_missing_from(figure),
            mass,
            flour,
            share: mass.share_of(flour),
        }
    }

    /// How it came about: the sum, and the share of the flour where there is flour.
    #[must_use]
    pub fn working(&self) -> Vec<Line> {
        let mut lines = vec![sum("m", "", &self.entries, self.steam, self.mass)];
        if let Some(share) = self.share {
            lines.push(Line {
                rule: "100 × m / F".into(),
                with: vec![
                    given("m", "", self.mass.grams(), "g"),
                    given("F", "flour", self.flour.grams(), "g"),
                ],
                gives: given("p", "on flour", share.percent(), "%"),
                source: "by definition".into(),
            });
        }
        lines
    }
}

fn entries(formula: &Formula, figure: Figure, form: Form) -> Vec<Entry> {
    let mut entries = Vec::new();
    for (part, own) in formula.parts.iter().enumerate() {
        if !own.kind.in_dough() {
            continue;
        }
        for (line, written) in own.lines.iter().enumerate() {
            entries.push(Entry {
                at: LineAt { part, line },
                food: name(&written.food),
                mass: form.mass(written),
                brings: figure.in_gram(&Contribution::new(own.kind, written)),
            });
        }
    }
    entries.retain(|entry| entry.mass > Mass::ZERO && entry.brings > Share::NONE);
    entries
}

/// `m1 × c1 + m2 × c2 + … − S`; a share that is the whole is left out of its term.
pub(super) fn sum(
    letter: &'static str,
    of: &'static str,
    entries: &[Entry],
    steam: Mass,
    gives: Mass,
) -> Line {
    let mut rule = Vec::new();
    let mut with: Vec<Given> = Vec::new();
    for (count, entry) in entries.iter().enumerate() {
        let (weight, content) = (format!("m{}", count + 1), format!("c{}", count + 1));
        with.push(given(
            weight.clone(),
            entry.food.clone(),
            entry.mass.grams(),
            "g",
        ));
        if entry.brings == Share::WHOLE {
            rule.push(weight);
        } else {
            with.push(given(content.clone(), "of it", entry.brings.fraction(), ""));
            rule.push(format!("{weight} × {content}"));
        }
    }
    if rule.is_empty() {
        rule.push("0".to_owned());
    }
    let mut rule = rule.join(" + ");
    if steam > Mass::ZERO {
        rule.push_str(" − S");
        with.push(given("S", "steam lost", steam.grams(), "g"));
    }
    Line {
        rule: rule.into(),
        with,
        gives: given(letter, of, gives.grams(), "g"),
        source: "composition of each ingredient".into(),
    }
}
