//! Owns an open page in a browser of its own: where it is, how large, in what light, and what it complained of.

use std::fs;
use std::path::Path;
use std::sync::Arc;

use data_encoding::BASE64;
use serde_json::{Value, json};

use crate::driver::Driver;
use crate::patience;
use crate::server::{Programs, Site};

/// The size of what shows the page, and whether it is touched or pointed at.
#[derive(Clone, Copy)]
pub(crate) struct Screen {
    pub(crate) width: u32,
    pub(crate) height: u32,
    pub(crate) touch: bool,
}

impl Screen {
    /// A small phone, held upright.
    pub(crate) const PHONE: Self = Self { width: 360, height: 740, touch: true };
    /// The narrowest there is: WCAG 2.2, 1.4.10, which is also a desk's 1280 pixels at 400 %.
    pub(crate) const NARROW: Self = Self { width: 320, height: 256, touch: false };
    /// A desk monitor with a mouse.
    pub(crate) const DESKTOP: Self = Self { width: 1440, height: 900, touch: false };
}

/// Width and height of a sheet in inches.
pub(crate) type Paper = (f64, f64);
/// ISO 216.
pub(crate) const A4: Paper = (8.27, 11.69);
/// ANSI/ASME Y14.1, size A.
pub(crate) const LETTER: Paper = (8.5, 11.0);

/// The page, open in a browser with a profile of its own.
pub(crate) struct Page {
    driver: Driver,
    site: Arc<Site>,
    screen: Screen,
}

impl Page {
    /// A first visit.
    #[track_caller]
    pub(crate) fn open(screen: Screen) -> Self {
        Self::open_at(screen, "")
    }

    /// A first visit with a browser that asks for a language.
    #[track_caller]
    pub(crate) fn open_in_language(screen: Screen, language: &str, fragment: &str) -> Self {
        let page = Self::start(Arc::new(Site::start()), screen);
        let agent = page.script("navigator.userAgent");
        let asked = json!({ "userAgent": agent, "acceptLanguage": language });
        page.devtools("Emulation.setUserAgentOverride", &asked);
        page.opened(fragment)
    }

    /// A first visit over a network that has not brought the program yet.
    #[track_caller]
    pub(crate) fn open_before_its_program(screen: Screen, fragment: &str) -> Self {
        let page = Self::start(Arc::new(Site::start()), screen);
        page.site.set_programs(Programs::Late);
        page.opened(fragment)
    }

    /// Brings the program, too, or says that there is none.
    pub(crate) fn answer_for_programs(&self, programs: Programs) {
        self.site.set_programs(programs);
    }

    /// A first visit by a link; `fragment` begins with `#`.
    #[track_caller]
    pub(crate) fn open_at(screen: Screen, fragment: &str) -> Self {
        Self::start(Arc::new(Site::start()), screen).opened(fragment)
    }

    /// A first visit to the same site by someone else: another profile, so nothing is shared but the link.
    #[track_caller]
    pub(crate) fn open_in_second_profile(&self, screen: Screen, fragment: &str) -> Self {
        Self::start(Arc::clone(&self.site), screen).opened(fragment)
    }

    /// A first visit in a browser that refuses to keep anything.
    #[track_caller]
    pub(crate) fn open_without_storage(screen: Screen) -> Self {
        let page = Self::start(Arc::new(Site::start()), screen);
        let refusal = "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });";
        page.devtools("Page.addScriptToEvaluateOnNewDocument", &json!({ "source": refusal }));
        page.opened("")
    }

    /// The one file with everything, from the disk: there is no site.
    #[track_caller]
    pub(crate) fn open_one_file(screen: Screen) -> Self {
        let page = Self::start(Arc::new(Site::start()), screen);
        page.go_offline();
        let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../dist/single.html");
        let file = file.canonicalize().expect("the built page has single.html");
        page.webdriver("/url", &json!({ "url": format!("file://{}", file.display()) }));
        page.settle();
        page.expect_no_complaint();
        page
    }

    /// A first visit with a profile that stays in a folder when the browser ends.
    #[track_caller]
    pub(crate) fn open_with_profile(screen: Screen, profile: &Path) -> Self {
        Self::start_with(Arc::new(Site::start()), screen, Some(profile)).opened("")
    }

