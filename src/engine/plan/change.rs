//! Changes: what solves the conflicts of a plan, each by itself.

use super::course::Course;
use super::forwards::forwards;
use super::search::{Found, search};
use crate::engine::quantity::{Instant, Minutes, minutes_of};

/// Something that leaves nothing in the way. Steps are named by their place in the plan's list.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Change {
    /// The bread on the table later.
    TableLater(Instant),
    /// The bread on the table earlier.
    TableEarlier(Instant),
    /// A step that may last longer, or less long, than its limits say.
    LetLast {
        /// Which step.
        step: usize,
        /// How long it then lasts.
        minutes: Minutes,
        /// Whether that is longer than its limits say.
        longer: bool,
    },
    /// A second pair of hands.
    HelpingHand,
}

/// How far earlier is looked, in quarters of an hour: a day.
const EARLIER: i64 = 96;
const QUARTER: i64 = 900;
const MINUTE: i64 = 60;
/// The minutes of a time that is offered: five, as a clock is set to. Common practice.
const FIVE_MINUTES: i64 = 300;
/// How many of them a time is put off at most: an hour.
const PUT_OFF: i64 = 12;

/// What solves everything that is in the way of the plan with its bread on the table at `table`.
pub(super) fn changes(course: &Course, table: i64) -> Vec<Change> {
    let mut all = Vec::new();
    let (later, found) = forwards(course, table);
    // What reads the same by the clock is set already.
    let reads_later = later.div_euclid(MINUTE) > table.div_euclid(MINUTE);
    if found.cost.hard == 0 && reads_later {
        let later = on_the_clock(course, later).unwrap_or(later);
        all.push(Change::TableLater(Instant::held(later)));
    }
    if let Some(earlier) = earlier(course, table) {
        all.push(Change::TableEarlier(Instant::held(earlier)));
    }
    all.extend((0..course.tasks.len()).filter_map(|step| let_last(course, table, step)));
    if course.one_pair_of_hands && search(&with_help(course), table).cost.hard == 0 {
        all.push(Change::HelpingHand);
    }
    all
}

/// The latest table before this one at which nothing is in the way.
fn earlier(course: &Course, table: i64) -> Option<i64> {
    let shortest: Vec<i64> = course.tasks.iter().map(|task| task.least).collect();
    let mut slots = Vec::new();
    // What would have to begin in the past, even as short as it may be, is only deeper in it earlier.
    let mut in_time = move |at: &i64| {
        course.fill_slots(&shortest, *at, &mut slots);
        let mut begins = course.tasks.iter().zip(&slots);
        begins.all(|(task, slot)| {
            task.began.is_some() || slot.begins >= course.earliest(task, &slots)
        })
    };
    let quarters = (1..=EARLIER).map(|count| table - count * QUARTER);
    let mut possible = quarters.take_while(|at| in_time(at));
    possible.find_map(|at| {
        let found = search(course, at);
        (found.cost.hard == 0).then(|| as_it_is_ready(course, at, &found))
    })
}

/// The time at which the last step has lasted as long as it is wished to: bread that then lies ready
/// is ready then. `table` where that is in the way of something.
fn as_it_is_ready(course: &Course, table: i64, found: &Found) -> i64 {
    let all = course.tasks.iter().zip(&found.slots).zip(&found.lasts);
    let lies = all
        .filter(|((task, slot), _)| task.began.is_none() && slot.ends == table)
        .map(|((task, _), lasts)| (lasts - task.wished).max(0))
        .min();
    let ready = table - lies.unwrap_or(0);
    let ready = on_the_clock(course, ready).unwrap_or(table);
    ready.min(table)
}

/// The first whole five minutes from a time on at which nothing is in the way: what is offered is what
/// is then set. `None` where there are none within the hour.
fn on_the_clock(course: &Course, at: i64) -> Option<i64> {
    let first = at + (-at).rem_euclid(FIVE_MINUTES);
    let mut times = (0..=PUT_OFF).map(|count| first + count * FIVE_MINUTES);
    times.find(|at| search(course, *at).cost.hard == 0)
}

/// Whether all is well once a step that gives may give by half as much again either way.
fn let_last(course: &Course, table: i64, step: usize) -> Option<Change> {
    let own = course.tasks.get(step)?;
    if !course.is_flexible(step) {
        return None;
    }
    let mut tasks = course.tasks.clone();
    let task = tasks.get_mut(step)?;
    task.least = own.least.div_euclid(2);
    task.most = own.most.saturating_add(own.most.div_euclid(2));
    let wider = Course {
        tasks,
        nights: course.nights.clone(),
        ..*course
    };
    let found = search(&wider, table);
    let lasts = *found.lasts.get(step)?;
    let outside = lasts > own.most || lasts < own.least;
    (found.cost.hard == 0 && outside).then(|| Change::LetLast {
        step,
        minutes: minutes_of(lasts),
        longer: lasts > own.most,
    })
}

fn with_help(course: &Course) -> Course {
    Course {
        tasks: course.tasks.clone(),
        nights: course.nights.clone(),
        now: course.now,
        one_pair_of_hands: false,
    }
}
