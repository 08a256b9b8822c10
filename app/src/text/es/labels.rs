//! Labels of buttons, fields and headings, and the words of numbers.

use crate::text::numbers::Units;

/// The language, as HTML and browsers call it.
pub const LANGUAGE: &str = "es";
/// Between the ends of a range.
pub const TO: &str = "a";
/// Inches.
pub const INCHES: &str = "pulg";

/// The name of the product.
pub const NAME: &str = "Hindsaddle";
/// Under the name.
pub const MOTTO: &str = "del venado al paquete etiquetado";
/// Step back.
pub const UNDO: &str = "Deshacer";
/// Step forward.
pub const REDO: &str = "Rehacer";
/// Copy the link.
pub const COPY_LINK: &str = "Copiar enlace";
/// Units.
pub const UNITS: &str = "Unidades";
/// Language.
pub const LANGUAGE_CHOICE: &str = "Idioma";
/// The title field.
pub const TITLE: &str = "Título del plan";
/// What an empty title suggests.
pub const TITLE_HINT: &str = "p. ej. hembra de la loma norte";
/// Whether it travels.
pub const TITLE_TRAVELS: &str = "Poner el título en el enlace";
/// Close a sheet.
pub const CLOSE: &str = "Cerrar";
/// Dismiss a notice.
pub const DISMISS: &str = "Quitar aviso";
/// The animal card.
pub const ANIMAL: &str = "Animal";
/// Marks the example.
pub const EXAMPLE: &str = "Un ejemplo: pon tu animal \u{203a}";
/// Species field.
pub const SPECIES: &str = "Especie";
/// Sex field.
pub const SEX: &str = "Sexo";
/// Age field.
pub const AGE: &str = "Edad";
/// Condition field.
pub const CONDITION: &str = "Época";
/// Stage field.
pub const STAGE: &str = "Cómo se pesó";
/// Weight field.
pub const WEIGHT: &str = "Peso";
/// Girth field.
pub const GIRTH: &str = "Contorno del pecho";
/// Legs switch.
pub const LEGS_ON: &str = "Se pesó con la parte baja de las patas";
/// The losses card.
pub const LOSSES: &str = "Pérdidas";
/// Shot field.
pub const SHOT: &str = "El tiro";
/// Care field.
pub const CARE: &str = "Limpieza de los huesos";
/// Days field.
pub const HUNG: &str = "Días colgado, sin piel";
/// Caution at the shot.
pub const SHOT_CAUTION: &str = "Tira la carne alrededor del trayecto de la bala y no la muelas. No se conoce una distancia segura; no enjuagues la carne. La carne que tocó contenido de las tripas se tira, con un margen alrededor.";
/// Caution at hanging.
pub const HUNG_CAUTION: &str = "Cuelga a 40 °F (4 °C) o menos; los consejos publicados no pasan de 5 a 7 días. No madures lo que piensas moler.";
/// The packing card.
pub const PACKING: &str = "Paquetes";
/// People field.
pub const PEOPLE: &str = "Personas a la mesa";
/// Appetite field.
pub const APPETITE: &str = "Apetito";
/// The plate.
pub const PLATE: &str = "La lámina";
/// View switch.
pub const VIEW: &str = "Vista";
/// Region buttons.
pub const REGIONS: &str = "Región";
/// The whole animal.
pub const WHOLE: &str = "Entero";
/// The legend.
pub const LEGEND: &str = "Leyenda";
/// What to do first, on a phone.
pub const TAP_REGION: &str = "Toca el animal para acercarte y luego toca un músculo.";
/// What to do first, elsewhere.
pub const TAP_MUSCLE: &str = "Toca un músculo para decidir qué será.";
/// Give a whole region one product.
pub const ALL_OF_REGION: &str = "Todo será";
/// Choose.
pub const CHOOSE: &str = "elige…";
/// The list.
pub const LIST: &str = "Todos los músculos";
/// Columns of the list.
pub const MUSCLE: &str = "Músculo";
/// Column.
pub const BECOMES: &str = "Será";
/// Column.
pub const GIVES: &str = "Rinde";
/// In the list, a muscle in parts.
pub const DIVIDED: &str = "En partes";
/// In the list, sides that differ.
pub const UNEVEN: &str = "Distinto en cada lado";
/// Every muscle back.
pub const RESET: &str = "Regresar todos a lo usual";
/// The sheet's choice.
pub const WHAT_BECOMES: &str = "Qué será";
/// Thickness stepper.
pub const THICKNESS: &str = "Grosor";
/// Cube stepper.
pub const CUBE: &str = "Cubo";
/// Roast size.
pub const ROAST_SIZE: &str = "Tamaño del asado";
/// Whole roast.
pub const ROAST_WHOLE: &str = "Entero";
/// By weight.
pub const ROAST_WEIGHT: &str = "Por peso";
/// By length.
pub const ROAST_LENGTH: &str = "Por largo";
/// Weight of a roast.
pub const EACH_WEIGHS: &str = "Peso de cada uno";
/// Length of a roast.
pub const EACH_IS_LONG: &str = "Largo de cada uno";
/// Smaller.
pub const LESS: &str = "Menos";
/// Larger.
pub const MORE: &str = "Más";
/// Sides.
pub const SIDES: &str = "Para qué lado";
/// Both.
pub const BOTH: &str = "Ambos lados";
/// Taken.
pub const TAKEN: &str = "Aprovechar este músculo";
/// Divide.
pub const DIVIDE: &str = "Dividir a lo largo";
/// Remove a part.
pub const REMOVE_PART: &str = "Unir con su vecina";
/// Length of a part.
pub const PART_LENGTH: &str = "Parte del largo, %";
/// About the muscle.
pub const ABOUT: &str = "Sobre este músculo";
/// How a muscle comes off the bones.
pub const TAKE_OFF: &str = "Para sacarlo";
/// The knife.
pub const KNIFE: &str = "El cuchillo";
/// Tenderness.
pub const TENDER: &str = "Suavidad";
/// Silverskin.
pub const SILVERSKIN: &str = "Telilla";
/// The tally.
pub const TALLY: &str = "Cuenta";
/// Details of the tally.
pub const SHOW_TALLY: &str = "Más";
/// Fewer details.
pub const HIDE_TALLY: &str = "Menos";
/// Under the take-home weight.
pub const TO_TAKE_HOME: &str = "para casa";
/// The ledger.
pub const LEDGER: &str = "A dónde va el peso";
/// A price's unit.
pub fn price_unit(units: Units) -> &'static str {
    match units {
        Units::Pounds => "por lb",
        Units::Kilograms => "por kg",
    }
}

