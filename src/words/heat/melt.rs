//! Chocolate and hot liquid: where they settle, and what melts the lumps.

use crate::engine::chocolate::{Lumps, MeltRemedy, Melted};
use crate::words::{
    Advice, language::text, manner::Manner, message, name, picture::begun, say, write,
};

const SOURCE: &str = message!(
    "balance of heat; Beckett, Industrial Chocolate Manufacture and Use, 4th ed.; \
                      solid fat: Chaiseri and Dimick 1989 (from memory)"
);

/// Where they settle, and what to do about lumps.
#[must_use]
pub fn melted(melted: &Melted, remedies: &[MeltRemedy], manner: Manner) -> Advice {
    let at = write::temperature(melted.temperature, manner);
    let lumps = name::lumps(melted.lumps);
    let means = match melted.lumps {
        Lumps::None => say!("They settle at {at}: {lumps}.", at, lumps),
        Lumps::Few | Lumps::Clear => say!(
            "They settle at {at}: {} of the fat stays solid, {lumps}.",
            at,
            write::share(melted.unmelted, manner),
            lumps
        ),
    };
    let ways: Vec<String> = remedies
        .iter()
        .map(|remedy| melt_remedy(remedy, manner))
        .collect();
    let to_do = if ways.is_empty() {
        say!("Pour all of it at once, let it stand two minutes, then stir from the middle.")
            .to_owned()
    } else {
        format!("{}.", begun(&ways.join(say!(", or "))))
    };
    Advice {
        means: means.into(),
        to_do: to_do.into(),
        source: text(SOURCE).into(),
    }
}

/// One thing that melts it, to be put into a sentence.
#[must_use]
pub fn melt_remedy(remedy: &MeltRemedy, manner: Manner) -> String {
    let degrees = |at| write::temperature(at, manner);
    match *remedy {
        MeltRemedy::HotterLiquid { to } => say!("pour the liquid at {}", degrees(to)),
        MeltRemedy::WarmBowl { to } => say!("warm the bowl to {} first", degrees(to)),
        MeltRemedy::MoreLiquid { liquid } => say!(
            "pour {} more, which also makes it thinner",
            write::mass(liquid, manner)
        ),
        MeltRemedy::WaterBath { at, minutes } => say!(
            "stand the bowl in water of {} for {}",
            degrees(at),
            write::about_minutes(minutes, manner)
        ),
        MeltRemedy::FinerChop { to } => {
            say!("chop it finer, to {} across", write::thickness(to, manner))
        }
    }
}

/// Scorching and steam.
#[must_use]
pub fn bath_caution(manner: Manner) -> Advice {
    let degrees = |celsius| crate::words::caution::celsius(celsius, manner);
    Advice {
        means: say!(
            "Chocolate scorches above {} (milk and white above {}), and a breath of steam or a few \
             drops of water make it seize.",
            degrees(50.0),
            degrees(45.0)
        )
        .into(),
        to_do: say!(
            "Keep the water below a simmer and the bowl’s foot out of it, wipe the bowl before \
                you tip it, and lift lids away from you."
        )
        .into(),
        source: say!("common practice").into(),
    }
}
