//! Files in words: what of a file was new.

use softcrumb::sheet::Added;
use softcrumb::text::import_report::{beside, formulas_imported};

#[test]
fn what_was_added_is_counted_and_nothing_is_said_of_nothing() {
    assert_eq!(beside(Added::default()), None);
    let added = Added {
        kitchens: 1,
        tins: 2,
        foods: 8,
        class: true,
        days: 1,
        bakes: 12,
    };
    assert_eq!(
        beside(added).unwrap(),
        "Added: one kitchen, 2 tins, 8 packets of ingredients, the class, one plan and 12 bakes of \
         the log. What was here stays as it is."
    );
    assert!(formulas_imported(0).starts_with("No formula"));
}
