//! The solver for one direction of a grid: tridiagonal rows, made ready once for one length of step.

/// The part of a step that each of its two stages goes: 1 − 1/√2 makes it exact to second order
/// and lets the fastest changes die out at once.
pub(super) const STAGE: f64 = 0.292_893_218_813_452_4;

/// One number for each cell, by layer from the top, then by ring from the middle.
pub(super) type Cells<const LAYERS: usize, const RINGS: usize> = [[f64; RINGS]; LAYERS];

/// Solves the rows of one direction for one length of step.
pub(super) struct Factored<const LAYERS: usize, const RINGS: usize> {
    own: Cells<LAYERS, RINGS>,
    before: Cells<LAYERS, RINGS>,
    after: Cells<LAYERS, RINGS>,
    /// What the air adds to a cell, K.
    air: Cells<LAYERS, RINGS>,
}

/// One row of a tridiagonal matrix.
pub(super) struct Row {
    pub(super) diagonal: f64,
    pub(super) before: f64,
    pub(super) after: f64,
    pub(super) capacity: f64,
    pub(super) air: f64,
}

impl<const LAYERS: usize, const RINGS: usize> Factored<LAYERS, RINGS> {
    pub(super) const fn new() -> Self {
        Self {
            own: [[0.0; RINGS]; LAYERS],
            before: [[0.0; RINGS]; LAYERS],
            after: [[0.0; RINGS]; LAYERS],
            air: [[0.0; RINGS]; LAYERS],
        }
    }

    /// Puts a row in, divided by its pivot; gives what the next row needs.
    pub(super) fn set(
        &mut self,
        (layer, ring): (usize, usize),
        row: &Row,
        after_before: f64,
    ) -> f64 {
        let pivot = 1.0 / (row.diagonal + row.before * after_before);
        let after = -row.after * pivot;
        put(&mut self.own, layer, ring, row.capacity * pivot);
        put(&mut self.before, layer, ring, -row.before * pivot);
        put(&mut self.after, layer, ring, after);
        put(&mut self.air, layer, ring, row.air * pivot);
        after
    }

    /// The two stages of a step.
    pub(super) fn stages(
        &self,
        cells: &mut Cells<LAYERS, RINGS>,
        solve: fn(&Self, &mut Cells<LAYERS, RINGS>),
    ) {
        let mut first = *cells;
        solve(self, &mut first);
        let on = (1.0 - STAGE) / STAGE;
        for (layer, first) in cells.iter_mut().zip(&first) {
            for (cell, first) in layer.iter_mut().zip(first) {
                *cell += on * (first - *cell);
            }
        }
        solve(self, cells);
    }

    pub(super) fn solve_across(&self, cells: &mut Cells<LAYERS, RINGS>) {
        let factors = self.own.iter().zip(&self.before).zip(&self.after);
        for ((layer, air), ((own, before), after)) in cells.iter_mut().zip(&self.air).zip(factors) {
            let mut last = 0.0;
            for (((cell, own), before), air) in layer.iter_mut().zip(own).zip(before).zip(air) {
                *cell = *cell * own + air - before * last;
                last = *cell;
            }
            last = 0.0;
            for (cell, after) in layer.iter_mut().zip(after).rev() {
                *cell -= after * last;
                last = *cell;
            }
        }
    }

    pub(super) fn solve_down(&self, cells: &mut Cells<LAYERS, RINGS>) {
        let mut above = [0.0; RINGS];
        let factors = self.own.iter().zip(&self.before);
        for ((layer, air), (own, before)) in cells.iter_mut().zip(&self.air).zip(factors) {
            let row = layer.iter_mut().zip(own).zip(before).zip(air);
            for ((((cell, own), before), air), above) in row.zip(&above) {
                *cell = *cell * own + air - before * above;
            }
            above = *layer;
        }
        let mut below = [0.0; RINGS];
        for (layer, after) in cells.iter_mut().zip(&self.after).rev() {
            for ((cell, after), below) in layer.iter_mut().zip(after).zip(&below) {
                *cell -= after * below;
            }
            below = *layer;
        }
    }
}

/// Sets one cell; a place beyond the grid is left out.
fn put<const LAYERS: usize, const RINGS: usize>(
    cells: &mut Cells<LAYERS, RINGS>,
    layer: usize,
    ring: usize,
    value: f64,
) {
    if let Some(cell) = cells.get_mut(layer).and_then(|layer| layer.get_mut(ring)) {
        *cell = value;
    }
}
