//! The state of the page, and what each message makes of it. No markup, no browser, no clock.
//!
//! `reduce` is pure; what has to reach the address, the storage or the clipboard is an effect of
//! [`crate::app`] on the state that comes out.

use std::cell::RefCell;
use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Region, Side, Sides, View};
use hindsaddle_model::forecast::{Forecast, Forecaster, Line};
use hindsaddle_model::link::{self, Names};
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::product::Product;
use hindsaddle_model::season::{Change, Season};
use yew::Reducible;

pub use crate::look::{Look, Naming, Tool};
pub use crate::message::Msg;
pub use crate::notice::Notice;
use crate::plate::figure::plate;
use crate::plate::peel::LAYERS;
use crate::text::Units;

/// How many steps back are kept. More than a person makes in a weekend.
const MOST_STEPS: usize = 1000;

/// How many of them outlive a reload and go along to the other page.
const STEPS_KEPT: usize = 100;

/// A number whose working is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Topic {
    /// A line of the ledger.
    Line(Line),
    /// Packages of a product.
    Product(Product),
    /// All packages.
    Packages,
}

/// Everything the page shows.
#[derive(Clone, Debug)]
pub struct State {
    /// All animals.
    pub season: Rc<Season>,
    /// The place of the one that is shown.
    pub at: usize,
    /// Its plan.
    pub plan: Rc<Plan>,
    /// What it gives.
    pub forecast: Rc<Forecast>,
    /// What worked that out, and keeps what the next edit leaves alike.
    forecaster: Rc<RefCell<Forecaster>>,
    past: Vec<Step>,
    future: Vec<Step>,
    /// What another season took the place of, to be put aside: a step back is gone with the window.
    pub aside: Option<Rc<Season>>,
    /// Pounds or kilograms.
    pub units: Units,
    /// How the plate is looked at.
    pub look: Look,
    /// What a tap on it is for.
    pub tool: Tool,
    /// Whether the sheets for a class stand in for the page.
    pub class_sheets: bool,
    /// The muscle being decided.
    pub muscle: Option<Muscle>,
    /// Which sides a decision is for.
    pub sides: Sides,
    /// The number whose working is shown.
    pub topic: Option<Topic>,
    /// What is being said.
    pub notice: Option<Notice>,
    /// Whether the title travels with the link.
    pub names_travel: bool,
}

/// What a step back brings again.
#[derive(Clone, Debug)]
struct Step {
    season: Rc<Season>,
    at: usize,
    /// The season as a link, which is remembered after every edit: a hundred of them are not written anew each time.
    link: Rc<str>,
}

impl Step {
    fn new(season: Rc<Season>, at: usize) -> Self {
        let link = link::write(&season, Names::Included).into();
        Self { season, at, link }
    }
}

/// Plans and forecasts are compared by their place: every new one is made once, and a thousand steps of history
/// are not read through for each message. Only the forecaster is left out: it is a memory of work done, and shows
/// nothing.
impl PartialEq for State {
    fn eq(&self, other: &Self) -> bool {
        let same = |a: &[Step], b: &[Step]| {
            a.len() == b.len() && a.iter().zip(b).all(|(a, b)| Rc::ptr_eq(&a.season, &b.season))
        };
        let same_aside = match (&self.aside, &other.aside) {
            (Some(one), Some(other)) => Rc::ptr_eq(one, other),
            (None, None) => true,
            (Some(_), None) | (None, Some(_)) => false,
        };
        Rc::ptr_eq(&self.season, &other.season)
            && self.at == other.at
            && same_aside
            && Rc::ptr_eq(&self.plan, &other.plan)
            && Rc::ptr_eq(&self.forecast, &other.forecast)
            && same(&self.past, &other.past)
            && same(&self.future, &other.future)
            && (self.units, self.look, self.tool, self.class_sheets, self.muscle)
                == (other.units, other.look, other.tool, other.class_sheets, other.muscle)
            && (self.sides, self.topic, &self.notice, self.names_travel)
                == (other.sides, other.topic, &other.notice, other.names_travel)
    }
}

