//! Where a document is typed in.

use std::hash::{Hash, Hasher};
use std::time::{Duration, Instant};

use downlead_base::Span;
use rustc_hash::FxHasher;

/// More line ends than this are not typed: they are pasted or come from a command.
const TYPED_LINES: usize = 2;

/// The place of the last change of a text, and its time.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Typing {
    /// Byte offset of the end of what was inserted.
    pub(crate) at: u32,
    since: Instant,
}

impl Typing {
    /// A replacement; none if it is more than is typed at a time.
    pub(crate) fn of(replaced: Span, by: &str) -> Option<Typing> {
        let lines = by.bytes().filter(|b| *b == b'\n').count();
        (lines <= TYPED_LINES).then(|| Typing {
            at: replaced.start + by.len() as u32,
            since: Instant::now(),
        })
    }

    /// The end of a pause of this length after the change.
    pub(crate) fn until(&self, pause: Duration) -> Instant {
        self.since + pause
    }
}

/// Digest of a finding that does not depend on its place: code and first line of the message.
pub(crate) fn digest(code: &str, message: &str) -> u64 {
    let mut hasher = FxHasher::default();
    (code, message.lines().next()).hash(&mut hasher);
    hasher.finish()
}
