//! Words of the plate's tools: painting, wounds, names, layers, pictures, sheets for a class.

use hindsaddle_model::anatomy::{Muscle, Side};

use super::names;
use crate::store::Naming;

/// The row of tools.
pub const TOOLS: &str = "Herramientas de la lámina";
/// All the way back.
pub const BACK_TO_WHOLE: &str = "\u{2039} Animal entero";
/// The tool that gives one product to many muscles.
pub const PAINT: &str = "Pintar";
/// The tool that marks a wound.
pub const WOUND: &str = "Herida";
/// The tool that names the muscles.
pub const NAMES: &str = "Nombres";
/// The tool that lifts muscles off.
pub const PEEL: &str = "Levantar";
/// The tool that saves the picture.
pub const SAVE: &str = "Guardar";
/// What to do with a brush.
pub const TAP_PAINT: &str = "Toca músculos para pintarlos.";
/// What to do with the wound tool.
pub const TAP_WOUND: &str = "Toca por donde entró o salió el tiro. Arrastra una marca para moverla.";
/// Size of a wound.
pub const ACROSS: &str = "Ancho";
/// Take a wound away.
pub const REMOVE: &str = "Quitar";
/// A wound without a pointer.
pub const ADD_WOUND: &str = "Marcar una detrás de la paleta";
/// Who should not eat it, after the caution about the bullet path.
pub const LEAD_CAUTION: &str = "Se han hallado fragmentos de plomo hasta a 18 pulg (45 cm) de la herida. La carne de venado cazado con plomo, sobre todo molida, no es para niños pequeños ni para embarazadas. Eso lo decide tu departamento de salud.";
/// Beside the choice of the shot, while wounds are marked.
pub const WOUNDS_COUNT: &str = "Lo que marcas ocupa el lugar de la pérdida media de un tiro, que se contaba hasta ahora: por eso el peso para casa puede subir. Marca por dónde entró y por dónde salió.";
/// How a muscle is found by those around it.
pub const NEXT_TO: &str = "Junto a";
/// Save as SVG.
pub const SAVE_SVG: &str = "Dibujo (SVG)";
/// Save as PNG.
pub const SAVE_PNG: &str = "Imagen (PNG)";
/// Open the sheets.
pub const CLASS_SHEETS: &str = "Hoja de trabajo y respuestas";
/// Name of a saved picture, without its ending.
pub const PICTURE_FILE: &str = "hindsaddle-lamina";
/// Said after saving.
pub const SAVED: &str = "Guardado. Búscalo en tus descargas.";
/// Said when that failed.
pub const NOT_SAVED: &str =
    "Este navegador no pudo hacer la imagen. Imprime la página o prueba con otro navegador.";
/// Print.
pub const PRINT: &str = "Imprimir";
/// Over the sheets.
pub const CLASS_HINT: &str = "Una página cada una: la hoja de trabajo y luego las respuestas. Para otro lado del venado, cierra y elige antes su vista.";
/// For the pupil.
pub const NAME_LINE: &str = "Nombre: ____________________________   Fecha: _____________";
/// Under each sheet.
pub const CLASS_FOOT: &str = "Hindsaddle: un esquema, no a escala de un animal en particular.";

/// "Left side is shown; show the right side".
pub fn shown_side(side: Side) -> &'static str {
    match side {
        Side::Left => "Se ve el lado izquierdo; mostrar el derecho",
        Side::Right => "Se ve el lado derecho; mostrar el izquierdo",
    }
}

/// The switch between the sides, by the one that is shown.
pub fn side_switch(side: Side) -> &'static str {
    match side {
        Side::Left => "\u{21c4}\u{a0}Lado izq.",
        Side::Right => "\u{21c4}\u{a0}Lado der.",
    }
}

/// What a brush does.
pub fn painting(name: &str) -> String {
    format!("{name}: cada músculo que toques será eso, en el tamaño usual.")
}

/// How many layers are off.
pub fn lifted(layers: u8) -> &'static str {
    match layers {
        0 => "Nada levantado",
        1 => "Fuera las telas: tapa, tiras del cuello, costado",
        2 => "Fuera también la paleta",
        3 => "Abierta también el anca",
        _ => "Fuera también pescuezo, espalda y vientre",
    }
}

/// A choice of names.
pub fn naming_choice(naming: Naming) -> &'static str {
    match naming {
        Naming::Off => "Sin nombres",
        Naming::Common => "De carnicero",
        Naming::Anatomical => "Anatómicos",
    }
}

/// What a muscle is called beside it.
pub fn naming(muscle: Muscle, naming: Naming) -> String {
    match naming {
        Naming::Off => String::new(),
        Naming::Common => names::muscle(muscle).into(),
        Naming::Anatomical => anatomical_short(muscle).into(),
    }
}

/// The first, and largest, muscle of a group in anatomy's words.
pub fn anatomical_short(muscle: Muscle) -> &'static str {
    let full = names::anatomical(muscle);
    let end = [" +", " (", ",", "/"].into_iter().filter_map(|mark| full.find(mark)).min();
    &full[..end.unwrap_or(full.len())]
}

/// "Wound 1, left, 7 in across: spoils about 14 oz of rib meat, shoulder clod".
pub fn wound(number: usize, side: Side, reach: &str, lost: &str, muscles: &[&str]) -> String {
    let side = names::side(side).to_ascii_lowercase();
    if muscles.is_empty() {
        return format!("Herida {number}, lado {side}, {reach} de ancho: ahí no hay carne");
    }
    let muscles = muscles.join(", ").to_ascii_lowercase();
    format!(
        "Herida {number}, lado {side}, {reach} de ancho: echa a perder {} de {muscles}",
        super::around(lost)
    )
}

/// "mock tender, shoulder clod".
pub fn touching(muscles: impl Iterator<Item = Muscle>) -> String {
    let names: Vec<&str> = muscles.map(names::muscle).collect();
    names.join(", ").to_ascii_lowercase()
}

/// A wound's handle.
pub fn wound_handle(wound: &str) -> String {
    format!("{wound}. Las flechas la mueven, más y menos cambian su tamaño, Supr la quita")
}

/// "Remove wound 2".
pub fn remove_wound(number: usize) -> String {
    format!("Quitar la herida {number}")
}

/// When a side has none.
pub fn no_wound(side: Side) -> String {
    format!("No hay herida marcada en el lado {}.", names::side(side).to_ascii_lowercase())
}

/// The handle between two parts.
pub fn boundary(part: usize, whole: bool) -> String {
    if whole { "Dividir este músculo".into() } else { format!("Fin de la parte {part}") }
}

/// "35 % of its length".
pub fn percent_of_length(percent: u8) -> String {
    format!("{percent} %")
}

/// Title of a sheet.
pub fn class_title(answers: bool) -> &'static str {
    if answers { "Nombra los músculos: respuestas" } else { "Nombra los músculos" }
}

/// "Elk, outer side".
pub fn class_subject(species: &str, view: &str) -> String {
    format!("{species}, {}", view.to_ascii_lowercase())
}
