//! Words of the kitchen: the table card, grinder, wrap, freezer, dates, labels, work order, files, cautions.

use hindsaddle_model::dates::{Date, DateError, Keeps};
use hindsaddle_model::fat::{Added, FatContent, NamedFat, SquareError};
use hindsaddle_model::freezer::{FreezerError, LoadRule, Trouble, Way};
use hindsaddle_model::grind::{GrindError, Mix, Patty, Plate};
use hindsaddle_model::kitchen::KitchenError;
use hindsaddle_model::labels::LabelError;
use hindsaddle_model::order::Why;
use hindsaddle_model::packages::{Contents, Package};
use hindsaddle_model::units::{Duration, Length, Mass, Temperature, Volume};
use hindsaddle_model::wrap::{Bag, Fold, Misfit, Need, Wrap};

use super::{names, sentences};
use crate::caution::Caution;
use crate::text::numbers::{self, Units};

/// The table card.
pub const TABLE_CARD: &str = "Ficha de mesa";
/// The grinder.
pub const GRINDER: &str = "Moler";
/// The wrap.
pub const WRAPPING: &str = "Envolver";
/// The freezer.
pub const FREEZER: &str = "Congelar";
/// Labels.
pub const LABELS: &str = "Etiquetas";
/// The work order.
pub const WORK_ORDER: &str = "Orden de trabajo";
/// Files.
pub const FILES: &str = "Archivos";
/// Cautions.
pub const CAUTIONS: &str = "Avisos";
/// Under every figure here.
pub const MIDDLE_CASE: &str = "Pesos y cantidades probables. La página del plan tiene sus márgenes.";

// The table card.

/// Next step.
pub const NEXT: &str = "Siguiente";
/// Step before.
pub const BACK: &str = "Atrás";
/// It is done.
pub const DONE: &str = "Hecho";
/// Every step.
pub const ALL_STEPS: &str = "Todos los pasos";
/// The marks go.
pub const START_AGAIN: &str = "Quitar todas las marcas";
/// Keep the screen on.
pub const AWAKE: &str = "Dejar la pantalla encendida";
/// Hand safety, where the knife is.
pub const HAND_CAUTION: &str = "Un cuchillo afilado pide menos fuerza. Corta alejando el filo de la otra mano, y lleva en esa mano un guante anticorte.";
/// Clean-up, at the end.
pub const CLEAN_UP: &str = "Lava tablas, cuchillos y molino con agua caliente y jabón, y luego desinfecta. Tras un venado de una zona con enfermedad debilitante crónica, sigue lo que diga tu agencia para las herramientas.";
/// At the tub.
pub const GRIND_CAUTION: &str = "Muele en frío: enfría la carne y las piezas del molino, y de vuelta al frío si pasan de 40 °F (4 °C). Empuja con el émbolo, nunca con los dedos. Desconecta el molino antes de abrirlo.";
/// The tub as a step.
pub const TUB_STEP: &str = "La tina, por el molino";

/// "Step 3 of 21".
pub fn step_of(step: usize, of: usize) -> String {
    format!("Paso {step} de {of}")
}

/// "4 of 21 done".
pub fn done_of(done: usize, of: usize) -> String {
    format!("{done} de {of} hechos")
}

/// "about 2 oz of ends and trim to the tub".
pub fn ends_and_trim(mass: &str) -> String {
    format!("{} de puntas y recortes a la tina", super::around(mass))
}

/// Why a muscle is worked on now.
pub fn why(why: Why) -> &'static str {
    match why {
        Why::DriesFirst => "Está al descubierto y se seca primero.",
        Why::ChoiceWhileFresh => "Una pieza selecta, mientras tienes las manos descansadas.",
        Why::SlicesNext => "Rebanadas, mientras el cuchillo corta bien.",
        Why::RoastsNext => "Piezas enteras: pocos tajos.",
        Why::CubesNext => "Los cubos no piden cortes parejos.",
        Why::TrimToTheTub => "Todo es recorte: a la tina, y la tina al frío.",
        Why::GrindLast => "Al final, con la tina llena y casi helada.",
    }
}

// Grinding.

