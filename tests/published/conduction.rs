//! Conduction against the exact series and textbook examples.

use softcrumb::engine::heat::{Air, Body, Curve, Exposure, Probe, Shape, simulate, simulate_on};
use softcrumb::engine::quantity::{
    Conductivity, Density, Length, Mass, Minutes, SpecificHeat, SurfaceCoefficient, Temperature,
};

use crate::printed::{agrees_within, number};

fn celsius(t: f64) -> Temperature {
    Temperature::from_celsius(t).unwrap()
}

fn body(shape: Shape, half: f64, k: f64, density: f64, heat: f64) -> Body {
    Body {
        shape,
        half: Length::from_metres(half).unwrap(),
        mass: Mass::from_grams(1000.0).unwrap(),
        specific_heat: SpecificHeat::from_joules_per_kilogram_kelvin(heat).unwrap(),
        conductivity: Conductivity::from_watts_per_metre_kelvin(k).unwrap(),
        density: Density::from_kilograms_per_cubic_metre(density).unwrap(),
    }
}

fn stay(seconds: f64, air: f64, h: f64) -> Exposure {
    Exposure {
        minutes: Minutes::from_minutes(seconds / 60.0).unwrap(),
        air: Air {
            temperature: celsius(air),
            coefficient: SurfaceCoefficient::from_watts_per_square_metre_kelvin(h).unwrap(),
        },
    }
}

/// Half 0.05 m, k 0.5, ρ·c 500 kJ/(m³·K): a Fourier number of one takes 2500 s, a Biot number of
/// one a coefficient of 10.
fn unit(shape: Shape) -> Body {
    body(shape, 0.05, 0.5, 1000.0, 500.0)
}

