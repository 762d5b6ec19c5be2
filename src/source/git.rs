//! Brings a site in from a revision of its git repository. The work tree is not touched: trees and texts are asked of the
//! git program, which answers from its own store.
//!
//! This is the one file that starts another program.

use std::collections::BTreeMap;
use std::io::{self, BufRead, BufReader, Read, Write};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use jiff::civil::Date;

use crate::finding::Finding;

use super::bytes::decoded;
use super::read::{Reading, parts};
use super::{Layer, Photo, Sources, codes};

/// A git repository, seen from a site's folder in it.
#[derive(Debug, Clone)]
pub struct Repository {
    folder: PathBuf,
    /// The site's folder inside the repository, empty or with a stroke at its end.
    prefix: String,
}

/// Why a revision could not be read.
#[derive(Debug)]
pub enum GitError {
    /// The git program cannot be started.
    NoProgram(io::Error),
    /// The folder lies in no repository.
    NoRepository(PathBuf),
    /// The repository knows no such revision.
    NoRevision(String),
    /// That revision holds no `wardsheet.toml` where the site stands.
    NotASite(String),
    /// A library that the site names is not there.
    NoLibrary(String),
    /// The git program refused, in its own words.
    Refused(String),
}

impl std::fmt::Display for GitError {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            GitError::NoProgram(error) => write!(out, "the git program cannot be started: {error}"),
            GitError::NoRepository(path) => {
                write!(out, "{} lies in no git repository", path.display())
            }
            GitError::NoRevision(name) => write!(out, "git knows no revision `{name}`"),
            GitError::NotASite(name) => {
                write!(out, "the revision `{name}` holds no wardsheet.toml where this site stands")
            }
            GitError::NoLibrary(name) => {
                write!(
                    out,
                    "wardsheet.toml names the library `{name}`, and there is no such folder"
                )
            }
            GitError::Refused(said) => write!(out, "git refused: {said}"),
        }
    }
}

impl std::error::Error for GitError {}

/// One revision: every file below its root, by path, with the name of its text.
#[derive(Debug, Clone)]
pub struct Revision {
    repository: Repository,
    name: String,
    commit: String,
    files: BTreeMap<String, Entry>,
}

#[derive(Debug, Clone)]
struct Entry {
    is_link: bool,
    object: String,
}

/// When a line of a file was last written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Written {
    /// The day, where its author was; none where it is not committed yet.
    pub on: Option<Date>,
    /// The first letters of the commit.
    pub commit: String,
    /// Its author.
    pub author: String,
}

impl Repository {
    /// Finds the repository that a site's folder lies in.
    ///
    /// # Errors
    /// When the git program is not there, or the folder lies in no repository.
    pub fn around(folder: &Path) -> Result<Repository, GitError> {
        let here = Repository { folder: folder.to_owned(), prefix: String::new() };
        match here.ask(&["rev-parse", "--show-prefix"]) {
            Ok(prefix) => {
                let prefix = String::from_utf8_lossy(&prefix).trim_end_matches('\n').to_owned();
                Ok(Repository { prefix, ..here })
            }
            Err(GitError::Refused(_)) => Err(GitError::NoRepository(folder.to_owned())),
            Err(error) => Err(error),
        }
    }

    fn git(&self) -> Command {
        let mut git = Command::new("git");
        git.arg("--no-optional-locks").arg("-C").arg(&self.folder).stdin(Stdio::null());
        git
    }

    fn ask(&self, arguments: &[&str]) -> Result<Vec<u8>, GitError> {
        let said = self.git().args(arguments).output().map_err(GitError::NoProgram)?;
        if said.status.success() {
            return Ok(said.stdout);
        }
        let words = String::from_utf8_lossy(&said.stderr);
        Err(GitError::Refused(words.lines().next().unwrap_or("without a word").to_owned()))
    }

