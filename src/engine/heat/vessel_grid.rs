//! The grid a food in a vessel is cut into: rings from the middle to the wall, layers from the top
//! to the bottom.

use super::vessel_solver::{Cells, Factored, Row, STAGE};

/// A short cylinder of food in cells of equal width and height.
pub(super) struct VesselGrid<const LAYERS: usize, const RINGS: usize> {
    /// Heat capacity of the food of a ring, J/K, of one layer.
    food: [f64; RINGS],
    /// Heat capacity of each cell with the wall that warms with it, J/K.
    capacity: Cells<LAYERS, RINGS>,
    /// From each ring to the next outwards, W/K, of one layer; none from the last.
    outwards: [f64; RINGS],
    /// From each layer to the next downwards, W/K, ring by ring.
    downwards: [f64; RINGS],
    /// Area of the top of each ring, m².
    areas: [f64; RINGS],
    /// Area of the wall beside one layer, m².
    wall: f64,
    /// From the middle of a cell to its top or bottom, and of the last ring to the wall, W/(m²·K).
    half_height: f64,
    half_width: f64,
}

/// What passes heat to the air at one face: a coefficient, W/(m²·K), and the temperature it works
/// against, °C.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Face {
    pub(super) coefficient: f64,
    pub(super) air: f64,
}

/// A food in its vessel, as the grid needs it; SI units.
#[derive(Clone, Copy, Debug)]
pub(super) struct Filled {
    pub(super) radius: f64,
    pub(super) depth: f64,
    pub(super) conductivity: f64,
    pub(super) heat_per_volume: f64,
    /// Heat capacity of the vessel, J/K.
    pub(super) vessel: f64,
}

/// Steps of one length, made ready.
pub(super) struct VesselStep<const LAYERS: usize, const RINGS: usize> {
    across: Factored<LAYERS, RINGS>,
    down: Factored<LAYERS, RINGS>,
}

impl<const LAYERS: usize, const RINGS: usize> VesselGrid<LAYERS, RINGS> {
    pub(super) fn new(filled: &Filled) -> Self {
        let width = filled.radius / count(RINGS);
        let height = filled.depth / count(LAYERS);
        let pi = std::f64::consts::PI;
        let mut grid = Self {
            food: [0.0; RINGS],
            capacity: [[0.0; RINGS]; LAYERS],
            outwards: [0.0; RINGS],
            downwards: [0.0; RINGS],
            areas: [0.0; RINGS],
            wall: 2.0 * pi * filled.radius * height,
            half_height: 2.0 * filled.conductivity / height,
            half_width: 2.0 * filled.conductivity / width,
        };
        let mut inner = 0.0;
        let rings = grid.food.iter_mut().zip(&mut grid.outwards);
        for (((food, outwards), downwards), area) in
            rings.zip(&mut grid.downwards).zip(&mut grid.areas)
        {
            let outer = inner + width;
            *area = pi * (outer * outer - inner * inner);
            *food = filled.heat_per_volume * *area * height;
            *outwards = filled.conductivity * 2.0 * pi * outer * height / width;
            *downwards = filled.conductivity * *area / height;
            inner = outer;
        }
        if let Some(last) = grid.outwards.last_mut() {
            *last = 0.0;
        }
        grid.add_vessel(filled);
        grid
    }

    /// Adds the wall's heat capacity to the cells that touch it, by area.
    fn add_vessel(&mut self, filled: &Filled) {
        let bottom: f64 = self.areas.iter().sum();
        let side = self.wall * count(LAYERS);
        let per_area = filled.vessel / (bottom + side);
        for layer in &mut self.capacity {
            layer.copy_from_slice(&self.food);
            if let Some(outermost) = layer.last_mut() {
                *outermost += per_area * self.wall;
            }
        }
        if let Some(lowest) = self.capacity.last_mut() {
            for (capacity, area) in lowest.iter_mut().zip(&self.areas) {
                *capacity += per_area * area;
            }
        }
    }

    /// Makes ready for steps of `seconds` with these faces.
    pub(super) fn ready(
        &self,
        seconds: f64,
        (top, side, bottom): (Face, Face, Face),
    ) -> VesselStep<LAYERS, RINGS> {
        VesselStep {
            across: self.factor_across(seconds, side),
            down: self.factor_down(seconds, top, bottom),
        }
    }

    /// The same steps with another face on top.
    pub(super) fn with_top(
        &self,
        step: &mut VesselStep<LAYERS, RINGS>,
        seconds: f64,
        (top, bottom): (Face, Face),
    ) {
        step.down = self.factor_down(seconds, top, bottom);
    }

