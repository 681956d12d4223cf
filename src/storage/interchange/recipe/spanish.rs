//! Spanish recipes: their numbers and amounts in the form the reader knows, and their measures.

use super::letters::folded;

/// Words by which a line is seen to be Spanish.
const TELLING: &[&str] = &[
    "de",
    "del",
    "harina",
    "leche",
    "azucar",
    "sal",
    "mantequilla",
    "huevo",
    "huevos",
    "agua",
    "levadura",
    "aceite",
    "cucharada",
    "cucharadas",
    "cucharadita",
    "cucharaditas",
    "taza",
    "tazas",
    "masa",
    "para",
    "yema",
    "yemas",
    "nata",
    "miel",
    "gramos",
];

/// Words by which a line is seen to be English.
const ENGLISH: &[&str] = &[
    "of",
    "flour",
    "milk",
    "sugar",
    "salt",
    "butter",
    "egg",
    "eggs",
    "water",
    "yeast",
    "oil",
    "cup",
    "cups",
    "tablespoon",
    "teaspoon",
    "tbsp",
    "tsp",
    "dough",
    "for",
    "cream",
    "honey",
];

/// Words a unit may follow: "1/4 de taza".
const UNITS: &[&str] = &[
    "taza",
    "tazas",
    "litro",
    "litros",
    "kilo",
    "kilos",
    "kg",
    "l",
    "cucharada",
    "cucharadita",
    "vaso",
    "vasos",
];

/// Whether more lines of a recipe are Spanish than English.
pub(super) fn is_written(lines: &[String]) -> bool {
    let count = |telling: &[&str]| {
        let tells = |line: &&String| {
            let whole = folded(line);
            let mut words = whole.split(|letter: char| !letter.is_alphanumeric());
            words.any(|word| telling.contains(&word))
        };
        lines.iter().filter(tells).count()
    };
    count(TELLING) > count(ENGLISH)
}

/// A line with a point for decimals and none between thousands, and each amount as one: "1.500 g"
/// is 1500 g, "1,5 kg" and "1.500 kg" one and a half, "1 y 1/2" as well, "1/4 de taza" a quarter.
pub(super) fn rewritten(line: &str) -> String {
    let letters: Vec<char> = line.chars().collect();
    let is_digit = |at: Option<usize>| {
        at.and_then(|at| letters.get(at))
            .is_some_and(char::is_ascii_digit)
    };
    let mut text = String::with_capacity(line.len());
    for (at, letter) in letters.iter().enumerate() {
        let between = is_digit(at.checked_sub(1)) && is_digit(at.checked_add(1));
        let group =
            (1..=3).all(|ahead| is_digit(at.checked_add(ahead))) && !is_digit(at.checked_add(4));
        let rest = letters.get(at.saturating_add(4)..).unwrap_or_default();
        match letter {
            ',' if between => text.push('.'),
            '.' if between && group && !is_large(rest) => {}
            other => text.push(*other),
        }
    }
    // Spoons cut short.
    for short in ["c.s.", "c/s", "C/S", "C.S."] {
        text = text.replace(short, "cucharada");
    }
    joined(&text.replace("c.c.", "cc"))
}

/// Whether what follows a number is a unit so large that its parts are thousandths: "1.500 kg".
fn is_large(rest: &[char]) -> bool {
    let word: String = rest
        .iter()
        .skip_while(|letter| **letter == ' ')
        .take_while(|letter| letter.is_alphabetic())
        .collect();
    let word = folded(&word);
    word == "l" || word.starts_with("kg") || word.starts_with("kilo") || word.starts_with("litro")
}

/// The words of a line, without those between a number and its half or its unit.
fn joined(line: &str) -> String {
    let words: Vec<&str> = line.split_whitespace().collect();
    let is_number = |word: Option<&&str>| {
        word.is_some_and(|word| {
            word.starts_with(|letter: char| letter.is_ascii_digit() || "½¼¾⅓⅔⅛".contains(letter))
        })
    };
    let mut text: Vec<&str> = Vec::with_capacity(words.len());
    let mut skips = false;
    for (at, word) in words.iter().enumerate() {
        let before = at.checked_sub(1).and_then(|before| words.get(before));
        let after = at.checked_add(1).and_then(|after| words.get(after));
        let behind = is_number(before);
        let is_unit = after.is_some_and(|after| UNITS.contains(&folded(after).as_str()));
        // "1 taza y media".
        let is_half =
            *word == "y" && after.is_some_and(|after| matches!(*after, "media" | "medio"));
        if is_half && before.is_some_and(|before| UNITS.contains(&folded(before).as_str())) {
            text.insert(text.len().saturating_sub(1), "1/2");
            skips = true;
            continue;
        }
        if std::mem::take(&mut skips) {
            continue;
        }
        let is_between = match *word {
            "y" => {
                behind
                    && is_number(after)
                    && after.is_some_and(|after| {
                        !after.starts_with(|digit: char| digit.is_ascii_digit())
                            || after.contains('/')
                    })
            }
            "de" => behind && is_unit,
            _ => false,
        };
        if !is_between {
            text.push(word);
        }
    }
    text.join(" ")
}

/// A name without the words that join it to its amount: "de harina" is "harina".
pub(super) fn name(name: &str) -> &str {
    let joins = ["de ", "del ", "De "];
    joins
        .iter()
        .find_map(|join| name.strip_prefix(join))
        .unwrap_or(name)
}

/// A cube of fresh yeast, g: common practice.
pub(super) const CUBE: f64 = 25.0;
/// The number of fresh yeast.
pub(super) const CUBE_OF: u16 = 900;

/// A cup, ml: common practice.
pub(super) const CUP: f64 = 250.0;

/// "Un", "media", "dos" to "seis".
pub(super) fn article(word: &str) -> Option<f64> {
    Some(match word {
        "un" | "una" | "uno" => 1.0,
        "medio" | "media" => 0.5,
        "dos" => 2.0,
        "tres" => 3.0,
        "cuatro" => 4.0,
        "cinco" => 5.0,
        "seis" => 6.0,
        _ => return None,
    })
}
