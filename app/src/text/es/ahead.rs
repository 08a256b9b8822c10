//! Words of the third page and of what all pages share: their names, and those of the animals.

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::deal::{Deal, Worst};
use hindsaddle_model::packages::Package;
use hindsaddle_model::partners::{Claim, Partners, PartnersError};
use hindsaddle_model::plan::{Plan, Tested};
use hindsaddle_model::planner::assignment::{Found, SHORT};
use hindsaddle_model::planner::{Lack, Proposed, Unmet, Why};
use hindsaddle_model::product::Product;
use hindsaddle_model::season::Season;
use hindsaddle_model::units::Mass;
use hindsaddle_model::wishes::{Demand, WishError};

use super::names;
use super::sentences::animal_line;
use crate::text::numbers::{self, Units};

/// The name of a page: the plan, thinking ahead, the kitchen.
pub const fn page(place: usize) -> &'static str {
    ["Hindsaddle", "Deseos y reparto", "De la mesa al congelador", "Aprender"][place]
}

/// The way to it.
pub const fn way(place: usize) -> &'static str {
    ["Plan", "Deseos", "Cortar y envolver", "Aprender"][place]
}

/// The parts of a page.
pub const PARTS_OF_PAGE: &str = "Partes de la página";
/// The animals.
pub const ANIMALS: &str = "Animales";
/// All animals.
pub const SEASON: &str = "Temporada";
/// Two plans.
pub const COMPARE: &str = "Comparar";
/// There is only one.
pub const ONE_ANIMAL: &str = "Por ahora hay un animal. Otro empieza con la misma clase y los mismos cortes; paquetes, compras, congelador y etiquetas se suman, y cada animal conserva su cintillo, sus fechas y su prueba.";
/// There are several.
pub const SEASON_HINT: &str = "Toca un animal para verlo en todas las páginas. La carne de cada uno queda aparte: su cintillo, fechas y prueba van en sus etiquetas.";
/// Another.
pub const ADD_ANIMAL: &str = "Añadir un animal cortado igual";
/// No more.
pub fn season_full(most: usize) -> String {
    format!("En una temporada caben {most} animales. Empieza otro plan para más.")
}
/// To the plan's page.
pub const PLAN_IT: &str = "Planearlo \u{203a}";
/// Up the list.
pub const EARLIER: &str = "Subir";
/// Down the list.
pub const LATER: &str = "Bajar";
/// What is done, and to which animal.
pub fn of_animal(what: &str, name: &str) -> String {
    format!("{what}: {name}")
}
/// The cuts of another animal for this one.
pub fn cuts_of(name: &str) -> String {
    format!("Cortarlo como {name}")
}
/// All animals.
pub const TOGETHER: &str = "Todos juntos";
/// How they are added.
pub const TOGETHER_HINT: &str = "Las cifras probables se suman. Los mínimos y máximos se suman como si todos los animales salieran bajos o altos a la vez, así que el margen real es algo más estrecho.";

/// "2 Doe", or the title.
pub fn animal_name(plan: &Plan, place: usize) -> String {
    let name = if plan.title().is_empty() {
        names::sex(plan.animal().sex(), plan.animal().species())
    } else {
        plan.title()
    };
    format!("{} {name}", place + 1)
}

/// Over what is of all animals.
pub fn for_all(animals: usize) -> String {
    match animals {
        1 => "Para el único animal de la temporada que se puede comer.".into(),
        _ => format!("Para los {animals} animales de la temporada que se pueden comer."),
    }
}

/// The test for a disease.
pub const TEST: &str = "Prueba de enfermedad (CWD)";

/// What it says.
pub const fn tested(tested: Tested) -> &'static str {
    match tested {
        Tested::NotAsked => "Sin dato",
        Tested::Awaited => "Resultado pendiente",
        Tested::Clear => "No detectada",
        Tested::DoNotEat => "No comer",
    }
}

/// What follows.
pub const fn tested_caution(tested: Tested) -> Option<&'static str> {
    match tested {
        Tested::NotAsked | Tested::Clear => None,
        Tested::Awaited => Some(
            "Congélalo aparte y no comas nada de él hasta tener el resultado. Sus etiquetas lo dicen. La prueba no es de seguridad alimentaria: pregunta a tu agencia de fauna.",
        ),
        Tested::DoNotEat => Some(
            "No comas ni regales nada de él. Su carne no se suma a la de los demás animales. Pregunta a tu agencia de fauna cómo desecharlo.",
        ),
    }
}

