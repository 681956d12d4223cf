//! How near each model comes to values from outside: the tests note what they compare, and a table
//! in `DEVELOPERS.md` sums it up.

use std::cell::RefCell;
use std::ops::RangeInclusive;

use crate::written_table::{Column, check};
use crate::{
    bake_by_shape, boiling, conduction, cooling, development, ice_in_dough, loaf, melt,
    mixer_warming, nutrition, paste, rise, rise_of_doughs, specific_heat, sugar_solution, syrup,
    tin, tin_rise, vessel_cooling,
};

thread_local! {
    /// The differences noted on this thread, each as a share of the value from outside.
    static NOTED: RefCell<Vec<f64>> = const { RefCell::new(Vec::new()) };
}

/// Notes a value beside one from outside.
pub(crate) fn note(value: f64, outside: f64) {
    note_range(value, outside, outside);
}

/// Notes a value beside a range from outside: inside it differs by nothing.
pub(crate) fn note_range(value: f64, from: f64, to: f64) {
    let nearest = value.clamp(from, to);
    if nearest != 0.0 {
        let share = (value - nearest).abs() / nearest.abs();
        NOTED.with_borrow_mut(|noted| noted.push(share));
    }
}

/// Holds a value against a range from outside, with some room at both ends for what the caller says
/// on the line above.
#[track_caller]
pub(crate) fn lies_in(value: f64, outside: &RangeInclusive<f64>, room: f64) {
    let (from, to) = (*outside.start(), *outside.end());
    note_range(value, from, to);
    assert!(
        (from - room..=to + room).contains(&value),
        "{value} is not from {from} to {to}"
    );
}

