//! Doughs against each other: yeast, sugar and salt against published gas, rules and recipes.

use softcrumb::engine::formula::{Figure, Figures, Form, Formula, Line, Part, PartKind};
use softcrumb::engine::heat::Sample;
use softcrumb::engine::ingredients::{Food, Listed};
use softcrumb::engine::quantity::{Factor, Mass, Minutes, Share, Temperature};
use softcrumb::engine::rise::{
    Cardinal, ReferenceRise, RiseAsked, Risen, YeastActivity, rise, salt_factor, steady,
    sugar_factor,
};

use crate::printed::{agrees, agrees_within, disagrees};
use crate::rise::{at_rest, celsius, holds, holds_printed, known};

/// Fresh yeast in percent of the flour that counts as much as 1 % of another, by its number.
fn as_fresh(yeast: u16) -> f64 {
    let food = |number| Food::Listed(Listed::numbered(number).unwrap());
    let line = |number, grams| Line::new(food(number), Mass::from_grams(grams).unwrap());
    let mut dough = Part::empty(PartKind::Final, "Dough".to_owned());
    dough.lines = vec![line(1, 100.0), line(yeast, 1.0)];
    let formula = Formula { parts: vec![dough] };
    let share = Figures::of(&formula, Form::AsMade).share(Figure::FreshYeast);
    share.unwrap().percent()
}

const ACTIVE_DRY: u16 = 901;
const INSTANT: u16 = 902;

/// AACC, *Approved Methods of Analysis*, 89-01.01: about 30, 92 and 95 % of dry matter; so active
/// dry and instant yeast count 0.326 and 0.316 of compressed. A professional bread book prints 0.40
/// and 0.33. The food table's compressed yeast holds a percent more dry matter, and it has one row
/// for both dried ones, so that a thirtieth is left between ours and these.
///
/// DISAGREEMENT: the book's 0.40 counts cells lost in drying, which dry matter does not know.
#[test]
fn yeasts_are_exchanged_by_dry_matter() {
    agrees_within(1.0 / as_fresh(ACTIVE_DRY), "0.326", 0.011);
    agrees_within(1.0 / as_fresh(INSTANT), "0.316", 0.011);
    agrees_within(1.0 / as_fresh(INSTANT), "0.33", 0.0165);
    disagrees(1.0 / as_fresh(ACTIVE_DRY), "0.40", 0.75..0.9);
}

/// Sugar on the flour, in percent, and what it leaves of the speed.
fn left(sugar: f64) -> f64 {
    sugar_factor(Share::from_percent(sugar).unwrap()).fraction()
}

/// A note of an ingredient maker: sugar up to 5 % does not slow a dough, above 6 % it does, above
/// 10 % clearly, and salt is felt at 2 %. *Book of American Baking*, 1910: salt slows from 1.4 %.
/// Marek and Bushuk 1967, *Cereal Chemistry* 44:300–307: gas falls above 5 % of sugar.
#[test]
fn sugar_slows_from_five_percent_on_and_salt_from_the_first() {
    let salt = |p: f64| salt_factor(Share::from_percent(p).unwrap()).fraction();
    agrees_within(left(5.0), "1", 1e-12);
    assert!(left(5.1) < 1.0 && left(6.0) < 0.99 && left(10.0) < 0.9);
    assert!(salt(1.4) < 1.0 && salt(2.0) < 0.95);
    let mut before = left(5.0);
    for tenth in 51_u32..=1000 {
        let now = left(f64::from(tenth) / 10.0);
        assert!(now <= before, "{tenth}");
        before = now;
    }
}