/// On the label of its packages.
pub const fn tested_label(tested: Tested) -> &'static str {
    match tested {
        Tested::NotAsked | Tested::Clear => "",
        Tested::Awaited => "ESPERAR: falta el resultado",
        Tested::DoNotEat => "NO COMER",
    }
}

/// Packages and what they weigh.
pub fn packs_and_mass(packs: &str, mass: &str) -> String {
    format!("{packs} \u{b7} {mass}")
}

/// How much tender meat is cooked tender.
pub const TENDER_USE: &str = "Carne tierna que queda entera";

/// A part of it, if there is any.
pub fn part_of_tender(part: Option<f64>) -> String {
    part.map_or_else(|| "no hay".into(), |part| format!("{} %", (part * 100.0).round() as u32))
}

/// What the knife has to do.
pub const KNIFE_WORK: &str = "Trabajo de cuchillo";

/// Roasts, steaks and chops.
pub fn knife_pieces(count: u32) -> String {
    if count == 1 { "1 pieza".into() } else { format!("{count} piezas") }
}

/// Cubes of stew.
pub fn knife_cubes(count: u32) -> String {
    if count == 1 { "1 cubo".into() } else { format!("{count} cubos") }
}

/// What is compared.
pub const FIRST_PLAN: &str = "Un plan";
/// With what.
pub const OTHER_PLAN: &str = "Otro plan";
/// A plan that came by link.
pub const PASTED: &str = "De un enlace";
/// Where it is pasted.
pub const PASTE_LINK: &str = "Pega aquí un enlace para comparar";
/// Nothing to compare with.
pub const COMPARE_HINT: &str = "Añade un animal cortado igual y cámbialo, o pega el enlace de otro plan: lo que da cada uno queda lado a lado.";
/// What the lines mean.
pub const COMPARE_NOTE: &str = "Carne tierna es la de músculos de suavidad 4 y 5 de 5 (criterio); lo que de ella se hace asado, bistec o chuleta cuenta como entero. El trabajo de cuchillo es del caso medio.";

// Sharing.

/// The part.
pub const SHARE: &str = "Compartir";
/// Over the list of what goes along.
pub const WHAT_TRAVELS: &str = "Qué viaja";
/// Names go along only if this is ticked.
pub const NAMES_TRAVEL: &str = "También títulos, nombres y cintillos";
/// Who opens the link.
pub const FOR_WHOM: &str = "Para quién";
/// Who that may be.
pub const WHOM: [&str; 2] = ["Quien corta según el plan", "Quien lo sigue planeando"];
/// What each of them sees.
pub const WHOM_HINTS: [&str; 2] = [
    "Se abre para leer, primero la orden de trabajo. Quien lo abre conserva su propio plan tal como está.",
    "Se abre el plan mismo, para cambiarlo. El plan que ya tenía queda guardado.",
];
/// In the one file.
pub const NO_ADDRESS: &str = "Esta página se abrió desde un archivo, así que no tiene una dirección que otro aparato pueda abrir. Guarda el plan como archivo y entrégalo junto con este: la otra persona lo abre en Cortar y envolver, Archivos.";
/// The device's own way.
pub const SHARE_BY: &str = "Compartir\u{2026}";
/// Everything in one file.
pub const ONE_FILE: &str = "Todo el programa en un archivo";
/// What for.
pub const ONE_FILE_HINT: &str =
    "se abre desde una memoria o un mensaje, sin red. Descárgalo mientras la haya.";
/// From screen to screen.
pub const CODE: &str = "De pantalla a pantalla";
/// How.
pub const CODE_HINT: &str = "Pon la cámara del otro teléfono sobre el código; no hace falta red para leerlo, ni para abrirlo donde esta página ya se abrió. Sube el brillo, y ponte a la sombra.";
/// What it is, for who cannot see it.
pub const CODE_ALT: &str = "El enlace del plan como código para fotografiar";
/// As large as it gets.
pub const FULL_SCREEN: &str = "Llenar la pantalla";
/// Too long.
pub const NO_CODE: &str = "Este plan es demasiado largo para un código. Envía el enlace o el archivo.";

/// One line of what travels: an animal.
pub fn travels(plan: &Plan, named: bool, units: Units) -> String {
    let title =
        if named && !plan.title().is_empty() { format!(" («{}»)", plan.title()) } else { String::new() };
    format!("{}{title}, sus cortes, empaque y fechas", animal_line(plan, units))
}

