//! Differences as one JSON document.

use jiff::civil::Date;
use serde_json::{Value, json};

use super::tell::Side;
use super::{Changes, How, Whose};

/// Builds the document. Values are texts as people read them; `null` stands for a figure that is not there.
pub fn json(changes: &Changes, (old, new): (&Side, &Side), as_of: Date) -> Value {
    let side = |side: &Side| json!({ "name": side.name, "errors": side.errors });
    let figures: Vec<Value> = changes
        .figures
        .iter()
        .map(|change| {
            let [before, after] = match &change.sources {
                Some([before, after]) => [json!(before), json!(after)],
                None => [Value::Null, Value::Null],
            };
            json!({
                "weight": change.weight.word(),
                "loosened": change.loosened,
                "of": if change.whose == Whose::Species { "species" } else { "animal" },
                "name": change.key,
                "figure": change.figure,
                "label": change.label,
                "before": change.before,
                "after": change.after,
                "by": change.by,
                "source_before": before,
                "source_after": after,
                "animals": change.animals,
            })
        })
        .collect();
    let sources: Vec<Value> = changes
        .sources
        .iter()
        .map(|one| {
            json!({ "species": one.key, "figure": one.figure, "before": one.before, "after": one.after })
        })
        .collect();
    let words: Vec<Value> = changes
        .words
        .iter()
        .map(|one| json!({ "of": one.whose, "chapter": one.chapter, "how": one.how.word() }))
        .collect();
    let whole = |list: &[(String, String, How)]| -> Vec<Value> {
        list.iter().map(|(key, _, how)| json!({ "name": key, "how": how.word() })).collect()
    };
    json!({
        "wardsheet": env!("CARGO_PKG_VERSION"),
        "as_of": as_of.to_string(),
        "old": side(old),
        "new": side(new),
        "figures": figures,
        "sources": sources,
        "words": words,
        "species": whole(&changes.species),
        "animals": whole(&changes.animals),
    })
}
