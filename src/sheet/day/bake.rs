//! A bake: what was really done, and what it noted.

use super::findings::{Findings, WeighedOtherwise};
use crate::engine::learn::Observation;
use crate::engine::plan::{Edit, StepAt, StepKind};
use crate::engine::quantity::{Minutes, Temperature};
use crate::sheet::{Id, Moment};

/// A step as it really was.
#[derive(Clone, Debug, PartialEq)]
pub struct DoneStep {
    /// Which step.
    pub step: StepAt,
    /// When it began.
    pub began: Moment,
    /// When it ended; `None` while it is under way.
    pub ended: Option<Moment>,
    /// How long the bench expected it to last as it began; `None` where it had no timer.
    pub expected: Option<Minutes>,
}

/// A bake.
#[derive(Clone, Debug, PartialEq)]
pub struct Bake {
    /// The name of the record.
    pub id: Id,
    /// The formula it was made by.
    pub formula: Option<Id>,
    /// What the formula was called then.
    pub name: String,
    /// The kitchen it was made in.
    pub kitchen: String,
    /// When it began.
    pub began: Moment,
    /// How warm the room was.
    pub room: Option<Temperature>,
    /// What can be learnt from.
    pub noted: Observation,
    /// What was found and teaches nothing by itself.
    pub found: Findings,
    /// The steps.
    pub steps: Vec<DoneStep>,
    /// What was weighed otherwise than asked; at most [`Bake::MOST_WEIGHED`].
    pub weighed: Vec<WeighedOtherwise>,
    /// The baker's own words; at most [`Bake::NOTE_LENGTH`] characters.
    pub note: String,
    /// Whether a photo is stored beside it.
    pub photo: bool,
}

impl Bake {
    /// The most characters a note may have.
    pub const NOTE_LENGTH: usize = 2000;
    /// The most steps there may be.
    pub const MOST_STEPS: usize = crate::engine::plan::Plan::MOST + Edit::MOST;
    /// The most weights there may be that were not as asked.
    pub const MOST_WEIGHED: usize = 60;
    /// The most characters a photo may have, as the text of a `data:` address: 60 KB.
    pub const PHOTO_LENGTH: usize = 80_000;

    /// A new bake.
    #[must_use]
    pub const fn new(id: Id, began: Moment) -> Self {
        Self {
            id,
            formula: None,
            name: String::new(),
            kitchen: String::new(),
            began,
            room: None,
            noted: Observation {
                unmixed: None,
                warmed_for: None,
                dough: None,
                mixing: None,
                bowl: None,
                oven_loss: None,
                bulk: None,
                proof: None,
                bake: None,
                steam: None,
                cooling: None,
            },
            found: Findings::NONE,
            steps: Vec::new(),
            weighed: Vec::new(),
            note: String::new(),
            photo: false,
        }
    }

    /// Whether it is a bake of the formula of this id; of a copy without one, by its name.
    #[must_use]
    pub fn is_of(&self, formula: Option<&Id>, name: &str) -> bool {
        self.formula.as_ref() == formula && (formula.is_some() || self.name == name)
    }

    /// Whether a text is a photo that may be stored: a small picture, and nothing else.
    #[must_use]
    pub fn is_photo(text: &str) -> bool {
        let kinds = ["data:image/jpeg;base64,", "data:image/webp;base64,"];
        let body = kinds.iter().find_map(|kind| text.strip_prefix(kind));
        text.len() <= Self::PHOTO_LENGTH
            && body.is_some_and(|body| {
                let letters = body.trim_end_matches('=').bytes();
                let mut letters = letters.peekable();
                letters.peek().is_some()
                    && letters
                        .all(|byte| byte.is_ascii_alphanumeric() || matches!(byte, b'+' | b'/'))
            })
    }

    /// When a step began; `None` where it has not.
    #[must_use]
    pub fn began(&self, step: StepAt) -> Option<Moment> {
        let mut done = self.steps.iter();
        done.find(|done| done.step == step).map(|done| done.began)
    }

    /// When it went into the oven; `None` where it never did.
    #[must_use]
    pub fn in_oven(&self) -> Option<Moment> {
        let mut done = self.steps.iter();
        done.find(|done| done.step.work == StepKind::Bake)
            .map(|done| done.began)
    }

    /// When it went into the oven; when it began, where it never did.
    #[must_use]
    pub fn baked(&self) -> Moment {
        self.in_oven().unwrap_or(self.began)
    }

    /// Notes how long a step that has begun is expected to last.
    pub fn expect(&mut self, step: StepAt, lasts: Minutes) {
        for done in self.steps.iter_mut().filter(|done| done.step == step) {
            done.expected = Some(lasts);
        }
    }

    /// Whether a step is over.
    #[must_use]
    pub fn is_over(&self, step: StepAt) -> bool {
        let mut done = self.steps.iter();
        done.any(|done| done.step == step && done.ended.is_some())
    }

    /// Notes that a step begins; one that has begun already keeps its beginning.
    pub fn begin(&mut self, step: StepAt, now: Moment) {
        let there = self.steps.iter().any(|done| done.step == step);
        if !there && self.steps.len() < Self::MOST_STEPS {
            self.steps.push(DoneStep {
                step,
                began: now,
                ended: None,
                expected: None,
            });
        }
    }

    /// Notes that a step ends; one that had not begun begins and ends at once.
    pub fn end(&mut self, step: StepAt, now: Moment) {
        self.begin(step, now);
        for done in self.steps.iter_mut().filter(|done| done.step == step) {
            if done.ended.is_none() {
                done.ended = Some(if now < done.began { done.began } else { now });
            }
        }
    }

    /// Notes when a step that has begun really began; what ended before then ends as it begins.
    pub fn began_at(&mut self, step: StepAt, began: Moment) {
        for done in self.steps.iter_mut().filter(|done| done.step == step) {
            done.began = began;
            done.ended = done
                .ended
                .map(|ended| if ended < began { began } else { ended });
        }
    }
}
