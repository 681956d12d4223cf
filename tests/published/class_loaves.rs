//! The batch of a class: a loaf in each tin, the pieces of the formula in each loaf, one tin's bake.

use std::num::NonZeroU16;

use softcrumb::engine::batch::BatchTarget;
use softcrumb::engine::class::ClassSettings;
use softcrumb::engine::learn::Learnt;
use softcrumb::engine::nutrition::LabelLaw;
use softcrumb::engine::quantity::{Factor, Mass};
use softcrumb::results::batch::nutrition::PortionKind;
use softcrumb::results::batch::{self, class, class_batch, nutrition, shopping, tins};
use softcrumb::results::day::usual_run;
use softcrumb::sheet::day::DaySettings;
use softcrumb::sheet::{Kitchen, Pantry, Scales, Sheet, examples};

fn loaves_of(grams: f64) -> ClassSettings {
    ClassSettings {
        loaf: Mass::from_grams(grams).unwrap(),
        of_batch: false,
        ..ClassSettings::default()
    }
}

/// The example in one tin, made for a class of twelve and the teacher.
fn made(settings: &ClassSettings) -> Sheet {
    let (_, mut sheet) = examples().remove(0);
    sheet.batch = class_batch::of_all(&sheet, settings);
    sheet
}

/// Common practice: a loaf to a tin. 13 loaves of 500 g are 6500 g in 13 tins, ten balls of 50 g in
/// each. Asked for again, it is the same.
#[test]
fn thirteen_loaves_are_thirteen_tins_of_ten_pieces() {
    let settings = loaves_of(500.0);
    let sheet = made(&settings);
    let scaled = batch::scale(&sheet).unwrap();
    assert!((scaled.needed.grams() - 6500.0).abs() < 1e-6);
    assert_eq!(scaled.pieces.count.get(), 130);
    assert!((scaled.pieces.each.grams() - 50.0).abs() < 1e-9);
    assert!((class_batch::loaf(&sheet).unwrap().grams() - 500.0).abs() < 1e-9);
    let in_tin = tins::of(&sheet, &scaled).unwrap();
    assert_eq!(in_tin.used.tins.count.get(), 13);
    assert_eq!(in_tin.uneven, None);
    assert!(settings.is_made_by(sheet.batch.wanted));
    assert_eq!(class_batch::of_all(&sheet, &settings), sheet.batch);
    assert_eq!(class::loaf_difference(&sheet, &settings), None);
    let bench = class_batch::of_bench(&sheet, &settings);
    assert_eq!(bench.tin.unwrap().tins.count.get(), 1);
    let wanted = BatchTarget::Pieces {
        count: NonZeroU16::new(10).unwrap(),
        each: scaled.pieces.each,
    };
    assert_eq!(bench.wanted, wanted);
}

/// Common practice: loaves that fill their own tins bake as long as one of them alone. Loaves of the
/// tin's weight fill it as the formula made once does.
#[test]
fn a_class_of_loaves_bakes_as_long_as_one_of_them() {
    let (_, one) = examples().remove(0);
    let weight = batch::scale(&one).unwrap().needed.grams();
    for grams in [500.0, weight] {
        let mut alone = one.clone();
        alone.batch.wanted = BatchTarget::Dough(Mass::from_grams(grams).unwrap());
        let time = |sheet: &Sheet| {
            let run = usual_run(
                sheet,
                &Kitchen::default(),
                (&DaySettings::default(), &Learnt::default()),
            );
            let spread = run.baking.clone().unwrap().time.unwrap().spread;
            (run.bake_time().minutes(), spread.fraction())
        };
        let (single, spread) = time(&alone);
        let (all, _) = time(&made(&loaves_of(grams)));
        assert!((all - single).abs() <= single * spread, "{all} {single}");
        assert!((all - single).abs() <= 1.0, "{all} {single}");
    }
}

/// By definition: what is in a loaf is ten times what is in one of its ten pieces, and filling in a
/// piece is a tenth of what is in a loaf.
#[test]
fn a_class_loaf_is_declared_as_a_loaf_of_its_pieces() {
    let sheet = made(&loaves_of(500.0));
    let scaled = batch::scale(&sheet).unwrap();
    let found = nutrition::of(&sheet, &scaled, LabelLaw::Eu).unwrap();
    let loaf = found.loaf.unwrap();
    assert_eq!(loaf.kind, PortionKind::Loaf);
    let ratio = loaf.mass.grams() / found.piece.mass.grams();
    assert!((ratio - 10.0).abs() < 1e-9, "{ratio}");
    assert!(loaf.mass.grams() < 600.0, "{}", loaf.mass.grams());
    let filling = scaled.filling.grams() / 130.0;
    assert!((3.0..8.0).contains(&filling), "{filling}");
}

/// Two tins of a formula for two loaves stay two loaves of it: half its pieces in each.
#[test]
fn a_formula_for_two_tins_keeps_the_pieces_of_one() {
    let (_, mut sheet) = examples().remove(0);
    let mut used = sheet.batch.tin.unwrap();
    used.tins.count = NonZeroU16::new(2).unwrap();
    sheet.batch.tin = Some(used);
    sheet.batch.wanted = BatchTarget::Times(Factor::from_number(2.0).unwrap());
    sheet.batch = class_batch::of_all(&sheet, &loaves_of(500.0));
    assert_eq!(batch::scale(&sheet).unwrap().pieces.count.get(), 130);
}

/// By definition: twelve in pairs and the teacher have six benches of two loaves and one of one. On
/// a scale of 1 g what is shown in all is what is bought, also where only the teacher's bench has
/// too little for its scale.
#[test]
fn everything_together_is_what_is_bought() {
    let settings = ClassSettings {
        at_bench: NonZeroU16::new(2).unwrap(),
        ..loaves_of(500.0)
    };
    let sheet = made(&settings);
    let scales = Scales {
        main: Mass::from_grams(1.0).unwrap(),
        pocket: None,
    };
    let weights = class::of(&sheet, &settings, scales).weights.unwrap();
    let batch = batch::of(&sheet, scales);
    let pantry = Pantry::default();
    let bought = shopping::of_sheet(&sheet, &batch, &settings, scales, &pantry);
    let bought = bought.unwrap().unwrap();
    for item in &bought.list.items {
        let lines = weights.total.lines.iter();
        let own = lines.filter(|line| {
            let written = weights.total.formula.line(line.at).unwrap();
            written.food == item.food
        });
        let shown: f64 = own.map(|line| line.weighed.grams()).sum();
        assert!((shown - item.needed.grams()).abs() < 1e-6, "{shown}");
    }
    let weighed = class_batch::weighed_out(&sheet, scales);
    let rounded = batch.rounded.unwrap();
    for line in rounded
        .lines
        .iter()
        .filter(|line| line.weighed > Mass::ZERO)
    {
        let written = weighed.formula.line(line.at).unwrap().mass;
        assert!((written.grams() - line.weighed.grams()).abs() < 1e-9);
    }
}
