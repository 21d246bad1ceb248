//! Items computed on all cores: the only threads below the server. What is computed does not depend
//! on how it is divided, and comes in the order of the list.

use std::sync::OnceLock;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};

use downlead_station::model::Meaning;

use super::Scope;
use super::item::evaluate_item;
use super::later::Todo;
use crate::result::ItemResult;
use crate::stage::Stage;

/// Fewer chains than this are not worth a thread.
const WORTH: usize = 4;

/// Stack of a thread: parts are nested up to 64 deep, and dual numbers are large.
const STACK: usize = 8 << 20;

/// Chains to be computed of an item; a session takes as long as several.
fn chains(meaning: &Meaning) -> usize {
    match meaning {
        Meaning::Station(s) => s.chains.len(),
        Meaning::Chain(_) => 1,
        Meaning::Session(_) => WORTH,
        _ => 0,
    }
}

/// Cores of this machine; asking for them reads files.
fn cores() -> usize {
    static CORES: OnceLock<usize> = OnceLock::new();
    *CORES.get_or_init(|| std::thread::available_parallelism().map_or(1, usize::from))
}

/// Computes items of a scope on all cores, in the order of the list as far as `stop` lets it. What
/// is computed does not depend on how it is divided.
pub(super) fn evaluate_all(
    scope: &Scope,
    todo: &[Todo],
    stage: Stage,
    stop: &dyn Fn() -> bool,
) -> Vec<(usize, ItemResult)> {
    let stopped = AtomicBool::new(false);
    let next = AtomicUsize::new(0);
    let work = |stop: &dyn Fn() -> bool| {
        let mut done = Vec::new();
        loop {
            let at = next.fetch_add(1, Ordering::Relaxed);
            let Some(t) = todo.get(at) else { break };
            if stopped.load(Ordering::Relaxed) || stop() {
                stopped.store(true, Ordering::Relaxed);
                break;
            }
            let (item, low, _) = &scope.items[t.item];
            done.push((t.item, evaluate_item(item, low, &scope.env, stage)));
        }
        done
    };
    // each thread takes some work to begin
    let worth = todo
        .iter()
        .map(|t| chains(&scope.items[t.item].1.meaning))
        .sum::<usize>()
        / WORTH;
    let helpers = match worth.min(todo.len()) {
        0 | 1 => 0,
        threads => threads.min(cores()) - 1,
    };
    let mut done = std::thread::scope(|s| {
        let helper = || work(&|| false);
        let threads: Vec<_> = (0..helpers)
            .filter_map(|_| {
                let thread = std::thread::Builder::new().stack_size(STACK);
                // without one more the work is done all the same
                thread.spawn_scoped(s, helper).ok()
            })
            .collect();
        let mut done = work(stop);
        for t in threads {
            match t.join() {
                Ok(more) => done.extend(more),
                Err(panic) => std::panic::resume_unwind(panic),
            }
        }
        done
    });
    done.sort_unstable_by_key(|d| d.0);
    done
}
