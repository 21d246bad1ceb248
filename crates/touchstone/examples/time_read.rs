//! Reads a file again and again and prints seconds a read, best and middle of them, as JSON.
//! `benches/beside_scikit_rf.py` compares its time with scikit-rf's.

use std::hint::black_box;
use std::time::Instant;

#[expect(clippy::print_stdout, reason = "it is what the example is for")]
fn main() -> Result<(), Box<dyn std::error::Error>> {
    let usage = "time_read FILE TIMES";
    let mut arguments = std::env::args().skip(1);
    let path = arguments.next().ok_or(usage)?;
    let times: usize = arguments.next().ok_or(usage)?.parse()?;
    let ports = downlead_touchstone::ports_from_name(&path);
    let mut seconds = Vec::new();
    let mut points = 0;
    for _ in 0..times.max(1) {
        let start = Instant::now();
        // from the disk's cache, as scikit-rf reads it
        let text = std::fs::read(&path)?;
        let file = black_box(downlead_touchstone::read(&text, ports));
        seconds.push(start.elapsed().as_secs_f64());
        points = file.network.as_ref().map_or(0, |n| n.points());
    }
    seconds.sort_by(f64::total_cmp);
    let (best, middle) = (seconds[0], seconds[seconds.len() / 2]);
    println!("{{\"points\": {points}, \"best\": {best}, \"middle\": {middle}}}");
    Ok(())
}
