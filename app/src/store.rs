//! The state of the page and everything that can happen to it. No markup, no browser, no clock.
//!
//! `reduce` is pure; what has to reach the address, the storage or the clipboard is an effect of
//! [`crate::app`] on the state that comes out.

use std::rc::Rc;

use hindsaddle_model::anatomy::{Muscle, Region, Side, Sides, View};
use hindsaddle_model::forecast::{Forecast, Line, forecast};
use hindsaddle_model::link::{self, LinkError, Names};
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::product::Product;
use hindsaddle_model::rules::Refusal;
use yew::Reducible;

use crate::plate::Frame;
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

/// What a tap on the plate is for, and which panel is open under it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tool {
    /// Decide about the muscle.
    Decide,
    /// Make it this; None throws it away.
    Paint(Option<Product>),
    /// Mark a wound there.
    Wound,
    /// Decide; the panel is about names.
    Names,
    /// Decide; the panel lifts muscles off.
    Peel,
    /// Decide; the panel saves the picture.
    Save,
}

/// What is written beside the muscles.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Naming {
    /// Nothing.
    Off,
    /// What the trade calls them.
    Common,
    /// What anatomy calls them.
    Anatomical,
}

/// How the plate is looked at. No part of the plan, so no step of its history.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Look {
    /// The side of the plate.
    pub view: View,
    /// The side of the animal that the side views show.
    pub side: Side,
    /// The region zoomed to.
    pub region: Option<Region>,
    /// Closer or farther than that, by hand.
    pub lens: Option<Frame>,
    /// How many layers of the outer side are lifted off.
    pub peel: u8,
    /// What is written beside the muscles.
    pub naming: Naming,
}

impl Look {
    /// Layers lifted off: none but from the outer side.
    pub fn lifted(&self) -> u8 {
        if self.view == View::Outer { self.peel } else { 0 }
    }
}

/// Something said to the reader until it is dismissed or replaced.
#[derive(Clone, Debug, PartialEq)]
pub enum Notice {
    /// A change was refused.
    Refused(Refusal),
    /// Part of a change to a region was not possible.
    Skipped(Vec<Refusal>, Product),
    /// A link was opened; the plan before it is one step back.
    LinkOpened,
    /// A link could not be opened.
    LinkRefused(LinkError),
    /// What this browser remembered could not be read.
    MemoryRefused(LinkError),
    /// Storage refuses.
    NotRemembered,
    /// The link is on the clipboard.
    Copied,
    /// The clipboard refuses.
    NotCopied,
    /// The picture is among the reader's files.
    Saved,
    /// The browser could not make it.
    NotSaved,
    /// A file that is too long to be a plan.
    FileTooLong,
    /// A newer build of the page is ready.
    Newer,
}

impl Notice {
    /// What is said of a file that was to be saved.
    pub fn saved(worked: bool) -> Self {
        if worked { Notice::Saved } else { Notice::NotSaved }
    }
}

