//! Someone prints the labels: they lie where the sheet has them, nothing stands over, and the code can be read.

use std::path::Path;
use std::process::Command;

use hindsaddle_model::labels::{Grid, Nudge, Sheets};
use hindsaddle_model::tables::GRIDS;
use kurbo::{Affine, BezPath, Rect, Shape};

use crate::act;
use crate::find::Role;
use crate::folder::Folder;
use crate::page::{Page, Screen};
use crate::see;

fn at_the_labels(fragment: &str) -> Page {
    let page = Page::open_at(Screen::DESKTOP, fragment);
    act::press(&page, Role::Link, "Cut & pack");
    act::press(&page, Role::Button, "Labels");
    page
}

pub(super) fn run(program: &str, arguments: &[&str], folder: &Path) -> String {
    let output = Command::new(program).args(arguments).current_dir(folder).output().expect(program);
    assert!(output.status.success(), "{program}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8_lossy(&output.stdout).into_owned()
}

/// Frames of the first page of a PDF file, in millimetres: every closed path with four corners that
/// `pdftocairo` (Poppler) finds.
fn frames(pdf: &Path, folder: &Path) -> Vec<Rect> {
    run("pdftocairo", &["-svg", "-f", "1", "-l", "1", &pdf.to_string_lossy(), "page.svg"], folder);
    let text = std::fs::read_to_string(folder.join("page.svg")).expect("the page as SVG");
    let document = roxmltree::Document::parse(&text).expect("well-formed");
    document
        .descendants()
        .filter(|node| node.has_tag_name("path") && is_stroked(node))
        .filter_map(|node| {
            let mut path = BezPath::from_svg(node.attribute("d")?).ok()?;
            if let Some(matrix) = node.attribute("transform").and_then(|text| text.strip_prefix("matrix(")) {
                let numbers: Vec<f64> = matrix
                    .trim_end_matches(')')
                    .split(',')
                    .map(|number| number.trim().parse().expect("a number"))
                    .collect();
                path.apply_affine(Affine::new(numbers.try_into().expect("six numbers")));
            }
            let corners = path.elements().len();
            // 72 points to the inch.
            let millimetres = path.bounding_box().scale_from_origin(25.4 / 72.0);
            (corners >= 5 && millimetres.width() > 10.0).then_some(millimetres)
        })
        .collect()
}

/// Older and newer versions of Cairo write the stroke as a style or as an attribute.
fn is_stroked(node: &roxmltree::Node) -> bool {
    let style = node.attribute("style").unwrap_or_default();
    node.attribute("stroke").is_some_and(|stroke| stroke != "none")
        || (style.contains("stroke:") && !style.contains("stroke:none"))
}

#[test]
fn labels_lie_where_the_sheet_has_them_to_a_fifth_of_a_millimetre() {
    let page = at_the_labels("");
    let folder = Folder::new("frames");
    act::press(&page, Role::Checkbox, "Print the frames (a test on plain paper)");
    // The smallest labels of each paper.
    for place in [4, 9] {
        let grid: Grid = GRIDS[place].value;
        page.script(&format!(
            "(list => {{ list.value = '{place}'; list.dispatchEvent(new Event('change', {{ bubbles: true }})); }})([...document.querySelectorAll('select')].find(list => list.options.length === {}))",
            GRIDS.len() + 2
        ));
        page.settle();
        let pdf = page.print_into(&folder.0);
        let drawn = frames(&pdf, &folder.0);
        let sheets = Sheets::new(grid, 0, Nudge::default()).expect("a common sheet");
        for cell in sheets.cells() {
            let (x, y) = (cell.x.to_mm(), cell.y.to_mm());
            let wanted = Rect::new(x, y, x + cell.width.to_mm(), y + cell.height.to_mm());
            let off = |rect: &Rect| {
                [rect.x0 - wanted.x0, rect.y0 - wanted.y0, rect.x1 - wanted.x1, rect.y1 - wanted.y1]
                    .into_iter()
                    .map(f64::abs)
                    .fold(0.0, f64::max)
            };
            let nearest = drawn.iter().map(off).fold(f64::MAX, f64::min);
            assert!(
                nearest < 0.2,
                "sheet {place}: {wanted:?} is {nearest:.2} mm off, of {} frames",
                drawn.len()
            );
        }
    }
}

/// The longest names there are, on the smallest labels: the browser's own measure of every line.
#[test]
fn no_word_stands_over_its_label() {
    let page = at_the_labels("");
    act::fill(&page, Role::Textbox, "Owner (on labels and order)", &"W".repeat(24));
    act::fill(&page, Role::Textbox, "Tag or licence number", &"鹿".repeat(24));
    act::press(&page, Role::Checkbox, "Print the frames (a test on plain paper)");
    act::press(&page, Role::Checkbox, "A square code of the plan on each label");
    see::gone(&page, Role::Alert, "never");
    let over = page.script(
        "(() => { const cells = [...document.querySelectorAll('.frame')].map(cell => cell.getBBox()); \
          return [...document.querySelectorAll('.one-label > text')].map(text => [text.textContent, text.getBBox()]) \
            .filter(([_, box]) => !cells.some(cell => box.x >= cell.x && box.x + box.width <= cell.x + cell.width && box.y >= cell.y - 20 && box.y + box.height <= cell.y + cell.height + 20)) \
            .map(([text, box]) => `${text} ${box.x} ${box.y} ${box.width} ${box.height}`) })()",
    );
    assert_eq!(over.as_array().map(Vec::len), Some(0), "{over}");
    let lines = page.script("document.querySelectorAll('.one-label > text').length");
    assert!(lines.as_u64().is_some_and(|lines| lines > 150), "{lines}");
}

#[test]
fn the_code_on_a_printed_label_leads_to_the_plan() {
    let page = at_the_labels("");
    let folder = Folder::new("codes");
    act::press(&page, Role::Checkbox, "A square code of the plan on each label");
    let pdf = page.print_into(&folder.0);
    run(
        "pdftoppm",
        &["-r", "300", "-png", "-f", "1", "-l", "1", "-singlefile", &pdf.to_string_lossy(), "page"],
        &folder.0,
    );
    let read = run("zbarimg", &["--quiet", "--raw", "page.png"], &folder.0);
    let codes: Vec<&str> = read.lines().collect();
    assert!(codes.len() >= 20, "{} codes: {read}", codes.len());
    let plan = page.script("location.origin + '/' + document.querySelector('a.tool').hash");
    assert!(
        codes.iter().all(|code| *code == plan.as_str().unwrap_or_default()),
        "{} against {plan}",
        codes[0]
    );
}

#[test]
fn a_sheet_that_cannot_be_says_what_to_change() {
    let page = at_the_labels("");
    page.script(
        "(list => { list.selectedIndex = list.options.length - 2; list.dispatchEvent(new Event('change', { bubbles: true })); })([...document.querySelectorAll('select')].at(-1))",
    );
    act::fill(&page, Role::Textbox, "Label width, mm", "120");
    act::press(&page, Role::Heading, "From table to freezer");
    page.until("a sentence", || {
        let text = page.script("document.querySelector('.card [role=alert]')?.textContent ?? ''");
        let text = text.as_str().unwrap_or_default().to_owned();
        if text.contains("lie over each other") { Ok(()) } else { Err(text) }
    });
    act::fill(&page, Role::Textbox, "Step across, mm", "121");
    act::press(&page, Role::Heading, "From table to freezer");
    page.until("another sentence", || {
        let text = page.script("document.querySelector('.card [role=alert]')?.textContent ?? ''");
        let text = text.as_str().unwrap_or_default().to_owned();
        if text.contains("and the paper has") { Ok(()) } else { Err(text) }
    });
}