/// What the tub becomes.
pub const MIX: &str = "Lo de la tina será";
/// Target.
pub const TARGET_FAT: &str = "Grasa de la mezcla, %";
/// What is added.
pub const ADDED_FAT: &str = "Grasa que se añade";
/// Fat of trim.
pub const TRIM_FAT: &str = "Grasa del recorte de cerdo, %";
/// What is mixed in.
pub const VESSEL: &str = "En la tina caben";
/// Packs or patties.
pub const GROUND_PACKS: &str = "Se empaca en";
/// How many patties.
pub const PATTIES_A_PACK: &str = "Tortitas por paquete";
/// Price field.
pub const PRICE: &str = "Precio de lo que se añade (opcional)";
/// Packs by weight.
pub const BY_WEIGHT: &str = "Paquetes por peso";
/// Over the answer.
pub const GRIND_RESULT: &str = "Qué hacer";
/// No cure.
pub const NO_CURE: &str = "Este programa no calcula curados. La sal de curar en dosis equivocada enferma: sigue una receta probada de tu servicio de extensión, y lo que dice el sobre.";
/// A fat mix.
pub const FATTY: &str = "Eso es más graso de lo que puede ser la molida de res (30 %). Se conserva menos tiempo, y levanta llamas en el asador.";

/// What the tub can become: plain, burger, sausage now, sausage later.
pub const MIXES: [&str; 4] =
    ["Molida sola", "Hamburguesa, con grasa", "Para chorizo, con grasa", "Magra para chorizo, grasa después"];

/// A patty.
pub fn patty(patty: Patty) -> &'static str {
    match patty {
        Patty::FourToOne => "Tortitas, 4 por libra (113 g)",
        Patty::ThreeToOne => "Tortitas, 3 por libra (151 g)",
    }
}

/// What can be added: two fats and trim.
pub const FATS: [&str; 3] = ["Grasa de lomo de cerdo", "Grasa de res", "Recorte de cerdo"];

/// The place of what is added in [`FATS`].
pub fn added_place(added: Added) -> usize {
    match added {
        Added::Fat(NamedFat::PorkBackFat) => 0,
        Added::Fat(NamedFat::BeefFat) => 1,
        Added::PorkTrim(_) => 2,
    }
}

/// The place of a mix in [`MIXES`].
pub fn mix_place(mix: Mix) -> usize {
    match mix {
        Mix::Plain => 0,
        Mix::Burger(_) => 1,
        Mix::SausageLean(Some(_)) => 2,
        Mix::SausageLean(None) => 3,
    }
}

fn content(content: FatContent) -> String {
    numbers::percent(content.to_percent() / 100.0)
}

/// "10 lb from the tub and 1.2 lb pork back fat make 11.2 lb with 10 % fat."
pub fn mixed(lean: Mass, added: Mass, what: Option<&str>, fat: FatContent, units: Units) -> String {
    let write = |mass: Mass| numbers::mass(mass, units);
    match what {
        Some(what) => format!(
            "{} de la tina y {} de {} hacen {} con {} de grasa.",
            write(lean),
            write(added),
            what.to_ascii_lowercase(),
            write(lean + added),
            content(fat)
        ),
        None => format!("{} de la tina, con {} de grasa más o menos.", write(lean), content(fat)),
    }
}

/// "3 batches, each 3.3 lb lean and 6 oz fat."
pub fn batches(count: usize, lean: Mass, added: Mass, units: Units) -> String {
    let write = |mass: Mass| numbers::mass(mass, units);
    let fat = if added > Mass::ZERO { format!(" y {} de lo añadido", write(added)) } else { String::new() };
    let word = if count == 1 { "tanda, con" } else { "tandas, cada una con" };
    format!("{count} {word} {} de magro{fat}.", write(lean))
}

/// Which plates.
pub fn plates(plates: &[Plate]) -> &'static str {
    match plates {
        [Plate::Coarse] => "Una vez por el disco grueso (3/8 pulg, 10 mm): se muele otra vez con su grasa.",
        _ => "Por el disco grueso (3/8 pulg, 10 mm) y luego por el fino (3/16 pulg, 5 mm).",
    }
}

/// "12 packs, 4 oz left for the pan."
pub fn ground_packs(packs: usize, left: Mass, units: Units) -> String {
    let packs = format!("{packs} {}", sentences::packages(packs as u32));
    if left > Mass::grams(5.0) {
        format!("{packs}, y {} para la sartén.", numbers::mass(left, units))
    } else {
        format!("{packs}.")
    }
}

/// "What is added costs about 4.20."
pub fn cost(amount: f64) -> String {
    let cents = (amount * 100.0).round() as i64;
    format!("Lo que se añade cuesta cerca de {}.{:02}.", cents / 100, cents % 100)
}

fn square_error(error: SquareError) -> String {
    match error {
        SquareError::NotAPercentage => "La grasa va de 0 a 100 %. Pon una cifra entre los dos.".into(),
        SquareError::SameFat { both } => {
            format!(
                "Los dos tienen {} de grasa, y ninguna mezcla tendrá otra. Añade algo más graso.",
                content(both)
            )
        }
        SquareError::TargetBelowBoth { least } => {
            format!("Nada aquí tiene menos de {} de grasa. Pide más grasa.", content(least))
        }
        SquareError::TargetAboveBoth { most } => {
            format!(
                "Lo que se añade tiene {} de grasa: una mezcla tiene menos. Pide menos, o añade algo más graso.",
                content(most)
            )
        }
    }
}

