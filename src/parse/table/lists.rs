//! Lists taken from a table, none of them longer than anything it could stand for.

use toml::de::DeValue;

use crate::finding::{Finding, Place};
use crate::model::Named;

use super::Table;
use crate::parse::codes;

/// How many items of a list are read: rules compare one list with another, item by item.
const MOST_ITEMS: usize = 1000;

impl<'t, 'i> Table<'t, 'i> {
    /// Takes a text or a list of texts.
    pub(crate) fn list(&self, key: &str) -> Vec<Named> {
        self.list_at_most(MOST_ITEMS, key)
    }

    /// Takes a text or a list of so many texts.
    pub(crate) fn list_at_most(&self, most: usize, key: &str) -> Vec<Named> {
        let Some(value) = self.value(key) else { return Vec::new() };
        let DeValue::Array(items) = value.get_ref() else {
            return self.named(key).into_iter().collect();
        };
        let mut names = Vec::new();
        for item in items {
            match item.get_ref() {
                DeValue::String(text) => {
                    names.push(Named { name: text.trim().to_owned(), place: self.at(item.span()) })
                }
                _ => self.wrong_kind(key, item, "a list of texts in quotes"),
            }
        }
        self.cut(key, most, names, self.at(value.span()))
    }

    /// Takes a list of tables; a single table counts as a list of one.
    pub(crate) fn tables(&self, key: &str) -> Vec<Table<'t, 'i>> {
        self.tables_at_most(MOST_ITEMS, key)
    }

    /// Takes a list of so many tables.
    pub(crate) fn tables_at_most(&self, most: usize, key: &str) -> Vec<Table<'t, 'i>> {
        let Some(value) = self.value(key) else { return Vec::new() };
        let DeValue::Array(items) = value.get_ref() else {
            return self.table(key).into_iter().collect();
        };
        let mut tables = Vec::new();
        for item in items {
            match item.get_ref() {
                DeValue::Table(fields) => tables.push(self.inner(fields, item, key)),
                _ => self.wrong_kind(key, item, "a list of tables"),
            }
        }
        self.cut(key, most, tables, self.at(value.span()))
    }

    /// Cuts off what stands behind the last item of a list that is read, and reports it.
    fn cut<T>(&self, key: &str, most: usize, mut list: Vec<T>, place: Place) -> Vec<T> {
        if list.len() > most {
            let message =
                format!("`{}` lists {}; {most} are read", self.full_name(key), list.len());
            self.report(
                Finding::new(&codes::LIST_TOO_LONG, place, message).help("leave out the rest"),
            );
            list.truncate(most);
        }
        list
    }
}