    /// The browser is killed in the middle of what it does, and the same page opened again with the same profile.
    #[track_caller]
    pub(crate) fn killed_and_opened_again(self, profile: &Path) -> Self {
        let Self { driver, site, screen } = self;
        driver.kill();
        Self::start_with(site, screen, Some(profile)).opened("")
    }

    fn start(site: Arc<Site>, screen: Screen) -> Self {
        Self::start_with(site, screen, None)
    }

    fn start_with(site: Arc<Site>, screen: Screen, profile: Option<&Path>) -> Self {
        let page = Self { driver: Driver::start(profile), site, screen };
        page.resize(screen);
        page
    }

    #[track_caller]
    fn opened(self, fragment: &str) -> Self {
        self.go_to(fragment);
        self
    }

    /// Opens another link in the same tab, as from the address bar.
    #[track_caller]
    pub(crate) fn go_to(&self, fragment: &str) {
        self.visit(&format!("{}{fragment}", self.site.address()));
    }

    /// Opens any address.
    #[track_caller]
    pub(crate) fn visit(&self, address: &str) {
        self.webdriver("/url", &json!({ "url": address }));
        self.settle();
        self.expect_no_complaint();
    }

    /// Loads the page again.
    #[track_caller]
    pub(crate) fn reload(&self) {
        self.webdriver("/refresh", &json!({}));
        self.settle();
        self.expect_no_complaint();
    }

    /// Waits until the page of this name is open, which the page before opens in its own time. By script alone: what is
    /// asked of the tree of a page that is just being left may never be answered, and then the driver waits for ever.
    #[track_caller]
    pub(crate) fn arrive(&self, name: &str) {
        let looked =
            json!({ "expression": "document.readyState + location.pathname", "returnByValue": true });
        let wanted = format!("complete/{name}");
        self.until(&wanted, || {
            let seen = self.try_devtools("Runtime.evaluate", &looked)?;
            let seen = &seen["result"]["value"];
            if *seen == *wanted { Ok(()) } else { Err(seen.to_string()) }
        });
    }

    /// The part of the address that holds the plan, from `#` on; empty if there is none.
    #[track_caller]
    pub(crate) fn fragment(&self) -> String {
        self.script("location.hash").as_str().expect("a fragment is text").to_owned()
    }

    /// Tells the page that it is hidden, as a phone does: what waits to be written is written then.
    #[track_caller]
    pub(crate) fn hide(&self) {
        self.script("document.dispatchEvent(new Event('visibilitychange')); true");
    }

    /// What the browser remembers under a name, after [`Self::hide`].
    #[track_caller]
    pub(crate) fn remembered(&self, name: &str) -> Value {
        self.hide();
        self.script(&format!("localStorage.getItem('{name}')"))
    }

    /// Waits until the address has caught up with the plan, and gives it. The plan must be without names: an address
    /// leaves them out. See [`Self::remembered`].
    #[track_caller]
    pub(crate) fn fragment_of_plan(&self) -> String {
        self.until("the plan in the address", || {
            let plan = format!("#{}", self.remembered("hindsaddle.plan").as_str().unwrap_or_default());
            let now = self.fragment();
            if plan == now { Ok(now) } else { Err(format!("the plan is {plan}, the address {now}")) }
        })
    }

    /// Changes the size of the screen, and whether it is touched.
    #[track_caller]
    pub(crate) fn resize(&self, screen: Screen) {
        let Screen { width, height, touch } = screen;
        self.devtools(
            "Emulation.setDeviceMetricsOverride",
            &json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": touch }),
        );
        self.devtools(
            "Emulation.setTouchEmulationEnabled",
            &json!({ "enabled": touch, "maxTouchPoints": if touch { 5 } else { 1 } }),
        );
    }

    /// Whether this page is touched rather than pointed at.
    pub(crate) fn is_touched(&self) -> bool {
        self.screen.touch
    }

    /// Takes the network away: the browser knows that it is offline, and the site does not answer.
    #[track_caller]
    pub(crate) fn go_offline(&self) {
        self.set_online(false);
    }

    /// Puts a newer build on the site.
    pub(crate) fn publish_newer(&self) {
        self.site.publish_newer();
    }

    #[track_caller]
    fn set_online(&self, online: bool) {
        self.site.set_reachable(online);
        self.devtools("Network.enable", &json!({}));
        self.devtools(
            "Network.emulateNetworkConditions",
            &json!({ "offline": !online, "latency": 0, "downloadThroughput": -1, "uploadThroughput": -1 }),
        );
    }

