//! Sections: which part a part of a recipe is.

use super::letters::is_japanese;
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
            "escaldad",
            "湯種",
            "湯だね",
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
            "prefermento",
            "masa madre",
            "esponja",
            "中種",
            "前種",
            "液種",
            "ポーリッシュ",
            "ルヴァン",
            "サワー種",
            "老麺",
        ],
        PartKind::Preferment,
    ),
    (
        &[
            "wash",
            "brush",
            "pincelar",
            "pintar",
            "つや出し",
            "ドリュール",
        ],
        PartKind::Wash,
    ),
    (
        &["filling", "inside", "relleno", "フィリング", "中身", "具材"],
        PartKind::Filling,
    ),
    (
        &[
            "topping",
            "glaze",
            "icing",
            "frosting",
            "syrup",
            "sauce",
            "drizzle",
            "streusel",
            "finish",
            "cobertura",
            "glaseado",
            "almíbar",
            "jarabe",
            "salsa",
            "トッピング",
            "仕上げ",
            "アイシング",
            "シロップ",
            "ソース",
            "飾り",
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

/// What begins a heading without a colon.
const BEGINS: [&str; 5] = ["for the ", "para la ", "para el ", "para los ", "para las "];

/// The brackets and marks around a heading in Japanese.
const MARKS: [char; 12] = [
    '【', '】', '〈', '〉', '《', '》', '■', '◆', '●', '◎', '<', '>',
];

/// The name in a heading: "For the filling:" is "Filling", "【湯種】" is "湯種"; none for a line that is
/// no heading.
pub(super) fn heading(line: &str) -> Option<String> {
    let text = line.trim();
    let ends = text.strip_suffix([':', '：']);
    let small = text.to_lowercase();
    let has_number = small.chars().any(char::is_numeric);
    let begins = !has_number && BEGINS.iter().any(|begin| small.starts_with(begin));
    let is_marked = !has_number && text.starts_with(MARKS) && text.chars().any(is_japanese);
    if ends.is_none() && !begins && !is_marked {
        return None;
    }
    let text = ends.unwrap_or(text).trim_matches(MARKS).trim();
    let name = BEGINS
        .iter()
        .chain(["for ", "para "].iter())
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
