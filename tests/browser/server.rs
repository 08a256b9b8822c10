//! Serves the built page from a free port, as a plain static host would, and can be made unreachable.

use std::io::{BufRead, BufReader, Write};
use std::net::{TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
use std::thread;
use std::time::Duration;

/// The built page, served until the last page that uses it is gone.
pub(crate) struct Site {
    port: u16,
    state: Arc<State>,
}

/// How the site answers when a program is asked for.
#[derive(Clone, Copy)]
pub(crate) enum Programs {
    /// At once.
    There,
    /// When they are there, as over a slow network.
    Late,
    /// That there is none.
    Missing,
}

struct State {
    root: PathBuf,
    reachable: AtomicBool,
    /// Whether the list of files to keep offline is that of another build.
    newer: AtomicBool,
    programs: Mutex<Programs>,
    closed: AtomicBool,
}

impl Site {
    /// Serves `dist/` of this workspace.
    pub(crate) fn start() -> Self {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../dist");
        assert!(
            root.join("index.html").is_file(),
            "there is no built page in dist/; build it with: bash .dev/test"
        );
        let listener = TcpListener::bind("127.0.0.1:0").expect("a free port");
        let port = listener.local_addr().expect("a bound socket has an address").port();
        let state = Arc::new(State {
            root,
            reachable: AtomicBool::new(true),
            newer: AtomicBool::new(false),
            programs: Mutex::new(Programs::There),
            closed: AtomicBool::new(false),
        });
        let served = Arc::clone(&state);
        thread::spawn(move || {
            for stream in listener.incoming().map_while(Result::ok) {
                if served.closed.load(Ordering::Relaxed) {
                    break;
                }
                // An unreachable site hangs up at once, as a network without a route would.
                if served.reachable.load(Ordering::Relaxed) {
                    let served = Arc::clone(&served);
                    thread::spawn(move || answer(&stream, &served));
                }
            }
        });
        Self { port, state }
    }

    /// Where the page is, with the slash at the end.
    pub(crate) fn address(&self) -> String {
        format!("http://localhost:{}/", self.port)
    }

    /// Puts another build in the place of this one, as far as the browser can tell: one of another name.
    pub(crate) fn publish_newer(&self) {
        self.state.newer.store(true, Ordering::Relaxed);
    }

    /// How programs are answered from now on.
    pub(crate) fn set_programs(&self, programs: Programs) {
        *self.state.programs.lock().expect("no answer panics") = programs;
    }

    /// Takes the site off the network, or puts it back.
    pub(crate) fn set_reachable(&self, reachable: bool) {
        self.state.reachable.store(reachable, Ordering::Relaxed);
    }
}

impl Drop for Site {
    fn drop(&mut self) {
        self.state.closed.store(true, Ordering::Relaxed);
        // One last visit wakes the loop, so that it sees that it is closed.
        drop(TcpStream::connect(("127.0.0.1", self.port)));
    }
}

/// Answers one request and hangs up. A browser that hangs up first is no failure of the page.
fn answer(mut stream: &TcpStream, state: &State) {
    let mut lines = BufReader::new(stream).lines().map_while(Result::ok);
    let Some(request) = lines.next() else { return };
    // The headers say nothing that matters here, but a socket closed with them unread would be reset.
    lines.take_while(|line| !line.is_empty()).for_each(drop);
    let path = request.split(' ').nth(1).unwrap_or("/");
    let path = path.split(['?', '#']).next().unwrap_or("/").trim_start_matches('/');
    let path = if path.is_empty() { "index.html" } else { path };
    let file = state.root.join(path);
    let is_missing = path.ends_with("_bg.wasm")
        && loop {
            match *state.programs.lock().expect("no answer panics") {
                Programs::There => break false,
                Programs::Missing => break true,
                Programs::Late => {}
            }
            thread::sleep(Duration::from_millis(5));
        };
    let inside = !path.split('/').any(|part| part == "..");
    let body = if inside && !is_missing { std::fs::read(&file).ok() } else { None };
    let body = match body {
        Some(body) if path == "offline.js" && state.newer.load(Ordering::Relaxed) => {
            let text = String::from_utf8_lossy(&body)
                .replace("BUILD = \"hindsaddle-", "BUILD = \"hindsaddle-newer-");
            Some(text.into_bytes())
        }
        body => body,
    };
    let (status, body) = body.map_or(("404 Not Found", Vec::new()), |body| ("200 OK", body));
    let head = format!(
        "HTTP/1.1 {status}\r\nContent-Type: {}\r\nContent-Length: {}\r\nCache-Control: no-cache\r\nConnection: close\r\n\r\n",
        content_type(&file),
        body.len(),
    );
    let _hung_up = stream.write_all(head.as_bytes()).and_then(|()| stream.write_all(&body));
}

fn content_type(file: &Path) -> &'static str {
    match file.extension().and_then(|extension| extension.to_str()).unwrap_or_default() {
        "css" => "text/css; charset=utf-8",
        "html" => "text/html; charset=utf-8",
        "ico" => "image/x-icon",
        "js" => "text/javascript; charset=utf-8",
        "json" => "application/json",
        "png" => "image/png",
        "svg" => "image/svg+xml",
        "wasm" => "application/wasm",
        "webmanifest" => "application/manifest+json",
        _ => "application/octet-stream",
    }
}
