//! Work on many files, divided among the cores.

use std::sync::atomic::{AtomicUsize, Ordering};

/// What `one` makes of each item, in the order of the items.
pub(crate) fn each<T: Sync, R: Send>(items: &[T], one: impl Fn(&T) -> R + Sync) -> Vec<R> {
    let next = AtomicUsize::new(0);
    let work = || {
        let mut out = Vec::new();
        loop {
            let at = next.fetch_add(1, Ordering::Relaxed);
            let Some(item) = items.get(at) else {
                return out;
            };
            out.push((at, one(item)));
        }
    };
    let workers = std::thread::available_parallelism().map_or(1, usize::from);
    let mut all = if items.len() < 2 || workers < 2 {
        work()
    } else {
        std::thread::scope(|s| {
            let threads: Vec<_> = (0..workers.min(items.len()))
                .map(|_| s.spawn(work))
                .collect();
            let done = threads.into_iter().map(std::thread::ScopedJoinHandle::join);
            done.flat_map(|r| r.unwrap_or_else(|p| std::panic::resume_unwind(p)))
                .collect()
        })
    };
    all.sort_by_key(|x| x.0);
    all.into_iter().map(|x| x.1).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn results_are_in_the_order_of_the_items() {
        let items: Vec<u64> = (0..100).collect();
        let squares: Vec<u64> = items.iter().map(|x| x * x).collect();
        assert_eq!(each(&items, |x| x * x), squares);
        assert_eq!(each(&items[..1], |x| x + 1), [1]);
        assert!(each(&items[..0], |x| x + 1).is_empty());
    }
}
