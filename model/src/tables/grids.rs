//! Common sheets of labels, by their dimensions and grid. Sizes are from memory: measure the sheet you have.

use super::fact::{Fact, fact};
use crate::labels::{Grid, Paper};
use crate::sources::{Grade, Source};
use crate::units::Length;

const fn inches(
    columns: u8,
    rows: u8,
    label: (f64, f64),
    first: (f64, f64),
    pitch: (f64, f64),
) -> Fact<Grid> {
    fact(
        Grid {
            paper: Paper::Letter,
            columns,
            rows,
            label: (Length::inches(label.0), Length::inches(label.1)),
            first: (Length::inches(first.0), Length::inches(first.1)),
            pitch: (Length::inches(pitch.0), Length::inches(pitch.1)),
        },
        Grade::D,
        Source::LabelSheets,
    )
}

const fn mm(columns: u8, rows: u8, label: (f64, f64), first: (f64, f64), pitch: (f64, f64)) -> Fact<Grid> {
    fact(
        Grid {
            paper: Paper::A4,
            columns,
            rows,
            label: (Length::mm(label.0), Length::mm(label.1)),
            first: (Length::mm(first.0), Length::mm(first.1)),
            pitch: (Length::mm(pitch.0), Length::mm(pitch.1)),
        },
        Grade::D,
        Source::LabelSheets,
    )
}

/// Letter first, then A4; large labels first.
pub static GRIDS: [Fact<Grid>; 10] = [
    inches(2, 3, (4.0, 10.0 / 3.0), (0.156_25, 0.5), (4.187_5, 10.0 / 3.0)),
    inches(2, 5, (4.0, 2.0), (0.156_25, 0.5), (4.187_5, 2.0)),
    inches(2, 7, (4.0, 4.0 / 3.0), (0.156_25, 5.0 / 6.0), (4.187_5, 4.0 / 3.0)),
    inches(2, 10, (4.0, 1.0), (0.156_25, 0.5), (4.187_5, 1.0)),
    inches(3, 10, (2.625, 1.0), (0.187_5, 0.5), (2.75, 1.0)),
    mm(2, 4, (99.1, 67.7), (4.65, 13.1), (101.6, 67.7)),
    mm(2, 5, (99.1, 57.0), (4.65, 6.0), (101.6, 57.0)),
    mm(2, 7, (99.1, 38.1), (4.65, 15.15), (101.6, 38.1)),
    mm(3, 7, (63.5, 38.1), (7.21, 15.15), (66.04, 38.1)),
    mm(3, 8, (70.0, 37.0), (0.0, 0.5), (70.0, 37.0)),
];