/// What never travels.
pub const STAYS: &str =
    "No: marcas de «hecho», planes guardados, lo que tienes en casa, ajustes de etiquetas";
/// The partners.
pub fn partners_travel(count: usize, named: bool) -> String {
    format!(
        "{count} compañeros, sus partes y lo que pidieron, {} sus nombres",
        if named { "con" } else { "sin" }
    )
}
/// Owners and tags.
pub const NAMES_GO: &str = "Dueños y cintillos";
/// They stay.
pub const NAMES_STAY: &str = "Ni título, ni dueño, ni nombre, ni cintillo";

// Kept plans.

/// The part.
pub const KEPT_PLANS: &str = "Planes guardados";
/// What they are.
pub const KEPT_HINT: &str = "Planes apartados en este aparato. Cuando un enlace o un archivo toma el lugar de tu plan, el tuyo se guarda aquí por sí solo.";
/// This one, too.
pub const KEEP_THIS: &str = "Guardar el plan abierto";
/// What it is called.
pub const KEPT_NAME: &str = "Nombre";
/// Open it.
pub const OPEN_KEPT: &str = "Abrir";
/// Gone.
pub const REMOVED: &str = "Quitado.";
/// Not gone.
pub const BRING_BACK: &str = "Traerlo de vuelta";
/// Another like it.
pub const COPY_KEPT: &str = "Duplicar";
/// What the other is called.
pub fn copy_of(name: &str) -> String {
    if name.is_empty() { "Copia".into() } else { format!("{name}, copia") }
}

// This device.

/// The part.
pub const DEVICE: &str = "Este aparato";
/// What may be kept.
pub const HELD: [&str; 8] = [
    "El plan",
    "Planes guardados",
    "Marcas de «hecho» en la mesa",
    "Ajustes de etiquetas",
    "Lo que tienes en casa",
    "Tus propias cifras",
    "Práctica",
    "Un plan que no se pudo leer",
];
/// How much of it.
pub fn characters(count: usize) -> String {
    if count == 0 { "nada".into() } else { format!("{count} caracteres") }
}
/// Over being installed.
pub const INSTALL_HEAD: &str = "Entre las aplicaciones";
/// It is.
pub const IS_INSTALLED: &str = "Está instalado en este aparato: se abre sin navegador y sin red.";
/// What that does.
pub const INSTALL_HINT: &str = "Así tiene su propio icono y se abre sin red.";
/// Asks the browser for it.
pub const INSTALL: &str = "Instalar";
/// Where the browser has no offer.
pub const INSTALL_BY_HAND: &str = "Este navegador no lo ofrece desde aquí. Busca en su propio menú «Instalar» o «Agregar a pantalla de inicio». También sin eso la página se abre sin red después de una visita.";
/// Over forgetting.
pub const FORGET_HEAD: &str = "Olvidarlo todo";
/// Before it; the name of a page follows.
pub const FORGET_HINT: &str = "Para un aparato que no es tuyo. Lo que compartiste sigue con quien lo tiene; un plan que quieras conservar se guarda como archivo en";
/// The first press.
pub const FORGET_ASK: &str = "Olvidar todo en este aparato";
/// What it means.
pub const FORGET_SURE: &str = "El plan, los planes guardados, las marcas de «hecho», tus propias cifras y todos los ajustes se borran de este aparato para siempre. Deshacer no los devuelve.";
/// The second press.
pub const FORGET_ALL: &str = "Sí, olvidarlo todo";
/// The other.
pub const FORGET_NOT: &str = "No, conservarlo";
/// Over what is kept where.
pub const WHAT_IS_WHERE: &str = "Qué se guarda dónde";
/// What is kept where.
pub const WHERE_THINGS_ARE: [&str; 4] = [
    "El plan: en la dirección y en este navegador, tras cada cambio.",
    "Los pasos atrás: en esta ventana, hasta cerrarla.",
    "Marcas de «hecho», planes guardados, ajustes de etiquetas y lo que tienes en casa: solo en este navegador.",
    "Nada se envía a ningún lado. Un navegador puede borrar lo que guarda una página si no se abre en unos días: un enlace o un archivo dura más.",
];
/// Asks the browser.
pub const ASK_TO_KEEP: &str = "Pedir al navegador que no lo borre";
/// It agrees.
pub const WILL_KEEP: &str = "El navegador no lo borrará por su cuenta.";
/// It does not.
pub const WILL_NOT_KEEP: &str = "El navegador no lo prometió. Un enlace o un archivo es seguro.";

