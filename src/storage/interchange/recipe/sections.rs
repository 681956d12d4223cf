//! Sections: which part a part of a recipe is.

use crate::engine::formula::PartKind;

/// Words that tell what becomes of a part, the more telling ones first.
const TELLING: &[(&[&str], PartKind)] = &[
    (
        &[
            "tangzhong",
            "yudane",
            "scald",
            "roux",
            "paste",
            "porridge",
            "water roux",
        ],
        PartKind::Paste,
    ),
    (
        &[
            "preferment",
            "poolish",
            "biga",
            "sponge",
            "starter",
            "levain",
            "night dough",
            "pre-dough",
        ],
        PartKind::Preferment,
    ),
    (&["wash", "brush"], PartKind::Wash),
    (&["filling", "inside"], PartKind::Filling),
    (
        &[
            "topping", "glaze", "icing", "frosting", "syrup", "sauce", "drizzle", "streusel",
            "finish",
        ],
        PartKind::Topping,
    ),
];

/// What becomes of a part with such a name; the final dough where the name does not tell.
pub(super) fn kind(name: &str) -> PartKind {
    let small = name.to_lowercase();
    let found = TELLING
        .iter()
        .find(|(words, _)| words.iter().any(|word| small.contains(word)));
    found.map_or(PartKind::Final, |(_, kind)| *kind)
}

/// The name in a heading: "For the filling:" is "Filling"; none for a line that is no heading.
pub(super) fn heading(line: &str) -> Option<String> {
    let text = line.trim();
    let ends = text.strip_suffix(':');
    let small = text.to_lowercase();
    let begins = small.starts_with("for the ") && !small.contains(|c: char| c.is_ascii_digit());
    if ends.is_none() && !begins {
        return None;
    }
    let text = ends.unwrap_or(text).trim();
    let name = ["for the ", "for "]
        .iter()
        .find_map(|before| {
            let head = text.get(..before.len())?;
            head.eq_ignore_ascii_case(before)
                .then(|| text.get(before.len()..))
                .flatten()
        })
        .unwrap_or(text);
    let mut letters = name.chars();
    let first = letters.next()?;
    Some(first.to_uppercase().chain(letters).collect())
}
