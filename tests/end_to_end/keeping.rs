//! What is kept: the last good site when there is an error, and every file that the tool has not written.

use toml::Value;

use crate::site::{Site, TODAY, ends_with, said, same, succeeds, tree};

/// Compiles the example, breaks it, and checks that the next compile fails and leaves the output byte for byte as it was.
#[track_caller]
fn leaves_the_last_good_site(name: &str, break_it: impl FnOnce(&Site), code: &str, place: &str) {
    let site = Site::example(name);
    site.compile();
    let good = tree(&site.out());
    break_it(&site);
    let output = site.try_compile();
    ends_with(&output, 1);
    let said = said(&output);
    assert!(said.contains(&format!("error[{code}]")), "{said}");
    assert!(said.contains(place), "{said}");
    assert!(said.contains("nothing was written"), "{said}");
    same(&tree(&site.out()), &good);
}

#[test]
fn a_figure_without_its_unit_leaves_the_last_good_site() {
    let bare = |site: &Site| {
        site.own_species("corn-snake", |species| {
            let temperature = species["temperature"].as_table_mut().expect("[temperature]");
            temperature.insert("warm".to_owned(), Value::Integer(27));
        });
    };
    leaves_the_last_good_site(
        "bare-number",
        bare,
        "figure-without-unit",
        "species/corn-snake.toml",
    );
}

#[test]
fn toml_that_cannot_be_read_leaves_the_last_good_site() {
    let broken = |site: &Site| {
        site.put(
            "animals/juniper.toml",
            site.text("animals/juniper.toml").replace("name = \"", "name = "),
        )
    };
    leaves_the_last_good_site("broken-toml", broken, "toml-syntax", "animals/juniper.toml:");
}

#[test]
fn a_log_that_cannot_be_read_leaves_the_last_good_site() {
    let broken = |site: &Site| {
        site.put(
            "animals/juniper.csv",
            site.text("animals/juniper.csv") + "2026-11-20,weihgt,700 g,,\n",
        )
    };
    leaves_the_last_good_site("broken-log", broken, "log-line", "animals/juniper.csv:");
}

#[test]
fn every_fault_is_told_in_one_run() {
    let site = Site::example("all-at-once");
    site.put(
        "animals/juniper.csv",
        site.text("animals/juniper.csv") + "2026-11-20,weihgt,700 g,,\n",
    );
    site.put("animals/latch.csv", site.text("animals/latch.csv") + "2026-11-31,weight,20 g,,\n");
    site.edit("animals/ditto.toml", |animal| {
        _ = animal.insert("species".to_owned(), "corn-snaek".into())
    });
    let output = site.try_compile();
    ends_with(&output, 1);
    for part in [
        "error[log-line]",
        "error[date-unreadable]",
        "error[species-unknown]",
        "did you mean `corn-snake`",
    ] {
        assert!(said(&output).contains(part), "{part} is not in\n{}", said(&output));
    }
    assert!(!site.out().exists(), "something was written");
}

#[test]
fn warnings_stop_a_compile_only_where_they_are_denied() {
    let site = Site::example("denied");
    site.put("pages/notice.md", "# Notice\n\nWords with <b>HTML</b> in them.\n");
    site.compile();
    let good = tree(&site.out());
    site.put("pages/second.md", "# Second\n\nMore words with <i>HTML</i> in them.\n");
    let output = site
        .command("compile")
        .args(["--as-of", TODAY, "--deny", "warnings"])
        .output()
        .expect("the program runs");
    ends_with(&output, 1);
    same(&tree(&site.out()), &good);
}

#[test]
fn the_pages_of_a_removed_animal_disappear() {
    let site = Site::example("removed-animal");
    site.compile();
    let page = site.out().join("public/animals/bellrope/index.html");
    let sheet = site.out().join("private/animals/bellrope/handover.html");
    assert!(page.exists() && sheet.exists());
    site.remove("animals/bellrope.toml");
    site.remove("animals/bellrope.csv");
    site.compile();
    assert!(!page.exists() && !sheet.exists(), "the pages are still there");
    assert!(!page.parent().expect("a folder").exists(), "an empty folder is left");
    let index = std::fs::read_to_string(site.out().join("public/index.html")).expect("the index");
    assert!(!index.contains("animals/bellrope/"), "the index still leads there");
}

#[test]
fn an_animal_that_is_published_no_longer_leaves_the_public_site() {
    let site = Site::example("unpublished");
    site.compile();
    site.edit("animals/bellrope.toml", |animal| {
        _ = animal.insert("publish".to_owned(), Value::Boolean(false))
    });
    site.compile();
    assert!(!site.out().join("public/animals/bellrope").exists());
    assert!(site.out().join("private/animals/bellrope/handover.html").exists());
}

