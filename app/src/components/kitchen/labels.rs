//! Label sheets, true to the millimetre: which sheet, where to begin, how far to move the print.

use std::fmt::Write as _;

use hindsaddle_model::labels::{Grid, LabelError, Nudge, Paper, Rect, Roll, Sheets, ruler};
use hindsaddle_model::link::{self, Names};
use hindsaddle_model::tables::GRIDS;
use hindsaddle_model::units::Length;
use yew::prelude::*;

use super::{PartProps, field, tick};
use crate::app::remember;
use crate::components::code::Code;
use crate::components::controls::{Choosable, choice, stepper};
use crate::plate::whole;
use crate::platform::{address, picture, storage};
use crate::store::Msg;
use crate::text;
use crate::views::kitchen::Packed;
use crate::views::label_text::placed;

/// How labels are printed, as it is remembered on this device.
#[derive(Clone, PartialEq)]
struct Settings {
    /// A place in [`GRIDS`]; behind them the own sheet and the roll.
    sheet: usize,
    /// The own sheet's sizes as they were typed; a roll takes label width, height and the step down.
    own: Vec<String>,
    start: u16,
    nudge: Nudge,
    frames: bool,
    with_code: bool,
    blank_weight: bool,
}

const OWN: usize = GRIDS.len();
const ROLL: usize = OWN + 1;

impl Settings {
    fn read() -> Self {
        let text = storage::read(storage::LABELS).unwrap_or_default();
        let mut lines = text.lines();
        let mut number = |usual: i32| lines.next().and_then(|line| line.parse().ok()).unwrap_or(usual);
        let (sheet, start, across, down, flags) = (number(4), number(0), number(0), number(0), number(0));
        let mut own: Vec<String> = lines.take(8).map(str::to_owned).collect();
        if own.len() < 8 {
            own = ["3", "7", "63.5", "38.1", "7.2", "15.1", "66", "38.1"].map(str::to_owned).to_vec();
        }
        Self {
            sheet: usize::try_from(sheet).unwrap_or(0).min(ROLL),
            own,
            start: u16::try_from(start).unwrap_or(0),
            nudge: Nudge { across: across as i8, down: down as i8 },
            frames: flags & 1 > 0,
            with_code: flags & 2 > 0,
            blank_weight: flags & 4 > 0,
        }
    }

    fn write(&self, send: &Callback<Msg>) {
        let flags = u8::from(self.frames) + 2 * u8::from(self.with_code) + 4 * u8::from(self.blank_weight);
        let Nudge { across, down } = self.nudge;
        let head = format!("{}\n{}\n{across}\n{down}\n{flags}\n", self.sheet, self.start);
        remember(storage::LABELS, &(head + &self.own.join("\n")), send);
    }

    fn own(&self, place: usize) -> f64 {
        text::typed(&self.own[place]).unwrap_or(f64::NAN)
    }

    fn layout(&self) -> Result<Layout, LabelError> {
        let mm = |place: usize| Length::mm(self.own(place));
        if self.sheet == ROLL {
            let gap = Length::mm((self.own(7) - self.own(3)).max(0.0));
            return Ok(Layout::Roll(Roll::new((mm(2), mm(3)), gap, self.nudge)?, (mm(2), mm(3) + gap)));
        }
        let grid = match GRIDS.get(self.sheet) {
            Some(row) => row.value,
            None => Grid {
                paper: Paper::A4,
                columns: self.own(0).max(0.0).min(50.0) as u8,
                rows: self.own(1).max(0.0).min(50.0) as u8,
                label: (mm(2), mm(3)),
                first: (mm(4), mm(5)),
                pitch: (mm(6), mm(7)),
            },
        };
        Ok(Layout::Sheets(Sheets::new(grid, self.start, self.nudge)?))
    }
}

/// What is printed on.
enum Layout {
    Sheets(Sheets),
    /// A roll, and the size of one of its pages.
    Roll(Roll, (Length, Length)),
}

impl Layout {
    fn page(&self) -> (Length, Length) {
        match self {
            Layout::Sheets(sheets) => sheets.grid().paper.size(),
            Layout::Roll(_, page) => *page,
        }
    }

