//! Owns what a person does: press, type, choose. Each waits until it can be done, does it with real input
//! events, waits until the page has drawn the answer, and fails if the page complained.

use serde_json::{Value, json};

use crate::find::{Found, Name, Role, one};
use crate::keys::Key;
use crate::page::Page;

/// Where a pointer can reach an element.
pub(crate) const REACH: &str = include_str!("reach.js");

/// Clicks or, on a touched screen, taps.
#[track_caller]
pub(crate) fn press<'a>(page: &Page, role: Role, name: impl Into<Name<'a>>) {
    let name = name.into();
    let point = page.until("to press it", || {
        let found = usable(page, role, name)?;
        let point = found.call(page, REACH, &[json!(true)])?;
        match point["covered"].as_str() {
            Some(cover) => Err(format!("{role:?} {name:?} is covered by {cover}")),
            None => Ok(point),
        }
    });
    press_at(page, &point);
    done(page);
}

/// Replaces what stands in a field, key by key.
#[track_caller]
pub(crate) fn fill<'a>(page: &Page, role: Role, name: impl Into<Name<'a>>, text: &str) {
    let name = name.into();
    press(page, role, name);
    strike(page, Key::Control('a'));
    strike(page, Key::Backspace);
    for letter in text.chars() {
        strike(page, Key::Letter(letter));
    }
    done(page);
}

/// Chooses an option of a native list by what it says. The list opens outside the page, where no event of ours
/// can reach, so the choice is made the way the browser reports one: the value, then `input` and `change`.
#[track_caller]
pub(crate) fn choose<'a>(page: &Page, name: impl Into<Name<'a>>, option: &str) {
    let name = name.into();
    let function = "function (label) {
        const option = [...this.options].find((option) => option.label === label);
        if (!option) return [...this.options].map((option) => option.label).join(' | ');
        if (option.disabled) return label + ' (disabled)';
        this.focus();
        if (this.value === option.value) return null;
        this.value = option.value;
        this.dispatchEvent(new Event('input', { bubbles: true }));
        this.dispatchEvent(new Event('change', { bubbles: true }));
        return null;
    }";
    page.until("to choose it", || {
        let found = usable(page, Role::Combobox, name)?;
        let options = found.call(page, function, &[json!(option)])?;
        options.as_str().map_or(Ok(()), |options| Err(format!("{name:?} has no {option:?}, but: {options}")))
    });
    done(page);
}

/// Presses a key where the focus is.
#[track_caller]
pub(crate) fn key(page: &Page, key: Key) {
    strike(page, key);
    done(page);
}

/// Goes on by the Tab key to what has this name, as who has no pointer does.
#[track_caller]
pub(crate) fn tab_to(page: &Page, name: &str) {
    let mut passed = Vec::new();
    while passed.len() < MOST_STOPS {
        strike(page, Key::Tab);
        let focused = page.script(
            "(({ activeElement: here, body }) => here === body ? '' : (here.getAttribute('aria-label') ?? here.labels?.[0]?.innerText ?? here.innerText ?? '').trim())(document)",
        );
        let focused = focused.as_str().unwrap_or_default().to_owned();
        // A mark may stand before the name.
        if focused.lines().any(|line| line.starts_with(name)) {
            return done(page);
        }
        passed.push(focused);
    }
    panic!("Tab never comes to {name}; it stops at: {}", passed.join(" | "));
}

/// More stops than any page has.
const MOST_STOPS: usize = 250;

/// Types where the focus is.
#[track_caller]
pub(crate) fn type_in(page: &Page, text: &str) {
    for letter in text.chars() {
        strike(page, Key::Letter(letter));
    }
    done(page);
}

/// Goes back in the history, as the browser's button does.
#[track_caller]
pub(crate) fn go_back(page: &Page) {
    page.script("history.back()");
    done(page);
}

/// Drags with the mouse, or a finger, from one point of the window to another.
#[track_caller]
pub(crate) fn drag(page: &Page, from: (f64, f64), to: (f64, f64)) {
    let between = |part: f64| (from.0 + (to.0 - from.0) * part, from.1 + (to.1 - from.1) * part);
    let steps = [0.0, 0.25, 0.5, 0.75, 1.0].map(between);
    if page.is_touched() {
        fingers(page, "touchStart", &[from]);
        for at in steps {
            fingers(page, "touchMove", &[at]);
        }
        fingers(page, "touchEnd", &[]);
    } else {
        let mouse = |kind: &str, (x, y): (f64, f64), buttons: u32| {
            let event = json!({ "type": kind, "x": x, "y": y, "button": "left", "buttons": buttons, "clickCount": 1 });
            page.devtools("Input.dispatchMouseEvent", &event);
        };
        mouse("mousePressed", from, 1);
        for at in steps {
            mouse("mouseMoved", at, 1);
        }
        mouse("mouseReleased", to, 0);
    }
    done(page);
}

/// Puts two fingers down about a point, `from` pixels apart, and moves them to `to` pixels.
#[track_caller]
pub(crate) fn pinch(page: &Page, (x, y): (f64, f64), from: f64, to: f64) {
    let about = |apart: f64| [(x - apart / 2.0, y), (x + apart / 2.0, y)];
    fingers(page, "touchStart", &about(from));
    for step in 1..=5 {
        fingers(page, "touchMove", &about(from + (to - from) * f64::from(step) / 5.0));
    }
    fingers(page, "touchEnd", &[]);
    done(page);
}

/// Turns the wheel with the control key held: away from the hand is closer.
#[track_caller]
pub(crate) fn wheel_with_control(page: &Page, (x, y): (f64, f64), turn: f64) {
    let event = json!({ "type": "mouseWheel", "x": x, "y": y, "deltaX": 0, "deltaY": turn, "modifiers": 2 });
    page.devtools("Input.dispatchMouseEvent", &event);
    done(page);
}

#[track_caller]
fn fingers(page: &Page, kind: &str, points: &[(f64, f64)]) {
    let points: Vec<Value> =
        points.iter().enumerate().map(|(id, (x, y))| json!({ "x": x, "y": y, "id": id })).collect();
    page.devtools("Input.dispatchTouchEvent", &json!({ "type": kind, "touchPoints": points }));
}

/// The one that fits, if it can be used.
fn usable(page: &Page, role: Role, name: Name) -> Result<Found, String> {
    let found = one(page, role, name)?;
    if found.is("disabled") { Err(format!("{role:?} {name:?} is disabled")) } else { Ok(found) }
}

#[track_caller]
fn press_at(page: &Page, point: &Value) {
    let (x, y) = (&point["x"], &point["y"]);
    if page.is_touched() {
        page.devtools(
            "Input.dispatchTouchEvent",
            &json!({ "type": "touchStart", "touchPoints": [{ "x": x, "y": y }] }),
        );
        page.devtools("Input.dispatchTouchEvent", &json!({ "type": "touchEnd", "touchPoints": [] }));
        return;
    }
    for (kind, buttons) in [("mouseMoved", 0), ("mousePressed", 1), ("mouseReleased", 0)] {
        let button = if kind == "mouseMoved" { "none" } else { "left" };
        page.devtools(
            "Input.dispatchMouseEvent",
            &json!({ "type": kind, "x": x, "y": y, "button": button, "buttons": buttons, "clickCount": 1 }),
        );
    }
}

#[track_caller]
fn strike(page: &Page, key: Key) {
    for event in key.events() {
        page.devtools("Input.dispatchKeyEvent", &event);
    }
}

#[track_caller]
fn done(page: &Page) {
    page.settle();
    page.expect_no_complaint();
}
