//! Legs and ports of a device: `high 1.45 dB, passes …, rejects …`, `port a 3.3 dB`.

use downlead_syntax::Stmt;

use super::device::{Draft, loss_figure, loss_table, passes};
use super::network::{self, Ports};
use super::part::dated_loss;
use crate::cx::{Cur, Cx};
use crate::model::{Figure, List, Name, Port};

/// A line of a leg or port, whose figures begin after `skip` words.
pub(super) fn port<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    d: &mut Draft,
    name: Name,
    skip: usize,
    what: &str,
) {
    let mut cur = Cur::new(s, super::head::first_group(s));
    cur.i = skip;
    let (mut bands, mut off) = (Vec::new(), Vec::new());
    let mut own = |cx: &mut Cx<'a>, cur: &mut Cur<'a>| {
        passes(cx, cur, &mut bands) || rejects(cx, cur, &mut off)
    };
    let (mut losses, mut files) = (Vec::new(), Vec::new());
    if s.block().is_some() {
        losses = loss_table(cx, s, skip, what, &mut own);
    } else if cur.word(cx) == Some("from") {
        files.extend(network::statement(
            cx,
            s,
            skip,
            "a port's file",
            Ports::Two,
            &mut own,
        ));
    } else if matches!(cur.word(cx), Some("rejects" | "passes")) {
        // a further line of a leg whose loss stands in another
        for (n, g) in s.groups().enumerate() {
            let mut cur = Cur::new(s, g);
            cur.i = if n == 0 { skip } else { 0 };
            while !cur.done() {
                if !own(cx, &mut cur) {
                    cur.unexpected(cx, what, &["rejects", "passes"]);
                    break;
                }
            }
        }
    } else {
        match loss_figure(cx, s, skip, what, &mut own) {
            Some(f) => losses.push(f),
            None => return,
        }
    }
    // one line a band: further lines of the same name add figures
    let i = d
        .ports
        .iter()
        .position(|p| p.name.text == name.text)
        .unwrap_or_else(|| {
            d.ports.push(Port {
                name,
                loss: Box::default(),
                passes: List::default(),
                network: List::default(),
                rejects: List::default(),
            });
            d.ports.len() - 1
        });
    let p = &mut d.ports[i];
    let mut all = std::mem::take(&mut p.loss).into_vec();
    all.extend(losses);
    p.loss = all.into();
    add(&mut p.passes, bands);
    add(&mut p.network, files);
    add(&mut p.rejects, off);
}

fn add<T>(list: &mut List<T>, more: Vec<T>) {
    let mut all = std::mem::take(list).into_vec();
    all.extend(more);
    *list = all.into();
}

/// `rejects 80 dB at 146.3 MHz` at the cursor.
fn rejects<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, out: &mut Vec<Figure>) -> bool {
    let hit = cur.eat(cx, "rejects");
    if hit {
        out.extend(dated_loss(
            cx,
            cur,
            "a rejection",
            "rejects 80 dB at 146.3 MHz",
        ));
    }
    hit
}