/// Why the grinder cannot do that.
pub fn grind_error(error: &GrindError, units: Units) -> String {
    let mass = |mass: &Mass| numbers::mass(*mass, units);
    match error {
        GrindError::Square(error) => square_error(*error),
        GrindError::VesselTooSmall { least } => format!("En una tina caben al menos {}.", mass(least)),
        GrindError::PackOutOfRange { least, most } => {
            format!("Un paquete pesa de {} a {}.", mass(least), mass(most))
        }
        GrindError::NoPatties => "Un paquete lleva al menos una tortita.".into(),
        GrindError::PriceBelowNothing => "Un precio es cero o más.".into(),
    }
}

// Wrap.

/// Roll width.
pub const ROLL: &str = "Ancho del papel";
/// Spare.
pub const SPARE: &str = "Papel, cinta y rollo de sobra, %";
/// The list.
pub const SUPPLIES: &str = "Lista de compras";
/// Columns.
pub const NEEDED: &str = "Hace falta";
/// What is there.
pub const HAVE: &str = "Tengo";
/// What is left to buy.
pub const TO_BUY: &str = "Comprar";
/// How it is wrapped, at the table.
pub const WRAP_HINT: &str = "Lado recubierto hacia la carne, sin aire, cinta para congelar (la de enmascarar se suelta con el frío). Pon una hoja doble entre rebanadas y tortitas.";
/// Vacuum.
pub const VACUUM_CAUTION: &str =
    "El vacío no mantiene segura la carne fuera del frío: va igual al refrigerador o al congelador.";
/// Names of the supplies: paper, tape, sheets between, bags, vacuum rolls, labels.
pub const SUPPLY_NAMES: [&str; 8] = [
    "Papel para congelar",
    "Cinta para congelar",
    "Hojas dobles entre piezas",
    "Bolsas para congelar, un cuarto de galón",
    "Bolsas para congelar, un galón",
    "Rollo de vacío, 8 pulg (20 cm)",
    "Rollo de vacío, 11 pulg (28 cm)",
    "Etiquetas",
];

/// A wrap.
pub fn wrap(wrap: Wrap) -> &'static str {
    match wrap {
        Wrap::Paper(Fold::Butcher) => "Papel, doblez de carnicero (2 vueltas)",
        Wrap::Paper(Fold::Drugstore) => "Papel, doblez de botica (1.5 \u{d7})",
        Wrap::Paper(Fold::DrugstoreShort) => "Papel, doblez de botica (1.33 \u{d7})",
        Wrap::Paper(Fold::Square) => "Papel, un cuadro del rollo",
        Wrap::Zip => "Bolsa con cierre para congelar",
        Wrap::Vacuum => "Bolsa de vacío",
    }
}

/// What one package takes.
pub fn need(need: Result<Need, Misfit>, units: Units) -> String {
    match need {
        Ok(Need::Sheet { length, .. }) => format!("hojas de hasta {}", numbers::rough_length(length, units)),
        Ok(Need::Bag(Bag::Quart)) => "una bolsa de un cuarto de galón".into(),
        Ok(Need::Bag(Bag::Gallon)) => "una bolsa de un galón".into(),
        Ok(Need::VacuumBag { length, .. }) => {
            format!("{} de rollo de vacío", numbers::rough_length(length, units))
        }
        Err(Misfit::PaperTooNarrow { needs }) => {
            format!(
                "no cabe: el papel tendría que medir {} de ancho. Elige un rollo más ancho.",
                numbers::rough_length(needs, units)
            )
        }
        Err(Misfit::NoBagTakesIt) => {
            "no cabe en ninguna bolsa con cierre. Elige papel, o paquetes más chicos.".into()
        }
        Err(Misfit::NoRollTakesIt { needs }) => {
            format!(
                "ningún rollo de vacío mide {} de ancho. Elige papel, o paquetes más chicos.",
                numbers::rough_length(needs, units)
            )
        }
        Err(Misfit::TooManyRoasts { most }) => {
            format!("más de {most} asados en una bolsa de vacío. Elige papel, o menos por paquete.")
        }
    }
}

/// Feet or metres off a roll, whole, rounded up.
pub fn roll_length(length: Length, units: Units) -> String {
    match units {
        Units::Pounds => match (length.to_inches() / 12.0 - 1e-9).ceil().max(0.0) as i64 {
            1 => "1 pie".into(),
            feet => format!("{feet} pies"),
        },
        Units::Kilograms => format!("{} m", (length.to_mm() / 1000.0 - 1e-9).ceil().max(0.0) as i64),
    }
}