    /// Finds a revision by any name that git knows: a branch, a tag, a commit, `HEAD~3`.
    ///
    /// # Errors
    /// When there is none of that name, or git refuses.
    pub fn revision(&self, name: &str) -> Result<Revision, GitError> {
        // A name that begins with a stroke is a name here, never an option.
        let wanted = format!("{name}^{{commit}}");
        let asked = self.ask(&["rev-parse", "--verify", "--quiet", "--end-of-options", &wanted]);
        let commit = match asked {
            Ok(said) => String::from_utf8_lossy(&said).trim().to_owned(),
            Err(GitError::Refused(_)) => return Err(GitError::NoRevision(name.to_owned())),
            Err(error) => return Err(error),
        };
        let listed = self.ask(&["ls-tree", "-r", "-z", "--full-tree", &commit])?;
        let mut files = BTreeMap::new();
        for line in listed.split(|byte| *byte == 0) {
            let line = String::from_utf8_lossy(line);
            let Some((about, path)) = line.split_once('\t') else { continue };
            let mut about = about.split(' ');
            if let (Some(mode), Some("blob"), Some(object)) =
                (about.next(), about.next(), about.next())
            {
                let entry = Entry { is_link: mode == "120000", object: object.to_owned() };
                files.insert(path.to_owned(), entry);
            }
        }
        Ok(Revision { repository: self.clone(), name: name.to_owned(), commit, files })
    }

    /// When each line of a file of the site was last written, the first line first.
    ///
    /// # Errors
    /// When git does not know the file, or refuses.
    pub fn blame(&self, inside: &str) -> Result<Vec<Written>, GitError> {
        let said = self.ask(&["blame", "--line-porcelain", "--", inside])?;
        let said = String::from_utf8_lossy(&said);
        let mut lines = Vec::new();
        let mut written = Written { on: None, commit: String::new(), author: String::new() };
        let (mut moment, mut zone) = (0_i64, 0_i64);
        for line in said.lines() {
            if line.starts_with('\t') {
                let committed = !written.commit.chars().all(|digit| digit == '0');
                written.on = committed.then(|| day_of(moment + zone)).flatten();
                lines.push(written.clone());
            } else if let Some(author) = line.strip_prefix("author ") {
                written.author = author.to_owned();
            } else if let Some(seconds) = line.strip_prefix("author-time ") {
                moment = seconds.parse().unwrap_or(0);
            } else if let Some(offset) = line.strip_prefix("author-tz ") {
                let offset: i64 = offset.parse().unwrap_or(0);
                zone = (offset / 100 * 60 + offset % 100) * 60;
            } else if let Some(commit) = commit_of(line) {
                written.commit = commit.chars().take(8).collect();
            }
        }
        Ok(lines)
    }
}

/// The commit at the head of a line's entry: forty or more hexadecimal digits, then numbers.
fn commit_of(line: &str) -> Option<&str> {
    let first = line.split(' ').next()?;
    (first.len() >= 40 && first.bytes().all(|byte| byte.is_ascii_hexdigit())).then_some(first)
}

fn day_of(seconds: i64) -> Option<Date> {
    let moment = jiff::Timestamp::from_second(seconds).ok()?;
    Some(moment.to_zoned_datetime(jiff::tz::TimeZone::UTC).date())
}

impl Revision {
    /// The first letters of its commit.
    pub fn commit(&self) -> &str {
        self.commit.get(..8).unwrap_or(&self.commit)
    }

    /// Reads `wardsheet.toml` alone: it says which libraries the rest needs.
    ///
    /// # Errors
    /// When the revision holds no site, or git refuses.
    pub fn read_site_file(&self) -> Result<String, GitError> {
        let path = format!("{}wardsheet.toml", self.repository.prefix);
        let entry = self.files.get(&path).ok_or_else(|| GitError::NotASite(self.name.clone()))?;
        let mut texts = Texts::open(&self.repository)?;
        Ok(decoded(texts.text(&entry.object)?).0)
    }

