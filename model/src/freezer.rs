//! Packages into the freezer: room, how much a day, and which day each package goes in.
//!
//! A home freezer takes a few pounds a day. What waits stays in the refrigerator, within the published days;
//! if that is not possible the answer says what would make it so.

use crate::estimate::Estimate;
use crate::packages::Package;
use crate::product::Product;
use crate::tables::{HOLDING, LOADS, SPACE};
use crate::units::{Density, Mass, Volume};

/// Density of meat, fresh.
pub const MEAT: Density = Density::kilograms_per_cubic_metre(crate::units::MUSCLE_GRAMS_PER_CUBIC_MM * 1e6);

/// Which meat waits, and so how long.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Waits {
    /// Ground meat and organs.
    Ground,
    /// Whole cuts and cubes.
    Whole,
}

impl Waits {
    /// Both.
    pub const ALL: [Waits; 2] = [Waits::Ground, Waits::Whole];

    /// How a product waits.
    pub fn of(product: Product) -> Waits {
        match product {
            Product::Grind => Waits::Ground,
            Product::Roast | Product::Steak | Product::Chop | Product::Stew => Waits::Whole,
        }
    }

    /// Days it may wait, cautiously: the least of the first row of its kind.
    pub fn days(self) -> u8 {
        HOLDING.iter().find(|row| row.waits == self).map_or(0, |row| row.days.0)
    }
}

/// A freezer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Freezer {
    /// All of it: what it freezes in a day goes by this.
    pub size: Volume,
    /// What is still free in it.
    pub free: Volume,
    /// How much it is given in a day.
    pub pace: LoadRule,
}

/// How much a freezer is given in a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LoadRule {
    /// The least of the published figures; the default.
    Cautious,
    /// The most of them.
    Full,
}

impl LoadRule {
    /// Both.
    pub const ALL: [LoadRule; 2] = [LoadRule::Cautious, LoadRule::Full];

    /// Mass a day for each volume of the freezer.
    pub fn a_day(self) -> Density {
        let ends = LOADS.iter().map(|row| match self {
            LoadRule::Cautious => row.range.0,
            LoadRule::Full => row.range.1,
        });
        ends.fold(LOADS[0].range.0, |chosen, end| {
            let better = match self {
                LoadRule::Cautious => end < chosen,
                LoadRule::Full => end > chosen,
            };
            if better { end } else { chosen }
        })
    }
}

/// Smallest and largest freezer that is believed. Judgement.
pub const SIZES: (Volume, Volume) = (Volume::cubic_feet(0.5), Volume::cubic_feet(100.0));

/// Why a freezer is not believed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FreezerError {
    /// Too small or too large to be one.
    SizeOutOfRange {
        /// Smallest.
        least: Volume,
        /// Largest.
        most: Volume,
    },
    /// More free than there is, or less than nothing.
    FreeOutOfRange {
        /// The most that can be free.
        most: Volume,
    },
}

impl Freezer {
    /// To whole litres, as a link carries it.
    pub(crate) fn on_grid(self) -> Self {
        let litres = |volume: Volume| Volume::litres(volume.to_litres().round());
        Self { size: litres(self.size), free: litres(self.free), ..self }
    }

    /// Whether it is believed.
    ///
    /// # Errors
    /// A size or free room that cannot be.
    pub fn check(&self) -> Result<(), FreezerError> {
        let (least, most) = SIZES;
        if !(self.size >= least && self.size <= most) {
            return Err(FreezerError::SizeOutOfRange { least, most });
        }
        if !(self.free >= Volume::default() && self.free <= self.size) {
            return Err(FreezerError::FreeOutOfRange { most: self.size });
        }
        Ok(())
    }

    /// The most that goes in on one day.
    pub fn daily_load(&self) -> Mass {
        self.pace.a_day() * self.size
    }
}

/// Room that packed meat takes: tight, likely, loose.
pub fn room(meat: Mass) -> Estimate<Volume> {
    let [loose, likely, tight] = SPACE.each_ref().map(|row| meat / row.value);
    Estimate::around(likely, tight, loose)
}

/// A package on the day it is packed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Arrival {
    /// The package.
    pub package: Package,
    /// Days after the first day of packing; animals of one season are packed on days of their own.
    pub day: u16,
}

/// One day at the freezer.
#[derive(Clone, Debug, PartialEq)]
pub struct Day {
    /// Days after the first day of packing.
    pub day: u16,
    /// The packages that go in, by their place in the list that was given.
    pub packages: Vec<usize>,
    /// What they weigh together.
    pub mass: Mass,
    /// What is in the freezer by then.
    pub frozen: Mass,
    /// What still waits in the refrigerator.
    pub waiting: Mass,
}

/// Which package goes in when. A day on which nothing does is left out.
#[derive(Clone, Debug, PartialEq)]
pub struct Schedule {
    /// Day after day.
    pub days: Vec<Day>,
    /// Room all of it takes.
    pub room: Estimate<Volume>,
}

/// What would make it possible.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Way {
    /// Load to the upper of the published figures.
    FullLoad,
    /// A freezer of at least this size, or more of them together.
    BiggerFreezer(Volume),
    /// Free this much more room.
    MakeRoom(Volume),
    /// Cut and pack this much less now: eat it fresh, or leave it on the bone in the cold for another day.
    PackLess(Mass),
    /// Have this much frozen by someone with a blast freezer.
    Commercial(Mass),
}

