//! The formula's results: figures, water, percentages, cautions, targets.

use serde_json::{Map, Value, json};
use softcrumb::engine::formula::{
    Caution, Compared, Contributor, Figure, Figures, FormulaError, LineAt, LinePair, PartTotals,
    Percentage, Reached, Sides, Water, WaterLedger,
};
use softcrumb::engine::quantity::Share;

use super::weights;
use crate::error::or_error;
use crate::evaluation::Evaluation;
use crate::spelling::snake;

pub(super) fn to_json(evaluation: &Evaluation) -> Value {
    let results = &evaluation.formula;
    let lines = results.lines.iter().map(|line| {
        let share = |of: &Result<Percentage, FormulaError>| {
            or_error(of, "formula", |percentage| {
                json!(percentage.share.fraction())
            })
        };
        json!({
            "stream": line.at.part, "line": line.at.line,
            "of_all_flour": share(&line.of_all_flour), "of_own_stream": share(&line.of_own_part),
        })
    });
    let totals = results.parts.iter().map(|part| &part.totals);
    let water_of = |ledger| or_error(ledger, "formula", water);
    let cautions = |all: &Vec<Caution>| json!(all.iter().map(caution).collect::<Vec<_>>());
    json!({
        "as_written": { "figures": figures(&results.as_written), "water": water_of(&results.water.as_written) },
        "as_made": { "figures": figures(&results.as_made), "water": water_of(&results.water.as_made) },
        "lines": lines.collect::<Vec<_>>(),
        "streams": totals.map(|s| or_error(s, "formula", part)).collect::<Vec<_>>(),
        "cautions": or_error(&results.cautions, "formula", cautions),
        "compared": evaluation.compared.as_ref().map(compared),
        "targets": evaluation.targets.iter().map(|t| or_error(t, "targets", reached)).collect::<Vec<_>>(),
        "stream_shares": evaluation.part_shares.iter()
            .map(|s| or_error(s, "stream_shares", |formula| json!({ "lines_g": weights(formula) })))
            .collect::<Vec<_>>(),
    })
}

fn compared(compared: &Compared) -> Value {
    let mut figures = Map::new();
    for (figure, both) in &compared.figures {
        figures.insert(snake(figure), sides(both));
    }
    let at = |at: Option<LineAt>| at.map(|at| json!([at.part, at.line]));
    let line = |pair: &LinePair| {
        json!({
            "old_at": at(pair.old_at), "new_at": at(pair.new_at), "sides": sides(&pair.sides),
        })
    };
    json!({ "figures": figures, "lines": compared.lines.iter().map(line).collect::<Vec<_>>() })
}

fn sides(sides: &Sides) -> Value {
    json!({
        "old_g": sides.old.grams(), "new_g": sides.new.grams(), "change_g": sides.change().grams(),
        "old_share": sides.old_share.map(Share::fraction),
        "new_share": sides.new_share.map(Share::fraction),
        "change_points": sides.share_change().map(|change| change.points()),
    })
}

fn figures(figures: &Figures) -> Value {
    let mut all = Map::new();
    for figure in Figure::ALL {
        let share = figures.share(figure).ok().map(|share| share.fraction());
        let value = json!({ "mass_g": figures.mass(figure).grams(), "share": share });
        all.insert(snake(&figure), value);
    }
    let moisture = figures.moisture().map(|share| share.fraction());
    all.insert("moisture".to_owned(), json!({ "share": moisture }));
    Value::Object(all)
}

fn water(ledger: &WaterLedger) -> Value {
    let one =
        |water: Water| json!({ "mass_g": water.mass.grams(), "share": water.share.fraction() });
    json!({
        "flour_g": ledger.flour.grams(),
        "dough_g": ledger.dough.grams(),
        "poured": one(ledger.poured),
        "liquids": one(ledger.liquids),
        "true": one(ledger.true_water),
        "total": one(ledger.total),
        "moisture_share": ledger.moisture.fraction(),
        "in_paste": one(ledger.in_paste),
        "in_preferment": one(ledger.in_preferment),
        "free": one(ledger.free),
        "steam_g": ledger.steam.grams(),
        "from": ledger.from.iter().map(contributor).collect::<Vec<_>>(),
    })
}

fn contributor(one: &Contributor) -> Value {
    json!({
        "stream": one.at.part, "line": one.at.line, "name": one.food, "mass_g": one.mass.grams(),
        "water_g": one.water.grams(), "is_flour": one.is_flour,
    })
}

fn part(totals: &PartTotals) -> Value {
    json!({
        "mass_g": totals.mass.grams(), "flour_g": totals.flour.grams(),
        "liquid_g": totals.liquid.grams(), "share": totals.share.fraction(),
        "flour_share": totals.flour_share.fraction(),
    })
}

fn reached(reached: &Reached) -> Value {
    json!({
        "before_g": reached.before.grams(), "after_g": reached.after.grams(),
        "lines_g": weights(&reached.formula),
    })
}

fn caution(caution: &Caution) -> Value {
    let kind = snake(caution);
    match caution {
        Caution::Outside { usual, value } => json!({
            "kind": kind, "figure": snake(&usual.figure), "low_share": usual.low.fraction(),
            "high_share": usual.high.fraction(), "share": value.fraction(), "source": usual.source,
        }),
        Caution::SugarSlowsYeast { sugar, .. } => {
            json!({ "kind": kind, "share": sugar.fraction() })
        }
        Caution::SaltSlowsYeast { salt, .. } => json!({ "kind": kind, "share": salt.fraction() }),
        Caution::MuchMilkPowder { powder, .. } => {
            json!({ "kind": kind, "share": powder.fraction() })
        }
        Caution::PasteTooDry {
            part,
            water_to_starch,
            ..
        } => json!({
            "kind": kind, "stream": part, "water_to_starch": water_to_starch.fraction(),
        }),
        Caution::RawFlour => json!({ "kind": kind }),
    }
}
