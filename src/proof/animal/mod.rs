//! One animal: its dates, its status and its company.

pub(super) mod arrived_in_future;
pub(super) mod chip_twice;
pub(super) mod companion_is_prey;
pub(super) mod company_against_nature;
pub(super) mod company_of_two_species;
pub(super) mod company_one_sided;
pub(super) mod company_with_itself;
pub(super) mod ended_animal_published;
pub(super) mod ended_animal_with_company;
pub(super) mod ended_animal_with_tasks;
pub(super) mod hatched_after_arrival;
pub(super) mod hatched_in_future;
pub(super) mod home_sought_unpublished;
pub(super) mod older_than_its_kind;
pub(super) mod origin_missing;
pub(super) mod published_with_private_words;
pub(super) mod quarantine_cut_short;
pub(super) mod quarantine_ended;
pub(super) mod quarantine_not_restarted;
pub(super) mod quarantine_served_first;
pub(super) mod quarantine_shared;
pub(super) mod quarantine_tools_shared;
pub(super) mod quarantine_unmarked;
pub(super) mod quarantine_without_dates;
pub(super) mod sex_unknown;
pub(super) mod story_missing;

use crate::model::Animal;
use crate::model::word::Status;
use crate::proof::Evidence;

/// The animals that are kept and that share this one's enclosure, as its file names them.
fn companions<'a>(evidence: &Evidence<'a>, animal: &'a Animal) -> Vec<Companion<'a>> {
    let named = animal.company.iter();
    named
        .filter_map(|named| {
            let other = evidence.model.animals.get(&named.name)?;
            let names_back = other.company.iter().any(|named| {
                evidence.model.animals.get(&named.name).is_some_and(|own| own.file == animal.file)
            });
            let is_second = names_back && other.file < animal.file;
            Some(Companion { animal: other, named, is_second })
        })
        .collect()
}

/// An animal that another's file names under `with`.
struct Companion<'a> {
    animal: &'a Animal,
    named: &'a crate::model::Named,
    /// Whether the pair has been met from the other side: what concerns both is told once.
    is_second: bool,
}

/// How an animal's status stands in a sentence.
fn standing(status: Status) -> &'static str {
    match status {
        Status::Resident => "lives here",
        Status::Quarantine => "is in quarantine",
        Status::SeekingHome => "is seeking a home",
        Status::Rehomed => "has gone to a new keeper",
        Status::Died => "has died",
    }
}
