//! A species that two folders define, and not alike.

use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::proof::{Evidence, Rule};
use crate::source::{Role, SourceFile};

static CODE: Code = Code {
    name: "library-overridden",
    severity: Severity::Note,
    safety: false,
    subject: Subject::Site,
    summary: "two folders define one species and differ",
    page: include_str!("library_overridden.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let sources = evidence.sources;
    for role in [Role::Species, Role::Standard, Role::Law] {
        for (name, nearest) in sources.nearest(role) {
            let farther =
                sources.of(role).filter(|file| file.name == name && file.layer > nearest.layer);
            for other in farther {
                let (own, theirs) = (entries(nearest), entries(other));
                let Some((what, span)) = differences(&own, &theirs) else { continue };
                let message = format!(
                    "`{name}` is defined in {} and in {}, and they differ in {what}; {} is used",
                    nearest.path, other.path, nearest.path
                );
                let help = "nothing, if this one is meant to take its place; remove it to follow the other again";
                found.push(
                    Finding::new(&CODE, Place::new(nearest.id, span), message)
                        .help(help)
                        .also_at(Place::start_of(other.id), "not used"),
                );
            }
        }
    }
}

/// How many of the fields that differ are named.
const NAMED: usize = 6;

/// What a file says of a field, and where.
type Entries = BTreeMap<String, (String, Range<usize>)>;

/// The fields of a file by their full names, `temperature.cool`; the second of two tables of one name is `feeding.2`.
///
/// A file is read by its lines, as people write them: of the file that is not used there is no model. A value that goes on over
/// several lines counts with its first; comments and blank lines do not count.
fn entries(file: &SourceFile) -> Entries {
    let mut entries = Entries::new();
    let mut tables: BTreeMap<String, usize> = BTreeMap::new();
    let (mut table, mut last) = (String::new(), String::new());
    let mut start = 0;
    for line in file.text.split_inclusive('\n') {
        let span = start..start + line.trim_end().len();
        start += line.len();
        let said = line.trim();
        if said.is_empty() || said.starts_with('#') {
            continue;
        }
        if let Some(name) = said.strip_prefix('[').filter(|_| !said.contains('=')) {
            let name = name.trim_start_matches('[').split(']').next().unwrap_or("").trim();
            let count = tables.entry(name.to_owned()).or_insert(0);
            *count += 1;
            table = if *count == 1 { format!("{name}.") } else { format!("{name}.{count}.") };
            continue;
        }
        match said.split_once('=') {
            Some((key, value))
                if key.trim().chars().all(|c| c.is_alphanumeric() || "_-.\"".contains(c)) =>
            {
                last = format!("{table}{}", key.trim());
                entries.insert(last.clone(), (value.trim().to_owned(), span));
            }
            _ => {
                if let Some((value, _)) = entries.get_mut(&last) {
                    value.push_str(said);
                }
            }
        }
    }
    entries
}

/// The names of the fields in which two files differ, and the place of the first that the nearer one states.
fn differences(own: &Entries, theirs: &Entries) -> Option<(String, Range<usize>)> {
    let same = |name: &String| {
        own.get(name).map(|(value, _)| value) == theirs.get(name).map(|(value, _)| value)
    };
    let names: BTreeSet<&String> = own.keys().chain(theirs.keys()).collect();
    let differing: Vec<&String> = names.into_iter().filter(|name| !same(name)).collect();
    if differing.is_empty() {
        return None;
    }
    let mut what: Vec<String> =
        differing.iter().take(NAMED).map(|name| format!("`{name}`")).collect();
    if differing.len() > NAMED {
        what.push(format!("{} more", differing.len() - NAMED));
    }
    let last = what.pop().unwrap_or_default();
    let what = if what.is_empty() { last } else { format!("{} and {last}", what.join(", ")) };
    let spans = differing.iter().filter_map(|name| Some(own.get(*name)?.1.clone()));
    Some((what, spans.min_by_key(|span| span.start).unwrap_or(0..0)))
}
