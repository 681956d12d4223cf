//! What can be wrong with an ingredient of the user's own.

use super::{Label, LabelLine};
use crate::engine::quantity::Share;

/// Why an ingredient of the user's own is not taken.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum LabelError {
    /// It has no name.
    #[error("an ingredient needs a name")]
    NameEmpty,
    /// Its name is too long.
    #[error("a name of {length} characters is too long")]
    NameTooLong {
        /// How many characters it has.
        length: usize,
    },
    /// Its name holds a character that cannot be shown, or that turns the writing around.
    #[error("a name must not hold U+{:04X}", u32::from(*.character))]
    NameUnprintable {
        /// The first such character.
        character: char,
    },
    /// One line says more than 100 g in 100 g.
    #[error("{line:?} is above the whole")]
    LineAboveWhole {
        /// Which line.
        line: LabelLine,
        /// What it says.
        share: Share,
    },
    /// More saturates than fat.
    #[error("saturates above fat")]
    SaturatesAboveFat {
        /// Saturates.
        saturates: Share,
        /// Fat.
        fat: Share,
    },
    /// More sugars than carbohydrate.
    #[error("sugars above carbohydrate")]
    SugarsAboveCarbohydrate {
        /// Sugars.
        sugars: Share,
        /// Carbohydrate.
        carbohydrate: Share,
    },
    /// Cocoa and sugars together leave no room in a chocolate.
    #[error("cocoa and sugars above the whole")]
    CocoaAndSugarsAboveWhole {
        /// Cocoa solids.
        cocoa: Share,
        /// Sugars.
        sugars: Share,
    },
    /// The lines together say more than 100 g in 100 g, by more than [`LabelError::ALLOWED`].
    #[error("the lines add up to more than the whole")]
    SumAboveWhole {
        /// What fat, carbohydrate, fibre, protein, salt and water add up to; saturates stand for
        /// fat, and sugars for carbohydrate, where those are not printed.
        sum: Share,
    },
}

impl LabelError {
    /// How far above 100 g the lines of an honest label may add up, percent: each is rounded, and
    /// each may be an average of its own. The French table's own baking chocolate (code 31085)
    /// adds up to 102.5.
    pub const ALLOWED: f64 = 3.0;
}

/// Checks that a name of at most so many characters can be shown.
pub(super) fn check_name(name: &str, most: usize) -> Result<(), LabelError> {
    let length = name.chars().count();
    if name.trim().is_empty() {
        return Err(LabelError::NameEmpty);
    }
    if length > most {
        return Err(LabelError::NameTooLong { length });
    }
    match name.chars().find(|letter| unprintable(*letter)) {
        Some(character) => Err(LabelError::NameUnprintable { character }),
        None => Ok(()),
    }
}

/// Control characters, and those that turn the direction of writing around.
fn unprintable(letter: char) -> bool {
    letter.is_control() || matches!(letter, '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
}

/// Holds a label's lines against one another.
pub(super) fn check_label(label: &Label) -> Result<(), LabelError> {
    for line in LabelLine::ALL {
        match label.line(line) {
            Some(share) if share > Share::WHOLE => {
                return Err(LabelError::LineAboveWhole { line, share });
            }
            Some(_) | None => {}
        }
    }
    check_parts(label)?;
    check_sums(label)
}

/// What lies inside something else is not the larger.
fn check_parts(label: &Label) -> Result<(), LabelError> {
    if let (Some(saturates), Some(fat)) = (label.saturates, label.fat)
        && saturates > fat
    {
        return Err(LabelError::SaturatesAboveFat { saturates, fat });
    }
    if let (Some(sugars), Some(carbohydrate)) = (label.sugars, label.carbohydrate)
        && sugars > carbohydrate
    {
        return Err(LabelError::SugarsAboveCarbohydrate {
            sugars,
            carbohydrate,
        });
    }
    Ok(())
}

/// What lies side by side finds room in the whole.
fn check_sums(label: &Label) -> Result<(), LabelError> {
    let most = 100.0 + LabelError::ALLOWED;
    if let (Some(cocoa), Some(sugars)) = (label.cocoa, label.sugars)
        && cocoa.plus(sugars).percent() > most
    {
        return Err(LabelError::CocoaAndSugarsAboveWhole { cocoa, sugars });
    }
    let apart = [
        label.fat.or(label.saturates),
        label.carbohydrate.or(label.sugars),
        label.fibre,
        label.protein,
        label.salt,
        label.water,
    ];
    let said = apart.into_iter().flatten();
    let sum = said.fold(Share::NONE, Share::plus);
    if sum.percent() > most {
        return Err(LabelError::SumAboveWhole { sum });
    }
    Ok(())
}
