//! Recipes in Spanish and Japanese: each line against what it means to a baker there.

use softcrumb::engine::ingredients::Food;
use softcrumb::storage::interchange::{ReadRecipe, RecipeNames, Understood, Unread, read_recipe};

fn read(lines: &[&str]) -> ReadRecipe {
    let recipe = serde_json::json!({ "@type": "Recipe", "recipeIngredient": lines });
    read_recipe(&recipe.to_string(), &RecipeNames::default()).unwrap()
}

/// Lines with the number of the ingredient and its grams.
type Rows = &'static [(&'static str, u16, f64)];

fn check(rows: Rows) {
    let lines: Vec<&str> = rows.iter().map(|row| row.0).collect();
    let mut trouble = Vec::new();
    for (line, (text, number, grams)) in read(&lines).lines.iter().zip(rows) {
        let found = match &line.understood {
            Understood::Line(_, found) => match &found.food {
                Food::Listed(listed) => Some((listed.row().number, found.mass.grams())),
                Food::Own(_) => None,
            },
            Understood::Heading(_) | Understood::Not(_) => None,
        };
        let is_right = found
            .is_some_and(|(food, mass)| food == *number && (mass - grams).abs() <= 0.005 * grams);
        if !is_right {
            trouble.push(format!(
                "{text}: {number}, {grams} g, but {:?}",
                line.understood
            ));
        }
    }
    assert!(trouble.is_empty(), "{}", trouble.join("\n"));
}

/// Words, and spoons of 15 and 5 ml, cups of 250 ml, glasses of 200 ml, a cube of 25 g: common
/// practice in Spain.
///
/// Source of the weights: USDA ARS, Release 28 (2016), table of weights: a cup of 236.588 ml holds
/// 244 g of milk, 125 g of plain flour, 200 g of sugar, 216 g of olive oil, 292 g of salt, 237 g of
/// water, 339 g of honey; an egg 50 g, a yolk 17 g, the juice of a lemon 48 g.
#[test]
fn spanish_lines() {
    check(SPANISH);
}

const MILLILITRE: f64 = 1.0 / 236.588;
const SPANISH: Rows = &[
    ("500 g de harina de fuerza", 1, 500.0),
    ("500 gr harina de trigo", 2, 500.0),
    ("250g de harina", 2, 250.0),
    ("100 gramos de harina integral", 4, 100.0),
    ("1.000 g de harina panadera", 1, 1000.0),
    ("1,5 kg de harina de repostería", 3, 1500.0),
    ("1.500 kg de harina de fuerza", 1, 1500.0),
    ("12,5 g de sal", 800, 12.5),
    ("½ kilo de azúcar", 700, 500.0),
    ("medio kilo de azúcar", 700, 500.0),
    ("250 ml de leche entera", 300, 250.0 * 244.0 * MILLILITRE),
    ("1/4 de litro de leche", 300, 250.0 * 244.0 * MILLILITRE),
    ("1 vaso de agua tibia", 200, 200.0 * 237.0 * MILLILITRE),
    ("2 cucharadas de azúcar", 700, 30.0 * 200.0 * MILLILITRE),
    ("2 cdas de miel", 710, 30.0 * 339.0 * MILLILITRE),
    ("1 cucharadita de sal", 800, 5.0 * 292.0 * MILLILITRE),
    ("1 taza de harina", 2, 250.0 * 125.0 * MILLILITRE),
    ("1 taza y media de harina", 2, 375.0 * 125.0 * MILLILITRE),
    ("1 y 1/2 tazas de leche", 300, 375.0 * 244.0 * MILLILITRE),
    (
        "media taza de aceite de oliva",
        522,
        125.0 * 216.0 * MILLILITRE,
    ),
    ("una pizca de sal", 800, 0.4 * 292.0 * MILLILITRE),
    ("2 huevos", 600, 100.0),
    ("1 huevo (55 g)", 600, 55.0),
    ("3 yemas de huevo", 601, 51.0),
    ("el zumo de 1 limón", 1211, 48.0),
    ("80 g de mantequilla en pomada", 500, 80.0),
    ("80 g de mantequilla sin sal", 500, 80.0),
    ("25 g de levadura fresca", 900, 25.0),
    ("1 cubo de levadura fresca", 900, 25.0),
    ("7 g de levadura seca de panadería", 901, 7.0),
    ("5 g de levadura instantánea", 902, 5.0),
    ("16 g de levadura química", 811, 16.0),
    (
        "200 ml de nata para montar",
        321,
        200.0 * 239.0 * MILLILITRE,
    ),
    ("100 g de chocolate negro", 1001, 100.0),
    ("20 g de cacao puro en polvo", 1020, 20.0),
    ("30 g de leche en polvo", 340, 30.0),
    ("10 a 12 g de sal fina", 800, 11.0),
    ("60 g de azúcar moreno", 701, 60.0),
    ("40 g de nueces", 1103, 40.0),
];