    /// Shows the page to someone who prefers dark screens.
    #[track_caller]
    pub(crate) fn prefer_dark(&self) {
        let dark = json!([{ "name": "prefers-color-scheme", "value": "dark" }]);
        self.devtools("Emulation.setEmulatedMedia", &json!({ "features": dark }));
    }

    /// Shows the page to someone who asks for more contrast, as in the sun.
    #[track_caller]
    pub(crate) fn prefer_contrast(&self, dark: bool) {
        let scheme = if dark { "dark" } else { "light" };
        let asked = json!([
            { "name": "prefers-contrast", "value": "more" },
            { "name": "prefers-color-scheme", "value": scheme },
        ]);
        self.devtools("Emulation.setEmulatedMedia", &json!({ "features": asked }));
    }

    /// Shows the page in the few colours that its reader chose.
    #[track_caller]
    pub(crate) fn force_colours(&self) {
        let forced = json!([{ "name": "forced-colors", "value": "active" }]);
        self.devtools("Emulation.setEmulatedMedia", &json!({ "features": forced }));
    }

    /// Shows the page to someone whose browser writes everything twice as large.
    #[track_caller]
    pub(crate) fn double_the_text(&self) {
        // The browser's own setting is out of reach of a test; a page that measures in `rem` cannot tell the two apart.
        let double = "addEventListener('DOMContentLoaded', () => { document.documentElement.style.fontSize = '200%'; });";
        self.devtools("Page.addScriptToEvaluateOnNewDocument", &json!({ "source": double }));
        self.reload();
    }

    /// Puts the device's clock and place on earth elsewhere: milliseconds since 1970, and a zone of the tz database.
    #[track_caller]
    pub(crate) fn set_clock(&self, milliseconds: i64, zone: &str) {
        self.devtools("Emulation.setTimezoneOverride", &json!({ "timezoneId": zone }));
        let clock = format!(
            "(() => {{ const True = Date; const start = True.now(); \
              globalThis.Date = class extends True {{ \
                constructor(...parts) {{ if (parts.length) super(...parts); else super({milliseconds} + True.now() - start); }} \
                static now() {{ return {milliseconds} + True.now() - start; }} }}; }})()"
        );
        self.devtools("Page.addScriptToEvaluateOnNewDocument", &json!({ "source": clock }));
    }

    /// Shows the page as it goes to paper.
    #[track_caller]
    pub(crate) fn show_as_print(&self) {
        self.devtools("Emulation.setEmulatedMedia", &json!({ "media": "print" }));
    }

    /// Lets the page use the clipboard, as a user would when asked.
    #[track_caller]
    pub(crate) fn allow_clipboard(&self) {
        let granted = json!(["clipboardReadWrite", "clipboardSanitizedWrite"]);
        self.devtools(
            "Browser.grantPermissions",
            &json!({ "permissions": granted, "origin": self.site.address() }),
        );
    }

    /// What the clipboard holds.
    #[track_caller]
    pub(crate) fn clipboard(&self) -> String {
        self.script("navigator.clipboard.readText()").as_str().expect("the clipboard holds text").to_owned()
    }

    /// Saves what is on the screen as a PNG file.
    #[track_caller]
    pub(crate) fn screenshot(&self, path: &str) {
        let png = self.devtools("Page.captureScreenshot", &json!({ "format": "png" }));
        fs::write(path, decode(&png["data"])).expect("the screenshot can be written");
    }

    /// Puts a file into the field that a selector finds.
    #[track_caller]
    pub(crate) fn choose_file(&self, selector: &str, file: &Path) {
        let document = self.devtools("DOM.getDocument", &json!({}));
        let root = &document["root"]["nodeId"];
        let found = self.devtools("DOM.querySelector", &json!({ "nodeId": root, "selector": selector }));
        let parameters = json!({ "files": [file], "nodeId": found["nodeId"] });
        self.devtools("DOM.setFileInputFiles", &parameters);
    }

    /// Lets the page save files into a folder.
    #[track_caller]
    pub(crate) fn save_into(&self, folder: &Path) {
        let parameters = json!({ "behavior": "allow", "downloadPath": folder });
        self.devtools("Page.setDownloadBehavior", &parameters);
    }

