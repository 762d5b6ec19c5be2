//! `wardsheet round`: write the week's work for the whole collection.

use clap::Args;
use jiff::civil::Date;

use crate::compile;

use super::open::open;
use super::{Ended, Outside, Whereabouts, read_date, read_language};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// A day of the week that it is for [default: the week of the day that the sheets are for]
    #[arg(long, value_name = "DATE", value_parser = read_date)]
    week: Option<Date>,
    /// The language of the sheet, such as de [default: that of the site]
    #[arg(long, value_name = "TAG", value_parser = read_language)]
    language: Option<String>,
    #[command(flatten)]
    at: Whereabouts,
}

pub(super) fn run(arguments: &Arguments, outside: &mut Outside<'_>) -> Ended {
    let opened = open(&arguments.at, outside)?;
    let day = arguments.week.unwrap_or(opened.checked.figures.as_of);
    let language = arguments.language.as_deref();
    // The round shows nobody's photo.
    let nobody = [String::new()];
    opened.write_sheet(outside, &nobody, |sources, checked| {
        compile::round(sources, checked, day, language)
    })
}
