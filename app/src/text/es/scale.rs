//! Words of the scale: weights as they are typed and said, what they change, what is asked, own figures.

use hindsaddle_model::anatomy::{Muscle, Sides};
use hindsaddle_model::changes::Change;
use hindsaddle_model::own::{Animal, ENOUGH, Own};
use hindsaddle_model::product::Product;
use hindsaddle_model::scale::{Doubt, OnScale};
use hindsaddle_model::units::{Length, Mass};
use hindsaddle_model::wrap::Bag;

use super::names;
use crate::text::numbers::{self, Units};

/// What the scale says.
pub const WEIGHED_NOW: &str = "En la báscula";
/// What some packages weigh.
pub const THEY_WEIGH: &str = "Pesan, juntos";
/// How a weight is typed.
pub const WEIGH_HINT: &str = "Limpio, sin lo que echó a perder una herida. Escribe 1 lb 4 oz, 12.5 oz, 0.8 kg o 570 g; ambos lados juntos o uno.";
/// What a typed weight could not be read as.
pub const NOT_A_WEIGHT: &str =
    "Eso no es un peso. Escribe un número con su unidad, como 1 lb 4 oz, 12.5 oz, 0.8 kg o 570 g.";
/// How many packages, which could not be read.
pub const NOT_A_COUNT: &str = "En «Cuántos» va un número entero de 1 a 255. Déjalo vacío si son todos.";
/// The choice of sides.
pub const WHICH_SIDES: &str = "Qué lado";
/// The choice of a product.
pub const WHICH_PACKAGES: &str = "Paquetes de";
/// How many of them.
pub const HOW_MANY: &str = "Cuántos (vacío: todos)";
/// The card.
pub const SCALE: &str = "Báscula";
/// What it is for.
pub const SCALE_HINT: &str = "Cada peso estrecha las demás estimaciones, aquí y en el plan. Se supone que una báscula yerra a lo más 5 g y 1 % (criterio nuestro).";
/// What was weighed.
pub const ALL_WEIGHINGS: &str = "Pesos en el plan";
/// Nothing was.
pub const NO_WEIGHINGS: &str = "Ninguno todavía.";
/// Keeps a questioned weight.
pub const KEEP: &str = "Conservarlo";
/// Takes a questioned weight back.
pub const TAKE_BACK: &str = "Retirarlo";
/// When a weight changes nothing worth telling.
pub const CHANGES_LITTLE: &str = "Con este peso los paquetes quedan igual.";

/// Which side or sides: both, left, right.
pub fn sides(sides: Sides) -> &'static str {
    match sides {
        Sides::Both => super::BOTH,
        Sides::One(side) => names::side(side),
    }
}

/// What lay on the scale.
pub fn on_scale(target: OnScale) -> String {
    match target {
        OnScale::Muscle(muscle, side) => {
            let sides = match side {
                Sides::Both => super::BOTH.to_ascii_lowercase(),
                Sides::One(side) => format!("lado {}", names::side(side).to_ascii_lowercase()),
            };
            format!("{}, {sides}", names::muscle(muscle))
        }
        OnScale::Lot => LOT.into(),
        OnScale::Tub => TUB.into(),
        OnScale::Packages(product, count) => match count {
            Some(count) => {
                format!("{count} {} de {}", super::packages(count.get().into()), in_packs(product))
            }
            None => format!("Todos los paquetes de {}", in_packs(product)),
        },
    }
}

/// All meat.
pub const LOT: &str = "Toda la carne sin hueso, antes de cortarla";
/// The tub.
pub const TUB: &str = "La tina, antes de moler";

/// A product in its packages.
pub fn in_packs(product: Product) -> &'static str {
    match product {
        Product::Roast => "asado",
        Product::Steak => "bistec",
        Product::Chop => "chuleta",
        Product::Stew => "guiso",
        Product::Grind => "molida",
    }
}

