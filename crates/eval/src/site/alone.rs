//! A station that is said to be alone, and others that say they are beside it.

use downlead_base::{Diagnostic, codes};
use downlead_station::Env;
use downlead_station::model::Station;

/// Points out stations that contradict `alone`.
pub(crate) fn alone(st: &Station, env: &Env, out: &mut Vec<Diagnostic>) {
    let Some(alone) = &st.site.alone else { return };
    for name in env.naming(&st.name.text) {
        out.push(
            Diagnostic::new(
                &codes::SITE_CONTRADICTS,
                alone.loc,
                format!(
                    "`{}` is said to be alone, and `{name}` says that it is beside `{}`.",
                    st.name.text, st.name.text
                ),
            )
            .at("alone")
            .help(format!(
                "Write `beside {name}` instead, or remove the line in `{name}`."
            )),
        );
    }
}
