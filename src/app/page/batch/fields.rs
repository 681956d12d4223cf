//! The numbers of the batch that can be typed: what is wanted, and what is lost.

use super::field::BatchField as Field;
use crate::app::part::of_mass;
use crate::engine::batch::{Wanted, Way};
use crate::engine::quantity::Share;
use crate::words::{Manner, message, read, read::ReadError, write};

/// The numbers that belong to one way of asking.
pub const fn of_way(way: Way) -> &'static [Field] {
    match way {
        Way::Times => &[TIMES],
        Way::Dough => &[DOUGH],
        Way::Pieces => &[COUNT, EACH],
        Way::FlourOnHand => &[FLOUR],
        Way::OnHand => &[ON_HAND],
        Way::Class => &[STUDENTS, LOAVES, LOAF],
    }
}

const TIMES: Field = Field {
    id: "wanted-times",
    label: message!("Times the formula"),
    unit: |_| "×",
    look: |batch, _, manner| {
        let Wanted::Times(times) = batch.wanted else {
            return String::new();
        };
        write::box_factor(times, manner)
    },
    set: |batch, text, manner| {
        batch.wanted = Wanted::Times(read::factor(text, manner)?);
        Ok(())
    },
};

const DOUGH: Field = Field {
    id: "wanted-dough",
    label: message!("Dough, ready to divide"),
    unit: of_mass,
    look: |batch, _, manner| {
        let Wanted::Dough(mass) = batch.wanted else {
            return String::new();
        };
        write::box_mass(mass, manner)
    },
    set: |batch, text, manner| {
        batch.wanted = Wanted::Dough(read::mass(text, manner)?);
        Ok(())
    },
};

const COUNT: Field = Field {
    id: "wanted-pieces",
    label: message!("Pieces"),
    unit: |_| "",
    look: |batch, _, manner| {
        let Wanted::Pieces { count, .. } = batch.wanted else {
            return String::new();
        };
        write::box_count(count.get(), manner)
    },
    set: |batch, text, manner| {
        if let Wanted::Pieces { count, .. } = &mut batch.wanted {
            *count = read::count(text, manner)?;
        }
        Ok(())
    },
};

const EACH: Field = Field {
    id: "wanted-each",
    label: message!("Dough in each"),
    unit: of_mass,
    look: |batch, _, manner| {
        let Wanted::Pieces { each, .. } = batch.wanted else {
            return String::new();
        };
        write::box_mass(each, manner)
    },
    set: |batch, text, manner| {
        if let Wanted::Pieces { each, .. } = &mut batch.wanted {
            *each = read::mass(text, manner)?;
        }
        Ok(())
    },
};

const FLOUR: Field = Field {
    id: "wanted-flour",
    label: message!("Flour on hand"),
    unit: of_mass,
    look: |batch, _, manner| {
        let Wanted::FlourOnHand(mass) = batch.wanted else {
            return String::new();
        };
        write::box_mass(mass, manner)
    },
    set: |batch, text, manner| {
        batch.wanted = Wanted::FlourOnHand(read::mass(text, manner)?);
        Ok(())
    },
};

const ON_HAND: Field = Field {
    id: "wanted-on-hand",
    label: message!("How much there is"),
    unit: of_mass,
    look: |batch, _, manner| {
        let Wanted::OnHand { mass, .. } = batch.wanted else {
            return String::new();
        };
        write::box_mass(mass, manner)
    },
    set: |batch, text, manner| {
        if let Wanted::OnHand { mass, .. } = &mut batch.wanted {
            *mass = read::mass(text, manner)?;
        }
        Ok(())
    },
};

const STUDENTS: Field = Field {
    id: "wanted-students",
    label: message!("Students"),
    unit: |_| "",
    look: |batch, _, manner| {
        let Wanted::Class { students, .. } = batch.wanted else {
            return String::new();
        };
        write::box_count(students.get(), manner)
    },
    set: |batch, text, manner| {
        if let Wanted::Class { students, .. } = &mut batch.wanted {
            *students = read::count(text, manner)?;
        }
        Ok(())
    },
};

const LOAVES: Field = Field {
    id: "wanted-loaves",
    label: message!("Loaves for each"),
    unit: |_| "",
    look: |batch, _, manner| {
        let Wanted::Class { loaves, .. } = batch.wanted else {
            return String::new();
        };
        write::box_count(loaves.get(), manner)
    },
    set: |batch, text, manner| {
        if let Wanted::Class { loaves, .. } = &mut batch.wanted {
            *loaves = read::count(text, manner)?;
        }
        Ok(())
    },
};

const LOAF: Field = Field {
    id: "wanted-loaf",
    label: message!("Dough in a loaf"),
    unit: of_mass,
    look: |batch, _, manner| {
        let Wanted::Class { loaf, .. } = batch.wanted else {
            return String::new();
        };
        write::box_mass(loaf, manner)
    },
    set: |batch, text, manner| {
        if let Wanted::Class { loaf, .. } = &mut batch.wanted {
            *loaf = read::mass(text, manner)?;
        }
        Ok(())
    },
};

/// The pieces that the formula, made once, is divided into.
pub const PIECES: Field = Field {
    id: "batch-pieces",
    label: message!("Pieces from the formula made once"),
    unit: |_| "",
    look: |batch, _, manner| write::box_count(batch.pieces.get(), manner),
    set: |batch, text, manner| {
        batch.pieces = read::count(text, manner)?;
        Ok(())
    },
};

/// What is lost on the way.
pub const LOSSES: [Field; 5] = [
    Field {
        id: "loss-residue",
        label: message!("Left in bowls, whatever the batch"),
        unit: of_mass,
        look: |batch, _, manner| write::box_mass(batch.losses.residue, manner),
        set: |batch, text, manner| {
            batch.losses.residue = read::mass(text, manner)?;
            Ok(())
        },
    },
    Field {
        id: "loss-share",
        label: message!("Left in bowls, of the dough"),
        unit: |_| "%",
        look: |batch, _, manner| write::box_share(batch.losses.residue_share, manner),
        set: |batch, text, manner| share(&mut batch.losses.residue_share, text, manner),
    },
    Field {
        id: "loss-dividing",
        label: message!("At dividing, of the dough"),
        unit: |_| "%",
        look: |batch, _, manner| write::box_share(batch.losses.dividing, manner),
        set: |batch, text, manner| share(&mut batch.losses.dividing, text, manner),
    },
    Field {
        id: "loss-bake",
        label: message!("In the oven and cooling"),
        unit: |_| "%",
        look: |batch, _, manner| write::box_share(batch.losses.bake, manner),
        set: |batch, text, manner| share(&mut batch.losses.bake, text, manner),
    },
    STAYS,
];

/// What stays in bag and bowl.
pub const STAYS: Field = Field {
    id: "loss-topping",
    label: message!("Chocolate left in bag and bowl"),
    unit: |_| "%",
    look: |batch, _, manner| write::box_share(batch.losses.topping, manner),
    set: |batch, text, manner| share(&mut batch.losses.topping, text, manner),
};

fn share(share: &mut Share, text: &str, manner: Manner) -> Result<(), ReadError> {
    *share = read::share(text, manner)?;
    Ok(())
}
