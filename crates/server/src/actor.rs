//! The loop of the thread that owns the state: jobs in the order of the queue, between them
//! diagnostics that are due, and hints prepared in idle time.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::Arc;
use std::sync::atomic::Ordering;
use std::sync::mpsc::{Receiver, RecvTimeoutError, TryRecvError};
use std::time::{Duration, Instant};

use downlead_eval::Stage;

use crate::docs::Home;
use crate::handlers::inlay_hint;
use crate::jobs::Job;
use crate::state::State;

/// Length of one step of preparation in idle time. A job waits for no more than this.
const PIECE: Duration = Duration::from_millis(1);

impl State {
    /// Runs until the queue of jobs is closed.
    pub(crate) fn run(mut self, jobs: &Receiver<Job<State>>) {
        loop {
            let job = match jobs.try_recv() {
                Ok(job) => job,
                Err(TryRecvError::Disconnected) => return,
                Err(TryRecvError::Empty) => {
                    self.guarded(State::refine_shown);
                    self.guarded(State::settle);
                    self.guarded(State::release);
                    if self.due.next().is_none() && self.unprepared() {
                        self.guarded(State::prepare_hints);
                        continue;
                    }
                    match self.due.next() {
                        None => match jobs.recv() {
                            Ok(job) => job,
                            Err(_) => return,
                        },
                        Some(at) => {
                            match jobs.recv_timeout(at.saturating_duration_since(Instant::now())) {
                                Ok(job) => job,
                                Err(RecvTimeoutError::Timeout) => continue,
                                Err(RecvTimeoutError::Disconnected) => return,
                            }
                        }
                    }
                }
            };
            self.guarded(job);
            if self.due.starved() {
                self.guarded(State::settle);
            }
        }
    }

    /// Takes the sample for hints on the screen that were answered without it, and asks the client to
    /// fetch them again if they are others now. A newer change drops this, and a newer request
    /// comes first.
    fn refine_shown(&mut self) {
        loop {
            let next = self.docs.iter().find_map(|d| {
                let shown = d.first_hints.borrow_mut().pop()?;
                Some((d.uri.clone(), shown))
            });
            let Some((uri, shown)) = next else { return };
            let Some(doc) = self.docs.get(&uri).filter(|d| d.change == shown.change) else {
                continue;
            };
            let Home::Space { key, path } = doc.home.clone() else {
                continue;
            };
            let range = doc.lines.span(&doc.text, shown.range, self.peer.encoding);
            let ahead = Arc::clone(&self.ahead);
            let wanted = || {
                ahead.changes.load(Ordering::SeqCst) > 0
                    || ahead.requests.load(Ordering::SeqCst) > 0
            };
            let done = match self.spaces.get_mut(&key) {
                Some(space) => space.refine(&self.docs, (&path, range), &wanted),
                None => continue,
            };
            if !done && wanted() {
                if let Some(doc) = self.docs.get(&uri) {
                    doc.show(shown);
                }
                return;
            }
            let other = match self.view_first(&uri, shown.range, Stage::Whole) {
                Ok(Some(v)) => inlay_hint::differ(&v, &shown),
                _ => false,
            };
            if other && self.peer.refresh_hints {
                self.out
                    .refresh("workspace/inlayHint/refresh", serde_json::Value::Null);
            }
        }
    }

    fn unprepared(&self) -> bool {
        self.peer.hints && self.docs.iter().any(|d| !d.prepared)
    }

    /// One step of preparation: hints that a client will probably request.
    fn prepare_hints(&mut self) {
        let Some(uri) = self
            .docs
            .iter()
            .find(|d| !d.prepared)
            .map(|d| d.uri.clone())
        else {
            return;
        };
        // also after a panic: a document is prepared once
        self.docs.get_mut(&uri).expect("found").prepared = true;
        let begun = Instant::now();
        // at least one item each time
        let asked = std::cell::Cell::new(false);
        let stop = || asked.replace(true) && begun.elapsed() > PIECE;
        let done = match self.docs.get(&uri).map(|d| &d.home) {
            Some(Home::Space { key, .. }) if self.is_published(key) => match self.view(&uri) {
                Ok(Some(v)) => inlay_hint::prepare(&v, &stop),
                _ => true,
            },
            _ => true,
        };
        self.docs.get_mut(&uri).expect("found").prepared = done;
    }

    /// Runs a job. A panic ends the job, not the server.
    fn guarded(&mut self, what: impl FnOnce(&mut State)) {
        if catch_unwind(AssertUnwindSafe(|| what(self))).is_err() {
            self.panicked();
        }
    }
}
