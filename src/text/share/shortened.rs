//! What can be left out of a link to shorten it, with the characters saved.

use crate::engine::numerics::saturating_u32;
use crate::sheet::Sheet;
use crate::storage::interchange::{LinkPart, Shorter, SquareCode, shorter};
use crate::storage::{Fragment, link};
use crate::text::format_options::FormatOptions;
use crate::text::{format, name, tr};

/// Something to leave out of a link, or to restore.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shortened {
    /// Which.
    pub component: LinkPart,
    /// Whether it is left out at present.
    pub is_out: bool,
    /// Label of its button, with the characters saved.
    pub says: String,
}

/// What can be left out of the link of what is `original`, what saves most first, then what was
/// `left_out` already. The link begins with the address of the page, `page`.
#[must_use]
pub fn shortened(
    original: &Sheet,
    left_out: &[LinkPart],
    page: &str,
    options: FormatOptions,
) -> Vec<Shortened> {
    let shared = left_out.iter().fold(original.clone(), |sheet, component| {
        component.left_out_of(&sheet)
    });
    let most = SquareCode::MOST_BYTES.saturating_sub(before_the_formula(page));
    let is_long = link::length(&shared) > most;
    let still_in = shorter(&shared, most).into_iter();
    let still_in = still_in.map(|one| Shortened {
        component: one.component,
        is_out: false,
        says: leave_out(one, is_long, options),
    });
    let removed = left_out.iter().map(|component| {
        let others = left_out.iter().filter(|one| *one != component);
        let with = others.fold(original.clone(), |sheet, one| one.left_out_of(&sheet));
        let saved = link::length(&with).saturating_sub(link::length(&shared));
        Shortened {
            component: *component,
            is_out: true,
            says: tr!(
                "Put {part} back: {more} characters more",
                part = name::link_part(*component),
                more = counted(saved, options)
            ),
        }
    });
    still_in.chain(removed).collect()
}

/// Characters of a link before its formula.
fn before_the_formula(page: &str) -> usize {
    let empty = Fragment::SharedFormula(String::new()).write();
    page.len().saturating_add(empty.len())
}

fn leave_out(one: Shorter, is_long: bool, options: FormatOptions) -> String {
    let (component, saves) = (name::link_part(one.component), counted(one.saves, options));
    if is_long && one.enough {
        tr!(
            "Leave out {part}: {saves} characters less, which is enough for a code",
            part = component,
            saves = saves
        )
    } else {
        tr!(
            "Leave out {part}: {saves} characters less",
            part = component,
            saves = saves
        )
    }
}

fn counted(count: usize, options: FormatOptions) -> String {
    format::count(saturating_u32(count), options)
}
