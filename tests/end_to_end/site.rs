//! A site in a temporary folder, and the program run on it.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

/// The day that every sheet of these tests is for.
pub(crate) const TODAY: &str = "2026-11-25";

/// The files below a folder by their paths, with forward slashes.
pub(crate) type Tree = BTreeMap<String, Vec<u8>>;

/// A site of its own for one test.
pub(crate) struct Site {
    pub(crate) folder: PathBuf,
}

impl Site {
    /// A copy of the example site.
    pub(crate) fn example(name: &str) -> Site {
        let site = Site::empty(name);
        for (path, bytes) in tree(&project().join("site-example")) {
            if !path.starts_with("out/") {
                site.put(&path, bytes);
            }
        }
        site
    }

    /// An empty folder.
    pub(crate) fn empty(name: &str) -> Site {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
        if folder.exists() {
            std::fs::remove_dir_all(&folder).expect("the folder of an earlier run can be removed");
        }
        std::fs::create_dir_all(&folder).expect("a folder for the test");
        Site { folder }
    }

    pub(crate) fn put(&self, path: &str, bytes: impl AsRef<[u8]>) {
        let place = self.folder.join(path);
        std::fs::create_dir_all(place.parent().expect("below the site"))
            .expect("a folder in the site");
        std::fs::write(place, bytes).expect("a file in the site");
    }

    pub(crate) fn text(&self, path: &str) -> String {
        std::fs::read_to_string(self.folder.join(path)).expect("a text of the site")
    }

    pub(crate) fn remove(&self, path: &str) {
        std::fs::remove_file(self.folder.join(path)).expect("a file to remove");
    }

    /// Changes the fields of a TOML file of the site.
    pub(crate) fn edit(&self, path: &str, change: impl FnOnce(&mut toml::Table)) {
        let mut table: toml::Table = self.text(path).parse().expect("TOML");
        change(&mut table);
        self.put(path, table.to_string());
    }

    /// Puts a species of the library into the site's own folder, changed.
    pub(crate) fn own_species(&self, name: &str, change: impl FnOnce(&mut toml::Table)) {
        let path = format!("species/{name}.toml");
        self.put(&path, std::fs::read(project().join(&path)).expect("a species of the library"));
        self.edit(&path, change);
    }

    /// A command of the program, ready to be run on this site.
    pub(crate) fn command(&self, verb: &str) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_wardsheet"));
        command
            .arg(verb)
            .arg("--site")
            .arg(&self.folder)
            .env_remove("SOURCE_DATE_EPOCH")
            .env_remove("NO_COLOR");
        command
    }

    /// Compiles the site for [`TODAY`].
    pub(crate) fn try_compile(&self) -> Output {
        self.command("compile").args(["--as-of", TODAY]).output().expect("the program runs")
    }

    /// Compiles the site, which must succeed.
    #[track_caller]
    pub(crate) fn compile(&self) {
        succeeds(&self.try_compile());
    }

    pub(crate) fn out(&self) -> PathBuf {
        self.folder.join("out")
    }
}

/// The folder that this project stands in.
pub(crate) fn project() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// Every file below a folder.
pub(crate) fn tree(folder: &Path) -> Tree {
    let walk = walkdir::WalkDir::new(folder).sort_by_file_name().into_iter();
    let files = walk
        .map(|entry| entry.expect("a folder that can be read"))
        .filter(|entry| entry.file_type().is_file());
    let read = files.map(|entry| {
        let inside = entry
            .path()
            .strip_prefix(folder)
            .expect("below the folder")
            .to_string_lossy()
            .replace('\\', "/");
        (inside, std::fs::read(entry.path()).expect("a file that can be read"))
    });
    read.collect()
}

#[track_caller]
pub(crate) fn succeeds(output: &Output) {
    ends_with(output, 0);
}

/// Checks the exit status, and shows what was said where it is another one.
#[track_caller]
pub(crate) fn ends_with(output: &Output, status: i32) {
    assert_eq!(output.status.code(), Some(status), "{}", said(output));
}

pub(crate) fn said(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

/// Two trees are the same, byte for byte; where they are not, only the paths are shown.
#[track_caller]
pub(crate) fn same(found: &Tree, expected: &Tree) {
    let of = |tree: &Tree| tree.keys().cloned().collect::<Vec<_>>();
    assert_eq!(of(found), of(expected), "other files");
    let differ: Vec<&String> = found
        .iter()
        .filter(|(path, bytes)| expected[*path] != **bytes)
        .map(|(path, _)| path)
        .collect();
    assert!(differ.is_empty(), "other bytes in {differ:?}");
}
