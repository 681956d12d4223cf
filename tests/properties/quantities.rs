//! Operators keep a quantity within its range, at the ends of it and beside them.

use std::ops::RangeInclusive;

use softcrumb::engine::quantity::{
    Factor, FoodEnergy, Heat, HeatCapacity, HeatPerMass, Instant, Mass, MassChange, Minutes, Money,
    Share, ShareChange, SpecificHeat, SpecificVolume, Temperature, TemperatureChange, Volume,
    WarmingRate,
};

/// The ends of a range, their neighbours within it, and zero, one and the middle where they lie in it.
fn edges(range: &RangeInclusive<f64>) -> Vec<f64> {
    let (low, high) = (*range.start(), *range.end());
    let tried = [
        low,
        low.next_up(),
        low.midpoint(high),
        high.next_down(),
        high,
        0.0,
        f64::MIN_POSITIVE,
        1.0,
    ];
    tried.into_iter().filter(|x| range.contains(x)).collect()
}

fn masses() -> Vec<Mass> {
    let all = edges(&Mass::RANGE).into_iter();
    all.map(|x| Mass::from_grams(x).unwrap()).collect()
}

fn shares() -> Vec<Share> {
    let all = edges(&Share::RANGE).into_iter();
    all.map(|x| Share::from_fraction(x).unwrap()).collect()
}

fn factors() -> Vec<Factor> {
    let all = edges(&Factor::RANGE).into_iter();
    all.map(|x| Factor::from_number(x).unwrap()).collect()
}

fn temperatures() -> Vec<Temperature> {
    let all = edges(&Temperature::RANGE).into_iter();
    all.map(|x| Temperature::from_celsius(x).unwrap()).collect()
}

/// The sum of two numbers, or the nearer end of the range.
fn saturated(sum: f64, range: &RangeInclusive<f64>) -> f64 {
    sum.clamp(*range.start(), *range.end())
}

fn same(one: f64, other: f64) {
    assert!((one - other).abs() <= 0.0, "{one} is not {other}");
}

#[test]
fn masses_add_up_to_a_tonne_at_most() {
    let end = *Mass::RANGE.end();
    for one in masses() {
        for other in masses() {
            let exact = one.grams() + other.grams();
            same((one + other).grams(), saturated(exact, &Mass::RANGE));
            let summed: Mass = [one, other, one].into_iter().sum();
            assert!(Mass::RANGE.contains(&summed.grams()), "{summed:?}");
            assert!(Mass::RANGE.contains(&one.less(other).grams()));
            assert_eq!(one.try_add(other).is_ok(), exact <= end);
            assert_eq!((one + other).unsaturated().is_ok(), exact < end);
            let change = one - other;
            assert!(MassChange::RANGE.contains(&change.grams()));
            assert!(MassChange::RANGE.contains(&(-change).grams()));
            assert!(MassChange::RANGE.contains(&(change + change).grams()));
            let changes: MassChange = [change, change, change].into_iter().sum();
            assert!(MassChange::RANGE.contains(&changes.grams()));
            assert!(Mass::RANGE.contains(&change.size().grams()));
            if let Some(share) = one.share_of(other) {
                assert!(Share::RANGE.contains(&share.fraction()));
            }
        }
    }
}

#[test]
fn products_of_masses_stay_in_range() {
    for mass in masses() {
        for share in shares() {
            let exact = mass.grams() * share.fraction();
            let held = mass.component(share).grams();
            same(held, saturated(exact, &Mass::RANGE));
            assert_eq!(
                mass.try_component(share).map(Mass::grams).ok(),
                (exact <= *Mass::RANGE.end()).then_some(exact)
            );
        }
        for factor in factors() {
            let exact = mass.grams() * factor.number();
            assert_eq!(
                mass.try_times(factor).map(Mass::grams).ok(),
                (exact <= *Mass::RANGE.end()).then_some(exact)
            );
        }
    }
}

#[test]
fn shares_stay_in_range() {
    for one in shares() {
        for other in shares() {
            let exact = one.fraction() + other.fraction();
            same(one.plus(other).fraction(), saturated(exact, &Share::RANGE));
            assert_eq!(one.try_plus(other).is_ok(), exact <= *Share::RANGE.end());
            for held in [one.less(other), one.at_most(other), one.component(other)] {
                assert!(Share::RANGE.contains(&held.fraction()), "{held:?}");
            }
            assert!(ShareChange::RANGE.contains(&(one - other).fraction()));
        }
    }
}

