//! The terms of an uncertainty: what causes and phases contribute adds up to it, as the root of the
//! sum of squares (JCGM 100:2008, 5.1.2), for random chains and trees.

#[path = "net/maker.rs"]
#[allow(dead_code, reason = "each test program uses its part")]
mod maker;

use downlead_physics::net::evaluate::Quantity;
use maker::{Rng, random};

#[test]
fn terms_add_up_to_the_uncertainty() {
    let mut rng = Rng(0x5eed_0011);
    let (mut phases, mut causes) = (0, 0);
    for k in 0..120 {
        let chain = random(&mut rng, k);
        let n = &chain.network;
        let e = n.linear();
        let nodes =
            (0..e.nodes).flat_map(|k| [Quantity::Forward(k), Quantity::Net(k), Quantity::Back(k)]);
        for q in [Quantity::Eirp, Quantity::Delivered]
            .into_iter()
            .chain(nodes)
        {
            let Some(o) = e.output(q) else { continue };
            let by_cause = e.by_cause(q);
            let by_phase: Vec<f64> = e.by_phase(q).collect();
            assert_eq!(
                by_cause.len(),
                n.inputs.shapes().len(),
                "{q:?}: {}",
                chain.said
            );
            assert_eq!(by_phase.len(), n.inputs.phases(), "{q:?}: {}", chain.said);
            let sum: f64 = by_cause.iter().chain(&by_phase).map(|d| d * d).sum();
            let u = (sum + o.residual * o.residual).sqrt();
            let (mean, said) = o.by_derivatives();
            assert!(
                (u - said).abs() < 1e-9 * (1.0 + said),
                "{q:?}: {u} {said}: {}",
                chain.said
            );
            assert!(mean == o.mean && o.low == mean - 2.0 * said && o.high == mean + 2.0 * said);
            phases += usize::from(by_phase.iter().any(|d| *d > 1e-3));
            causes += usize::from(by_cause.iter().any(|d| d.abs() > 1e-3));
        }
        // a node that is not there has none
        let beyond = Quantity::Forward(e.nodes);
        assert!(e.output(beyond).is_none() && e.by_cause(beyond).is_empty());
        assert_eq!(e.by_phase(beyond).count(), 0);
    }
    assert!(phases > 300 && causes > 300, "{phases} {causes}");
}