    fn factor_across(&self, seconds: f64, side: Face) -> Factored<LAYERS, RINGS> {
        let mut ready = Factored::new();
        let weight = STAGE * seconds;
        let outside = self.wall * in_series(self.half_width, side.coefficient);
        let last = RINGS.saturating_sub(1);
        for (layer, capacity) in self.capacity.iter().enumerate() {
            let (mut inwards, mut after_before) = (0.0, 0.0);
            for (ring, (capacity, outwards)) in capacity.iter().zip(&self.outwards).enumerate() {
                let air = if ring == last { outside } else { 0.0 };
                let row = Row {
                    diagonal: capacity + weight * (inwards + outwards + air),
                    before: weight * inwards,
                    after: weight * outwards,
                    capacity: *capacity,
                    air: weight * air * side.air,
                };
                after_before = ready.set((layer, ring), &row, after_before);
                inwards = *outwards;
            }
        }
        ready
    }

    fn factor_down(&self, seconds: f64, top: Face, bottom: Face) -> Factored<LAYERS, RINGS> {
        let mut ready = Factored::new();
        let weight = STAGE * seconds;
        let over = in_series(self.half_height, top.coefficient);
        let under = in_series(self.half_height, bottom.coefficient);
        let last = LAYERS.saturating_sub(1);
        for (ring, (downwards, area)) in self.downwards.iter().zip(&self.areas).enumerate() {
            let mut after_before = 0.0;
            for (layer, capacity) in self.capacity.iter().enumerate() {
                let capacity = capacity.get(ring).copied().unwrap_or(1.0);
                let upwards = if layer == 0 { 0.0 } else { *downwards };
                let downwards = if layer == last { 0.0 } else { *downwards };
                let to_top = if layer == 0 { area * over } else { 0.0 };
                let to_bottom = if layer == last { area * under } else { 0.0 };
                let row = Row {
                    diagonal: capacity + weight * (upwards + downwards + to_top + to_bottom),
                    before: weight * upwards,
                    after: weight * downwards,
                    capacity,
                    air: weight * (to_top * top.air + to_bottom * bottom.air),
                };
                after_before = ready.set((layer, ring), &row, after_before);
            }
        }
        ready
    }

    /// How warm the top is on the whole, °C.
    pub(super) fn top(&self, cells: &Cells<LAYERS, RINGS>, top: Face) -> f64 {
        let uppermost = cells.first().map(|layer| self.mean_of_layer(layer));
        let cell = uppermost.unwrap_or_default();
        let through = in_series(self.half_height, top.coefficient);
        cell - through * (cell - top.air) / self.half_height
    }

    fn mean_of_layer(&self, layer: &[f64; RINGS]) -> f64 {
        let held: f64 = layer.iter().zip(&self.food).map(|(t, c)| t * c).sum();
        held / self.food.iter().sum::<f64>()
    }

    /// How warm the food is on the whole, °C.
    pub(super) fn mean(&self, cells: &Cells<LAYERS, RINGS>) -> f64 {
        let sum: f64 = cells.iter().map(|layer| self.mean_of_layer(layer)).sum();
        sum / count(LAYERS)
    }

    /// Food and wall start at two temperatures: cells that touch the wall share it.
    pub(super) fn start(&self, food: f64, vessel: f64) -> Cells<LAYERS, RINGS> {
        let mut cells = [[food; RINGS]; LAYERS];
        for (layer, capacity) in cells.iter_mut().zip(&self.capacity) {
            for ((cell, whole), own) in layer.iter_mut().zip(capacity).zip(&self.food) {
                *cell = (own * food + (whole - own) * vessel) / whole;
            }
        }
        cells
    }

    /// Area of the open top, m².
    pub(super) fn area(&self) -> f64 {
        self.areas.iter().sum()
    }
}

impl<const LAYERS: usize, const RINGS: usize> VesselStep<LAYERS, RINGS> {
    /// One step on: each direction by itself, `down_first` or last; taken in turns the two leave an
    /// error of second order only.
    pub(super) fn go(&self, cells: &mut Cells<LAYERS, RINGS>, down_first: bool) {
        if down_first {
            self.down.stages(cells, Factored::solve_down);
            self.across.stages(cells, Factored::solve_across);
        } else {
            self.across.stages(cells, Factored::solve_across);
            self.down.stages(cells, Factored::solve_down);
        }
    }
}

/// Two resistances one after the other, W/(m²·K).
fn in_series(inside: f64, outside: f64) -> f64 {
    1.0 / (1.0 / inside + 1.0 / outside)
}

/// A number of cells.
fn count(cells: usize) -> f64 {
    f64::from(u16::try_from(cells).unwrap_or(u16::MAX)).max(1.0)
}