/// A season in a line.
pub fn season_line(season: &Season, units: Units) -> String {
    let plan = season.animal(0);
    let title = if plan.title().is_empty() { String::new() } else { format!("{}: ", plan.title()) };
    let more = match season.animals().len() {
        1 => String::new(),
        count => format!(", y {} más", count - 1),
    };
    format!("{title}{}{more}", animal_line(plan, units))
}

// Wishes.

/// The part.
pub const WISHES: &str = "Deseos";
/// What a dinner is.
pub fn dinner(people: u8, mass: &str) -> String {
    let table = if people == 1 { "una persona".to_owned() } else { format!("{people} personas") };
    format!(
        "Di qué quieres comer, y el programa encuentra los cortes. Una cena equivale a {mass} de carne: una comida para {table}, como en Paquetes, en la página del plan."
    )
}
/// Nothing is wished.
pub const NO_WISHES: &str = "Todavía no hay deseos.";
/// An invented example.
pub const EXAMPLE_WISHES: &str =
    "Prueba un ejemplo inventado: 8 cenas de asado, 20 de molida, el filete entero";
/// How much of a product is wished.
pub const WISH_KINDS: [&str; 4] = ["El resto", "Cenas", "Parte de la carne", "Nada"];
/// The number of a wish.
pub fn product_wish(product: Product, kind: &str) -> String {
    format!("{}: {}", super::product(product), kind.to_ascii_lowercase())
}
/// What muscles must and must not become.
pub const DEMANDS: &str = "Debe y nunca";
/// Nothing chosen.
pub const NEW_DEMAND: &str = "Elige un músculo";
/// Nothing chosen.
pub const WHICH_DEMAND: &str = "Elige";
/// The muscle.
pub const DEMAND_MUSCLE: &str = "Músculo";
/// What it must be.
pub const DEMAND_WHAT: &str = "Qué hacer con él";
/// The most pieces.
pub const MOST_PIECES: &str = "Máximo de asados, bistecs y chuletas (vacío: sin límite)";
/// Find it.
pub const PLAN_WISHES: &str = "Buscar el mejor plan";
/// It is being found.
pub fn planning(nodes: u64) -> String {
    format!("Buscando: {nodes} formas hasta ahora\u{2026}")
}
/// Impossible.
pub fn too_much_work(least: u32) -> String {
    format!("Los «debe» piden al menos {}. Permite más, o quita un «debe».", knife_pieces(least))
}
/// A demand.
pub fn demand(demand: Demand) -> String {
    let product = |product: Product| super::product(product).to_ascii_lowercase();
    match demand {
        Demand::Keep => "sin cambios".into(),
        Demand::Whole => "un asado entero".into(),
        Demand::Must(of) => format!("debe ser {}", product(of)),
        Demand::Never(of) => format!("nunca {}", product(of)),
    }
}
/// A demand on a muscle.
pub fn demand_on(muscle: Muscle, of: Demand) -> String {
    format!("{}: {}", super::muscle(muscle), demand(of))
}
/// The answer.
pub const PROPOSAL: &str = "El mejor plan para eso";
/// Before.
pub const AS_IT_IS: &str = "Como está";
/// After.
pub const AS_WISHED: &str = "Como se desea";
/// Everything wished is there.
pub const ALL_MET: &str = "Se cumplen todos los deseos, en el caso probable.";
/// Take it.
pub const USE_PROPOSAL: &str = "Usar este plan";
/// Do not.
pub const LEAVE_PROPOSAL: &str = "No usarlo";
/// Over the reasons.
pub const WHY_SO: &str = "Por qué cada músculo";

/// What could not be met, by how much and why.
pub fn unmet(unmet: &Unmet, units: Units) -> String {
    let tenths = (unmet.dinners * 10.0).round().max(1.0) as u32;
    let number = if tenths.is_multiple_of(10) {
        (tenths / 10).to_string()
    } else {
        format!("{}.{}", tenths / 10, tenths % 10)
    };
    let (lack, dinners) = if tenths == 10 { ("Falta", "cena") } else { ("Faltan", "cenas") };
    let why = match unmet.lack {
        Lack::NothingLeft => "no queda ningún músculo que pueda serlo.",
        Lack::KnifeWork => "más sería más trabajo de cuchillo del que permites.",
        Lack::OtherWishes => "los otros deseos se llevan lo que queda.",
    };
    format!(
        "{lack} {number} {dinners} de {} ({}): {why}",
        super::product(unmet.product).to_ascii_lowercase(),
        numbers::mass(unmet.missing, units)
    )
}