/// Everything the page shows.
#[derive(Clone, Debug)]
pub struct State {
    /// The plan.
    pub plan: Rc<Plan>,
    /// What it gives.
    pub forecast: Rc<Forecast>,
    past: Vec<Rc<Plan>>,
    future: Vec<Rc<Plan>>,
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

/// Plans and forecasts are compared by their place: every new one is made once, and a thousand steps of history
/// are not read through for each message.
impl PartialEq for State {
    fn eq(&self, other: &Self) -> bool {
        let same = |a: &[Rc<Plan>], b: &[Rc<Plan>]| {
            a.len() == b.len() && a.iter().zip(b).all(|(a, b)| Rc::ptr_eq(a, b))
        };
        Rc::ptr_eq(&self.plan, &other.plan)
            && Rc::ptr_eq(&self.forecast, &other.forecast)
            && same(&self.past, &other.past)
            && same(&self.future, &other.future)
            && (self.units, self.look, self.tool, self.class_sheets, self.muscle)
                == (other.units, other.look, other.tool, other.class_sheets, other.muscle)
            && (self.sides, self.topic, &self.notice, self.names_travel)
                == (other.sides, other.topic, &other.notice, other.names_travel)
    }
}

/// The plan as the text of a link, with its title if that travels.
pub fn link_of(plan: &Plan, names_travel: bool) -> String {
    link::write(plan, if names_travel { Names::Included } else { Names::LeftOut })
}

/// Something that happens.
#[derive(Clone, Debug, PartialEq)]
pub enum Msg {
    /// A change of the plan.
    Act(Action),
    /// One step back.
    Undo,
    /// One step forward again.
    Redo,
    /// Pounds or kilograms.
    Units(Units),
    /// Another side of the plate.
    View(View),
    /// To a region, or back to the whole animal.
    Zoom(Option<Region>),
    /// Decide about a muscle, or stop.
    Pick(Option<Muscle>),
    /// Decide for both sides or one.
    Sides(Sides),
    /// Show how a number was worked out, or stop.
    Explain(Option<Topic>),
    /// Closer or farther than a region, by hand; None for the region itself.
    Lens(Option<Frame>),
    /// Another side of the animal in the side views.
    Show(Side),
    /// A tap means something else.
    Take(Tool),
    /// Other names beside the muscles.
    Naming(Naming),
    /// How many layers of the outer side are lifted off.
    Peel(u8),
    /// The sheets for a class, or back to the plan.
    ClassSheets(bool),
    /// A plan arrived by link.
    Open(Rc<Plan>),
    /// Say something.
    Say(Notice),
    /// Stop saying it.
    Quiet,
    /// Whether the title travels with the link.
    NamesTravel(bool),
}

impl State {
    /// The page on `plan`. `before` is a plan that a link took the place of: it is one step back.
    pub fn new(plan: Plan, before: Option<Plan>, units: Units, notice: Option<Notice>) -> Self {
        let forecast = Rc::new(forecast(&plan));
        Self {
            plan: Rc::new(plan),
            forecast,
            past: before.map(Rc::new).into_iter().collect(),
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
        link_of(&self.plan, self.names_travel)
    }

    /// The latest steps back, oldest first, each a line of text.
    pub fn steps(&self) -> String {
        let kept = self.past.len().saturating_sub(STEPS_KEPT);
        let lines: Vec<String> =
            self.past[kept..].iter().map(|plan| link::write(plan, Names::Included)).collect();
        lines.join("\n")
    }

    /// The same state with steps back from [`Self::steps`]; a line that is no plan is left out.
    #[must_use]
    pub fn with_steps(mut self, steps: &str) -> Self {
        let plans = steps.lines().filter_map(|line| link::read(line).ok()).map(Rc::new);
        self.past = plans.chain(std::mem::take(&mut self.past)).collect();
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

    fn with_plan(&self, plan: Rc<Plan>) -> Self {
        let forecast = Rc::new(forecast(&plan));
        Self { plan, forecast, notice: None, ..self.clone() }
    }

    fn remembering(&self, plan: Rc<Plan>) -> Self {
        let mut next = self.with_plan(plan);
        next.past.push(self.plan.clone());
        if next.past.len() > MOST_STEPS {
            next.past.remove(0);
        }
        next.future.clear();
        next
    }

    fn act(&self, action: Action) -> Self {
        let product = match &action {
            Action::AssignRegion { product, .. } => Some(*product),
            Action::SetAnimal(_)
            | Action::SetTitle(_)
            | Action::SetLosses(_)
            | Action::Assign { .. }
            | Action::Divide { .. }
            | Action::Recover { .. }
            | Action::SetTable { .. }
            | Action::SetPack { .. }
            | Action::AddWound(_)
            | Action::ChangeWound { .. }
            | Action::RemoveWound(_)
            | Action::SetKitchen(_)
            | Action::Weigh { .. }
            | Action::UseOwn(_)
            | Action::ResetCuts => None,
        };
        match self.plan.apply(action) {
            Ok(applied) => {
                let mut next = if applied.plan == *self.plan {
                    Self { notice: None, ..self.clone() }
                } else {
                    self.remembering(Rc::new(applied.plan))
                };
                if let (Some(product), false) = (product, applied.skipped.is_empty()) {
                    next.notice = Some(Notice::Skipped(applied.skipped, product));
                }
                next
            }
            Err(refusal) => Self { notice: Some(Notice::Refused(refusal)), ..self.clone() },
        }
    }

    fn undone(&self) -> Option<Self> {
        let mut past = self.past.clone();
        let plan = past.pop()?;
        let mut next = self.with_plan(plan);
        next.past = past;
        next.future.push(self.plan.clone());
        Some(next)
    }

    fn redone(&self) -> Option<Self> {
        let mut future = self.future.clone();
        let plan = future.pop()?;
        let mut next = self.with_plan(plan);
        next.past.push(self.plan.clone());
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
            Msg::Act(action) => self.act(action),
            Msg::Undo => match self.undone() {
                Some(next) => next,
                None => return self,
            },
            Msg::Redo => match self.redone() {
                Some(next) => next,
                None => return self,
            },
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
            Msg::Open(plan) if plan == self.plan => return self,
            Msg::Open(plan) => {
                let mut next = self.remembering(plan);
                next.notice = Some(Notice::LinkOpened);
                next
            }
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

    use super::*;

    fn start() -> Rc<State> {
        Rc::new(State::new(Plan::new(Animal::example()), None, Units::Pounds, None))
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
        let again =
            State::new(plan, None, Units::Pounds, None).with_steps(&format!("{}\nnonsense", state.steps()));
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
            Msg::Open(state.plan.clone()),
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
        let theirs = start().reduce(stew(Muscle::Neck)).plan.clone();
        let opened = mine.clone().reduce(Msg::Open(theirs.clone()));
        assert_eq!(opened.plan, theirs);
        assert_eq!(opened.reduce(Msg::Undo).plan, mine.plan);
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
