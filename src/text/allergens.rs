//! Allergens in words: what is in the bread, what may be, and what says so.

use crate::engine::formula::{Formula, LineAt};
use crate::engine::ingredients::{Allergen, Food, Presence};
use crate::engine::nutrition::{AllergenRow, AllergenSource};
use crate::results::batch::allergens::AllergenResults;
use crate::text::{chart::listed, language::text, name, tr, tr_noop};

/// An allergen, and what says so.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AllergenLine {
    /// Its name.
    pub name: &'static str,
    /// What says so: "Whole milk; Butter (packet)".
    pub sources: String,
}

/// The allergens of a formula in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AllergenView {
    /// In the bread.
    pub contains: Vec<AllergenLine>,
    /// Usually in the bread, by packets that are still to be read.
    pub usual: Vec<AllergenLine>,
    /// Perhaps in the bread.
    pub may_contain: Vec<AllergenLine>,
    /// All of it as sentences.
    pub says: String,
    /// What this cannot know.
    pub note: &'static str,
}

const NOTE: &str = tr_noop!(
    "This goes by what the ingredients are and by what you have marked. Packets \
                    and kitchens differ: read every packet, and mark what it says."
);

/// The allergens of a formula in words; `formula` is the one they were found in.
#[must_use]
pub fn view(found: &AllergenResults, formula: &Formula) -> AllergenView {
    let (mut contains, mut usual, mut may_contain) = (Vec::new(), Vec::new(), Vec::new());
    for row in &found.rows {
        let line = line(row, formula);
        match row.presence() {
            Presence::Contains => contains.push(line),
            Presence::Usual => usual.push(line),
            Presence::Possible | Presence::NotKnown => may_contain.push(line),
        }
    }
    AllergenView {
        contains,
        usual,
        may_contain,
        says: says(found, formula).join(" "),
        note: text(NOTE),
    }
}

/// All of it as sentences; silent only of ingredients that are known.
fn says(found: &AllergenResults, formula: &Formula) -> Vec<String> {
    let mut says = Vec::new();
    if found.contained().next().is_some() || (found.rows.is_empty() && found.unread.is_empty()) {
        says.push(name::allergen_list(
            found.contained().map(|row| &row.allergen),
        ));
    }
    says.extend(usually(found.usual().map(|row| row.allergen)));
    let possible = || {
        let rows = found.rows.iter();
        rows.filter(|row| row.presence() == Presence::Possible)
    };
    let packet = |row: &&AllergenRow| row.sources.iter().all(by_packet);
    says.extend(perhaps(possible().filter(packet).map(|row| row.allergen)));
    let told = possible().filter(|row| !packet(row));
    let told: Vec<String> = told
        .map(|row| name::allergen_in_list(row.allergen))
        .collect();
    says.extend(listed(&told).map(|list| tr!("May contain {list}.", list = list)));
    let mut unread: Vec<String> = Vec::new();
    for line in found.unread.iter().filter_map(|at| formula.line(*at)) {
        let name = food_in_list(&line.food);
        if !unread.contains(&name) {
            unread.push(name);
        }
    }
    says.extend(listed(&unread).map(|list| {
        if found.rows.is_empty() {
            tr!(
                "Which allergens are in {list} is not known: read the packet.",
                list = list
            )
        } else {
            tr!(
                "What else is in {list} is not known: read the packet.",
                list = list
            )
        }
    }));
    says
}

fn by_packet(source: &AllergenSource) -> bool {
    matches!(source, AllergenSource::Possible(_))
}

fn usually(found: impl Iterator<Item = Allergen>) -> Option<String> {
    let names: Vec<String> = found.map(name::allergen_in_list).collect();
    listed(&names).map(|list| tr!("Usually contains {list} (read the packet).", list = list))
}

fn perhaps(found: impl Iterator<Item = Allergen>) -> Option<String> {
    let names: Vec<String> = found.map(name::allergen_in_list).collect();
    listed(&names).map(|list| tr!("May contain {list} (read the packet).", list = list))
}

/// A food inside a sentence; the user's own as it is written.
fn food_in_list(food: &Food) -> String {
    match food {
        Food::Listed(_) => name::food_short(food).to_lowercase(),
        Food::Own(own) => own.name.clone(),
    }
}

/// What the packet of a made-up food usually says; none for a single food. A maker may change the
/// recipe, so it is said at each purchase.
#[must_use]
pub fn of_packet(food: &Food) -> Option<String> {
    if !food.packet_decides() {
        return None;
    }
    let held = |wanted: Presence| {
        let all = Allergen::ALL.into_iter();
        all.filter(move |one| food.presence(*one) == Some(wanted))
    };
    let says: Vec<String> = usually(held(Presence::Usual))
        .into_iter()
        .chain(perhaps(held(Presence::Possible)))
        .collect();
    Some(if says.is_empty() {
        tr!("Read the packet for allergens.").to_owned()
    } else {
        says.join(" ")
    })
}

fn line(row: &AllergenRow, formula: &Formula) -> AllergenLine {
    let of = |at: LineAt| {
        formula
            .line(at)
            .map(|line| name::food_short(&line.food).into_owned())
            .unwrap_or_default()
    };
    let mut foods: Vec<String> = Vec::new();
    for source in &row.sources {
        let one = match *source {
            AllergenSource::Ingredient(at) => of(at),
            AllergenSource::Marked(at) => tr!("{value} (packet)", value = of(at)),
            AllergenSource::MayContain(at) => tr!("{value} (packet: may contain)", value = of(at)),
            AllergenSource::Usual(at) => {
                tr!("{value} (usually; read the packet)", value = of(at))
            }
            AllergenSource::Possible(at) => {
                tr!("{value} (perhaps; read the packet)", value = of(at))
            }
            AllergenSource::Kitchen => tr!("your kitchen").to_owned(),
        };
        if !foods.contains(&one) {
            foods.push(one);
        }
    }
    AllergenLine {
        name: name::allergen(row.allergen),
        sources: foods.join(tr!("; ")),
    }
}
