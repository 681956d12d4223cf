//! The fields of the batch target.

use crate::app::part::{Field, no_unit, of_mass};
use crate::engine::batch::{BatchTarget, TargetKind};
use crate::sheet::Batch;
use crate::text::{format, read, tr_noop};

/// The numbers of a kind of target.
pub const fn of_kind(kind: TargetKind) -> &'static [Field<Batch>] {
    match kind {
        TargetKind::Times => &[TIMES],
        TargetKind::Dough => &[DOUGH],
        TargetKind::Pieces => &[COUNT, EACH],
        TargetKind::FlourOnHand => &[FLOUR],
        TargetKind::OnHand => &[ON_HAND],
        TargetKind::Class => &[STUDENTS, LOAVES, LOAF],
    }
}

const TIMES: Field<Batch> = Field {
    id: "wanted-times",
    label: tr_noop!("Multiply by"),
    unit: |_| "×",
    get: |batch, _, options| {
        let BatchTarget::Times(times) = batch.wanted else {
            return String::new();
        };
        format::box_factor(times, options)
    },
    set: |batch, text, options| {
        batch.wanted = BatchTarget::Times(read::factor(text, options)?);
        Ok(())
    },
};

const DOUGH: Field<Batch> = Field {
    id: "wanted-dough",
    label: tr_noop!("Dough, ready to divide"),
    unit: of_mass,
    get: |batch, _, options| {
        let BatchTarget::Dough(mass) = batch.wanted else {
            return String::new();
        };
        format::box_mass(mass, options)
    },
    set: |batch, text, options| {
        batch.wanted = BatchTarget::Dough(read::mass(text, options)?);
        Ok(())
    },
};

const COUNT: Field<Batch> = Field {
    id: "wanted-pieces",
    label: tr_noop!("Pieces"),
    unit: no_unit,
    get: |batch, _, options| {
        let BatchTarget::Pieces { count, .. } = batch.wanted else {
            return String::new();
        };
        format::box_count(count.get(), options)
    },
    set: |batch, text, options| {
        if let BatchTarget::Pieces { count, .. } = &mut batch.wanted {
            *count = read::count(text, options)?;
        }
        Ok(())
    },
};

const EACH: Field<Batch> = Field {
    id: "wanted-each",
    label: tr_noop!("Dough in each"),
    unit: of_mass,
    get: |batch, _, options| {
        let BatchTarget::Pieces { each, .. } = batch.wanted else {
            return String::new();
        };
        format::box_mass(each, options)
    },
    set: |batch, text, options| {
        if let BatchTarget::Pieces { each, .. } = &mut batch.wanted {
            *each = read::mass(text, options)?;
        }
        Ok(())
    },
};

const FLOUR: Field<Batch> = Field {
    id: "wanted-flour",
    label: tr_noop!("Flour on hand"),
    unit: of_mass,
    get: |batch, _, options| {
        let BatchTarget::FlourOnHand(mass) = batch.wanted else {
            return String::new();
        };
        format::box_mass(mass, options)
    },
    set: |batch, text, options| {
        batch.wanted = BatchTarget::FlourOnHand(read::mass(text, options)?);
        Ok(())
    },
};

const ON_HAND: Field<Batch> = Field {
    id: "wanted-on-hand",
    label: tr_noop!("How much there is"),
    unit: of_mass,
    get: |batch, _, options| {
        let BatchTarget::OnHand { mass, .. } = batch.wanted else {
            return String::new();
        };
        format::box_mass(mass, options)
    },
    set: |batch, text, options| {
        if let BatchTarget::OnHand { mass, .. } = &mut batch.wanted {
            *mass = read::mass(text, options)?;
        }
        Ok(())
    },
};

const STUDENTS: Field<Batch> = Field {
    id: "wanted-students",
    label: tr_noop!("Students"),
    unit: no_unit,
    get: |batch, _, options| {
        let BatchTarget::Class { students, .. } = batch.wanted else {
            return String::new();
        };
        format::box_count(students.get(), options)
    },
    set: |batch, text, options| {
        if let BatchTarget::Class { students, .. } = &mut batch.wanted {
            *students = read::count(text, options)?;
        }
        Ok(())
    },
};

const LOAVES: Field<Batch> = Field {
    id: "wanted-loaves",
    label: tr_noop!("Loaves for each"),
    unit: no_unit,
    get: |batch, _, options| {
        let BatchTarget::Class { loaves, .. } = batch.wanted else {
            return String::new();
        };
        format::box_count(loaves.get(), options)
    },
    set: |batch, text, options| {
        if let BatchTarget::Class { loaves, .. } = &mut batch.wanted {
            *loaves = read::count(text, options)?;
        }
        Ok(())
    },
};

const LOAF: Field<Batch> = Field {
    id: "wanted-loaf",
    label: tr_noop!("Dough in a loaf"),
    unit: of_mass,
    get: |batch, _, options| {
        let BatchTarget::Class { loaf, .. } = batch.wanted else {
            return String::new();
        };
        format::box_mass(loaf, options)
    },
    set: |batch, text, options| {
        if let BatchTarget::Class { loaf, .. } = &mut batch.wanted {
            *loaf = read::mass(text, options)?;
        }
        Ok(())
    },
};

/// The pieces that the formula, made once, is divided into.
pub const PIECES: Field<Batch> = Field {
    id: "batch-pieces",
    label: tr_noop!("Pieces the formula makes"),
    unit: no_unit,
    get: |batch, _, options| format::box_count(batch.pieces.get(), options),
    set: |batch, text, options| {
        batch.pieces = read::count(text, options)?;
        Ok(())
    },
};