#[test]
fn money_stays_in_range() {
    let amounts = || {
        let all = edges(&Money::RANGE).into_iter();
        all.map(|x| Money::from_amount(x).unwrap())
    };
    for one in amounts() {
        for other in amounts() {
            let exact = one.amount() + other.amount();
            same((one + other).amount(), saturated(exact, &Money::RANGE));
            let summed: Money = [one, other, one].into_iter().sum();
            assert!(Money::RANGE.contains(&summed.amount()));
            let below = exact < *Money::RANGE.end();
            assert_eq!((one + other).unsaturated().is_ok(), below);
        }
        for count in [0, 1, 2, u32::MAX] {
            assert!(Money::RANGE.contains(&one.among(count).amount()));
            let times = one.times(count).map_or(0.0, Money::amount);
            assert!(Money::RANGE.contains(&times));
        }
        for share in shares() {
            let component = one.component(share).map_or(0.0, Money::amount);
            assert!(Money::RANGE.contains(&component));
        }
    }
}

#[test]
fn temperatures_and_heats_are_finite() {
    for one in temperatures() {
        for other in temperatures() {
            let change = one - other;
            assert!(TemperatureChange::RANGE.contains(&change.kelvin()));
            assert!(Temperature::RANGE.contains(&one.max_of(other).celsius()));
            for heat in edges(&SpecificHeat::RANGE) {
                let heat = SpecificHeat::from_joules_per_kilogram_kelvin(heat).unwrap();
                for mass in masses() {
                    let capacity: HeatCapacity = heat * mass + heat * mass;
                    let warmth: Heat = capacity * change;
                    let none = [warmth, -warmth].into_iter().sum::<Heat>();
                    same((none - Heat::ZERO).joules(), 0.0);
                }
            }
        }
    }
    for heat in edges(&HeatPerMass::RANGE) {
        let heat = HeatPerMass::from_joules_per_gram(heat).unwrap();
        for mass in masses() {
            assert!((heat * mass).joules().is_finite());
        }
    }
}

#[test]
fn points_in_time_stay_in_range() {
    let (first, last) = Instant::RANGE.into_inner();
    for at in [first, first + 1, last - 1, last] {
        let at = Instant::from_seconds(at).unwrap();
        for minutes in edges(&Minutes::RANGE) {
            let by = Minutes::from_minutes(minutes).unwrap();
            for moved in [at.later(by), at.earlier(by), at.minute()] {
                assert!(Instant::RANGE.contains(&moved.seconds()), "{moved:?}");
                assert!(Minutes::RANGE.contains(&moved.since(at).minutes()));
            }
        }
    }
}

#[test]
fn volumes_hold_at_most_a_tonne() {
    for volume in edges(&Volume::RANGE) {
        let volume = Volume::from_cubic_centimetres(volume).unwrap();
        for room in edges(&SpecificVolume::RANGE) {
            let room = SpecificVolume::from_cubic_centimetres_per_gram(room).unwrap();
            if let Ok(mass) = volume.filled_at(room) {
                assert!(Mass::RANGE.contains(&mass.grams()));
            }
        }
    }
}

#[test]
fn what_lies_beside_a_range_is_refused() {
    for beyond in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert!(Mass::from_grams(beyond).is_err());
        assert!(Share::from_fraction(beyond).is_err());
        assert!(Money::from_amount(beyond).is_err());
        assert!(Minutes::from_minutes(beyond).is_err());
        assert!(Temperature::from_celsius(beyond).is_err());
        assert!(Factor::from_number(beyond).is_err());
        assert!(WarmingRate::from_kelvin_per_minute(beyond).is_err());
        assert!(FoodEnergy::from_both(beyond, 0.0).is_err());
    }
    assert!(Mass::from_grams(Mass::RANGE.end().next_up()).is_err());
    assert!(Share::from_fraction(Share::RANGE.end().next_up()).is_err());
    assert!(Money::from_amount(Money::RANGE.end().next_up()).is_err());
    assert!(Factor::from_number(Factor::RANGE.start().next_down()).is_err());
}
