//! The grid a body is cut into for conduction: cells of equal thickness from the middle outwards.

use super::body::Shape;
use crate::engine::numerics::float_from_usize;

/// The part of a step that each of its two stages goes: 1 − 1/√2 makes it exact to second order
/// and lets the fastest changes die out at once.
const STAGE: f64 = 0.292_893_218_813_452_4;

/// A body in `CELLS` cells; per unit of area of a slab, of length over 2π of a cylinder, of solid
/// angle of a sphere.
pub(super) struct Grid<const CELLS: usize> {
    /// Heat capacity of each cell, J/K.
    capacity: [f64; CELLS],
    /// What conducts from each cell to the next outwards, W/K; none from the last.
    outwards: [f64; CELLS],
    /// From the middle of the last cell to the surface, W/K.
    last: f64,
    /// Area of the surface.
    area: f64,
    /// What the centre takes from the first cell and from the second.
    centre: (f64, f64),
}

/// One length of time step, made ready: the tridiagonal matrix is factored once, and every row
/// divided by its pivot.
pub(super) struct Factored<const CELLS: usize> {
    own: [f64; CELLS],
    below: [f64; CELLS],
    above: [f64; CELLS],
    /// What the air adds to the last row.
    from_air: f64,
    seconds: f64,
    /// From the middle of the last cell to the air, W/K.
    outside: f64,
    air: f64,
}

/// What one step did.
pub(super) struct Stepped {
    /// Heat that left through the surface, J.
    pub(super) left: f64,
    /// Heat all cells hold above 0 °C, J.
    pub(super) held: f64,
}

impl<const CELLS: usize> Grid<CELLS> {
    pub(super) fn new(shape: Shape, half: f64, conductivity: f64, heat_per_volume: f64) -> Self {
        let power = shape.power();
        let raise = |r: f64, times: u8| (0..times).fold(1.0, |product, _| product * r);
        let count = float_from_usize(CELLS).max(1.0);
        let width = half / count;
        let mut grid = Self {
            capacity: [0.0; CELLS],
            outwards: [0.0; CELLS],
            last: conductivity * raise(half, power) / (width / 2.0),
            area: raise(half, power),
            centre: (9.0 / 8.0, -1.0 / 8.0),
        };
        let mut inner = 0.0;
        for (capacity, outwards) in grid.capacity.iter_mut().zip(&mut grid.outwards) {
            let outer = inner + width;
            let volume = (raise(outer, power + 1) - raise(inner, power + 1)) / f64::from(power + 1);
            *capacity = heat_per_volume * volume;
            *outwards = conductivity * raise(outer, power) / width;
            inner = outer;
        }
        if let Some(outermost) = grid.outwards.last_mut() {
            *outermost = 0.0;
        }
        grid
    }

    /// Makes ready for steps of `seconds` in air of `air` °C with a coefficient of `h` W/(m²·K).
    pub(super) fn factor(&self, seconds: f64, air: f64, h: f64) -> Factored<CELLS> {
        let outside = 1.0 / (1.0 / self.last + 1.0 / (h * self.area));
        let mut ready = Factored {
            own: [0.0; CELLS],
            below: [0.0; CELLS],
            above: [0.0; CELLS],
            from_air: 0.0,
            seconds,
            outside,
            air,
        };
        let weight = STAGE * seconds;
        let (mut inwards, mut above_before) = (0.0, 0.0);
        let last = CELLS.saturating_sub(1);
        let cells = self.capacity.iter().zip(&self.outwards).enumerate();
        let rows = ready
            .own
            .iter_mut()
            .zip(&mut ready.below)
            .zip(&mut ready.above);
        for ((place, (capacity, outwards)), ((own, below), above)) in cells.zip(rows) {
            let leaves = if place == last { outside } else { *outwards };
            let diagonal = capacity + weight * (inwards + leaves);
            let pivot = 1.0 / (diagonal + weight * inwards * above_before);
            *own = capacity * pivot;
            *below = -weight * inwards * pivot;
            *above = -weight * outwards * pivot;
            ready.from_air = weight * outside * air * pivot;
            (inwards, above_before) = (*outwards, *above);
        }
        ready
    }

    /// One step on: `cells` are replaced; the heat that left through the surface is given, and the
    /// heat all cells hold above 0 °C, J.
    pub(super) fn step(&self, ready: &Factored<CELLS>, cells: &mut [f64; CELLS]) -> Stepped {
        let mut first = *cells;
        self.solve(ready, &mut first);
        let on = (1.0 - STAGE) / STAGE;
        for (cell, first) in cells.iter_mut().zip(&first) {
            *cell += on * (first - *cell);
        }
        let held = self.solve(ready, cells);
        let leaving = |cells: &[f64; CELLS]| ready.outside * (outermost(cells) - ready.air);
        let left = (1.0 - STAGE) * leaving(&first) + STAGE * leaving(cells);
        Stepped {
            left: ready.seconds * left,
            held,
        }
    }

    /// Solves (C + weight·G)·x = C·x₀ + weight·G·air in place; gives C·x.
    fn solve(&self, ready: &Factored<CELLS>, cells: &mut [f64; CELLS]) -> f64 {
        for (cell, own) in cells.iter_mut().zip(&ready.own) {
            *cell *= own;
        }
        if let Some(cell) = cells.last_mut() {
            *cell += ready.from_air;
        }
        let mut before = 0.0;
        for (cell, below) in cells.iter_mut().zip(&ready.below) {
            *cell -= below * before;
            before = *cell;
        }
        let (mut after, mut held) = (0.0, 0.0);
        let rows = cells.iter_mut().zip(&ready.above).zip(&self.capacity);
        for ((cell, above), capacity) in rows.rev() {
            *cell -= above * after;
            after = *cell;
            held += capacity * after;
        }
        held
    }

    /// How warm the centre is, °C.
    pub(super) fn centre(&self, cells: &[f64; CELLS]) -> f64 {
        let mut inner = cells.iter();
        let first = inner.next().copied().unwrap_or_default();
        let second = inner.next().copied().unwrap_or(first);
        self.centre.0 * first + self.centre.1 * second
    }

    /// How warm the surface is, °C.
    pub(super) fn surface(&self, ready: &Factored<CELLS>, cells: &[f64; CELLS]) -> f64 {
        let last = outermost(cells);
        last - ready.outside * (last - ready.air) / self.last
    }

    /// Heat capacity of the whole, J/K.
    pub(super) fn whole(&self) -> f64 {
        self.capacity.iter().sum()
    }
}

fn outermost<const CELLS: usize>(cells: &[f64; CELLS]) -> f64 {
    cells.last().copied().unwrap_or_default()
}
