//! Owns what a person sees or hears read out. Each waits until it is there, and fails if the page complained.

use serde_json::json;

use crate::act::REACH;
use crate::find::{Found, Name, Role, all, one};
use crate::page::Page;

/// It is there.
#[track_caller]
pub(crate) fn shown<'a>(page: &Page, role: Role, name: impl Into<Name<'a>>) {
    let name = name.into();
    page.until("to see it", || one(page, role, name).map(drop));
    page.expect_no_complaint();
}

/// There is none, or no longer.
#[track_caller]
pub(crate) fn gone<'a>(page: &Page, role: Role, name: impl Into<Name<'a>>) {
    let name = name.into();
    page.until("it to be gone", || match all(page, role, name)?.len() {
        0 => Ok(()),
        count => Err(format!("there is still {role:?} {name:?}: {count}")),
    });
    page.expect_no_complaint();
}

/// Its text, line by line as it is laid out.
#[track_caller]
pub(crate) fn text<'a>(page: &Page, role: Role, name: impl Into<Name<'a>>) -> String {
    let name = name.into();
    let text = page.until("to read it", || text_now(page, role, name));
    page.expect_no_complaint();
    text
}

/// Its text holds these words, now or soon.
#[track_caller]
pub(crate) fn says<'a>(page: &Page, role: Role, name: impl Into<Name<'a>>, words: &str) {
    let name = name.into();
    page.until(&format!("{role:?} {name:?} to say {words:?}"), || {
        let text = text_now(page, role, name)?;
        if text.contains(words) { Ok(()) } else { Err(format!("it says {text:?}")) }
    });
    page.expect_no_complaint();
}

/// Its text is another than `before`, now or soon; gives the new one.
#[track_caller]
pub(crate) fn next_text<'a>(page: &Page, role: Role, name: impl Into<Name<'a>>, before: &str) -> String {
    let name = name.into();
    let text = page.until("it to change", || {
        let text = text_now(page, role, name)?;
        if text == before { Err(format!("it still says {text:?}")) } else { Ok(text) }
    });
    page.expect_no_complaint();
    text
}

/// What stands in a field, or is chosen in a list.
#[track_caller]
pub(crate) fn value<'a>(page: &Page, role: Role, name: impl Into<Name<'a>>) -> String {
    let name = name.into();
    let value = page.until("to read it", || one(page, role, name).map(|found| found.value));
    page.expect_no_complaint();
    value
}

/// It has the state: `pressed`, `checked`, `disabled`, `expanded`, `focused`, `selected`, `invalid`.
#[track_caller]
pub(crate) fn is<'a>(page: &Page, role: Role, name: impl Into<Name<'a>>, state: &str) {
    state_is(page, role, name.into(), state, true);
}

/// How many there are, just now.
#[track_caller]
pub(crate) fn count<'a>(page: &Page, role: Role, name: impl Into<Name<'a>>) -> usize {
    all(page, role, name.into()).unwrap_or_else(|error| panic!("{error}")).len()
}

/// The names of all that there are of a role, just now, in the order of the page.
#[track_caller]
pub(crate) fn names(page: &Page, role: Role) -> Vec<String> {
    let found = all(page, role, Name::Any).unwrap_or_else(|error| panic!("{error}"));
    found.into_iter().map(|found| found.name).collect()
}

/// It is on the screen as it is scrolled now, and not wholly covered.
#[track_caller]
pub(crate) fn in_view<'a>(page: &Page, role: Role, name: impl Into<Name<'a>>) {
    let name = name.into();
    page.until("it on the screen", || {
        let point = one(page, role, name)?.call(page, REACH, &[json!(false)])?;
        point["covered"]
            .as_str()
            .map_or(Ok(()), |cover| Err(format!("{role:?} {name:?} is covered by {cover}")))
    });
    page.expect_no_complaint();
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

fn text_now(page: &Page, role: Role, name: Name) -> Result<String, String> {
    laid_out(page, &one(page, role, name)?)
}

fn laid_out(page: &Page, found: &Found) -> Result<String, String> {
    // SVG has no laid-out text, only what stands in it.
    let text = found.call(page, "function () { return this.innerText ?? this.textContent; }", &[])?;
    Ok(text.as_str().unwrap_or_default().trim().to_owned())
}

#[track_caller]
fn state_is(page: &Page, role: Role, name: Name, state: &str, wanted: bool) {
    page.until(&format!("{role:?} {name:?} with {state}: {wanted}"), || {
        if one(page, role, name)?.is(state) == wanted {
            Ok(())
        } else {
            Err("it is the other way round".to_owned())
        }
    });
    page.expect_no_complaint();
}
