//! Sites in several languages.