fn counted(count: i32, one: &str, many: &str) -> String {
    let word = if count.abs() == 1 { one } else { many };
    let more = if count < 0 { "menos" } else { "más" };
    format!("{} {word} {more}", count.abs())
}

fn rolled(length: Length, units: Units, what: &str) -> String {
    let (length, more) =
        if length < Length::ZERO { (Length::ZERO - length, "menos") } else { (length, "más") };
    let length = match units {
        Units::Pounds if length > Length::inches(24.0) => {
            format!("{} pies", (length.to_inches() / 12.0).round() as u32)
        }
        Units::Kilograms if length > Length::cm(100.0) => {
            format!("{} m", numbers::one_decimal(length.to_cm() / 100.0))
        }
        Units::Pounds | Units::Kilograms => numbers::rough_length(length, units),
    };
    format!("{} {more} de {what}", super::around(&length))
}

fn change(change: &Change, units: Units) -> String {
    match *change {
        Change::TakeHome(mass) if mass < Mass::ZERO => {
            format!("{} menos para casa", numbers::mass(Mass::ZERO - mass, units))
        }
        Change::TakeHome(mass) => format!("{} más para casa", numbers::mass(mass, units)),
        Change::Packs(product, count) => {
            format!("{} de {}", counted(count, "paquete", "paquetes"), in_packs(product))
        }
        Change::Paper(length) => rolled(length, units, "papel para congelar"),
        Change::Bags(Bag::Quart, count) => {
            counted(count, "bolsa de un cuarto de galón", "bolsas de un cuarto de galón")
        }
        Change::Bags(Bag::Gallon, count) => counted(count, "bolsa de un galón", "bolsas de un galón"),
        Change::Vacuum(_, length) => rolled(length, units, "rollo de vacío"),
    }
}

/// "With this weight: 3 more packages of ground, about 3 ft less freezer paper."
pub fn changed(changes: &[Change], units: Units) -> String {
    if changes.is_empty() {
        return CHANGES_LITTLE.into();
    }
    let all: Vec<String> = changes.iter().map(|one| change(one, units)).collect();
    format!("Con este peso: {}.", all.join(", "))
}

/// What is asked about a weight that is hard to believe.
pub fn doubt(target: OnScale, doubt: &Doubt, units: Units) -> String {
    match doubt {
        Doubt::MoreThanAllMeat { meat } => format!(
            "Eso es más que toda la carne que se espera de este animal, {}. ¿Es correcta la unidad?",
            numbers::mass(*meat, units)
        ),
        Doubt::Far { expected, .. } => {
            let ask = match target {
                OnScale::Muscle(_, Sides::Both) => "¿Es ese el músculo, y de ambos lados?",
                OnScale::Muscle(_, Sides::One(_)) => "¿Es ese el músculo, y solo de este lado?",
                OnScale::Lot => "¿Está toda ahí, y nada más?",
                OnScale::Tub => "¿Estaba todo en la tina, y restaste el peso de la tina?",
                OnScale::Packages(..) => "¿Son todos, y ninguno más?",
            };
            format!("Eso está lejos de lo esperado, {}. {ask}", numbers::mass(*expected, units))
        }
    }
}

/// "3 weighings in it".
pub fn weighings_in_it(count: usize, own: bool) -> String {
    let word = if count == 1 { "pesada" } else { "pesadas" };
    match (count, own) {
        (0, false) => String::new(),
        (0, true) => "Lleva tus propias cifras".into(),
        (_, false) => format!("Lleva {count} {word}"),
        (_, true) => format!("Lleva {count} {word} y tus propias cifras"),
    }
}

/// How a number was worked out, when something was weighed.
pub const WEIGHED_WORKING: &str =
    "Lleva lo que dijo la báscula: eso mueve las estimaciones relacionadas y las estrecha.";
/// How a number was worked out, with own figures.
pub const OWN_WORKING: &str = "Lleva tus propias cifras: están en lugar de parte de las de la tabla.";

