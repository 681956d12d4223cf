//! Plain text out of text that may hold tags and named characters of HTML.

/// Named characters that recipes are written with; the ampersand last, so that nothing is read
/// twice.
const NAMED: [(&str, &str); 16] = [
    ("&frac12;", "½"),
    ("&frac14;", "¼"),
    ("&frac34;", "¾"),
    ("&#189;", "½"),
    ("&#188;", "¼"),
    ("&#190;", "¾"),
    ("&nbsp;", " "),
    ("&deg;", "°"),
    ("&ndash;", "–"),
    ("&mdash;", "–"),
    ("&quot;", "\""),
    ("&#39;", "'"),
    ("&rsquo;", "'"),
    ("&lt;", "<"),
    ("&gt;", ">"),
    ("&amp;", "&"),
];

/// Tags left out, named characters read, white space made single.
pub(super) fn plain(text: &str) -> String {
    let mut without = String::new();
    let mut in_tag = false;
    let mut letters = text.chars().peekable();
    while let Some(letter) = letters.next() {
        let opens = letter == '<'
            && letters
                .peek()
                .is_some_and(|next| next.is_ascii_alphabetic() || *next == '/');
        if opens {
            in_tag = true;
        }
        if in_tag {
            if letter == '>' {
                in_tag = false;
                without.push(' ');
            }
        } else {
            without.push(letter);
        }
    }
    for (name, sign) in NAMED {
        without = without.replace(name, sign);
    }
    without.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The texts of all scripts of a page that hold linked data.
pub(super) fn linked_data(page: &str) -> Vec<&str> {
    let pieces = page.split("<script").skip(1);
    pieces
        .filter_map(|piece| {
            let (attributes, rest) = piece.split_once('>')?;
            let (script, _) = rest.split_once("</script")?;
            attributes.contains("ld+json").then_some(script.trim())
        })
        .collect()
}
