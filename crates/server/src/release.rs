//! Sends the findings that were held back while something was being typed.

use std::time::Instant;

use ls_types::Uri;
use serde_json::Value;

use crate::docs::Home;
use crate::state::State;

impl State {
    /// Sends what was held back of all documents in which nothing was typed for a while, when that is
    /// due.
    pub(crate) fn release(&mut self) {
        let now = Instant::now();
        if self.due.release.is_none_or(|at| at > now) {
            return;
        }
        self.due.release = None;
        let waiting: Vec<(Uri, Instant)> = self
            .docs
            .iter()
            .filter_map(|d| {
                let typing = d.typing?;
                Some((d.uri.clone(), typing.until(self.pause(&d.uri))))
            })
            .collect();
        for (uri, until) in waiting {
            if until <= now {
                self.release_of(&uri);
            } else {
                self.due.release = Some(self.due.release.map_or(until, |r| r.min(until)));
            }
        }
    }

    /// Sends what was held back of a document.
    pub(crate) fn release_of(&mut self, uri: &Uri) {
        let Some(doc) = self.docs.get_mut(uri) else {
            return;
        };
        if doc.typing.take().is_none() {
            return;
        }
        let Home::Space { key, .. } = doc.home.clone() else {
            return;
        };
        if self.peer.pull {
            if self.peer.refresh_diagnostics {
                self.out
                    .refresh("workspace/diagnostic/refresh", Value::Null);
            }
        } else if self.is_published(&key) {
            self.send_findings(&key, true);
        }
        // else the publication that is due sends them
    }
}
