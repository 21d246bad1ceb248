//! Findings about what is still being typed are held back until the line is left, the file is
//! saved, or a pause in typing.

use std::time::Duration;

use downlead_eval::Snapshot;
use downlead_ide::{Finding, premature};
use ls_types::{Diagnostic, NumberOrString, Uri};
use rustc_hash::FxHashSet;

use crate::docs::{Document, Key};
use crate::state::State;
use crate::typing::digest;

impl State {
    /// The findings of an open document that are sent now.
    pub(crate) fn ripe(
        &self,
        s: &Snapshot,
        doc: &Document,
        file: usize,
        mut found: Vec<Finding>,
    ) -> Vec<Finding> {
        let Some(typing) = doc.typing.filter(|_| self.can_send_later()) else {
            return found;
        };
        let seen = |f: &Finding| doc.told.contains(&digest(f.code, &f.message));
        let mut held = premature(s, file, &found, typing.at, &seen).into_iter();
        found.retain(|_| held.next() == Some(false));
        found
    }

    /// Whether findings can be sent without a change of the text: a client that pulls must be asked
    /// to pull again.
    fn can_send_later(&self) -> bool {
        !self.peer.pull || self.peer.refresh_diagnostics
    }

    /// A text was typed in: what is held back now is sent after a pause.
    pub(crate) fn release_later(&mut self, uri: &Uri) {
        let pause = self.pause(uri);
        let Some(doc) = self.docs.get_mut(uri) else {
            return;
        };
        if pause.is_zero() {
            doc.typing = None;
        }
        if let Some(typing) = doc.typing {
            let until = typing.until(pause);
            self.due.release = Some(self.due.release.map_or(until, |r| r.max(until)));
        }
    }

    /// How long findings about what is being typed wait.
    pub(crate) fn pause(&self, uri: &Uri) -> Duration {
        self.settings_of(uri).pause
    }

    /// Keeps what the client shows of a document.
    pub(crate) fn told(&mut self, uri: &Uri, shown: &[Diagnostic]) {
        if let Some(doc) = self.docs.get_mut(uri) {
            doc.told = digests(shown);
        }
    }

    /// Whether the diagnostics of a space are those of its texts.
    pub(crate) fn is_published(&self, key: &Key) -> bool {
        let space = self.spaces.get(key);
        space.is_some_and(|s| s.published == s.generation && s.snapshot().is_some())
    }
}

fn digests(shown: &[Diagnostic]) -> FxHashSet<u64> {
    let code = |d: &Diagnostic| match &d.code {
        Some(NumberOrString::String(code)) => digest(code, &d.message),
        _ => digest("", &d.message),
    };
    shown.iter().map(code).collect()
}