/// Packages column.
pub const PACKAGES: &str = "Paquetes";
/// Take-home.
pub const TAKE_HOME: &str = "Para casa";
/// How was it worked out.
pub const WORKED_OUT: &str = "Cómo se calculó";
/// Inputs.
pub const INPUTS: &str = "Datos y fuentes";

/// "Part 2".
pub fn part(number: usize) -> String {
    format!("Parte {number}")
}

/// Read out after a number that can be pressed.
pub const HOW: &str = ": cómo se calculó";
/// "How Bone was worked out", for a number that can be tapped.
pub fn how(name: &str) -> String {
    format!("{name}: cómo se calculó")
}

/// "4 of 5".
pub fn of_five(value: u8) -> String {
    format!("{value} de 5")
}

/// "8.2 lb, both sides".
pub fn both_sides(mass: &str) -> String {
    format!("{mass}, ambos lados")
}

/// "24 in long".
pub fn long(length: &str) -> String {
    format!("{} de largo", super::around(length))
}

/// The name of a muscle's choice in the list.
pub fn becomes(muscle: &str) -> String {
    format!("{muscle}: qué será")
}

/// A field of the packing card.
pub fn packed(product: &str) -> String {
    format!("{product} por paquete")
}

/// Beside a poor use.
pub const POOR: &str = "no conviene";
/// Beside a use that is refused.
pub const NOT_POSSIBLE: &str = "no se puede";
