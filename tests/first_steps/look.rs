//! Templates and theme copied out to be changed.

use std::fs;
use std::path::Path;

use super::{DAY, empty, files_below, shown_in_readme, started, wardsheet};

/// Every file below a folder: its path inside and its bytes.
fn bytes_below(folder: &Path) -> Vec<(String, Vec<u8>)> {
    let mut files: Vec<_> = files_below(folder)
        .into_iter()
        .map(|path| {
            (path.replace(&*folder.to_string_lossy(), ""), fs::read(&path).expect("a file"))
        })
        .collect();
    files.sort();
    files
}

#[test]
fn templates_copied_out_make_the_same_pages_until_one_is_changed() {
    let plain = started("first-steps-plain-look");
    let folder = empty("first-steps-own-look");
    let run = wardsheet(&folder, &["start", ".", "--with-templates"]);
    assert_eq!(run.status, 0, "{}", run.err);
    for file in ["templates/care.html", "templates/feed.xml", "theme/ink.css", "theme/words.woff2"]
    {
        assert!(folder.join(file).is_file(), "{file} is not there");
        assert!(run.out.contains(file), "{file} is not named");
    }
    for site in [&plain, &folder] {
        let run = wardsheet(site, &["compile", "--as-of", DAY]);
        assert_eq!(run.status, 0, "{}", run.err);
    }
    assert!(
        bytes_below(&plain.join("out")) == bytes_below(&folder.join("out")),
        "templates that are as they were make other pages"
    );

    let template = folder.join("templates/page.html");
    let text = fs::read_to_string(&template).expect("the template");
    let heading = "<h1>{{ title }}</h1>\n";
    let with = |line: &str| text.replace(heading, &format!("{heading}{line}\n"));
    fs::write(&template, with("<p class=\"summary\">{{ frame.site }}</p>")).expect("a template");
    let run = wardsheet(&folder, &["compile", "--as-of", DAY]);
    assert_eq!(run.status, 0, "{}", run.err);
    let page = fs::read_to_string(folder.join("out/public/pages/about/index.html"));
    assert!(page.is_ok_and(|page| page.contains("<p class=summary>")), "the new line is there");

    fs::write(&template, with("<p class=\"summary\">{{ frame.sight }}</p>")).expect("a template");
    let run = wardsheet(&folder, &["compile", "--as-of", DAY]);
    assert_eq!(run.status, 1, "{}", run.err);
    assert!(run.err.contains("error[template-broken]"), "{}", run.err);
    assert!(run.err.contains("--> templates/page.html:8:"), "the place is named: {}", run.err);
    assert!(run.err.contains(&shown_in_readme()[1]), "as the README shows it: {}", run.err);
}
