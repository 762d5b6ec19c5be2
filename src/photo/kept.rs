//! Prints that were made before, so that a photo which has not changed is not decoded again.

use std::collections::BTreeMap;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::sync::{Arc, Mutex, PoisonError};

use super::{Fault, Print, prints};

/// The prints of one picture, or why there are none.
type Made = Arc<Result<Vec<Print>, Fault>>;

/// Prints by the bytes that they were made from. It may be shared between threads and between compiles.
///
/// What was not asked for since [`Kept::forget_unused`] was last called is dropped by the next call.
#[derive(Debug, Default)]
pub struct Kept(Mutex<BTreeMap<(usize, u64), (Made, bool)>>);

impl Kept {
    /// The prints of a picture: those made before from the same bytes, else new ones.
    pub fn prints(&self, bytes: &[u8]) -> Made {
        let mut hasher = DefaultHasher::new();
        bytes.hash(&mut hasher);
        let key = (bytes.len(), hasher.finish());
        // A thread that has come to grief leaves whole entries behind.
        if let Some((made, used)) =
            self.0.lock().unwrap_or_else(PoisonError::into_inner).get_mut(&key)
        {
            *used = true;
            return Arc::clone(made);
        }
        // The lock is open while a picture is decoded, so that others can be at the same time.
        let made = Arc::new(prints(bytes));
        let mut all = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        all.insert(key, (Arc::clone(&made), true));
        made
    }

    /// Drops what was not asked for since the last call.
    pub fn forget_unused(&self) {
        let mut all = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        all.retain(|_, (_, used)| std::mem::take(used));
    }
}
