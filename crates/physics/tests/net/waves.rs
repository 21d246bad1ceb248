//! All waves of a network as one system of linear equations, and the heat in every part from the
//! waves at it. The library follows reflections inwards and powers outwards instead.

use downlead_physics::net::complex::C;
use downlead_physics::net::element::El;
use downlead_physics::net::solve::Tail;
use num_complex::Complex64;

/// The waves of 1 W from a matched source.
#[derive(Debug, Default)]
pub(crate) struct Powers {
    /// Forward power and reflected share at each node, in the library's order.
    pub(crate) nodes: Vec<(f64, f64)>,
    /// Net power at each end.
    pub(crate) ends: Vec<f64>,
    /// Heat in each part, in the order of nodes, and in each junction; that of an amplifier is
    /// negative.
    pub(crate) heat: Vec<f64>,
    /// The wave reflected to the source.
    pub(crate) reflected: f64,
}

fn z(c: C<f64>) -> Complex64 {
    Complex64::new(c.re, c.im)
}

/// S11, S12, S21, S22.
fn two_port(e: &El<f64>) -> Option<[Complex64; 4]> {
    let zero = Complex64::new(0.0, 0.0);
    match *e {
        El::Two {
            s11,
            back,
            s21,
            s22,
        } => {
            let s21 = z(s21);
            let s12 = if s21.norm_sqr() > 0.0 {
                z(back) / s21
            } else {
                zero
            };
            Some([z(s11), s12, s21, z(s22)])
        }
        El::Shift { power, round, .. } => {
            let way = z(round).sqrt() * power.sqrt();
            Some([zero, way, way, zero])
        }
        El::Tuner { .. } | El::Node => None,
    }
}

/// Equations in waves at boundaries: `rows` of coefficients, with the right side last.
struct System {
    unknown: usize,
    rows: Vec<(Vec<(usize, Complex64)>, Complex64)>,
}

impl System {
    fn new_pair(&mut self) -> (usize, usize) {
        self.unknown += 2;
        (self.unknown - 2, self.unknown - 1)
    }
    fn equation(&mut self, terms: Vec<(usize, Complex64)>, right: Complex64) {
        self.rows.push((terms, right));
    }
    /// Gauss with the largest pivot.
    fn solve(&self) -> Vec<Complex64> {
        let n = self.unknown;
        assert_eq!(n, self.rows.len());
        let zero = Complex64::new(0.0, 0.0);
        let mut m = vec![vec![zero; n + 1]; n];
        for (row, (terms, right)) in m.iter_mut().zip(&self.rows) {
            for (k, x) in terms {
                row[*k] += x;
            }
            row[n] = *right;
        }
        for k in 0..n {
            let p = (k..n)
                .max_by(|a, b| m[*a][k].norm_sqr().total_cmp(&m[*b][k].norm_sqr()))
                .expect("a row");
            m.swap(k, p);
            for i in k + 1..n {
                let q = m[i][k] / m[k][k];
                if q.norm_sqr() > 0.0 {
                    let (a, b) = m.split_at_mut(i);
                    for (x, y) in b[0][k..].iter_mut().zip(&a[k][k..]) {
                        *x -= q * y;
                    }
                }
            }
        }
        let mut x = vec![zero; n];
        for k in (0..n).rev() {
            let mut r = m[k][n];
            for j in k + 1..n {
                r -= m[k][j] * x[j];
            }
            x[k] = r / m[k][k];
        }
        x
    }
}

/// Waves (forward, backward) at a place, and what is there.
enum Place {
    Node(usize, usize),
    End(usize, usize),
    /// Waves in and out of a part.
    Part(Vec<(usize, usize)>),
    /// A tuner takes over from here: waves before it, its power ratio, the parts after it.
    Tuner(usize, f64, Powers),
}

