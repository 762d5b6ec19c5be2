//! The site as it would be, served to this machine alone and following every edit.
//!
//! [`Watched`] holds the last good site and what is wrong with the files as they are now. The watch tells when files
//! have changed; the loop in [`follow()`] then reads them again, looks first only at what has changed, and at everything a
//! moment later on another thread. The serving side sets the one page that is asked for. Nothing is written to the disk, and
//! nothing is served from it: an address is looked up among the pages of the site, never among files.

mod address;
mod answer;
mod around;
mod bell;
mod follow;
mod narrow;
mod serve;
mod watch;
mod watched;

pub use follow::{Following, PreviewError, Tell, follow};
pub use serve::Served;
pub use watched::{Change, Watched};