/// A model, the works it is compared with, and the tests that compare it.
type Model = (&'static str, &'static str, &'static [fn()]);

const MODELS: &[Model] = &[
    (
        "boiling point by height",
        "IAPWS-95 and IAPWS-97; US Standard Atmosphere 1976; ISO 2533",
        &[
            boiling::boiling_points_from_400_m_below_the_sea_to_5000_m_are_those_of_iapws,
            boiling::pressures_of_the_standard_atmosphere_are_those_of_the_standard,
            boiling::a_thousand_hectopascals_boil_water_as_the_formulations_own_check_value_says,
        ],
    ),
    (
        "specific heat of foods",
        "ASHRAE, *Refrigeration*; Choi and Okos 1986; measured foods",
        &[
            specific_heat::foods_of_the_ashrae_table_agree_once_fibre_is_counted_twice_as_it_does,
            specific_heat::measured_foods_are_met_within_what_the_model_promises,
            specific_heat::dry_sugar_and_dry_salt_have_their_own_measured_values,
            specific_heat::ice_has_the_specific_heat_of_ice,
        ],
    ),
    (
        "warming by the mixer",
        "*Baking & Snack*; bakers' lines of a miller and a mixer maker; Artisan Baking Center; \
         *Cook's Illustrated*; *Pizza Today*; common practice",
        &[
            mixer_warming::ten_minutes_warm_a_kilogram_by_three_and_a_half_to_five_kelvin,
            mixer_warming::hydration_alone_warms_a_dough_by_three_to_four_kelvin,
            mixer_warming::every_printed_friction_factor_meets_the_range_of_the_default,
        ],
    ),
    (
        "development of a cold dough",
        "Hlynka 1962",
        &[
            development::a_colder_dough_develops_later_by_hlynkas_measure,
        ],
    ),
    (
        "ice in a dough",
        "an ice dealer's table; balances computed by hand",
        &[
            ice_in_dough::a_fifth_of_the_flour_as_ice_takes_a_dough_down_by_eighteen_to_twenty_kelvin,
            ice_in_dough::ice_in_place_of_water_is_as_in_the_dealers_table,
        ],
    ),
    (
        "steam",
        "IAPWS-95; Çengel, *Heat and Mass Transfer*; *Engineering Toolbox*",
        &[
            paste::five_grams_of_steam_cool_a_paste_by_some_17_kelvin,
            paste::steam_carries_off_the_heat_that_steam_tables_print,
            vessel_cooling::an_open_surface_gives_off_what_the_lewis_relation_says,
            vessel_cooling::a_bowl_gives_off_as_much_as_a_tank_or_somewhat_more,
            vessel_cooling::an_open_bowl_loses_three_to_six_per_cent,
        ],
    ),
    (
        "conduction in slab, cylinder and ball",
        "Çengel; Incropera; Geankoplis; Holman; exact series",
        &[
            conduction::an_egg_boils_in_as_long_as_the_textbook_says,
            conduction::a_wall_warms_as_the_textbook_says,
            conduction::a_can_of_puree_heats_as_the_series_says_and_near_the_chart,
            conduction::a_steel_ball_cools_as_one,
            conduction::a_quenched_sphere_cools_in_the_exact_time_and_near_the_books,
            conduction::a_plate_gives_off_the_heat_that_the_series_says_and_near_the_chart,
        ],
    ),
    (
        "cooling in a vessel",
        "Çengel, *Heat and Mass Transfer*; Incropera's exact series, summed with `scipy`",
        &[
            vessel_cooling::a_brass_cylinder_cools_as_the_product_of_slab_and_cylinder,
            vessel_cooling::a_bowl_of_even_coefficient_follows_the_exact_series,
            vessel_cooling::a_bowl_in_a_fridge_follows_the_exact_series,
        ],
    ),
    (
        "a bowl of paste in a room",
        "half an hour open, an hour and a half covered: common practice",
        &[
            cooling::the_cover_decides_how_fast_a_bowl_cools,
        ],
    ),
    (
        "rise",
        "US Armed Forces recipe cards; USDA school recipes; Rincón et al. 2001; a miller's recipes; \
         rules of bakers in *Bake Magazine* and other trade articles",
        &[
            rise::the_rule_of_seventeen_fahrenheit_is_met_in_the_cool_and_missed_in_the_heat,
            rise::sponge_times_of_a_whole_range_of_temperatures_lie_in_the_range_of_its_middle,
            rise::ten_kelvin_lie_between_growth_in_broth_and_the_rules_of_bakers,
            rise_of_doughs::much_yeast_brings_less_than_its_share,
            rise_of_doughs::rules_of_thumb_of_yeast_and_sugar_are_nearly_met,
            rise_of_doughs::white_bread_of_a_printed_card_rises_a_little_later_than_ours,
            rise_of_doughs::rolls_with_much_yeast_rise_far_later_than_ours,
            rise_of_doughs::a_sweet_dough_doubles_in_the_times_of_a_miller,
            rise_of_doughs::most_of_a_cold_rise_is_done_before_the_dough_is_cold,
        ],
    ),
    (
        "bake",
        "US Armed Forces recipe cards; USDA school recipes; American Society of Baking; Bakerpedia; \
         common practice",
        &[
            bake_by_shape::soft_loaves_of_700_to_900_g_take_30_to_35_min,
            bake_by_shape::buns_of_60_to_90_g_take_15_to_18_min,
            bake_by_shape::both_tins_of_the_card_take_its_time,
            bake_by_shape::from_rolls_of_57_g_lighter_ones_take_what_is_printed,
            loaf::a_loaf_of_794_g_takes_about_the_30_to_35_min_of_its_card,
            loaf::the_middle_passes_printed_temperatures_at_printed_shares_of_the_bake,
        ],
    ),
    (
        "cooling of the bread",
        "the exact product of series; a bakery trade encyclopedia; common practice",
        &[
            loaf::a_loaf_cools_as_the_exact_series_says,
            bake_by_shape::bread_cools_as_long_as_the_trade_waits,
        ],
    ),
    (
        "volume of a tin",
        "an ingredient dealer's guide; a bakery technologist; printed tins in inches",
        &[
            tin::tapered_tins_hold_what_the_dealer_prints,
            tin::a_straight_tin_takes_what_the_technologist_reckons,
            tin::a_tin_in_inches_holds_what_is_printed,
        ],
    ),
    (
        "height in the tin",
        "an ingredient dealer's guide; US Armed Forces recipe cards; common practice",
        &[
            tin_rise::tins_with_room_go_in_at_80_to_90_percent_of_their_height,
            tin_rise::a_tin_with_little_room_crowns_earlier,
        ],
    ),
    (
        "sugar solutions",
        "Génotelle 1978; Bingham and Jackson; Mohos 2010; Starzak and Peacock 1997",
        &[
            sugar_solution::viscosity_is_that_of_the_equation_at_every_row,
            sugar_solution::viscosity_is_near_the_values_of_the_literature,
            sugar_solution::density_is_near_that_of_saturated_solutions,
            sugar_solution::water_activity_is_near_that_of_finer_equations,
        ],
    ),
    (
        "chocolate: melting",
        "Beckett (ed.), *Industrial Chocolate Manufacture and Use*; Chaiseri and Dimick 1989",
        &[
            melt::latent_heats_of_chocolates_follow_from_their_fat,
            melt::melting_a_kilogram_of_dark_chocolate_from_20_to_45_takes_86_kilojoules,
            melt::solid_fat_is_shown_of_all_fat,
        ],
    ),
    (
        "chocolate: thickness",
        "Einstein 1906 and 1911; Krieger and Dougherty 1959; Corriher, *BakeWise*; common practice",
        &[
            syrup::dark_chocolate_seizes_pours_and_runs_thin_as_in_the_kitchen,
            syrup::unsweetened_chocolate_needs_about_forty_in_a_hundred,
            syrup::the_handbook_rule_stands_beside_the_figure,
            syrup::a_trace_of_grains_thickens_as_einstein_found,
            syrup::half_packed_is_a_little_over_three_times_as_thick,
        ],
    ),
    (
        "nutrition",
        "ANSES, *Table Ciqual 2020*; Regulation (EU) No 1169/2011",
        &[
            nutrition::eu_energy_agrees_with_the_table_s_own,
            nutrition::kilojoules_go_by_their_own_factors,
            nutrition::a_gram_of_each_brings_what_annex_xiv_says,
        ],
    ),
];

/// The middle of the differences; of an even number the mean of both in the middle.
fn median(noted: &[f64]) -> f64 {
    let mut sorted = noted.to_vec();
    sorted.sort_by(f64::total_cmp);
    let (half, odd) = (sorted.len().div_euclid(2), sorted.len() % 2 == 1);
    if odd {
        sorted[half]
    } else {
        f64::midpoint(sorted[half - 1], sorted[half])
    }
}

/// What the tests of a model noted.
fn noted_by(tests: &[fn()]) -> Vec<f64> {
    NOTED.take();
    for test in tests {
        test();
    }
    NOTED.take()
}

/// The table in `DEVELOPERS.md` is what the tests note today.
#[test]
fn the_table_of_accuracy_is_up_to_date() {
    let rows: Vec<Vec<String>> = MODELS
        .iter()
        .map(|(model, works, tests)| {
            let noted = noted_by(tests);
            assert!(!noted.is_empty(), "{model}");
            let median = median(&noted);
            let worst = noted.iter().copied().fold(0.0, f64::max);
            let percent = |share: f64| format!("{:.1} %", 100.0 * share);
            vec![
                (*model).to_owned(),
                (*works).to_owned(),
                noted.len().to_string(),
                percent(median),
                percent(worst),
            ]
        })
        .collect();
    let columns = [
        Column::text("model"),
        Column::text("compared with"),
        Column::number("values"),
        Column::number("median difference"),
        Column::number("worst"),
    ];
    check("accuracy", &columns, &rows);
}
