//! Owns the browser itself: one `chromedriver`, one Chromium with a new profile, and the wire to both.
//! Both end when the driver is dropped. It knows nothing of pages, roles or names.

use std::env;
use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::thread;
use std::time::Duration;

use serde_json::{Value, json};

use crate::folder::Folder;

/// Chromium without its own traffic, so that the only requests are the page's.
const CHROMIUM_FLAGS: [&str; 10] = [
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--force-color-profile=srgb",
];

/// A running browser.
pub(crate) struct Driver {
    chromedriver: Child,
    agent: ureq::Agent,
    session: String,
    /// The browser's own process.
    browser: u64,
    /// Where it keeps what it needs while it runs: it leaves files behind, some 20 MB each time.
    _scratch: Folder,
}

impl Driver {
    /// Starts a browser with a profile of its own, which goes with it, or with one that stays in a folder.
    pub(crate) fn start(profile: Option<&Path>) -> Self {
        let program = env::var("CHROMEDRIVER").unwrap_or_else(|_| "chromedriver".to_owned());
        let scratch = Folder::new("browser");
        let (chromedriver, port) = chromedriver(&program, &scratch.0);
        let agent = ureq::Agent::config_builder()
            .timeout_global(Some(Duration::from_mins(1)))
            .http_status_as_error(false)
            .build()
            .new_agent();
        // From here on a panic must end the chromedriver too, so it is owned before the session is asked for.
        let session = format!("http://127.0.0.1:{port}/session");
        let mut driver = Self { chromedriver, agent, session, browser: 0, _scratch: scratch };
        let mut flags = CHROMIUM_FLAGS.map(str::to_owned).to_vec();
        flags.extend(profile.map(|folder| format!("--user-data-dir={}", folder.display())));
        let answer = driver
            .post(
                "",
                &json!({ "capabilities": { "alwaysMatch": {
                    "goog:chromeOptions": { "args": flags },
                    "goog:loggingPrefs": { "browser": "ALL" },
                } } }),
            )
            .unwrap_or_else(|error| panic!("cannot start Chromium: {error}"));
        let id = answer["sessionId"].as_str().expect("a new session has an id");
        driver.session = format!("{}/{id}", driver.session);
        driver.browser = answer["capabilities"]["goog:processID"].as_u64().expect("a browser has a process");
        driver
    }

    /// Ends the browser as a dead battery would: at once, and nothing is tidied up.
    pub(crate) fn kill(self) {
        let killed = Command::new("kill").args(["-9", &self.browser.to_string()]).status();
        assert!(killed.is_ok_and(|status| status.success()), "the browser could not be killed");
    }

    /// Sends a `WebDriver` command, for the few things that `DevTools` has no word for.
    pub(crate) fn post(&self, command: &str, body: &Value) -> Result<Value, String> {
        let mut answer = self
            .agent
            .post(format!("{}{command}", self.session))
            .send_json(body)
            .map_err(|error| error.to_string())?;
        let answer: Value = answer.body_mut().read_json().map_err(|error| error.to_string())?;
        let value = &answer["value"];
        match value["error"].as_str() {
            Some(kind) => Err(format!("{kind}: {}", value["message"].as_str().unwrap_or_default())),
            None => Ok(value.clone()),
        }
    }

    /// Sends a `DevTools` command.
    pub(crate) fn devtools(&self, command: &str, parameters: &Value) -> Result<Value, String> {
        self.post("/goog/cdp/execute", &json!({ "cmd": command, "params": parameters }))
            .map_err(|error| format!("{command}: {error}"))
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        // Closing the session ends Chromium and removes its profile; there is nobody left to tell if it fails.
        let _closed = self.agent.delete(&self.session).call();
        let _ended = self.chromedriver.kill();
        let _reaped = self.chromedriver.wait();
    }
}

/// How often a port may turn out to be taken.
const MOST_PORTS: u32 = 8;

/// A running chromedriver and its port. It looks for a port that is free for one kind of address and then wants
/// it for the other too; where another program has that one it ends, and a new one finds another port. No step
/// of a story is ever done twice.
fn chromedriver(program: &str, scratch: &Path) -> (Child, u16) {
    for _ in 0..MOST_PORTS {
        let mut child = Command::new(program)
            .arg("--port=0")
            .env("TMPDIR", scratch)
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .unwrap_or_else(|error| {
                panic!("cannot start {program}: {error}; install it with: bash .dev/test")
            });
        if let Some(port) = port_of(&mut child) {
            return (child, port);
        }
        let _ended = child.kill();
        let _reaped = child.wait();
    }
    panic!("{program} found no free port {MOST_PORTS} times");
}

/// The port that chromedriver chose, read from what it says when it is ready; none if it ended instead.
fn port_of(chromedriver: &mut Child) -> Option<u16> {
    let output = chromedriver.stdout.take().expect("its output is piped");
    let mut lines = BufReader::new(output).lines().map_while(Result::ok);
    let port = lines
        .by_ref()
        .find_map(|line| line.strip_suffix('.')?.split_once("successfully on port ")?.1.parse().ok())?;
    // Whatever else it says must be read, or it would stop when the pipe is full.
    thread::spawn(move || lines.for_each(drop));
    Some(port)
}