// Freezer.

/// Size field.
pub const FREEZER_SIZE: &str = "Tamaño del congelador";
/// Free room field.
pub const FREEZER_FREE: &str = "Espacio libre";
/// Pace.
pub const PACE: &str = "Qué tan rápido se carga";
/// Without a freezer.
pub const NO_FREEZER: &str = "Pon el tamaño de tu congelador (está en su placa o en su manual), y aquí se planea qué paquete entra qué día.";
/// What the small pictures show.
pub const FILLING: &str =
    "En el dibujo: arriba lo que entra ese día, debajo lo ya congelado, al fondo lo que había.";
/// Over the schedule.
pub const SCHEDULE: &str = "Día por día";
/// What freezing asks.
pub const FREEZE_HINT: &str = "En una capa, contra las paredes frías, con aire entre los paquetes; apila cuando estén duros. Lo que espera su turno, guárdalo a menos de 40 °F (4 °C).";
/// Over the times of freezing and thawing.
pub const PACKAGE_TIMES: &str = "Cuánto tarda un paquete";
/// Column: of the thickest package.
pub const FREEZES: &str = "En congelarse, el más grueso";
/// Column: of the heaviest package, in the refrigerator.
pub const THAWS: &str = "En descongelarse, el más pesado";
/// Under it, to be opened.
pub const HOW_COMPUTED: &str = "Cómo se calcula";
/// What that rests on.
pub const PLANK: &str = "Para congelar: ecuación de Plank para una placa, con aire frío en ambas caras: congelador a 0 °F (-18 °C), carne desde 40 °F (4 °C), 8 W/m\u{b2}K del aire quieto al paquete (congeladores caseros: 8 a 15). Un paquete encima de otro tarda más o menos el doble. Un asado compacto se congela algo más rápido que una placa; un congelador lleno o tibio, más despacio. Para descongelar: lo que dicen la fuente más rápida y la más lenta; un asado de 4 lb (1.8 kg) o más cuenta como grande, y eso es criterio nuestro.";
/// Too thick.
pub const TOO_THICK: &str = "Un paquete pasa de 2 pulg (5 cm) de grosor, así que puede tardar más de un día: un asado más delgado o un paquete más plano se congela antes.";
/// Columns.
pub const DAY: &str = "Día";
/// Column.
pub const GOES_IN: &str = "Entra";
/// Column.
pub const WAITS: &str = "Espera en frío";
/// Thawing.
pub const THAW_HINT: &str = "Descongela en el refrigerador: unas 24 horas por cada 5 lb (2.3 kg) de una pieza grande, un día para un paquete de 1 lb de molida. Una vez descongelada ahí la carne, cocina la molida y el guiso en un plazo de 1 a 2 días, y los cortes enteros en un plazo de 3.";

/// How much goes in a day.
pub fn load_rule(rule: LoadRule) -> &'static str {
    match rule {
        LoadRule::Cautious => "2 lb por pie cúbico al día (32 g/L)",
        LoadRule::Full => "3 lb por pie cúbico al día (48 g/L)",
    }
}

/// The unit of a freezer's size.
pub fn volume_unit(units: Units) -> &'static str {
    match units {
        Units::Pounds => "pies³",
        Units::Kilograms => "L",
    }
}

/// What stands in a field for a volume.
pub fn volume_field(volume: Volume, units: Units) -> String {
    match units {
        Units::Pounds => numbers::one_decimal(volume.to_cubic_feet()),
        Units::Kilograms => (volume.to_litres().round() as i64).to_string(),
    }
}

/// A volume with its unit.
pub fn volume(volume: Volume, units: Units) -> String {
    match (volume_field(volume, units), units) {
        (one, Units::Pounds) if one == "1" => "1 pie³".into(),
        (field, _) => format!("{field} {}", volume_unit(units)),
    }
}

/// A typed volume.
pub fn typed_volume(number: f64, units: Units) -> Volume {
    match units {
        Units::Pounds => Volume::cubic_feet(number),
        Units::Kilograms => Volume::litres(number),
    }
}

/// "All of it takes about 1.4 cu ft (1.2 to 1.6); this freezer freezes 14 lb a day."
pub fn room(low: Volume, likely: Volume, high: Volume, load: Mass, units: Units) -> String {
    format!(
        "Todo ocupa {} ({} a {}). Este congelador congela {} al día.",
        super::around(&volume(likely, units)),
        volume_field(low, units),
        volume(high, units),
        numbers::mass(load, units)
    )
}

