//! The names of things: muscle groups, sides, regions, views.
//!
//! Closed sets are enums with `ALL`; lists, legends, link codes and test loops all come from there.

/// One of the 26 muscle groups a cutter can take off as a piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Muscle {
    /// Inside of the thigh: semimembranosus, adductor, gracilis cap.
    TopRound,
    /// Outer face of the thigh: gluteobiceps (biceps femoris).
    BottomRound,
    /// Back edge of the thigh: semitendinosus.
    EyeRound,
    /// Front of the thigh: quadriceps femoris; also sirloin tip.
    Knuckle,
    /// Cap on the hip bone: the gluteal group.
    Sirloin,
    /// Triangle below the hip point: tensor fasciae latae.
    TriTip,
    /// Lower thigh and shin: gastrocnemius and its neighbours.
    HindShank,
    /// Small muscles in and around the pelvis.
    PelvicTrim,
    /// Along the spine: longissimus thoracis et lumborum.
    Backstrap,
    /// Under the loin, inside: psoas major and minor, iliacus.
    Tenderloin,
    /// Strips left on the spine: multifidi, iliocostalis.
    BackTrim,
    /// Behind the ridge of the blade: infraspinatus.
    FlatIron,
    /// In front of the ridge of the blade: supraspinatus.
    MockTender,
    /// Between blade, upper arm and elbow: triceps brachii.
    Clod,
    /// Rib side of the blade: subscapularis, teres major.
    UnderBlade,
    /// Around the upper arm: biceps brachii, brachialis, deltoideus.
    Arm,
    /// Forearm: carpal and digital extensors and flexors.
    ForeShank,
    /// Sling under the blade: serratus ventralis, rhomboideus.
    Chuck,
    /// Thin sheets over blade and ribs: trapezius, latissimus dorsi.
    Cape,
    /// Ropes under the neck: brachiocephalicus, sternocephalicus.
    NeckStraps,
    /// Both sides of the neck bones: splenius, semispinalis and deeper.
    Neck,
    /// Underside of the chest: the pectorals.
    Brisket,
    /// Between the thirteen ribs: intercostals.
    RibMeat,
    /// Belly strip: rectus abdominis.
    FlankSteak,
    /// Soft side wall: the obliques and transversus abdominis.
    FlankSheets,
    /// Diaphragm with its pillars.
    Skirt,
}

impl Muscle {
    /// How many groups there are.
    pub const COUNT: usize = 26;

    /// Every group, from the hind leg forward.
    pub const ALL: [Muscle; Muscle::COUNT] = [
        Muscle::TopRound,
        Muscle::BottomRound,
        Muscle::EyeRound,
        Muscle::Knuckle,
        Muscle::Sirloin,
        Muscle::TriTip,
        Muscle::HindShank,
        Muscle::PelvicTrim,
        Muscle::Backstrap,
        Muscle::Tenderloin,
        Muscle::BackTrim,
        Muscle::FlatIron,
        Muscle::MockTender,
        Muscle::Clod,
        Muscle::UnderBlade,
        Muscle::Arm,
        Muscle::ForeShank,
        Muscle::Chuck,
        Muscle::Cape,
        Muscle::NeckStraps,
        Muscle::Neck,
        Muscle::Brisket,
        Muscle::RibMeat,
        Muscle::FlankSteak,
        Muscle::FlankSheets,
        Muscle::Skirt,
    ];

    /// Its place in [`Muscle::ALL`].
    pub const fn index(self) -> usize {
        self as usize
    }

    /// The name used by scripts and by the paths of the plate.
    pub const fn id(self) -> &'static str {
        match self {
            Muscle::TopRound => "top_round",
            Muscle::BottomRound => "bottom_round",
            Muscle::EyeRound => "eye_round",
            Muscle::Knuckle => "knuckle",
            Muscle::Sirloin => "sirloin",
            Muscle::TriTip => "tri_tip",
            Muscle::HindShank => "hind_shank",
            Muscle::PelvicTrim => "pelvic_trim",
            Muscle::Backstrap => "backstrap",
            Muscle::Tenderloin => "tenderloin",
            Muscle::BackTrim => "back_trim",
            Muscle::FlatIron => "flat_iron",
            Muscle::MockTender => "mock_tender",
            Muscle::Clod => "clod",
            Muscle::UnderBlade => "under_blade",
            Muscle::Arm => "arm",
            Muscle::ForeShank => "fore_shank",
            Muscle::Chuck => "chuck",
            Muscle::Cape => "cape",
            Muscle::NeckStraps => "neck_straps",
            Muscle::Neck => "neck",
            Muscle::Brisket => "brisket",
            Muscle::RibMeat => "rib_meat",
            Muscle::FlankSteak => "flank_steak",
            Muscle::FlankSheets => "flank_sheets",
            Muscle::Skirt => "skirt",
        }
    }

    /// The group with this [`Muscle::id`].
    pub fn from_id(id: &str) -> Option<Muscle> {
        Muscle::ALL.into_iter().find(|muscle| muscle.id() == id)
    }
}

/// Left or right half of the animal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Side {
    /// The animal's own left.
    Left,
    /// The animal's own right.
    Right,
}

impl Side {
    /// Both sides.
    pub const ALL: [Side; 2] = [Side::Left, Side::Right];

    /// Its place in [`Side::ALL`].
    pub const fn index(self) -> usize {
        self as usize
    }

    /// The other half.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Side::Left => Side::Right,
            Side::Right => Side::Left,
        }
    }
}

/// Which sides an action is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sides {
    /// The same on left and right.
    Both,
    /// One side; the other stays as it is.
    One(Side),
}

impl Sides {
    /// Whether `side` is meant.
    pub fn includes(self, side: Side) -> bool {
        match self {
            Sides::Both => true,
            Sides::One(one) => one == side,
        }
    }
}

/// A part of the carcass that is taken off and worked on together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Region {
    /// Haunch with rump and shank.
    HindLeg,
    /// Loin and back.
    Back,
    /// Foreleg with the blade.
    Shoulder,
    /// Neck, cape and the sling under the blade.
    Neck,
    /// Brisket, ribs, flank and skirt.
    Belly,
}

impl Region {
    /// Every region, from the hind leg forward.
    pub const ALL: [Region; 5] =
        [Region::HindLeg, Region::Back, Region::Shoulder, Region::Neck, Region::Belly];

    /// The muscle groups in it.
    pub fn muscles(self) -> impl Iterator<Item = Muscle> {
        Muscle::ALL.into_iter().filter(move |muscle| crate::tables::muscle(*muscle).region == self)
    }
}

/// A side of the plate.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum View {
    /// The outer side, as the animal stands.
    Outer,
    /// The half seen from within, the front ribs lifted out.
    Inner,
    /// Both sides, from above.
    Above,
}

impl View {
    /// All of them.
    pub const ALL: [View; 3] = [View::Outer, View::Inner, View::Above];
}

/// How deep a group lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Layer {
    /// Under the hide.
    Outer,
    /// Under another muscle.
    Deep,
    /// On the inner face, toward the body cavity or the ribs.
    Inner,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_muscle_stands_at_its_own_index_and_answers_to_its_name() {
        for (index, muscle) in Muscle::ALL.into_iter().enumerate() {
            assert_eq!(muscle.index(), index);
            assert_eq!(Muscle::from_id(muscle.id()), Some(muscle));
        }
        assert_eq!(Muscle::from_id("wing"), None);
    }

    #[test]
    fn the_regions_hold_every_muscle_once() {
        let held: usize = Region::ALL.into_iter().map(|region| region.muscles().count()).sum();
        assert_eq!(held, Muscle::COUNT);
    }
}
