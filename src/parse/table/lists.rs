//! Lists taken from a table, none of them longer than anything it could stand for.

use toml::Spanned;
use toml::de::DeValue;

use crate::finding::Finding;
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
        let items =
            self.items(most, key, "a list of texts in quotes", |item| match item.get_ref() {
                DeValue::String(text) => {
                    Some(Named { name: text.trim().to_owned(), place: self.at(item.span()) })
                }
                _ => None,
            });
        items.unwrap_or_else(|| self.named(key).into_iter().collect())
    }

    /// Takes a list of tables; a single table counts as a list of one.
    pub(crate) fn tables(&self, key: &str) -> Vec<Table<'t, 'i>> {
        self.tables_at_most(MOST_ITEMS, key)
    }

    /// Takes a list of so many tables.
    pub(crate) fn tables_at_most(&self, most: usize, key: &str) -> Vec<Table<'t, 'i>> {
        let items = self.items(most, key, "a list of tables", |item| match item.get_ref() {
            DeValue::Table(fields) => Some(self.inner(fields, item, key)),
            _ => None,
        });
        items.unwrap_or_else(|| self.table(key).into_iter().collect())
    }

    /// Takes the items of a list, up to the last that is read; those of the wrong kind and a list that is longer are reported.
    /// None where the field holds something else than a list.
    fn items<T>(
        &self,
        most: usize,
        key: &str,
        wanted: &str,
        take: impl Fn(&'t Spanned<DeValue<'i>>) -> Option<T>,
    ) -> Option<Vec<T>> {
        let value = self.value(key)?;
        let DeValue::Array(items) = value.get_ref() else { return None };
        let mut taken = Vec::new();
        for item in items {
            match take(item) {
                Some(one) => taken.push(one),
                None => self.wrong_kind(key, item, wanted),
            }
        }
        if taken.len() > most {
            let message =
                format!("`{}` lists {}; {most} are read", self.full_name(key), taken.len());
            let finding = Finding::new(&codes::LIST_TOO_LONG, self.at(value.span()), message);
            self.report(finding.help("leave out the rest"));
            taken.truncate(most);
        }
        Some(taken)
    }
}