fn way(way: &Way, units: Units) -> String {
    match way {
        Way::FullLoad => "cárgalo según la mayor de las cifras publicadas".into(),
        Way::BiggerFreezer(size) => format!("usa un congelador de {} o más", volume(*size, units)),
        Way::MakeRoom(room) => format!("libera {} más", volume(*room, units)),
        Way::PackLess(mass) => {
            format!(
                "empaca {} menos ahora: cómelo fresco, o déjalo con hueso en frío",
                numbers::mass(*mass, units)
            )
        }
        Way::Commercial(mass) => {
            format!("que un carnicero congele {}", numbers::mass(*mass, units))
        }
    }
}

/// Why it cannot be frozen so, and what would do.
pub fn trouble(trouble: &Trouble, units: Units) -> String {
    let or = |ways: &[Way]| ways.iter().map(|one| way(one, units)).collect::<Vec<_>>().join("; o ");
    match trouble {
        Trouble::Freezer(error) => freezer_error(error, units),
        Trouble::NoRoom { needs, ways } => {
            format!(
                "Ocupa {}, y hay menos lugar. {}.",
                super::around(&volume(needs.likely(), units)),
                capital(&or(ways))
            )
        }
        Trouble::TooSlow { mass, ways, .. } => format!(
            "Tendría que esperar más de lo debido: {} (molida 1 día, cortes enteros 3). {}.",
            capital(&numbers::mass(*mass, units)),
            capital(&or(ways))
        ),
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_ascii_uppercase().to_string() + letters.as_str())
}

fn freezer_error(error: &FreezerError, units: Units) -> String {
    match error {
        FreezerError::SizeOutOfRange { least, most } => {
            format!(
                "En un congelador caben de {} a {}. Revisa el tamaño.",
                volume(*least, units),
                volume(*most, units)
            )
        }
        FreezerError::FreeOutOfRange { most } => {
            format!("No puede haber más de {} libres. Revisa las dos cifras.", volume(*most, units))
        }
    }
}

/// "8.2 h".
pub fn hours(duration: Duration) -> String {
    let hours = duration.to_hours();
    if hours < 10.0 {
        super::around(&format!("{} h", numbers::one_decimal(hours)))
    } else {
        super::around(&format!("{} h", hours.round() as i64))
    }
}

/// "12 a 14 h".
pub fn hours_range((low, high): (Duration, Duration)) -> String {
    let [low, high] = [low, high].map(|duration| duration.to_hours().round() as i64);
    if low == high { super::around(&format!("{low} h")) } else { format!("{low} a {high} h") }
}

// Dates.

/// Harvest field.
pub const HARVESTED: &str = "Cazado el";
/// Packing field.
pub const PACKED_ON: &str = "Empacado el";
/// Owner field.
pub const OWNER: &str = "Dueño (en etiquetas y orden)";
/// Tag field.
pub const TAG: &str = "Número de cintillo o licencia";
/// Over the table.
pub const BEST_BY: &str = "Mejor antes de";
/// What a best-by date is.
pub const QUALITY: &str = "La fecha es de sabor, no de seguridad: congelada a 0 °F (-18 °C) la carne sigue segura más tiempo. Las fuentes no coinciden; la etiqueta toma el extremo prudente.";
/// Without a step.
pub const NO_STEP: &str =
    "Nada que cortar: todos los músculos se dejan o se tiran. Decide en la página del plan.";
/// Without a date.
pub const NO_DATE: &str = "Pon el día de empaque para ver las fechas «mejor antes de».";
/// Calendar.
pub const SAVE_CALENDAR: &str = "Recordatorios «mejor antes de» (.ics)";

const MONTHS: [&str; 12] =
    ["ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"];

/// "25 Nov 2026".
pub fn date(date: Date) -> String {
    format!("{} {} {}", date.day(), MONTHS[usize::from(date.month()) - 1], date.year())
}

/// A form in which meat is frozen.
pub fn keeps(keeps: Keeps) -> &'static str {
    match keeps {
        Keeps::Roast => "Asados",
        Keeps::Steak => "Bistecs",
        Keeps::Chop => "Chuletas",
        Keeps::Stew => "Guiso",
        Keeps::Ground => "Molida, sola",
        Keeps::GroundWithFat => "Molida, con grasa añadida",
        Keeps::Sausage => "Chorizo crudo",
        Keeps::Organs => "Órganos",
    }
}

/// "8 to 12 months".
pub fn months((from, to): (u8, u8)) -> String {
    if from == to { format!("{to} meses") } else { format!("{from} a {to} meses") }
}

/// A reminder.
pub fn reminder(form: Keeps) -> String {
    format!("{}: con su mejor sabor hasta hoy (venado)", keeps(form))
}

