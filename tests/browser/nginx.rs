//! Serves the built page with nginx, by the configuration that README.md gives, under a folder of a site.

use std::env::temp_dir;
use std::fs;
use std::net::{TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};

use crate::patience;

/// A running nginx. It ends when this is dropped.
pub(crate) struct Nginx {
    child: Child,
    folder: PathBuf,
    port: u16,
}

impl Nginx {
    /// Starts it at a free port.
    #[track_caller]
    pub(crate) fn start() -> Self {
        let here = Path::new(env!("CARGO_MANIFEST_DIR"));
        let dist = here.join("../dist").canonicalize().expect("the page is built");
        // Free a moment ago; nobody else here asks for ports by number.
        let port =
            TcpListener::bind("127.0.0.1:0").and_then(|free| free.local_addr()).expect("a free port").port();
        let folder = temp_dir().join(format!("hindsaddle-nginx-{port}"));
        fs::create_dir_all(&folder).expect("a folder for it");
        let text = fs::read_to_string(here.join("serving/nginx.conf")).expect("its configuration");
        let text = text
            .replace("FOLDER", folder.to_str().expect("a plain path"))
            .replace("DIST", dist.to_str().expect("a plain path"))
            .replace("PORT", &port.to_string());
        let file = folder.join("nginx.conf");
        fs::write(&file, text).expect("the folder can be written");
        let child = Command::new("nginx")
            .args(["-p".as_ref(), folder.as_os_str(), "-c".as_ref(), file.as_os_str()])
            .stderr(Stdio::null())
            .spawn()
            .unwrap_or_else(|error| panic!("cannot start nginx: {error}; install it with: bash .dev/test"));
        let nginx = Self { child, folder, port };
        let answers = || TcpStream::connect(("127.0.0.1", port)).map(drop).map_err(|error| error.to_string());
        if let Err(error) = patience::until(answers) {
            let log = fs::read_to_string(nginx.folder.join("error.log")).unwrap_or_default();
            panic!("nginx does not answer: {error}\n{log}");
        }
        nginx
    }

    /// Where the page is, with the slash at the end.
    pub(crate) fn address(&self) -> String {
        format!("http://localhost:{}/camp/", self.port)
    }
}

impl Drop for Nginx {
    fn drop(&mut self) {
        // Its worker ends with it if it is asked to; a killed master would leave the worker behind.
        let _asked = Command::new("kill").arg(self.child.id().to_string()).status();
        let _reaped = self.child.wait();
        let _removed = fs::remove_dir_all(&self.folder);
    }
}
