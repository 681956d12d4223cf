//! What a formula says of its rises, in a record.

use crate::engine::rise::{RiseSettings, Stated, YeastActivity};

use super::error::{RecordError, RecordFault};
use super::fields::{Fields, factor, minutes, share, temperature};
use super::print::Writer;
use super::tree::Tree;

/// Writes them down.
pub(super) fn write(rises: &RiseSettings) -> Tree<'static> {
    let stated = |stated: Stated| {
        Writer::new()
            .number("minutes", stated.time.minutes())
            .number("at_c", stated.at.celsius())
            .done()
    };
    Writer::new()
        .tree("bulk", stated(rises.bulk))
        .number("rest_min", rises.rest.minutes())
        .tree("proof", stated(rises.proof))
        .maybe("bulk_place_c", rises.bulk_place.map(|at| at.celsius()))
        .maybe("proof_place_c", rises.proof_place.map(|at| at.celsius()))
        .maybe_tree("dough", rises.dough.map(|dough| write_dough(&dough)))
        .number("bench_min", rises.bench.minutes())
        .number("fridge_min", rises.fridge.minutes())
        .number("volume_times", rises.volume.number())
        .done()
}

fn write_dough(dough: &YeastActivity) -> Tree<'static> {
    Writer::new()
        .number("yeast_share", dough.yeast.fraction())
        .number("sugar_share", dough.sugar.fraction())
        .number("salt_share", dough.salt.fraction())
        .done()
}

/// Reads them; what is not there is as usual.
pub(super) fn read(tree: &Tree) -> Result<RiseSettings, RecordError> {
    let fields = Fields::of(
        tree,
        &[
            "bulk",
            "rest_min",
            "proof",
            "bulk_place_c",
            "proof_place_c",
            "dough",
            "bench_min",
            "fridge_min",
            "volume_times",
        ],
    )?;
    let usual = RiseSettings::default();
    Ok(RiseSettings {
        bulk: fields.maybe("bulk", read_stated)?.unwrap_or(usual.bulk),
        rest: fields.maybe("rest_min", minutes)?.unwrap_or(usual.rest),
        proof: fields.maybe("proof", read_stated)?.unwrap_or(usual.proof),
        dough: fields.maybe("dough", read_dough)?,
        bulk_place: fields.maybe("bulk_place_c", temperature)?,
        proof_place: fields.maybe("proof_place_c", temperature)?,
        bench: fields.maybe("bench_min", minutes)?.unwrap_or(usual.bench),
        fridge: fields.maybe("fridge_min", minutes)?.unwrap_or(usual.fridge),
        volume: fields
            .maybe("volume_times", factor)?
            .unwrap_or(usual.volume),
    })
}

fn read_stated(tree: &Tree) -> Result<Stated, RecordError> {
    let fields = Fields::of(tree, &["minutes", "at_c"])?;
    Ok(Stated {
        time: fields.needed("minutes", minutes)?,
        at: fields.needed("at_c", temperature)?,
    })
}

/// A dough without yeast has no known rise.
fn read_dough(tree: &Tree) -> Result<YeastActivity, RecordError> {
    let fields = Fields::of(tree, &["yeast_share", "sugar_share", "salt_share"])?;
    let [yeast, sugar, salt] =
        ["yeast_share", "sugar_share", "salt_share"].map(|key| fields.needed(key, share));
    YeastActivity::of(yeast?, sugar?, salt?)
        .map_err(|_| RecordError::from(RecordFault::NoYeast).inside("yeast_share"))
}