/// Rincón et al. 2001, *Applied and Environmental Microbiology* 67:4279–4285, table 3: gas in two
/// hours. A laboratory dough with 2.5 % of yeast made 9.8, with 5 % of glucose 7.8; strain V1 with
/// 2.8 % of yeast 1200, with 5.6 % of yeast and 10 % of sucrose 580, with 26 % of sucrose 24.
///
/// DISAGREEMENT: these are lean strains, ours is for yeast that bears sugar. At 5 % the two are
/// within the fifth to which a rise is known; at 10 % ours leaves three times what V1 left; at 26 %
/// V1 made next to nothing, where ours still leaves more than a third.
#[test]
fn a_lean_strain_bears_less_sugar_than_ours() {
    agrees_within(left(5.0) * 7.8 / 9.8, "1", 0.21);
    disagrees(left(5.0), &(7.8 / 9.8).to_string(), 1.2..1.3);
    let of_v1 = |gas: f64, yeast: f64| (gas / 1200.0 / (yeast / 2.8)).to_string();
    disagrees(left(10.0), &of_v1(580.0, 5.6), 2.5..4.0);
    disagrees(left(26.0), &of_v1(24.0, 5.6), 10.0..100.0);
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
/// in proportion gives 1.79.
#[test]
pub(crate) fn much_yeast_brings_less_than_its_share() {
    let ours = times(of_shares(5.0, 0.0, 0.0), of_shares(2.8, 0.0, 0.0));
    agrees(ours / (1800.0 / 1200.0), "1.00");
}

/// Common practice: twice the yeast takes half the time; a sweet dough of 20 % of sugar takes twice
/// the yeast of a lean one.
///
/// DISAGREEMENT: by the table above twice the yeast is worth less than twice, so that both rules are
/// missed by a sixth.
#[test]
pub(crate) fn rules_of_thumb_of_yeast_and_sugar_are_nearly_met() {
    let more = times(of_shares(4.0, 8.0, 2.0), of_shares(2.0, 8.0, 2.0));
    disagrees(more, "2.00", 0.8..0.9);
    let sweet = times(of_shares(4.0, 20.0, 2.0), of_shares(2.0, 5.0, 2.0));
    disagrees(sweet, "1.00", 0.8..0.9);
}

/// Active dry yeast in percent of flour, as fresh yeast of the same dry matter.
fn active_dry(percent: f64) -> f64 {
    percent * as_fresh(ACTIVE_DRY)
}

/// White bread of the US Armed Forces recipe service, card D00900: 1.56 % of active dry yeast,
/// 12.1 % of sugar, 1.56 % of salt; 45 to 50 minutes at 27 °C.
const WHITE_BREAD: (f64, f64, f64) = (1.56, 12.1, 1.56);

fn white_bread() -> YeastActivity {
    let (yeast, sugar, salt) = WHITE_BREAD;
    of_shares(active_dry(yeast), sugar, salt)
}

/// `then` of `anchor`, scaled to a dough `now` that stays at `at`.
fn scaled(
    anchor: ReferenceRise,
    then: YeastActivity,
    now: YeastActivity,
    at: Temperature,
) -> Risen {
    let course = steady(at, Minutes::from_minutes(2880.0).unwrap()).unwrap();
    let asked = RiseAsked {
        anchor,
        cardinal: Cardinal::DOUGH,
        yeast_activity: now.against(&then).unwrap(),
        volume: Factor::TWO,
    };
    rise(&course, &asked).unwrap()
}

/// Common practice: an hour at 26 °C with 1 % of instant yeast, here with the sugar and salt of the
/// bread on the card. Scaled to it, the card's 45 to 50 minutes lie at the late end of our range.
///
/// DISAGREEMENT, mild: ours is due an eighth early, because by dry matter active dry yeast
/// is worth as much as instant yeast; by the books' 0.40 and 0.33 it would be due after 43 minutes.
#[test]
pub(crate) fn white_bread_of_a_printed_card_rises_a_little_later_than_ours() {
    let (_, sugar, salt) = WHITE_BREAD;
    let fresh = as_fresh(INSTANT);
    let usual = of_shares(fresh, sugar, salt);
    let ours = scaled(
        known(60.0, celsius(26.0)),
        usual,
        white_bread(),
        celsius(27.0),
    );
    disagrees(ours.due.minutes(), "47.5", 0.8..0.95);
}

/// Rolls of a school recipe (USDA, 1988): 2.7 % of active dry yeast, 9.9 % of sugar, 2.2 % of salt;
/// 45 to 60 minutes at 32 °C. Scaled from the white bread above, which is printed too.
///
/// DISAGREEMENT: ours is up twice too soon, although much yeast counts less than its share.
#[test]
pub(crate) fn rolls_with_much_yeast_rise_far_later_than_ours() {
    let rolls = of_shares(active_dry(2.7), 9.9, 2.2);
    let ours = scaled(
        known(47.5, celsius(27.0)),
        white_bread(),
        rolls,
        celsius(32.0),
    );
    disagrees(ours.due.minutes(), "52.5", 0.4..0.6);
    assert!(!holds(&ours, 45.0), "{ours:?}");
}

/// A flour miller's recipes: a sweet dough doubles in 75 to 90 minutes at 24 to 29 °C. So printed for
/// one range: the longest at its cool end and the shortest at its warm end lie in our ranges.
#[test]
pub(crate) fn a_sweet_dough_doubles_in_the_times_of_a_miller() {
    let middle = known(82.5, celsius(26.5));
    assert!(holds_printed(&at_rest(middle, celsius(24.0)), 90.0));
    assert!(holds_printed(&at_rest(middle, celsius(29.0)), 75.0));
}

/// A dough of 26 °C in a fridge of 5 °C that nears it by a factor e in each 90 minutes.
fn into_the_fridge(yeast: f64) -> Risen {
    let mut course = steady(celsius(5.0), Minutes::from_minutes(4000.0).unwrap()).unwrap();
    course.moments = (0..=2000)
        .map(|step| {
            let time = 2.0 * f64::from(step);
            let mean = celsius(5.0 + 21.0 * libm::exp(-time / 90.0));
            Sample {
                time: Minutes::from_minutes(time).unwrap(),
                centre: mean,
                mean,
                surface: mean,
            }
        })
        .collect();
    let asked = RiseAsked {
        anchor: known(60.0, celsius(26.0)),
        cardinal: Cardinal::DOUGH,
        yeast_activity: Factor::from_number(yeast).unwrap(),
        volume: Factor::TWO,
    };
    rise(&course, &asked).unwrap()
}

/// A baker's notes: a dough that is up after an hour in the room takes 2 to 2½ hours in the fridge,
/// as its core needs some 1½ hours to cool; with 60 % of the yeast, 12 hours. That the 1½ hours are
/// a time constant, and the fridge has 5 °C, is our reading.
///
/// DISAGREEMENT: the first is met. The second is not: two thirds of the work are done by the time
/// it is cold, and ours then creeps, at 5 °C, for about twice the printed time.
#[test]
pub(crate) fn most_of_a_cold_rise_is_done_before_the_dough_is_cold() {
    assert!(holds_printed(&into_the_fridge(1.0), 150.0));
    disagrees(into_the_fridge(0.6).due.hours(), "12", 1.5..2.5);
}