fn date_error(error: &DateError) -> String {
    match error {
        DateError::YearOutOfRange { first, last } => {
            format!("El año va de {first} a {last}. Revisa la fecha.")
        }
        DateError::NoSuchMonth => "Hay doce meses. Revisa la fecha.".into(),
        DateError::NoSuchDay { last } => format!("Ese mes tiene {last} días. Revisa la fecha."),
        DateError::PackedBeforeHarvest { harvested, packed } => format!(
            "La fecha de empaque, {}, es anterior a la de caza, {}. Cambia una de las dos.",
            date(*packed),
            date(*harvested)
        ),
    }
}

/// Why something about the kitchen was refused.
pub fn kitchen_error(error: &KitchenError, units: Units) -> String {
    match error {
        KitchenError::Date(error) => date_error(error),
        KitchenError::Freezer(error) => freezer_error(error, units),
        KitchenError::Grind(error) => grind_error(error, units),
        KitchenError::VesselTooLarge { most } => {
            format!("En una tina caben como mucho {}.", numbers::mass(*most, units))
        }
        KitchenError::TooManyPatties { most } => format!("Un paquete lleva como mucho {most} tortitas."),
        KitchenError::Name { most } => {
            format!("Un nombre o cintillo tiene como mucho {most} caracteres simples.")
        }
        KitchenError::SpareOutOfRange { most } => format!("Lo de sobra va de 0 a {most} %."),
    }
}

// Labels.

/// Sheet field.
pub const SHEET: &str = "Hoja de etiquetas";
/// Own dimensions.
pub const OWN_SHEET: &str = "Propia: pon las medidas";
/// A roll.
pub const ROLL_OF_LABELS: &str = "Rollo continuo";
/// First label.
pub const START_AT: &str = "Primera etiqueta libre";
/// Nudges.
pub const NUDGE_ACROSS: &str = "Mover a la derecha";
/// Nudge down.
pub const NUDGE_DOWN: &str = "Mover abajo";
/// Frames.
pub const FRAMES: &str = "Imprimir los marcos (prueba en papel común)";
/// QR.
pub const WITH_QR: &str = "Un código cuadrado del plan en cada etiqueta";
/// Blank weight.
pub const BLANK_WEIGHT: &str = "Dejar el peso en blanco, para la báscula";
/// Print.
pub const PRINT_LABELS: &str = "Imprimir las etiquetas";
/// Before printing.
pub const PRINT_HINT: &str = "Al imprimir elige este papel, sin márgenes y al 100 % (sin «ajustar a la página»). Pon una regla sobre los 100 mm impresos para comprobar.";
/// The fields of an own sheet.
pub const SHEET_FIELDS: [&str; 8] = [
    "Etiquetas a lo ancho",
    "Etiquetas a lo alto",
    "Ancho de etiqueta, mm",
    "Alto de etiqueta, mm",
    "Margen izquierdo, mm",
    "Margen superior, mm",
    "Paso a lo ancho, mm",
    "Paso a lo alto, mm",
];
/// Under the ruler.
pub const RULER: &str = "100 mm";

/// "3 × 10 labels of 66.7 × 25.4 mm, Letter".
pub fn grid(columns: u8, rows: u8, label: (Length, Length), paper: &str) -> String {
    let mm = |length: Length| numbers::one_decimal(length.to_mm());
    format!("{columns} \u{d7} {rows}, {} \u{d7} {} mm, {paper}", mm(label.0), mm(label.1))
}

/// Half millimetres as millimetres.
pub fn nudge(half_millimetres: i8) -> String {
    format!("{} mm", numbers::one_decimal(f64::from(half_millimetres) / 2.0))
}

/// "2 sheets for 40 labels".
pub fn sheets(sheets: u32, labels: usize) -> String {
    let word = if sheets == 1 { "hoja" } else { "hojas" };
    let of = if labels == 1 { "etiqueta" } else { "etiquetas" };
    format!("{sheets} {word} para {labels} {of}.")
}

/// Why labels cannot be laid out.
pub fn label_error(error: &LabelError) -> String {
    let mm = |length: &Length| format!("{} mm", numbers::one_decimal(length.to_mm()));
    match error {
        LabelError::NoLabels => "Una hoja tiene al menos una etiqueta a lo ancho y una a lo alto.".into(),
        LabelError::NoSize => "Cada medida es un número, y una etiqueta mide más de cero.".into(),
        LabelError::Overlap { least } => {
            format!(
                "Las etiquetas se enciman: el paso debe ser de al menos {} a lo ancho y {} a lo alto.",
                mm(&least.0),
                mm(&least.1)
            )
        }
        LabelError::WiderThanPaper { needs, paper } => {
            format!(
                "Las etiquetas ocupan {} a lo ancho, y el papel tiene {}. Usa menos, más angostas, o un margen menor.",
                mm(needs),
                mm(paper)
            )
        }
        LabelError::TallerThanPaper { needs, paper } => {
            format!(
                "Las etiquetas ocupan {} a lo alto, y el papel tiene {}. Usa menos, más bajas, o un margen menor.",
                mm(needs),
                mm(paper)
            )
        }
        LabelError::StartBeyondLast { last } => {
            format!("Las etiquetas de la hoja van de la 1 a la {last}. Empieza en una de ellas.")
        }
        LabelError::NudgeTooFar { most } => {
            format!("La impresión se mueve como mucho {} mm a cada lado.", i32::from(*most) / 2)
        }
    }
}

