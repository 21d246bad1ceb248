//! The four revisions of the demo station against figures worked out apart from the program
//! (`tests/tools/scenario_numbers.py`, plain arithmetic from the scenario).

use std::sync::Arc;

use downlead_eval::Snapshot;
use downlead_station::{LoadError, Loader};

struct Folder(std::path::PathBuf);

impl Loader for Folder {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        std::fs::read_to_string(self.0.join(path)).map(Arc::from).map_err(|_| LoadError::NotFound)
    }
}

fn examples() -> Folder {
    Folder(std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples"))
}

#[test]
fn print() {
    for f in ["pellgarrow/rev1.downlead", "pellgarrow/rev2.downlead","pellgarrow/rev3.downlead","pellgarrow/rev4.downlead","shack/shack.downlead","quick.downlead","sheet.downlead","stacked.downlead","hf-multiband.downlead"] {
        let s = Snapshot::load(&[f.to_owned()], &examples());
        let r = s.report();
        for d in &r.diagnostics { println!("{f}:{}:{} {} {} {}", d.line, d.column, d.severity, d.code, d.message); }
        for st in &r.stations { for c in &st.chains { for b in &c.bands {
            println!("{f} {} {} loss {:.3} ant {:?} erp {:?} U {:.3} sens {:?} nf {:?} worst {:?} swr {:.2}", c.name, b.band, b.total_loss_db, b.antenna_w, b.erp_w, b.uncertainty_db, b.sensitivity_dbm, b.noise_figure_db, b.loss_worst_db, b.transmitter_swr);
            for l in &b.limits { println!("    {} {:.2} {}", l.quantity, l.margin_db, l.verdict); }
            for l in &b.readings { println!("    read {:?} exp {:?} {:.2} {:.2} {}", l.read_w, l.expected_w, l.difference_db, l.uncertainty_db, l.verdict); }
            for a in &b.assumptions { println!("      ~ {a}"); }
        }}}
    }
}