struct Series {
    /// As the table has it: "sphere,5,0.2".
    key: String,
    shape: Shape,
    biot: f64,
    fourier: f64,
    theta: [&'static str; 3],
}

fn series() -> Vec<Series> {
    let rows = include_str!("data/transient_series.csv").lines().skip(1);
    rows.map(|row| {
        let cells: Vec<_> = row.split(',').collect();
        let shape = match cells[0] {
            "slab" => Shape::Slab,
            "cylinder" => Shape::Cylinder,
            "sphere" => Shape::Sphere,
            other => panic!("{other}"),
        };
        let (biot, fourier) = (number(cells[1]), number(cells[2]));
        Series {
            key: cells[..3].join(","),
            shape,
            biot,
            fourier,
            theta: [cells[3], cells[4], cells[5]],
        }
    })
    .collect()
}

/// Worst difference from the series over centre, mean and surface.
fn worst(case: &Series, curve: &Curve) -> f64 {
    let end = curve.end().unwrap();
    let ours = [end.centre, end.mean, end.surface].map(|t| t.celsius() / 100.0);
    let off = ours
        .iter()
        .zip(case.theta)
        .map(|(ours, theta)| (ours - number(theta)).abs());
    off.fold(0.0, f64::max)
}

/// Source: full eigenfunction series of 400 terms (Carslaw and Jaeger, *Conduction of Heat in
/// Solids*, 1959), evaluated with scipy 1.17.1; first eigenvalues equal Incropera, table 5.1.
#[test]
fn slab_cylinder_and_sphere_follow_the_exact_series_within_two_thousandths() {
    let mut held = 0;
    let mut most: f64 = 0.0;
    for case in series().iter().filter(|case| case.fourier >= 0.1) {
        let air = stay(2500.0 * case.fourier, 0.0, 10.0 * case.biot);
        let curve = simulate(&unit(case.shape), celsius(100.0), &[air]).unwrap();
        most = most.max(worst(case, &curve));
        held += 1;
    }
    assert_eq!(held, 70);
    assert!(most < 0.002, "worst is {most}");
}

/// The same case on 8, 16, 32 and 64 cells, with time steps fine enough not to count, and with 6,
/// 12, 24 and 48 steps between doublings on a fine grid: each doubling makes the error a quarter.
#[test]
fn halving_the_cells_or_the_steps_makes_the_error_a_quarter() {
    let case = &series()[..]
        .iter()
        .find(|case| case.key == "sphere,5,0.2")
        .map(|case| (case.theta[1], stay(500.0, 0.0, 50.0)))
        .unwrap();
    let (exact, air) = (number(case.0), case.1);
    let off = |curve: Curve| (curve.end().unwrap().mean.celsius() / 100.0 - exact).abs();
    let sphere = unit(Shape::Sphere);
    let hot = celsius(100.0);
    let cells = [
        off(simulate_on::<8>(&sphere, hot, &[air], 200).unwrap()),
        off(simulate_on::<16>(&sphere, hot, &[air], 200).unwrap()),
        off(simulate_on::<32>(&sphere, hot, &[air], 200).unwrap()),
        off(simulate_on::<64>(&sphere, hot, &[air], 200).unwrap()),
    ];
    let fine = |steps| simulate_on::<256>(&sphere, hot, &[air], steps).unwrap();
    let settled = fine(400).end().unwrap().mean.celsius();
    let steps =
        [2, 4, 8, 16].map(|steps| (fine(steps).end().unwrap().mean.celsius() - settled).abs());
    for errors in [cells, steps] {
        for pair in errors.windows(2) {
            let order = libm::log2(pair[0] / pair[1]);
            assert!((1.8..2.3).contains(&order), "order {order} of {errors:?}");
        }
    }
}

/// Source: Çengel, *Heat Transfer: A Practical Approach*, example 4-3, boiling an egg: 5 cm across,
/// 5 °C, water 95 °C, h 1200, k 0.627, α 0.151e-6; the book's one-term answer is 865 s, the exact
/// series gives 861.5 s to a centre of 70 °C.
#[test]
pub(crate) fn an_egg_boils_in_as_long_as_the_textbook_says() {
    let egg = body(
        Shape::Sphere,
        0.025,
        0.627,
        1000.0,
        0.627 / 0.151e-6 / 1000.0,
    );
    let curve = simulate(&egg, celsius(5.0), &[stay(1800.0, 95.0, 1200.0)]).unwrap();
    let minutes = curve
        .reaches(celsius(70.0), Probe::Centre, Minutes::ZERO)
        .unwrap();
    agrees_within(minutes.minutes() * 60.0, "861.5", 2.0);
    agrees_within(minutes.minutes() * 60.0, "865", 5.0);
}

/// Source: Incropera, *Fundamentals of Heat and Mass Transfer*, example 5.4: a pipe wall 40 mm
/// thick, insulated behind, −20 °C, oil 60 °C, h 500, k 63.9, ρ 7832, c 434; after 480 s the book
/// has 42.9 °C at the surface, the series 43.02 and 45.36 (the book's two faces).
#[test]
pub(crate) fn a_wall_warms_as_the_textbook_says() {
    let wall = body(Shape::Slab, 0.04, 63.9, 7832.0, 434.0);
    let end = *simulate(&wall, celsius(-20.0), &[stay(480.0, 60.0, 500.0)])
        .unwrap()
        .end()
        .unwrap();
    agrees_within(end.centre.celsius(), "43.02", 0.1);
    agrees_within(end.surface.celsius(), "45.36", 0.1);
}

/// Source: Geankoplis, *Transport Processes and Separation Process Principles*, example 5.3-3: a
/// long can of pea purée, 68.1 mm across, k 0.830, α 2.007e-7, h 4540, from 29.4 in steam of
/// 115.6 °C for 0.75 h; read off a chart 104.4 °C, exactly 106.08.
#[test]
pub(crate) fn a_can_of_puree_heats_as_the_series_says_and_near_the_chart() {
    let can = body(
        Shape::Cylinder,
        0.03405,
        0.830,
        1100.0,
        0.830 / 2.007e-7 / 1100.0,
    );
    let curve = simulate(&can, celsius(29.4), &[stay(2700.0, 115.6, 4540.0)]).unwrap();
    let centre = curve.end().unwrap().centre.celsius();
    agrees_within(centre, "106.08", 0.1);
    agrees_within(centre, "104.4", 2.0);
}

/// Source: Holman, *Heat Transfer*, example 4-1, a steel ball that cools as one: d 0.05 m, ρ 7800,
/// c 460, h 10, from 450 to 150 in air of 100 °C takes 5819 s. Scaled to temperatures of ours,
/// 300 to 120 in air of 100: θ is 0.1 instead of 0.1429, so 5818.3·ln(10)/ln(7) s.
#[test]
pub(crate) fn a_steel_ball_cools_as_one() {
    let ball = body(Shape::Sphere, 0.025, 35.0, 7800.0, 460.0);
    let curve = simulate(&ball, celsius(300.0), &[stay(9000.0, 100.0, 10.0)]).unwrap();
    let minutes = curve
        .reaches(celsius(120.0), Probe::Mean, Minutes::ZERO)
        .unwrap();
    let scaled = 5818.3 * libm::log(10.0) / libm::log(7.0);
    agrees_within(
        minutes.minutes() * 60.0,
        &scaled.to_string(),
        0.005 * scaled,
    );
}

/// Source: Incropera, example 5.5, second step: r 5 mm, k 20, ρ 3000, c 1000, h 6000, centre from
/// 335 to 50 in a bath of 20 °C takes 3.1 s in the book, which interpolates its table, and 2.979 s
/// exactly.
#[test]
pub(crate) fn a_quenched_sphere_cools_in_the_exact_time_and_near_the_books() {
    let sphere = body(Shape::Sphere, 0.005, 20.0, 3000.0, 1000.0);
    let curve = simulate(&sphere, celsius(335.0), &[stay(10.0, 20.0, 6000.0)]).unwrap();
    let minutes = curve
        .reaches(celsius(50.0), Probe::Centre, Minutes::ZERO)
        .unwrap();
    agrees_within(minutes.minutes() * 60.0, "2.979", 0.01);
    agrees_within(minutes.minutes() * 60.0, "3.1", 0.15);
}

/// Source: Holman, *Heat Transfer*, example 4-6: an aluminium plate 5 cm thick, 200 °C, air 70 °C,
/// h 525, k 215, α 8.4e-5, ρ 2700, c 900; in a minute it gives off 6.48e6 J/m² read off a chart,
/// exactly 6.046e6. The book's α is not k/(ρ·c): the specific heat here is that of the α, and the
/// mass is such that a square metre holds the book's 135 kg × 900 J/(kg·K).
#[test]
pub(crate) fn a_plate_gives_off_the_heat_that_the_series_says_and_near_the_chart() {
    let heat = 215.0 / 8.4e-5 / 2700.0;
    let mass = Mass::from_grams(135_000.0 * 900.0 / heat).unwrap();
    let plate = Body {
        mass,
        ..body(Shape::Slab, 0.025, 215.0, 2700.0, heat)
    };
    let curve = simulate(&plate, celsius(200.0), &[stay(60.0, 70.0, 525.0)]).unwrap();
    agrees_within(curve.lost.joules(), "6.046e6", 0.01e6);
    agrees_within(curve.lost.joules(), "6.48e6", 0.45e6);
}
