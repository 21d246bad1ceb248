//! What is kept after many edits does not grow with their number: counted, not timed.

use std::alloc::System;

use cap::Cap;
use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_testkit::{CABLE_LINE, Files, RUN_LINE, large_file};

#[global_allocator]
static HEAP: Cap<System> = Cap::new(System, usize::MAX);

/// Edits of one digit, of a line more and less, of the cable that all depend on.
fn edits(s: &mut Snapshot, files: &Files, from: usize, count: usize) {
    for i in from..from + count {
        let text = s.files()[0].text();
        let runs: Vec<usize> = text
            .match_indices("    run M1 ")
            .map(|(at, word)| at + word.len())
            .collect();
        let at = match i % 50 {
            7 => {
                text.find(CABLE_LINE.split('1').next().unwrap_or(""))
                    .expect("the cable")
                    + 11
            }
            _ => runs[(i * 7919) % runs.len()],
        } as u32;
        if i % 50 == 9 {
            let line = "    // a line more\n";
            let start = s.files()[0].text()[..at as usize]
                .rfind('\n')
                .expect("a line") as u32
                + 1;
            s.edit(0, Span::new(start, start), line, files);
            s.edit(0, Span::new(start, start + line.len() as u32), "", files);
        } else {
            s.edit(0, Span::new(at, at + 1), &(i % 9 + 1).to_string(), files);
        }
    }
}

#[test]
fn many_edits_leave_no_more_than_few() {
    assert!(large_file(100).contains(RUN_LINE));
    let files = Files::default().with("main.downlead", large_file(1_500));
    let mut s = Snapshot::load(&["main.downlead".to_owned()], &files);
    let items = s.files()[0].tree.items().len();
    edits(&mut s, &files, 0, 100);
    let early = HEAP.allocated();
    edits(&mut s, &files, 100, 1_500);
    let late = HEAP.allocated();
    let (lowered, results) = s.kept();
    assert!(lowered <= items + items / 16 + 9, "{lowered} of {items}");
    assert!(results <= items + items / 16 + 9, "{results} of {items}");
    // a tenth, as the caches may be fuller or emptier at the moment
    assert!(late < early + early / 10, "{early} bytes, then {late}");
    let held = s.diagnostics().len();
    let fresh = Files::default().with("main.downlead", s.files()[0].text());
    let again = Snapshot::load(&["main.downlead".to_owned()], &fresh);
    assert_eq!(held, again.diagnostics().len());
}
