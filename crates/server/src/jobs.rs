//! Jobs for the thread that owns the state, counts of those still queued, cancellation.

use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex, PoisonError};

/// One unit of work on a state.
pub(crate) type Job<S> = Box<dyn FnOnce(&mut S) + Send>;

/// The sending side of the queue of jobs. All clones close together.
pub(crate) struct Jobs<S>(Arc<Mutex<Option<Sender<Job<S>>>>>);

impl<S> Clone for Jobs<S> {
    fn clone(&self) -> Jobs<S> {
        Jobs(Arc::clone(&self.0))
    }
}

impl<S> Jobs<S> {
    pub(crate) fn new() -> (Jobs<S>, Receiver<Job<S>>) {
        let (send, queue) = channel();
        (Jobs(Arc::new(Mutex::new(Some(send)))), queue)
    }

    /// Queues a job. After the end of the session it is dropped.
    pub(crate) fn send(&self, job: impl FnOnce(&mut S) + Send + 'static) {
        let sender = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(sender) = sender.as_ref() {
            // fails only after the thread of the state has ended
            _ = sender.send(Box::new(job));
        }
    }

    /// Ends the queue: the receiver gets the jobs already queued and then no more.
    pub(crate) fn close(&self) {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).take();
    }
}

/// Counts of queued text changes and requests. Long evaluations are stopped because of them.
#[derive(Default)]
pub(crate) struct Ahead {
    pub(crate) changes: AtomicUsize,
    pub(crate) requests: AtomicUsize,
}

/// Cancellation flag of a request.
#[derive(Clone, Default)]
pub(crate) struct Cancel(Arc<AtomicBool>);

impl Cancel {
    pub(crate) fn is_set(&self) -> bool {
        self.0.load(Ordering::SeqCst)
    }

    pub(crate) fn set(&self) {
        self.0.store(true, Ordering::SeqCst);
    }
}
