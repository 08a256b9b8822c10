//! From a deer's weight and a plan of cuts to packages: pure, deterministic, no web, no clock.
//!
//! An [`animal::Animal`] says what was weighed. A [`plan::Plan`] says what each of the 26 muscle groups of
//! each side becomes, and is changed only by [`plan::Plan::apply`]. [`forecast::forecast`] says what that
//! gives: a mass ledger that closes, pieces, and packages with their range.
//!
//! ```
//! use hindsaddle_model::anatomy::{Muscle, Sides};
//! use hindsaddle_model::animal::{Age, Animal, Condition, Legs, Sex, Species, Weighed};
//! use hindsaddle_model::forecast::forecast;
//! use hindsaddle_model::plan::{Action, Plan};
//! use hindsaddle_model::product::{Cut, Product};
//! use hindsaddle_model::units::{Length, Mass};
//!
//! let weighed = Weighed::FieldDressed(Mass::pounds(110.0), Legs::On);
//! let doe = Animal::new(Species::WhiteTailed, Sex::Doe, Age::Adult, Condition::Ordinary, weighed).unwrap();
//! let chops = Cut::Chop(Length::inches(0.5));
//! let plan = Plan::new(doe)
//!     .apply(Action::Assign { muscle: Muscle::Backstrap, sides: Sides::Both, cut: chops })
//!     .unwrap()
//!     .plan;
//!
//! let expected = forecast(&plan);
//! let chop_packs = expected.tallies[Product::Chop as usize].packs;
//! assert!(chop_packs.low() <= chop_packs.likely() && chop_packs.likely() <= chop_packs.high());
//! assert!(expected.take_home.likely() < expected.hanging.likely());
//! ```

pub mod anatomy;
pub mod animal;
pub mod carcass;
pub mod changes;
pub mod compare;
pub mod csv;
mod cutting;
pub mod dates;
pub mod deal;
mod division;
pub mod ensemble;
pub mod estimate;
pub mod fat;
pub mod forecast;
pub mod freezer;
pub mod grind;
pub mod heat;
pub mod ics;
mod kalman;
pub mod kitchen;
pub mod labels;
pub mod lesson;
pub mod link;
mod normal;
pub mod order;
pub mod own;
pub mod packages;
pub mod packing;
pub mod partners;
pub mod pieces;
pub mod plan;
pub mod planner;
pub mod product;
pub mod report;
pub mod rules;
pub mod scale;
pub mod season;
pub mod shape;
mod short;
pub mod sources;
mod spread;
pub mod tables;
pub mod thaw;
pub mod units;
pub mod weighed;
pub mod wishes;
pub mod wounds;
pub mod wrap;
