//! What the sources are cited as. Authors, institutions, journals and titles stay as they are, so that they can be
//! looked up; what describes them is Spanish.

use hindsaddle_model::sources::Source;

/// One arm for each source: what is missing here does not compile.
macro_rules! citations {
    ($($name:ident: $citation:literal;)*) => {
        /// Author, year and where a source was published.
        pub fn citation(source: Source) -> &'static str {
            match source { $(Source::$name => $citation,)* }
        }
    };
}

citations! {
    MinnesotaDeer: "Antiguo encargado regional de fauna del Minnesota DNR, Big Game Meat part 1, Cook County News Herald: 1,027 venados cola blanca pesados enteros y eviscerados";
    NobleDeer: "Noble Research Institute 2012, Estimating Deer Weight from Field-dressed Weight: más de 200 venados de Oklahoma";
    SeafwaGirth: "SEAFWA 1976, Body Weight and Heart Girth in White-Tailed Deer from South Carolina: 316 adultos, 229 crías";
    WyomingElk: "University of Wyoming B-594R, Elk Carcass: seis machos, seis hembras; según lo cita un sitio de caza";
    WyomingMule: "University of Wyoming B-589R, canal de venado bura; según lo cita un sitio de caza";
    NorthDakotaLean: "Reed et al. 2019, Meat and Muscle Biology: venado bura, uapití y alce diseccionados, pérdida por tiro 13.2, 16.6, 12.3 % de lo magro";
    AlbertaPronghorn: "Measurements, weights and carcass yields of pronghorns in Alberta: 1,210 eviscerados, 216 enteros";
    ElkGirth: "Millspaugh y Brundige 1996, Estimating elk weight from chest girth: 19 enteros, 57 eviscerados";
    MooseGirth: "Morfometría del alce de Alaska (Franzmann et al.): peso = -245.3 + 3.14 contorno, más de 500 pesados";
    SwedishMoose: "Wallin, Cederlund y Pehrson 1996, Wildlife Biology 2:53: canal de 45 a 51 % del peso vivo";
    MooseLean: "Hansson y Malmfors 1978, Meat production from moose: 80 % de magro en adultos (diseccionados)";
    TanbaSika: "Yoshimura et al., ciervo sica de Tanba: 35.6 y 35.7 % del peso vivo es carne";
    MasseyFallow: "Massey University, tesis de 1985, crecimiento y canal de gamos machos: 24 animales";
    GermanRoe: "Tablas alemanas para formar cazadores, Preisfindung Wildbret: un corzo de 16.0 kg, cuadrado al gramo";
    AustrianRoe: "Weidwerk, Zerwirken eines Rehes: una hembra de corzo de 16.2 kg";
    SitkaText: "Lo que dice una agencia del venado cola negra de Sitka: 100 lb vivo, 60 lb eviscerado, 35 lb de carne; según lo cita un albergue";
    HillRed: "Kay et al. 1981 (año de memoria), Carcass characteristics of young red deer farmed on hill pasture";
    WildFallow: "Fitzhenry et al. 2019, Carcass composition and yields of wild fallow deer in South Africa (gamos silvestres)";
    OhioDeer: "Ohio DNR, rendimiento sin hueso, 48 % de lo eviscerado; según lo cita una página de poca calidad";
    NewHampshireDeer: "New Hampshire Fish and Game, historia del venado: machos eviscerados 65 a 180 lb, hembras 60 a 120 lb";
    WyomingMuleWeights: "Wyoming Game and Fish, How much meat can I get; y pesos medios de B-589R";
    BlackTailWeights: "Página de un libro de récords sobre pesos del cola negra de Columbia, y texto de una agencia sobre el venado de Sitka";
    BritishColumbiaMoose: "Aitken et al. 2012, Alces 48:105: pesos en canal de alces por edad y sexo";
    NorwegianReindeer: "Landbruksdirektoratet 2016: pesos de renos en el rastro";
    ScottishVenison: "Scottish Venison Partnership, Know your Venison: pesos eviscerados de ciervo rojo, corzo, gamo y sica";
    LithuanianRoe: "Página de la asociación lituana de cazadores sobre el corzo: 26 y 29 kg vivo";
    AxisRanch: "Páginas de ranchos sobre pesos del ciervo axis";
    PronghornHanging: "Página pública de un procesador sobre pesos en canal del berrendo";
    RutWeights: "Strickland et al. 2017, Wildlife Society Bulletin 41:286: los machos adultos pierden 13.8 % durante la temporada";
    MuscleCatalogue: "Estimación para este programa: totales por pieza de gamo, ciervo rusa, corzo y uapití, repartidos dentro de cada pieza como en res, oveja y cebra, ajustados a mano; no se halló ninguna tabla de músculos de venado";
    MuscleDensity: "Mendez y Keys 1960, según los cita Scientific Reports 2021: músculo de mamífero 1.06 g/ml";
    RedDeerGrowth: "Wenham y Pennie, crecimiento de cada músculo en el ciervo rojo: espinazo y vientre 1.08, parte baja de la pata delantera 0.84";
    SheepSexShares: "Ovejas y cabras, estudios de sexo y reparto de los músculos: la parte trasera de las hembras es 1.055 de la de los machos";
    ImpalaShares: "Impala, Zimbabue 2000: pescuezo 69 contra 51 g/kg, cuarto delantero 279 contra 259 g/kg, machos contra hembras";
    MsuFreezer: "Michigan State University Extension, guía para principiantes de la res para congelar: bistecs de 3/4 a 1 pulg, asados de 3 a 4 lb, molida de 1 a 2 lb";
    IowaPortions: "Iowa State University, control de porciones: 1 lb sin hueso alcanza para 4";
    ExtensionPortions: "Cifra de un servicio de extensión, según la cita un blog: 3 porciones por libra de bistecs, asados y chuletas sin hueso";
    UmnGame: "University of Minnesota Extension, Freeze or Can Wild Game: molida y guiso 2 a 3 meses, asados y bistecs 8 a 12";
    MsuGame: "Michigan State University Extension, Be prepared for incoming venison, y 01600806 (1997): los mismos meses que Minnesota";
    PennGame: "C. Cutter, Penn State, en Public Opinion 2012: guardar de nueve a doce meses; cocinar hasta 160 °F";
    CsuGame: "Colorado State University Extension 6.504, Cutting Up a Big Game Carcass: comer antes de seis meses, por la mejor calidad";
    GarrettColumn: "Garrett County Republican 2022, columna sin firma: molida en tres meses cuando mucho, asados o bistecs en seis a nueve";
    ApplianceMonths: "Tabla del manual de un aparato, dada por el USDA: carne de caza 8 a 12 meses, molida 3 a 4";
    FdaStorage: "FDA Publication 00-2244 (archivada): meses en el congelador y días en el refrigerador de la carne de animales domésticos";
    FoodSafetyGov: "FoodSafety.gov, tiempos para guardar, según una copia: meses en el congelador y días en el refrigerador de la carne de animales domésticos";
    FoodKeeper: "FSIS Food Keeper, datos v128 (2018): carne de cabra para guiso y chuletas de cerdo 4 a 12 meses, molida 3 a 4; nada de venado en los registros leídos";
    ColumbiaText: "Un texto viejo de Columbia Británica: vísceras 3 a 4 meses";
    FsisBasics: "FSIS, Keep Food Safe basics (archivado): cortes enteros crudos 3 a 5 días, molida y menudencias 2 cuando mucho, refrigerador a 40 °F o menos";
    MichiganHealth: "Michigan Department of Community Health, reimpreso: congelar la carne de caza que no se use en 3 a 5 días";
    WisconsinColumn: "La Crosse Tribune 2021, columna como las de extensión: 2 a 3 días; carnes de caza hasta 165 °F";
    UmnLoad: "University of Minnesota Extension 2017: 2 a 3 libras de alimento por pie cúbico en 24 horas; 40 a 60 en 20 pies cúbicos";
    ApplianceLoad: "Manual de un aparato: no más de 2 a 3 libras de carne fresca por pie cúbico en 24 horas";
    ApplianceMeat: "Manual de un aparato, según recomendaciones del USDA: carne 30, 36, 46 lb en 15, 18, 23 pies cúbicos; envoltura un tercio más larga que la vuelta del alimento";
    NcStateSpace: "NC State, Fraser y Lackey 2004: en un pie cúbico caben hasta 35 libras de alimento bien apretado";
    FarmSpace: "Página pública de una granja: 35 a 40 lb de carne cortada y envuelta por pie cúbico";
    RetailSpace: "Página de una carnicería: 30 a 32 lb de res por pie cúbico";
    NdsuWrap: "NDSU Extension FN613: doblez de botica 1 1/2 vueltas, doblez de carnicero dos vueltas; puntas dobladas dos veces; cinta para congelar";
    VacuumPage: "Una página de jardinería sobre empacar al vacío: cortar la bolsa unas 3 pulg más larga que la pieza";
    QuartPage: "Una página de cocina: una bolsa para congelar de un cuarto de galón mide unas 7 por 8 pulg";
    FlatPackPage: "Una revista de caza y pesca: congelar la molida plana, de más o menos 1 pulg de grueso";
    UsdaDeer: "USDA SR Legacy 17164, venado, crudo: 2.42 por ciento de grasa (porcentaje de memoria, energía leída)";
    UsdaBackfat: "USDA SR Legacy 10004, grasa de lomo de cerdo, cruda: 88.69 por ciento de grasa";
    UsdaBeefFat: "USDA SR Legacy, cortes de res al menudeo, grasa separable, cruda: 70.9 por ciento de grasa (porcentaje de memoria, energía leída)";
    UsdaPatty: "USDA FDC 172602, venado molido: una tortita de 85 g cocida, de 4 oz crudas";
    BeefSlides: "Una clase de ciencia de la carne: moler a 35 °F; molida de res con 30 por ciento de grasa cuando mucho";
    PlatesPage: "Una página de cocina: discos de 3/8 pulg (10 mm), luego de 3/16 pulg (4.5 mm)";
    MsuSausage: "Michigan State University 01600616: 15 lb de magro y 10 lb de recorte de grasa; disco de 1/2 a 1 pulg, luego de 3/16 pulg";
    HunterBurger: "Cifras de una revista y de cazadores: hamburguesa con más o menos 10 por ciento de grasa, chorizo con 20 a 30";
    FederalVenison: "Tabla de FoodSafety.gov, según la citan notas públicas: venado a 160 °F (71 °C)";
    MsuConsumers: "Michigan State University, enfermedad debilitante crónica, consumidores: cocinar el venado hasta 165 °F";
    CanadaCooking: "Tabla de Government of Canada, según una copia: carne de caza a 74 °C (165 °F)";
    FsisThaw: "Palabras de FSIS en la página de un vendedor: 24 horas en el refrigerador por cada 5 lb; una libra de molida, un día entero";
    ThawPage: "Una guía para descongelar: asado grande 4 a 7 horas por libra, asado chico 3 a 5, paquete de molida de 1 pulg 24 h, bistec de 1 pulg 12 a 14 h";
    RanchThaw: "Página de cocina de un rancho ganadero: asado grande 4 a 7 horas por libra, asado chico 3 a 5, bistec de 1/2 a 3/4 pulg 12 h, guiso de 1 a 1 1/2 pulg 24 h";
    PlankEquation: "Ecuación de Plank, Encyclopaedia of Food Science: placa P 1/2, R 1/8";
    HomeFreezers: "Anderson et al. 2004, International Journal of Refrigeration 27:63: 8 a 15 W/m2K al congelar en cinco modelos caseros";
    EarleProperties: "Earle, Unit Operations, apéndice 7: calor latente del agua 335 kJ/kg; capacidades caloríficas según el contenido de agua";
    AshraeMeat: "Tabla de ASHRAE, según una copia: el aguayón empieza a congelarse a 28.9 °F (-1.7 °C)";
    FrozenMeat: "Meat Refrigeration, capítulo 13: la carne magra congelada conduce más o menos 1.3 W/mK";
    NewZealandVenison: "Te Ara, enciclopedia del gobierno de Nueva Zelanda: cortes de venado por su suavidad";
    BeefShear: "Belew et al. 2003: fuerza de corte de 40 músculos de res (resumen)";
    BeefRound: "Senaratne et al. 2010: suavidad y fibras de la pierna de res (resumen)";
    BeefCollagen: "Colágeno de piezas de res 1986: chamorro delantero 4.8, trasero 4.2 por ciento";
    SpringbokShear: "Gacela saltarina (springbok) 2019, Meat and Muscle Biology: fuerza de corte de seis músculos";
    HartebeestShear: "Alcélafo rojo (red hartebeest) 2021, Foods: fuerza de corte por músculo";
    GuelphMuscles: "University of Guelph: dónde están los músculos de una canal";
    LabelSheets: "Hojas como se venden comúnmente, medidas de memoria; mide las tuyas";
    TradeSizes: "Medidas y costumbres del oficio, de memoria; sin verificar";
    CommonPractice: "Práctica común, sin fuente";
    Analogy: "Por analogía con especies emparentadas, o de memoria; sin verificar";
    Judgement: "Criterio nuestro; sin fuente";
}

