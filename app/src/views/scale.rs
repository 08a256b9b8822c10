//! What was weighed, what each weight changes and what is asked about it, as plain values.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::changes::{Outcome, changes};
use hindsaddle_model::forecast::{Forecast, forecast};
use hindsaddle_model::plan::{Action, Plan};
use hindsaddle_model::scale::{OnScale, Weighing, doubt};

use super::kitchen::{Packed, packed};
use crate::text::{self, Units};

/// One weight.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// Which it is.
    pub weighing: Weighing,
    /// "Backstrap, both sides: 3 lb 4 oz".
    pub said: String,
    /// What it does to packages and supplies.
    pub changed: String,
    /// What is asked about it, if it is hard to believe.
    pub question: Option<String>,
}

/// A weight of a plan, against the same plan without it.
pub fn entry(plan: &Plan, after: (&Forecast, &Packed), weighing: Weighing, units: Units) -> Entry {
    let without = plan.apply(Action::Weigh { target: weighing.target, mass: None });
    let before = without.map_or_else(|_| plan.clone(), |applied| applied.plan);
    let expected = forecast(&before);
    let then = packed(&before, &expected);
    let list = changes(outcome(&expected, &then), outcome(after.0, after.1));
    Entry {
        weighing,
        said: said(weighing, units),
        changed: text::changed(&list, units),
        question: doubt(plan, weighing).map(|doubt| text::doubt(weighing.target, &doubt, units)),
    }
}

fn outcome<'a>(forecast: &'a Forecast, packed: &'a Packed) -> Outcome<'a> {
    Outcome { forecast, packages: &packed.packages, supplies: &packed.supplies }
}

/// A weight in words.
pub fn said(weighing: Weighing, units: Units) -> String {
    text::named(&text::on_scale(weighing.target), &text::weight(weighing.mass, units))
}

/// What a weight is known by to whoever was asked about it: another weight of the same is asked about again.
pub fn key(weighing: Weighing) -> String {
    said(weighing, Units::Kilograms)
}

/// The weights of a muscle.
pub fn of_muscle(plan: &Plan, muscle: Muscle) -> Vec<Weighing> {
    let is_of = |target: OnScale| match target {
        OnScale::Muscle(other, _) => other == muscle,
        OnScale::Lot | OnScale::Tub | OnScale::Packages(..) => false,
    };
    plan.weighings().iter().copied().filter(|weighing| is_of(weighing.target)).collect()
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::anatomy::Sides;
    use hindsaddle_model::animal::Animal;
    use hindsaddle_model::units::Mass;

    use super::*;

    fn weighed(target: OnScale, mass: Mass) -> Entry {
        let plan =
            Plan::new(Animal::example()).apply(Action::Weigh { target, mass: Some(mass) }).unwrap().plan;
        let forecast = forecast(&plan);
        entry(&plan, (&forecast, &packed(&plan, &forecast)), plan.weighings()[0], Units::Pounds)
    }

    #[test]
    fn a_heavy_lot_changes_packages_and_is_believed() {
        let entry = weighed(OnScale::Lot, Mass::pounds(46.0));
        assert_eq!(entry.said, "All boneless meat, before it is cut: 46 lb");
        assert!(entry.changed.contains(" more packages of ground"), "{}", entry.changed);
        assert!(entry.changed.contains(" more to take home"), "{}", entry.changed);
        assert_eq!(entry.question, None);
    }

    #[test]
    fn a_tenderloin_of_nine_pounds_is_asked_about() {
        let entry = weighed(OnScale::Muscle(Muscle::Tenderloin, Sides::Both), Mass::pounds(9.0));
        let question = entry.question.unwrap();
        assert_eq!(question, "That is far from the 13 oz expected. Is it the right muscle, and both sides?");
        let entry = weighed(OnScale::Muscle(Muscle::Tenderloin, Sides::Both), Mass::pounds(90.0));
        assert!(entry.question.unwrap().starts_with("That is more than all the meat expected"));
    }
}
