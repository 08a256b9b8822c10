//! What is said to the reader: a refusal with its way out, a link that was opened or not.

use yew::prelude::*;

use crate::platform::updates;
use crate::store::{Msg, Notice};
use crate::text::{self, Units};

/// Properties of [`NoticeBar`].
#[derive(PartialEq, Properties)]
pub struct NoticeBarProps {
    /// What to say.
    pub notice: Option<Notice>,
    /// The reader's units.
    pub units: Units,
    /// Told what happens.
    pub send: Callback<Msg>,
}

/// The bar; it is always in the page, so that a screen reader hears what appears in it.
#[component]
pub fn NoticeBar(props: &NoticeBarProps) -> Html {
    let words = props.notice.as_ref().map(|notice| match notice {
        Notice::Refused(refusal) => text::refusal(refusal, props.units),
        Notice::Skipped(refusals, product) => text::skipped(refusals, *product),
        Notice::LinkOpened => text::LINK_OPENED.into(),
        Notice::LinkRefused(error) => text::link_error(*error).into(),
        Notice::Lesson(_) => text::LESSON_HERE.into(),
        Notice::MemoryRefused(error) => text::memory_error(*error).into(),
        Notice::NotRemembered => text::NOT_REMEMBERED.into(),
        Notice::Copied => text::COPIED.into(),
        Notice::NotCopied => text::NOT_COPIED.into(),
        Notice::Saved => text::SAVED.into(),
        Notice::NotSaved => text::NOT_SAVED.into(),
        Notice::FileTooLong => text::FILE_TOO_LONG.into(),
        Notice::Newer => text::NEWER.into(),
    });
    let quiet = {
        let send = props.send.clone();
        Callback::from(move |_: MouseEvent| send.emit(Msg::Quiet))
    };
    html! {
        <div class={classes!("notice", words.is_some().then_some("notice-shown"))} role="alert">
            if let Some(words) = words {
                <p>{ words }</p>
                if let Some(Notice::Lesson(link)) = &props.notice {
                    <a class="tool" href={format!("learn.html#{link}")}>{ text::OPEN_LESSON }</a>
                }
                if props.notice == Some(Notice::Newer) {
                    <button type="button" class="tool" onclick={|_: MouseEvent| updates::take_over()}>{ text::USE_NEWER }</button>
                }
                <button type="button" class="tool" onclick={quiet}>{ text::DISMISS }</button>
            }
        </div>
    }
}