/// Why the packages cannot be frozen as asked, and what would do.
#[derive(Clone, Debug, PartialEq)]
pub enum Trouble {
    /// The freezer is not believed.
    Freezer(FreezerError),
    /// They do not fit, at the likely density.
    NoRoom {
        /// Room they take.
        needs: Estimate<Volume>,
        /// What would do.
        ways: Vec<Way>,
    },
    /// Some would wait too long.
    TooSlow {
        /// Which packages are too late.
        late: Vec<usize>,
        /// What they weigh together.
        mass: Mass,
        /// What would do.
        ways: Vec<Way>,
    },
}

/// Which day each package goes in: ground meat first, then stew, then whole cuts in the order given, whole
/// packages, none later than it may wait. Room is asked for first.
///
/// # Errors
/// A freezer that is not believed, too little room, or too much meat for its days.
pub fn schedule(packages: &[Arrival], freezer: &Freezer) -> Result<Schedule, Trouble> {
    freezer.check().map_err(Trouble::Freezer)?;
    let total: Mass = packages.iter().map(|arrival| arrival.package.mass).sum();
    let needs = room(total);
    if needs.likely() > freezer.free {
        let [_, likely, _] = &SPACE;
        let over = likely.value * (needs.likely() - freezer.free);
        let ways = vec![Way::MakeRoom(over / likely.value), Way::PackLess(over), Way::Commercial(over)];
        return Err(Trouble::NoRoom { needs, ways });
    }
    let (days, late) = fill(packages, freezer.daily_load());
    if late.is_empty() {
        return Ok(Schedule { days, room: needs });
    }
    let mass = late.iter().map(|index| packages[*index].package.mass).sum();
    Err(Trouble::TooSlow { mass, ways: ways(packages, freezer, mass), late })
}

fn ways(packages: &[Arrival], freezer: &Freezer, late: Mass) -> Vec<Way> {
    let mut ways = Vec::new();
    let faster = Freezer { pace: LoadRule::Full, ..*freezer };
    if fill(packages, faster.daily_load()).1.is_empty() {
        ways.push(Way::FullLoad);
    }
    ways.extend(big_enough(packages, freezer).map(Way::BiggerFreezer));
    ways.extend([Way::PackLess(late), Way::Commercial(late)]);
    ways
}

/// The smallest freezer, to the half cubic foot, that takes everything in time at the same pace.
fn big_enough(packages: &[Arrival], freezer: &Freezer) -> Option<Volume> {
    let halves = |volume: Volume| (volume.to_cubic_feet() * 2.0).floor() as u32;
    (halves(freezer.size) + 1..=halves(SIZES.1))
        .map(|half| Volume::cubic_feet(f64::from(half) / 2.0))
        .find(|size| fill(packages, freezer.pace.a_day() * *size).1.is_empty())
}

/// A day's load is full when the next package would pass it by more than this part; keeps a day full to the
/// gram from spilling over by rounding.
const EPSILON: f64 = 1e-9;

/// Fills day after day up to `a_day`. Packages that would wait too long are named, and left out; so is one
/// that is heavier than a day's load, which no day takes.
fn fill(packages: &[Arrival], a_day: Mass) -> (Vec<Day>, Vec<usize>) {
    let a_day = a_day * (1.0 + EPSILON);
    let of = |turn: Turn| {
        (0..packages.len()).filter(move |index| Turn::of(packages[*index].package.product) == turn)
    };
    let mut queue: Vec<usize> = Turn::ALL.into_iter().flat_map(of).collect();
    let mut late: Vec<usize> = Vec::new();
    queue.retain(|index| {
        let fits = packages[*index].package.mass <= a_day;
        if !fits {
            late.push(*index);
        }
        fits
    });
    let (mut days, mut frozen) = (Vec::new(), Mass::ZERO);
    let mut day: u16 = 0;
    while !queue.is_empty() {
        let too_late = |arrival: &Arrival| {
            day > arrival.day.saturating_add(u16::from(Waits::of(arrival.package.product).days()))
        };
        let (mut today, mut mass, mut waiting, mut is_full) = (Vec::new(), Mass::ZERO, Mass::ZERO, false);
        queue.retain(|index| {
            let arrival = &packages[*index];
            if arrival.day > day {
                return true;
            }
            if too_late(arrival) {
                late.push(*index);
                return false;
            }
            // Once a package has no room the rest waits with it: nobody overtakes.
            is_full |= mass + arrival.package.mass > a_day;
            if is_full {
                waiting += arrival.package.mass;
                return true;
            }
            today.push(*index);
            mass += arrival.package.mass;
            false
        });
        if !today.is_empty() {
            frozen += mass;
            days.push(Day { day, packages: today, mass, frozen, waiting });
        }
        // What waits goes in tomorrow; else nothing does until more is packed. On the very last day that is
        // counted, what waits has no day left.
        let next_packed = queue.iter().map(|index| packages[*index].day).min();
        let next = if is_full { day.checked_add(1) } else { next_packed };
        let Some(next) = next else { break };
        day = next;
    }
    late.extend(queue);
    (days, late)
}

/// Who goes into the freezer when.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Turn {
    Ground,
    Stew,
    Whole,
}

impl Turn {
    const ALL: [Turn; 3] = [Turn::Ground, Turn::Stew, Turn::Whole];

    fn of(product: Product) -> Turn {
        match product {
            Product::Grind => Turn::Ground,
            Product::Stew => Turn::Stew,
            Product::Roast | Product::Steak | Product::Chop => Turn::Whole,
        }
    }
}