    /// The middle of the first element that a selector finds, in the window.
    #[track_caller]
    pub(crate) fn middle(&self, selector: &str) -> (f64, f64) {
        let middle = self.script(&format!(
            "(place => [place.x + place.width / 2, place.y + place.height / 2])(document.querySelector({selector:?}).getBoundingClientRect())"
        ));
        (middle[0].as_f64().expect("a number"), middle[1].as_f64().expect("a number"))
    }

    /// The page as a PDF file in a folder.
    #[track_caller]
    pub(crate) fn print_into(&self, folder: &Path) -> std::path::PathBuf {
        let file = folder.join("printed.pdf");
        fs::write(&file, self.pdf(A4)).expect("the folder can be written");
        file
    }

    /// How many sheets it prints on.
    #[track_caller]
    pub(crate) fn sheets(&self, paper: Paper) -> usize {
        let pdf = self.pdf(paper);
        let count = |word: &[u8]| pdf.windows(word.len()).filter(|bytes| *bytes == word).count();
        count(b"/Type /Page") - count(b"/Type /Pages")
    }

    /// The page as a PDF file, without header and footer.
    #[track_caller]
    fn pdf(&self, (width, height): Paper) -> Vec<u8> {
        let parameters = json!({ "paperWidth": width, "paperHeight": height, "printBackground": true, "preferCSSPageSize": true });
        decode(&self.devtools("Page.printToPDF", &parameters)["data"])
    }

    /// The value of a JavaScript expression, for what no user can read off: sizes, counts of requests.
    #[track_caller]
    pub(crate) fn script(&self, expression: &str) -> Value {
        let parameters = json!({ "expression": expression, "returnByValue": true, "awaitPromise": true });
        let answer = self.devtools("Runtime.evaluate", &parameters);
        assert!(answer["exceptionDetails"].is_null(), "{expression}: {}", answer["exceptionDetails"]);
        answer["result"]["value"].clone()
    }

    /// Waits until the page has drawn what it was last told: two frames, as a step's first may already be under way.
    #[track_caller]
    pub(crate) fn settle(&self) {
        self.script(
            "new Promise(drawn => requestAnimationFrame(() => requestAnimationFrame(() => drawn(0))))",
        );
    }

    /// Looks until it is there; fails with what was wanted and what was seen instead.
    #[track_caller]
    pub(crate) fn until<T>(&self, wanted: &str, look: impl FnMut() -> Result<T, String>) -> T {
        match patience::until(look) {
            Ok(found) => found,
            Err(seen) => {
                self.expect_no_complaint();
                panic!("wanted {wanted}; {seen}");
            }
        }
    }

    /// Fails if the page logged an error, threw, or could not load something since the last time.
    #[track_caller]
    pub(crate) fn expect_no_complaint(&self) {
        let complaints = self.complaints();
        assert!(complaints.is_empty(), "the page complained:\n{}", complaints.join("\n"));
    }

    /// The errors and warnings that the page logged since the last time.
    #[track_caller]
    pub(crate) fn complaints(&self) -> Vec<String> {
        let log = self.webdriver("/se/log", &json!({ "type": "browser" }));
        let entries = log.as_array().map(Vec::as_slice).unwrap_or_default();
        entries
            .iter()
            .filter(|entry| matches!(entry["level"].as_str(), Some("SEVERE" | "WARNING")))
            .map(|entry| entry["message"].as_str().unwrap_or_default().to_owned())
            .collect()
    }

    /// Sends a `DevTools` command that cannot fail unless the story is wrong.
    #[track_caller]
    pub(crate) fn devtools(&self, command: &str, parameters: &Value) -> Value {
        self.try_devtools(command, parameters).unwrap_or_else(|error| panic!("{error}"))
    }

    /// Sends a `DevTools` command about something that may be gone by now.
    pub(crate) fn try_devtools(&self, command: &str, parameters: &Value) -> Result<Value, String> {
        self.driver.devtools(command, parameters)
    }

    #[track_caller]
    fn webdriver(&self, command: &str, body: &Value) -> Value {
        self.driver.post(command, body).unwrap_or_else(|error| panic!("{error}"))
    }
}

#[track_caller]
fn decode(data: &Value) -> Vec<u8> {
    let text = data.as_str().expect("the browser answers with data");
    BASE64.decode(text.as_bytes()).expect("the data is base64")
}
