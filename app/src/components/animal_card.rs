//! The animal and what was weighed. A number that cannot be believed is explained beside its field, and the
//! last good plan stays.

use hindsaddle_model::animal::{Age, Animal, AnimalError, Condition, Legs, Sex, Species, Stage, Weighed};
use hindsaddle_model::plan::Action;
use hindsaddle_model::units::Mass;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::controls::{Choosable, choice, choice_of, segments, segments_of};
use crate::app::remember;
use crate::platform::{address, storage};
use crate::store::Msg;
use crate::text::{self, Units};

/// Properties of [`AnimalCard`].
#[derive(PartialEq, Properties)]
pub struct AnimalCardProps {
    /// The animal.
    pub animal: Animal,
    /// What it is, in a line.
    pub line: AttrValue,
    /// The title of the plan.
    pub title: AttrValue,
    /// The reader's units.
    pub units: Units,
    /// Whether the form is open without being asked: there is room for it.
    pub roomy: bool,
    /// Whether the title travels with the link.
    pub names_travel: bool,
    /// Told what happens.
    pub send: Callback<Msg>,
}

/// What the form says, which may not be an animal yet.
#[derive(Clone, PartialEq)]
struct Draft {
    species: Species,
    sex: Sex,
    age: Age,
    condition: Condition,
    stage: Stage,
    legs: Legs,
    typed: String,
}

impl Draft {
    fn of(animal: &Animal, units: Units) -> Self {
        let (legs, typed) = match animal.weighed() {
            Weighed::Typical => (Legs::On, String::new()),
            Weighed::FieldDressed(mass, legs) => (legs, text::weight_field(mass, units)),
            Weighed::Live(mass) | Weighed::Hanging(mass) | Weighed::Deboned(mass) => {
                (Legs::On, text::weight_field(mass, units))
            }
            Weighed::Girth(girth) => (Legs::On, text::girth_field(girth, units)),
        };
        Self {
            species: animal.species(),
            sex: animal.sex(),
            age: animal.age(),
            condition: animal.condition(),
            stage: animal.weighed().stage(),
            legs,
            typed,
        }
    }

    /// The animal, or what is wrong in a sentence.
    fn animal(&self, units: Units) -> Result<Animal, String> {
        let number = || text::typed(&self.typed).ok_or_else(|| text::NOT_A_NUMBER.to_owned());
        let mass = || -> Result<Mass, String> { Ok(text::typed_mass(number()?, units)) };
        let weighed = match self.stage {
            Stage::Typical => Weighed::Typical,
            Stage::Live => Weighed::Live(mass()?),
            Stage::FieldDressed => Weighed::FieldDressed(mass()?, self.legs),
            Stage::Hanging => Weighed::Hanging(mass()?),
            Stage::Deboned => Weighed::Deboned(mass()?),
            Stage::Girth => Weighed::Girth(text::typed_girth(number()?, units)),
        };
        let condition =
            if self.condition.suits(self.sex, self.age) { self.condition } else { Condition::Ordinary };
        Animal::new(self.species, self.sex, self.age, condition, weighed)
            .map_err(|error: AnimalError| text::animal_error(&error, units))
    }
}

/// Told what is chosen, changes the draft by it.
fn edit<T: 'static>(draft: &Draft, change: &Callback<Draft>, with: fn(&mut Draft, T)) -> Callback<T> {
    let draft = draft.clone();
    change.reform(move |chosen: T| {
        let mut edited = draft.clone();
        with(&mut edited, chosen);
        edited
    })
}

