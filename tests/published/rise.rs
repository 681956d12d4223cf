//! The rise against published temperatures, times and doses.

use softcrumb::engine::quantity::{Factor, Minutes, Share, Temperature};
use softcrumb::engine::rise::{
    Cardinal, ReferenceRise, RiseAsked, RiseError, Risen, YeastActivity, rise, salt_factor, steady,
    sugar_factor,
};

use crate::printed::{agrees, agrees_within, number};
use crate::table::rows;

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn fahrenheit(f: f64) -> Temperature {
    celsius((f - 32.0) / 1.8)
}

fn cardinal(least: &str, best: &str, most: &str) -> Cardinal {
    let at = |printed| celsius(number(printed));
    Cardinal::new(at(least), at(best), at(most)).unwrap()
}

/// The rate's own formula with the values of strain PE35M of Salvadó et al. 2011, *Applied and
/// Environmental Microbiology* 77:2292–2302, in the curve of Rosso, Lobry and Flandrois 1993,
/// *Journal of Theoretical Biology* 162:447–463; reckoned apart from this program.
#[test]
fn the_curve_of_a_strain_is_met_at_every_temperature() {
    let table = rows(include_str!("data/cardinal_checkpoints.csv"));
    assert!(table.len() >= 24);
    for row in table {
        let curve = cardinal(&row["Tmin"], &row["Topt"], &row["Tmax"]);
        assert_eq!(curve, Cardinal::GROWTH);
        let rate = curve.rate(celsius(number(&row["T_C"])));
        agrees(rate.fraction(), &row["gamma"]);
    }
}

/// Ross et al. 2003, *International Journal of Food Microbiology* 82:33–43: 27 growth rates of a
/// bacterium, as square roots. Least squares through this curve gives µ 1.81154 at the best,
/// 6.12679, 41.07631 and 48.12113 °C, with a sum of squares of 0.022123 (fitted with scipy).
#[test]
fn the_curve_fits_published_growth_as_closely_as_it_was_fitted() {
    let curve = cardinal("6.12679", "41.07631", "48.12113");
    let table = rows(include_str!("data/salter_growth.csv"));
    assert_eq!(table.len(), 27);
    let squares: f64 = table
        .iter()
        .map(|row| {
            let rate = curve.rate(celsius(number(&row["T"]))).fraction();
            let miss = (1.81154 * rate).sqrt() - number(&row["sqrtmumax"]);
            miss * miss
        })
        .sum();
    agrees(squares, "0.022123");
}

fn known(minutes: f64, at: Temperature) -> ReferenceRise {
    ReferenceRise::stated(Minutes::from_minutes(minutes).unwrap(), at)
}

/// A dough that stays at `at`, scaled from a known rise.
fn at_rest(anchor: ReferenceRise, at: Temperature) -> Risen {
    let course = steady(at, Minutes::from_minutes(2880.0).unwrap()).unwrap();
    let asked = RiseAsked {
        anchor,
        cardinal: Cardinal::DOUGH,
        yeast_activity: Factor::ONE,
        volume: Factor::TWO,
    };
    rise(&course, &asked).unwrap()
}

fn holds(risen: &Risen, minutes: f64) -> bool {
    let latest = risen.latest.unwrap().minutes();
    (risen.soonest.minutes()..=latest).contains(&minutes)
}

/// A baker's rule of time and temperature printed in a trade article on doubling doughs: 2 hours
/// at 80 °F, 4 hours at 63 °F, 1 hour at 97 °F.
///
/// The cool end lies within our range of a fifth either way. The hot end does not: at 36 °C yeast
/// is at its best, and we give 88 minutes, at the soonest 73, where the rule goes on doubling.
#[test]
fn the_rule_of_seventeen_fahrenheit_is_met_in_the_cool_and_missed_in_the_heat() {
    let anchor = known(120.0, fahrenheit(80.0));
    let cool = at_rest(anchor, fahrenheit(63.0));
    assert!(holds(&cool, 240.0), "{:?}", cool.due);
    agrees_within(cool.due.minutes(), "240", 30.0);
    let hot = at_rest(anchor, fahrenheit(97.0));
    agrees(hot.due.minutes(), "88");
    agrees(hot.soonest.minutes(), "73");
    assert!(!holds(&hot, 60.0));
}

/// US Armed Forces recipe service, bread cards: sponges at 78 to 82 °F take 3¼ hours, normally
/// 3½ to 4 (so printed, for one temperature range).
#[test]
fn sponge_times_of_a_whole_range_of_temperatures_lie_in_the_range_of_its_middle() {
    let middle = known(225.0, fahrenheit(80.0));
    for degrees in [78.0, 80.0, 82.0] {
        let there = at_rest(middle, fahrenheit(degrees));
        for minutes in [210.0, 240.0] {
            assert!(holds(&there, minutes), "{degrees} {:?}", there.due);
        }
    }
    assert!(holds(&at_rest(middle, fahrenheit(80.0)), 195.0));
}

