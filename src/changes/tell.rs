//! Differences in words: as plain text for a terminal, and as Markdown for the comment on a proposed change.

use super::{Change, Changes, How, Weight, Whose};

/// One side of a comparison as it is named to people.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Side {
    /// The name that was asked for, with its commit where it is a revision.
    pub name: String,
    /// How many errors its proof has.
    pub errors: usize,
}

impl Side {
    fn warning(&self) -> Option<String> {
        let errors = match self.errors {
            0 => return None,
            1 => "1 error".to_owned(),
            many => format!("{many} errors"),
        };
        Some(format!("{} does not pass proof ({errors}); it is compared all the same.", self.name))
    }
}

/// What both forms begin with: how much differs between what and what.
fn summary(changes: &Changes, (old, new): (&Side, &Side)) -> String {
    let count = match changes.figures.len() {
        0 => "No care figure differs".to_owned(),
        1 => "1 care figure differs".to_owned(),
        many => format!("{many} care figures differ"),
    };
    format!("{count} between {} and {}", old.name, new.name)
}

fn value(value: Option<&String>) -> &str {
    value.map_or("not there", String::as_str)
}

fn sources(names: &[String]) -> String {
    if names.is_empty() { "common practice, no source".to_owned() } else { names.join(", ") }
}

/// The sources on either side in words; one where they are the same.
fn rests_on(change: &Change) -> Option<String> {
    let [before, after] = change.sources.as_ref()?;
    Some(match (&change.before, &change.after) {
        (None, _) => sources(after),
        (_, None) => sources(before),
        _ if before == after => sources(after),
        _ => format!("{}; before: {}", sources(after), sources(before)),
    })
}

fn groups(changes: &Changes) -> Vec<(Weight, Vec<&Change>)> {
    let all = [Weight::Limit, Weight::Climate, Weight::Food, Weight::Other];
    let of = |weight| changes.figures.iter().filter(|change| change.weight == weight).collect();
    all.into_iter()
        .map(|weight| (weight, of(weight)))
        .filter(|(_, all): &(_, Vec<_>)| !all.is_empty())
        .collect()
}

/// What is new or gone as a whole.
fn whole(changes: &Changes) -> Vec<String> {
    let lines = |kind: &str, list: &[(String, String, How)]| {
        list.iter()
            .map(|(key, name, how)| format!("{kind} {key} ({name}) {}", how.word()))
            .collect::<Vec<_>>()
    };
    [lines("species", &changes.species), lines("animal", &changes.animals)].concat()
}

/// Differences as plain text.
pub fn text(changes: &Changes, sides: (&Side, &Side)) -> String {
    let mut text = format!("{}\n", summary(changes, sides));
    for warning in [sides.0, sides.1].into_iter().filter_map(Side::warning) {
        text.push_str(&format!("{warning}\n"));
    }
    for line in whole(changes) {
        text.push_str(&format!("{line}\n"));
    }
    for (weight, group) in groups(changes) {
        text.push_str(&format!("\n{}\n", weight.heading()));
        for change in group {
            let raised = if change.loosened { "  ! allows more than before" } else { "" };
            text.push_str(&format!(
                "  {}  {} ({}){raised}\n    {} -> {}",
                change.key,
                change.figure,
                change.label,
                value(change.before.as_ref()),
                value(change.after.as_ref())
            ));
            let by = change.by.as_ref().map(|by| format!("  [{by}]")).unwrap_or_default();
            text.push_str(&format!("{by}\n"));
            if let Some(sources) = rests_on(change) {
                text.push_str(&format!("    source: {sources}\n"));
            }
            if change.whose == Whose::Species && !change.animals.is_empty() {
                text.push_str(&format!("    moves the sheets of: {}\n", change.animals.join(", ")));
            }
        }
    }
    if !changes.sources.is_empty() {
        text.push_str("\nSources alone\n");
        for one in &changes.sources {
            text.push_str(&format!(
                "  {}  {}\n    {} -> {}\n",
                one.key,
                one.figure,
                sources(&one.before),
                sources(&one.after)
            ));
        }
    }
    if !changes.words.is_empty() {
        text.push_str("\nWords\n");
        for one in &changes.words {
            text.push_str(&format!("  {}: {} {}\n", one.whose, one.chapter, one.how.word()));
        }
    }
    text
}

/// A text inside a cell of a table: what has a meaning in Markdown is written as it stands.
fn cell(text: &str) -> String {
    let mut cell = String::new();
    for letter in text.chars() {
        match letter {
            '|' | '\\' | '`' | '*' | '_' | '[' | ']' | '<' | '>' | '#' | '@' => {
                cell.push('\\');
                cell.push(letter);
            }
            '\n' | '\r' => cell.push(' '),
            _ => cell.push(letter),
        }
    }
    cell
}

/// Differences as Markdown.
pub fn markdown(changes: &Changes, sides: (&Side, &Side)) -> String {
    let mut text = format!("### Care figures\n\n{}\n", cell(&summary(changes, sides)));
    for warning in [sides.0, sides.1].into_iter().filter_map(Side::warning) {
        text.push_str(&format!("\n**{}**\n", cell(&warning)));
    }
    let whole = whole(changes);
    if !whole.is_empty() {
        text.push('\n');
        whole.iter().for_each(|line| text.push_str(&format!("- {}\n", cell(line))));
    }
    for (weight, group) in groups(changes) {
        text.push_str(&format!(
            "\n#### {}\n\n| of | figure | before | after | by | source | sheets moved |\n| --- | --- | --- | --- | --- | --- | --- |\n",
            weight.heading()
        ));
        for change in group {
            let mark = if change.loosened { " **allows more**" } else { "" };
            let animals = if change.whose == Whose::Species {
                change.animals.join(", ")
            } else {
                change.key.clone()
            };
            text.push_str(&format!(
                "| {} | {} ({}){mark} | {} | {} | {} | {} | {} |\n",
                cell(&change.key),
                cell(&change.figure),
                cell(&change.label),
                cell(value(change.before.as_ref())),
                cell(value(change.after.as_ref())),
                cell(change.by.as_deref().unwrap_or("")),
                cell(&rests_on(change).unwrap_or_default()),
                cell(&animals)
            ));
        }
    }
    if !changes.sources.is_empty() {
        text.push_str(
            "\n#### Sources alone\n\n| of | figure | before | after |\n| --- | --- | --- | --- |\n",
        );
        for one in &changes.sources {
            text.push_str(&format!(
                "| {} | {} | {} | {} |\n",
                cell(&one.key),
                cell(&one.figure),
                cell(&sources(&one.before)),
                cell(&sources(&one.after))
            ));
        }
    }
    if !changes.words.is_empty() {
        text.push_str("\n#### Words\n\n");
        for one in &changes.words {
            let line = format!("{}: {} {}", one.whose, one.chapter, one.how.word());
            text.push_str(&format!("- {}\n", cell(&line)));
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::cell;

    #[test]
    fn a_name_cannot_break_out_of_its_cell() {
        assert_eq!(cell("a|b\n@club <b>"), "a\\|b \\@club \\<b\\>");
    }
}
