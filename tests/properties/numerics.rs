//! Numerical methods return for every argument, and hold what they say about it.

use proptest::prelude::*;
use softcrumb::engine::numerics::{first_crossing, interpolate, robust_mean, root};

/// A sorted table of up to eight points with finite values.
fn tables() -> impl Strategy<Value = Vec<(f64, f64)>> {
    proptest::collection::vec((-100.0..100.0, -100.0..100.0), 1..8).prop_map(|mut points| {
        points.sort_by(|one: &(f64, f64), other| one.0.total_cmp(&other.0));
        points
    })
}

proptest! {
    #[test]
    fn interpolation_stays_within_the_values_of_the_table(points in tables(), x in any::<f64>()) {
        let y = interpolate(points.iter().copied(), x).unwrap();
        let low = points.iter().fold(f64::INFINITY, |low, point| low.min(point.1));
        let high = points.iter().fold(f64::NEG_INFINITY, |high, point| high.max(point.1));
        prop_assert!((low - 1e-9..=high + 1e-9).contains(&y), "{y} is outside {low} to {high}");
    }

    #[test]
    fn a_crossing_lies_on_the_curve(points in tables(), level in -100.0..100.0, from in -120.0..120.0) {
        if let Some(x) = first_crossing(points.iter().copied(), level, from) {
            prop_assert!(x >= from && x <= points.last().unwrap().0 + 1e-9);
            // Steep lines turn the rounding of x into more of y.
            let steep = points.windows(2).map(|pair| {
                (pair[1].1 - pair[0].1).abs() / (pair[1].0 - pair[0].0).max(1e-300)
            });
            let steepest = steep.fold(1.0_f64, f64::max);
            let y = interpolate(points.iter().copied(), x).unwrap();
            prop_assert!((y - level).abs() <= 1e-12 * steepest * 100.0, "{y} at {x} is not {level}");
        }
    }

    #[test]
    fn a_root_of_a_straight_line_is_where_it_crosses_zero(at in -50.0..50.0_f64, slope in -9.0..9.0_f64) {
        prop_assume!(slope.abs() > 1e-6);
        let found: f64 = root(|x| slope * (x - at), -50.0..=50.0).unwrap();
        prop_assert!((found - at).abs() < 1e-12, "{found} is not {at}");
    }

    #[test]
    fn a_root_is_sought_in_any_range(a in any::<f64>(), b in any::<f64>(), c in any::<f64>()) {
        if let Ok(found) = root(|x| x - c, a..=b) {
            prop_assert!(found.is_nan() || a.is_nan() || (a.min(b)..=a.max(b)).contains(&found));
        }
    }

    #[test]
    fn a_robust_mean_lies_among_the_values_it_uses(values in proptest::collection::vec(any::<f64>(), 0..12)) {
        if let Some(found) = robust_mean(&values, 0.1) {
            prop_assert_eq!(found.kept.len(), values.len());
            let kept: Vec<f64> = values.iter().zip(&found.kept).filter(|(_, kept)| **kept).map(|(value, _)| *value).collect();
            let size = kept.iter().fold(0.0, |size: f64, value| size.max(value.abs()));
            prop_assert!(found.mean.is_infinite() || found.mean.abs() <= size * (1.0 + 1e-12));
        }
    }
}
