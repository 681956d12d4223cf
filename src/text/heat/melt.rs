//! Chocolate and hot liquid: their final temperature, and what melts the lumps.

use crate::engine::chocolate::{Lumps, MeltRemedy, Melted};
use crate::engine::quantity::Temperature;
use crate::text::{
    Advice, chart::stopped, format, format_options::FormatOptions, language::text, name, tr,
    tr_noop,
};

const SOURCE: &str = tr_noop!(
    "balance of heat; Beckett, Industrial Chocolate Manufacture and Use, 4th ed.; \
                      solid fat: Chaiseri and Dimick 1989 (from memory)"
);

/// Their final temperature, and what to do about lumps.
#[must_use]
pub fn melted(melted: &Melted, remedies: &[MeltRemedy], options: FormatOptions) -> Advice {
    let at = format::temperature(melted.temperature, options);
    let lumps = name::lumps(melted.lumps);
    let means = match melted.lumps {
        Lumps::None => tr!("The mix settles at {at}: {lumps}.", at = at, lumps = lumps),
        Lumps::Few | Lumps::Clear => tr!(
            "The mix settles at {at}: {value} of the fat stays solid, {lumps}.",
            at = at,
            value = format::share(melted.unmelted, options),
            lumps = lumps
        ),
    };
    let steps: Vec<String> = remedies
        .iter()
        .map(|remedy| melt_remedy(remedy, options))
        .collect();
    let to_do = if steps.is_empty() {
        tr!("Pour all of it at once, let it stand two minutes, then stir from the middle.")
            .to_owned()
    } else {
        stopped(&steps.join(tr!(", or ")))
    };
    Advice {
        means: means.into(),
        to_do: to_do.into(),
        source: text(SOURCE).into(),
    }
}

/// How the steps of the bench have chocolate melted, and what comes of it.
///
/// Source: common practice.
#[must_use]
pub fn melt_gently() -> &'static str {
    tr!(
        "Melt chocolate and liquid together gently over hot water, stirring, until it runs, as the steps say: no lumps are left."
    )
}

/// One thing that melts it, to be put into a sentence.
#[must_use]
pub fn melt_remedy(remedy: &MeltRemedy, options: FormatOptions) -> String {
    let degrees = |at: Temperature| format::temperature(at.to_half_degree(), options);
    match *remedy {
        MeltRemedy::HotterLiquid { to } => tr!("pour the liquid at {value}", value = degrees(to)),
        MeltRemedy::WarmBowl { to } => tr!("warm the bowl to {value} first", value = degrees(to)),
        MeltRemedy::MoreLiquid { liquid } => tr!(
            "pour {value} more, which also makes it thinner",
            value = format::mass(liquid, options)
        ),
        MeltRemedy::WaterBath { at, minutes } => tr!(
            "stand the bowl in water of {first} for {second}",
            first = degrees(at),
            second = format::about_minutes(minutes, options)
        ),
        MeltRemedy::FinerChop { to } => {
            tr!(
                "chop it finer, to {value} across",
                value = format::thickness(to, options)
            )
        }
    }
}

/// Scorching and steam.
#[must_use]
pub fn bath_caution(options: FormatOptions) -> Advice {
    let degrees = |celsius| crate::text::caution::celsius(celsius, options);
    Advice {
        means: tr!("Chocolate scorches above {first} (milk and white above {second}), and a breath of steam or a few \
             drops of water make it seize.",
            first = degrees(50.0),
            second = degrees(45.0))
        .into(),
        to_do: tr!("Keep the water below a simmer and the bowl’s foot out of it, wipe the bowl before \
                you tip it, and lift lids away from you.")
        .into(),
        source: tr!("common practice").into(),
    }
}
