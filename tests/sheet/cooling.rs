//! Cooling settings: what earlier releases wrote, and what is written now, from record and link.

use softcrumb::engine::heat::{CoolingVessel, Shape};
use softcrumb::engine::quantity::{Length, Minutes};
use softcrumb::sheet::{
    CoolingChoice, CoolingSettings, FormerBody, FormerCooling, Sheet, examples,
};
use softcrumb::storage::link;
use softcrumb::storage::record::Record;

fn with(cooling: CoolingSettings) -> Sheet {
    let (_, mut sheet) = examples().remove(0);
    sheet.heat.cooling = cooling;
    sheet
}

#[test]
fn every_vessel_and_way_comes_back_from_record_and_link() {
    let minutes = |m| Minutes::from_minutes(m).unwrap();
    let own = CoolingChoice::Own {
        bench: minutes(12.5),
        ice: minutes(0.0),
    };
    for vessel in CoolingVessel::ALL {
        for across in [None, Some(Length::from_metres(0.1234).unwrap())] {
            for lid in [false, true] {
                for way in [CoolingChoice::Quickest, own] {
                    let sheet = with(CoolingSettings {
                        vessel,
                        across,
                        lid,
                        way,
                        former: None,
                    });
                    assert_eq!(Sheet::read(&sheet.write()).as_ref(), Ok(&sheet));
                    let text = link::write(&sheet).unwrap();
                    assert_eq!(link::read(&text).as_ref(), Ok(&sheet));
                }
            }
        }
    }
}

#[test]
fn the_former_default_is_the_new_one_and_others_keep_their_times() {
    let former = FormerCooling::default();
    assert_eq!(
        CoolingSettings::from_former(former),
        CoolingSettings::default()
    );
    let metres = |m| Length::from_metres(m).unwrap();
    for (thick, shape, vessel) in [
        (0.01, Shape::Slab, CoolingVessel::Tray),
        (0.025, Shape::Slab, CoolingVessel::Dish),
        (0.06, Shape::Slab, CoolingVessel::Bowl),
        (0.06, Shape::Cylinder, CoolingVessel::Jar),
        (0.06, Shape::Sphere, CoolingVessel::Bowl),
    ] {
        let thick = metres(thick);
        let body = FormerBody { thick, shape };
        let settings = CoolingSettings::from_former(FormerCooling { body, ..former });
        assert_eq!(settings.vessel, vessel);
        assert_eq!(settings.own_times(), Some((former.bench, former.ice)));
        // The record is written as it was read, until something else is changed.
        assert!(with(settings).write().contains("\"thick_m\""));
        let mut changed = settings;
        changed.set_vessel(CoolingVessel::Bag);
        let sheet = with(changed);
        assert!(sheet.write().contains("\"vessel\":\"bag\""));
        assert_eq!(Sheet::read(&sheet.write()), Ok(sheet));
    }
}
