//! What a part of a muscle becomes, and at what size.

use crate::units::{Length, Mass};

/// A kind of meat that is packed and labelled.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Product {
    /// Cooked whole and carved.
    Roast,
    /// Cut across the grain, from any large muscle.
    Steak,
    /// Cut across the loin, thinner than a steak; boneless.
    Chop,
    /// Cubes for slow wet heat.
    Stew,
    /// Ground meat.
    Grind,
}

impl Product {
    /// Every product, in the order shown everywhere.
    pub const ALL: [Product; 5] =
        [Product::Roast, Product::Steak, Product::Chop, Product::Stew, Product::Grind];

    /// The name used by scripts.
    pub const fn id(self) -> &'static str {
        match self {
            Product::Roast => "roast",
            Product::Steak => "steak",
            Product::Chop => "chop",
            Product::Stew => "stew",
            Product::Grind => "grind",
        }
    }
}

/// How large a roast is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RoastSize {
    /// The part as it is, in one piece.
    Whole,
    /// Equal roasts near this weight.
    Weight(Mass),
    /// Roasts of this length; what is left is a short roast from half the length up, else trim.
    Length(Length),
}

/// What one part of a muscle becomes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Cut {
    /// One or more roasts.
    Roast(RoastSize),
    /// Steaks of this thickness.
    Steak(Length),
    /// Chops of this thickness.
    Chop(Length),
    /// Cubes of this edge.
    Stew(Length),
    /// To the tub, for the grinder.
    Grind,
    /// Thrown away, as meat around a wound is.
    Discard,
}

impl Cut {
    /// The product it is packed as; a discard is packed as nothing.
    pub const fn product(self) -> Option<Product> {
        match self {
            Cut::Roast(_) => Some(Product::Roast),
            Cut::Steak(_) => Some(Product::Steak),
            Cut::Chop(_) => Some(Product::Chop),
            Cut::Stew(_) => Some(Product::Stew),
            Cut::Grind => Some(Product::Grind),
            Cut::Discard => None,
        }
    }

    /// The same cut on the grid that plans and links keep: slices and cubes to 0.1 mm, roasts to the gram or
    /// the millimetre.
    #[must_use]
    pub fn on_grid(self) -> Cut {
        let tenth = |length: Length| Length::mm((length.to_mm() * 10.0).round() / 10.0);
        match self {
            Cut::Roast(RoastSize::Weight(weight)) => {
                Cut::Roast(RoastSize::Weight(Mass::grams(weight.to_grams().round())))
            }
            Cut::Roast(RoastSize::Length(length)) => {
                Cut::Roast(RoastSize::Length(Length::mm(length.to_mm().round())))
            }
            Cut::Steak(thick) => Cut::Steak(tenth(thick)),
            Cut::Chop(thick) => Cut::Chop(tenth(thick)),
            Cut::Stew(edge) => Cut::Stew(tenth(edge)),
            Cut::Roast(RoastSize::Whole) | Cut::Grind | Cut::Discard => self,
        }
    }

    /// The usual size of each product: steaks 1 in, roasts near 2.5 lb
    /// ([`crate::sources::Source::MsuFreezer`]: 3/4 to 1 in, 3 to 4 lb; the lighter roast is judgement for a
    /// lighter animal), stew 1 in and chops 1/2 in (common practice, no source).
    pub const fn usual(product: Product) -> Cut {
        match product {
            Product::Roast => Cut::Roast(RoastSize::Weight(Mass::grams(1130.0))),
            Product::Steak => Cut::Steak(Length::mm(25.4)),
            Product::Chop => Cut::Chop(Length::mm(12.7)),
            Product::Stew => Cut::Stew(Length::mm(25.4)),
            Product::Grind => Cut::Grind,
        }
    }
}

/// Thinnest and thickest slice a plan may ask for.
pub const THICKNESS_RANGE: (Length, Length) = (Length::mm(3.0), Length::mm(102.0));
/// Lightest and heaviest roast a plan may ask for.
pub const ROAST_WEIGHT_RANGE: (Mass, Mass) = (Mass::grams(200.0), Mass::grams(6000.0));
/// Shortest and longest roast a plan may ask for.
pub const ROAST_LENGTH_RANGE: (Length, Length) = (Length::mm(50.0), Length::mm(600.0));
/// Smallest and largest stew cube a plan may ask for.
pub const CUBE_RANGE: (Length, Length) = (Length::mm(10.0), Length::mm(76.2));
