//! When diagnostics are published and refreshes requested.

use std::time::{Duration, Instant};

/// Pause in typing before the client is asked to refresh.
const SETTLED: Duration = Duration::from_millis(300);
/// Diagnostics wait no longer than this, however busy the client is.
const STARVED: Duration = Duration::from_millis(250);
/// Evaluation that takes longer than this waits for a pause in typing.
const QUICK: Duration = Duration::from_millis(15);

/// The times at which work in idle time is due.
#[derive(Default)]
pub(crate) struct Due {
    pub(crate) publish: Option<Instant>,
    pub(crate) since: Option<Instant>,
    pub(crate) refresh: Option<Instant>,
    /// When findings that wait for a pause in typing are sent.
    pub(crate) release: Option<Instant>,
}

impl Due {
    pub(crate) fn publish_now(&mut self) {
        self.publish_after(Duration::ZERO);
    }

    /// Publishes after a pause as long as the evaluation is slow.
    pub(crate) fn publish_after(&mut self, cost: Duration) {
        let now = Instant::now();
        let pause = if cost < QUICK {
            Duration::ZERO
        } else {
            (2 * cost).min(Duration::from_millis(200))
        };
        self.publish = Some(now + pause);
        self.since.get_or_insert(now);
    }

    /// Asks for a refresh when the texts have settled.
    pub(crate) fn refresh_soon(&mut self) {
        self.refresh = Some(Instant::now() + SETTLED);
    }

    pub(crate) fn refresh_now(&mut self) {
        self.refresh = Some(Instant::now());
    }

    /// A change of a text: a refresh that waits goes on waiting.
    pub(crate) fn unsettle(&mut self) {
        if self.refresh.is_some() {
            self.refresh_soon();
        }
    }

    pub(crate) fn next(&self) -> Option<Instant> {
        [self.publish, self.refresh, self.release]
            .into_iter()
            .flatten()
            .min()
    }

    pub(crate) fn starved(&self) -> bool {
        self.since.is_some_and(|s| s.elapsed() > STARVED)
    }
}
