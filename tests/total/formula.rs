//! The formula: percentages lead back to weights, shares change with the bread held, water adds
//! up, targets are met, and no argument brings anything down.

use proptest::prelude::*;
use softcrumb::engine::formula::{
    Basis, Bread, Compared, Figure, Figures, Form, Formula, FormulaError, Hold, Line, LineAt,
    StreamKind, Target, WaterLedger, WhatIf, cautions, giving_way, percentage, reach, set_mass,
    set_paste_ratio, set_percentage, set_stream_mass, set_stream_share, stream_totals, swap,
};
use softcrumb::engine::larder::{Food, Listed};
use softcrumb::engine::quantity::{Mass, Share};
use softcrumb::engine::working;

use crate::dough::{any_mass, any_share, cases, likely, wild};

const BASES: [Basis; 2] = [Basis::AllFlour, Basis::OwnStream];

/// A billionth of the larger, or of a gram.
fn close(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-9 * (1.0 + one.abs().max(other.abs()))
}

fn places(formula: &Formula) -> Vec<LineAt> {
    let streams = formula.streams.iter().enumerate();
    streams
        .flat_map(|(stream, own)| (0..own.lines.len()).map(move |line| LineAt { stream, line }))
        .collect()
}

fn pick<T: Copy>(from: &[T], nth: prop::sample::Index) -> T {
    from[nth.index(from.len())]
}

fn alike(one: &Line, other: &Line) -> bool {
    one.food == other.food && one.is_flour() == other.is_flour()
}

/// How much the dough holds of what is on a line.
fn overall(formula: &Formula, like: &Line) -> f64 {
    let lines = formula.dough_streams().flat_map(|stream| &stream.lines);
    lines
        .filter(|line| alike(line, like))
        .map(|line| line.mass.grams())
        .sum()
}

fn same_bread(one: &Formula, other: &Formula) -> bool {
    [one, other].iter().all(|formula| {
        let mut lines = formula.dough_streams().flat_map(|stream| &stream.lines);
        lines.all(|line| close(overall(one, line), overall(other, line)))
    })
}

fn true_water(formula: &Formula) -> f64 {
    let share = Figures::of(formula, Form::AsWritten).share(Figure::TrueWater);
    share.unwrap().fraction()
}

fn mass_of(formula: &Formula, figure: Figure) -> f64 {
    Figures::of(formula, Form::AsWritten).mass(figure).grams()
}

/// How much of an ingredient would be missing if a stream were made so many times as heavy.
fn missing(formula: &Formula, stream: usize, like: &Line, factor: f64) -> f64 {
    let there: f64 = formula
        .streams
        .iter()
        .filter(|own| own.kind == StreamKind::Final)
        .flat_map(|own| &own.lines)
        .filter(|line| alike(line, like))
        .map(|line| line.mass.grams())
        .sum();
    let taken: f64 = formula.streams[stream]
        .lines
        .iter()
        .filter(|line| alike(line, like))
        .map(|line| line.mass.grams() * (factor - 1.0))
        .sum();
    taken - there
}

