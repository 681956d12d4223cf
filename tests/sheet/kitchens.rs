//! Kitchens: several are stored by name with every figure, and one of them is in use.

use softcrumb::engine::quantity::{Temperature, WarmingRate};
use softcrumb::sheet::{Kitchen, Kitchens, Mixer};
use softcrumb::storage::record::Record;

use crate::drawn::Draw;

#[test]
fn drawn_kitchens_come_back() {
    let mut draw = Draw(31);
    for _ in 0..crate::cases::cases(2_000) {
        let kitchen = draw.kitchen();
        assert_eq!(Kitchen::read(&kitchen.write()), Ok(kitchen));
    }
}

#[test]
fn several_kitchens_come_back_with_the_one_here() {
    let mut draw = Draw(32);
    for count in 1..=Kitchens::MOST {
        let all = (0..count).map(|_| draw.kitchen()).collect();
        let kitchens = Kitchens::of(all, count / 2);
        assert_eq!(kitchens.chosen(), count / 2);
        assert_eq!(Kitchens::read(&kitchens.write()), Ok(kitchens));
    }
}

#[test]
fn the_record_of_one_kitchen_opens_as_the_only_one() {
    let kitchen = Draw(33).kitchen();
    let kitchens = Kitchens::read(&kitchen.write()).unwrap();
    assert_eq!(kitchens, Kitchens::only(kitchen));
}

#[test]
fn what_a_kitchen_does_not_say_is_as_usual() {
    let text = r#"{"softcrumb":"kitchen","version":1,"room_c":15}"#;
    let cold = Kitchen::read(text).unwrap();
    assert_eq!(cold.room.celsius(), 15.0);
    let usual = Kitchen {
        room: cold.room,
        ..Kitchen::default()
    };
    assert_eq!(cold, usual);
}

#[test]
fn a_bowl_that_is_not_there_is_refused_with_its_place() {
    let text = r#"{"softcrumb":"kitchen","version":1,"bowls":[{"material":"glass","mass_g":900}],"paste_bowl":1}"#;
    assert_eq!(Kitchen::read(text).unwrap_err().path, "paste_bowl");
    let both = r#"{"softcrumb":"kitchen","version":1,"altitude_m":9,"pressure_hpa":1000}"#;
    assert_eq!(Kitchen::read(both).unwrap_err().path, "pressure_hpa");
}

#[test]
fn kitchens_are_added_chosen_and_taken_away() {
    let named = |name: &str| Kitchen {
        name: name.to_owned(),
        ..Kitchen::default()
    };
    let names = |kitchens: &Kitchens| -> Vec<String> {
        kitchens.all().map(|one| one.name.clone()).collect()
    };
    let two = Kitchens::only(named("Home")).with(named("School"));
    assert_eq!((two.current().name.as_str(), two.chosen()), ("School", 1));
    let home = two.clone().choose(0);
    assert_eq!(home.current().name, "Home");
    assert_eq!(names(&home), ["Home", "School"]);
    assert_eq!(home.clone().choose(9), home);
    let school = home.remove_here();
    assert_eq!(names(&school), ["School"]);
    assert_eq!(school.clone().remove_here(), school);
}

/// The former default of 1 K/min, and only that, becomes the present one; a user's own 1 K/min is
/// kept from then on.
#[test]
fn the_former_default_friction_becomes_the_present_one() {
    let read = |friction: &str| {
        let text = format!(
            r#"{{"softcrumb":"kitchen","version":1,"mixer":{{"friction_k_per_min":{friction},"mixing_min":7}}}}"#
        );
        Kitchen::read(&text).unwrap().mixer
    };
    let usual = Mixer::default();
    assert_eq!(read("1").friction, usual.friction);
    assert_eq!(read("1.0").minutes.minutes(), 7.0);
    for other in ["0", "0.99", "1.01", "1.4"] {
        let kept = read(other).friction.kelvin_per_minute();
        assert_eq!(kept, other.parse::<f64>().unwrap());
    }
    let mut own = Kitchen::default();
    own.mixer.friction = WarmingRate::from_kelvin_per_minute(1.0).unwrap();
    assert_eq!(Kitchen::read(&own.write()), Ok(own));
}

/// Common practice: flour in an open cupboard is as warm as the room. What a release has stored stands,
/// though nobody may have typed it.
#[test]
fn flour_that_nobody_set_is_as_warm_as_the_room() {
    let at = |celsius: f64| Temperature::from_celsius(celsius).unwrap();
    let cold = Kitchen {
        room: at(17.0),
        ..Kitchen::default()
    };
    assert_eq!(cold.flour_at(), at(17.0));
    assert!(!cold.write().contains("flour_c"));
    assert_eq!(Kitchen::read(&cold.write()), Ok(cold.clone()));
    let set = Kitchen {
        flour: Some(at(20.0)),
        ..cold
    };
    assert_eq!(Kitchen::read(&set.write()), Ok(set));
    let stored = r#"{"softcrumb":"kitchen","version":1,"room_c":17,"flour_c":20}"#;
    assert_eq!(Kitchen::read(stored).unwrap().flour_at(), at(20.0));
}
