//! The grid a body is cut into for conduction: cells of equal thickness from the middle outwards.

use super::body::Shape;

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

/// One length of time step, made ready: the tridiagonal matrix is factored once.
pub(super) struct Factored<const CELLS: usize> {
    below: [f64; CELLS],
    pivot: [f64; CELLS],
    above: [f64; CELLS],
    seconds: f64,
    /// From the middle of the last cell to the air, W/K.
    outside: f64,
    air: f64,
}

impl<const CELLS: usize> Grid<CELLS> {
    pub(super) fn new(shape: Shape, half: f64, conductivity: f64, heat_per_volume: f64) -> Self {
        let power = shape.power();
        let raise = |r: f64, times: u8| (0..times).fold(1.0, |product, _| product * r);
        let count = f64::from(u16::try_from(CELLS).unwrap_or(u16::MAX)).max(1.0);
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
            below: [0.0; CELLS],
            pivot: [0.0; CELLS],
            above: [0.0; CELLS],
            seconds,
            outside,
            air,
        };
        let weight = STAGE * seconds;
        let (mut inwards, mut above_before) = (0.0, 0.0);
        let last = CELLS.saturating_sub(1);
        let cells = self.capacity.iter().zip(&self.outwards).enumerate();
        let rows = ready
            .below
            .iter_mut()
            .zip(&mut ready.pivot)
            .zip(&mut ready.above);
        for ((place, (capacity, outwards)), ((below, pivot), above)) in cells.zip(rows) {
            let leaves = if place == last { outside } else { *outwards };
            let diagonal = capacity + weight * (inwards + leaves);
            *below = -weight * inwards;
            *pivot = 1.0 / (diagonal - *below * above_before);
            *above = -weight * outwards * *pivot;
            (inwards, above_before) = (*outwards, *above);
        }
        ready
    }

    /// One step on: `cells` are replaced, and the heat that left through the surface is given, J.
    pub(super) fn step(&self, ready: &Factored<CELLS>, cells: &mut [f64; CELLS]) -> f64 {
        let mut first = *cells;
        self.solve(ready, &mut first);
        let mut second = [0.0; CELLS];
        let on = (1.0 - STAGE) / STAGE;
        for ((second, first), start) in second.iter_mut().zip(&first).zip(cells.iter()) {
            *second = start + on * (first - start);
        }
        self.solve(ready, &mut second);
        let leaving = |cells: &[f64; CELLS]| ready.outside * (outermost(cells) - ready.air);
        *cells = second;
        ready.seconds * ((1.0 - STAGE) * leaving(&first) + STAGE * leaving(&second))
    }

    /// Solves (C + weight·G)·x = C·x₀ + weight·G·air in place.
    fn solve(&self, ready: &Factored<CELLS>, cells: &mut [f64; CELLS]) {
        for (cell, capacity) in cells.iter_mut().zip(&self.capacity) {
            *cell *= capacity;
        }
        if let Some(cell) = cells.last_mut() {
            *cell += STAGE * ready.seconds * ready.outside * ready.air;
        }
        let mut before = 0.0;
        for ((cell, below), pivot) in cells.iter_mut().zip(&ready.below).zip(&ready.pivot) {
            *cell = (*cell - below * before) * pivot;
            before = *cell;
        }
        let mut after = 0.0;
        for (cell, above) in cells.iter_mut().zip(&ready.above).rev() {
            *cell -= above * after;
            after = *cell;
        }
    }

    /// Centre, mean and surface, °C.
    pub(super) fn read(
        &self,
        ready: Option<&Factored<CELLS>>,
        cells: &[f64; CELLS],
    ) -> (f64, f64, f64) {
        let mut inner = cells.iter();
        let first = inner.next().copied().unwrap_or_default();
        let second = inner.next().copied().unwrap_or(first);
        let centre = self.centre.0 * first + self.centre.1 * second;
        let whole: f64 = self.capacity.iter().sum();
        let held: f64 = self.capacity.iter().zip(cells).map(|(c, t)| c * t).sum();
        let last = outermost(cells);
        let surface = ready.map_or(last, |ready| {
            last - ready.outside * (last - ready.air) / self.last
        });
        (centre, held / whole, surface)
    }

    /// Heat capacity of the whole, J/K.
    pub(super) fn whole(&self) -> f64 {
        self.capacity.iter().sum()
    }
}

fn outermost<const CELLS: usize>(cells: &[f64; CELLS]) -> f64 {
    cells.last().copied().unwrap_or_default()
}
