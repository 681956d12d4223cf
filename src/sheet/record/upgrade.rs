//! Upgrade: records of earlier versions brought to this one, a function for each step.

use super::error::{RecordError, RecordFault};
use super::tree::Tree;

/// The version this release writes.
pub const VERSION: u32 = 1;

/// One step up: from the version of its place in [`STEPS`], counted from [`OLDEST`], to the next.
type Step = for<'t> fn(Tree<'t>) -> Tree<'t>;

/// The first version any release has written.
const OLDEST: u32 = 1;

/// All steps there are. A change of form adds one here, and a frozen sample to the tests.
const STEPS: &[Step] = &[];

/// Brings `tree`, written as `version`, to [`VERSION`].
pub(super) fn to_newest(tree: Tree<'_>, version: u32) -> Result<Tree<'_>, RecordError> {
    climb(tree, version, STEPS)
}

fn climb<'t>(tree: Tree<'t>, version: u32, steps: &[Step]) -> Result<Tree<'t>, RecordError> {
    if version < OLDEST {
        return Err(RecordError::from(RecordFault::NoSuchVersion).inside("version"));
    }
    let done = usize::try_from(version - OLDEST).unwrap_or(usize::MAX);
    match steps.get(done..) {
        Some(left) => Ok(left.iter().fold(tree, |tree, step| step(tree))),
        None => Err(RecordError::from(RecordFault::Newer { version }).inside("version")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn twice(tree: Tree<'_>) -> Tree<'_> {
        if let Tree::Number(n) = tree {
            Tree::Number(n * 2.0)
        } else {
            tree
        }
    }

    fn plus_one(tree: Tree<'_>) -> Tree<'_> {
        if let Tree::Number(n) = tree {
            Tree::Number(n + 1.0)
        } else {
            tree
        }
    }

    #[test]
    fn every_step_after_its_own_version_is_taken_in_order() {
        let steps: &[Step] = &[twice, plus_one];
        assert_eq!(climb(Tree::Number(5.0), 1, steps), Ok(Tree::Number(11.0)));
        assert_eq!(climb(Tree::Number(5.0), 2, steps), Ok(Tree::Number(6.0)));
        assert_eq!(climb(Tree::Number(5.0), 3, steps), Ok(Tree::Number(5.0)));
        assert!(climb(Tree::Number(5.0), 4, steps).is_err());
        assert!(climb(Tree::Number(5.0), 0, steps).is_err());
    }

    #[test]
    fn the_steps_lead_to_the_version_that_is_written() {
        let steps = u32::try_from(STEPS.len()).unwrap();
        assert_eq!(OLDEST + steps, VERSION);
    }
}
