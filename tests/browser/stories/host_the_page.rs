//! Someone puts the page on a host of his own, in a folder, by what README.md says.

use crate::act;
use crate::find::{Name, Role};
use crate::nginx::Nginx;
use crate::page::{Page, Screen};
use crate::see;

/// The head of an answer, as a list of names and values.
#[track_caller]
fn headers(address: &str) -> Vec<(String, String)> {
    let agent = ureq::Agent::config_builder().http_status_as_error(false).build().new_agent();
    let answer = agent.get(address).header("Accept-Encoding", "gzip").call().expect("nginx answers");
    assert_eq!(answer.status(), 200, "{address}");
    answer
        .headers()
        .iter()
        .map(|(name, value)| (name.to_string(), value.to_str().expect("plain text").to_owned()))
        .collect()
}

#[track_caller]
fn header(address: &str, name: &str) -> String {
    let all = headers(address);
    let found = all.iter().find(|(found, _)| found == name);
    found.unwrap_or_else(|| panic!("{address} has no {name}: {all:?}")).1.clone()
}

#[test]
fn every_file_has_its_type_is_packed_and_is_kept_as_long_as_it_holds() {
    let nginx = Nginx::start();
    let page = Page::open(Screen::PHONE);
    page.visit(&nginx.address());
    see::shown(&page, Role::Heading, "Hindsaddle");
    let program = page.script("document.querySelector('link[rel=program]').href");
    let wasm = program.as_str().unwrap().replace(".js", "_bg.wasm");
    let style = page.script("document.querySelector('link[rel=stylesheet]').href");
    for (address, kind, keep) in [
        (nginx.address(), "text/html; charset=utf-8", "no-cache"),
        (program.as_str().unwrap().to_owned(), "text/javascript; charset=utf-8", "immutable"),
        (wasm, "application/wasm", "immutable"),
        (style.as_str().unwrap().to_owned(), "text/css; charset=utf-8", "immutable"),
        (format!("{}manifest.webmanifest", nginx.address()), "application/manifest+json", "no-cache"),
        (format!("{}offline.js", nginx.address()), "text/javascript; charset=utf-8", "no-cache"),
    ] {
        assert_eq!(header(&address, "content-type"), kind, "{address}");
        assert_eq!(header(&address, "content-encoding"), "gzip", "{address}");
        assert!(header(&address, "cache-control").contains(keep), "{address}");
        assert_eq!(header(&address, "x-content-type-options"), "nosniff", "{address}");
    }
    // The header says what the page says, and one thing more.
    let policy = page.script("document.querySelector('meta[http-equiv]').content");
    let more = format!("{}; frame-ancestors 'none'", policy.as_str().unwrap());
    assert_eq!(header(&nginx.address(), "content-security-policy"), more);
}

/// The whole page from a folder, with the header that forbids the most, and then without the host.
#[test]
fn it_works_in_a_folder_and_after_the_host_is_gone() {
    let nginx = Nginx::start();
    let page = Page::open(Screen::DESKTOP);
    page.visit(&nginx.address());
    page.script("navigator.serviceWorker.ready.then(() => true)");
    act::choose(&page, "Knuckle becomes", "Stew");
    page.fragment_of_plan();
    let tally = see::text(&page, Role::Status, Name::from("Tally"));
    drop(nginx);
    page.reload();
    assert_eq!(see::text(&page, Role::Status, Name::from("Tally")), tally);
    act::press(&page, Role::Link, "Cut & pack");
    see::shown(&page, Role::Heading, "From table to freezer");
}
