//! `wardsheet sitter`: write the sheet for somebody who looks after the animals, and a calendar beside it.

use clap::Args;
use jiff::civil::Date;

use crate::compile;
use crate::figures::calendar::days_between;
use crate::figures::plan::LONGEST_DAYS;
use crate::finding::did_you_mean;

use super::open::open;
use super::{Ended, Failure, Outside, Whereabouts, read_date, read_language};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// The animals, by the names of their files [default: every animal that is kept]
    animals: Vec<String>,
    /// The first day away
    #[arg(long, value_name = "DATE", value_parser = read_date)]
    from: Date,
    /// The last day away
    #[arg(long, value_name = "DATE", value_parser = read_date)]
    until: Date,
    /// The language of the sheet, such as de [default: that of the site]
    #[arg(long, value_name = "TAG", value_parser = read_language)]
    language: Option<String>,
    #[command(flatten)]
    at: Whereabouts,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let days = days_between(arguments.from, arguments.until) + 1;
    if days < 1 {
        return Err(Failure::Said(format!(
            "--until {} is before --from {}",
            arguments.until, arguments.from
        )));
    }
    if days > LONGEST_DAYS {
        return Err(Failure::Said(format!(
            "{days} days are too many for one sheet: at most {LONGEST_DAYS}"
        )));
    }
    let opened = open(&arguments.at, outside)?;
    let kept = || {
        let animals = opened.checked.model.animals.iter();
        animals.filter(|(_, animal)| animal.is_kept()).map(|(key, _)| key.as_str())
    };
    for animal in &arguments.animals {
        if !kept().any(|key| key == animal) {
            let near = did_you_mean(animal, kept())
                .unwrap_or_else(|| format!("there are: {}", kept().collect::<Vec<_>>().join(", ")));
            return Err(Failure::Said(format!("no animal `{animal}` is kept here; {near}")));
        }
    }
    let language = arguments.language.as_deref();
    let stay = (arguments.from, arguments.until);
    opened.write_sheet(outside, &arguments.animals, |sources, checked| {
        compile::sitter(sources, checked, stay, &arguments.animals, language)
    })
}
