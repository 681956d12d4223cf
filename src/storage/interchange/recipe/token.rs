//! Tokens: an ingredient line as numbers, words and asides in brackets.

/// One piece of a line.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Token {
    /// A number; the middle where a range was given.
    Number {
        /// Its value.
        value: f64,
        /// Whether it marks a range.
        range: bool,
    },
    /// A word in small letters.
    Word(String),
    /// What stood in brackets.
    Aside(Vec<Token>),
    /// A comma, semicolon or dash: what follows says how, not what.
    Pause,
}

/// The most characters of a line that are looked at.
const MOST: usize = 300;

/// The pieces of a line. A minus right before its first number makes that less than nothing; a hyphen
/// with a space behind it only marks an item of a list.
pub(super) fn tokens(line: &str) -> Vec<Token> {
    let letters: Vec<char> = line.trim_start().chars().take(MOST).collect();
    let is_minus = matches!(letters.as_slice(), ['-' | '−', digit, ..] if digit.is_ascii_digit());
    let mut at = usize::from(is_minus);
    let mut found = ranges(mixed(until(&letters, &mut at, false)));
    if let (true, Some(Token::Number { value, .. })) = (is_minus, found.first_mut()) {
        *value = -*value;
    }
    found
}

/// Reads up to the end, or to a closing bracket.
fn until(letters: &[char], at: &mut usize, inside: bool) -> Vec<Token> {
    let mut found = Vec::new();
    while let Some(letter) = letters.get(*at).copied() {
        match letter {
            '(' | '[' if !inside => {
                *at += 1;
                found.push(Token::Aside(ranges(mixed(until(letters, at, true)))));
            }
            ')' | ']' if inside => {
                *at += 1;
                return found;
            }
            digit if digit.is_ascii_digit() => found.push(number(letters, at)),
            sign if component(sign).is_some() => {
                *at += 1;
                found.push(exactly(component(sign).unwrap_or_default()));
            }
            letter if letter.is_alphabetic() => found.push(word(letters, at)),
            '-' | '–' | '—' | '~' | '×' | '/' | '⁄' | '%' => {
                *at += 1;
                found.push(Token::Word(sign(letter).to_owned()));
            }
            ',' | ';' => {
                *at += 1;
                found.push(Token::Pause);
            }
            _ => *at += 1,
        }
    }
    found
}

/// A sign that counts as a word, as it is looked for.
const fn sign(letter: char) -> &'static str {
    match letter {
        '×' => "x",
        '/' | '⁄' => "/",
        '%' => "%",
        _ => "-",
    }
}

const fn exactly(value: f64) -> Token {
    Token::Number {
        value,
        range: false,
    }
}

/// Digits with a point, or with a comma: before exactly three digits it sets thousands apart,
/// elsewhere it is the decimal mark.
fn number(letters: &[char], at: &mut usize) -> Token {
    let mut text = String::new();
    while let Some(letter) = letters.get(*at).copied() {
        let follows = |from: usize| letters.get(*at + from).is_some_and(char::is_ascii_digit);
        match letter {
            digit if digit.is_ascii_digit() => text.push(digit),
            '.' if follows(1) && !text.contains('.') => text.push('.'),
            ',' if follows(1)
                && follows(2)
                && follows(3)
                && !follows(4)
                && !text.starts_with('0') => {}
            ',' if follows(1) && !text.contains('.') => text.push('.'),
            'e' | 'E' if follows(1) && !text.contains('e') => text.push('e'),
            _ => break,
        }
        *at += 1;
    }
    exactly(text.parse().unwrap_or_default())
}

fn word(letters: &[char], at: &mut usize) -> Token {
    let mut text = String::new();
    while let Some(letter) = letters.get(*at).copied() {
        // "T55" is one word.
        let numbered = letter.is_ascii_digit() && !text.is_empty();
        if !letter.is_alphabetic() && letter != '\'' && !numbered {
            break;
        }
        text.extend(letter.to_lowercase());
        *at += 1;
    }
    // A full stop behind a short word marks that it is cut short: "tsp."
    Token::Word(text)
}

/// The value of a one-character fraction.
const fn component(sign: char) -> Option<f64> {
    Some(match sign {
        '½' => 0.5,
        '⅓' => 1.0 / 3.0,
        '⅔' => 2.0 / 3.0,
        '¼' => 0.25,
        '¾' => 0.75,
        '⅕' => 0.2,
        '⅛' => 0.125,
        '⅜' => 0.375,
        '⅝' => 0.625,
        '⅞' => 0.875,
        _ => return None,
    })
}

/// "1/2", "1 1/2" and "1 ½" made one number.
fn mixed(tokens: Vec<Token>) -> Vec<Token> {
    let mut found: Vec<Token> = Vec::new();
    let mut left = tokens.into_iter().peekable();
    while let Some(token) = left.next() {
        let Token::Number { value, .. } = token else {
            found.push(token);
            continue;
        };
        let mut value = value;
        if left.peek() == Some(&Token::Word("/".to_owned())) {
            left.next();
            if let Some(Token::Number { value: below, .. }) = left.peek()
                && *below > 0.0
            {
                value /= below;
                left.next();
            }
        }
        match found.last_mut() {
            Some(Token::Number { value: whole, .. })
                if value < 1.0 && libm::floor(*whole) >= *whole =>
            {
                *whole += value;
            }
            _ => found.push(exactly(value)),
        }
    }
    found
}

/// "2 - 3", "2 to 3" and "2 or 3", "2 a 3" and "2 o 3" made one number, their middle.
fn ranges(tokens: Vec<Token>) -> Vec<Token> {
    let mut found: Vec<Token> = Vec::new();
    let mut left = tokens.into_iter();
    while let Some(token) = left.next() {
        let joins = matches!(&token, Token::Word(word) if matches!(word.as_str(), "-" | "to" | "or" | "a" | "o"));
        let (Some(Token::Number { value: low, .. }), true) = (found.last().cloned(), joins) else {
            found.push(token);
            continue;
        };
        match left.next() {
            Some(Token::Number { value: high, .. }) if high > low => {
                found.pop();
                let value = (low + high) / 2.0;
                found.push(Token::Number { value, range: true });
            }
            Some(other) => found.extend([token, other]),
            None => found.push(token),
        }
    }
    found
}