/// The same article, near 40 °F: fermentation nearly stops.
#[test]
fn a_fridge_nearly_stops_a_dough() {
    let slow = Cardinal::DOUGH.rate(fahrenheit(40.0)).fraction();
    let warm = Cardinal::DOUGH.rate(fahrenheit(80.0)).fraction();
    assert!(slow > 0.0 && slow / warm < 0.025, "{}", slow / warm);
}

/// From 20 to 30 °C. Growth in broth (Salvadó et al. 2011, PE35M): 1.43. Bakers: twice for 17 °F,
/// which is 2.083 for 10 K; a tenth for each kelvin ("The science of fermentation", *Bake
/// Magazine*), which is 2.59. Ours lies between the two, nearer to the bakers in the ratio.
#[test]
fn ten_kelvin_lie_between_growth_in_broth_and_the_rules_of_bakers() {
    let ten = |curve: Cardinal| {
        curve.rate(celsius(30.0)).fraction() / curve.rate(celsius(20.0)).fraction()
    };
    agrees(ten(Cardinal::GROWTH), "1.43");
    agrees(ten(Cardinal::DOUGH), "1.97");
    agrees(libm::pow(2.0, 18.0 / 17.0), "2.083");
    agrees(libm::pow(1.1, 10.0), "2.59");
    // Its square against their product: nearer to the bakers, by ratio.
    let nearer = ten(Cardinal::DOUGH) * ten(Cardinal::DOUGH) > 2.083 * 1.43;
    assert!(nearer);
}

/// Marek and Bushuk 1967, *Cereal Chemistry* 44:300–307: gas falls from 5 % of sugar on, and salt
/// lowers it. How far is printed for single strains only: 5 % of glucose left 0.80 of the gas of a
/// laboratory dough, 10 % of sucrose 0.29 of a lean strain's, so the fall lies above that one.
#[test]
fn sugar_slows_from_five_percent_on_and_salt_from_the_first() {
    let percent = |p: f64| Share::from_percent(p).unwrap();
    let left = |p: f64| sugar_factor(percent(p)).fraction();
    agrees(left(5.0), "1.00");
    assert!(left(5.1) < 1.0 && left(10.0) > 0.29);
    agrees(left(20.0), "0.50");
    agrees(salt_factor(percent(2.0)).fraction(), "0.88");
    let mut before = 1.1;
    for tenth in 50_u32..=1000 {
        let now = left(f64::from(tenth) / 10.0);
        assert!(now <= before, "{tenth}");
        before = now;
    }
}

#[test]
fn three_temperatures_out_of_order_make_no_curve() {
    for (n, o, x) in [(5.0, 5.0, 40.0), (5.0, 41.0, 40.0), (0.0, 20.0, 41.0)] {
        let refused = Cardinal::new(celsius(n), celsius(o), celsius(x));
        assert!(matches!(refused, Err(RiseError::NotCardinal { .. })));
    }
}

fn of_shares(yeast: f64, sugar: f64, salt: f64) -> YeastActivity {
    let percent = |p: f64| Share::from_percent(p).unwrap();
    YeastActivity::of(percent(yeast), percent(sugar), percent(salt)).unwrap()
}

fn times(now: YeastActivity, then: YeastActivity) -> f64 {
    now.against(&then).unwrap().number()
}

/// Rincón et al. 2001, *Applied and Environmental Microbiology* 67:4279–4285, table 3: a plain dough
/// with 5 % of yeast made 1800 of gas in two hours, one with 2.8 % made 1200: 1.5 times, where yeast
/// in proportion gives 1.79. That lies just within the fifth that a rise is known to.
///
/// The same strain with 5.6 % of yeast and 10 % of sucrose made 580, less than half of the plain
/// dough; ours gives 1.6 times. That strain is not one for sweet doughs, and this is missed.
#[test]
fn more_yeast_is_faster_within_a_fifth_and_a_lean_strain_in_sugar_is_missed() {
    let ours = times(of_shares(5.0, 0.0, 0.0), of_shares(2.8, 0.0, 0.0));
    agrees_within(ours / (1800.0 / 1200.0), "1.00", 0.2);
    let sweet = times(of_shares(5.6, 10.0, 0.0), of_shares(2.8, 0.0, 0.0));
    assert!(sweet > 580.0 / 1200.0);
    agrees(sweet, "1.60");
}

/// Common practice: twice the yeast takes half the time; a sweet dough of 20 % of sugar takes twice
/// the yeast of a lean one; 2 % of salt costs about an eighth.
#[test]
fn rules_of_thumb_of_yeast_sugar_and_salt_are_met() {
    agrees(
        times(of_shares(4.0, 8.0, 2.0), of_shares(2.0, 8.0, 2.0)),
        "2.00",
    );
    agrees(
        times(of_shares(4.0, 20.0, 2.0), of_shares(2.0, 5.0, 2.0)),
        "1.00",
    );
    agrees(
        times(of_shares(2.0, 0.0, 2.0), of_shares(2.0, 0.0, 0.0)),
        "0.88",
    );
}
