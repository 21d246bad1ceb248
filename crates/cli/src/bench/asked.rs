//! `bench --length "30 m" --at 145.3,433.5`: the run that is asked about.

use downlead_eval::bench::result::SessionResult;
use downlead_quantity::Measure;
use downlead_report::build::run::{Asked, report};
use downlead_report::shape::run::RunsReport;
use downlead_station::session::Session;

use crate::args::BenchArgs;
use crate::command::catalogue::frequency_of;
use crate::fit::options;

/// Power where none is said, W: shares read as percent.
const POWER: f64 = 100.0;

/// What the options say.
pub(crate) struct Asking<'a> {
    length: Measure,
    power_w: f64,
    at: &'a [String],
}

impl<'a> Asking<'a> {
    /// The run of the options; none where there is none.
    pub(crate) fn of(args: &'a BenchArgs) -> Result<Option<Self>, String> {
        let Some(length) = &args.length else {
            return Ok(None);
        };
        Ok(Some(Asking {
            length: options::length(length)?,
            power_w: match &args.power {
                Some(power) => options::power(power)?,
                None => POWER,
            },
            at: &args.at,
        }))
    }

    /// The answer of one session, whose bands may be asked for by name.
    pub(crate) fn answer(&self, s: &Session, r: &SessionResult) -> Result<RunsReport, String> {
        let hz = |text: &String| {
            let band = r.bands.iter().find(|b| *b.band == *text.trim());
            band.map(|b| b.hz)
                .or_else(|| frequency_of(text))
                .ok_or_else(|| {
                    let bands: Vec<&str> = r.bands.iter().map(|b| &*b.band).collect();
                    format!(
                        "--at \"{text}\": neither a frequency nor a band of session {} ({}); write it as 145.3 (MHz), or \"7.1 MHz\"",
                        s.name.text,
                        bands.join(", ")
                    )
                })
        };
        let asked = Asked {
            length: self.length,
            power_w: self.power_w,
            hz: self.at.iter().map(hz).collect::<Result<_, _>>()?,
        };
        Ok(report(s, r, &asked))
    }
}