    /// The pages, each with its labels by their place in the list.
    fn pages(&self, labels: u32) -> Vec<Vec<(usize, Rect)>> {
        match self {
            Layout::Sheets(sheets) => {
                let mut pages = vec![Vec::new(); sheets.sheets(labels) as usize];
                for index in 0..labels {
                    let (page, place) = sheets.place(index);
                    pages[page as usize].push((index as usize, place));
                }
                pages
            }
            Layout::Roll(roll, _) => (0..labels).map(|index| vec![(index as usize, roll.place(0))]).collect(),
        }
    }
}

fn hundredths(length: Length) -> f64 {
    length.to_mm() * 100.0
}

fn paper_name(paper: Paper) -> &'static str {
    match paper {
        Paper::Letter => "Letter",
        Paper::A4 => "A4",
    }
}

/// The controls and the sheets.
#[component]
pub(super) fn Labels(props: &PartProps) -> Html {
    let settings = use_state(Settings::read);
    let labels = labels_of(&props.all);
    let count = labels.len();
    let layout = settings.layout();
    let size = layout.as_ref().ok().map(|layout| {
        let (width, height) = layout.page();
        (hundredths(width) as u32, hundredths(height) as u32)
    });
    use_effect_with(size, |size| {
        picture::set_page(*size);
        || picture::set_page(None)
    });
    let pages = layout.as_ref().map(|layout| layout.pages(count as u32));
    html! {
        <>
            <section class="card screen-only" aria-label={text::LABELS}>
                <h2>{ text::LABELS }</h2>
                { match &pages {
                    Err(error) => html! { <p class="caution" role="alert">{ text::label_error(error) }</p> },
                    Ok(pages) => html! { <p>{ text::sheets(pages.len() as u32, count) }</p> },
                } }
                <button type="button" class="tool" disabled={layout.is_err()} onclick={|_: MouseEvent| picture::print()}>{ text::PRINT_LABELS }</button>
                <p class="hint">{ text::PRINT_HINT }</p>
                { controls(&settings, &props.send) }
            </section>
            if let (Ok(layout), Ok(pages)) = (&layout, &pages) { { sheets(props, &settings, layout, &labels, pages) } }
        </>
    }
}

fn controls(settings: &UseStateHandle<Settings>, send: &Callback<Msg>) -> Html {
    // Each control changes a copy of what is now set.
    macro_rules! on {
        ($value:ident: $kind:ty => |$now:ident| $change:expr) => {{
            let (settings, send) = (settings.clone(), send.clone());
            Callback::from(move |$value: $kind| {
                let mut $now = (*settings).clone();
                $change;
                $now.write(&send);
                settings.set($now);
            })
        }};
    }
    let mut options: Vec<Choosable> = GRIDS
        .iter()
        .map(|row| {
            let grid = row.value;
            Choosable::new(text::grid(grid.columns, grid.rows, grid.label, paper_name(grid.paper)))
        })
        .collect();
    options.push(Choosable::new(text::OWN_SHEET));
    options.push(Choosable::new(text::ROLL_OF_LABELS));
    let own: &[usize] = match settings.sheet {
        OWN => &[0, 1, 2, 3, 4, 5, 6, 7],
        ROLL => &[2, 3, 7],
        _ => &[],
    };
    html! {
        <div class="fields">
            { choice(text::SHEET, options, Some(settings.sheet), &on!(place: usize => |now| { now.sheet = place; now.start = 0 })) }
            { for own.iter().map(|place| {
                let place = *place;
                html! { <span key={place}>{ field(text::SHEET_FIELDS[place], "number", settings.own[place].clone(), "", &on!(typed: String => |now| now.own[place] = typed.chars().filter(|letter| !letter.is_control()).take(8).collect())) }</span> }
            }) }
            if settings.sheet != ROLL {
                { stepper(text::START_AT, (settings.start + 1).to_string(), &on!(by: i32 => |now| now.start = (i32::from(now.start) + by).max(0) as u16), (text::LESS, text::MORE)) }
            }
            { stepper(text::NUDGE_ACROSS, text::nudge(settings.nudge.across), &on!(by: i32 => |now| now.nudge.across = (i32::from(now.nudge.across) + by) as i8), (text::LESS, text::MORE)) }
            { stepper(text::NUDGE_DOWN, text::nudge(settings.nudge.down), &on!(by: i32 => |now| now.nudge.down = (i32::from(now.nudge.down) + by) as i8), (text::LESS, text::MORE)) }
            { tick(text::FRAMES, settings.frames, &on!(ticked: bool => |now| now.frames = ticked)) }
            { tick(text::WITH_QR, settings.with_code, &on!(ticked: bool => |now| now.with_code = ticked)) }
            { tick(text::BLANK_WEIGHT, settings.blank_weight, &on!(ticked: bool => |now| now.blank_weight = ticked)) }
        </div>
    }
}

