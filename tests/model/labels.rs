//! Where labels lie: inside the paper, apart from each other, and moved by exactly what was asked.

use hindsaddle_model::labels::{
    Grid, LabelError, MOST_NUDGE, Nudge, Paper, RULER, Rect, Roll, Sheets, ruler,
};
use hindsaddle_model::tables::GRIDS;
use hindsaddle_model::units::Length;

fn plain(grid: Grid) -> Sheets {
    Sheets::new(grid, 0, Nudge::default()).unwrap()
}

fn ends(rect: Rect) -> (f64, f64, f64, f64) {
    let (x, y) = (rect.x.to_mm(), rect.y.to_mm());
    (x, y, x + rect.width.to_mm(), y + rect.height.to_mm())
}

#[test]
fn every_common_grid_fits_its_paper_and_no_label_lies_on_another() {
    for fact in &GRIDS {
        let grid = fact.value;
        let (width, height) = grid.paper.size();
        let cells: Vec<_> = plain(grid).cells().map(ends).collect();
        assert_eq!(cells.len(), usize::from(grid.count()));
        for (index, (left, top, right, bottom)) in cells.iter().enumerate() {
            assert!(*left >= 0.0 && *top >= 0.0, "{grid:?}");
            assert!(*right <= width.to_mm() + 0.05 && *bottom <= height.to_mm() + 0.05, "{grid:?}");
            for (other_left, other_top, other_right, other_bottom) in &cells[..index] {
                let apart = *left >= other_right - 0.05
                    || *right <= other_left + 0.05
                    || *top >= other_bottom - 0.05
                    || *bottom <= other_top + 0.05;
                assert!(apart, "{grid:?}");
            }
        }
        // Sheets as sold are even: what is left over is the same on both sides, to a tenth of a millimetre.
        let spare = width.to_mm() - cells.iter().map(|cell| cell.2).fold(0.0, f64::max);
        assert!((spare - grid.first.0.to_mm()).abs() < 0.15, "{grid:?}: {spare}");
    }
    assert!(Paper::ALL.into_iter().all(|paper| GRIDS.iter().any(|fact| fact.value.paper == paper)));
}

/// Letter is 8 1/2 by 11 in; A4 is 210 by 297 mm (ISO 216).
#[test]
fn paper_is_as_large_as_the_standards_have_it() {
    let (width, height) = Paper::Letter.size();
    assert!((width.to_mm() - 215.9).abs() < 1e-9 && (height.to_mm() - 279.4).abs() < 1e-9);
    assert_eq!(Paper::A4.size(), (Length::mm(210.0), Length::mm(297.0)));
}

#[test]
fn labels_begin_at_any_cell_and_go_on_to_the_next_sheet() {
    let grid = GRIDS[1].value; // 2 by 5 on Letter
    let sheets = Sheets::new(grid, 7, Nudge { across: 3, down: -1 }).unwrap();
    assert_eq!([0, 1, 3, 4, 13, 14].map(|labels| sheets.sheets(labels)), [0, 1, 1, 2, 2, 3]);
    let (sheet, rect) = sheets.place(0);
    // Row 3 (from 0), column 1, moved 1.5 mm right and 0.5 mm up.
    assert_eq!(sheet, 0);
    assert!((rect.x.to_mm() - (0.156_25 + 4.187_5) * 25.4 - 1.5).abs() < 1e-9);
    assert!((rect.y.to_mm() - (0.5 + 3.0 * 2.0) * 25.4 + 0.5).abs() < 1e-9);
    assert_eq!(sheets.place(3).0, 1);
    assert_eq!(sheets.place(3).1, sheets.cells().next().unwrap());
}

#[test]
fn what_does_not_fit_says_what_it_needs() {
    let grid = GRIDS[8].value; // 3 by 7 on A4
    let refused = |grid: Grid| Sheets::new(grid, 0, Nudge::default());
    let mm = Length::mm;
    assert_eq!(refused(Grid { columns: 0, ..grid }), Err(LabelError::NoLabels));
    assert_eq!(refused(Grid { rows: 0, ..grid }), Err(LabelError::NoLabels));
    assert_eq!(refused(Grid { label: (mm(0.0), mm(20.0)), ..grid }), Err(LabelError::NoSize));
    assert_eq!(refused(Grid { label: (mm(f64::NAN), mm(20.0)), ..grid }), Err(LabelError::NoSize));
    assert_eq!(refused(Grid { first: (mm(-1.0), mm(2.0)), ..grid }), Err(LabelError::NoSize));
    assert_eq!(
        refused(Grid { pitch: (mm(60.0), mm(38.1)), ..grid }),
        Err(LabelError::Overlap { least: grid.label })
    );
    assert_eq!(
        refused(Grid { paper: Paper::Letter, ..grid }),
        Err(LabelError::TallerThanPaper {
            needs: mm(15.15) + mm(38.1) * 6.0 + mm(38.1),
            paper: Length::inches(11.0),
        })
    );
    let Err(LabelError::WiderThanPaper { needs, paper }) = refused(Grid { columns: 4, ..grid }) else {
        panic!("four columns do not fit")
    };
    assert!((needs.to_mm() - 268.83).abs() < 1e-9 && paper == mm(210.0));
    assert_eq!(Sheets::new(grid, 21, Nudge::default()), Err(LabelError::StartBeyondLast { last: 21 }));
    assert!(Sheets::new(grid, 20, Nudge::default()).is_ok());
    let single = Grid { columns: 1, pitch: (Length::ZERO, mm(38.1)), ..grid };
    assert!(refused(single).is_ok(), "one column has no pitch");
    let far = Nudge { across: 0, down: MOST_NUDGE + 1 };
    assert_eq!(Sheets::new(grid, 0, far), Err(LabelError::NudgeTooFar { most: MOST_NUDGE }));
}

#[test]
fn a_roll_goes_on_label_after_label() {
    let label = (Length::mm(62.0), Length::mm(29.0));
    let roll = Roll::new(label, Length::mm(3.0), Nudge { across: 1, down: 0 }).unwrap();
    assert_eq!(ends(roll.place(2)), (0.5, 64.0, 62.5, 93.0));
    assert_eq!(Roll::new((Length::ZERO, label.1), Length::ZERO, Nudge::default()), Err(LabelError::NoSize));
    assert_eq!(Roll::new(label, Length::mm(-1.0), Nudge::default()), Err(LabelError::NoSize));
}

#[test]
fn the_ruler_is_a_decimetre_in_millimetres() {
    let ticks: Vec<_> = ruler().collect();
    assert_eq!(ticks.len(), 101);
    assert_eq!(ticks[100].at, RULER);
    assert!(ticks[10].mark > ticks[5].mark && ticks[5].mark > ticks[1].mark);
}
