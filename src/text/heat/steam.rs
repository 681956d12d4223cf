//! The steam a paste is expected to lose, in a sentence.

use crate::results::heat::SteamPrediction;
use crate::text::{format, format_options::FormatOptions, tr};

/// "About 2 g will leave as steam, 1 g to 3 g. A weighing says it better."
#[must_use]
pub fn steam_predicted(predicted: &SteamPrediction, options: FormatOptions) -> String {
    tr!(
        "About {likely} will leave as steam, between {least} and {most}. A weighing says it better.",
        likely = format::mass(predicted.likely, options),
        least = format::mass(predicted.least, options),
        most = format::mass(predicted.most, options)
    )
}