/// The packages of all animals, by their place among those of their animal.
fn labels_of(all: &[Packed]) -> Vec<(&Packed, usize)> {
    all.iter().flat_map(|packed| (0..packed.packages.len()).map(move |place| (packed, place))).collect()
}

fn sheets(
    props: &PartProps,
    settings: &Settings,
    layout: &Layout,
    labels: &[(&Packed, usize)],
    pages: &[Vec<(usize, Rect)>],
) -> Html {
    let (width, height) = layout.page();
    let view_box = format!("0 0 {} {}", whole(hundredths(width)), whole(hundredths(height)));
    let lines =
        |(packed, place): (&Packed, usize)| packed.label(place, props.state.units, settings.blank_weight);
    let code = settings.with_code.then(|| code_of(props)).flatten();
    html! {
        <div class="label-sheets">
            { for pages.iter().enumerate().map(|(page, cells)| html! {
                <svg key={page} class="label-sheet" viewBox={view_box.clone()} width={format!("{}mm", mm(width))} height={format!("{}mm", mm(height))}>
                    if settings.frames { { frames(layout) } }
                    { for cells.iter().map(|(index, place)| label(*index, &lines(labels[*index]), *place, code.as_ref())) }
                    if settings.frames && page == 0 { { ruler_at(hundredths(width), hundredths(height)) } }
                </svg>
            }) }
        </div>
    }
}

/// Millimetres to a hundredth, without float formatting.
fn mm(length: Length) -> String {
    let all = hundredths(length).round() as i64;
    format!("{}.{:02}", all / 100, all % 100)
}

fn frames(layout: &Layout) -> Html {
    let cells: Vec<Rect> = match layout {
        Layout::Sheets(sheets) => sheets.cells().collect(),
        Layout::Roll(roll, _) => vec![roll.place(0)],
    };
    html! {
        { for cells.into_iter().enumerate().map(|(index, cell)| html! {
            <rect key={index} class="frame" x={whole(hundredths(cell.x))} y={whole(hundredths(cell.y))} width={whole(hundredths(cell.width))} height={whole(hundredths(cell.height))} />
        }) }
    }
}

fn label(index: usize, lines: &[String], place: Rect, code: Option<&Code>) -> Html {
    let (x, y) = (hundredths(place.x), hundredths(place.y));
    let (width, height) = (hundredths(place.width), hundredths(place.height));
    // A code of a third of the label, at most 25 mm, at its right end.
    let side = if code.is_some() { (height - 300.0).min(width * 0.36).min(2500.0) } else { 0.0 };
    let room = if code.is_some() { width - side - 100.0 } else { width };
    html! {
        <g key={index} class="one-label">
            { for placed(lines, (x, y), (room, height)).into_iter().enumerate().map(|(row, line)| html! {
                <text key={row} x={line.x.to_string()} y={line.y.to_string()} font-size={line.size.to_string()} font-weight={if line.bold { "700" } else { "400" }}
                    textLength={line.pressed.map(|pressed| pressed.to_string())} lengthAdjust={line.pressed.map(|_| "spacingAndGlyphs")}>{ line.says }</text>
            }) }
            if let Some(code) = code {
                <svg x={whole(x + width - side - 150.0)} y={whole(y + (height - side) / 2.0)} width={whole(side)} height={whole(side)} viewBox={code.view_box.clone()}><path d={code.modules.clone()} /></svg>
            }
        </g>
    }
}

/// The season's address, names left out, as a QR code.
fn code_of(props: &PartProps) -> Option<Code> {
    Code::of(&address::of_plan(&link::write(&props.state.season, Names::LeftOut)))
}

/// A ruler at the foot of the sheet, to lay a real one against.
fn ruler_at(width: f64, height: f64) -> Html {
    let (left, base) = ((width - 10_000.0) / 2.0, height - 500.0);
    let mut path = String::new();
    for tick in ruler() {
        let x = whole(left + hundredths(tick.at));
        let _ = write!(path, "M{x} {}v-{}", whole(base), whole(hundredths(tick.mark)));
    }
    html! { <g class="ruler"><path d={path} /><text x={whole(left)} y={whole(base - 700.0)} font-size="300">{ text::RULER }</text></g> }
}
