//! Any typed text is read or refused with a reason.

use super::format_options::{american, british, cases, german};
use proptest::prelude::*;
use softcrumb::engine::quantity::{Factor, Mass, Share, Temperature, Viscosity};
use softcrumb::text::read;

/// Reads a text as every quantity; it only has to return.
fn read_as_all(typed: &str) {
    for options in [british(), german(), american()] {
        if let Ok(mass) = read::mass(typed, options) {
            assert!(Mass::RANGE.contains(&mass.grams()));
        }
        if let Ok(share) = read::share(typed, options) {
            assert!(Share::RANGE.contains(&share.fraction()));
        }
        if let Ok(temperature) = read::temperature(typed, options) {
            assert!(Temperature::RANGE.contains(&temperature.celsius()));
        }
        if let Ok(factor) = read::factor(typed, options) {
            assert!(Factor::RANGE.contains(&factor.number()));
        }
        if let Ok(viscosity) = read::viscosity(typed, options) {
            assert!(Viscosity::RANGE.contains(&viscosity.pascal_seconds()));
        }
        if let Ok(count) = read::count(typed, options) {
            assert!(count.get() > 0);
        }
    }
}

proptest! {
    #![proptest_config(cases(crate::cases::cases(10_000)))]

    #[test]
    fn any_text_is_read_or_refused(typed in "\\PC{0,24}") {
        read_as_all(&typed);
    }

    #[test]
    fn any_text_close_to_a_number_is_read_or_refused(
        typed in "[-+−]?[0-9٠-٩０-９ .,'’/½eE+\u{A0}-]{0,20}[ a-zA-Z°%×·]{0,5}[0-9]{0,3}"
    ) {
        read_as_all(&typed);
    }

    #[test]
    fn any_characters_at_all_are_read_or_refused(typed in any::<String>()) {
        read_as_all(&typed);
    }
}
