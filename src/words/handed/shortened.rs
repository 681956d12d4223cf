//! What can be left out of a link, each with what it saves, and what was left out already.

use crate::sheet::interchange::{LinkPart, Shorter, SquareCode, shorter};
use crate::sheet::{Sheet, link};
use crate::words::manner::Manner;
use crate::words::{name, say, write};

/// One thing to leave out of a link, or to put back.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shortened {
    /// What.
    pub part: LinkPart,
    /// Whether it is left out now.
    pub is_out: bool,
    /// What a tap does, and what that saves.
    pub says: String,
}

/// What can be left out of the link of what is `kept`, what saves most first, then what was
/// `left_out` already. Before the text of a link stand so many characters of an `address`.
#[must_use]
pub fn shortened(
    kept: &Sheet,
    left_out: &[LinkPart],
    address: usize,
    manner: Manner,
) -> Vec<Shortened> {
    let handed = left_out
        .iter()
        .fold(kept.clone(), |sheet, part| part.left_out_of(&sheet));
    let most = SquareCode::MOST_BYTES.saturating_sub(address);
    let is_long = link::length(&handed) > most;
    let still_in = shorter(&handed, most).into_iter();
    let still_in = still_in.map(|one| Shortened {
        part: one.part,
        is_out: false,
        says: leave_out(one, is_long, manner),
    });
    let gone = left_out.iter().map(|part| {
        let others = left_out.iter().filter(|one| *one != part);
        let with = others.fold(kept.clone(), |sheet, one| one.left_out_of(&sheet));
        let saved = link::length(&with).saturating_sub(link::length(&handed));
        Shortened {
            part: *part,
            is_out: true,
            says: say!(
                "Put {part} back: {more} characters more",
                name::link_part(*part),
                counted(saved, manner)
            ),
        }
    });
    still_in.chain(gone).collect()
}

fn leave_out(one: Shorter, is_long: bool, manner: Manner) -> String {
    let (part, saves) = (name::link_part(one.part), counted(one.saves, manner));
    if is_long && one.enough {
        say!(
            "Leave out {part}: {saves} characters less, which is enough for a code",
            part,
            saves
        )
    } else {
        say!("Leave out {part}: {saves} characters less", part, saves)
    }
}

fn counted(count: usize, manner: Manner) -> String {
    write::count(u32::try_from(count).unwrap_or(u32::MAX), manner)
}