/// Proven, or how far from best it may be.
pub fn how_sure(found: &Found, units: Units) -> String {
    if found.is_proven {
        return format!(
            "Demostrado: ninguna forma de cortarlo lo cumple mejor. Formas revisadas: {}.",
            found.nodes
        );
    }
    let worth = Mass::grams((found.cost - found.bound) as f64 / SHORT as f64);
    format!(
        "Se detuvo tras {} formas. Puede haber un plan mejor, pero la ventaja no pasa de lo que vale dejar sin cumplir {} de un deseo.",
        found.nodes,
        numbers::mass(worth, units)
    )
}

/// A muscle, what it is to become, and why.
pub fn proposed(row: &Proposed) -> String {
    let product = |of: Product| super::product(of).to_ascii_lowercase();
    let becomes = match row.sides {
        None => "sin cambios".to_owned(),
        Some([left, right]) if left == right => product(left),
        Some([left, right]) => format!("{} a la izquierda, {} a la derecha", product(left), product(right)),
    };
    let why = match row.why {
        Why::Kept => "se pidió sin cambios".to_owned(),
        Why::Demanded(of) => format!("por «{}»", demand(of)),
        Why::BestUse => "su mejor uso".to_owned(),
        Why::Wished(of) => format!("el deseo de {} lo necesita", product(of)),
        Why::Enough(usual) => format!("suele ser {}, y de eso hay bastante", product(usual)),
        Why::Otherwise => "cumple los deseos con menos pérdida que su uso normal".to_owned(),
    };
    format!("{}: {becomes} \u{2013} {why}", super::muscle(row.muscle))
}

/// Why wishes cannot be.
pub fn wish_error(error: &WishError) -> String {
    let product = |of: Product| super::product(of).to_ascii_lowercase();
    match error {
        WishError::TooManyDinners { most } => {
            format!("Se pueden planear como mucho {most} cenas de una clase.")
        }
        WishError::SharesOverAll { total } => {
            format!("Las partes suman {total} % de la carne. Que sean 100 % o menos.")
        }
        WishError::KnifeWorkOutOfRange { most } => {
            format!("El límite de trabajo de cuchillo es de {most} piezas como mucho.")
        }
        WishError::TooManyDemands { most } => {
            format!("{most} es el máximo de «debe» y «nunca». Quita uno antes.")
        }
        WishError::Contradiction { muscle, one, other } => format!(
            "{}: «{}» y «{}» no se pueden cumplir a la vez. Quita antes uno de los dos.",
            super::muscle(*muscle),
            demand(*one),
            demand(*other)
        ),
        WishError::NoneOfIt { muscle, demand: of, product: none } => format!(
            "{}: «{}», pero no se desea {}. Pide algo de eso, o quítalo.",
            super::muscle(*muscle),
            demand(*of),
            product(*none)
        ),
        WishError::Impossible { muscle, product: of, .. } => {
            format!("{}: de este músculo no se puede hacer {}.", super::muscle(*muscle), product(*of))
        }
        WishError::NothingLeft { muscle } => {
            format!("{}: no queda ningún corte posible. Quita un «nunca».", super::muscle(*muscle))
        }
    }
}

// Partners.

/// The part.
pub const PARTNERS: &str = "Compañeros";
/// Nobody shares.
pub const NOBODY_SHARES: &str = "Nadie comparte todavía. Se reparten paquetes enteros para que el peso y cada clase salgan lo más parejos posible; en las etiquetas dice de quién es cada uno.";
/// Two of them.
pub const SHARE_BY_TWO: &str = "Repartir entre dos";
/// An invented example.
pub const EXAMPLE_PARTNERS: &str = "Prueba un ejemplo inventado: Ann 2 partes, Bo 1, el filete es de Ann";
/// One more.
pub const ADD_PARTNER: &str = "Añadir un compañero";
/// All the same.
pub const EQUAL_SHARES: &str = "Partes iguales";
/// Of the name.
pub const PARTNER_NAME: &str = "Nombre o iniciales";
/// Of the share.
pub const PARTNER_PARTS: &str = "Partes";
/// Nobody any more.
pub const NOBODY: &str = "Nadie comparte";
/// What they asked for.
pub const CLAIMS: &str = "Pedidos";
/// Who gets what.
pub const DEAL: &str = "Quién recibe qué";
/// Columns.
pub const DEAL_HEAD: [&str; 4] = ["Quién", "Paquetes", "Recibe", "Le toca"];
/// To copy.
pub const COPY_SUMMARY: &str = "Copiar la lista";

