//! Every caution says what it means, what to do and who says so.

use super::format_options::{american, british};
use super::of_source::has_every_variant;
use super::plain_speech::is_plain;
use softcrumb::engine::batch::{
    BatchCaution, PocketScale, RoundedLine, ScaleReading, SolutionAid, WeighingAids, YeastSolution,
};
use softcrumb::engine::formula::LineAt;
use softcrumb::engine::formula::{Bread, Caution, Formula, Part, PartKind};
use softcrumb::engine::quantity::{Division, Mass, Share};
use softcrumb::text::Advice;
use softcrumb::text::caution::{self, Hazard, LOCAL_RULES};

/// All three parts are present and plainly worded.
pub(crate) fn is_whole(advice: &Advice) {
    is_plain(&advice.means);
    is_plain(&advice.to_do);
    is_plain(&advice.sentence());
    assert!(!advice.source.is_empty());
}

pub(crate) fn p(percent: f64) -> Share {
    Share::from_percent(percent).unwrap()
}

fn one_paste() -> Formula {
    Formula {
        parts: vec![Part {
            kind: PartKind::Paste,
            name: "Rye scald".to_owned(),
            lines: Vec::new(),
            steam: Mass::ZERO,
            temperature: None,
        }],
    }
}

#[test]
fn every_step_with_a_risk_has_its_caution() {
    for step in Hazard::ALL {
        is_whole(&caution::safety(step, british()));
    }
    is_plain(LOCAL_RULES);
}

/// Source: FDA, *Food Code 2022*, section 3-501.14(A): 57 °C (135 °F) to 21 °C (70 °F) within 2
/// hours, to 5 °C (41 °F) within 6 hours in all.
#[test]
fn the_cooling_limits_are_those_of_the_code() {
    for (options, limits) in [
        (
            british(),
            "from 57_°C to 21_°C within 2 hours and to 5_°C within 6 hours in all",
        ),
        (
            american(),
            "from 135_°F to 70_°F within 2 hours and to 41_°F within 6 hours in all",
        ),
    ] {
        let to_do = caution::safety(Hazard::CoolingPaste, options).to_do;
        assert!(to_do.replace('\u{A0}', "_").contains(limits), "{to_do}");
    }
}

#[test]
fn cautions_about_a_formula_are_shown() {
    let mut all = vec![
        Caution::SugarSlowsYeast {
            sugar: p(12.0),
            begins: p(5.0),
            certain: p(7.0),
        },
        Caution::SaltSlowsYeast {
            salt: p(3.0),
            begins: p(2.5),
        },
        Caution::MuchMilkPowder {
            powder: p(8.0),
            begins: p(6.0),
        },
        Caution::RawFlour,
    ];
    for part in [0, 7] {
        all.push(Caution::PasteTooDry {
            part,
            water_to_starch: p(120.0),
            complete: p(150.0),
        });
    }
    for bread in Bread::ALL {
        for usual in bread.usual() {
            let low = Share::from_fraction(usual.low.fraction() / 2.0).unwrap();
            let high = Share::from_fraction(usual.high.fraction() * 2.0).unwrap();
            for value in [low, high] {
                all.push(Caution::Outside { usual, value });
            }
        }
    }
    let source = include_str!("../../src/engine/formula/caution.rs");
    has_every_variant(&all, "Caution", source);
    for caution in &all {
        is_whole(&caution::formula(caution, &one_paste(), british()));
    }
}

#[test]
fn a_dry_paste_is_called_by_its_own_name() {
    let dry = |part| Caution::PasteTooDry {
        part,
        water_to_starch: p(120.0),
        complete: p(150.0),
    };
    let advice = caution::formula(&dry(0), &one_paste(), british());
    assert!(
        advice
            .means
            .starts_with("“Rye scald” has 1.2 g of water to 1 g of starch. Below 1.5 g"),
        "{}",
        advice.means
    );
    let advice = caution::formula(&dry(7), &one_paste(), british());
    assert!(
        advice.means.starts_with("The paste has"),
        "{}",
        advice.means
    );
}

