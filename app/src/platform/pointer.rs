//! Where a pointer is on the drawing, and fingers that pinch, drag and turn a wheel on it.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use gloo::events::{EventListener, EventListenerOptions};
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, MouseEvent, Node, PointerEvent, WheelEvent};

use super::window;
use crate::plate::Frame;

type Point = (f64, f64);

/// A finger that moved less than this, in CSS pixels, has tapped and not dragged.
const STILL: f64 = 8.0;
/// How much closer one notch of a wheel goes: its `deltaY` is about 100.
const A_NOTCH: f64 = 0.0022;

/// The drawing and its place in the window.
struct Drawing {
    element: Element,
    middle: Point,
    size: Point,
}

impl Drawing {
    fn find(id: &str) -> Option<Self> {
        let element = window()?.document()?.get_element_by_id(id)?;
        let place = element.get_bounding_client_rect();
        let middle = (place.x() + place.width() / 2.0, place.y() + place.height() / 2.0);
        Some(Self { element, middle, size: (place.width(), place.height()) })
    }

    /// Units of the drawing in a CSS pixel: it is shown whole, in the middle of its element.
    fn unit(&self, shown: Frame) -> f64 {
        (shown.width / self.size.0.max(1.0)).max(shown.height / self.size.1.max(1.0))
    }

    fn place(&self, shown: Frame, client: Point) -> Point {
        let unit = self.unit(shown);
        (
            shown.x + shown.width / 2.0 + (client.0 - self.middle.0) * unit,
            shown.y + shown.height / 2.0 + (client.1 - self.middle.1) * unit,
        )
    }

    /// What is shown when `place` is to lie under `client` and everything is `factor` times as far away.
    fn looked_at(&self, shown: Frame, place: Point, client: Point, factor: f64) -> Frame {
        let (width, height) = (shown.width * factor, shown.height * factor);
        let unit = self.unit(shown) * factor;
        Frame {
            x: place.0 - (client.0 - self.middle.0) * unit - width / 2.0,
            y: place.1 - (client.1 - self.middle.1) * unit - height / 2.0,
            width,
            height,
        }
    }

    fn show(&self, frame: Frame) {
        let _ = self.element.set_attribute("viewBox", &frame.view_box());
    }
}

/// Where the pointer of an event is on the drawing.
pub fn on_drawing(id: &str, shown: Frame, event: &MouseEvent) -> Option<Point> {
    Some(Drawing::find(id)?.place(shown, client(event)))
}

/// Where the pointer of an event is in the window.
fn client(event: &MouseEvent) -> Point {
    (f64::from(event.client_x()), f64::from(event.client_y()))
}

/// Keeps the pointer with the element it went down on, wherever it moves.
pub fn capture(event: &PointerEvent) {
    if let Some(element) = event.target().and_then(|target| target.dyn_into::<Element>().ok()) {
        let _ = element.set_pointer_capture(event.pointer_id());
    }
}

thread_local! {
    /// Whether the next click is the end of a drag and no tap. It outlives the listeners, which are made anew
    /// between the end of a drag and its click.
    static DRAGGED: Cell<bool> = const { Cell::new(false) };
}

/// Fingers on the drawing.
#[derive(Default)]
struct Hand {
    /// Each finger: its number, where it went down, where it is.
    fingers: Vec<(i32, Point, Point)>,
    /// What is shown just now, once something moved.
    now: Option<Frame>,
}

impl Hand {
    /// What a finger did; what is shown from now on, if all fingers rest after moving it.
    fn felt(
        &mut self,
        event: &PointerEvent,
        name: &str,
        id: &str,
        shown: Frame,
        may_pan: bool,
    ) -> Option<Frame> {
        let number = event.pointer_id();
        let at = client(event);
        match name {
            "pointerdown" => {
                if self.fingers.is_empty() {
                    DRAGGED.set(false);
                }
                self.fingers.retain(|(other, ..)| *other != number);
                self.fingers.push((number, at, at));
            }
            "pointermove" => {
                let finger = self.fingers.iter_mut().find(|(other, ..)| *other == number)?;
                finger.2 = at;
                let drawing = Drawing::find(id)?;
                let now = self.moved(&drawing, shown, may_pan)?;
                drawing.show(now);
                self.now = Some(now);
                DRAGGED.set(true);
            }
            _ => {
                self.fingers.clear();
                return self.now.take();
            }
        }
        None
    }

