//! The shopping list in words, and as text to share.

use super::format_options::{all, british};
use super::plain_speech::{has_figures, is_plain};
use softcrumb::engine::quantity::{Mass, Money};
use softcrumb::results::batch::{self, scale};
use softcrumb::sheet::{Pantry, examples};
use softcrumb::text;

#[test]
fn the_shopping_list_has_every_figure_and_can_be_shared_as_text() {
    let (_, sheet) = examples().remove(0);
    let mut pantry = Pantry {
        currency: "kr".to_owned(),
        ..Pantry::default()
    };
    let flour = &sheet.formula.parts[0].lines[0].food;
    let item = pantry.item_mut(flour).unwrap();
    (item.holds, item.price) = (Mass::from_grams(2000.0).ok(), Money::from_amount(24.5).ok());
    let found = batch::shopping::of(&scale(&sheet).unwrap(), &pantry).unwrap();
    for options in all() {
        let view = text::shopping::view(&found, &pantry.currency, options);
        view.missing.iter().for_each(|text| is_plain(text));
        for row in &view.rows {
            has_figures(&row.needed);
            has_figures(&row.buy);
        }
        assert!(
            view.used.ends_with("kr") && !view.text.contains("Water"),
            "{view:?}"
        );
        assert_eq!(view.text.lines().count(), view.rows.len() - 1);
    }
    let view = text::shopping::view(&found, &pantry.currency, british());
    assert_eq!(
        view.rows[0].buy,
        "1\u{A0}pack of 2000\u{A0}g, 1534\u{A0}g left over"
    );
    // 466 g of 2000 g at 24.50.
    assert_eq!(view.rows[0].cost, "5.71\u{A0}kr");
}

#[test]
fn a_cost_without_any_price_is_not_shown_as_zero() {
    let (_, sheet) = examples().remove(1);
    let found = batch::shopping::of(&scale(&sheet).unwrap(), &Pantry::default()).unwrap();
    let view = text::shopping::view(&found, "kr", british());
    for cost in [&view.used, &view.each, &view.paid] {
        assert_eq!(cost, "no price yet");
    }
    assert!(view.working.is_empty());
    is_plain(&view.missing.unwrap());
}
