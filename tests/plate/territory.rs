//! The table of the wounds is the plate: `UPDATE_EXPECT=1` writes it anew from the drawing.

use std::fmt::Write as _;
use std::path::Path;

use hindsaddle_model::anatomy::{Muscle, View};
use hindsaddle_model::wounds::STEP;
use kurbo::{ParamCurve, Shape};

use crate::read::{Drawing, Region, drawing, lattice};

const HEAD: &str = "\
//! Where each muscle lies. Written by `tests/plate/territory.rs` from the plate; do not edit. A muscle that is
//! drawn in both side views is read from the one that shows more of it.

use super::territory::Territory;
use crate::anatomy::Muscle;

#[rustfmt::skip]
pub(super) static TERRITORIES: [Territory; Muscle::COUNT] = [
";

#[test]
fn the_table_of_the_wounds_is_the_plate() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../model/src/tables/territory_rows.rs");
    let sides = [drawing(View::Outer), drawing(View::Inner)];
    let mut table = String::from(HEAD);
    for muscle in Muscle::ALL {
        row(&mut table, muscle, widest(&sides, muscle));
    }
    table.push_str("];\n");
    if std::env::var_os("UPDATE_EXPECT").is_some() {
        std::fs::write(&path, &table).unwrap();
    }
    let on_file = std::fs::read_to_string(&path).unwrap();
    assert!(on_file == table, "the plate changed: UPDATE_EXPECT=1 writes the table anew");
}

/// The largest drawing of a muscle in the side views.
fn widest(sides: &[Drawing], muscle: Muscle) -> &Region {
    sides
        .iter()
        .flat_map(|drawing| &drawing.regions)
        .filter(|region| region.muscle == muscle)
        .max_by(|one, other| one.outline.area().abs().total_cmp(&other.outline.area().abs()))
        .unwrap_or_else(|| panic!("{muscle:?} is in no side view"))
}

fn row(table: &mut String, muscle: Muscle, region: &Region) {
    let step = (STEP * 1000.0) as i32;
    let mut rows: Vec<(i32, i32, i32)> = Vec::new();
    for point in lattice(region.polygon.bounding_box(), step) {
        let (x, y) = ((point.x / f64::from(step)) as i32, -(point.y / f64::from(step)) as i32);
        if !region.contains(point) {
            continue;
        }
        match rows.last_mut() {
            Some((at, _, last)) if *at == y && *last == x - 1 => *last = x,
            Some(_) | None => rows.push((y, x, x)),
        }
    }
    let points: i32 = rows.iter().map(|(_, from, to)| to - from + 1).sum();
    assert!(points >= 6, "{muscle:?} has {points} points: too few to say what a wound takes");
    let ends = region.axis.segments().flat_map(|segment| [segment.start(), segment.end()]);
    let ends: Vec<String> =
        ends.map(|at| format!("({:.0}, {:.0})", at.x / f64::from(step), -at.y / f64::from(step))).collect();
    let (first, last) = (ends.first().unwrap(), ends.last().unwrap());
    let rows: Vec<String> = rows.iter().map(|(y, from, to)| format!("({y}, {from}, {to})")).collect();
    writeln!(table, "    // {muscle:?}, {points} points").unwrap();
    writeln!(table, "    Territory {{ axis: ({first}, {last}), rows: &[").unwrap();
    for line in rows.chunks(6) {
        writeln!(table, "        {},", line.join(", ")).unwrap();
    }
    table.push_str("    ] },\n");
}