/// What a package is: "Backstrap, steak".
pub fn package_name(package: &Package) -> String {
    let product = names::product(package.product);
    match package.contents {
        Contents::Pieces { muscle, .. } => {
            format!("{}, {}", names::muscle(muscle), product.to_ascii_lowercase())
        }
        Contents::Pooled => if package.product == hindsaddle_model::product::Product::Grind {
            "Carne molida"
        } else {
            product
        }
        .into(),
        Contents::Patties(_) => "Tortitas de hamburguesa".into(),
    }
}

/// How many pieces: "14 steaks"; empty where they are not counted.
pub fn package_pieces(package: &Package) -> String {
    match package.contents {
        Contents::Pieces { pieces, .. } => format!("{pieces} {}", names::pieces(package.product, pieces)),
        Contents::Pooled => String::new(),
        Contents::Patties(1) => "1 tortita".into(),
        Contents::Patties(patties) => format!("{patties} tortitas"),
    }
}

/// "3 of 11".
pub fn number_of(number: u32, of: u32) -> String {
    format!("{number} de {of}")
}

/// The weight of a label, or a line to write it on.
pub fn label_weight(mass: Option<String>) -> String {
    mass.map_or_else(|| "Peso: __________".into(), |mass| super::around(&mass))
}

/// "Packed 25 Nov 2026".
pub fn packed_on(day: Date) -> String {
    format!("Empacado {}", date(day))
}

/// "killed 21 Nov 2026".
pub fn killed_on(day: Date) -> String {
    format!("cazado {}", date(day))
}

/// "Best by 25 May 2027".
pub fn best_by(day: Date) -> String {
    format!("Mejor antes del {} (sabor)", date(day))
}

/// What it is cooked to.
pub fn cook_to(first: Temperature, most: Temperature) -> String {
    let f = |temperature: Temperature| temperature.to_fahrenheit().round() as i64;
    let c = |temperature: Temperature| temperature.to_celsius().round() as i64;
    format!("Cocinar hasta {} °F / {} °C ({} °F si se aconseja)", f(first), c(first), f(most))
}

/// On every label.
pub const NOT_FOR_SALE: &str = "Carne de caza, no se vende";

// Work order.

/// Column.
pub const MUSCLE_COLUMN: &str = "Músculo";
/// Column.
pub const LEFT_COLUMN: &str = "Será";
/// Column.
pub const EXPECTED: &str = "Se espera";
/// Notes.
pub const NOTES: &str = "Notas";
/// Print.
pub const PRINT_ORDER: &str = "Imprimir la orden de trabajo";
/// What an order is.
pub const ORDER_HINT: &str = "Una página para quien corta: un carnicero, un compañero, tú. Las cantidades son lo que se espera, no una promesa; pregunta antes de cambiar un corte.";
/// Blank fields.
pub const OWNER_LINE: &str = "Dueño";
/// Tag.
pub const TAG_LINE: &str = "Cintillo";

// Files.

/// CSV.
pub const SAVE_CSV: &str = "Paquetes (.csv)";
/// Plan file.
pub const SAVE_PLAN: &str = "Plan como archivo";
/// Open.
pub const OPEN_PLAN: &str = "Abrir un archivo de plan";
/// What files are for.
pub const FILES_HINT: &str = "Nada sale de este aparato hasta que lo envíes. Un archivo de plan lleva el enlace, con títulos, nombres y cintillos solo si lo marcas; se abre aquí y en toda versión posterior.";
/// A file that is none.
pub const FILE_TOO_LONG: &str = "Este archivo es demasiado largo para ser un plan. Tu plan sigue aquí.";
/// Heads of the columns of the CSV file.
pub const CSV_HEAD: [&str; 14] = [
    "paquete",
    "producto",
    "musculo",
    "piezas",
    "gramos",
    "numero",
    "de",
    "empacado",
    "mejor_antes",
    "dueno",
    "cintillo",
    "especie",
    "animal",
    "prueba",
];

// Cautions.

