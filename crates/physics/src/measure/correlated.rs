//! χ² of values that share causes.

/// Of more causes than this the largest are kept as shared, and the rest counts as each value's own:
/// the work goes with the cube of their number.
const MOST_SHARED: usize = 128;

/// What a value keeps for itself at least, as a share of its variance: no cause is known to act on
/// all alike to better than a tenth of its size (common practice), and readings are rounded.
const LEAST_OWN: f64 = 0.01;

/// The inverse of a covariance `D + Σ s sᵀ`, by the matrix inversion lemma (Sherman, Morrison and
/// Woodbury): `D` diagonal, one `s` a shared cause.
pub(super) struct Correlated {
    /// 1 over the variance that is each value's own.
    own: Vec<f64>,
    shared: Vec<Vec<f64>>,
    /// Lower triangle of the Cholesky factor of `1 + Sᵀ D⁻¹ S`.
    factor: Vec<Vec<f64>>,
}

impl Correlated {
    /// Values with the standard uncertainties `u`, of which the causes in `common` are a part:
    /// for each cause its signed contribution to every value.
    pub(super) fn new(u: &[f64], common: &[Vec<f64>]) -> Self {
        let mut shared: Vec<&Vec<f64>> = common.iter().collect();
        if shared.len() > MOST_SHARED {
            let size = |s: &Vec<f64>| s.iter().map(|x| x * x).sum::<f64>();
            shared.sort_by(|a, b| size(b).total_cmp(&size(a)));
            shared.truncate(MOST_SHARED);
        }
        let own: Vec<f64> = (0..u.len())
            .map(|i| {
                let all = u[i] * u[i];
                let of_others: f64 = shared.iter().map(|s| s[i] * s[i]).sum();
                1.0 / (all - of_others).max(LEAST_OWN * all)
            })
            .collect();
        let n = shared.len();
        let mut factor = vec![vec![0.0; n]; n];
        for i in 0..n {
            for j in 0..=i {
                let mut x = dot(shared[i], shared[j], &own);
                x += f64::from(u8::from(i == j));
                // one product after the other, so that the digits do not depend on a way of summing
                for (a, b) in factor[i].iter().zip(&factor[j]).take(j) {
                    x -= a * b;
                }
                factor[i][j] = if i == j {
                    // 1 and more but for rounding
                    libm::sqrt(x.max(f64::MIN_POSITIVE))
                } else {
                    x / factor[j][j]
                };
            }
        }
        Self {
            own,
            shared: shared.into_iter().cloned().collect(),
            factor,
        }
    }

    /// `L⁻¹ Sᵀ D⁻¹ a`: with it `aᵀ C⁻¹ b` is a dot product less another.
    fn seen(&self, a: &[f64]) -> Vec<f64> {
        let mut out: Vec<f64> = self.shared.iter().map(|s| dot(s, a, &self.own)).collect();
        for i in 0..out.len() {
            for j in 0..i {
                out[i] -= self.factor[i][j] * out[j];
            }
            out[i] /= self.factor[i][i];
        }
        out
    }

    /// The least `(y − X b)ᵀ C⁻¹ (y − X b)` over the coefficients `b` of one or two columns `X`.
    pub(super) fn chi_square(&self, y: &[f64], columns: &[&[f64]]) -> f64 {
        let seen_y = self.seen(y);
        let seen: Vec<Vec<f64>> = columns.iter().map(|c| self.seen(c)).collect();
        let product = |a: &[f64], sa: &[f64], b: &[f64], sb: &[f64]| {
            let less: f64 = sa.iter().zip(sb).map(|(a, b)| a * b).sum();
            dot(a, b, &self.own) - less
        };
        let mut left = product(y, &seen_y, y, &seen_y);
        // Gram and Schmidt: what each column explains beyond those before it
        let mut done: Vec<(Vec<f64>, Vec<f64>, f64)> = Vec::new();
        for (c, s) in columns.iter().zip(seen) {
            let (mut c, mut s) = (c.to_vec(), s);
            for (d, sd, size) in &done {
                let share = product(&c, &s, d, sd) / size;
                c.iter_mut().zip(d).for_each(|(c, d)| *c -= share * d);
                s.iter_mut().zip(sd).for_each(|(s, d)| *s -= share * d);
            }
            let size = product(&c, &s, &c, &s);
            if size > 0.0 {
                let on = product(y, &seen_y, &c, &s);
                left -= on * on / size;
                done.push((c, s, size));
            }
        }
        left.max(0.0)
    }
}

fn dot(a: &[f64], b: &[f64], weight: &[f64]) -> f64 {
    a.iter()
        .zip(b)
        .zip(weight)
        .map(|((a, b), w)| a * b * w)
        .sum()
}
