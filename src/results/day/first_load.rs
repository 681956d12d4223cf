//! The steps of one load of a class: what a student does with the own loaf, without the other loads.

use super::bench_list::ListedStep;
use super::bench_step::BenchStep;
use crate::engine::plan::{Step, StepKind};
use crate::engine::quantity::{Instant, Minutes};

/// The steps of the first load alone: a list without the doughs, proofs and bakes of later loads. The
/// bread cools from when its own load is out.
///
/// ```
/// use softcrumb::engine::plan::StepKind;
/// use softcrumb::results::day::{first_load, usual_list};
/// use softcrumb::sheet::{Kitchen, examples};
///
/// let (_, sheet) = examples().remove(0);
/// let list = usual_list(&sheet, &Kitchen::default(), None);
/// // One load alone is the first.
/// assert_eq!(first_load(list.clone()), list);
/// ```
#[must_use]
pub fn first_load(mut list: Vec<ListedStep>) -> Vec<ListedStep> {
    let ends = |of: StepKind| {
        let all = list.iter().filter(|one| one.step.at.work == of);
        all.map(|one| one.timed.ends).next_back()
    };
    let own = ends(StepKind::Bake).or_else(|| last_run(&list));
    let sooner = match (own, ends(StepKind::LaterBake)) {
        (Some(own), Some(last)) => last.since(own),
        _ => Minutes::ZERO,
    };
    list.retain(|one| !is_later(one.step.at.work));
    for one in &mut list {
        one.runs.retain(|runs| !is_later(runs.at.work));
        if one.step.at.work == StepKind::Cool {
            let timed = &mut one.timed;
            for at in [&mut timed.begins, &mut timed.ends, &mut timed.hands_until] {
                *at = at.earlier(sooner);
            }
            if let BenchStep::Cool { cut, .. } = &mut one.figures {
                *cut = cut.earlier(sooner);
            }
        }
    }
    list
}

/// When the last phase of the bake that runs by itself is over.
fn last_run(list: &[ListedStep]) -> Option<Instant> {
    let runs = list.iter().flat_map(|one| &one.runs);
    let bakes = runs.filter(|runs| runs.at.work == StepKind::Bake);
    bakes.map(|runs| runs.timed.ends).next_back()
}

/// Whether a kind of step belongs to a load after the first.
#[must_use]
pub const fn is_later(kind: StepKind) -> bool {
    matches!(
        kind,
        StepKind::LaterDough | StepKind::LaterProof | StepKind::Refill | StepKind::LaterBake
    )
}

/// How much later than the first a load goes into the oven; `None` for a step of the first load.
#[must_use]
pub fn later_than_first(step: &Step, list: &[ListedStep]) -> Option<Minutes> {
    let begins = |is_one: &dyn Fn(&Step) -> bool| {
        let mut found = list.iter().filter(|one| is_one(&one.step));
        found.next().map(|one| one.timed.begins)
    };
    let later = |one: &Step| one.at.work == StepKind::LaterBake && one.at.of == step.at.of;
    let first = begins(&|one| one.at.work == StepKind::Bake)?;
    is_later(step.at.work)
        .then(|| begins(&later))
        .flatten()
        .map(|begins| begins.since(first))
}

/// The step at which a load's own dough begins: what is before it is made for all loads together.
/// Returns its place in the list.
#[must_use]
pub fn load_begins(list: &[ListedStep]) -> Option<usize> {
    let begins = |one: &ListedStep| matches!(one.step.at.work, StepKind::WarmUp | StepKind::Mix);
    list.iter().position(begins)
}