/// The season as the text of a link, with its names if those travel.
pub fn link_of(season: &Season, names_travel: bool) -> String {
    link::write(season, if names_travel { Names::Included } else { Names::LeftOut })
}

impl State {
    /// The page on the first animal of `season`. `before` is one that a link took the place of: it is one step
    /// back.
    pub fn new(season: Season, before: Option<Season>, units: Units, notice: Option<Notice>) -> Self {
        let plan = season.animal(0).clone();
        let mut forecaster = Forecaster::default();
        Self {
            forecast: Rc::new(forecaster.forecast(&plan)),
            forecaster: Rc::new(RefCell::new(forecaster)),
            plan: Rc::new(plan),
            season: Rc::new(season),
            at: 0,
            past: before.iter().map(|season| Step::new(Rc::new(season.clone()), 0)).collect(),
            aside: before.map(Rc::new),
            future: Vec::new(),
            units,
            look: Look {
                view: View::Outer,
                side: Side::Left,
                region: None,
                lens: None,
                peel: 0,
                naming: Naming::Off,
            },
            tool: Tool::Decide,
            class_sheets: false,
            muscle: None,
            sides: Sides::Both,
            topic: None,
            notice,
            names_travel: false,
        }
    }

    /// See [`link_of`].
    pub fn link(&self) -> String {
        link_of(&self.season, self.names_travel)
    }

    /// The latest steps back, oldest first, each a line of text.
    pub fn steps(&self) -> String {
        let kept = self.past.len().saturating_sub(STEPS_KEPT);
        let lines: Vec<&str> = self.past[kept..].iter().map(|step| &*step.link).collect();
        lines.join("\n")
    }

    /// The same state with steps back from [`Self::steps`]; a line that is no plan is left out.
    #[must_use]
    pub fn with_steps(mut self, steps: &str) -> Self {
        let seasons = steps.lines().filter_map(|line| link::read(line).ok()).map(Rc::new);
        let at = self.at;
        self.past =
            seasons.map(|season| Step::new(season, at)).chain(std::mem::take(&mut self.past)).collect();
        self
    }

    /// Whether there is a step back.
    pub fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// Whether there is a step forward.
    pub fn can_redo(&self) -> bool {
        !self.future.is_empty()
    }

    /// The same page on an animal of a season. An animal that is as it was keeps its forecast.
    #[must_use]
    pub fn on(&self, season: Rc<Season>, at: usize) -> Self {
        let at = at.min(season.animals().len() - 1);
        let mut next = Self { at, notice: None, ..self.clone() };
        if *season.animal(at) != *self.plan {
            next.plan = Rc::new(season.animal(at).clone());
            next.forecast = Rc::new(self.forecaster.borrow_mut().forecast(&next.plan));
        }
        next.season = season;
        next
    }

    fn step(&self) -> Step {
        Step::new(self.season.clone(), self.at)
    }

    fn remembering(&self, season: Rc<Season>, at: usize) -> Self {
        let mut next = self.on(season, at);
        next.past.push(self.step());
        if next.past.len() > MOST_STEPS {
            next.past.remove(0);
        }
        next.future.clear();
        next
    }

    /// A change of the season, and the animal that is shown after it.
    fn change(&self, change: Change) -> Self {
        let product = match &change {
            Change::Act(_, Action::AssignRegion { product, .. }) => Some(*product),
            Change::Act(..)
            | Change::AddLike(_)
            | Change::CopyCuts { .. }
            | Change::TakeCuts(..)
            | Change::Move { .. }
            | Change::Remove(_)
            | Change::SetPartners(_) => None,
        };
        let at = match &change {
            Change::AddLike(place) => place + 1,
            Change::Move { to, .. } => *to,
            Change::Remove(place) if *place < self.at => self.at - 1,
            Change::Act(..)
            | Change::CopyCuts { .. }
            | Change::TakeCuts(..)
            | Change::Remove(_)
            | Change::SetPartners(_) => self.at,
        };
        match self.season.apply(change) {
            Ok(changed) => {
                let mut next = if changed.season == *self.season {
                    Self { notice: None, ..self.clone() }
                } else {
                    self.remembering(Rc::new(changed.season), at)
                };
                if let (Some(product), false) = (product, changed.skipped.is_empty()) {
                    next.notice = Some(Notice::Skipped(changed.skipped, product));
                }
                next
            }
            Err(refusal) => Self { notice: Some(Notice::Refused(refusal)), ..self.clone() },
        }
    }