    /// Reads everything, as [`super::Folder::read`] does from the disk.
    ///
    /// A library inside the repository is read from the revision; one outside it has no revisions and is read as it stands
    /// on the disk.
    ///
    /// # Errors
    /// When a library is not there, or git refuses.
    pub fn read(&self, libraries: &[String]) -> Result<(Sources, Vec<Finding>), GitError> {
        let mut reading = Reading::default();
        let mut texts = Texts::open(&self.repository)?;
        self.part(&mut reading, &mut texts, &self.repository.prefix, "", Layer::Own)?;
        for (number, library) in libraries.iter().enumerate() {
            if library == "builtin" {
                super::library::add_species(&mut reading.sources);
                continue;
            }
            let shown = format!("{}/", library.trim_end_matches('/'));
            let layer = Layer::Library(u16::try_from(number).unwrap_or(u16::MAX));
            match joined(&self.repository.prefix, library) {
                Some(prefix) if self.files.keys().any(|path| path.starts_with(&prefix)) => {
                    self.part(&mut reading, &mut texts, &prefix, &shown, layer)?;
                }
                Some(_) => return Err(GitError::NoLibrary(library.clone())),
                None => {
                    let path = self.repository.folder.join(library);
                    if !path.is_dir() {
                        return Err(GitError::NoLibrary(library.clone()));
                    }
                    reading.folder(&path, &shown, layer);
                }
            }
        }
        super::library::add_look(&mut reading.sources);
        reading.report_names_taken_twice();
        Ok((reading.sources, reading.findings))
    }

    fn part(
        &self,
        reading: &mut Reading,
        texts: &mut Texts,
        prefix: &str,
        shown: &str,
        layer: Layer,
    ) -> Result<(), GitError> {
        for part in parts(layer) {
            let start = format!("{prefix}{part}");
            let here = self.files.range(start.clone()..);
            for (path, entry) in here.take_while(|(path, _)| path.starts_with(&start)) {
                let inside = &path[prefix.len()..];
                if inside != *part && !inside[part.len()..].starts_with('/') {
                    continue;
                }
                if let Some(photo) = inside.strip_prefix("photos/") {
                    let bytes = texts.text(&entry.object)?;
                    reading.sources.add_photo(photo.to_owned(), Photo::InMemory(bytes.into()));
                    continue;
                }
                if super::library::role_of(inside).is_none() {
                    continue;
                }
                let read = if entry.is_link {
                    let why = "this file is a link, and links of a revision are not followed";
                    Err((&codes::FILE_UNREADABLE, why.to_owned()))
                } else {
                    Ok(texts.text(&entry.object)?)
                };
                if let Some(id) = reading.bytes(inside, layer, read) {
                    reading.rename(id, shown);
                }
            }
        }
        Ok(())
    }
}

/// A folder named from inside the repository, by its path from the root; none where it leads out of it.
fn joined(prefix: &str, library: &str) -> Option<String> {
    let mut parts: Vec<&str> = prefix.split('/').filter(|part| !part.is_empty()).collect();
    if library.starts_with('/') {
        return None;
    }
    for step in library.split('/') {
        match step {
            "" | "." => {}
            ".." => drop(parts.pop()?),
            name => parts.push(name),
        }
    }
    Some(parts.iter().map(|part| format!("{part}/")).collect())
}

/// A git program that hands out texts by their names, one after the other.
struct Texts {
    program: std::process::Child,
    ask: std::process::ChildStdin,
    answers: BufReader<std::process::ChildStdout>,
}

impl Texts {
    fn open(repository: &Repository) -> Result<Texts, GitError> {
        let mut git = repository.git();
        git.args(["cat-file", "--batch"]).stdin(Stdio::piped()).stdout(Stdio::piped());
        let mut program = git.stderr(Stdio::null()).spawn().map_err(GitError::NoProgram)?;
        let silent = || GitError::Refused("it gives no answer".to_owned());
        let ask = program.stdin.take().ok_or_else(silent)?;
        let answers = BufReader::new(program.stdout.take().ok_or_else(silent)?);
        Ok(Texts { program, ask, answers })
    }

    fn text(&mut self, object: &str) -> Result<Vec<u8>, GitError> {
        let broken = |error: io::Error| GitError::Refused(error.to_string());
        writeln!(self.ask, "{object}").and_then(|()| self.ask.flush()).map_err(broken)?;
        let mut head = String::new();
        self.answers.read_line(&mut head).map_err(broken)?;
        let size = head.trim().rsplit(' ').next().and_then(|size| size.parse::<usize>().ok());
        let size = size.ok_or_else(|| GitError::Refused(head.trim().to_owned()))?;
        let mut text = vec![0; size + 1];
        self.answers.read_exact(&mut text).map_err(broken)?;
        text.truncate(size);
        Ok(text)
    }
}

impl Drop for Texts {
    fn drop(&mut self) {
        // It has nothing more to say: it ends by itself once nobody can ask, and is not left behind.
        let _ = self.program.kill();
        let _ = self.program.wait();
    }
}
