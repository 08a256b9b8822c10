//! The `forecast` example, as a script sees it: flags or a link in, JSON or a sentence out.

use std::path::PathBuf;
use std::process::{Command, Output};
use std::sync::OnceLock;

use hindsaddle_model::anatomy::Muscle;
use hindsaddle_model::animal::Stage;
use hindsaddle_model::forecast::Line;
use hindsaddle_model::product::Product;
use serde_json::Value;

/// The example, built once: Cargo does not build it for the tests of another package.
fn program() -> &'static PathBuf {
    static PROGRAM: OnceLock<PathBuf> = OnceLock::new();
    PROGRAM.get_or_init(|| {
        let built = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()))
            .args(["build", "--quiet", "--locked", "--offline", "--package", "hindsaddle-model"])
            .args(["--example", "forecast", "--message-format", "json"])
            .current_dir(env!("CARGO_MANIFEST_DIR"))
            .output()
            .unwrap();
        assert!(built.status.success(), "{}", String::from_utf8_lossy(&built.stderr));
        String::from_utf8(built.stdout)
            .unwrap()
            .lines()
            .filter_map(|line| {
                serde_json::from_str::<Value>(line).ok()?["executable"].as_str().map(PathBuf::from)
            })
            .next_back()
            .expect("the build names the program")
    })
}

fn run(arguments: &str) -> Output {
    Command::new(program()).args(arguments.split_whitespace()).output().unwrap()
}

#[track_caller]
fn json(arguments: &str) -> Value {
    let output = run(arguments);
    assert!(output.status.success(), "{arguments}: {}", String::from_utf8_lossy(&output.stderr));
    assert!(output.stderr.is_empty());
    serde_json::from_slice(&output.stdout).unwrap()
}

#[track_caller]
fn refused(arguments: &str, sentence: &str) {
    let output = run(arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments}");
    assert!(output.stdout.is_empty(), "{arguments}");
    let said = String::from_utf8(output.stderr).unwrap();
    let first = said.lines().next().unwrap();
    assert!(first.contains(sentence), "{arguments}: {first}");
    assert!(said.contains("usage: forecast"), "{arguments}");
}

#[track_caller]
fn estimate(value: &Value) -> [u64; 3] {
    let three = ["low", "likely", "high"].map(|end| value[end].as_u64().unwrap_or_else(|| panic!("{value}")));
    assert!(three[0] <= three[1] && three[1] <= three[2], "{value}");
    three
}

fn names(value: &Value) -> Vec<&str> {
    value.as_object().unwrap().keys().map(String::as_str).collect()
}

fn same_names<'a>(value: &Value, expected: impl Iterator<Item = &'a str>) {
    let mut expected: Vec<&str> = expected.collect();
    let mut got = names(value);
    expected.sort_unstable();
    got.sort_unstable();
    assert_eq!(got, expected);
}

const DOE: &str = "--species white_tailed --sex doe --age adult --stage field_dressed --weight-lb 110";

#[test]
fn the_report_holds_what_scripts_are_promised() {
    let report = json(DOE);
    for key in ["hanging_g", "careful_boneless_g", "take_home_g", "live_g", "field_dressed_g"] {
        estimate(&report[key]);
    }
    same_names(&report["ledger"], Line::ALL.into_iter().map(Line::id));
    let likely: Vec<u64> = Line::ALL.map(|line| estimate(&report["ledger"][line.id()])[1]).to_vec();
    assert_eq!(likely[0], likely[1..].iter().sum::<u64>(), "the ledger adds up to the gram");
    assert_eq!(report["take_home_g"], report["ledger"]["take_home"]);
    same_names(&report["muscles"], Muscle::ALL.into_iter().map(Muscle::id));
    for muscle in Muscle::ALL {
        assert!(estimate(&report["muscles"][muscle.id()])[0] > 0);
    }
    same_names(&report["packages"], Product::ALL.into_iter().map(Product::id));
    let mut grams = 0;
    for product in Product::ALL {
        let row = &report["packages"][product.id()];
        estimate(&row["count"]);
        grams += estimate(&row["grams"])[1];
    }
    let take_home = estimate(&report["take_home_g"])[1];
    assert!(grams.abs_diff(take_home) <= 3, "{grams} in packages, {take_home} taken home");
    // 110 lb with the lower legs on, as it was weighed.
    assert_eq!(estimate(&report["field_dressed_g"]), [49_895; 3]);
}

