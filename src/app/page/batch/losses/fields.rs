//! The fields of the losses.

use crate::app::part::{Field, of_mass};
use crate::engine::quantity::Share;
use crate::sheet::Batch;
use crate::text::{FormatOptions, format, read, read::ReadError, tr_noop};

/// The losses.
pub const LOSSES: [Field<Batch>; 5] = [
    Field {
        id: "loss-residue",
        label: tr_noop!("Left in bowls, whatever the batch"),
        unit: of_mass,
        get: |batch, _, options| format::box_mass(batch.losses.residue, options),
        set: |batch, text, options| {
            batch.losses.residue = read::mass(text, options)?;
            Ok(())
        },
    },
    Field {
        id: "loss-share",
        label: tr_noop!("Left in bowls, of the dough"),
        unit: |_| "%",
        get: |batch, _, options| format::box_share(batch.losses.residue_share, options),
        set: |batch, text, options| share(&mut batch.losses.residue_share, text, options),
    },
    Field {
        id: "loss-dividing",
        label: tr_noop!("At dividing, of the dough"),
        unit: |_| "%",
        get: |batch, _, options| format::box_share(batch.losses.dividing, options),
        set: |batch, text, options| share(&mut batch.losses.dividing, text, options),
    },
    Field {
        id: "loss-bake",
        label: tr_noop!("In the oven and cooling"),
        unit: |_| "%",
        get: |batch, _, options| format::box_share(batch.losses.bake, options),
        set: |batch, text, options| share(&mut batch.losses.bake, text, options),
    },
    STAYS,
];

/// The share of syrup and filling that is lost in bag and bowl.
pub const STAYS: Field<Batch> = Field {
    id: "loss-topping",
    label: tr_noop!("Chocolate left in bag and bowl"),
    unit: |_| "%",
    get: |batch, _, options| format::box_share(batch.losses.topping, options),
    set: |batch, text, options| share(&mut batch.losses.topping, text, options),
};

fn share(share: &mut Share, text: &str, options: FormatOptions) -> Result<(), ReadError> {
    *share = read::share(text, options)?;
    Ok(())
}
