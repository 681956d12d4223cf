//! Notices: short sentences about keeping, sharing and being offline.

use super::format;
use super::format_options::FormatOptions;
use crate::storage::key;
use crate::text::tr;

/// Another language did not load.
#[must_use]
pub fn language_not_loaded() -> &'static str {
    tr!("The texts of this language did not come. Try again with a signal; nothing has changed.")
}

/// The browser keeps nothing for this page.
#[must_use]
pub fn storage_blocked() -> &'static str {
    tr!(
        "This browser saves nothing for this page, so changes last only until it is closed. Save the formula to a file, or allow the page to store data."
    )
}

/// There is no room left in the browser's storage.
#[must_use]
pub fn storage_full() -> &'static str {
    tr!(
        "There is no room left to save the last change. Save the formula to a file, then empty the bin or delete what you no longer need."
    )
}

/// A record cannot be read; it can still be saved to a file.
#[must_use]
pub fn storage_damaged() -> &'static str {
    tr!(
        "Something saved here is damaged and cannot be opened. It is left as it is: save it to a file before you clear it."
    )
}

/// A record is of a newer release.
#[must_use]
pub fn storage_newer() -> &'static str {
    tr!(
        "What is saved here was written by a newer release, and is left as it is. Reload the page to bring the app up to date."
    )
}

/// A trial is on, and what it began from was changed in another tab meanwhile.
#[must_use]
pub fn trial_parted() -> &'static str {
    tr!(
        "The formula was changed elsewhere since this trial began. Save the trial as a copy and both stay; or replace the other, and undo brings it back."
    )
}

/// A step back in the kitchen, which may be out of sight.
#[must_use]
pub fn kitchen_undone() -> &'static str {
    tr!("Undone: the last change of the kitchen.")
}

/// A step forward in the kitchen, which may be out of sight.
#[must_use]
pub fn kitchen_redone() -> &'static str {
    tr!("Redone: the change of the kitchen.")
}

/// An undone change of what is stored beside formula and kitchen, which may be out of sight.
#[must_use]
pub fn beside_undone() -> &'static str {
    tr!("Undone: the last change of plan, bench, class or supplies.")
}

/// A redone change of the same.
#[must_use]
pub fn beside_redone() -> &'static str {
    tr!("Redone: the change of plan, bench, class or supplies.")
}

/// A kitchen was removed.
#[must_use]
pub fn kitchen_gone() -> &'static str {
    tr!("Kitchen removed. Undo brings it back.")
}

/// Asks before the bin is emptied.
#[must_use]
pub fn empty_the_bin(count: usize) -> String {
    match count {
        1 => tr!("The formula in the bin will be gone, and nothing brings it back.").to_owned(),
        more => {
            tr!(
                "All {more} formulas in the bin will be gone, and nothing brings them back.",
                more = more
            )
        }
    }
}

/// The bin is empty now.
#[must_use]
pub fn bin_emptied() -> &'static str {
    tr!("The bin is empty.")
}

/// A part of the page is on its way.
#[must_use]
pub fn loading() -> &'static str {
    tr!("Opening …")
}

/// A part of the page did not come.
#[must_use]
pub fn not_loaded() -> &'static str {
    tr!(
        "This part of the page could not be loaded. It is kept for use without a signal soon after \
     the first visit; try again with a signal."
    )
}

/// The page cannot be drawn.
#[must_use]
pub fn not_started() -> &'static str {
    tr!(
        "Softcrumb could not start here. Load the page again with a signal; if that does not help, a \
     newer browser will. What you saved is still on this device."
    )
}

/// The device has no signal.
#[must_use]
pub fn offline_ready() -> &'static str {
    tr!("Ready to work with no signal.")
}

/// The page is not yet whole on this device.
#[must_use]
pub fn offline_soon() -> &'static str {
    tr!("Stay on this page a moment: what it takes to work with no signal is still coming.")
}

/// The browser keeps nothing for use without a signal.
#[must_use]
pub fn offline_never() -> &'static str {
    tr!("This browser keeps no pages, so without a signal this one does not open again.")
}

/// A newer release waits.
#[must_use]
pub fn new_release() -> &'static str {
    tr!("A newer release is ready. Load it when it suits you; nothing you typed is lost.")
}

/// A timer is over, shown away from the bench.
#[must_use]
pub fn timer_over(what: &str) -> String {
    tr!("The time is up: {what}.", what = what)
}

/// What the bake under way is made by was deleted.
#[must_use]
pub fn bake_is_gone() -> &'static str {
    tr!("The formula of this bake is not here any more. Stop the bake in Day; the log keeps it.")
}

/// The figures do not belong to what is typed.
#[must_use]
pub fn last_good() -> &'static str {
    tr!("These are the last good figures. They follow again once the marked box can be read.")
}

/// A formula was opened by a link.
#[must_use]
pub fn visitor() -> &'static str {
    tr!("This formula came with a link.")
}

/// The browser would not read or save a file.
#[must_use]
pub fn file_refused() -> &'static str {
    tr!("The browser did not let the file through. Try again, or choose another place for it.")
}

/// A formula has as many ingredients as it may have.
#[must_use]
pub fn lines_full() -> &'static str {
    tr!(
        "This formula has as many ingredients as one may have. Remove one, or split it into two formulas."
    )
}

/// A formula has as many parts as it may have.
#[must_use]
pub fn parts_full() -> &'static str {
    tr!(
        "This formula has as many parts as one may have. Remove one, or split it into two formulas."
    )
}

/// A file is larger than what is opened.
#[must_use]
pub fn file_too_large(bytes: f64, most: f64, options: FormatOptions) -> String {
    let megabytes = |bytes: f64| format::significant(bytes / 1e6, 2, options.numbers);
    tr!(
        "This file has {first}\u{A0}MB, more than the {second}\u{A0}MB a formula file may have. Choose a \
         file that was saved here.",
        first = megabytes(bytes),
        second = megabytes(most)
    )
}

/// Suggests a file once there are many changes since the last one.
#[must_use]
pub fn save_a_file(changes: u32, options: FormatOptions) -> Option<String> {
    (changes >= key::FILE_SUGGESTED).then(|| {
        tr!(
            "{value} changes since the last file was saved. Save one, so that nothing depends on this browser alone.",
            value = format::plain(f64::from(changes), 0, options.numbers)
        )
    })
}

/// What to do first in a formula with nothing in it.
#[must_use]
pub fn nothing_in_it() -> &'static str {
    tr!(
        "Nothing is in it yet. Begin with the flour: tap + at the final dough, choose it and type its weight. Figures and cautions come with it."
    )
}
