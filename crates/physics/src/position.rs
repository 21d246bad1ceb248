//! Short distances between two positions on the ellipsoid.

/// Semi-major axis, m, and squared eccentricity of WGS 84 (NIMA TR8350.2).
const A: f64 = 6_378_137.0;
const E2: f64 = 6.694_379_990_14e-3;

/// Distance in m between two positions in degrees north and east, by the radii of curvature at their
/// mean latitude: better than 0.1 % up to 100 km (common practice), meant for whether a station stands
/// where its paper says.
#[must_use]
pub fn distance_m((lat1, lon1): (f64, f64), (lat2, lon2): (f64, f64)) -> f64 {
    let mean = (0.5 * (lat1 + lat2)).to_radians();
    let w = 1.0 - E2 * libm::sin(mean) * libm::sin(mean);
    let meridian = A * (1.0 - E2) / (w * libm::sqrt(w));
    let normal = A / libm::sqrt(w);
    let mut east = lon2 - lon1;
    // the short way across the date line
    if east > 180.0 {
        east -= 360.0;
    } else if east < -180.0 {
        east += 360.0;
    }
    let north = (lat2 - lat1).to_radians() * meridian;
    let east = east.to_radians() * normal * libm::cos(mean);
    libm::hypot(north, east)
}

#[cfg(test)]
mod tests {
    use super::distance_m;

    /// Length of a degree at 45° and at 60° on WGS 84 (public tables of the National Geospatial-Intelligence
    /// Agency: 111 131.75 m and 78 846.8 m; 111 412.2 m and 55 800 m), here by a hundredth of it.
    #[test]
    fn a_degree_is_as_long_as_in_the_tables() {
        let close = |a: f64, b: f64| assert!((a / b - 1.0).abs() < 2e-5, "{a} {b}");
        close(distance_m((44.995, 9.0), (45.005, 9.0)), 1111.3175);
        close(distance_m((45.0, 9.0), (45.0, 9.01)), 788.468);
        close(distance_m((59.995, 9.0), (60.005, 9.0)), 1114.122);
        close(distance_m((60.0, 179.995), (60.0, -179.995)), 558.0);
    }
}