pub(crate) fn g(grams: f64) -> Mass {
    Mass::from_grams(grams).unwrap()
}

#[test]
fn cautions_about_a_batch_are_shown() {
    let all = [
        BatchCaution::BakesAwayMoreThanWater {
            lost: g(500.0),
            water: g(300.0),
        },
        BatchCaution::LargeLosses { share: p(14.0) },
    ];
    let source = include_str!("../../src/engine/batch/scale.rs");
    has_every_variant(&all, "BatchCaution", source);
    for caution in &all {
        is_whole(&caution::batch(caution, british()));
    }
}

/// 0.7 g of yeast on a scale that steps by 1 g, with any aids.
fn little_yeast(reading: ScaleReading, aids: Option<WeighingAids>) -> RoundedLine {
    let weighed = if reading == ScaleReading::AsWeighed {
        g(1.0)
    } else {
        g(0.0)
    };
    RoundedLine {
        at: LineAt { part: 0, line: 0 },
        exact: g(0.7),
        division: Division::ONE_GRAM,
        on_pocket_scale: false,
        weighed,
        reading,
        error: weighed - g(0.7),
        error_share: (weighed - g(0.7)).size().share_of(g(0.7)),
        percent_exact: None,
        percent_weighed: None,
        aids,
    }
}

fn solution() -> YeastSolution {
    YeastSolution {
        wanted: g(0.7),
        division: Division::ONE_GRAM,
        water_division: Division::ONE_GRAM,
        stir_in_yeast: g(10.0),
        stir_in_water: g(200.0),
        solution_exact: g(14.7),
        solution: g(15.0),
        yeast: g(15.0 / 21.0),
        water: g(300.0 / 21.0),
        part_water: g(74.0),
        water_left_exact: g(74.0 - 300.0 / 21.0),
        water_left: g(60.0),
        error: g(15.0 / 21.0) - g(0.7),
        error_share: (g(15.0 / 21.0) - g(0.7)).size().share_of(g(0.7)),
        within: Share::from_fraction(0.1037).ok(),
    }
}

#[test]
fn a_line_the_scale_cannot_show_gets_its_cure() {
    let pocket_scale = Some(PocketScale {
        division: Division::from_mass(g(0.1)).unwrap(),
        weighed: g(0.7),
        error: g(0.7) - g(0.7),
    });
    let take = Some(SolutionAid::Take(solution()));
    let aids = WeighingAids {
        pocket_scale,
        solution: take,
    };
    let told = caution::rounding(
        "Instant yeast",
        &little_yeast(ScaleReading::AsWeighed, Some(aids)),
        british(),
    )
    .unwrap();
    is_whole(&told);
    assert_eq!(
        told.sentence().replace('\u{A0}', "_"),
        "Instant yeast: for 0.7_g the scale shows 1_g, which is 42.9_% off. Weigh 0.7_g on a \
         pocket scale that steps by 0.1_g. Or stir 10_g of yeast into 200_g of water, weigh 15_g \
         of that into the dough, and pour only 60_g of this part’s water. The yeast is then right to \
         within 10.4_%; throw the rest away."
    );
    for pocket_scale in [pocket_scale, None] {
        for solution in [
            take,
            Some(SolutionAid::StillBelowScale { solution: g(0.2) }),
            Some(SolutionAid::NotEnoughWater {
                brings: g(14.0),
                water: g(3.0),
            }),
            None,
        ] {
            for reading in [ScaleReading::AsWeighed, ScaleReading::BelowScale] {
                let aids = WeighingAids {
                    pocket_scale,
                    solution,
                };
                let line = little_yeast(reading, Some(aids));
                is_whole(&caution::rounding("Yeast", &line, british()).unwrap());
            }
        }
    }
    let fine = little_yeast(ScaleReading::AsWeighed, None);
    assert_eq!(caution::rounding("Yeast", &fine, british()), None);
}
