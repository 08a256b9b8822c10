//! Owns folders for temporary files.

use std::path::PathBuf;
use std::sync::atomic::{AtomicU32, Ordering};
use std::{env, fs, process};

use crate::page::Page;

/// A folder for what is only needed now, gone when it is dropped.
pub(crate) struct Folder(pub(crate) PathBuf);

impl Folder {
    pub(crate) fn new(name: &str) -> Self {
        static COUNT: AtomicU32 = AtomicU32::new(0);
        let count = COUNT.fetch_add(1, Ordering::Relaxed);
        let folder = env::temp_dir().join(format!("hindsaddle-{name}-{}-{count}", process::id()));
        fs::create_dir_all(&folder).expect("a folder for temporary files");
        Self(folder)
    }

    /// A file that the browser saves into it, once its text is whole.
    #[track_caller]
    pub(crate) fn saved(&self, page: &Page, name: &str, ends: &str) -> String {
        page.until(name, || {
            let text = fs::read_to_string(self.0.join(name)).unwrap_or_default();
            if !text.is_empty() && text.ends_with(ends) { Ok(text) } else { Err(format!("{text:?}")) }
        })
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = fs::remove_dir_all(&self.0);
    }
}
