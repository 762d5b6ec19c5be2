//! When each figure of a species was last written, told from git.

use serde_json::{Value, json};

use crate::finding::place::line_and_column;
use crate::source::Repository;

use super::open::Opened;
use super::{Ended, Failure, Outcome, Outside};

/// Prints, for every figure that the species states, its value, and the day, commit and author of its line.
pub(super) fn run(
    opened: &Opened,
    names: &[String],
    as_json: bool,
    outside: &mut Outside<'_>,
) -> Ended {
    if names.is_empty() {
        let say = "name a species: wardsheet figures --history corn-snake";
        return Err(Failure::Said(say.to_owned()));
    }
    let units = opened.checked.model.site.units;
    let mut document = serde_json::Map::new();
    for name in names {
        let Some(species) = opened.checked.model.species.get(name) else {
            return Err(Failure::Said(format!(
                "`{name}` is no species; only a species has a history of figures"
            )));
        };
        let shown = opened.sources.shown(species.file);
        if shown.path.starts_with("built-in ") {
            let say = format!("`{name}` comes with the program; its figures have no history here");
            return Err(Failure::Said(say));
        }
        let place = opened.folder.join(shown.path);
        let (folder, file) = (place.parent().unwrap_or(&opened.folder), place.file_name());
        let file = file.unwrap_or_default().to_string_lossy();
        let lines = Repository::around(folder)
            .and_then(|git| git.blame(&file))
            .map_err(|error| Failure::Said(error.to_string()))?;
        let mut rows = Vec::new();
        for figure in species.stated() {
            let (line, _) = line_and_column(shown.text, figure.place.start);
            let value = figure.amount.print(units, figure.rounding).to_string();
            let written = line.checked_sub(1).and_then(|line| lines.get(line));
            rows.push((figure.name, value, written));
        }
        if as_json {
            let rows: Vec<Value> = rows
                .iter()
                .map(|(name, value, written)| {
                    let committed = written.filter(|written| written.on.is_some());
                    json!({
                        "figure": name,
                        "value": value,
                        "written": committed.and_then(|w| w.on).map(|day| day.to_string()),
                        "commit": committed.map(|w| w.commit.clone()),
                        "author": committed.map(|w| w.author.clone()),
                    })
                })
                .collect();
            document.insert(name.clone(), rows.into());
            continue;
        }
        writeln!(outside.out, "{name}")?;
        let width = rows.iter().map(|(name, ..)| name.chars().count()).max().unwrap_or(0);
        for (name, value, written) in rows {
            let when = match written.map(|written| (written.on, written)) {
                Some((Some(day), written)) => {
                    format!("{day}  {}  {}", written.commit, written.author)
                }
                _ => "not committed yet".to_owned(),
            };
            writeln!(outside.out, "  {name:width$}  {when}  {value}")?;
        }
        writeln!(outside.out)?;
    }
    if as_json {
        let text = serde_json::to_string_pretty(&document).unwrap_or_default();
        writeln!(outside.out, "{text}")?;
    }
    Ok(Outcome::Done)
}