    /// What is said of a plan that could not be put aside. If it is the one a step back, that step is the way to it.
    fn unkept(&self, why: Notice) -> Notice {
        let one_back = self.past.last().map(|step| &step.season);
        if one_back.is_some() && one_back == self.aside.as_ref() { Notice::OpenedUnkept } else { why }
    }

    fn undone(&self) -> Option<Self> {
        let mut past = self.past.clone();
        let step = past.pop()?;
        let mut next = self.on(step.season, step.at);
        // If it is replaced again, it is put aside again.
        next.aside = None;
        next.past = past;
        next.future.push(self.step());
        Some(next)
    }

    fn redone(&self) -> Option<Self> {
        let mut future = self.future.clone();
        let step = future.pop()?;
        let mut next = self.on(step.season, step.at);
        next.past.push(self.step());
        next.future = future;
        Some(next)
    }
}

impl Reducible for State {
    type Action = Msg;

    fn reduce(self: Rc<Self>, message: Msg) -> Rc<Self> {
        let state = (*self).clone();
        let look = state.look;
        let next = match message {
            Msg::Act(action) => self.change(Change::Act(self.at, action)),
            Msg::Season(change) => self.change(change),
            Msg::Turn(at) => Self { muscle: None, topic: None, ..self.on(self.season.clone(), at) },
            Msg::Undo => return self.undone().map_or(self, Rc::new),
            Msg::Redo => return self.redone().map_or(self, Rc::new),
            Msg::Units(units) => Self { units, ..state },
            Msg::View(view) => {
                let plate = plate(view, state.plan.animal().species());
                let shown = |region: &Region| plate.frame(Some(*region), false).is_some();
                let region = look.region.filter(shown);
                Self { look: Look { view, region, lens: None, ..look }, ..state }
            }
            Msg::Zoom(region) => Self { look: Look { region, lens: None, ..look }, muscle: None, ..state },
            Msg::Pick(muscle) => Self { muscle, notice: None, ..state },
            Msg::Sides(Sides::Both) => Self { sides: Sides::Both, ..state },
            Msg::Sides(Sides::One(side)) => {
                Self { sides: Sides::One(side), look: Look { side, ..look }, ..state }
            }
            Msg::Lens(lens) => Self { look: Look { lens, ..look }, ..state },
            Msg::Show(side) => Self { look: Look { side, ..look }, ..state },
            Msg::Take(tool) => {
                let view = match tool {
                    Tool::Peel => View::Outer,
                    // A wound is a place on a side.
                    Tool::Wound if look.view == View::Above => View::Outer,
                    Tool::Wound | Tool::Decide | Tool::Paint(_) | Tool::Names | Tool::Save => look.view,
                };
                let looked =
                    if view == look.view { state } else { (*self.clone().reduce(Msg::View(view))).clone() };
                Self { tool, muscle: None, notice: None, ..looked }
            }
            Msg::Naming(naming) => Self { look: Look { naming, ..look }, ..state },
            Msg::Peel(layers) => Self { look: Look { peel: layers.min(LAYERS), ..look }, ..state },
            Msg::ClassSheets(class_sheets) => Self { class_sheets, muscle: None, ..state },
            Msg::Explain(topic) => Self { topic, ..state },
            Msg::Open(season) if season == self.season => return self,
            Msg::Open(season) => {
                let mut next = self.remembering(season, 0);
                next.notice = Some(Notice::LinkOpened);
                next.aside = Some(state.season);
                next
            }
            Msg::KeepMine { both } => match self.undone() {
                Some(next) if both => {
                    Self { aside: Some(state.season), notice: Some(Notice::BothKept), ..next }
                }
                Some(next) => next,
                None => return self,
            },
            Msg::NotAside(why) => Self { notice: Some(self.unkept(why)), ..state },
            Msg::Say(notice) => Self { notice: Some(notice), ..state },
            Msg::Quiet => Self { notice: None, ..state },
            Msg::NamesTravel(names_travel) => Self { names_travel, ..state },
        };
        if next == *self { self } else { Rc::new(next) }
    }
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::animal::Animal;
    use hindsaddle_model::product::Cut;
    use hindsaddle_model::rules::Refusal;

