//! Numerical methods against numpy, scipy and closed forms.

use softcrumb::engine::numerics::{
    first_crossing, first_integer, first_true, halve_integers, interpolate, robust_mean, root,
    segment, try_first_true, weighted_mean,
};

use crate::printed::agrees;

const TABLE: [(f64, f64); 6] = [
    (0.0, 1.0),
    (5.0, 1.0),
    (10.0, 0.8),
    (20.0, 0.5),
    (30.0, 0.3),
    (45.0, 0.15),
];

/// Source: `numpy.interp` of numpy 2.4.6 on the same table.
#[test]
fn a_table_is_read_as_numpy_reads_it() {
    for (x, y) in [
        (-3.0, "1.00000000"),
        (0.0, "1.00000000"),
        (2.5, "1.00000000"),
        (7.3, "0.90800000"),
        (12.5, "0.72500000"),
        (19.99, "0.50030000"),
        (44.0, "0.16000000"),
        (45.0, "0.15000000"),
        (60.0, "0.15000000"),
    ] {
        agrees(interpolate(TABLE, x).unwrap(), y);
    }
}

/// Closed form: a point of the table is its own value, to the last bit.
#[test]
fn each_point_of_a_table_is_returned_exactly() {
    for (x, y) in TABLE {
        assert_eq!(interpolate(TABLE, x).unwrap().to_bits(), y.to_bits());
    }
    assert!(segment(TABLE, 45.0).unwrap().is_end());
    assert_eq!(interpolate([], 1.0), None);
    assert_eq!(interpolate([(2.0, 3.0)], -1.0), Some(3.0));
}

/// Closed form: straight lines between (0, 0), (10, 5), (20, 5), (30, 0).
#[test]
fn a_curve_first_takes_a_value_where_its_line_does() {
    let hill = [(0.0, 0.0), (10.0, 5.0), (20.0, 5.0), (30.0, 0.0)];
    for (level, from, x) in [
        (2.5, 0.0, Some(5.0)),
        (2.5, 6.0, Some(25.0)),
        (5.0, 0.0, Some(10.0)),
        (5.0, 15.0, Some(15.0)),
        (0.0, 0.0, Some(0.0)),
        (0.0, 1.0, Some(30.0)),
        (2.5, 26.0, None),
        (6.0, 0.0, None),
        (1.0, 31.0, None),
    ] {
        assert_eq!(first_crossing(hill, level, from), x, "{level} from {from}");
    }
    assert_eq!(first_crossing([], 1.0, 0.0), None);
}

/// Source: `scipy.optimize.bisect` of scipy 1.17.1.
#[test]
fn a_root_is_found_where_scipy_finds_it() {
    let cubic = root(|x| x * x * x - x - 2.0, 1.0..=2.0).unwrap();
    agrees(cubic, "1.521379706804568");
    let cosine = root(|x| libm::cos(x) - x, 0.0..=1.0).unwrap();
    agrees(cosine, "0.739085133215160");
}

/// Closed form: x² + 1 has no root; x − 1 is no bracket's where both ends lie above it.
#[test]
fn a_range_without_a_change_of_sign_is_no_bracket() {
    let none = root(|x| x * x + 1.0, -1.0..=1.0).unwrap_err();
    assert_eq!((none.at_start, none.at_end), (2.0, 2.0));
    assert!(root(|x| x - 1.0, 2.0..=3.0).is_err());
    assert!(root(|_| f64::NAN, 0.0..=1.0).is_err());
}

/// Closed form: x² ≥ 2 from √2 on; the answer itself satisfies it.
#[test]
fn a_condition_begins_where_it_first_holds() {
    let found = first_true(0.0..=2.0, 60, |x| x * x >= 2.0).unwrap();
    agrees(found, "1.41421356237310");
    assert!(found * found >= 2.0);
    assert_eq!(first_true(0.0..=1.0, 60, |x| x * x >= 2.0), None);
    assert_eq!(first_true(1.5..=2.0, 60, |x| x * x >= 2.0), Some(1.5));
    assert_eq!(first_true(0.0..=1.0, 2, |x| x > 0.3), Some(0.5));
    assert_eq!(
        try_first_true(0.0..=1.0, 9, |_| Err("broken")),
        Err("broken")
    );
}

