//! What two plans are compared by: packages, weight, what tender meat is put to, and knife work.

use crate::forecast::{Forecast, Tally};
use crate::product::Product;
use crate::tables::{MUSCLES, TENDER};
use crate::units::Mass;

/// What a plan comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct Sketch {
    /// By product, in the order of [`Product::ALL`].
    pub tallies: Vec<Tally>,
    /// The part of the tender muscles' meat that becomes roasts, steaks or chops, 0 to 1; the middle case. None if
    /// there is no tender meat.
    pub tender_use: Option<f64>,
    /// Pieces the knife makes: roasts, steaks, chops.
    pub pieces: u32,
    /// Cubes of stew, which are many and small.
    pub cubes: u32,
}

/// What a forecast comes to.
pub fn sketch(forecast: &Forecast) -> Sketch {
    let (mut tender, mut used) = (Mass::ZERO, Mass::ZERO);
    let (mut pieces, mut cubes) = (0, 0);
    for (row, forecast) in MUSCLES.iter().zip(&forecast.muscles) {
        for part in forecast.sides.iter().flatten() {
            match part.cut.product() {
                Some(Product::Roast | Product::Steak | Product::Chop) => {
                    pieces += part.pieces.count;
                    if row.tenderness >= TENDER {
                        used += part.pieces.mass;
                    }
                }
                Some(Product::Stew) => cubes += part.pieces.count,
                Some(Product::Grind) | None => {}
            }
            if row.tenderness >= TENDER {
                tender += part.pieces.mass + part.pieces.tub;
            }
        }
    }
    Sketch {
        tallies: forecast.tallies.clone(),
        tender_use: (tender > Mass::ZERO).then(|| used / tender),
        pieces,
        cubes,
    }
}
