//! Someone is at camp: the page was opened once, and now there is no network and no server.

use crate::act;
use crate::find::{Name, Role};
use crate::page::{Page, Screen};
use crate::see;

/// The page with every file kept for later.
fn kept(screen: Screen) -> Page {
    let page = Page::open(screen);
    page.script("navigator.serviceWorker.ready.then(() => true)");
    page
}

#[test]
fn after_one_visit_every_page_and_a_link_open_without_a_network() {
    let page = kept(Screen::PHONE);
    let before = page.fragment_of_plan();
    act::choose(&page, "Knuckle becomes", "Stew");
    let tally = see::text(&page, Role::Status, Name::from("Tally"));
    let link = page.fragment_of_plan();
    assert_ne!(link, before);
    page.go_offline();
    page.reload();
    assert_eq!(see::text(&page, Role::Status, Name::from("Tally")), tally, "the plan is remembered");
    act::press(&page, Role::Link, "Cut & pack");
    see::shown(&page, Role::Heading, "From table to freezer");
    act::press(&page, Role::Button, "Freeze");
    see::says(&page, Role::Region, Name::from("Freeze"), "Enter the size of your freezer");
    act::press(&page, Role::Link, "Wish & share");
    see::shown(&page, Role::Heading, "Wishes and sharing");
    act::press(&page, Role::Link, "Learn");
    see::shown(&page, Role::Heading, "Learn");
    act::choose(&page, "Muscle", "Knuckle");
    see::shown(&page, Role::Region, "About knuckle");
    act::press(&page, Role::Link, "Plan");
    see::shown(&page, Role::Heading, "Hindsaddle");
    act::choose(&page, "Knuckle becomes", "Grind");
    page.go_to(&format!("read.html{link}"));
    see::shown(&page, Role::Heading, "Your work order");
    see::says(&page, Role::Region, Name::from("Work order"), &tally);
    act::press(&page, Role::Button, "Keep mine");
    see::shown(&page, Role::Heading, "Hindsaddle");
    page.go_to(&link);
    page.reload();
    assert_eq!(see::text(&page, Role::Status, Name::from("Tally")), tally, "the link opens");
}

/// Nothing is asked of anybody but the page's own site, on any page, and the content security policy, which forbids it and
/// would say so in the log, is there.
#[test]
fn nothing_is_fetched_from_elsewhere() {
    for language in ["en", "es"] {
        let page = Page::open_in_language(Screen::DESKTOP, language, "");
        for name in ["index.html", "kitchen.html", "ahead.html", "learn.html", "read.html#1DCBVDKh____-izo"] {
            page.go_to(name);
            see::shown(&page, Role::Main, Name::Any);
            for part in see::names(&page, Role::Button) {
                // Every part of the page that has parts.
                let is_part = format!(
                    "[...document.querySelectorAll('.parts button')].find(one => one.innerText === {part:?})?.click(); true"
                );
                page.script(&is_part);
                page.settle();
            }
            let asked = page.script(
                "performance.getEntriesByType('resource').concat(performance.getEntriesByType('navigation')).map(entry => entry.name)",
            );
            let asked: Vec<&str> =
                asked.as_array().into_iter().flatten().filter_map(|name| name.as_str()).collect();
            assert!(asked.len() > 4, "{name}: nothing was recorded: {asked:?}");
            let own = page.script("location.origin + '/'");
            let foreign: Vec<_> =
                asked.iter().filter(|name| !own.as_str().is_some_and(|own| name.starts_with(own))).collect();
            assert!(foreign.is_empty(), "{name}: {foreign:?}");
            let policy = page.script("document.querySelector('meta[http-equiv]').content");
            assert!(
                policy.as_str().is_some_and(|policy| policy.starts_with("default-src 'none'")),
                "{policy}"
            );
        }
        assert_eq!(
            page.script("fetch('https://example.org/').then(() => 'sent', () => 'refused')"),
            "refused"
        );
        // That refusal is the one complaint there has to be.
        assert!(page.complaints().iter().all(|complaint| complaint.contains("example.org")));
    }
}

/// The browser offers to install the page as soon as it is kept for later; the page asks only when its reader does.
#[test]
fn the_page_is_installed_only_when_that_is_asked_for() {
    let page = kept(Screen::PHONE);
    act::press(&page, Role::Link, "Wish & share");
    act::press(&page, Role::Button, "This device");
    see::shown(&page, Role::Button, "Install");
    page.script("installing.prompt = () => { globalThis.asked = true; }; true");
    act::press(&page, Role::Button, "Install");
    assert_eq!(page.script("globalThis.asked === true && installing === undefined"), true);
    see::gone(&page, Role::Button, "Install");
    see::says(&page, Role::Region, Name::from("This device"), "Add to Home Screen");
}

#[test]
fn a_newer_build_waits_until_it_is_asked_for() {
    let page = kept(Screen::DESKTOP);
    page.reload();
    act::choose(&page, "Knuckle becomes", "Stew");
    let tally = see::text(&page, Role::Status, Name::from("Tally"));
    page.publish_newer();
    page.script("navigator.serviceWorker.getRegistration().then(kept => kept.update()).then(() => true)");
    see::says(&page, Role::Alert, Name::Any, "A new version is ready");
    assert_eq!(see::text(&page, Role::Status, Name::from("Tally")), tally, "nothing is interrupted");
    act::press(&page, Role::Button, "Open it now");
    page.until("the newer build", || {
        let builds =
            page.script("caches.keys().then(names => names.filter(name => name.startsWith('hindsaddle-')))");
        let newer = builds.as_array().is_some_and(|names| {
            names.len() == 1 && names[0].as_str().is_some_and(|name| name.starts_with("hindsaddle-newer-"))
        });
        if newer { Ok(()) } else { Err(builds.to_string()) }
    });
    assert_eq!(see::text(&page, Role::Status, Name::from("Tally")), tally, "the plan is as it was");
}

/// All pages in one file, from a memory card: plan, think ahead, go to the table and back, and nothing is fetched.
#[test]
fn one_file_from_the_disk_is_the_whole_planner() {
    let page = Page::open_one_file(Screen::PHONE);
    act::press(&page, Role::Link, "Wish & share");
    see::shown(&page, Role::Heading, "Wishes and sharing");
    act::press(&page, Role::Button, "Season");
    act::press(&page, Role::Button, "Add an animal cut the same way");
    act::press(&page, Role::Link, "Cut & pack");
    see::shown(&page, Role::Heading, "From table to freezer");
    see::is(&page, Role::Button, "2 Doe", "pressed");
    act::press(&page, Role::Link, "Learn");
    act::choose(&page, "Muscle", "Knuckle");
    see::shown(&page, Role::Region, "About knuckle");
    act::press(&page, Role::Link, "Plan");
    see::shown(&page, Role::Heading, "Hindsaddle");
    act::choose(&page, "Knuckle becomes", "Grind");
    let tally = see::text(&page, Role::Status, Name::from("Tally"));
    page.reload();
    assert_eq!(see::text(&page, Role::Status, Name::from("Tally")), tally);
    let fetched = page.script(
        "performance.getEntriesByType('resource').map(entry => entry.name).filter(name => !/^(data|blob):/.test(name))",
    );
    assert_eq!(fetched.as_array().map(Vec::len), Some(0), "{fetched}");
    page.expect_no_complaint();
}
