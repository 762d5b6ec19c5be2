//! A compile that is stopped from outside leaves a site that can be published: killed, out of room, or not allowed to write.

use std::io::Write as _;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use crate::site::{Site, TODAY, Tree, ends_with, project, said, same, succeeds, tree};

/// How many animals the site has: enough that the swap takes a while.
const ANIMALS: usize = 60;

fn site(name: &str) -> Site {
    let site = Site::empty(name);
    for (path, bytes) in tree(&project().join("tests/base")) {
        site.put(&path, bytes);
    }
    for number in 0..ANIMALS {
        site.put(&format!("animals/juniper-{number}.toml"), animal(&site, number));
    }
    site
}

/// An animal like the first of the site, with a name and a chip of its own.
fn animal(site: &Site, number: usize) -> String {
    let first = site.text("animals/juniper.toml");
    let own = first.replacen("Juniper", &format!("Juniper {number}"), 1);
    own.replace("000 000 000 000 001", &format!("000 000 000 001 {number:03}"))
}

/// Changes every page of the site, and takes away or brings back some animals.
fn turn(site: &Site, second: bool) {
    let words = if second { "The second state." } else { "The first state." };
    site.edit("wardsheet.toml", |table| {
        table.insert("footer".to_owned(), words.into());
    });
    for number in 0..8 {
        let path = format!("animals/juniper-{number}.toml");
        if second { site.remove(&path) } else { site.put(&path, animal(site, number)) }
    }
}

/// The pages of an output folder without what the tool keeps beside them.
fn pages(out: &Path) -> Tree {
    tree(out).into_iter().filter(|(path, _)| !path.starts_with('.')).collect()
}

/// The trees of both states, and the site compiled in the first.
fn states(site: &Site) -> [Tree; 2] {
    turn(site, true);
    site.compile();
    let second = pages(&site.out());
    turn(site, false);
    site.compile();
    let first = pages(&site.out());
    assert_ne!(first, second);
    assert!(first.len() > second.len() + 16, "animals that are gone have no pages");
    [first, second]
}

#[test]
fn a_killed_compile_leaves_the_old_site_whole_and_the_next_one_goes_on() {
    let site = site("killed");
    let start = Instant::now();
    let states = states(&site);
    let whole = start.elapsed() / 2;
    let mut random = fastrand::Rng::with_seed(20_261_125);
    let (mut cut_short, mut in_swap) = (0, 0);
    for round in 0..12 {
        let second = round % 2 == 0;
        turn(&site, second);
        let mut command = site.command("compile");
        command.args(["--as-of", TODAY]).stdout(Stdio::null()).stderr(Stdio::null());
        let mut running = command.spawn().expect("the program runs");
        // Some are killed at any moment, the others a moment after the swap has begun.
        let swap = site.out().join(".wardsheet-swap");
        if round % 3 == 0 {
            std::thread::sleep(whole.mul_f64(random.f64()));
        } else {
            while !swap.exists() && running.try_wait().expect("its state").is_none() {
                std::thread::sleep(Duration::from_micros(20));
            }
            std::thread::sleep(Duration::from_micros(random.u64(0..3000)));
        }
        running.kill().expect("it can be killed");
        let ended = running.wait().expect("it has ended");
        cut_short += usize::from(!ended.success());
        let begun = swap.exists();
        in_swap += usize::from(begun);
        let mut found = pages(&site.out());
        let (old, new) = (&states[usize::from(!second)], &states[usize::from(second)]);
        if !begun {
            assert!(
                found == *old || found == *new,
                "round {round}: neither the old site nor the new"
            );
        }
        for (path, bytes) in old.iter().filter(|(path, _)| new.contains_key(*path)) {
            let here =
                found.remove(path).unwrap_or_else(|| panic!("round {round}: {path} is gone"));
            assert!(here == *bytes || here == new[path], "round {round}: {path} is not whole");
        }
        for (path, bytes) in found {
            let known = old.get(&path).or(new.get(&path));
            assert_eq!(known, Some(&bytes), "round {round}: {path} is neither old nor new");
        }
        site.compile();
        same(&pages(&site.out()), new);
        let left: Vec<String> =
            tree(&site.out()).into_keys().filter(|path| path.starts_with(".wardsheet-s")).collect();
        assert!(left.is_empty(), "left behind: {left:?}");
    }
    assert!(cut_short > 4, "only {cut_short} of 12 were cut short, {in_swap} of them in the swap");
}

