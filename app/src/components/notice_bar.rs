//! What is said to the reader: a refusal with its way out, a link that was opened or not.

use yew::prelude::*;

use crate::platform::updates;
use crate::store::{Msg, Notice};
use crate::text::{self, Units};

/// The bar; it is always in the page, so that a screen reader hears what appears in it.
pub fn notice_bar(notice: Option<&Notice>, units: Units, send: &Callback<Msg>) -> Html {
    let words = notice.map(|notice| match notice {
        Notice::Refused(refusal) => text::refusal(refusal, units),
        Notice::Skipped(refusals, product) => text::skipped(refusals, *product),
        Notice::LinkOpened => text::LINK_OPENED.into(),
        Notice::KeptOpened => text::KEPT_OPENED.into(),
        Notice::OpenedUnkept => text::OPENED_UNKEPT.into(),
        Notice::BothKept => text::BOTH_KEPT.into(),
        Notice::LinkRefused(error) => text::link_error(*error).into(),
        Notice::Lesson(_) => text::LESSON_HERE.into(),
        Notice::MemoryRefused(error) => text::memory_error(*error).into(),
        Notice::NotRemembered => text::NOT_REMEMBERED.into(),
        Notice::KeptFull => text::KEPT_FULL.into(),
        Notice::Copied => text::COPIED.into(),
        Notice::NotCopied => text::NOT_COPIED.into(),
        Notice::Saved => text::SAVED.into(),
        Notice::NotSaved => text::NOT_SAVED.into(),
        Notice::FileTooLong => text::FILE_TOO_LONG.into(),
        Notice::Newer => text::NEWER.into(),
    });
    let on = |message: Msg| send.reform(move |_: MouseEvent| message.clone());
    let is_link = notice == Some(&Notice::LinkOpened);
    html! {
        <div class={classes!("notice", words.is_some().then_some("notice-shown"))} role="alert">
            if let Some(words) = words {
                <p>{ words }</p>
                if let Some(Notice::Lesson(link)) = notice {
                    <a class="tool" href={format!("learn.html#{link}")}>{ text::OPEN_LESSON }</a>
                }
                if notice == Some(&Notice::Newer) {
                    <button type="button" class="tool" onclick={|_: MouseEvent| updates::take_over()}>{ text::USE_NEWER }</button>
                }
                if is_link {
                    <button type="button" class="tool" onclick={on(Msg::KeepMine { both: false })}>{ text::KEEP_MINE }</button>
                }
                <button type="button" class="tool" onclick={on(Msg::Quiet)}>{ if is_link { text::OPEN_THEIRS } else { text::DISMISS } }</button>
                if is_link {
                    <button type="button" class="tool" onclick={on(Msg::KeepMine { both: true })}>{ text::KEEP_BOTH }</button>
                }
            }
        </div>
    }
}
