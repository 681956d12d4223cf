//! Water adds up; targets, swaps and trials do what they say; comparisons leave nothing out.

use proptest::prelude::*;
use softcrumb::engine::formula::{
    Compared, Figure, FigureTarget, Figures, Form, Formula, FormulaError, Hold, WaterLedger,
    WhatIf, giving_way, reach, set_mass, swap,
};
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::{Mass, Share};

use crate::dough::{cases, close, likely, pick, places, same_bread};

fn true_water(formula: &Formula) -> f64 {
    let share = Figures::of(formula, Form::AsWritten).share(Figure::TrueWater);
    share.unwrap().fraction()
}

fn mass_of(formula: &Formula, figure: Figure) -> f64 {
    Figures::of(formula, Form::AsWritten).mass(figure).grams()
}

proptest! {
    #![proptest_config(cases(crate::cases::cases(20_000)))]

    #[test]
    fn the_parts_of_the_water_add_up(formula in likely(), steam in 0.0..40.0f64) {
        let mut formula = formula;
        formula.parts[0].steam = Mass::from_grams(steam).unwrap();
        for form in [Form::AsWritten, Form::AsMade] {
            let Ok(ledger) = WaterLedger::of(&formula, form) else { continue };
            let sits = ledger.in_paste.mass + ledger.in_preferment.mass + ledger.free.mass;
            prop_assert!(close(sits.grams(), ledger.true_water.mass.grams()));
            let brought: f64 = ledger.from.iter().map(|one| one.water.grams()).sum();
            prop_assert!(close(brought - ledger.steam.grams(), ledger.total.mass.grams()));
            let of_flour: f64 = ledger.from.iter()
                .filter(|one| one.is_flour)
                .map(|one| one.water.grams())
                .sum();
            let beside_flour = ledger.total.mass.grams() - of_flour;
            prop_assert!(close(beside_flour, ledger.true_water.mass.grams()));
            prop_assert!(ledger.poured.mass <= ledger.liquids.mass);
            prop_assert!(ledger.steam.grams() <= steam);
            prop_assert!(form == Form::AsMade || ledger.steam == Mass::ZERO);
            prop_assert!(ledger.moisture.fraction() < 1.0);
            prop_assert!(ledger.from.is_sorted_by(|one, next| one.water >= next.water));
        }
    }

    #[test]
    fn a_target_is_met_or_no_weight_would_meet_it(
        formula in likely(), nth in any::<prop::sample::Index>(),
        figure in prop::sample::select(&Figure::ALL[..]), asked in 0.0..1.5f64,
    ) {
        let at = pick(&places(&formula), nth);
        let share = Share::from_fraction(asked).unwrap();
        let read = |formula: &Formula| {
            Figures::of(formula, Form::AsWritten).share(figure).map(Share::fraction)
        };
        match reach(&formula, FigureTarget::OfFlour(figure, share), at) {
            Ok(reached) => {
                let is = read(&reached.formula).unwrap();
                prop_assert!(close(is, asked), "{} {}", is, asked);
                let was = formula.line(at).unwrap().mass;
                prop_assert_eq!(set_mass(&reached.formula, at, was).unwrap(), formula);
            }
            // Of something that brings next to none of it, more than a tonne would be needed.
            Err(FormulaError::OffScale(_)) => {}
            Err(_) => {
                // With none of it, and with a tonne, the figure must lie on one side.
                let side = |grams: f64| {
                    let mass = Mass::from_grams(grams).unwrap();
                    read(&set_mass(&formula, at, mass).unwrap()).ok().map(|is| is - asked)
                };
                if let (Some(none), Some(much)) = (side(0.0), side(1e6)) {
                    prop_assert!(none * much >= -1e-9, "{} {}", none, much);
                }
            }
        }
    }

    #[test]
    fn moisture_and_dough_weight_are_met(
        formula in likely(), moisture in 0.2..0.6f64, dough in 100.0..4000.0f64,
    ) {
        let at = giving_way(&formula).unwrap();
        let moisture = Share::from_fraction(moisture).unwrap();
        if let Ok(reached) = reach(&formula, FigureTarget::Moisture(moisture), at) {
            let is = Figures::of(&reached.formula, Form::AsWritten).moisture().unwrap();
            prop_assert!(close(is.fraction(), moisture.fraction()));
        }
        let wanted = Mass::from_grams(dough).unwrap();
        let rest = formula.dough().grams() - formula.line(at).unwrap().mass.grams();
        match reach(&formula, FigureTarget::Weight(Figure::Dough, wanted), at) {
            Ok(reached) => prop_assert!(close(reached.formula.dough().grams(), dough)),
            Err(_) => prop_assert!(rest > dough),
        }
    }

    #[test]
    fn a_swap_holds_what_it_is_to_hold(
        formula in likely(), nth in any::<prop::sample::Index>(),
        food in prop::sample::select(Listed::all().collect::<Vec<_>>()),
    ) {
        let at = pick(&places(&formula), nth);
        let food = Food::Listed(food);
        let swapped = swap(&formula, at, food.clone(), Hold::Weight).unwrap();
        prop_assert_eq!(swapped.line(at).unwrap().mass, formula.line(at).unwrap().mass);
        prop_assert_eq!(&swapped.line(at).unwrap().food, &food);
        if let Ok(swapped) = swap(&formula, at, food.clone(), Hold::OwnWater) {
            let water = |formula: &Formula| {
                let line = formula.line(at).unwrap();
                line.mass.component(line.food.composition().water).grams()
            };
            prop_assert!(close(water(&swapped), water(&formula)));
        }
        let giving = giving_way(&formula).unwrap();
        if let Ok(swapped) = swap(&formula, at, food, Hold::TrueWater(giving)) {
            prop_assert!(close(true_water(&swapped), true_water(&formula)));
        }
    }

    #[test]
    fn a_trial_changes_what_it_says_and_no_more(formula in likely()) {
        let now = true_water(&formula);
        if let Ok(more) = WhatIf::MoreWater.of(&formula) {
            prop_assert!(close(true_water(&more), now + 0.02));
        }
        if let Ok(less) = WhatIf::LessWater.of(&formula) {
            prop_assert!(close(true_water(&less), (now - 0.02).max(0.0)));
        }
        let milky = WhatIf::MilkForWater.of(&formula).unwrap();
        prop_assert!(close(true_water(&milky), now));
        let poured = mass_of(&milky, Figure::PouredWater);
        prop_assert!(poured < mass_of(&formula, Figure::PouredWater));
        if let Ok(watery) = WhatIf::WaterForMilk.of(&formula) {
            prop_assert!(close(true_water(&watery), now));
            let liquids = mass_of(&watery, Figure::Liquids);
            prop_assert!(liquids <= mass_of(&formula, Figure::Liquids));
        }
        match WhatIf::LessPaste.of(&formula) {
            Ok(changed) => {
                prop_assert!(same_bread(&formula, &changed));
                let scalded = mass_of(&formula, Figure::ScaldedFlour);
                prop_assert!(close(0.75 * scalded, mass_of(&changed, Figure::ScaldedFlour)));
            }
            Err(refused) => {
                prop_assert_eq!(refused, FormulaError::NothingGivesWay);
                prop_assert!(mass_of(&formula, Figure::ScaldedFlour) <= 0.0);
            }
        }
    }

    #[test]
    fn two_formulas_side_by_side_leave_no_line_out(one in likely(), other in likely()) {
        let compared = Compared::of(&one, &other, Form::AsWritten);
        let mut olds: Vec<_> = compared.lines.iter().filter_map(|pair| pair.old_at).collect();
        let news: Vec<_> = compared.lines.iter().filter_map(|pair| pair.new_at).collect();
        olds.sort_unstable();
        prop_assert_eq!(olds, places(&one));
        prop_assert_eq!(news, places(&other));
        for pair in &compared.lines {
            if let (Some(old), Some(new)) = (pair.old_at, pair.new_at) {
                prop_assert_eq!(&one.line(old).unwrap().food, &other.line(new).unwrap().food);
            }
        }
        let changes: f64 = compared.lines.iter()
            .filter(|pair| pair.kind.in_dough())
            .map(|pair| pair.sides.change().grams())
            .sum();
        prop_assert!(close(changes, (other.dough() - one.dough()).grams()));
        let itself = Compared::of(&one, &one, Form::AsWritten);
        let of_lines = itself.lines.iter().map(|pair| pair.sides);
        for sides in of_lines.chain(itself.figures.iter().map(|(_, sides)| *sides)) {
            prop_assert_eq!(sides.old, sides.new);
            prop_assert_eq!(sides.old_share, sides.new_share);
        }
    }
}
