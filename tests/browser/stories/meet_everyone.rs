//! Nobody is left out: axe-core looks at every screen and state, in light, dark and forced colours, at a
//! phone's width and a desk's.

use crate::act;
use crate::find::{Name, Role, starting};
use crate::page::{Page, Screen};
use crate::see;

/// axe-core, which is only in the folder of tools and never in the page.
fn axe() -> String {
    let path =
        std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../.tools/node_modules/axe-core/axe.min.js");
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// Fails if axe finds anything against WCAG 2.2 A and AA, the size of targets with it.
#[track_caller]
fn look(page: &Page, axe: &str, screen: &str) {
    page.settle();
    let out = see::sticking_out(page);
    assert!(out.is_none(), "{screen} is wider than the screen: {out:?}");
    page.script(&format!("{axe}; true"));
    let found = page.script(
        "axe.run(document, { runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }, \
          rules: { 'target-size': { enabled: true } } }) \
          .then(result => result.passes.length < 10 ? ['axe looked at nothing'] : result.violations.flatMap(rule => rule.nodes.map(node => `${rule.id}: ${node.target} ${node.failureSummary}`)))",
    );
    let found: Vec<&str> = found.as_array().expect("a list").iter().filter_map(|one| one.as_str()).collect();
    assert!(found.is_empty(), "{screen}: {} findings\n{}", found.len(), found.join("\n"));
}

/// Every state of the first page.
fn first_page(page: &Page, axe: &str, light: &str) {
    look(page, axe, &format!("{light}: opened"));
    for tool in ["Paint", "Wound", "Names", "Lift off", "Save"] {
        act::press(page, Role::Button, tool);
        look(page, axe, &format!("{light}: {tool}"));
        act::press(page, Role::Button, tool);
    }
    for view in ["Inner side", "From above", "Outer side"] {
        act::press(page, Role::Button, view);
        look(page, axe, &format!("{light}: {view}"));
    }
    act::press(page, Role::Button, "Hind leg");
    look(page, axe, &format!("{light}: a region"));
    act::press(page, Role::Button, starting("Knuckle: "));
    look(page, axe, &format!("{light}: a muscle's sheet"));
    act::press(page, Role::Button, "Close");
    act::press(page, Role::Button, starting("about 40 packages"));
    look(page, axe, &format!("{light}: the working of a number"));
    act::press(page, Role::Button, "Close");
}

/// Every part of the second page.
fn second_page(page: &Page, axe: &str, light: &str) {
    act::press(page, Role::Link, "Cut & pack");
    for part in ["Table card", "Grind", "Wrap", "Freeze", "Labels", "Work order", "Files", "Cautions"] {
        act::press(page, Role::Button, part);
        look(page, axe, &format!("{light}: {part}"));
    }
    act::press(page, Role::Button, "Table card");
    act::fill(page, Role::Textbox, "On the scale", "9 lb");
    act::press(page, Role::Heading, "Tenderloin");
    see::shown(page, Role::Button, "Keep it");
    look(page, axe, &format!("{light}: a weight that is asked about"));
}

/// Every part of the third page, of two animals.
fn third_page(page: &Page, axe: &str, light: &str) {
    act::press(page, Role::Link, "Wish & share");
    act::press(page, Role::Button, "Season");
    act::press(page, Role::Button, "Add an animal cut the same way");
    for part in ["Wishes", "Season", "Partners", "Compare", "Share", "Kept plans", "This device"] {
        act::press(page, Role::Button, part);
        look(page, axe, &format!("{light}: {part}"));
    }
    act::press(page, Role::Button, "Forget everything on this device");
    look(page, axe, &format!("{light}: before everything is forgotten"));
}

/// A plan that was received, by one who has none and by one who has, and one that cannot be read.
fn page_for_reading(page: &Page, axe: &str, light: &str) {
    let mine = page.fragment();
    page.go_to("read.html#1DCBVDKh____-izo");
    see::shown(page, Role::Heading, "Your work order");
    look(page, axe, &format!("{light}: another's plan is read"));
    page.go_to(&format!("read.html{mine}"));
    see::says(page, Role::Region, Name::from("Yours or theirs"), "the plan you have");
    look(page, axe, &format!("{light}: one's own plan is read"));
    page.go_to("read.html#9later");
    look(page, axe, &format!("{light}: a plan that cannot be read"));
    page.go_to(&mine);
    page.go_to("#1DCBVDKh____-izo");
    see::shown(page, Role::Button, "Keep both");
    look(page, axe, &format!("{light}: a link took the place of a plan"));
}

/// Every part of the fourth page, with every kind of answer.
fn fourth_page(page: &Page, axe: &str, light: &str) {
    act::press(page, Role::Link, "Learn");
    look(page, axe, &format!("{light}: no muscle yet"));
    act::choose(page, "Muscle", "Knuckle");
    act::choose(page, "Compare with", "Shoulder clod");
    look(page, axe, &format!("{light}: two muscles"));
    act::choose(page, "Compare with", "Tenderloin");
    look(page, axe, &format!("{light}: two muscles of two sides"));
    act::press(page, Role::Button, "First deer");
    look(page, axe, &format!("{light}: the first deer"));
    for part in ["Words", "Sources", "Practice"] {
        act::press(page, Role::Button, part);
        look(page, axe, &format!("{light}: {part}"));
    }
    act::press(page, Role::Disclosure, starting("For a class: make a lesson"));
    look(page, axe, &format!("{light}: a lesson is made"));
    act::press(page, Role::Button, "Hind leg: None");
    look(page, axe, &format!("{light}: a lesson of nothing"));
    act::press(page, Role::Button, "Start");
    look(page, axe, &format!("{light}: where is it?"));
    act::choose(page, "Or choose the place in words", "Lower hind leg, from the knee to the hock");
    look(page, axe, &format!("{light}: it is elsewhere"));
    act::press(page, Role::Button, "Leave");
    for (game, answer) in [("Which cut", "Stew"), ("Which stroke", "A: ")] {
        act::press(page, Role::Button, game);
        act::press(page, Role::Button, "Start");
        look(page, axe, &format!("{light}: {game}"));
        act::press(page, Role::Button, starting(answer));
        look(page, axe, &format!("{light}: {game}, answered"));
        act::press(page, Role::Button, "Leave");
    }
    look(page, axe, &format!("{light}: a score"));
}

fn every_page(page: &Page, axe: &str, light: &str) {
    first_page(page, axe, light);
    second_page(page, axe, light);
    third_page(page, axe, light);
    fourth_page(page, axe, light);
    page_for_reading(page, axe, light);
}

#[test]
fn every_state_in_light_on_a_desk() {
    let (page, axe) = (Page::open(Screen::DESKTOP), axe());
    act::press(&page, Role::Button, "Save");
    act::press(&page, Role::Button, "Worksheet and key");
    look(&page, &axe, "light, desk: the sheets for a class");
    act::press(&page, Role::Button, "Close");
    act::press(&page, Role::Button, "Save");
    every_page(&page, &axe, "light, desk");
}

#[test]
fn every_state_in_the_dark_on_a_phone() {
    let (page, axe) = (Page::open(Screen::PHONE), axe());
    page.prefer_dark();
    every_page(&page, &axe, "dark, phone");
}

#[test]
fn every_state_in_forced_colours() {
    let (page, axe) = (Page::open(Screen::DESKTOP), axe());
    page.force_colours();
    every_page(&page, &axe, "forced colours");
}

#[test]
fn every_state_in_text_twice_as_large() {
    let (page, axe) = (Page::open(Screen::PHONE), axe());
    page.double_the_text();
    every_page(&page, &axe, "large text");
}

#[test]
fn every_state_at_four_times_the_size() {
    let (page, axe) = (Page::open(Screen::NARROW), axe());
    every_page(&page, &axe, "400 %");
}

/// WCAG 2.2, 1.4.6 (AAA): seven to one, for whoever asks for more contrast.
#[test]
fn in_the_sun_text_stands_out_seven_to_one() {
    let axe = axe();
    for dark in [false, true] {
        let page = Page::open(Screen::PHONE);
        page.prefer_contrast(dark);
        for name in ["", "kitchen.html", "ahead.html", "learn.html", "read.html#1DCBVDKh____-izo"] {
            page.go_to(name);
            see::shown(&page, Role::Main, Name::Any);
            page.script(&format!("{axe}; true"));
            let found = page.script(
                "axe.run(document, { runOnly: { type: 'rule', values: ['color-contrast-enhanced'] } }) \
                  .then(result => [result.passes.flatMap(rule => rule.nodes).length, result.violations.flatMap(rule => rule.nodes.map(node => `${node.target} ${node.failureSummary}`))])",
            );
            assert!(found[0].as_u64() > Some(4), "{name}: nothing was looked at");
            assert_eq!(found[1].as_array().map(Vec::len), Some(0), "{name}, dark {dark}: {}", found[1]);
        }
    }
}

/// What is smaller than a side of so many pixels, of everything that can be pressed but a link among words. A box to tick
/// is as large as its label.
const SMALLER: &str = "(side) => [...document.querySelectorAll('button, a[href], select, input, summary')]
    .filter((one) => !(one.tagName === 'A' && getComputedStyle(one).display === 'inline'))
    .map((one) => [one, (/checkbox|radio/.test(one.type) && one.closest('label') || one).getBoundingClientRect()])
    .filter(([, { width, height }]) => width > 0 && height > 0 && Math.min(width, height) < side - 0.5)
    .map(([one, { width, height }]) => `${one.innerText || one.ariaLabel} ${width} x ${height}`)";

/// A cold thumb needs 44 pixels, a glove at the table 56.
#[test]
fn everything_is_as_large_as_a_thumb() {
    let page = Page::open(Screen::PHONE);
    for name in ["", "kitchen.html", "ahead.html", "learn.html", "read.html#1DCBVDKh____-izo"] {
        page.go_to(name);
        see::shown(&page, Role::Main, Name::Any);
        let parts = page.script("document.querySelectorAll('.parts button').length").as_u64().unwrap_or(0);
        for part in 0..parts.max(1) {
            page.script(&format!("document.querySelectorAll('.parts button')[{part}]?.click(); true"));
            page.settle();
            page.script("document.querySelectorAll('details').forEach((one) => { one.open = true; }); document.querySelector('.tally-toggle')?.click(); true");
            page.settle();
            let smaller = page.script(&format!("({SMALLER})(44)"));
            assert_eq!(smaller.as_array().map(Vec::len), Some(0), "{name}, part {part}: {smaller}");
        }
    }
    page.go_to("kitchen.html");
    see::shown(&page, Role::Checkbox, "Done");
    let gloved = page.script("[...document.querySelectorAll('.table-actions .tool, .table-actions .tick')].map((one) => one.getBoundingClientRect().height)");
    let gloved: Vec<f64> =
        gloved.as_array().into_iter().flatten().filter_map(serde_json::Value::as_f64).collect();
    assert!(gloved.len() >= 3 && gloved.iter().all(|height| *height >= 56.0), "{gloved:?}");
}
