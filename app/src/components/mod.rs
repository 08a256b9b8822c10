//! What is shown. A component gets finished values and sends messages; it never computes.

mod ahead;
mod animal_card;
mod class_sheets;
mod code;
mod controls;
mod explanation;
mod field;
mod header;
mod kitchen;
mod learn;
mod losses_card;
mod muscle_list;
mod muscle_sheet;
mod notice_bar;
mod packing_card;
mod part_editor;
mod plate_drawing;
mod plate_handles;
mod plate_stage;
mod plate_tools;
mod small_plate;
mod tally;

pub use ahead::AheadPage;
pub use animal_card::AnimalCard;
pub use class_sheets::ClassSheets;
pub use explanation::Explanation;
pub use header::Header;
pub use kitchen::KitchenPage;
pub use learn::LearnPage;
pub use losses_card::LossesCard;
pub use muscle_list::MuscleList;
pub use muscle_sheet::MuscleSheet;
pub use notice_bar::NoticeBar;
pub use packing_card::PackingCard;
pub use plate_stage::PlateStage;
pub use tally::Tally;
