//! The working of the figures of a tin.

use super::capacity::{Capacity, cm};
use super::convert::Converted;
use super::dough_height::DoughHeight;
use super::filling::Filling;
use super::layout::Layout;
use super::shape::{Tin, TinShape};
use super::usual::DOUGH_SPECIFIC_VOLUME;
use super::usual_rise::LAID_IN;
use crate::engine::quantity::{Length, Mass, SpecificVolume};
use crate::engine::working::{Given, WorkingLine, given};

const GEOMETRY: &str = "geometry";
const PI: &str = "3.141592653589793";

impl Tin {
    /// The step that leads to its volume; none for a tray.
    #[must_use]
    pub fn working(&self) -> Option<WorkingLine> {
        let volume = Capacity::of(self).ok()?.volume().ok()?.cubic_centimetres();
        let (rule, with) = rule_of(&self.shape)?;
        Some(WorkingLine {
            rule: rule.into(),
            with,
            result: given("V", "room in the tin", volume, "cm³"),
            source: GEOMETRY.into(),
        })
    }
}

fn rule_of(shape: &TinShape) -> Option<(String, Vec<Given>)> {
    let frustum = format!("{PI} × h × (D ^ 2 + D × d + d ^ 2) / 12");
    Some(match *shape {
        TinShape::Rectangle { top, bottom, deep } => (
            "h × (a × b + c × d + (a + c) × (b + d)) / 6".to_owned(),
            vec![
                long("h", "depth", deep),
                long("a", "rim, length", top.long),
                long("b", "rim, width", top.wide),
                long("c", "bottom, length", bottom.long),
                long("d", "bottom, width", bottom.wide),
            ],
        ),
        TinShape::Round { top, bottom, deep } => (frustum, round(top, bottom, deep)),
        TinShape::Ring {
            top,
            bottom,
            tube,
            deep,
        } => {
            let mut with = round(top, bottom, deep);
            with.push(long("t", "across the tube", tube));
            (format!("{frustum} − {PI} × h × t ^ 2 / 4"), with)
        }
        TinShape::Muffin {
            top,
            bottom,
            deep,
            cups,
        } => {
            let mut with = round(top, bottom, deep);
            with.push(given("n", "cups", f64::from(cups.get()), ""));
            (format!("n × {frustum}"), with)
        }
        TinShape::Tray { .. } => return None,
    })
}

fn round(top: Length, bottom: Length, deep: Length) -> Vec<Given> {
    vec![
        long("h", "depth", deep),
        long("D", "across the rim", top),
        long("d", "across the bottom", bottom),
    ]
}

impl Filling {
    /// The steps that lead to the dough for the tins, and to the volume a gram of the batch has.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let volume = given("V", "room in a tin", self.volume.cubic_centimetres(), "cm³");
        let mut lines: Vec<WorkingLine> = self.tins.tin.working().into_iter().collect();
        lines.push(WorkingLine {
            rule: "n × V / r".into(),
            with: vec![
                given("n", "tins", f64::from(self.tins.count.get()), ""),
                volume.clone(),
                room("r", "room for a gram of dough", self.wished),
            ],
            result: grams("M", "dough for all tins", self.all),
            source: self.usual.source.into(),
        });
        if let (Some(each), Some(found)) = (self.there_each, self.found) {
            lines.push(WorkingLine {
                rule: "V / m".into(),
                with: vec![volume, grams("m", "dough in a tin", each)],
                result: room("r", "room for a gram of it", found),
                source: "by definition".into(),
            });
        }
        lines
    }
}

impl DoughHeight {
    /// The steps that lead to the height: the volume of the risen dough, and how high it reaches.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let risen = self.risen.cubic_centimetres();
        let fits = risen.min(self.tin.cubic_centimetres());
        let height = self.of_rim.fraction() * cm(self.deep);
        vec![
            WorkingLine {
                rule: "m × v × f".into(),
                with: vec![
                    grams("m", "dough in a tin", self.dough),
                    room("v", "room a gram takes at first", DOUGH_SPECIFIC_VOLUME),
                    given("f", "times the dough without gas", self.rise.number(), ""),
                ],
                result: given("R", "room it takes", risen, "cm³"),
                source: "handbook of sourdough biotechnology, Table 3.4".into(),
            },
            self.as_laid_working(),
            WorkingLine {
                rule: "t × h + (R − F) / A".into(),
                with: vec![
                    given(
                        "t",
                        "part of the depth that is filled",
                        self.up_the_side,
                        "",
                    ),
                    long("h", "depth", self.deep),
                    given("R", "room it takes", risen, "cm³"),
                    given("F", "of it inside the tin", fits, "cm³"),
                    given("A", "area at the rim", self.rim_area, "cm²"),
                ],
                result: given("H", "height of the dough", height, "cm"),
                source: GEOMETRY.into(),
            },
        ]
    }
}

impl DoughHeight {
    /// The step that leads to the rise as a multiple of what is laid in the tin.
    fn as_laid_working(&self) -> WorkingLine {
        WorkingLine {
            rule: "f / g".into(),
            with: vec![
                given("f", "times the dough without gas", self.rise.number(), ""),
                given("g", "of it as it is laid in", LAID_IN.number(), ""),
            ],
            result: given("n", "times what is laid in", self.as_laid.number(), ""),
            source: "gas as it is laid in: common practice, 1.2 to 1.4".into(),
        }
    }
}

impl Layout {
    /// The step that leads to the size of a ball.
    #[must_use]
    pub fn working(&self, each: Mass) -> WorkingLine {
        WorkingLine {
            rule: format!("(6 × m × v / {PI}) ^ (1 / 3)").into(),
            with: vec![
                grams("m", "one piece", each),
                room("v", "room a gram takes at first", DOUGH_SPECIFIC_VOLUME),
            ],
            result: long("d", "across the ball", self.ball),
            source: GEOMETRY.into(),
        }
    }
}

impl Converted {
    /// The step that leads to the dough for the other tins.
    #[must_use]
    pub fn working(&self) -> Vec<WorkingLine> {
        let (unit, of) = if self.by_area {
            ("cm²", ["area before", "area now"])
        } else {
            ("cm³", ["room before", "room now"])
        };
        let (one, other) = self.sizes;
        vec![WorkingLine {
            rule: "M × W × k / (V × n)".into(),
            with: vec![
                grams("M", "dough before", self.before),
                given("W", of[1], other, unit),
                given("k", "tins now", f64::from(self.to.count.get()), ""),
                given("V", of[0], one, unit),
                given("n", "tins before", f64::from(self.from.count.get()), ""),
            ],
            result: grams("N", "dough now", self.now),
            source: GEOMETRY.into(),
        }]
    }
}

fn long(letter: &'static str, of: &'static str, length: Length) -> Given {
    given(letter, of, cm(length), "cm")
}

fn grams(letter: &'static str, of: &'static str, mass: Mass) -> Given {
    given(letter, of, mass.grams(), "g")
}

fn room(letter: &'static str, of: &'static str, room: SpecificVolume) -> Given {
    given(letter, of, room.cubic_centimetres_per_gram(), "cm³/g")
}
