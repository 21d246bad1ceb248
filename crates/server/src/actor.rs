//! The loop of the thread that owns the state: jobs in the order of the queue, between them
//! diagnostics that are due, and hints prepared in idle time.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::mpsc::{Receiver, RecvTimeoutError, TryRecvError};
use std::time::{Duration, Instant};

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
