//! Where the labels of a sheet or a roll lie, to the tenth of a millimetre; what is printed on them is the
//! page's.

use crate::units::Length;

/// A sheet of paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// 8 1/2 by 11 in.
    Letter,
    /// 210 by 297 mm (ISO 216).
    A4,
}

impl Paper {
    /// Both.
    pub const ALL: [Paper; 2] = [Paper::Letter, Paper::A4];

    /// Width and height, upright.
    pub const fn size(self) -> (Length, Length) {
        match self {
            Paper::Letter => (Length::inches(8.5), Length::inches(11.0)),
            Paper::A4 => (Length::mm(210.0), Length::mm(297.0)),
        }
    }
}

/// Labels on a sheet. Pairs are across and down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grid {
    /// On which paper.
    pub paper: Paper,
    /// Labels across.
    pub columns: u8,
    /// Labels down.
    pub rows: u8,
    /// Size of one.
    pub label: (Length, Length),
    /// From the corner of the paper to that of the first label.
    pub first: (Length, Length),
    /// From one label to the next.
    pub pitch: (Length, Length),
}

/// A place on paper, from its upper left corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rect {
    /// From the left edge.
    pub x: Length,
    /// From the upper edge.
    pub y: Length,
    /// Across.
    pub width: Length,
    /// Down.
    pub height: Length,
}

/// Why labels cannot be laid out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LabelError {
    /// No columns or no rows.
    NoLabels,
    /// A label without a size, a distance below zero, or not a number.
    NoSize,
    /// Labels lie over each other: the pitch is less than the label.
    Overlap {
        /// The least pitch, across and down.
        least: (Length, Length),
    },
    /// Wider than the paper.
    WiderThanPaper {
        /// What the grid takes.
        needs: Length,
        /// What there is.
        paper: Length,
    },
    /// Taller than the paper.
    TallerThanPaper {
        /// What the grid takes.
        needs: Length,
        /// What there is.
        paper: Length,
    },
    /// The first label to print is beyond the last of the sheet.
    StartBeyondLast {
        /// How many there are on a sheet.
        last: u16,
    },
    /// Moved too far.
    NudgeTooFar {
        /// The most half millimetres either way.
        most: i8,
    },
}

/// The most half millimetres a print is moved; a printer that is further out is set up wrong. Judgement.
pub const MOST_NUDGE: i8 = 20;

/// How far a print is moved to meet the labels.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Nudge {
    /// Half millimetres to the right.
    pub across: i8,
    /// Half millimetres down.
    pub down: i8,
}

impl Nudge {
    fn check(self) -> Result<(Length, Length), LabelError> {
        let limit = -MOST_NUDGE..=MOST_NUDGE;
        if !limit.contains(&self.across) || !limit.contains(&self.down) {
            return Err(LabelError::NudgeTooFar { most: MOST_NUDGE });
        }
        Ok((Length::mm(f64::from(self.across) / 2.0), Length::mm(f64::from(self.down) / 2.0)))
    }
}

/// Below this a grid that fills its paper is not said to stand over: it is rounding of printed dimensions.
const SLACK: Length = Length::mm(0.05);

impl Grid {
    /// Labels on one sheet.
    pub fn count(&self) -> u16 {
        u16::from(self.columns) * u16::from(self.rows)
    }

    fn check(&self) -> Result<(), LabelError> {
        if self.count() == 0 {
            return Err(LabelError::NoLabels);
        }
        let pairs = [self.label, self.first, self.pitch];
        let all = pairs.into_iter().flat_map(|(across, down)| [across, down]);
        let is_empty = !(self.label.0 > Length::ZERO && self.label.1 > Length::ZERO);
        if is_empty || all.into_iter().any(|length| !length.to_mm().is_finite() || length < Length::ZERO) {
            return Err(LabelError::NoSize);
        }
        let over = |pitch: Length, label: Length, count: u8| count > 1 && pitch + SLACK < label;
        if over(self.pitch.0, self.label.0, self.columns) || over(self.pitch.1, self.label.1, self.rows) {
            return Err(LabelError::Overlap { least: self.label });
        }
        let reach = |first: Length, pitch: Length, count: u8, label: Length| {
            first + pitch * f64::from(count - 1) + label
        };
        let (paper_width, paper_height) = self.paper.size();
        let width = reach(self.first.0, self.pitch.0, self.columns, self.label.0);
        if width > paper_width + SLACK {
            return Err(LabelError::WiderThanPaper { needs: width, paper: paper_width });
        }
        let height = reach(self.first.1, self.pitch.1, self.rows, self.label.1);
        if height > paper_height + SLACK {
            return Err(LabelError::TallerThanPaper { needs: height, paper: paper_height });
        }
        Ok(())
    }
}

