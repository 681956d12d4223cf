//! The plan of a tin seen from above, as it is drawn, and in words.

use crate::engine::numerics::saturating_u32;
use crate::engine::quantity::Length;
use crate::engine::tin::{Between, Layout, Outline};
use crate::text::{format, format_options::FormatOptions, tr};

/// A circle of the plan, in millimetres from the left and upper edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlanCircle {
    /// Its middle, from the left.
    pub x: f64,
    /// Its middle, from above.
    pub y: f64,
    /// Half of it across.
    pub radius: f64,
}

/// The plan of a tin as it is drawn, in millimetres.
#[derive(Clone, Debug, PartialEq)]
pub struct TinPlan {
    /// From the left to the right edge.
    pub wide: f64,
    /// From the upper to the lower edge.
    pub high: f64,
    /// Circles of the tin itself: its edge, its tube, its cups; none for a rectangle.
    pub edges: Vec<PlanCircle>,
    /// Whether the tin is a rectangle that fills the plan.
    pub rectangle: bool,
    /// The pieces as they are put in.
    pub put_in: Vec<PlanCircle>,
    /// The pieces as they have risen, no larger than their places.
    pub risen: Vec<PlanCircle>,
    /// The same in words.
    pub says: String,
}

/// The margin around the plan, so that the edge's line is visible.
const AROUND: f64 = 4.0;

impl TinPlan {
    /// The whole drawing with a little room around, from left to right and from above to below.
    #[must_use]
    pub fn around(&self) -> (f64, f64) {
        (self.wide + AROUND, self.high + AROUND)
    }
}

/// Between cups, as a part of a cup.
const CUP_GAP: f64 = 1.25;

/// The plan of pieces laid out in a tin.
#[must_use]
pub fn tin_plan(layout: &Layout, options: FormatOptions) -> TinPlan {
    let (wide, high) = size(layout);
    let place = mm(layout.place);
    let circles = |across: f64| -> Vec<PlanCircle> {
        let spots = layout.spots.iter();
        spots
            .map(|spot| PlanCircle {
                x: spot.along.fraction() * wide,
                y: spot.across.fraction() * high,
                radius: across / 2.0,
            })
            .collect()
    };
    let middle = |across: f64| PlanCircle {
        x: wide / 2.0,
        y: high / 2.0,
        radius: across / 2.0,
    };
    let edges = match layout.outline {
        Outline::Rectangle(_) => Vec::new(),
        Outline::Circle(across) => vec![middle(mm(across))],
        Outline::Ring { across, tube } => vec![middle(mm(across)), middle(mm(tube))],
        Outline::Cups(_) => circles(place),
    };
    TinPlan {
        wide,
        high,
        edges,
        rectangle: matches!(layout.outline, Outline::Rectangle(_)),
        put_in: circles(mm(layout.ball).min(place)),
        risen: circles(mm(layout.risen).min(place)),
        says: says(layout, options),
    }
}

fn size(layout: &Layout) -> (f64, f64) {
    match layout.outline {
        Outline::Rectangle(across) => (mm(across.long), mm(across.wide)),
        Outline::Circle(across) | Outline::Ring { across, .. } => (mm(across), mm(across)),
        Outline::Cups(grid) => {
            let cup = mm(layout.place) * CUP_GAP;
            let cups = |count: u16| f64::from(count) * cup;
            (cups(grid.columns.get()), cups(grid.rows.get()))
        }
    }
}

fn mm(length: Length) -> f64 {
    length.metres() * 1000.0
}

fn says(layout: &Layout, options: FormatOptions) -> String {
    let pieces = saturating_u32(layout.spots.len());
    if pieces == 1 && !matches!(layout.outline, Outline::Cups(_)) {
        return of_one(layout, options);
    }
    let lie = match (layout.outline, layout.grid) {
        (Outline::Cups(grid), _) => tr!(
            "{first} cups, {second} by {third}",
            first = format::count(pieces, options),
            second = grid.rows,
            third = grid.columns
        ),
        (_, Some(grid)) => tr!(
            "{first} by {second} pieces",
            first = format::count(grid.rows.get(), options),
            second = format::count(grid.columns.get(), options)
        ),
        (Outline::Ring { .. }, None) => {
            tr!(
                "{value} pieces around the tube",
                value = format::count(pieces, options)
            )
        }
        (Outline::Rectangle(_) | Outline::Circle(_), None) => {
            tr!(
                "{value} pieces in circles",
                value = format::count(pieces, options)
            )
        }
    };
    let ball = format::millimetres(layout.ball, options);
    tr!(
        "{lie}. A ball is {ball} across. {first} {second}",
        lie = lie,
        ball = ball,
        first = between(layout.put_in, true, options),
        second = between(layout.when_risen, false, options)
    )
}

/// One piece has no neighbours: it lies in the tin, and fills it or not.
fn of_one(layout: &Layout, options: FormatOptions) -> String {
    let ball = format::millimetres(layout.ball, options);
    let risen = match layout.when_risen {
        Between::Apart(_) => tr!("Risen, it still does not touch the sides."),
        Between::Touching | Between::Pressed(_) => tr!("Risen, it fills the tin’s width."),
    };
    let lies = match layout.put_in {
        Between::Pressed(by) => tr!(
            "One piece; as a ball it is {ball} across, {value} wider than the tin: shape it long.",
            ball = ball,
            value = format::millimetres(by, options)
        ),
        Between::Apart(_) | Between::Touching => {
            tr!("One piece; as a ball it is {ball} across.", ball = ball)
        }
    };
    format!("{lies} {risen}")
}

fn between(between: Between, put_in: bool, options: FormatOptions) -> String {
    match (between, put_in) {
        (Between::Apart(gap), true) => {
            tr!(
                "They are put in {value} apart.",
                value = format::millimetres(gap, options)
            )
        }
        (Between::Touching, true) => tr!("They just touch when they are put in.").to_owned(),
        (Between::Pressed(by), true) => tr!(
            "They are {value} too wide for their places: press them flat or take fewer.",
            value = format::millimetres(by, options)
        ),
        (Between::Apart(gap), false) => tr!(
            "Risen, they still stand {value} apart.",
            value = format::millimetres(gap, options)
        ),
        (Between::Touching, false) => tr!("Risen, they just touch.").to_owned(),
        (Between::Pressed(_), false) => tr!("Risen, they grow into each other.").to_owned(),
    }
}
