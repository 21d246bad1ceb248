//! Loss per length.

/// A measured loss below this many of its expanded uncertainties gives no usable figure per
/// length (common practice).
const LEAST_IN_EXPANDED: f64 = 5.0;

/// Loss per length of a measured piece.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PerLength {
    /// dB/m, connectors taken off.
    pub db_per_m: f64,
    /// Standard uncertainty, dB/m.
    pub u_db_per_m: f64,
    /// Loss without connectors over its expanded uncertainty (k = 2).
    pub in_expanded: f64,
    /// The loss is at least five of its expanded uncertainties. Below that a short piece, its
    /// connectors and the meter make the figure, not the cable.
    pub trusted: bool,
}

/// Loss per length of a piece: connectors are subtracted, the uncertainty of the length is included (GUM
/// 5.1.2). All uncertainties standard. None without a positive length.
#[must_use]
pub fn per_length(
    loss_db: f64,
    u_loss_db: f64,
    connectors_db: f64,
    u_connectors_db: f64,
    length_m: f64,
    u_length_m: f64,
) -> Option<PerLength> {
    if !(length_m > 0.0 && length_m.is_finite()) {
        return None;
    }
    let net = loss_db - connectors_db;
    let u_net = libm::hypot(u_loss_db, u_connectors_db);
    let db_per_m = net / length_m;
    let in_expanded = net / (2.0 * u_net);
    Some(PerLength {
        db_per_m,
        // the product form also holds for a net loss of nothing
        u_db_per_m: libm::hypot(u_net, db_per_m * u_length_m) / length_m,
        in_expanded,
        trusted: in_expanded >= LEAST_IN_EXPANDED,
    })
}
