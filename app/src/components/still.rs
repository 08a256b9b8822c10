//! What stays as it is: an edit changes one muscle of the drawing, one row of the list, a few of the tally. The rest is
//! compared and not drawn anew.

use std::any::Any;
use std::rc::Rc;

use yew::prelude::*;
use yew::virtual_dom::Key;

/// A part of the page that is drawn anew when it is no longer equal to what it was.
pub(in crate::components) trait Still: PartialEq + 'static {
    /// What it looks like.
    fn draw(&self) -> Html;
}

/// A [`Still`] of any kind, so that one component serves all of them: each component is 1.6 kB of the page.
trait AnyStill {
    fn draw(&self) -> Html;
    fn is(&self, other: &dyn AnyStill) -> bool;
    fn any(&self) -> &dyn Any;
}

impl<T: Still> AnyStill for T {
    fn draw(&self) -> Html {
        Still::draw(self)
    }

    fn is(&self, other: &dyn AnyStill) -> bool {
        other.any().downcast_ref::<T>() == Some(self)
    }

    fn any(&self) -> &dyn Any {
        self
    }
}

#[derive(Properties)]
struct HeldProps {
    what: Rc<dyn AnyStill>,
}

impl PartialEq for HeldProps {
    fn eq(&self, other: &Self) -> bool {
        self.what.is(&*other.what)
    }
}

#[component]
fn Held(props: &HeldProps) -> Html {
    props.what.draw()
}

/// Puts it on the page, with its key among those beside it.
pub(in crate::components) fn still(key: impl Into<Key>, what: impl Still) -> Html {
    html! { <Held key={key.into()} what={Rc::new(what) as Rc<dyn AnyStill>} /> }
}

/// A callback that stays the same from drawing to drawing and does what the latest one does: whoever is given it need not
/// be drawn anew.
#[hook]
pub(in crate::components) fn use_latest<T: 'static>(callback: Callback<T>) -> Callback<T> {
    let latest = use_mut_ref(Callback::noop);
    latest.replace(callback);
    use_callback((), move |value: T, ()| {
        let callback = latest.borrow().clone();
        callback.emit(value);
    })
}
