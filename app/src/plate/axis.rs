//! A muscle's axis: the line the knife divides it along.

/// Half the length of a line drawn square across a muscle: longer than any muscle is wide.
pub(super) const ACROSS: f64 = 420.0;

/// An axis, measured.
pub struct Axis<'a> {
    points: &'a [(f64, f64)],
    /// In units of the drawing.
    pub length: f64,
}

impl<'a> Axis<'a> {
    /// The axis through `points`, of which there are two or more.
    pub fn new(points: &'a [(f64, f64)]) -> Self {
        let length = points.windows(2).map(|pair| distance(pair[0], pair[1])).sum();
        Self { points, length }
    }

    /// The point at the fraction `u` of the length and the direction there; beyond the ends it goes straight
    /// on.
    pub fn at(&self, u: f64) -> ((f64, f64), (f64, f64)) {
        let mut rest = u * self.length;
        let last = self.points.len() - 2;
        for (index, pair) in self.points.windows(2).enumerate() {
            let step = distance(pair[0], pair[1]);
            if rest <= step || index == last {
                let direction = ((pair[1].0 - pair[0].0) / step, (pair[1].1 - pair[0].1) / step);
                return ((pair[0].0 + direction.0 * rest, pair[0].1 + direction.1 * rest), direction);
            }
            rest -= step;
        }
        (self.points[0], (1.0, 0.0))
    }

    /// Both ends of a line square across the axis.
    pub fn across(&self, u: f64) -> ((f64, f64), (f64, f64)) {
        let ((x, y), (dx, dy)) = self.at(u);
        ((x - dy * ACROSS, y + dx * ACROSS), (x + dy * ACROSS, y - dx * ACROSS))
    }

    /// The fraction of the length that lies nearest to a point: 0 to 1.
    pub fn nearest(&self, point: (f64, f64)) -> f64 {
        let (mut best, mut passed) = ((f64::MAX, 0.0), 0.0);
        for pair in self.points.windows(2) {
            let step = distance(pair[0], pair[1]);
            let (dx, dy) = (pair[1].0 - pair[0].0, pair[1].1 - pair[0].1);
            let along = ((point.0 - pair[0].0) * dx + (point.1 - pair[0].1) * dy) / (step * step);
            let along = along.max(0.0).min(1.0);
            let off = distance(point, (pair[0].0 + dx * along, pair[0].1 + dy * along));
            if off < best.0 {
                best = (off, (passed + step * along) / self.length);
            }
            passed += step;
        }
        best.1
    }
}

fn distance(a: (f64, f64), b: (f64, f64)) -> f64 {
    ((a.0 - b.0) * (a.0 - b.0) + (a.1 - b.1) * (a.1 - b.1)).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_nearest_place_of_a_point_on_the_axis_is_where_it_is() {
        let points = [(0.0, 0.0), (100.0, 0.0), (100.0, 300.0)];
        let axis = Axis::new(&points);
        for u in [0.0, 0.1, 0.25, 0.6, 1.0] {
            let (at, _) = axis.at(u);
            assert!((axis.nearest(at) - u).abs() < 1e-9, "{u}");
        }
        assert!((axis.nearest((60.0, -50.0)) - 0.15).abs() < 1e-9);
        assert!((axis.nearest((900.0, 900.0)) - 1.0).abs() < 1e-9);
    }
}