/// The card of own figures.
pub const OWN: &str = "Tus propias cifras";
/// What they are.
pub const OWN_HINT: &str = "Cuánto pesaron tus animales frente a la tabla, músculo por músculo. Se guarda solo en este aparato y solo si lo pides. Con n animales una cifra recorre n / (n + 3) del camino de la tabla a su media, 30 % como mucho (criterio nuestro); los márgenes quedan igual de anchos.";
/// Consent for one animal.
pub const OWN_KEEP: &str = "Guardar la comparación de este animal en este aparato";
/// They are in this plan.
pub const OWN_IN_IT: &str = "Tus propias cifras están en este plan y viajan con su enlace.";
/// Out of it.
pub const OWN_OUT: &str = "Sacarlas";
/// Into it.
pub const OWN_USE: &str = "Usarlas en este plan";
/// None are kept.
pub const OWN_NONE: &str = "Todavía no hay nada guardado.";
/// A file of them.
pub const OWN_SAVE: &str = "Guardar como archivo";
/// All go.
pub const OWN_ERASE: &str = "Borrar todo";

/// Too little was weighed to compare.
pub fn own_too_little(weighed: f64) -> String {
    format!(
        "Para comparar, pesa músculos de ambos lados que sumen {} de la carne; hasta ahora es {}.",
        numbers::percent(ENOUGH),
        numbers::percent((weighed * 100.0).floor() / 100.0)
    )
}

fn percent(percent: i8) -> String {
    let sign = if percent < 0 { '\u{2212}' } else { '+' };
    format!("{sign}{} %", percent.unsigned_abs())
}

/// "From 2 other animals of this species: all meat −3 %, Backstrap +4 %, the rest within 1 %."
pub fn own_figures(own: &Own, animals: usize) -> String {
    let told = |percent: i8| percent.unsigned_abs() > 1;
    let meat = Some(own.meat_percent()).filter(|meat| told(*meat));
    let shares = Muscle::ALL
        .into_iter()
        .filter(|muscle| told(own.share_percent(*muscle)))
        .map(|muscle| format!("{} {}, ", names::muscle(muscle), percent(own.share_percent(muscle))));
    let all: String =
        meat.map(|meat| format!("toda la carne {}, ", percent(meat))).into_iter().chain(shares).collect();
    let others = if animals == 1 { "otro animal".to_owned() } else { format!("otros {animals} animales") };
    format!("De {others} de esta especie: {all}el resto a 1 % o menos de la tabla.")
}

/// An animal that is kept: "white tailed doe adult hanging 25000 g: all meat 97 %, 14 muscles".
pub fn own_animal(animal: &Animal) -> String {
    let name: String = animal.name.chars().map(|letter| if letter == '_' { ' ' } else { letter }).collect();
    let meat = animal.meat.map(|ratio| format!("toda la carne {}, ", numbers::percent(ratio)));
    let count = animal.shares.len();
    let word = if count == 1 { "músculo" } else { "músculos" };
    format!("{name}: {}{count} {word}", meat.unwrap_or_default())
}

/// "Erase …", as it is said.
pub fn own_erase(animal: &Animal) -> String {
    format!("Borrar {}", own_animal(animal))
}

/// "Remove …", as it is said.
pub fn remove_weighing(what: &str) -> String {
    format!("Quitar {what}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn changes_are_a_sentence() {
        let changes = [
            Change::TakeHome(Mass::ZERO - Mass::pounds(1.5)),
            Change::Packs(Product::Grind, 3),
            Change::Packs(Product::Stew, -1),
            Change::Paper(Length::ZERO - Length::inches(40.0)),
        ];
        assert_eq!(
            changed(&changes, Units::Pounds),
            "Con este peso: 1.5 lb menos para casa, 3 paquetes más de molida, 1 paquete menos de guiso, unos 3 pies menos de papel para congelar."
        );
    }
}