/// Flags to a link to the same report again, for every stage and for plans with cuts of every kind.
#[test]
fn the_link_in_a_report_gives_the_same_report() {
    let mut stages = std::collections::BTreeSet::new();
    for flags in [
        DOE,
        "--species elk --sex buck --stage live --weight-kg 300",
        "--species mule --sex buck --stage field_dressed --legs off --weight-lb 114 --condition late_rut",
        "--species roe --stage hanging --weight-kg 12.64 --people 2",
        "--species red --sex doe --stage deboned --weight-kg 20 --not-recovered neck",
        "--species moose --stage girth --girth-cm 190",
        "--species white_tailed --age fawn --girth-in 28",
        "--species axis --sex buck --age old",
        "--species white_tailed --stage field_dressed --weight-lb 110 --use backstrap=roast:0.5,chop:0.5 \
         --not-recovered rib_meat",
        "--species elk --stage live --weight-lb 500 --use backstrap=chop@0.75in:0.25,steak@3cm:0.25,roast@9in:0.5 \
         --use top_round=roast@1.2kg --use neck=roast@whole --use clod=stew@19mm --use brisket=discard \
         --use knuckle=grind:0.3,roast@3lb:0.7",
    ] {
        let report = json(flags);
        let link = report["link"].as_str().unwrap();
        assert_eq!(json(link), report, "{flags}");
        stages.insert(
            Stage::ALL
                .into_iter()
                .find(|stage| flags.contains(&format!("--stage {}", stage.id())))
                .map(Stage::id),
        );
    }
    assert_eq!(stages.len(), Stage::ALL.len(), "every stage but typical, which has no flag: {stages:?}");
}

#[test]
fn flags_change_what_they_name() {
    let usual = json(DOE);
    let split = json(&format!("{DOE} --use backstrap=roast:0.5,chop:0.5"));
    let products = |report: &Value| -> Vec<String> {
        let packs = report["muscles"]["backstrap"]["packs"].as_array().unwrap();
        packs.iter().map(|pack| pack["product"].as_str().unwrap().to_owned()).collect()
    };
    assert_eq!(products(&usual), ["steak"]);
    assert_eq!(products(&split), ["roast", "chop"]);
    let left = json(&format!("{DOE} --not-recovered rib_meat"));
    let ribs = estimate(&usual["muscles"]["rib_meat"])[1];
    let less = estimate(&usual["take_home_g"])[1] - estimate(&left["take_home_g"])[1];
    assert!(less.abs_diff(ribs) <= 2, "{less} g less, and the rib meat is {ribs} g");
    let off = json(&DOE.replace("--weight-lb 110", "--weight-lb 105.6 --legs off"));
    let (on, off) = (estimate(&usual["live_g"])[1], estimate(&off["live_g"])[1]);
    assert!(on.abs_diff(off) <= 1, "legs are 4 %: {on} {off}");
    // 110 lb is 49.895 kg, by definition of the pound.
    assert_eq!(json(&DOE.replace("--weight-lb 110", "--weight-kg 49.895")), usual);
}

#[test]
fn what_cannot_be_done_is_said_and_ends_with_2() {
    for (arguments, sentence) in [
        ("", "nothing to forecast"),
        ("--species", "--species wants a value"),
        ("--species unicorn", "there is no species unicorn; it is one of white_tailed, mule"),
        ("--sex doe", "--species is missing"),
        ("--species roe --colour red", "there is no flag --colour"),
        ("--species roe --stage live", "this stage wants --weight-lb or --weight-kg"),
        ("--species roe --weight-kg 20", "a weight wants --stage"),
        ("--species roe --stage live --weight-kg many", "--weight-kg is a number, not many"),
        ("--species roe --stage live --weight-kg 0", "not a number above zero"),
        ("--species roe --stage live --weight-kg -20", "not a number above zero"),
        ("--species roe --stage live --weight-kg NaN", "not a number above zero"),
        ("--species roe --stage live --weight-kg inf", "not a number above zero"),
        (
            "--species roe --stage live --weight-lb 900",
            "no such animal: at that stage it weighs 4.0 to 50.0 kg",
        ),
        ("--species roe --stage girth --girth-cm 60", "no girth table was published"),
        ("--species elk --stage girth --girth-cm 400", "the girth table runs from 110 to 190 cm"),
        ("--species roe --sex buck --condition nursing", "that condition does not suit"),
        ("--species roe --legs maybe", "--legs is on or off"),
        ("--species roe --people 0", "PeopleOutOfRange"),
        ("--species roe --people many", "--people is a whole number"),
        ("--species roe --use backstrap", "--use is MUSCLE=CUT"),
        ("--species roe --use wing=roast", "there is no muscle wing"),
        ("--species roe --use neck=pie", "there is no cut pie"),
        ("--species roe --use neck=roast@9furlong", "roast has no size 9furlong"),
        ("--species roe --use neck=chop", "neck cannot be chop: NoLoinShape; try roast"),
        ("--species roe --use neck=stew:0.5,grind:0.4", "the parts add up to 90 %, not 100"),
        ("--species roe --use neck=stew:1.5", "a part is above 0 and at most 1"),
        ("--species roe --use backstrap=steak@0mm", "ThicknessOutOfRange"),
        ("--species roe --use tenderloin=roast@55cm", "LongerThanMuscle"),
        ("--species roe --not-recovered tail", "there is no muscle tail"),
        ("1", "this link cannot be read: CutShort"),
        ("4AAAA", "this link cannot be read: Newer"),
        ("nonsense", "this link cannot be read: Unknown"),
    ] {
        refused(arguments, sentence);
    }
}