    use super::*;

    fn start() -> Rc<State> {
        Rc::new(State::new(Plan::new(Animal::example()).into(), None, Units::Pounds, None))
    }

    fn stew(muscle: Muscle) -> Msg {
        Msg::Act(Action::Assign { muscle, sides: Sides::Both, cut: Cut::usual(Product::Stew) })
    }

    #[test]
    fn undo_goes_back_to_the_start_and_redo_to_the_end() {
        let start = start();
        let mut state = start.clone();
        for muscle in [Muscle::Knuckle, Muscle::Clod, Muscle::Neck] {
            state = state.reduce(stew(muscle));
        }
        let end = state.clone();
        for _ in 0..3 {
            state = state.reduce(Msg::Undo);
        }
        assert_eq!(state.plan, start.plan);
        assert!(!state.can_undo());
        for _ in 0..3 {
            state = state.reduce(Msg::Redo);
        }
        assert_eq!(state.plan, end.plan);
        assert_eq!(state.forecast, end.forecast);
    }

    #[test]
    fn steps_outlive_the_page() {
        let state = start().reduce(stew(Muscle::Knuckle)).reduce(stew(Muscle::Clod));
        let plan = (*state.plan).clone();
        let again = State::new(plan.into(), None, Units::Pounds, None)
            .with_steps(&format!("{}\nnonsense", state.steps()));
        let back = Rc::new(again).reduce(Msg::Undo).reduce(Msg::Undo);
        assert_eq!(back.plan, start().plan);
        assert!(!back.can_undo());
    }

    #[test]
    fn a_refused_change_keeps_the_plan_and_says_why() {
        let start = start();
        let chop =
            Action::Assign { muscle: Muscle::Cape, sides: Sides::Both, cut: Cut::usual(Product::Chop) };
        let state = start.clone().reduce(Msg::Act(chop));
        assert_eq!(state.plan, start.plan);
        assert!(!state.can_undo());
        assert!(matches!(state.notice, Some(Notice::Refused(Refusal::Impossible { .. }))));
    }

    #[test]
    fn a_change_that_changes_nothing_is_not_a_step() {
        let state = start().reduce(stew(Muscle::HindShank));
        assert!(!state.can_undo());
    }

    #[test]
    fn a_message_that_changes_nothing_draws_nothing() {
        let state = start();
        for message in [
            Msg::Undo,
            Msg::Quiet,
            Msg::Units(Units::Pounds),
            stew(Muscle::HindShank),
            Msg::Open(state.season.clone()),
        ] {
            assert!(Rc::ptr_eq(&state, &state.clone().reduce(message.clone())), "{message:?}");
        }
        for message in [Msg::Units(Units::Kilograms), stew(Muscle::Knuckle), Msg::Zoom(Some(Region::Back))] {
            assert!(!Rc::ptr_eq(&state, &state.clone().reduce(message.clone())), "{message:?}");
        }
    }

    #[test]
    fn a_plan_from_a_link_is_a_step_that_can_be_undone() {
        let mine = start().reduce(stew(Muscle::Knuckle));
        let theirs = start().reduce(stew(Muscle::Neck)).season.clone();
        let opened = mine.clone().reduce(Msg::Open(theirs.clone()));
        assert_eq!(opened.season, theirs);
        assert_eq!(opened.aside.as_ref(), Some(&mine.season));
        assert_eq!(opened.reduce(Msg::Undo).plan, mine.plan);
    }

