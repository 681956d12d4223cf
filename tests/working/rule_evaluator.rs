//! Evaluator and paper: reads a rule by school arithmetic, and holds a line of working to it.

use std::collections::BTreeMap;

use softcrumb::engine::working::WorkingLine;

/// Holds every line to its own rule.
///
/// A billionth of the answer, or of a unit, may differ, since sums are taken in another order.
#[track_caller]
pub(crate) fn adds_up(lines: &[WorkingLine]) {
    assert!(!lines.is_empty(), "there is no working");
    for line in lines {
        let shown = format!("{line:?}");
        assert!(!line.source.is_empty(), "no source: {shown}");
        let mut letters = BTreeMap::new();
        for given in &line.with {
            assert!(given.value.is_finite(), "no number: {shown}");
            let twice = letters.insert(given.letter.to_string(), given.value);
            assert!(twice.is_none(), "{} is given twice: {shown}", given.letter);
        }
        let (answer, used) = reckon(&line.rule, &letters);
        for letter in letters.keys() {
            assert!(
                used.contains(letter),
                "{letter} is not in the rule: {shown}"
            );
        }
        let allowed = 1e-9 * (1.0 + line.result.value.abs());
        assert!(
            (answer - line.result.value).abs() <= allowed,
            "the rule gives {answer}: {shown}"
        );
    }
}

/// What a rule comes to, and the letters that it used.
fn reckon(rule: &str, letters: &BTreeMap<String, f64>) -> (f64, Vec<String>) {
    let mut evaluator = Evaluator {
        signs: rule.chars().filter(|sign| !sign.is_whitespace()).collect(),
        at: 0,
        letters,
        used: Vec::new(),
    };
    let answer = evaluator.sum();
    assert_eq!(evaluator.at, evaluator.signs.len(), "{rule} cannot be read");
    (answer, evaluator.used)
}

struct Evaluator<'a> {
    signs: Vec<char>,
    at: usize,
    letters: &'a BTreeMap<String, f64>,
    used: Vec<String>,
}

impl Evaluator<'_> {
    fn next_is(&mut self, any: &[char]) -> Option<char> {
        let sign = *self.signs.get(self.at)?;
        any.contains(&sign).then(|| {
            self.at += 1;
            sign
        })
    }

    fn sum(&mut self) -> f64 {
        let mut sum = self.product();
        while let Some(sign) = self.next_is(&['+', '-', '−']) {
            let term = self.product();
            sum += if sign == '+' { term } else { -term };
        }
        sum
    }

    fn product(&mut self) -> f64 {
        let mut product = self.signed();
        while let Some(sign) = self.next_is(&['*', '×', '·', '/', '÷']) {
            let factor = self.signed();
            product = match sign {
                '/' | '÷' => product / factor,
                _ => product * factor,
            };
        }
        product
    }

    /// A minus binds less than a power: −2² is −4, as at school.
    fn signed(&mut self) -> f64 {
        if self.next_is(&['-', '−']).is_some() {
            return -self.signed();
        }
        let base = self.single();
        if self.next_is(&['^']).is_some() {
            return libm::pow(base, self.signed());
        }
        base
    }

    fn single(&mut self) -> f64 {
        if self.next_is(&['(']).is_some() {
            return self.rest_of_brackets()[0];
        }
        let word = self.word();
        if let Ok(number) = word.parse() {
            return number;
        }
        if self.next_is(&['(']).is_some() {
            return of_function(&word, &self.rest_of_brackets());
        }
        let value = self.letters.get(&word);
        let value = *value.unwrap_or_else(|| panic!("{word:?} is not given"));
        self.used.push(word);
        value
    }

    fn rest_of_brackets(&mut self) -> Vec<f64> {
        let mut inside = vec![self.sum()];
        while self.next_is(&[',', ';']).is_some() {
            inside.push(self.sum());
        }
        assert!(self.next_is(&[')']).is_some(), "a bracket stays open");
        inside
    }

    fn word(&mut self) -> String {
        let is_part = |sign: &&char| sign.is_alphanumeric() || matches!(sign, '.' | '_' | '′');
        let word: String = self.signs[self.at..].iter().take_while(is_part).collect();
        assert!(!word.is_empty(), "something is missing in {:?}", self.signs);
        self.at += word.chars().count();
        word
    }
}

fn of_function(name: &str, inside: &[f64]) -> f64 {
    match (name, inside) {
        ("sqrt", [x]) => x.sqrt(),
        ("exp", [x]) => libm::exp(*x),
        ("ln", [x]) => libm::log(*x),
        ("log10", [x]) => libm::log10(*x),
        ("round", [x]) => x.round(),
        ("min", [first, rest @ ..]) => rest.iter().fold(*first, |least, x| least.min(*x)),
        ("max", [first, rest @ ..]) => rest.iter().fold(*first, |most, x| most.max(*x)),
        _ => panic!("{name} of {} numbers is no school arithmetic", inside.len()),
    }
}

#[test]
fn rules_are_read_as_at_school() {
    let letters = BTreeMap::from([("m1".to_owned(), 3.0), ("T".to_owned(), 20.0)]);
    for (rule, answer) in [
        ("1 + 2 × 3", 7.0),
        ("(1 + 2) * 3", 9.0),
        ("8 / 4 / 2", 1.0),
        ("10 − 4 − 3", 3.0),
        ("2 ^ 3 ^ 2", 512.0),
        ("−2 ^ 2", -4.0),
        ("2 × −3", -6.0),
        ("m1 · T", 60.0),
        ("sqrt(16) + min(2, m1, 4) + max(1; 5)", 11.0),
        ("exp(ln(T)) + log10(1000) + round(2.5)", 26.0),
    ] {
        let reckoned = reckon(rule, &letters).0;
        assert!((reckoned - answer).abs() < 1e-12, "{rule} is {reckoned}");
    }
}

#[test]
fn a_wrong_sign_a_wrong_number_or_a_stray_letter_is_noticed() {
    use softcrumb::engine::working::given;
    let line = |rule: &'static str, answer: f64| WorkingLine {
        rule: rule.into(),
        with: vec![given("a", "", 5.0, "g"), given("b", "", 2.0, "g")],
        result: given("c", "", answer, "g"),
        source: "by definition".into(),
    };
    adds_up(&[line("a − b", 3.0)]);
    for wrong in [
        line("a + b", 3.0),
        line("a − b", 3.1),
        line("a − 2", 3.0),
        line("a − b − d", 3.0),
        line("(a − b", 3.0),
        line("a − b", f64::NAN),
    ] {
        assert!(std::panic::catch_unwind(|| adds_up(&[wrong])).is_err());
    }
    assert!(std::panic::catch_unwind(|| adds_up(&[])).is_err());
}