/// Closed form: 31² < 1000 ≤ 32².
#[test]
fn a_whole_number_is_found_to_the_unit() {
    assert_eq!(first_integer(0..=1000, |x| x * x >= 1000), Some(32));
    assert_eq!(first_integer(0..=31, |x| x * x >= 1000), None);
    assert_eq!(first_integer(40..=50, |x| x * x >= 1000), Some(40));
    assert_eq!(first_integer(-7..=7, |x| x >= -3), Some(-3));
    for edge in [i64::MIN, i64::MIN + 1, -1, 0, 1, i64::MAX - 1, i64::MAX] {
        assert_eq!(
            first_integer(i64::MIN..=i64::MAX, |x| x >= edge),
            Some(edge)
        );
    }
}

/// Closed form: of a threshold anywhere in 17 h, the answer is at most one minute above it.
#[test]
fn whole_numbers_are_halved_to_the_step() {
    for threshold in [1, 59, 60, 61, 30_000, 61_199, 61_200] {
        let found = halve_integers(0, 61_200, 60, |x| x >= threshold);
        assert!(
            (threshold..threshold + 60).contains(&found),
            "{found} for {threshold}"
        );
    }
    assert_eq!(halve_integers(5, 9, 4, |_| panic!("evaluated")), 9);
    assert_eq!(halve_integers(5, 7, 0, |x| x >= 6), 6);
}

/// Source: `scipy.stats.median_abs_deviation` of scipy 1.17.1 for the limits, `numpy.mean` and
/// `numpy.var` of numpy 2.4.6 of the values within them.
#[test]
fn a_mean_leaves_outliers_aside_as_scipy_does() {
    let noted = [10.2, 9.8, 10.1, 10.4, 9.9, 17.0, 10.0];
    let mean = robust_mean(&noted, 0.0).unwrap();
    agrees(mean.mean, "10.066666666667");
    agrees(mean.squares, "0.233333333333");
    assert_eq!(mean.kept, [true, true, true, true, true, false, true]);
    let noted = [2.0, 4.0, 4.5, 5.0, 30.0, 5.5];
    let mean = robust_mean(&noted, 0.0).unwrap();
    agrees(mean.mean, "4.200000000000");
    agrees(mean.squares, "7.300000000000");
    assert_eq!(mean.kept, [true, true, true, true, false, true]);
}

/// Closed form: of equal values and one other, the least deviation decides.
#[test]
fn the_least_deviation_keeps_what_lies_near() {
    let values = [5.0, 5.0, 5.0, 5.3];
    assert_eq!(
        robust_mean(&values, 0.0).unwrap().kept,
        [true, true, true, false]
    );
    assert_eq!(robust_mean(&values, 0.2).unwrap().kept, [true; 4]);
    assert_eq!(robust_mean(&[], 1.0), None);
    assert_eq!(robust_mean(&[f64::NAN], 1.0), None);
}

/// Source: `numpy.average(values, weights=1/deviations**2)` of numpy, with the belief among the values,
/// and `1/sqrt(sum(weights))`. The wild value of the second is left out before.
#[test]
fn measurements_of_unequal_precision_are_averaged_as_numpy_averages_them() {
    let values = [(1.2, 0.1), (0.9, 0.3), (1.4, 0.2)];
    let mean = weighted_mean(&values, (1.0, 0.5)).unwrap();
    agrees(mean.mean, "1.206185567010");
    agrees(mean.deviation, "0.084481907555");
    assert_eq!(mean.kept, [true; 3]);
    let wild = [(1.2, 0.1), (0.9, 0.3), (9.0, 0.2), (1.4, 0.2)];
    let mean = weighted_mean(&wild, (1.0, 0.5)).unwrap();
    assert_eq!(mean.kept, [true, true, false, true]);
    agrees(mean.mean, "1.206185567010");
}

/// Closed form: nothing measured is no mean, and so is a deviation of none.
#[test]
fn a_weighted_mean_needs_values_with_deviations() {
    assert_eq!(weighted_mean(&[], (1.0, 0.5)), None);
    assert_eq!(weighted_mean(&[(1.0, 0.0)], (1.0, 0.5)), None);
    assert_eq!(weighted_mean(&[(f64::NAN, 1.0)], (1.0, 0.5)), None);
}