/// What a file may be long at most is the nearest thing to a full disk that every user may ask for.
#[test]
#[cfg(unix)]
fn a_compile_that_cannot_finish_a_file_leaves_the_old_site() {
    let site = site("file-limit");
    let [first, second] = states(&site);
    turn(&site, true);
    let limited = Command::new("bash")
        .args(["-c", "trap '' XFSZ; ulimit -f 8; exec \"$0\" compile --site \"$1\" --as-of \"$2\""])
        .args([env!("CARGO_BIN_EXE_wardsheet").as_ref(), site.folder.as_os_str()])
        .arg(TODAY)
        .output()
        .expect("bash runs");
    ends_with(&limited, 2);
    assert!(said(&limited).contains("cannot write"), "{}", said(&limited));
    same(&pages(&site.out()), &first);
    site.compile();
    same(&pages(&site.out()), &second);
}

/// A small disk of its own, where this user may mount one.
#[cfg(target_os = "linux")]
struct Disk<'a>(&'a Path);

#[cfg(target_os = "linux")]
impl Disk<'_> {
    fn mount(&self, options: &str) -> bool {
        let mut command = Command::new("mount");
        let mounted = command.args(["-t", "tmpfs", "-o", options, "tmpfs"]).arg(self.0).output();
        mounted.is_ok_and(|output| output.status.success())
    }
}

#[cfg(target_os = "linux")]
impl Drop for Disk<'_> {
    fn drop(&mut self) {
        // Where it is not mounted there is nothing to take down.
        let _ = Command::new("umount").arg(self.0).output();
    }
}

#[test]
#[cfg(target_os = "linux")]
fn a_full_or_read_only_disk_leaves_the_old_site() {
    let site = site("full-disk");
    let out = site.out();
    std::fs::create_dir_all(&out).expect("a folder");
    let disk = Disk(&out);
    if !disk.mount("size=64m") {
        let mut err = std::io::stderr();
        writeln!(err, "skipped: this user may not mount a disk to fill").expect("standard error");
        return;
    }
    let [first, second] = states(&site);
    turn(&site, true);
    let filler = out.join("filler");
    let mut bytes = vec![0; 64 << 20];
    while std::fs::write(&filler, &bytes).is_err() {
        bytes.truncate(bytes.len().saturating_sub(1 << 16));
    }
    let full = site.try_compile();
    ends_with(&full, 2);
    assert!(said(&full).contains("No space left"), "{}", said(&full));
    std::fs::remove_file(&filler).expect("the filler goes");
    same(&pages(&out), &first);
    assert!(disk.mount("remount,ro"), "a disk that was mounted can be made read-only");
    let refused = site.try_compile();
    ends_with(&refused, 2);
    assert!(said(&refused).contains("cannot write"), "{}", said(&refused));
    same(&pages(&out), &first);
    assert!(disk.mount("remount,rw"), "and be written to again");
    succeeds(&site.try_compile());
    same(&pages(&out), &second);
}

#[test]
fn one_edit_changes_the_pages_that_rest_on_it_and_no_other() {
    let site = site("one-edit");
    site.compile();
    let before = pages(&site.out());
    site.edit("animals/juniper-3.toml", |table| {
        table.insert("chip".to_owned(), "900 164 000 123 456".into());
    });
    site.compile();
    let after = pages(&site.out());
    let changed: Vec<&String> = after
        .iter()
        .filter(|(path, bytes)| before[*path] != **bytes)
        .map(|(path, _)| path)
        .collect();
    assert!(!changed.is_empty());
    assert!(changed.iter().all(|path| path.contains("/juniper-3/")), "{changed:?}");
}

#[test]
fn quiet_says_nothing_and_otherwise_the_last_line_tells_what_was_done() {
    let site = site("last-line");
    let output = site.try_compile();
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    let last = said.lines().last().expect("a last line");
    assert!(last.contains(" new, 0 changed, 0 unchanged, 0 removed, in "), "{last}");
    assert!(output.stderr.is_empty(), "no bar where nobody watches");
    let quiet = site.command("compile").args(["--as-of", TODAY, "--quiet"]).output();
    let quiet = quiet.expect("the program runs");
    succeeds(&quiet);
    assert!(quiet.stdout.is_empty() && quiet.stderr.is_empty());
}
