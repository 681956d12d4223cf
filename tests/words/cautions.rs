//! Every caution says what it means, what to do and who says so.

use super::manners::british;
use super::plain_speech::is_plain;
use softcrumb::engine::formula::{Bread, Caution, Formula, Stream, StreamKind};
use softcrumb::engine::quantity::{Mass, Share};
use softcrumb::words::Advice;
use softcrumb::words::caution::{self, LOCAL_RULES, Step};

fn is_whole(advice: &Advice) {
    is_plain(&advice.means);
    is_plain(&advice.to_do);
    is_plain(&advice.sentence());
    assert!(!advice.source.is_empty());
}

fn p(percent: f64) -> Share {
    Share::from_percent(percent).unwrap()
}

fn one_paste() -> Formula {
    Formula {
        streams: vec![Stream {
            kind: StreamKind::Paste,
            name: "Rye scald".to_owned(),
            lines: Vec::new(),
            steam: Mass::ZERO,
        }],
    }
}

#[test]
fn every_step_with_a_risk_has_its_caution() {
    for step in Step::ALL {
        is_whole(&caution::safety(step));
    }
    is_plain(LOCAL_RULES);
}

/// Source: FDA, *Food Code 2022*, section 3-501.14(A): 57 °C to 21 °C within 2 hours, to 5 °C
/// within 6 hours in all.
#[test]
fn the_cooling_limits_are_those_of_the_code() {
    let advice = caution::safety(Step::CoolingPaste);
    let limits = "from 57 to 21 °C within 2 hours and to 5 °C within 6 hours in all";
    assert!(advice.to_do.contains(limits), "{}", advice.to_do);
}

#[test]
fn cautions_about_a_formula_are_told() {
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
    for stream in [0, 7] {
        all.push(Caution::PasteTooDry {
            stream,
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
    for caution in &all {
        is_whole(&caution::formula(caution, &one_paste(), british()));
    }
}

#[test]
fn a_dry_paste_is_called_by_its_own_name() {
    let dry = |stream| Caution::PasteTooDry {
        stream,
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
