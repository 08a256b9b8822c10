//! The words of the trade: searched, or by their letters.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::platform::focus;
use crate::text;

/// The letters that words begin with, each once.
fn letters() -> Vec<char> {
    let mut letters: Vec<char> = text::GLOSSARY.iter().filter_map(|(word, _)| word.chars().next()).collect();
    letters.dedup();
    letters
}

fn id(letter: char) -> String {
    format!("words-{letter}")
}

/// The part.
#[component]
pub(super) fn Words() -> Html {
    let typed = use_state(String::new);
    let wanted = typed.trim().to_lowercase();
    let found: Vec<_> = text::GLOSSARY
        .iter()
        .filter(|(word, says)| {
            word.to_lowercase().contains(&wanted)
                || (wanted.len() > 2 && says.to_lowercase().contains(&wanted))
        })
        .collect();
    let oninput = {
        let typed = typed.clone();
        Callback::from(move |event: InputEvent| {
            typed.set(event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let mut last = None;
    html! {
        <section class="card" aria-label={text::WORDS}>
            <h2>{ text::WORDS }</h2>
            <label class="field"><span class="field-label">{ text::FIND_WORD }</span>
                <input type="text" autocomplete="off" value={(*typed).clone()} {oninput} /></label>
            if wanted.is_empty() {
                <nav class="letters" aria-label={text::LETTERS}>
                    { for letters().into_iter().map(|letter| html! {
                        <button key={letter.to_string()} type="button" class="segment" onclick={move |_: MouseEvent| { focus::reveal(&id(letter)); focus::focus(&id(letter)); }}>{ letter }</button>
                    }) }
                </nav>
            }
            <p class="hint" role="status">{ if found.is_empty() { text::no_word(typed.trim()) } else { text::words_found(found.len()) } }</p>
            <dl class="taught words">
                { for found.into_iter().map(|(word, says)| {
                    let letter = word.chars().next();
                    let begins = letter.filter(|_| letter != last);
                    last = letter;
                    html! { <div key={*word}><dt id={begins.map(id)} tabindex={begins.map(|_| "-1")}>{ *word }</dt><dd>{ *says }</dd></div> }
                }) }
            </dl>
        </section>
    }
}