proptest! {
    #![proptest_config(cases(20_000))]

    #[test]
    fn a_percentage_leads_back_to_its_weight(
        formula in likely(), nth in any::<prop::sample::Index>(),
    ) {
        let at = pick(&places(&formula), nth);
        for basis in BASES {
            let Ok(found) = percentage(&formula, at, basis) else { continue };
            match set_percentage(&formula, at, basis, found.share) {
                Ok(back) => for place in places(&formula) {
                    let was = formula.line(place).unwrap().mass.grams();
                    let is = back.line(place).unwrap().mass.grams();
                    // One minus a share near the whole loses digits: seven are left.
                    prop_assert!((was - is).abs() <= 1e-9 + 1e-7 * was, "{} {}", was, is);
                },
                // The only flour is all of the flour, whatever it weighs.
                Err(refused) => {
                    let cannot_move = matches!(refused, FormulaError::CannotMove { .. });
                    prop_assert!(cannot_move);
                    prop_assert!(formula.line(at).unwrap().is_flour());
                    prop_assert!(close(found.share.fraction(), 1.0));
                }
            }
        }
    }

    #[test]
    fn a_stream_takes_another_share_and_the_bread_is_held(
        formula in likely(), nth in any::<prop::sample::Index>(), asked in 0.0..0.9f64,
    ) {
        let stream = nth.index(formula.streams.len() - 2);
        let own = &formula.streams[stream];
        let factor = asked * formula.flour().grams() / own.flour().grams();
        match set_stream_share(&formula, stream, Share::from_fraction(asked).unwrap()) {
            Ok(changed) => {
                prop_assert!(same_bread(&formula, &changed));
                let totals = stream_totals(&changed, stream).unwrap();
                prop_assert!(close(totals.flour_share.fraction(), asked));
                for (was, is) in own.lines.iter().zip(&changed.streams[stream].lines) {
                    prop_assert!(close(was.mass.grams() * factor, is.mass.grams()));
                }
                for (other, was) in formula.streams.iter().enumerate() {
                    if other != stream && was.kind != StreamKind::Final {
                        prop_assert_eq!(was, &changed.streams[other]);
                    }
                }
            }
            Err(FormulaError::BelowZero { food, short }) => {
                let worst = own.lines.iter()
                    .filter(|line| line.food.name() == food)
                    .map(|line| missing(&formula, stream, line, factor))
                    .fold(0.0, f64::max);
                prop_assert!(worst > 0.0 && short.grams() <= worst * 1.000_001);
            }
            Err(other) => prop_assert!(false, "{:?}", other),
        }
    }

    #[test]
    fn a_paste_takes_another_ratio_and_the_bread_is_held(
        formula in likely(), nth in any::<prop::sample::Index>(), asked in 0.0..6.0f64,
    ) {
        let stream = nth.index(formula.streams.len() - 2);
        match set_paste_ratio(&formula, stream, Share::from_fraction(asked).unwrap()) {
            Ok(changed) => {
                prop_assert!(same_bread(&formula, &changed));
                let (was, is) = (&formula.streams[stream], &changed.streams[stream]);
                let ratio = is.liquid().grams() / is.flour().grams();
                prop_assert!(close(ratio, asked));
                prop_assert_eq!(was.flour() > Mass::ZERO, is.flour() > Mass::ZERO);
            }
            Err(refused) => {
                let below_zero = matches!(refused, FormulaError::BelowZero { .. });
                prop_assert!(below_zero, "{:?}", refused);
            }
        }
    }

    #[test]
    fn a_stream_takes_another_weight_in_proportion(
        formula in likely(), nth in any::<prop::sample::Index>(), asked in 1.0..5000.0f64,
    ) {
        let stream = nth.index(formula.streams.len() - 1);
        let wanted = Mass::from_grams(asked).unwrap();
        let changed = set_stream_mass(&formula, stream, wanted).unwrap();
        let (was, is) = (&formula.streams[stream], &changed.streams[stream]);
        prop_assert!(close(is.mass().grams(), asked));
        let factor = asked / was.mass().grams();
        for (was, is) in was.lines.iter().zip(&is.lines) {
            prop_assert!(close(was.mass.grams() * factor, is.mass.grams()));
        }
    }

    #[test]
    fn the_parts_of_the_water_add_up(formula in likely(), steam in 0.0..40.0f64) {
        let mut formula = formula;
        formula.streams[0].steam = Mass::from_grams(steam).unwrap();
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
        match reach(&formula, Target::OfFlour(figure, share), at) {
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
        if let Ok(reached) = reach(&formula, Target::Moisture(moisture), at) {
            let is = Figures::of(&reached.formula, Form::AsWritten).moisture().unwrap();
            prop_assert!(close(is.fraction(), moisture.fraction()));
        }
        let wanted = Mass::from_grams(dough).unwrap();
        let rest = formula.dough().grams() - formula.line(at).unwrap().mass.grams();
        match reach(&formula, Target::Weight(Figure::Dough, wanted), at) {
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
                line.mass.part(line.food.composition().water).grams()
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

    #[test]
    fn whatever_comes_through_the_doors_gives_numbers_or_a_reason(
        formula in wild(), stream in 0..6usize, line in 0..6usize,
        share in any_share(), mass in any_mass(),
        figure in prop::sample::select(&Figure::ALL[..]),
    ) {
        let at = LineAt { stream, line };
        let listed = |number| Food::Listed(Listed::numbered(number).unwrap());
        let mut changed = vec![
            set_mass(&formula, at, mass),
            set_stream_share(&formula, stream, share),
            set_paste_ratio(&formula, stream, share),
            set_stream_mass(&formula, stream, mass),
            swap(&formula, at, listed(1), Hold::OwnWater),
            swap(&formula, at, listed(200), Hold::TrueWater(at)),
        ];
        changed.extend(BASES.map(|basis| set_percentage(&formula, at, basis, share)));
        changed.extend(WhatIf::ALL.map(|what_if| what_if.of(&formula)));
        for target in [
            Target::OfFlour(figure, share), Target::Moisture(share), Target::Weight(figure, mass),
        ] {
            changed.push(reach(&formula, target, at).map(|reached| {
                numbers_only(&reached.working());
                reached.formula
            }));
        }
        look_at(&formula);
        for result in changed.iter().flatten() {
            look_at(result);
            let compared = Compared::of(&formula, result, Form::AsMade);
            for (_, sides) in &compared.figures {
                numbers_only(&sides.working());
            }
        }
    }
}

/// Every figure of a formula is a number, and its shares are numbers or have a reason.
fn look_at(formula: &Formula) {
    for place in places(formula) {
        let grams = formula.line(place).unwrap().mass.grams();
        assert!(Mass::RANGE.contains(&grams), "{grams}");
        for basis in BASES {
            if let Ok(found) = percentage(formula, place, basis) {
                numbers_only(&found.working());
            }
        }
    }
    for stream in 0..formula.streams.len() {
        if let Ok(totals) = stream_totals(formula, stream) {
            numbers_only(&totals.working());
        }
    }
    for form in [Form::AsWritten, Form::AsMade] {
        let figures = Figures::of(formula, form);
        for figure in Figure::ALL {
            let grams = figures.mass(figure).grams();
            assert!(grams.is_finite() && grams >= 0.0, "{figure:?} {grams}");
        }
        if let Ok(ledger) = WaterLedger::of(formula, form) {
            numbers_only(&ledger.working());
        }
    }
    for bread in Bread::ALL {
        // Nothing can be a share of flour where there is none, or next to none.
        let figures = Figures::of(formula, Form::AsWritten);
        if cautions(formula, bread).is_err() {
            let mut shares = Figure::ALL.iter().map(|figure| figures.share(*figure));
            assert!(shares.any(|share| share.is_err()));
        } else {
            assert!(figures.mass(Figure::Flour) > Mass::ZERO);
        }
    }
}

fn numbers_only(lines: &[working::Line]) {
    for line in lines {
        assert!(line.gives.value.is_finite(), "{line:?}");
        let finite = line.with.iter().all(|given| given.value.is_finite());
        assert!(finite, "{line:?}");
    }
}
