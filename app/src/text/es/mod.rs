//! Spanish, as hunters and butchers of Mexico and the south-west of the United States speak it; `en` has the same
//! items with the same signatures. The reader is addressed as tú, numbers have a decimal point.
//!
//! Words that are chosen and kept: lámina (plate), cuenta (tally), ficha de mesa (table card), tina (tub), orden de
//! trabajo (work order), telilla (silverskin), fibra (grain); asado, bistec, chuleta, guiso, molida (the cuts); bola,
//! cara, contracara, cuete, aguayón, empuje, diezmillo, chamorro (muscles, by the trade's names of beef: common
//! practice, no source); what other countries say is in `muscle_also`.

mod ahead;
mod citations;
mod glossary;
mod kitchen;
mod labels;
mod learn;
mod lessons;
mod names;
mod plate;
mod scale;
mod sentences;

pub use ahead::*;
pub use citations::*;
pub use glossary::*;
pub use kitchen::*;
pub use labels::*;
pub use learn::*;
pub use lessons::*;
pub use names::*;
pub use plate::*;
pub use scale::*;
pub use sentences::*;
