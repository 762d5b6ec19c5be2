//! What is found again and again in one file is told so often and then only counted.

use std::collections::BTreeMap;

use crate::finding::{FileId, Finding};

/// So many findings of one code are told of one file; what follows them is counted only. A file where every line is wrong is
/// not put right line by line, and what is told stays in proportion to the files.
const TOLD_OF_A_FILE: usize = 100;

/// Leaves out what is found too often in one file to be of use, and says how often at the last place that is told.
pub(super) fn shortened(found: Vec<Finding>) -> Vec<Finding> {
    let mut counts: BTreeMap<(FileId, &str), usize> = BTreeMap::new();
    let mut kept: Vec<Finding> = Vec::new();
    let mut last: BTreeMap<(FileId, &str), usize> = BTreeMap::new();
    for finding in found {
        if let Some(place) = finding.place {
            let key = (place.file, finding.code.name);
            let count = counts.entry(key).or_default();
            *count += 1;
            if *count > TOLD_OF_A_FILE {
                continue;
            }
            last.insert(key, kept.len());
        }
        kept.push(finding);
    }
    for (key, at) in last {
        let more = counts.get(&key).map_or(0, |count| count.saturating_sub(TOLD_OF_A_FILE));
        if let (true, Some(finding)) = (more > 0, kept.get_mut(at)) {
            finding.message.push_str(&format!("; and {more} more like this in the file"));
        }
    }
    kept
}
