//! Small dense complex matrices in row-major slices: solving, singular values.

use num_complex::Complex64;

pub(crate) const ZERO: Complex64 = Complex64::new(0.0, 0.0);
pub(crate) const ONE: Complex64 = Complex64::new(1.0, 0.0);

/// Magnitude, without overflow.
pub(crate) fn abs(z: Complex64) -> f64 {
    libm::hypot(z.re, z.im)
}

/// Solves `x·a = b` for the matrix `x`, which takes the place of `b`; `a` is used up.
/// Gaussian elimination on columns with partial pivoting (Golub and Van Loan, Matrix
/// Computations, 3.4). False if `a` is singular to working precision.
pub(crate) fn right_divide(b: &mut [Complex64], a: &mut [Complex64], n: usize) -> bool {
    // x a = b is aᵀ xᵀ = bᵀ: eliminate with columns in the part of rows
    let largest = |row: &[Complex64]| row.iter().map(Complex64::norm_sqr).fold(0.0, f64::max);
    let scale: Vec<f64> = a.chunks_exact(n).map(|row| largest(row).sqrt()).collect();
    for k in 0..n {
        let mut best = k;
        for c in k + 1..n {
            if a[k * n + c].norm_sqr() > a[k * n + best].norm_sqr() {
                best = c;
            }
        }
        let size = abs(a[k * n + best]);
        let sound = size > scale[k] * 1e-15 && size.is_finite();
        if !sound {
            return false;
        }
        if best != k {
            for r in 0..n {
                a.swap(r * n + k, r * n + best);
                b.swap(r * n + k, r * n + best);
            }
        }
        let pivot = a[k * n + k];
        for c in 0..n {
            if c == k {
                continue;
            }
            let factor = a[k * n + c] / pivot;
            if factor == ZERO {
                continue;
            }
            for r in k..n {
                let x = a[r * n + k];
                a[r * n + c] -= factor * x;
            }
            for r in 0..n {
                let x = b[r * n + k];
                b[r * n + c] -= factor * x;
            }
        }
        for r in 0..n {
            a[r * n + k] /= pivot;
            b[r * n + k] /= pivot;
        }
    }
    b.iter().all(|z| z.is_finite())
}

/// The largest singular value of an `n`×`n` matrix, by one-sided Jacobi rotations (Golub and
/// Van Loan, 8.6.3): columns are turned until they are orthogonal; the longest is the answer.
pub(crate) fn largest_singular_value(a: &[Complex64], n: usize) -> f64 {
    let mut u = a.to_vec();
    let norm = |u: &[Complex64], c: usize| (0..n).map(|r| u[r * n + c].norm_sqr()).sum::<f64>();
    for _ in 0..40 {
        let mut turned = false;
        for p in 0..n {
            for q in p + 1..n {
                let (alpha, beta) = (norm(&u, p), norm(&u, q));
                let gamma: Complex64 = (0..n).map(|r| u[r * n + p].conj() * u[r * n + q]).sum();
                let size = abs(gamma);
                if size <= 1e-15 * (alpha * beta).sqrt() || size == 0.0 {
                    continue;
                }
                turned = true;
                let zeta = (beta - alpha) / (2.0 * size);
                let t = zeta.signum() / (zeta.abs() + (1.0 + zeta * zeta).sqrt());
                let c = 1.0 / (1.0 + t * t).sqrt();
                let s = c * t;
                let phase = gamma / size;
                for r in 0..n {
                    let (x, y) = (u[r * n + p], u[r * n + q] * phase.conj());
                    u[r * n + p] = x * c - y * s;
                    u[r * n + q] = x * s + y * c;
                }
            }
        }
        if !turned {
            break;
        }
    }
    (0..n).map(|c| norm(&u, c)).fold(0.0, f64::max).sqrt()
}

/// The same of a 2×2 matrix, from the larger eigenvalue of its Hermitian square.
pub(crate) fn largest_of_two(m: &[Complex64]) -> f64 {
    let a = m[0].norm_sqr() + m[2].norm_sqr();
    let d = m[1].norm_sqr() + m[3].norm_sqr();
    let b = m[0].conj() * m[1] + m[2].conj() * m[3];
    (0.5 * (a + d + ((a - d) * (a - d) + 4.0 * b.norm_sqr()).sqrt())).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn singular_values_by_hand() {
        // diag(3, 4i): 4; [[1, 1], [0, 1]]: the golden ratio
        let c = Complex64::new;
        let d = [c(3.0, 0.0), ZERO, ZERO, c(0.0, 4.0)];
        assert!((largest_singular_value(&d, 2) - 4.0).abs() < 1e-15);
        let g = [ONE, ONE, ZERO, ONE];
        let golden = (1.0 + 5f64.sqrt()) / 2.0;
        assert!((largest_singular_value(&g, 2) - golden).abs() < 1e-14);
        assert!((largest_of_two(&d) - 4.0).abs() < 1e-15);
        assert!((largest_of_two(&g) - golden).abs() < 1e-14);
        let any = [c(0.3, -0.2), c(0.5, 0.6), c(-0.4, 0.7), c(0.1, 0.25)];
        assert!((largest_of_two(&any) - largest_singular_value(&any, 2)).abs() < 1e-14);
    }

    #[test]
    fn division_undoes_multiplication() {
        let c = Complex64::new;
        let x = [c(1.0, 2.0), c(0.5, -1.0), c(3.0, 0.0), c(-1.0, 1.0)];
        let a = [ZERO, c(2.0, 1.0), c(1.0, -1.0), c(0.25, 0.0)];
        let mut b = [ZERO; 4];
        for i in 0..2 {
            for j in 0..2 {
                b[i * 2 + j] = (0..2).map(|k| x[i * 2 + k] * a[k * 2 + j]).sum();
            }
        }
        assert!(right_divide(&mut b, &mut a.clone(), 2));
        for (got, want) in b.iter().zip(x) {
            assert!((got - want).norm_sqr() < 1e-28, "{got} is not {want}");
        }
        let mut singular = [ONE, ONE, ONE, ONE];
        assert!(!right_divide(&mut b, &mut singular, 2));
    }
}
