//! Words in messages: capitals, and the name that was meant.

/// First letter in upper case.
#[must_use]
pub fn capital(s: &str) -> String {
    let mut c = s.chars();
    c.next().map_or_else(String::new, |f| {
        f.to_uppercase().collect::<String>() + c.as_str()
    })
}

/// How much alike two names are of which one is meant for the other.
const NEAR: f64 = 0.6;
/// What a name gains that starts alike.
const STARTS_ALIKE: f64 = 0.15;

/// The nearest of some names, if it is near enough to be meant.
pub fn nearest<'n>(name: &str, all: impl Iterator<Item = &'n str>) -> Option<&'n str> {
    let lower = name.to_lowercase();
    let long = lower.chars().count();
    // each letter more or less is a change: of names of very other lengths none can be meant
    let within_reach = |n: &str| {
        let (a, b) = (n.chars().count(), long);
        let (less, more) = (a.min(b) as f64, a.max(b) as f64);
        less / more + STARTS_ALIKE >= NEAR - 1e-9
    };
    all.filter(|n| !n.is_empty() && (within_reach(n) || !n.is_ascii()))
        .map(|n| {
            let l = n.to_lowercase();
            // a name that starts alike is meant more often than one of equal edit distance
            let bonus = if l.starts_with(&lower) || lower.starts_with(&l) {
                STARTS_ALIKE
            } else {
                0.0
            };
            (
                strsim::normalized_damerau_levenshtein(&lower, &l) + bonus,
                n,
            )
        })
        .filter(|(score, _)| *score >= NEAR)
        .max_by(|a, b| a.0.total_cmp(&b.0).then_with(|| b.1.cmp(a.1)))
        .map(|(_, n)| n)
}