/// Sheets of labels, the first begun at any label.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sheets {
    grid: Grid,
    start: u16,
    nudge: (Length, Length),
}

impl Sheets {
    /// Sheets of `grid`, the first label printed on cell `start`, counted from 0 along the rows.
    ///
    /// # Errors
    /// A grid that does not fit its paper, a start that is not on the sheet, a nudge that is too far.
    pub fn new(grid: Grid, start: u16, nudge: Nudge) -> Result<Self, LabelError> {
        grid.check()?;
        if start >= grid.count() {
            return Err(LabelError::StartBeyondLast { last: grid.count() });
        }
        Ok(Self { grid, start, nudge: nudge.check()? })
    }

    /// The grid.
    pub fn grid(&self) -> &Grid {
        &self.grid
    }

    /// How many sheets so many labels take.
    pub fn sheets(&self, labels: u32) -> u32 {
        if labels == 0 { 0 } else { (labels + u32::from(self.start)).div_ceil(u32::from(self.grid.count())) }
    }

    /// On which sheet (from 0) and where label `index` (from 0) is printed.
    pub fn place(&self, index: u32) -> (u32, Rect) {
        let cell = index + u32::from(self.start);
        let count = u32::from(self.grid.count());
        (cell / count, self.cell((cell % count) as u16))
    }

    /// Every cell of a sheet, for the test frame.
    pub fn cells(&self) -> impl Iterator<Item = Rect> {
        (0..self.grid.count()).map(|cell| self.cell(cell))
    }

    fn cell(&self, cell: u16) -> Rect {
        let columns = u16::from(self.grid.columns);
        let (column, row) = (f64::from(cell % columns), f64::from(cell / columns));
        Rect {
            x: self.grid.first.0 + self.grid.pitch.0 * column + self.nudge.0,
            y: self.grid.first.1 + self.grid.pitch.1 * row + self.nudge.1,
            width: self.grid.label.0,
            height: self.grid.label.1,
        }
    }
}

/// Labels one below the other on a continuous roll.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Roll {
    label: (Length, Length),
    gap: Length,
    nudge: (Length, Length),
}

impl Roll {
    /// Labels of this size, with this much between them.
    ///
    /// # Errors
    /// A label without a size, a gap below zero, a nudge that is too far.
    pub fn new(label: (Length, Length), gap: Length, nudge: Nudge) -> Result<Self, LabelError> {
        let fine = [label.0, label.1].iter().all(|side| *side > Length::ZERO && side.to_mm().is_finite());
        if !fine || !gap.to_mm().is_finite() || gap < Length::ZERO {
            return Err(LabelError::NoSize);
        }
        Ok(Self { label, gap, nudge: nudge.check()? })
    }

    /// Where label `index` (from 0) is printed on the strip.
    pub fn place(&self, index: u32) -> Rect {
        Rect {
            x: self.nudge.0,
            y: (self.label.1 + self.gap) * f64::from(index) + self.nudge.1,
            width: self.label.0,
            height: self.label.1,
        }
    }
}

/// A mark of the ruler.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tick {
    /// From the ruler's beginning.
    pub at: Length,
    /// How long the mark is.
    pub mark: Length,
}

/// How long the printed ruler is: laid against a real one it shows whether the printer scales.
pub const RULER: Length = Length::mm(100.0);

/// The marks of the ruler: every millimetre, longer at 5 and longest at 10.
pub fn ruler() -> impl Iterator<Item = Tick> {
    (0..=RULER.to_mm() as u32).map(|mm| {
        let mark = if mm % 10 == 0 {
            6.0
        } else if mm % 5 == 0 {
            4.5
        } else {
            3.0
        };
        Tick { at: Length::mm(f64::from(mm)), mark: Length::mm(mark) }
    })
}