/// Under the cautions.
pub const CAUTION_FOOT: &str =
    "Es solo una ayuda para planear. Deciden tu agencia de fauna y tu departamento de salud.";

/// A caution: what it is about, and what it says.
pub const fn caution(caution: Caution) -> (&'static str, &'static str) {
    match caution {
        Caution::Testing => (
            "Prueba de enfermedad",
            "Haz primero la prueba donde tu agencia de fauna la pida o la aconseje. Congela y etiqueta los paquetes, y no los comas hasta tener el resultado. Si es positivo, no comas nada de ese animal; pregunta a la agencia cómo desecharlo.",
        ),
        Caution::PartsLeftOut => (
            "Partes que se dejan fuera",
            "Deja fuera sesos, ojos, espinazo, bazo, amígdalas y ganglios linfáticos. Separa la carne del hueso; no sierres el espinazo. Quita la grasa de las costuras.",
        ),
        Caution::OneAnimal => ("Un animal a la vez", "Mantén aparte la carne de cada animal."),
        Caution::Tag => (
            "Cintillo y evidencia de sexo",
            "Deja el cintillo, y la evidencia de sexo o especie si se pide, con la carne todo el tiempo que mande el reglamento de tu estado. Cortar la carne demasiado pronto puede violarlo. Infórmate antes de cruzar el límite de una zona o de un estado; algunos lugares solo dejan salir carne sin hueso.",
        ),
        Caution::Selling => (
            "Vender y regalar",
            "La carne de caza no se puede vender en casi ningún lugar. Regalarla puede requerir una nota firmada. Revisa el reglamento de tu estado.",
        ),
        Caution::BulletPath => (
            "El trayecto de la bala",
            "Tira la carne alrededor del trayecto de la bala y no la muelas. No se conoce una distancia segura: se han hallado fragmentos hasta a 18 pulg (45 cm) de distancia. No enjuagues la carne. Si cazas con plomo, no sirvas ese venado, sobre todo molido, a niños pequeños ni a embarazadas.",
        ),
        Caution::Gut => (
            "Contenido de las tripas",
            "La carne que tocó contenido de las tripas se tira, con un margen alrededor. No intentes limpiarla lavándola.",
        ),
        Caution::Cold => (
            "Enfriar pronto",
            "Lleva la carne a menos de 40 °F (4 °C), y pronto. Si estuvo tibia mucho rato y huele mal o se siente rara al tacto, tírala.",
        ),
        Caution::Ageing => (
            "Maduración",
            "No madures carne que piensas moler, ni en un lugar que no puedas tener a menos de 40 °F (4 °C).",
        ),
        Caution::Cooking => (
            "Cocción",
            "Cocina hasta 160 °F (71 °C) por dentro, con termómetro; algunas agencias dicen 165 °F (74 °C). La molida, siempre.",
        ),
        Caution::GrinderAndKnife => (
            "Molino y cuchillo",
            "Muele en frío. Empuja con el émbolo, nunca con los dedos. Desconecta antes de abrir. Ten el cuchillo afilado y la otra mano detrás del filo.",
        ),
        Caution::Freezing => (
            "Congelación",
            "Congela en una sola capa delgada, pocas libras al día, a 0 °F (-18 °C). La fecha del paquete es de sabor; la seguridad depende de que siga congelado.",
        ),
        Caution::Thawing => (
            "Descongelar y vacío",
            "Descongela en el refrigerador. Los paquetes al vacío no mantienen segura la carne fuera de él.",
        ),
        Caution::Cure => (
            "Curados y carne seca",
            "Los curados y la carne seca pueden enfermar si la dosis o el calor están mal: sigue una receta probada de tu servicio de extensión, no este programa.",
        ),
        Caution::Organs => (
            "Órganos",
            "Revisa el aviso sanitario de tu estado antes de comer hígado, riñón u otros órganos.",
        ),
    }
}

// A plan that was received.

/// The page.
pub const RECEIVED: &str = "Tu orden de trabajo";
/// What can be done on it.
pub const READ_ONLY: &str = "Solo para leer: aquí no cambia nada tuyo.";
/// The way to the page for learning.
pub const WHERE_CUTS_ARE: &str = "Dónde están los cortes, y por qué";
/// The way to one's own plan.
pub const TO_OWN_PLAN: &str = "A tu propio plan";
/// The choice.
pub const YOURS_OR_THEIRS: &str = "El tuyo o el suyo";
/// There is none.
pub const IS_YOURS: &str = "Este es el plan que ya tienes.";
/// There is one.
pub const HAVE_OWN: &str = "Tienes un plan propio; queda como está.";
/// There is nothing of one's own.
pub const PLAN_ON: &str = "Seguir planeando desde este";