    /// What the fingers make of `shown`.
    fn moved(&self, drawing: &Drawing, shown: Frame, may_pan: bool) -> Option<Frame> {
        match self.fingers.as_slice() {
            [(_, from, to)] if may_pan && apart(*from, *to) > STILL => {
                Some(drawing.looked_at(shown, drawing.place(shown, *from), *to, 1.0))
            }
            [(_, from, to), (_, other_from, other_to), ..] => {
                let factor = apart(*from, *other_from) / apart(*to, *other_to).max(1.0);
                let place = drawing.place(shown, between(*from, *other_from));
                Some(drawing.looked_at(shown, place, between(*to, *other_to), factor))
            }
            _ => None,
        }
    }
}

fn apart(a: Point, b: Point) -> f64 {
    ((a.0 - b.0) * (a.0 - b.0) + (a.1 - b.1) * (a.1 - b.1)).sqrt()
}

fn between(a: Point, b: Point) -> Point {
    (f64::midpoint(a.0, b.0), f64::midpoint(a.1, b.1))
}

/// Lets two fingers, one finger if `may_pan`, or a wheel with the control key move what is shown of the
/// drawing. `then` gets the new view when they rest. The wheel works without the key where one may pan: there
/// the page is not meant to scroll.
pub fn watch(
    id: &'static str,
    shown: Frame,
    may_pan: bool,
    then: impl Fn(Frame) + 'static,
) -> Option<Vec<EventListener>> {
    let element = Drawing::find(id)?.element;
    let hand = Rc::new(RefCell::new(Hand::default()));
    let then = Rc::new(then);
    let mut listeners: Vec<EventListener> = ["pointerdown", "pointermove", "pointerup", "pointercancel"]
        .into_iter()
        .map(|name| {
            let (hand, then) = (hand.clone(), then.clone());
            EventListener::new(&element, name, move |event: &Event| {
                let Some(event) = event.dyn_ref::<PointerEvent>() else { return };
                let rested = hand.borrow_mut().felt(event, name, id, shown, may_pan);
                if let Some(now) = rested {
                    then(now);
                }
            })
        })
        .collect();
    listeners.push(ended_drags(element.clone())?);
    let options = EventListenerOptions::enable_prevent_default();
    listeners.push(EventListener::new_with_options(&element, "wheel", options, move |event| {
        let Some(event) = event.dyn_ref::<WheelEvent>() else { return };
        if !event.ctrl_key() && !event.meta_key() && !may_pan {
            return;
        }
        event.prevent_default();
        let Some(drawing) = Drawing::find(id) else { return };
        let client = client(event);
        let factor = (1.0 + event.delta_y() * A_NOTCH).max(0.5).min(2.0);
        then(drawing.looked_at(shown, drawing.place(shown, client), client, factor));
    }));
    Some(listeners)
}

/// Swallows the click on the drawing that ends a drag. It listens on the window, because the page's own
/// listeners stand above the drawing and hear a click before it does.
fn ended_drags(drawing: Element) -> Option<EventListener> {
    let first = EventListenerOptions {
        phase: gloo::events::EventListenerPhase::Capture,
        ..EventListenerOptions::enable_prevent_default()
    };
    let window = window()?;
    Some(EventListener::new_with_options(&window, "click", first, move |event| {
        let target = event.target().and_then(|target| target.dyn_into::<Node>().ok());
        if DRAGGED.take() && drawing.contains(target.as_ref()) {
            event.stop_propagation();
            event.prevent_default();
        }
    }))
}