/// Words, and spoons of 15 and 5 ml, cups of 200 ml: common practice in Japan.
///
/// Source of the weights: Kagawa Nutrition University Press, 調理のためのベーシックデータ, table of weights
/// by standard measuring cups and spoons: 上白糖 3, 9, 130 g, グラニュー糖 4, 12, 180 g, 精製塩 6, 18 g,
/// 小麦粉 3, 9, 110 g, 牛乳 5, 15, 210 g, バター 4, 12 g, はちみつ 7, 21 g, ドライイースト 3 g.
#[test]
fn japanese_lines() {
    check(JAPANESE);
}

const JAPANESE: Rows = &[
    ("強力粉 250g", 1, 250.0),
    ("強力粉　２５０ｇ", 1, 250.0),
    ("強力粉…250g", 1, 250.0),
    ("・薄力粉50グラム", 3, 50.0),
    ("☆全粒粉 50 g", 4, 50.0),
    ("(A)中力粉 1kg", 2, 1000.0),
    ("250gの強力粉", 1, 250.0),
    ("牛乳 180ml", 300, 180.0 * 244.0 / 236.588),
    ("牛乳(人肌に温める) 1カップ", 300, 210.0),
    ("牛乳 カップ1/2", 300, 105.0),
    ("水 200cc", 200, 200.0 * 237.0 / 236.588),
    ("ぬるま湯 150g", 200, 150.0),
    ("砂糖 大さじ2", 700, 18.0),
    ("砂糖大さじ１と１/２", 700, 13.5),
    ("グラニュー糖 大さじ2", 700, 24.0),
    ("砂糖 大さじ1と小さじ1", 700, 12.0),
    ("塩 小さじ1", 800, 6.0),
    ("塩 小さじ½", 800, 3.0),
    ("塩 ひとつまみ", 800, 1.2),
    ("ドライイースト 小さじ1", 902, 3.0),
    ("ドライイースト 3g", 902, 3.0),
    ("インスタントドライイースト 小さじ1(4g)", 902, 4.0),
    ("生イースト 10g", 900, 10.0),
    ("無塩バター 30g", 500, 30.0),
    ("バター(食塩不使用) 大さじ1", 500, 12.0),
    ("卵 1個", 600, 50.0),
    ("卵(Mサイズ) 2個", 600, 100.0),
    ("卵 1個(55g)", 600, 55.0),
    ("溶き卵 25g", 600, 25.0),
    ("卵黄 2個分", 601, 34.0),
    ("レモン汁 1個分", 1211, 48.0),
    ("生クリーム 100g", 321, 100.0),
    ("はちみつ 大さじ1", 710, 21.0),
    ("ココア 15g", 1020, 15.0),
    ("板チョコレート 100g", 1001, 100.0),
    ("チョコチップ 50g", 1004, 50.0),
    ("スキムミルク 大さじ1", 341, 6.0),
    ("米粉 100g", 50, 100.0),
    ("水 180〜190g", 200, 185.0),
    ("くるみ 40g", 1103, 40.0),
];

#[test]
fn what_is_not_said_or_not_known_is_not_guessed() {
    let read = read(&[
        "強力粉 200g",
        "塩 少々",
        "塩麹 大さじ1",
        "100 g de dulce de leche",
        "sal al gusto",
        "1 sobre de levadura química",
    ]);
    let said: Vec<_> = read.lines.iter().map(|line| &line.understood).collect();
    assert_eq!(*said[1], Understood::Not(Unread::NoAmount));
    assert!(
        matches!(said[2], Understood::Not(Unread::NoWeight { .. })),
        "{:?}",
        said[2]
    );
    let Understood::Line(_, found) = said[3] else {
        panic!("{:?}", said[3])
    };
    assert_eq!((found.own, found.food.name()), (true, "dulce de leche"));
    assert_eq!(*said[4], Understood::Not(Unread::NoAmount));
    assert!(
        matches!(said[5], Understood::Not(Unread::NoWeight { .. })),
        "{:?}",
        said[5]
    );
}

#[test]
fn headings_are_parts() {
    let read = read(&[
        "Para el escaldado:",
        "25 g de harina",
        "Para la masa",
        "300 g de harina de fuerza",
        "【湯種】",
        "強力粉 30g",
        "■フィリング",
        "チョコレート 80g",
    ]);
    let parts = read.sheet.formula.parts.iter();
    let parts: Vec<_> = parts
        .map(|part| (part.name.as_str(), format!("{:?}", part.kind)))
        .collect();
    assert_eq!(
        parts,
        [
            ("Escaldado", "Paste".to_owned()),
            ("Masa", "Final".to_owned()),
            ("湯種", "Paste".to_owned()),
            ("フィリング", "Filling".to_owned()),
        ]
    );
}
