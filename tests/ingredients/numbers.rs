//! Numbers are for ever: records and links of any age find the food they were written with.

use softcrumb::engine::ingredients::{Listed, Source};

/// Every number ever given out, and the line of the table behind it. Lines are added at the end
/// of a family, never changed and never taken out.
const GIVEN_OUT: &str = include_str!("numbers.csv");

#[test]
fn every_number_given_out_still_means_the_same_food() {
    let mut held = 0;
    for line in GIVEN_OUT.lines().skip(1) {
        let cells: Vec<_> = line.split(',').collect();
        let code = cells[2].parse().unwrap();
        let source = match cells[1] {
            "sr28" => Source::UsdaSr28(code),
            "ciqual" => Source::Ciqual2020(code),
            other => panic!("no table is called {other}"),
        };
        let row = Listed::numbered(cells[0].parse().unwrap()).unwrap().row();
        assert_eq!(row.source, source, "{line}");
        held += 1;
    }
    let listed = Listed::all().count();
    assert_eq!(
        held, listed,
        "a new number must be written down in numbers.csv"
    );
}