#[test]
fn a_file_that_the_tool_has_not_written_is_not_touched() {
    let site = Site::example("foreign-file");
    site.put("out/public/CNAME", "care.example.org\n");
    site.put("out/public/animals/bellrope/visit.txt", "A note of our own.\n");
    site.compile();
    site.remove("animals/bellrope.toml");
    site.remove("animals/bellrope.csv");
    site.compile();
    assert_eq!(site.text("out/public/CNAME"), "care.example.org\n");
    assert_eq!(site.text("out/public/animals/bellrope/visit.txt"), "A note of our own.\n");
}

#[test]
fn a_page_of_the_same_name_that_the_tool_has_not_written_is_not_replaced() {
    let site = Site::example("in-the-way");
    site.put("out/public/index.html", "A page of our own.\n");
    let output = site.try_compile();
    ends_with(&output, 2);
    one_sentence(&said(&output), "stands in the way");
    assert_eq!(tree(&site.out()).len(), 1, "something was written");
}

#[test]
fn an_output_folder_that_cannot_be_made_is_said_in_one_sentence() {
    let site = Site::example("out-is-a-file");
    site.put("out", "A file of our own.\n");
    let output = site.try_compile();
    ends_with(&output, 2);
    one_sentence(&said(&output), "cannot write");
    assert_eq!(site.text("out"), "A file of our own.\n");
}

#[cfg(unix)]
#[test]
fn an_output_folder_that_may_not_be_written_to_is_said_in_one_sentence() {
    use std::os::unix::fs::PermissionsExt;
    let site = Site::example("read-only");
    std::fs::create_dir(site.out()).expect("an output folder");
    let may = |mode| {
        std::fs::set_permissions(site.out(), PermissionsExt::from_mode(mode))
            .expect("permissions can be set")
    };
    may(0o555);
    // The superuser may write everywhere: there is nothing to see then.
    let superuser = std::fs::write(site.out().join("trial"), "").is_ok();
    let output = site.try_compile();
    may(0o755);
    if !superuser {
        ends_with(&output, 2);
        one_sentence(&said(&output), "cannot write");
    }
}

#[test]
fn a_folder_that_is_no_site_is_said_in_one_sentence() {
    let site = Site::empty("no-site");
    for verb in ["compile", "proof", "figures"] {
        let output = site.command(verb).output().expect("the program runs");
        ends_with(&output, 2);
        one_sentence(&said(&output), "holds no wardsheet.toml");
    }
    assert_eq!(tree(&site.folder).len(), 0, "something was written");
}

#[test]
fn a_new_site_compiles_as_it_stands() {
    let parent = Site::empty("new-site");
    let folder = parent.folder.join("club");
    let start = || {
        std::process::Command::new(env!("CARGO_BIN_EXE_wardsheet"))
            .arg("start")
            .arg(&folder)
            .output()
    };
    succeeds(&start().expect("the program runs"));
    let site = Site { folder: folder.clone() };
    site.compile();
    assert!(site.out().join("public/index.html").exists());
    let laid_out = tree(&folder);
    ends_with(&start().expect("the program runs"), 2);
    same(&tree(&folder), &laid_out);
}

/// What is said is one line with this in it, and not an internal error.
#[track_caller]
fn one_sentence(said: &str, part: &str) {
    let last: Vec<&str> = said.lines().filter(|line| line.starts_with("wardsheet: ")).collect();
    assert_eq!(last.len(), 1, "{said}");
    assert!(last[0].contains(part) && !said.contains("panicked"), "{said}");
}

#[test]
fn what_is_costly_to_make_is_kept_only_while_it_stands_as_it_was_made_from_the_same() {
    use wardsheet::render::File;
    use wardsheet::write::Stage;

    let site = Site::empty("costly");
    let out = site.out();
    let path = "public/animals/juniper/photo.jpg".to_owned();
    let paths = [path.clone()];
    let print = File { made_from: Some(7), ..File::new(path.as_str(), b"a print".to_vec()) };
    let stage = Stage::open(&out).expect("a folder");
    assert!(!stage.keep(&paths, 7), "there is none yet");
    stage.put(&print).expect("room");
    assert_eq!(stage.swap().expect("room").new, 1);

    let kept = |made_from: u64| {
        let stage = Stage::open(&out).expect("a folder");
        let kept = stage.keep(&paths, made_from);
        let other = File::new("public/index.html", b"a page".to_vec());
        stage.put(&other).expect("room");
        if !kept {
            stage.put(&print).expect("room");
        }
        let written = stage.swap().expect("room");
        assert_eq!(written.removed, 0, "what was kept is still the tool's own");
        assert_eq!(tree(&out)[&path], b"a print");
        kept
    };
    assert!(kept(7) && kept(7), "it stands, and is known after a compile that kept it");
    assert!(!kept(8), "it was made from something else");
    std::fs::write(out.join(&path), b"a ruin").expect("room");
    assert!(!kept(7), "it has other bytes");
    std::fs::remove_file(out.join(&path)).expect("it is there");
    assert!(!kept(7), "it has gone");
    assert!(kept(7));
    // A folder that an earlier version has written says nothing of what its files were made from.
    std::fs::write(out.join(".wardsheet-files"), format!("{path}\npublic/index.html\n"))
        .expect("room");
    assert!(!kept(7) && kept(7));
}