/// A partner by name, or by letter.
pub fn partner(partners: &Partners, place: u8) -> String {
    match partners.all().get(usize::from(place)) {
        Some(partner) if !partner.name.is_empty() => partner.name.clone(),
        Some(_) | None => format!("Compañero {}", char::from(b'A' + place)),
    }
}
/// A partner by letter.
pub fn nth_partner(place: usize) -> String {
    format!("Compañero {}", char::from(b'A' + place as u8))
}
/// So many packages.
pub fn packages_count(count: u32) -> String {
    format!("{count} {}", super::packages(count))
}
/// Whose a muscle is.
pub fn claimed_by(partners: &Partners, place: u8) -> String {
    format!("Para {}", partner(partners, place))
}
/// A claim.
pub fn claim(partners: &Partners, claim: Claim) -> String {
    format!("{}: {}", super::muscle(claim.muscle), partner(partners, claim.partner))
}
/// How the parts are read.
pub fn shares(partners: &Partners) -> String {
    let percents: Vec<String> =
        partners.shares().iter().map(|share| format!("{} %", share.to_percent().round() as u32)).collect();
    let read = percents.join(", ");
    if partners.are_percents() {
        format!("Partes: {read}.")
    } else {
        format!("Las partes suman {}; se leen como {read}.", partners.total_parts())
    }
}
/// The worst-off.
pub fn worst(partners: &Partners, worst: &Worst, units: Units) -> String {
    let grams = worst.difference.to_grams();
    let mass = numbers::mass(Mass::grams(grams.abs()), units);
    let of = worst.product.map_or("en total".to_owned(), |product| {
        format!("en {}", super::product(product).to_ascii_lowercase())
    });
    let than = if grams < 0.0 { "menos" } else { "más" };
    format!(
        "Lo más lejos de su parte: {} recibe {mass} {than} de lo que le toca, {of}.",
        partner(partners, worst.partner)
    )
}
/// Proven, or not.
pub fn deal_proof(deal: &Deal, units: Units) -> String {
    if deal.is_best() {
        "Demostrado: no se pueden repartir paquetes enteros más parejo.".into()
    } else {
        format!(
            "Puede haber un reparto más parejo, pero la diferencia no pasa de {}.",
            numbers::mass(deal.worst_gap, units)
        )
    }
}
/// What of a product is got and due.
pub fn lot(product: Product, got: &str, due: &str) -> String {
    format!("{}: {got}; su parte: {due}", super::product(product))
}
/// One partner's list in words, to send.
pub fn summary(name: &str, packages: &[String], link: &str) -> String {
    format!("{name}:\n{}\n{link}\n", packages.join("\n"))
}
/// A package in a list.
pub fn summary_line(package: &Package, animal: Option<&str>, units: Units) -> String {
    let animal = animal.map(|name| format!(" ({name})")).unwrap_or_default();
    format!("{}, {}{animal}", super::package_name(package), numbers::mass(package.mass, units))
}
/// Why partners cannot be.
pub fn partners_error(error: &PartnersError) -> String {
    let nth = |place: u8| format!("Compañero {}", char::from(b'A' + place));
    match error {
        PartnersError::HowMany { least, most } => format!("Pueden compartir de {least} a {most} personas."),
        PartnersError::Name { partner, most } => {
            format!("{}: un nombre tiene como mucho {most} caracteres simples.", nth(*partner))
        }
        PartnersError::SameName { first, second } => {
            format!("{} y {} tienen el mismo nombre. Distínguelos.", nth(*first), nth(*second))
        }
        PartnersError::Parts { partner, most } => format!("{}: las partes van de 1 a {most}.", nth(*partner)),
        PartnersError::ClaimedTwice(muscle) => {
            format!("{}: alguien ya pidió este músculo.", super::muscle(*muscle))
        }
        PartnersError::ClaimedByNobody(muscle) => {
            format!("{}: quien pidió este músculo no está.", super::muscle(*muscle))
        }
    }
}