    #[test]
    fn mine_theirs_or_both_are_kept() {
        let mine = start().reduce(stew(Muscle::Knuckle));
        let theirs = start().reduce(stew(Muscle::Neck)).season.clone();
        let opened = mine.clone().reduce(Msg::Open(theirs.clone()));
        let back = opened.clone().reduce(Msg::KeepMine { both: false });
        assert_eq!((&back.season, &back.notice), (&mine.season, &None));
        assert_eq!(back.reduce(Msg::Redo).season, theirs, "nothing is lost by it");
        let both = opened.reduce(Msg::KeepMine { both: true });
        assert_eq!((&both.season, both.aside.as_ref()), (&mine.season, Some(&theirs)));
        assert_eq!(both.notice, Some(Notice::BothKept));
    }

    #[test]
    fn what_could_not_be_put_aside_is_said() {
        let mine = start().reduce(stew(Muscle::Knuckle));
        let theirs = start().reduce(stew(Muscle::Neck)).season.clone();
        let opened = mine.clone().reduce(Msg::Open(theirs));
        let unkept = opened.clone().reduce(Msg::NotAside(Notice::KeptFull));
        assert_eq!(unkept.notice, Some(Notice::OpenedUnkept), "mine is a step back and nowhere else");
        let both = opened.clone().reduce(Msg::KeepMine { both: true });
        let full = both.reduce(Msg::NotAside(Notice::KeptFull));
        assert_eq!(full.notice, Some(Notice::KeptFull), "mine is open");
        let back = unkept.reduce(Msg::KeepMine { both: false });
        assert_eq!((&back.season, &back.aside), (&mine.season, &None), "it is tried again the next time");
        let reopened =
            State::new((*opened.season).clone(), Some((*mine.season).clone()), Units::Pounds, None);
        let unkept = Rc::new(reopened).reduce(Msg::NotAside(Notice::NotRemembered));
        assert_eq!(unkept.notice, Some(Notice::OpenedUnkept));
    }

    #[test]
    fn every_animal_keeps_its_plan_and_undo_goes_back_to_the_one_that_changed() {
        let one = start();
        let two = one.clone().reduce(Msg::Season(Change::AddLike(0)));
        assert_eq!(two.at, 1);
        let changed = two.clone().reduce(stew(Muscle::Knuckle));
        let first = changed.clone().reduce(Msg::Turn(0));
        assert_eq!((&first.plan, &first.forecast), (&one.plan, &one.forecast));
        assert_ne!(first.season.animal(1), &*one.plan);
        let undone = first.reduce(Msg::Undo);
        assert_eq!((undone.at, &undone.season), (1, &two.season));
        let removed = undone.reduce(Msg::Season(Change::Remove(1)));
        assert_eq!((removed.at, &removed.season), (0, &one.season));
    }

    /// Animals cut the same way share their plan and forecast: only their place tells them apart.
    #[test]
    fn a_copy_and_its_pattern_are_turned_between() {
        let two = start().reduce(Msg::Season(Change::AddLike(0)));
        assert_eq!(two.at, 1);
        let first = two.reduce(Msg::Turn(0));
        assert_eq!(first.at, 0);
        let changed = first.reduce(stew(Muscle::Knuckle));
        assert_eq!(changed.season.animal(1), start().season.animal(0), "the copy stays as it was");
        assert_ne!(changed.season.animal(0), changed.season.animal(1));
    }

    #[test]
    fn a_region_that_cannot_be_all_one_product_says_what_stayed() {
        let state =
            start().reduce(Msg::Act(Action::AssignRegion { region: Region::Belly, product: Product::Steak }));
        let Some(Notice::Skipped(stayed, Product::Steak)) = &state.notice else {
            panic!("{:?}", state.notice)
        };
        assert_eq!(stayed.len(), 2);
        assert!(state.can_undo());
    }
}
