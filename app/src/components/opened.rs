//! What has just been opened over the page or beside it: eye and keyboard go there.

use yew::prelude::*;

use crate::platform::focus;

/// Properties of [`Opened`].
#[derive(PartialEq, Properties)]
pub(in crate::components) struct OpenedProps {
    /// The element that the keyboard goes to.
    pub focus: &'static str,
    /// What has to be seen, if that is another.
    #[prop_or_default]
    pub reveal: Option<&'static str>,
}

/// Stands in what was opened, shows nothing, and acts once, and again where the keyboard has to go on.
#[component]
pub(in crate::components) fn Opened(props: &OpenedProps) -> Html {
    let (wanted, seen) = (props.focus, props.reveal);
    use_effect_with(wanted, move |wanted| {
        if let Some(seen) = seen {
            focus::reveal(seen);
        }
        focus::focus(wanted);
    });
    Html::default()
}
