//! The words along the day ribbon: midnight and the shortened night are marked, and no word leaves the picture.

use super::days::{friday, plan};
use softcrumb::sheet::civil::Zone;
use softcrumb::sheet::day::Target;
use softcrumb::sheet::{Sheet, examples};
use softcrumb::text::chart::{DayRibbon, Tick};

/// A day begins at 0:00 (ISO 8601:2019, 5.3.1.4: clock times of a day run from 00:00).
#[test]
fn each_midnight_has_its_hour_and_each_ribbon_with_a_night_its_words() {
    for (_, sheet) in examples() {
        for room in [12.0, 21.0, 33.0] {
            let planned = plan(&sheet, room, Target::Open);
            let ribbon = DayRibbon::of(
                &planned,
                &sheet.formula,
                friday().instant(),
                &Zone::default(),
            );
            let midnights = ribbon.hours.iter().filter(|hour| hour.text == "0:00");
            assert_eq!(midnights.count(), ribbon.days.len(), "{}", sheet.name);
            let nights = ribbon.nights.iter().filter(|(_, wide)| *wide > 0.0);
            assert_eq!(nights.count() == 0, ribbon.shortened.is_empty());
            for word in &ribbon.shortened {
                assert_eq!(word.text, "night, drawn shorter");
            }
            apart(&ribbon.hours, 5.0 * 7.0);
            apart(&ribbon.shortened, 16.0 * 7.0);
            assert!(ribbon.lanes_foot() < ribbon.hours_y());
            assert!(ribbon.hours_y() <= ribbon.shortened_y());
            assert!(ribbon.shortened_y() < ribbon.height);
        }
    }
}

/// A lane is called as the part that is made in it, in the words of the formula: common practice.
#[test]
fn the_lanes_of_paste_and_preferment_have_the_names_of_their_parts() {
    let (_, sheet) = examples().remove(0);
    let lanes_of = |sheet: &Sheet| {
        let planned = plan(sheet, 21.0, Target::Open);
        let from = friday().instant();
        let ribbon = DayRibbon::of(&planned, &sheet.formula, from, &Zone::default());
        ribbon.lanes.into_iter().map(|lane| lane.name)
    };
    let lanes: Vec<String> = lanes_of(&sheet).collect();
    assert_eq!(lanes, ["Scald", "Night dough", "Dough", "Chocolate"]);
    let mut long = sheet;
    long.formula.parts[0].name = "Scald of flour and milk from the farm".to_owned();
    assert_eq!(lanes_of(&long).next().as_deref(), Some("Paste"));
}

/// Centred words this wide do not touch, and lie in the picture.
fn apart(ticks: &[Tick], wide: f64) {
    for pair in ticks.windows(2) {
        assert!(pair[1].at - pair[0].at >= wide, "{pair:?}");
    }
    for tick in ticks {
        let half = wide / 2.0;
        assert!(
            tick.at >= half && tick.at <= DayRibbon::WIDTH - half,
            "{tick:?}"
        );
    }
}