#[cfg(test)]
mod tests {
    use hindsaddle_model::sources::Kind;

    use super::*;

    /// Every number of a text, in its order, with its sign, point, comma or stroke.
    fn numbers(text: &str) -> Vec<&str> {
        text.split(|letter: char| !letter.is_ascii_digit() && !"-.,/".contains(letter))
            .map(|number| number.trim_end_matches(['-', '.', ',', '/']))
            .filter(|number| number.contains(|letter: char| letter.is_ascii_digit()))
            .collect()
    }

    #[test]
    fn a_citation_keeps_every_number() {
        for source in Source::ALL {
            assert_eq!(numbers(citation(*source)), numbers(source.citation()), "{source:?}");
        }
        assert_eq!(numbers("B. 1,210 - a -1.7, y 1/2."), ["1,210", "-1.7", "1/2"]);
    }

    #[test]
    fn every_citation_is_spanish_and_its_own() {
        for (index, source) in Source::ALL.iter().enumerate() {
            assert_ne!(citation(*source), source.citation());
            for other in &Source::ALL[..index] {
                assert_ne!(citation(*source), citation(*other));
            }
        }
    }

    #[test]
    fn judgement_says_that_it_is_judgement() {
        for source in Source::ALL {
            let citation = citation(*source).to_lowercase();
            let admits = ["criterio", "estimación", "analogía"].iter().any(|word| citation.contains(word));
            assert_eq!(source.kind() == Kind::Judgement, admits, "{citation}");
        }
    }
}