/// The card.
#[component]
pub fn AnimalCard(props: &AnimalCardProps) -> Html {
    let units = props.units;
    let animal = props.animal;
    let draft = use_state(|| Draft::of(&animal, units));
    let wrong = use_state(|| None::<String>);
    {
        // Undo, a link or other units change the animal under the form.
        let (draft, wrong) = (draft.setter(), wrong.setter());
        use_effect_with((animal, units), move |(animal, units)| {
            draft.set(Draft::of(animal, *units));
            wrong.set(None);
        });
    }
    let change = {
        let (draft, wrong, send) = (draft.clone(), wrong.setter(), props.send.clone());
        Callback::from(move |edit: Draft| {
            match edit.animal(units) {
                Ok(animal) => {
                    wrong.set(None);
                    send.emit(Msg::Act(Action::SetAnimal(animal)));
                }
                Err(sentence) => wrong.set(Some(sentence)),
            }
            draft.set(edit);
        })
    };
    let conditions: Vec<Condition> =
        Condition::ALL.into_iter().filter(|condition| condition.suits(draft.sex, draft.age)).collect();
    let on_condition = {
        let conditions = conditions.clone();
        edit(&draft, &change, |draft, condition| draft.condition = condition)
            .reform(move |place: usize| conditions.get(place).copied().unwrap_or(Condition::Ordinary))
    };
    let on_typed = {
        let (draft, change) = (draft.clone(), change.clone());
        Callback::from(move |event: Event| {
            let typed = event.target_unchecked_into::<HtmlInputElement>().value();
            change.emit(Draft { typed, ..(*draft).clone() });
        })
    };
    let on_legs = {
        let (draft, change) = (draft.clone(), change.clone());
        Callback::from(move |event: Event| {
            let on = event.target_unchecked_into::<HtmlInputElement>().checked();
            change.emit(Draft { legs: if on { Legs::On } else { Legs::Off }, ..(*draft).clone() });
        })
    };
    let species = draft.species;
    let is_example = animal == Animal::example();
    let (label, unit) = match draft.stage {
        Stage::Girth => (text::GIRTH, text::girth_unit(units)),
        Stage::Typical | Stage::Live | Stage::FieldDressed | Stage::Hanging | Stage::Deboned => {
            (text::WEIGHT, text::weight_unit(units))
        }
    };
    html! {
        <details class="card animal" open={props.roomy} aria-label={text::ANIMAL}>
            <summary>
                <h2>{ &props.line }</h2>
                if is_example { <span class="badge">{ text::EXAMPLE }</span> }
            </summary>
            <div class="fields">
                { choice_of(text::SPECIES, &Species::ALL, text::species, species, &edit(&draft, &change, |draft, species| draft.species = species)) }
                { choice_of(text::SEX, &Sex::ALL, |sex| text::sex(sex, species), draft.sex, &edit(&draft, &change, |draft, sex| draft.sex = sex)) }
                { choice_of(text::AGE, &Age::ALL, text::age, draft.age, &edit(&draft, &change, |draft, age| draft.age = age)) }
                { choice(text::CONDITION, conditions.iter().map(|one| Choosable::new(text::condition(*one))).collect(), conditions.iter().position(|one| *one == draft.condition).or(Some(0)), &on_condition) }
                { choice_of(text::STAGE, &Stage::ALL, text::stage, draft.stage, &edit(&draft, &change, |draft, stage| draft.stage = stage)) }
                if draft.stage != Stage::Typical {
                    <label class="field">
                        <span class="field-label">{ label }</span>
                        <span class="with-unit">
                            <input type="text" inputmode="decimal" autocomplete="off" aria-label={label} value={draft.typed.clone()}
                                aria-invalid={wrong.is_some().to_string()} aria-describedby="animal-hint" onchange={on_typed} />
                            <span class="unit">{ unit }</span>
                        </span>
                    </label>
                }
                if draft.stage == Stage::FieldDressed {
                    <label class="tick"><input type="checkbox" checked={draft.legs == Legs::On} onchange={on_legs} />{ text::LEGS_ON }</label>
                }
                { segments_of(text::UNITS, &Units::ALL, text::weight_unit, units, &props.send.reform(Msg::Units)) }
                { languages(&props.send) }
            </div>
            <p id="animal-hint" class={if wrong.is_some() { "hint wrong" } else { "hint" }} role="status">
                { wrong.as_deref().unwrap_or(text::stage_hint(draft.stage)) }
            </p>
            { title(props) }
        </details>
    }
}

/// The title of the plan, and whether it travels.
fn title(props: &AnimalCardProps) -> Html {
    let on_title = props.send.reform(|event: Event| {
        Msg::Act(Action::SetTitle(event.target_unchecked_into::<HtmlInputElement>().value()))
    });
    let on_travel = props
        .send
        .reform(|event: Event| Msg::NamesTravel(event.target_unchecked_into::<HtmlInputElement>().checked()));
    let title = &props.title;
    html! {
        <>
            <label class="field">
                <span class="field-label">{ text::TITLE }</span>
                <input type="text" aria-label={text::TITLE} placeholder={text::TITLE_HINT} maxlength="40" autocomplete="off"
                    value={title.clone()} onchange={on_title} />
            </label>
            if !title.is_empty() {
                <label class="tick"><input type="checkbox" checked={props.names_travel} onchange={on_travel} />{ text::TITLE_TRAVELS }</label>
            }
        </>
    }
}

/// The reader's language. A program speaks one: assets/boot.js starts the one that was chosen.
fn languages(send: &Callback<Msg>) -> Html {
    let send = send.clone();
    let on_choose = Callback::from(move |place: usize| {
        if remember(storage::LANGUAGE, text::LANGUAGES[place].0, &send) {
            address::reload();
        }
    });
    let options = text::LANGUAGES.map(|(_, name)| Choosable::new(name)).to_vec();
    let chosen = text::LANGUAGES.iter().position(|(code, _)| *code == text::LANGUAGE);
    segments(text::LANGUAGE_CHOICE, options, chosen, &on_choose)
}