fn put(s: &mut System, t: &Tail<f64>, from: usize, mut at: (usize, usize), out: &mut Vec<Place>) {
    let one = Complex64::new(1.0, 0.0);
    for (k, e) in t.els.iter().enumerate().skip(from) {
        match (two_port(e), e) {
            (Some([s11, s12, s21, s22]), _) => {
                let next = s.new_pair();
                // waves out of it: at.1 and next.0
                s.equation(
                    vec![(at.1, one), (at.0, -s11), (next.1, -s12)],
                    Complex64::default(),
                );
                s.equation(
                    vec![(next.0, one), (at.0, -s21), (next.1, -s22)],
                    Complex64::default(),
                );
                out.push(Place::Part(vec![(at.0, at.1), (next.1, next.0)]));
                at = next;
            }
            (None, El::Tuner { power }) => {
                s.equation(vec![(at.1, one)], Complex64::default());
                out.push(Place::Tuner(at.0, *power, powers(t, k + 1)));
                return;
            }
            _ => out.push(Place::Node(at.0, at.1)),
        }
    }
    if t.arms.is_empty() {
        s.equation(vec![(at.1, one), (at.0, -z(t.load))], Complex64::default());
        out.push(Place::End(at.0, at.1));
        return;
    }
    let arms: Vec<(usize, usize)> = t.arms.iter().map(|_| s.new_pair()).collect();
    // waves into the junction: at.0 and the arms' backward ones
    let into: Vec<usize> = [at.0].into_iter().chain(arms.iter().map(|a| a.1)).collect();
    let from: Vec<usize> = [at.1].into_iter().chain(arms.iter().map(|a| a.0)).collect();
    for (i, b) in from.iter().enumerate() {
        let terms = [(*b, one)].into_iter().chain(
            into.iter()
                .enumerate()
                .map(|(j, a)| (*a, -z(t.ports[i][j]))),
        );
        s.equation(terms.collect(), Complex64::default());
    }
    out.push(Place::Part(into.into_iter().zip(from).collect()));
    for (arm, at) in t.arms.iter().zip(arms) {
        put(s, arm, 0, at, out);
    }
}

fn powers(t: &Tail<f64>, from: usize) -> Powers {
    let mut s = System {
        unknown: 0,
        rows: Vec::new(),
    };
    let first = s.new_pair();
    s.equation(
        vec![(first.0, Complex64::new(1.0, 0.0))],
        Complex64::new(1.0, 0.0),
    );
    let mut places = vec![];
    if from == 0 {
        places.push(Place::Node(first.0, first.1));
    }
    put(&mut s, t, from, first, &mut places);
    let x = s.solve();
    let w = |k: usize| x[k].norm_sqr();
    let mut out = Powers {
        reflected: w(first.1),
        ..Powers::default()
    };
    // elements of one part belong together: a step of impedance alone is no passive two-port
    let mut part = 0.0;
    for p in places {
        match p {
            Place::Node(a, b) => {
                out.nodes.push((w(a), w(b) / w(a)));
                out.heat.push(std::mem::take(&mut part));
            }
            Place::End(a, b) => out.ends.push(w(a) - w(b)),
            Place::Part(ports) => part += ports.iter().map(|(a, b)| w(*a) - w(*b)).sum::<f64>(),
            Place::Tuner(a, power, after) => {
                part += w(a) * (1.0 - power);
                let k = w(a) * power / (1.0 - after.reflected);
                out.nodes.extend(after.nodes.iter().map(|n| (n.0 * k, n.1)));
                out.ends.extend(after.ends.iter().map(|e| e * k));
                out.heat.extend(after.heat.iter().map(|h| h * k));
            }
        }
    }
    out.heat.push(part);
    out
}

/// Solves the network; elements as a reader of plain numbers built them.
pub(crate) fn solve(t: &Tail<f64>) -> Powers {
    powers(t, 0)
}

/// Elements from the other end: ports exchanged.
pub(crate) fn reversed(els: &[El<f64>]) -> Vec<El<f64>> {
    els.iter()
        .rev()
        .map(|e| match *e {
            El::Two {
                s11,
                back,
                s21,
                s22,
            } => {
                let s12 = z(back) / z(s21);
                El::Two {
                    s11: s22,
                    back,
                    s21: C {
                        re: s12.re,
                        im: s12.im,
                    },
                    s22: s11,
                }
            }
            other => other,
        })
        .collect()
}
