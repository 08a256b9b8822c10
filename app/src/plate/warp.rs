//! One authored plate for every species: a smooth map of the plane that takes each landmark of the plate to
//! where the animal has it.
//!
//! A polyharmonic spline, `f(p) = a + b x + c y + sum w |p - landmark|^3`, the interpolant of least bending for
//! this kernel (Duchon 1977, from memory). Straight parts stay nearly straight, borders that are shared stay
//! shared, and a map that moves no landmark moves nothing.

/// A map of the plane.
#[derive(Debug)]
pub(super) struct Warp {
    centres: Vec<(f64, f64)>,
    /// Two columns: a weight for each centre, then the constant, x and y.
    weights: Vec<[f64; 2]>,
}

/// Distances are taken in withers' heights, so that the system is well balanced.
const UNIT: f64 = 1000.0;

impl Warp {
    /// The map that takes each of `landmarks` to the target at its place; the others stay where they are.
    pub(super) fn new(landmarks: &[(i16, i16)], moved: &[(u8, (i16, i16))]) -> Self {
        let scaled = |(x, y): (i16, i16)| (f64::from(x) / UNIT, f64::from(y) / UNIT);
        let centres: Vec<(f64, f64)> = landmarks.iter().map(|at| scaled(*at)).collect();
        let mut targets = centres.clone();
        for (place, at) in moved {
            targets[usize::from(*place)] = scaled(*at);
        }
        let size = centres.len() + 3;
        let mut rows = vec![vec![0.0; size + 2]; size];
        for (row, (x, y)) in centres.iter().enumerate() {
            for (column, centre) in centres.iter().enumerate() {
                rows[row][column] = cubed_distance((*x, *y), *centre);
            }
            for (column, value) in [1.0, *x, *y].into_iter().enumerate() {
                rows[row][centres.len() + column] = value;
                rows[centres.len() + column][row] = value;
            }
            rows[row][size] = targets[row].0;
            rows[row][size + 1] = targets[row].1;
        }
        Self { centres, weights: solved(rows) }
    }

    /// Where a point of the animal lies on the plate: the inverse of [`Self::at`], by correcting a guess.
    pub(super) fn back(&self, target: (f64, f64)) -> (f64, f64) {
        let mut guess = target;
        for _ in 0..STEPS_BACK {
            let (x, y) = self.at(guess);
            guess = (guess.0 + (target.0 - x) * 0.7, guess.1 + (target.1 - y) * 0.7);
        }
        guess
    }

    /// Where a point of the plate lies on the animal.
    pub(super) fn at(&self, (x, y): (f64, f64)) -> (f64, f64) {
        let (x, y) = (x / UNIT, y / UNIT);
        let count = self.centres.len();
        let mut to = [0, 1].map(|axis| {
            self.weights[count][axis] + self.weights[count + 1][axis] * x + self.weights[count + 2][axis] * y
        });
        for (centre, weight) in self.centres.iter().zip(&self.weights) {
            let kernel = cubed_distance((x, y), *centre);
            to[0] += weight[0] * kernel;
            to[1] += weight[1] * kernel;
        }
        (to[0] * UNIT, to[1] * UNIT)
    }
}

/// Steps of [`Warp::back`]; each leaves a fraction of the error where the map does not fold.
const STEPS_BACK: u32 = 30;

fn cubed_distance(a: (f64, f64), b: (f64, f64)) -> f64 {
    let square = (a.0 - b.0) * (a.0 - b.0) + (a.1 - b.1) * (a.1 - b.1);
    square * square.sqrt()
}

/// Solves the system whose last two columns are its right-hand sides: Gauss's elimination with the largest
/// pivot of each column.
fn solved(mut rows: Vec<Vec<f64>>) -> Vec<[f64; 2]> {
    let size = rows.len();
    for column in 0..size {
        let pivot = (column..size)
            .max_by(|a, b| rows[*a][column].abs().total_cmp(&rows[*b][column].abs()))
            .unwrap_or(column);
        rows.swap(column, pivot);
        let head = rows[column].clone();
        for row in &mut rows[column + 1..] {
            let factor = row[column] / head[column];
            for (value, above) in row[column..].iter_mut().zip(&head[column..]) {
                *value -= factor * above;
            }
        }
    }
    let mut solution = vec![[0.0; 2]; size];
    for row in (0..size).rev() {
        for axis in 0..2 {
            let known: f64 = (row + 1..size).map(|column| rows[row][column] * solution[column][axis]).sum();
            solution[row][axis] = (rows[row][size + axis] - known) / rows[row][row];
        }
    }
    solution
}

#[cfg(test)]
mod tests {
    use super::*;

    const SQUARE: [(i16, i16); 5] = [(0, 0), (1000, 0), (1000, -1000), (0, -1000), (500, -400)];

    fn near(a: (f64, f64), b: (f64, f64)) -> bool {
        (a.0 - b.0).abs() < 1e-6 && (a.1 - b.1).abs() < 1e-6
    }

    #[test]
    fn every_landmark_lands_on_its_target() {
        let warp = Warp::new(&SQUARE, &[(4, (600, -500)), (2, (1100, -900))]);
        for (from, to) in [((500.0, -400.0), (600.0, -500.0)), ((1000.0, -1000.0), (1100.0, -900.0))] {
            assert!(near(warp.at(from), to), "{:?}", warp.at(from));
        }
        for stays in [(0.0, 0.0), (1000.0, 0.0), (0.0, -1000.0)] {
            assert!(near(warp.at(stays), stays));
        }
    }

    #[test]
    fn a_map_that_moves_no_landmark_moves_nothing() {
        let warp = Warp::new(&SQUARE, &[]);
        for point in [(300.0, -200.0), (-430.0, -1480.0), (1200.0, 30.0)] {
            assert!(near(warp.at(point), point), "{point:?}");
        }
    }

    /// An affine change of all landmarks is that change everywhere: the polynomial part alone.
    #[test]
    fn a_stretch_of_all_landmarks_stretches_everything() {
        let moved: Vec<(u8, (i16, i16))> =
            SQUARE.iter().enumerate().map(|(place, (x, y))| (place as u8, (x * 2 + 10, y / 2))).collect();
        let warp = Warp::new(&SQUARE, &moved);
        assert!(near(warp.at((250.0, -800.0)), (510.0, -400.0)));
    }
}
