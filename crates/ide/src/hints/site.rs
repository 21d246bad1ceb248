//! At `isolation` and at `limit … desense`: what they come to.

use downlead_eval::site::SiteResult;
use downlead_eval::site::desense::DesenseVerdict;
use downlead_report::build::desense as words;

use super::lines::Hints;
use crate::status::Status;

impl Hints<'_, '_> {
    pub(super) fn site(&mut self, site: &SiteResult) {
        for i in &site.isolations {
            // a figure that was measured stands there already
            let computed = i.wavelengths.is_some();
            let Some(end) = self.end_of(i.loc).filter(|_| computed) else {
                continue;
            };
            self.begin(end, "")
                .push(words::isolated_in_short(i), None, None);
        }
        for r in &site.desense {
            let Some(limit) = &r.limit else { continue };
            self.judged.push((limit.loc, status(r.verdict)));
            let Some(end) = self.end_of(limit.loc) else {
                continue;
            };
            let tip = self.tip(|| words::sources_in_short(r).join("\n"));
            self.begin(end, "").push(words::in_short(r), tip, None);
            if self.explains(end) {
                self.at(end).tooltip.extend(words::sources_in_short(r));
            }
        }
    }
}

fn status(v: DesenseVerdict) -> Status {
    match v {
        DesenseVerdict::Met => Status::Good,
        DesenseVerdict::NotMet => Status::Bad,
        _ => Status::Unclear,
    }
}
