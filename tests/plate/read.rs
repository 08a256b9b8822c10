//! The authored plate as geometry: what `roxmltree` reads of the SVG and `kurbo` of its paths.

use hindsaddle_model::anatomy::{Muscle, Side, View};
use kurbo::{BezPath, ParamCurve, Point, Rect, Shape};

/// One muscle group as it is drawn.
pub(crate) struct Region {
    pub(crate) muscle: Muscle,
    /// From above each side is drawn.
    pub(crate) side: Option<Side>,
    pub(crate) outline: BezPath,
    /// The outline as a polygon: its points are close enough for every measure taken here.
    pub(crate) polygon: BezPath,
    pub(crate) axis: BezPath,
    pub(crate) label: Point,
}

/// One authored file.
pub(crate) struct Drawing {
    pub(crate) body: BezPath,
    /// The contour of the animal: the body, and of what the half has lost the trace of the outer side.
    pub(crate) contour: BezPath,
    pub(crate) regions: Vec<Region>,
    landmarks: Vec<(String, Point)>,
}

/// Paths are flattened to within this, in thousandths of the withers' height.
const FLATNESS: f64 = 0.2;

pub(crate) fn drawing(view: View) -> Drawing {
    let file = match view {
        View::Outer => "outer",
        View::Inner => "inner",
        View::Above => "above",
    };
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../assets/plate");
    let text = std::fs::read_to_string(folder.join(format!("{file}.svg"))).unwrap();
    let document = roxmltree::Document::parse(&text).unwrap();
    let elements: Vec<_> = document.descendants().filter(|node| node.has_attribute("id")).collect();
    let path = |id: &str| {
        let node = elements.iter().find(|node| node.attribute("id") == Some(id));
        let data = node.unwrap_or_else(|| panic!("{file}: no {id}")).attribute("d").unwrap();
        BezPath::from_svg(data).unwrap_or_else(|error| panic!("{file}: {id}: {error}"))
    };
    let point = |id: &str| {
        let node = elements.iter().find(|node| node.attribute("id") == Some(id));
        let node = node.unwrap_or_else(|| panic!("{file}: no {id}"));
        let number = |name: &str| node.attribute(name).unwrap().parse::<f64>().unwrap();
        Point::new(number("cx"), number("cy"))
    };
    let ids = |prefix: &'static str| {
        elements.iter().filter_map(move |node| node.attribute("id").unwrap().strip_prefix(prefix))
    };
    let regions = ids("m-")
        .map(|named| {
            let (id, side) = match (named.strip_suffix("-l"), named.strip_suffix("-r")) {
                (Some(id), _) => (id, Some(Side::Left)),
                (None, Some(id)) => (id, Some(Side::Right)),
                (None, None) => (named, None),
            };
            let outline = path(&format!("m-{named}"));
            Region {
                muscle: Muscle::from_id(id).unwrap_or_else(|| panic!("{file}: no muscle {id}")),
                side,
                polygon: flat(&outline),
                outline,
                axis: flat(&path(&format!("axis-{named}"))),
                label: point(&format!("label-{named}")),
            }
        })
        .collect();
    let landmarks = ids("lm-").map(|name| (name.to_owned(), point(&format!("lm-{name}")))).collect();
    let body = flat(&path("outline-body"));
    let mut contour = body.clone();
    if view == View::Inner {
        // What the half has lost is traced as the outer side has it.
        contour.extend(drawing(View::Outer).contour);
    }
    Drawing { body, contour, regions, landmarks }
}

fn flat(path: &BezPath) -> BezPath {
    let mut flattened = BezPath::new();
    kurbo::flatten(path, FLATNESS, |element| flattened.push(element));
    flattened
}

impl Drawing {
    /// A landmark in withers' heights: x from the point of the shoulder toward the tail, y up from the ground.
    #[track_caller]
    pub(crate) fn landmark(&self, name: &str) -> Point {
        let (_, at) = self.landmarks.iter().find(|(other, _)| other == name).expect(name);
        Point::new(at.x / 1000.0, -at.y / 1000.0)
    }
}

impl Region {
    pub(crate) fn name(&self) -> String {
        format!("{:?}{}", self.muscle, self.side.map(|side| format!(" {side:?}")).unwrap_or_default())
    }

    pub(crate) fn contains(&self, point: Point) -> bool {
        self.polygon.bounding_box().contains(point) && self.polygon.winding(point) != 0
    }
}

/// Points along a path, about `step` apart.
pub(crate) fn along(path: &BezPath, step: f64) -> Vec<Point> {
    let mut points = Vec::new();
    for segment in path.segments() {
        let (from, to) = (segment.start(), segment.end());
        let count = (from.distance(to) / step).ceil().max(1.0);
        points.extend((0..count as usize).map(|index| from.lerp(to, index as f64 / count)));
    }
    points
}

/// The lattice points of a box, `step` apart, on whole multiples of it.
pub(crate) fn lattice(within: Rect, step: i32) -> Vec<Point> {
    let steps = |low: f64, high: f64| {
        let step = f64::from(step);
        (low / step).ceil() as i32..=(high / step).floor() as i32
    };
    let mut points = Vec::new();
    for y in steps(within.y0, within.y1) {
        points.extend(
            steps(within.x0, within.x1).map(|x| Point::new(f64::from(x * step), f64::from(y * step))),
        );
    }
    points
}
