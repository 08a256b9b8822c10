//! Owns what a person sees or hears read out. Each waits until it is there, and fails if the page complained.

use serde_json::json;

use crate::act::REACH;
use crate::find::{Found, Name, Place, Role, all, one};
use crate::page::Page;

/// It is there.
#[track_caller]
pub(crate) fn shown<'a>(place: impl Into<Place<'a>>, role: Role, name: impl Into<Name<'a>>) {
    let (place, name) = (place.into(), name.into());
    place.page.until("to see it", || one(place, role, name).map(drop));
    place.page.expect_no_complaint();
}

/// There is none, or no longer.
#[track_caller]
pub(crate) fn gone<'a>(place: impl Into<Place<'a>>, role: Role, name: impl Into<Name<'a>>) {
    let (place, name) = (place.into(), name.into());
    place.page.until("it to be gone", || match all(place, role, name)?.len() {
        0 => Ok(()),
        count => Err(format!("there is still {role:?} {name:?}: {count}")),
    });
    place.page.expect_no_complaint();
}

/// Its text, line by line as it is laid out.
#[track_caller]
pub(crate) fn text<'a>(place: impl Into<Place<'a>>, role: Role, name: impl Into<Name<'a>>) -> String {
    let (place, name) = (place.into(), name.into());
    let text = place.page.until("to read it", || text_now(place, role, name));
    place.page.expect_no_complaint();
    text
}

/// Its text holds these words, now or soon.
#[track_caller]
pub(crate) fn says<'a>(place: impl Into<Place<'a>>, role: Role, name: impl Into<Name<'a>>, words: &str) {
    let (place, name) = (place.into(), name.into());
    place.page.until(&format!("{role:?} {name:?} to say {words:?}"), || {
        let text = text_now(place, role, name)?;
        if text.contains(words) { Ok(()) } else { Err(format!("it says {text:?}")) }
    });
    place.page.expect_no_complaint();
}

/// Its text is another than `before`, now or soon; gives the new one.
#[track_caller]
pub(crate) fn next_text<'a>(
    place: impl Into<Place<'a>>,
    role: Role,
    name: impl Into<Name<'a>>,
    before: &str,
) -> String {
    let (place, name) = (place.into(), name.into());
    let text = place.page.until("it to change", || {
        let text = text_now(place, role, name)?;
        if text == before { Err(format!("it still says {text:?}")) } else { Ok(text) }
    });
    place.page.expect_no_complaint();
    text
}

/// What stands in a field, or is chosen in a list.
#[track_caller]
pub(crate) fn value<'a>(place: impl Into<Place<'a>>, role: Role, name: impl Into<Name<'a>>) -> String {
    let (place, name) = (place.into(), name.into());
    let value = place.page.until("to read it", || one(place, role, name).map(|found| found.value));
    place.page.expect_no_complaint();
    value
}

/// It has the state: `pressed`, `checked`, `disabled`, `expanded`, `focused`, `selected`, `invalid`.
#[track_caller]
pub(crate) fn is<'a>(place: impl Into<Place<'a>>, role: Role, name: impl Into<Name<'a>>, state: &str) {
    state_is(place.into(), role, name.into(), state, true);
}

/// It has not, or no longer, the state.
#[track_caller]
pub(crate) fn is_not<'a>(place: impl Into<Place<'a>>, role: Role, name: impl Into<Name<'a>>, state: &str) {
    state_is(place.into(), role, name.into(), state, false);
}

/// How many there are, just now.
#[track_caller]
pub(crate) fn count<'a>(place: impl Into<Place<'a>>, role: Role, name: impl Into<Name<'a>>) -> usize {
    all(place.into(), role, name.into()).unwrap_or_else(|error| panic!("{error}")).len()
}

/// The names of all that there are of a role, just now, in the order of the page.
#[track_caller]
pub(crate) fn names<'a>(place: impl Into<Place<'a>>, role: Role) -> Vec<String> {
    let found = all(place.into(), role, Name::Any).unwrap_or_else(|error| panic!("{error}"));
    found.into_iter().map(|found| found.name).collect()
}

/// The texts of all that there are of a role, just now, in the order of the page: for lines and rows, which have no name.
#[track_caller]
pub(crate) fn texts<'a>(place: impl Into<Place<'a>>, role: Role) -> Vec<String> {
    let place = place.into();
    place.page.until("to read them all", || {
        all(place, role, Name::Any)?.iter().map(|found| laid_out(place, found)).collect()
    })
}

/// It is on the screen as it is scrolled now, and not wholly covered.
#[track_caller]
pub(crate) fn in_view<'a>(place: impl Into<Place<'a>>, role: Role, name: impl Into<Name<'a>>) {
    let (place, name) = (place.into(), name.into());
    place.page.until("it on the screen", || {
        let point = one(place, role, name)?.call(place.page, REACH, &[json!(false)])?;
        point["covered"]
            .as_str()
            .map_or(Ok(()), |cover| Err(format!("{role:?} {name:?} is covered by {cover}")))
    });
    place.page.expect_no_complaint();
}

/// Nothing sticks out to the side: the page can be read without scrolling sideways.
#[track_caller]
pub(crate) fn no_sideways_scrolling(page: &Page) {
    let out = sticking_out(page);
    assert!(out.is_none(), "{out:?}");
}

/// How wide the page is where it is wider than the screen, and what of it is.
#[track_caller]
pub(crate) fn sticking_out(page: &Page) -> Option<String> {
    let found = page.script(
        "(({ scrollWidth, clientWidth }) => scrollWidth <= clientWidth ? null : `${scrollWidth} on ${clientWidth}: ${ \
          [...document.querySelectorAll('body *')].filter((part) => part.getBoundingClientRect().right > clientWidth + 0.5) \
          .map((part) => `${part.tagName} ${part.className?.baseVal ?? part.className}`).slice(0, 6).join('; ')}`)(document.documentElement)",
    );
    found.as_str().map(str::to_owned)
}

fn text_now(place: Place, role: Role, name: Name) -> Result<String, String> {
    laid_out(place, &one(place, role, name)?)
}

fn laid_out(place: Place, found: &Found) -> Result<String, String> {
    // SVG has no laid-out text, only what stands in it.
    let text = found.call(place.page, "function () { return this.innerText ?? this.textContent; }", &[])?;
    Ok(text.as_str().unwrap_or_default().trim().to_owned())
}

#[track_caller]
fn state_is(place: Place, role: Role, name: Name, state: &str, wanted: bool) {
    place.page.until(&format!("{role:?} {name:?} with {state}: {wanted}"), || {
        if one(place, role, name)?.is(state) == wanted {
            Ok(())
        } else {
            Err("it is the other way round".to_owned())
        }
    });
    place.page.expect_no_complaint();
}
