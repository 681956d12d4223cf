//! Rises in sentences: when a dough is up, what that rests on, what to look for.

use crate::engine::kitchen::Night;
use crate::engine::plan::Work;
use crate::engine::quantity::{Instant, Minutes, Temperature};
use crate::engine::rise::{Anchor, Basis, Cardinal, Risen};
use crate::sheet::civil::Zone;
use crate::words::{manner::Manner, say, write};

/// "52 min to 75 min".
#[must_use]
pub fn rise_range(risen: &Risen, manner: Manner) -> String {
    let soonest = write::minutes(risen.soonest, manner);
    match risen.latest {
        Some(latest) => say!("{soonest} to {}", soonest, write::minutes(latest, manner)),
        None => say!("{soonest} or more", soonest),
    }
}

/// When a dough that began then is up.
#[must_use]
pub fn up_at(risen: &Risen, began: Instant, zone: &Zone, manner: Manner) -> String {
    let likely = write::clock_at(began.later(risen.due), zone);
    let first = write::clock_at(began.later(risen.soonest), zone);
    match risen.latest {
        Some(latest) => say!(
            "Up between {first} and {}, most likely at {likely}, after {}.",
            first,
            write::clock_at(began.later(latest), zone),
            likely,
            write::minutes(risen.due, manner)
        ),
        None => say!(
            "Up at {likely} or later. It is too cold here to say more.",
            likely
        ),
    }
}

/// What a rise rests on: "the formula’s own 60 min at 26 °C".
#[must_use]
pub fn rests(anchor: &Anchor, manner: Manner) -> String {
    let time = write::minutes(anchor.time, manner);
    let at = write::temperature(anchor.at, manner);
    match anchor.basis {
        Basis::Usual => say!("Rests on what is usual: {time} at {at}.", time, at),
        Basis::Stated => say!(
            "Rests on what the formula says of itself: {time} at {at}. Nine rises in ten should \
             lie within {}.",
            time,
            at,
            write::share(anchor.spread, manner)
        ),
        Basis::Bakes(1) => say!("Rests on one bake of yours: {time} at {at}.", time, at),
        Basis::Bakes(count) => say!(
            "Rests on {} bakes of yours: {time} at {at}. Nine in ten lie within {}.",
            write::count(u32::from(count), manner),
            time,
            at,
            write::share(anchor.spread, manner)
        ),
    }
}

/// How this room compares with where the known rise was.
#[must_use]
pub fn room_against_anchor(risen: &Risen, here: Temperature, manner: Manner) -> String {
    let anchor = risen.asked.anchor;
    let (now, then) = (risen.due.minutes(), anchor.time.minutes());
    let (at, here) = (
        write::temperature(anchor.at, manner),
        write::temperature(here, manner),
    );
    let by = Minutes::from_minutes((now - then).abs()).unwrap_or(Minutes::ZERO);
    let differs = write::about_minutes(by, manner);
    if by.minutes() < 1.0 {
        say!(
            "With {here} around it the dough takes as long as the known rise at {at}.",
            here,
            at
        )
    } else if now > then {
        say!(
            "With {here} around it the dough takes {differs} longer than the known rise at {at}.",
            here,
            differs,
            at
        )
    } else {
        say!(
            "With {here} around it the dough takes {differs} less than the known rise at {at}.",
            here,
            differs,
            at
        )
    }
}

/// What a preferment’s night comes to, beside never and at once chilled.
#[must_use]
pub fn night(night: &Night, manner: Manner) -> String {
    let minutes = |time| write::minutes(time, manner);
    say!(
        "Over bench and fridge its yeast does as much as in {} at {}. Left out all that time it \
         would be {}, in the fridge from the start {}.",
        minutes(night.spent.equals),
        write::temperature(night.spent.at, manner),
        minutes(night.never_chilled.equals),
        minutes(night.chilled_at_once.equals)
    )
}

/// What to look for, since the dough and not the clock says when it is up.
#[must_use]
pub fn looks(work: Work) -> &'static str {
    match work {
        Work::Bulk => say!(
            "Look for a dough of about twice its size, domed and light; a floured fingertip leaves \
             a dent that comes back slowly."
        ),
        Work::Proof => {
            say!(
                "Look for pieces that touch and fill their gaps; a gentle press leaves a dent that \
             comes back slowly and not all the way."
            )
        }
        Work::StandPreferment | Work::ChillPreferment => {
            say!(
                "Look for a preferment that has grown by half or more, smells of yeast and fruit, and \
             has not sunk in the middle."
            )
        }
        Work::Rest => say!("Look for pieces that can be flattened and no longer spring back."),
        Work::LaterDough | Work::LaterProof => of_a_later_load(work),
        Work::Scald
        | Work::CoolPaste
        | Work::ChillPaste
        | Work::MixPreferment
        | Work::WarmUp
        | Work::Mix
        | Work::ButterIn
        | Work::Divide
        | Work::Round
        | Work::Shape
        | Work::Tin
        | Work::Melt
        | Work::Drizzle
        | Work::Brush
        | Work::Bake
        | Work::Cool
        | Work::Own
        | Work::Refill
        | Work::LaterBake => "",
    }
}

/// What to do with what waits for its turn in the oven.
fn of_a_later_load(work: Work) -> &'static str {
    if matches!(work, Work::LaterDough) {
        say!("This dough goes the same way as the first, that much later: mix, rise, shape, rise.")
    } else {
        say!(
            "Until it is due, keep this load’s shaped pieces in the fridge, covered; look for pieces \
         that touch and fill their gaps."
        )
    }
}

/// How the fastest temperature for a dough is told, beside the trust it deserves.
#[must_use]
pub(super) fn best(manner: Manner) -> String {
    write::temperature(Cardinal::DOUGH.best(), manner)
}
